//! What has to be there, and within its bounds, before sizes can be held against a body.

use super::{Ask, EASE, GIRTH, Garment, Listed, Question, SIZES, STITCHES, Span, Wrap};
use crate::problem::{Kind, Problem};

/// Everything that is wrong.
pub(super) fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let mut problems = Vec::new();
    let wrap = match question.garment {
        Garment::Wrap(wrap) => wrap,
        Garment::Sweater => Wrap::default(),
    };
    for (field, girth) in [
        ("bust", Some(question.bust)),
        ("high_bust", question.high_bust),
        ("round", wrap.round),
        ("upper_arm", wrap.upper_arm),
        ("neck", wrap.neck),
        ("head", wrap.head),
    ] {
        problems.extend(girth.and_then(|girth| Problem::of_length(field, girth, GIRTH)));
    }
    if let (Some(Listed::Garment), Ask::Ease(ease)) = (question.listed, question.ask) {
        problems.extend(Problem::of_length("ease", ease, EASE));
    }
    for size in &question.sizes {
        let (Span { from, to }, stitches) = (size.girth, size.stitches.unwrap_or(STITCHES.least));
        let girth = Problem::of_length("sizes", from, GIRTH).or(Problem::of_length("sizes", to, GIRTH));
        let wrong = girth.or(Problem::of_count("stitches", stitches, STITCHES));
        if wrong.is_some() {
            problems.extend(wrong);
            break;
        }
    }
    let sizes = u32::try_from(question.sizes.len()).unwrap_or(u32::MAX);
    if sizes > SIZES.most {
        problems.extend(Problem::of_count("sizes", sizes, SIZES));
    }
    for (field, missing) in [("sizes", sizes == 0), ("listed", question.listed.is_none())] {
        if missing {
            let kind = Kind::Missing;
            problems.push(Problem::new(field, kind));
        }
    }
    if problems.is_empty() { Ok(()) } else { Err(problems) }
}
