//! What is wrong with a question about another gauge.

use super::{COUNTS, MEASURE, Name, Question, REPEAT, ROWS, STITCHES, shape};
use crate::bounds::Bounds;
use crate::cast_on::{EDGE, Knitting};
use crate::check::Check;
use crate::problem::Problem;
use crate::terms::{MULTIPLE, PLUS};

pub(super) fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let mut check = Check::default();
    check.gauge(Name::Pattern, question.pattern);
    check.gauge(Name::Own, question.own);
    let has_rows = question.asks_rows();
    for (name, gauge) in [
        (Name::PatternRows, question.pattern_rows),
        (Name::OwnRows, question.own_rows),
    ] {
        check.gauge_if_any(name, gauge);
        // Where stitches are converted their answer stands, and says that the rows wait.
        if gauge.is_none() && has_rows && question.counts.is_empty() {
            check.missing(name);
        }
    }
    if question.counts.is_empty() && (question.wanted.is_some() || !has_rows) {
        check.missing(Name::Counts);
    }
    check.count(Name::Multiple, question.multiple.of, MULTIPLE);
    check.count(Name::Plus, question.multiple.plus, PLUS);
    check.count(Name::RowRepeat, question.row_repeat, REPEAT);
    if let Knitting::Flat { edge, seam } = question.knitting {
        check.count(Name::Edge, edge, EDGE);
        check.count(Name::Seam, seam, EDGE);
    }
    let least = STITCHES.least.saturating_add(question.outside());
    let stitches = Bounds::new(least, STITCHES.most);
    check.counts(Name::Counts, &question.counts, stitches, COUNTS);
    check.counts(Name::Rows, &question.rows, ROWS, COUNTS);
    check.length_if_any(Name::Length, question.length, MEASURE);
    check.length_if_any(Name::Wanted, question.wanted, MEASURE);
    if let Some(shaping) = &question.shaping {
        shape::check(question, shaping, &mut check);
    }
    check.done()
}
