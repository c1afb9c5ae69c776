//! What has to be there, and within its bounds, before sizes can be held against a body.

use super::{Ask, BUST, EASE, GIRTH, Garment, Listed, NECK, Question, SIZES, STITCHES, UPPER_ARM, rank};
use crate::bounds::Bounds;
use crate::problem::{Kind, Problem};
use crate::units::Length;

/// What the list measures, or everything that is wrong.
pub(super) fn check(question: &Question) -> Result<Listed, Vec<Problem>> {
    let mut problems = Vec::new();
    let mut length = |field, value: Option<Length>, bounds: Bounds<Length>| {
        problems.extend(value.and_then(|value| Problem::of_length(field, value, bounds)));
    };
    length("bust", Some(question.bust), BUST);
    length("high_bust", question.high_bust, BUST);
    if let Garment::Wrap(wrap) = question.garment {
        length("round", wrap.round, GIRTH);
        length("upper_arm", wrap.upper_arm, UPPER_ARM);
        length("neck", wrap.neck, NECK);
        length("head", wrap.head, NECK);
    }
    if question.listed == Some(Listed::Garment) {
        let ease = match question.ask {
            Ask::Fit(_) => None,
            Ask::Ease(ease) => Some(ease),
            Ask::Percent(share) => Some(rank::share_of(question.bust, share)),
        };
        length("ease", ease, EASE);
    }
    for size in &question.sizes {
        length("sizes", Some(size.girth.from), GIRTH);
        length("sizes", Some(size.girth.to), GIRTH);
    }
    problems.dedup();
    problems.extend(counts(question));
    let Some(listed) = question.listed else {
        problems.push(Problem {
            field: "listed",
            kind: Kind::Missing,
        });
        return Err(problems);
    };
    if problems.is_empty() { Ok(listed) } else { Err(problems) }
}

/// What is wrong with how many sizes there are, and with their stitches.
fn counts(question: &Question) -> Option<Problem> {
    let sizes = u32::try_from(question.sizes.len()).unwrap_or(u32::MAX);
    if sizes == 0 {
        return Some(Problem {
            field: "sizes",
            kind: Kind::Missing,
        });
    }
    if sizes > SIZES.most {
        return Some(Problem {
            field: "sizes",
            kind: Kind::TooMany { most: SIZES.most },
        });
    }
    let mut stitches = question.sizes.iter().filter_map(|size| size.stitches);
    let wrong = stitches.find(|stitches| !STITCHES.allow(*stitches))?;
    let kind = if wrong < STITCHES.least {
        Kind::TooFew { least: STITCHES.least }
    } else {
        Kind::TooMany { most: STITCHES.most }
    };
    Some(Problem {
        field: "stitches",
        kind,
    })
}
