//! What is wrong with a question about a tail. Only what the method needs is looked at.

use super::{EDGE, END, LEFT, NEEDLE, Question, STITCHES, Strand, Thickness, USED, WRAPS};
use crate::bounds::Bounds;
use crate::check::Check;
use crate::problem::{Kind, Problem};

/// Nothing is known that a tail could be worked out from.
pub(super) fn nothing_known() -> Problem {
    Problem::new("yarn", Kind::Missing)
}

pub(super) fn check(question: &Question) -> Vec<Problem> {
    let mut check = Check::default();
    check.count("stitches", question.stitches, STITCHES);
    check.length("end", question.end, END);
    if let Some(left) = question.left {
        check.length("left_tail", left.tail, LEFT);
        check.count("left_to_go", left.to_go, Bounds::new(0, question.stitches));
    }
    if !matches!(question.method.strand(), Strand::Thumb { .. }) {
        return check.problems;
    }
    if let Some(Thickness::Wraps(wraps)) = question.yarn {
        check.count("yarn", wraps, WRAPS);
    }
    for (field, needle) in [("needle", question.needle), ("second", question.second)] {
        if let Some(needle) = needle {
            check.length(field, needle, NEEDLE);
        }
    }
    if let Some(width) = question.width {
        check.length("width", width, EDGE);
    }
    if let Some(measured) = question.measured {
        check.count("measured_stitches", measured.stitches, STITCHES);
        check.length("measured_used", measured.used, USED);
    }
    check.problems
}
