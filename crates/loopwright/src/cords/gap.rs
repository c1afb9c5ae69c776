//! Where no cord at hand serves: how small and how large the knitting is there, and what would serve, as it is sold.

use super::piece::Piece;
use super::{MAGIC_LOOP, MAGIC_ROOM, SQUEEZE};
use crate::tables::needle::CIRCULARS;
use crate::units::Length;

/// What no cord at hand serves, and what would.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Gap {
    /// The smallest girth in it.
    pub least: Length,
    /// The largest.
    pub most: Length,
    /// Whether it is smaller than every cord: double-pointed needles, two circulars, or magic loop.
    pub small: bool,
    /// The shortest and the longest that one cord may be to serve all of it; none where no such cord is sold.
    pub cord: Option<(Length, Length)>,
    /// The shortest cord that is sold and serves all of it, and the longest; the same where there is one only.
    pub sold: Option<(Length, Length)>,
    /// The shortest cord that is sold and is long enough for magic loop, tips and all; none back and forth, and where none
    /// so long is sold.
    pub magic_loop: Option<Length>,
}

impl Piece {
    /// The gap over rounds with so much on the needle.
    pub(super) fn gap(&self, counts: &[i64]) -> Gap {
        let smallest = counts.iter().copied().min().unwrap_or(0);
        let largest = counts.iter().copied().max().unwrap_or(0);
        let (least, most) = (self.girth(smallest), self.girth(largest));
        let shortest = Length::from_nm(most.to_nm() / SQUEEZE + most.to_nm() % SQUEEZE);
        let longest = if self.flat { most } else { least };
        let magic = most.saturating_add(MAGIC_ROOM).max(MAGIC_LOOP);
        let labels = || CIRCULARS.iter().map(|row| row.label);
        let serves = |label: &Length| (shortest..=longest).contains(label);
        let sold = labels().find(serves).zip(labels().rfind(serves));
        Gap {
            least,
            most,
            small: self.cords.iter().all(|cord| largest < cord.too_small_below()),
            cord: sold.map(|_| (shortest, longest)),
            sold,
            magic_loop: labels().find(|label| magic <= *label && !self.flat),
        }
    }
}
