//! What knitters allow for edges, seams, ends and mistakes. All of it common practice, no source.
//!
//! Edges are in thousandths of a loop for each stitch: a stitch is about a quarter of a loop wide (`1 / 4.1`), so that
//! "three to four times the width" for a plain bind-off is 0.73 to 0.98 of a loop a stitch.
//!
//! ```
//! use loopwright::tables::Certainty;
//! use loopwright::yarn::{BindOff, practice};
//! assert_eq!(practice::bind_off(BindOff::Plain).usual, 900);
//! assert_eq!(practice::RESERVE.certainty, Certainty::Practice);
//! ```

use super::BindOff;
use crate::tables::Certainty;
use crate::units::{Length, LengthUnit, Mass};

/// A rule of practice: what is usual, and the least and the most that people say.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Rule {
    /// The least that is said.
    pub least: u32,
    /// What is reckoned with.
    pub usual: u32,
    /// The most that is said.
    pub most: u32,
    /// What it is: practice, always.
    pub certainty: Certainty,
}

const fn rule(least: u32, usual: u32, most: u32) -> Rule {
    Rule {
        least,
        usual,
        most,
        certainty: Certainty::Practice,
    }
}

/// Reserve for mistakes, in percent of the top of the range.
pub const RESERVE: Rule = rule(5, 10, 15);

/// Long-tail cast-on, both strands together, in thousandths of a loop a stitch: one loop on the needle, and the tail
/// round it.
pub const CAST_ON: Rule = rule(2_000, 2_300, 2_500);

/// Seams, in thousandths of the seam's length.
pub const SEAM: Rule = rule(1_500, 1_750, 2_000);

/// Bind-off, in thousandths of a loop a stitch: 3 to 4 widths plain, 4 to 6 elastic, 6 to 10 for an i-cord.
pub const fn bind_off(kind: BindOff) -> Rule {
    match kind {
        BindOff::Plain => rule(730, 900, 1_000),
        BindOff::Elastic => rule(1_000, 1_250, 1_500),
        BindOff::ICord => rule(1_500, 2_000, 2_500),
    }
}

/// The end left to weave in at a cast-on or a bind-off.
pub const END: Length = Length::of(20, LengthUnit::Cm);

/// The ends at a change of ball: two of 15 cm.
pub const JOIN: Length = Length::of(30, LengthUnit::Cm);

/// The side of a swatch that is only knitted for its gauge.
pub const SWATCH_SIDE: Length = Length::of(15, LengthUnit::Cm);

/// A swatch lighter than this is not worth putting on a kitchen scale.
pub const SWATCH_MASS: Mass = Mass::from_grams(15);

/// What hand, fibre and the constants may do to a loop worked out from a stockinette gauge, in ten-thousandths.
pub const SPREAD_GAUGE: u32 = 1_000;

/// The same for a loop worked out from garter, lace or a swatch that was pinned out.
pub const SPREAD_ROUGH: u32 = 1_500;

/// The same for a weighed swatch: the hand only.
pub const SPREAD_WEIGHED: u32 = 500;

/// The range is never narrower than this either way, in ten-thousandths.
pub const SPREAD_LEAST: u32 = 1_000;

/// The range is never wider than this either way, in ten-thousandths.
pub const SPREAD_MOST: u32 = 9_000;

/// The need is close to a whole number of balls within this part of a ball: a twentieth.
pub const CLOSE: i64 = 20;
