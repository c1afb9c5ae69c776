//! What is wrong with a question about another gauge.

use super::{COUNTS, MEASURE, Question, REPEAT, ROWS, STITCHES, shape};
use crate::bounds::Bounds;
use crate::cast_on::{EDGE, Knitting};
use crate::check::Check;
use crate::problem::Problem;
use crate::terms::{MULTIPLE, PLUS};

pub(super) fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let mut check = Check::default();
    check.gauge("pattern", question.pattern);
    check.gauge("own", question.own);
    let has_rows = !question.rows.is_empty() || question.length.is_some() || question.shaping.is_some();
    for (field, gauge) in [("pattern_rows", question.pattern_rows), ("own_rows", question.own_rows)] {
        match gauge {
            Some(gauge) => check.gauge(field, gauge),
            None if has_rows => check.missing(field),
            None => {}
        }
    }
    if question.counts.is_empty() && (question.wanted.is_some() || !has_rows) {
        check.missing("counts");
    }
    check.count("multiple", question.multiple.of, MULTIPLE);
    check.count("plus", question.multiple.plus, PLUS);
    check.count("row_repeat", question.row_repeat, REPEAT);
    if let Knitting::Flat { edge, seam } = question.knitting {
        check.count("edge", edge, EDGE);
        check.count("seam", seam, EDGE);
    }
    let least = STITCHES.least.saturating_add(question.outside());
    let stitches = Bounds::new(least, STITCHES.most);
    check.counts("counts", &question.counts, stitches, COUNTS);
    check.counts("rows", &question.rows, ROWS, COUNTS);
    for (field, length) in [("length", question.length), ("wanted", question.wanted)] {
        if let Some(length) = length {
            check.length(field, length, MEASURE);
        }
    }
    if let Some(shaping) = &question.shaping {
        shape::check(question, shaping, &mut check);
    }
    check.done()
}
