//! How far the yarn reaches into the balls, band by band: what is surely used, what is likely, what may be, the reserve,
//! and what is left.

use super::Answer;
use crate::units::Length;

/// A part of the yarn that is bought, by how likely it is used.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Band {
    /// Used at the least.
    Sure,
    /// Used as likely as not.
    Likely,
    /// Used at the most.
    Perhaps,
    /// Kept for mistakes, and for the ends at each change of ball.
    Reserve,
    /// On the balls, and not needed.
    Left,
}

impl Answer {
    /// The bands one after the other, each with where it ends, counted from the start of the yarn. One of no width is
    /// left out.
    pub fn bands(&self) -> Vec<(Band, Length)> {
        let ends = [
            (Band::Sure, self.length.least),
            (Band::Likely, self.length.expected),
            (Band::Perhaps, self.length.most),
            (Band::Reserve, self.need),
            (Band::Left, self.bought),
        ];
        let mut bands: Vec<(Band, Length)> = Vec::new();
        for (band, end) in ends {
            if end > bands.last().map_or(Length::ZERO, |(_, reached)| *reached) {
                bands.push((band, end));
            }
        }
        bands
    }
}
