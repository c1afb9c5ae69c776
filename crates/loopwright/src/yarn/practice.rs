//! What knitters allow for edges, seams, ends and mistakes. All of it common practice, no source.
//!
//! Edges are in loops for each stitch: a stitch is about a quarter of a loop wide (`1 / 4.1`), so that "three to four
//! times the width" for a plain bind-off is 0.73 to 0.98 of a loop a stitch.
//!
//! ```
//! use loopwright::tables::Certainty;
//! use loopwright::yarn::{BindOff, practice};
//! assert_eq!(BindOff::Plain.loops().usual, 0.9);
//! assert_eq!(practice::SEAM.certainty, Certainty::Practice);
//! ```

use super::BindOff;
use crate::fabric::Factor;
use crate::units::{Length, LengthUnit, Mass};

/// Reserve for mistakes, in percent of the top of the range; 5 to 15 are usual.
pub const RESERVE: u32 = 10;

/// The same on a pattern's figure, which has its reserve in it.
pub const RESERVE_IN_PATTERN: u32 = 0;

/// Long-tail cast-on, both strands together, in loops a stitch: one loop on the needle, and the tail round it.
pub const CAST_ON: Factor = Factor::practice(2.0, 2.3, 2.5);

/// Seams, in lengths of the seam.
pub const SEAM: Factor = Factor::practice(1.5, 1.75, 2.0);

impl BindOff {
    /// How much yarn it takes in widths of the edge, the least and the most.
    pub const fn widths(self) -> [i64; 2] {
        match self {
            Self::Plain => [3, 4],
            Self::Elastic => [4, 6],
            Self::ICord => [6, 10],
        }
    }

    /// The same in loops a stitch, with what is reckoned with in between.
    pub const fn loops(self) -> Factor {
        match self {
            Self::Plain => Factor::practice(0.73, 0.9, 1.0),
            Self::Elastic => Factor::practice(1.0, 1.25, 1.5),
            Self::ICord => Factor::practice(1.5, 2.0, 2.5),
        }
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

/// The smallest step a kitchen scale shows.
pub const SCALE: Mass = Mass::from_grams(1);

/// What hand, fibre and the constants may do to a loop worked out from a stockinette gauge, in percent.
pub const SPREAD_GAUGE: f64 = 10.0;

/// The same for a loop worked out from garter, lace or a swatch that was pinned out.
pub const SPREAD_ROUGH: f64 = 15.0;

/// The same for a weighed swatch: the hand only.
pub const SPREAD_WEIGHED: f64 = 5.0;

/// The range is never narrower than this either way, in percent.
pub const SPREAD_LEAST: f64 = 10.0;

/// The range is never wider than this either way, in percent.
pub const SPREAD_MOST: f64 = 90.0;

/// The need is close to a whole number of balls within this part of a ball: a twentieth.
pub const CLOSE: i64 = 20;
