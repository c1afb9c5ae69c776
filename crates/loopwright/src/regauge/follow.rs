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
    let counts = || question.counts.iter().copied().enumerate();
    let (size, count) = counts().min_by_key(|(size, count)| (away(*count), *count, *size))?;
    let is_tied = |other: u32| other != count && away(other) == away(count);
    let tied = counts().find(|(_, other)| is_tied(*other)).map(|(size, _)| size);
    let inside = count.saturating_sub(outside);
    Some(Follow {
        size,
        off: wide.ours.width_of(inside).saturating_sub(wanted),
        tied,
    })
}
