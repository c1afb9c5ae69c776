//! What has to be there, and within its bounds, before sizes can be held against a body.

use super::{Ask, EASE, GIRTH, Garment, Gauges, Listed, Name, Question, SIZES, STITCHES, Size};
use crate::check::Check;
use crate::problem::Problem;

/// Everything that is wrong.
pub(super) fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let mut check = Check::default();
    check.length(Name::Bust, question.bust, GIRTH);
    check.length_if_any(Name::HighBust, question.high_bust, GIRTH);
    if let Garment::Wrap(wrap) = question.garment {
        check.length_if_any(Name::Round, wrap.round, GIRTH);
        check.length_if_any(Name::UpperArm, wrap.upper_arm, GIRTH);
        check.length_if_any(Name::Neck, wrap.neck, GIRTH);
        check.length_if_any(Name::Head, wrap.head, GIRTH);
    }
    if let (Some(Listed::Garment), Ask::Ease(ease)) = (question.listed, question.ask) {
        check.length(Name::Ease, ease, EASE);
    }
    gauges(&mut check, [Name::PatternStitches, Name::PatternRows], question.pattern);
    gauges(&mut check, [Name::OwnStitches, Name::OwnRows], question.own);
    sizes(&mut check, &question.sizes);
    if question.listed.is_none() {
        check.missing(Name::Listed);
    }
    check.done()
}

fn gauges(check: &mut Check, [stitches, rows]: [Name; 2], gauges: Option<Gauges>) {
    if let Some(gauges) = gauges {
        check.gauge(stitches, gauges.stitches);
        check.gauge_if_any(rows, gauges.rows);
    }
}

/// So many sizes, each of a girth that can be; the first that is wrong is told.
fn sizes(check: &mut Check, sizes: &[Size]) {
    let before = check.problems.len();
    for size in sizes {
        check.length(Name::Sizes, size.girth.from, GIRTH);
        if check.problems.len() == before {
            check.length(Name::Sizes, size.girth.to, GIRTH);
        }
        if let (Some(stitches), true) = (size.stitches, check.problems.len() == before) {
            check.count(Name::Stitches, stitches, STITCHES);
        }
        if check.problems.len() > before {
            break;
        }
    }
    match u32::try_from(sizes.len()).unwrap_or(u32::MAX) {
        0 => check.missing(Name::Sizes),
        many => check.count(Name::Sizes, many, SIZES),
    }
}
