//! What is wrong with a question about another gauge.

use super::{COUNTS, MEASURE, Question, REPEAT, ROWS, STITCHES, shape};
use crate::bounds::Bounds;
use crate::cast_on::{EDGE, Knitting, MULTIPLE, PLUS};
use crate::needles::check::{of_gauge, of_list};
use crate::problem::{Kind, Problem};

pub(super) fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let mut problems = Vec::new();
    let gauges = [
        ("pattern", Some(question.pattern)),
        ("own", Some(question.own)),
        ("pattern_rows", question.pattern_rows),
        ("own_rows", question.own_rows),
    ];
    let has_rows = !question.rows.is_empty() || question.length.is_some() || question.shaping.is_some();
    for (field, gauge) in gauges {
        match gauge {
            Some(gauge) => of_gauge(field, gauge, &mut problems),
            None if has_rows => problems.push(Problem {
                field,
                kind: Kind::Missing,
            }),
            None => {}
        }
    }
    if question.counts.is_empty() && (question.wanted.is_some() || !has_rows) {
        problems.push(Problem {
            field: "counts",
            kind: Kind::Missing,
        });
    }
    let (edge, seam) = match question.knitting {
        Knitting::Round { .. } => (0, 0),
        Knitting::Flat { edge, seam } => (edge, seam),
    };
    let counts = [
        ("multiple", question.multiple.of, MULTIPLE),
        ("plus", question.multiple.plus, PLUS),
        ("row_repeat", question.row_repeat, REPEAT),
        ("edge", edge, EDGE),
        ("seam", seam, EDGE),
    ];
    for (field, count, bounds) in counts {
        problems.extend(Problem::of_count(field, count, bounds));
    }
    let least = STITCHES
        .least
        .saturating_add(question.beside())
        .saturating_add(question.extra());
    of_list(
        "counts",
        &question.counts,
        Bounds::new(least, STITCHES.most),
        COUNTS,
        &mut problems,
    );
    of_list("rows", &question.rows, ROWS, COUNTS, &mut problems);
    for (field, length) in [("length", question.length), ("wanted", question.wanted)] {
        problems.extend(length.and_then(|length| Problem::of_length(field, length, MEASURE)));
    }
    if let (true, Some(shaping)) = (problems.is_empty(), &question.shaping) {
        shape::check(question, shaping, &mut problems);
    }
    if problems.is_empty() { Ok(()) } else { Err(problems) }
}
