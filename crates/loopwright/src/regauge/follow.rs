//! Which size to follow as it is: the one that measures nearest to what is wanted, its stitches over the own gauge.

use super::Question;
use super::fit::Scale;
use crate::units::Length;

/// The size to follow as it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Follow {
    /// Its place in the counts; the one of fewer stitches where two are equally near.
    pub size: usize,
    /// How much over the wanted measure it is at one's own gauge; negative when it is under.
    pub off: Length,
    /// Another that is exactly as near.
    pub tied: Option<usize>,
}

/// Picks the size, on exact differences.
pub(super) fn follow(question: &Question, wide: Scale, wanted: Length) -> Option<Follow> {
    let outside = question.outside();
    let away = |count: u32| wide.away(count.saturating_sub(outside), wanted);
    let mut best: Option<(i128, u32, usize)> = None;
    let mut tied = None;
    for (size, count) in question.counts.iter().enumerate() {
        let here = (away(*count), *count, size);
        let equal = best.filter(|held| held.0 == here.0 && held.1 != here.1);
        if best.is_none_or(|held| here < held) {
            best = Some(here);
            tied = equal.map(|held| held.2);
        } else if equal.is_some() {
            tied = Some(size);
        }
    }
    let (_, count, size) = best?;
    let inside = count.saturating_sub(outside);
    Some(Follow {
        size,
        off: wide.ours.width_of(inside).saturating_sub(wanted),
        tied,
    })
}
