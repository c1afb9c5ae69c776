//! What is wrong with a question about a tail. Only what the method needs is looked at.

use super::{EDGE, END, LEFT, NEEDLE, Name, Question, STITCHES, Strand, Thickness, USED, WRAPS};
use crate::bounds::Bounds;
use crate::check::Check;
use crate::problem::{Kind, Problem};

/// Nothing is known that a tail could be worked out from.
pub(super) fn nothing_known() -> Problem {
    Problem::new(Name::Yarn, Kind::Missing)
}

pub(super) fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let mut check = Check::default();
    check.count(Name::Stitches, question.stitches, STITCHES);
    check.length(Name::End, question.end, END);
    if let Some(left) = question.left {
        check.length(Name::LeftTail, left.tail, LEFT);
        check.count(Name::LeftToGo, left.to_go, Bounds::new(0, question.stitches));
    }
    match question.method.strand() {
        Strand::Thumb { .. } => check_thumb(&mut check, question),
        Strand::EndOnly | Strand::HalfInWaste | Strand::Second => {}
    }
    check.done()
}

/// What a tail that goes round the thumb is worked out from.
fn check_thumb(check: &mut Check, question: &Question) {
    match question.yarn {
        Some(Thickness::Wraps(wraps)) => check.count(Name::Yarn, wraps, WRAPS),
        Some(Thickness::Class(_)) | None => {}
    }
    if let Some(needle) = question.needle {
        check.length(Name::Needle, needle, NEEDLE);
    }
    if let Some(second) = question.second {
        check.length(Name::Second, second, NEEDLE);
    }
    if let Some(width) = question.width {
        check.length(Name::Width, width, EDGE);
    }
    check.gauge_if_any(Name::Gauge, question.gauge);
    if let Some(measured) = question.measured {
        check.count(Name::MeasuredStitches, measured.stitches, STITCHES);
        check.length(Name::MeasuredUsed, measured.used, USED);
    }
}
