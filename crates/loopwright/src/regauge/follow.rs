//! Which size to follow as it is: the one that measures nearest to what is wanted, its stitches over the own gauge.

use super::Question;
use super::fit::{Keep, Scale};
use crate::units::Length;

/// The size to follow as it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Follow {
    /// Its place in the counts; the one of fewer stitches where two are equally near.
    pub size: usize,
    /// What it measures at one's own gauge.
    pub measures: Length,
    /// How much over the wanted measure that is; negative when it is under.
    pub off: Length,
    /// Another that is exactly as near.
    pub tied: Option<usize>,
    /// The count that is nearest to the wanted measure, where the pattern is not followed.
    pub own: u32,
}

/// Picks the size, on exact differences.
pub(super) fn follow(question: &Question, wide: Scale, wanted: Length) -> Option<Follow> {
    let outside = question.beside() + question.extra();
    let away = |count: u32| wide.away(count - outside, wanted);
    let mut best: Option<(usize, u32)> = None;
    for (size, count) in question.counts.iter().enumerate() {
        let better = |(_, held): (usize, u32)| (away(*count), *count) < (away(held), held);
        if best.is_none_or(better) {
            best = Some((size, *count));
        }
    }
    let (size, count) = best?;
    let equal = |other: &u32| *other != count && away(*other) == away(count);
    let tied = question.counts.iter().position(equal);
    let measures = wide.ours(count - outside);
    let keep = Keep::stitches(question, count - outside);
    let own = keep.nearest(wide.wanted(wanted)).0;
    Some(Follow {
        size,
        measures,
        off: measures.saturating_sub(wanted),
        tied,
        own: u32::try_from(own).unwrap_or(u32::MAX).saturating_add(outside),
    })
}
