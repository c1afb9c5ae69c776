//! The sections of a piece, as data, and how many stitches each comes to.
//!
//! Sums are exact and in halves: 31 to 46 stitches over 25 rows is 962 1/2, and is kept so. Where the rows are known one
//! by one ([`Shape::Rows`]) they are summed one by one; a trapezoid is only the middle of what a schedule may come to.

use super::{MEASURED, ROWS, STITCHES, TAPERED, TIMES, check};
use crate::fabric::Fabric;
use crate::problem::Problem;
use crate::units::{Gauge, Length};

/// One section of a piece.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Section {
    /// How many stitches.
    pub shape: Shape,
    /// What is knitted.
    pub fabric: Fabric,
    /// How often it is worked, within [`TIMES`].
    pub times: u32,
    /// Whether it begins with a cast-on; otherwise it goes on from live stitches.
    pub cast_on: bool,
    /// How it is bound off; not at all where it goes on.
    pub bind_off: Option<BindOff>,
}

impl Section {
    /// Once, cast on and bound off plainly.
    pub const fn of(fabric: Fabric, shape: Shape) -> Self {
        Self {
            shape,
            fabric,
            times: 1,
            cast_on: true,
            bind_off: Some(BindOff::Plain),
        }
    }

    /// A section of stockinette.
    pub const fn stockinette(shape: Shape) -> Self {
        Self::of(Fabric::Stockinette, shape)
    }

    /// A section of garter.
    pub const fn garter(shape: Shape) -> Self {
        Self::of(Fabric::Garter, shape)
    }

    /// What is wrong with this section alone.
    pub fn problems(&self) -> Vec<Problem> {
        let mut found = check::Found::default();
        found.count("times", self.times, TIMES);
        match &self.shape {
            Shape::Trapezoid { stitches, to, rows } => {
                found.count("stitches", *stitches, TAPERED);
                found.count("to", *to, TAPERED);
                found.count("rows", *rows, ROWS);
            }
            Shape::Rows(levels) => {
                found.count("rows", check::counted(levels.len()), ROWS);
                for level in levels {
                    found.count("stitches", level.stitches, STITCHES);
                    found.count("rows", level.rows, ROWS);
                }
            }
            Shape::Measured {
                width,
                length,
                stitches,
                rows,
            } => {
                found.length("width", *width, MEASURED);
                found.length("length", *length, MEASURED);
                found.gauge("swatch_stitches", *stitches);
                found.gauge("swatch_rows", *rows);
            }
            Shape::Stitches(_) => {}
        }
        if found.0.is_empty() && self.once().halves == 0 {
            let is_measured = matches!(self.shape, Shape::Measured { .. });
            found.count(if is_measured { "width" } else { "stitches" }, 0, STITCHES);
        }
        found.0
    }

    /// Stitches of the section worked once.
    pub fn once(&self) -> StitchSum {
        let halves = match &self.shape {
            Shape::Trapezoid { stitches, to, rows } => {
                (u64::from(*stitches) + u64::from(*to)).saturating_mul(u64::from(*rows))
            }
            Shape::Rows(levels) => {
                let mut sum = 0_u64;
                for level in levels {
                    let halves = (2 * u64::from(level.stitches)).saturating_mul(u64::from(level.rows));
                    sum = sum.saturating_add(halves);
                }
                sum
            }
            // Rounded once, to the half.
            Shape::Measured { .. } => {
                let (across, rows) = self.shape.across_and_rows();
                (2.0 * across * rows).round() as u64
            }
            Shape::Stitches(sum) => sum.halves,
        };
        StitchSum { halves }
    }

    /// Stitches of the section every time it is worked.
    pub fn sum(&self) -> StitchSum {
        StitchSum {
            halves: self.once().halves.saturating_mul(u64::from(self.times)),
        }
    }
}

/// How a section is measured out in stitches.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Shape {
    /// As wide everywhere, or evenly wider or narrower from one end to the other.
    Trapezoid {
        /// Stitches at the beginning, within [`TAPERED`].
        stitches: u32,
        /// Stitches at the end, within [`TAPERED`].
        to: u32,
        /// Rows, within [`ROWS`].
        rows: u32,
    },
    /// Row by row, as a shaping schedule has them.
    Rows(Vec<Level>),
    /// As wide everywhere, and measured instead of counted.
    Measured {
        /// Its width, within [`MEASURED`].
        width: Length,
        /// Its length, within [`MEASURED`].
        length: Length,
        /// The stitch gauge of its own fabric: garter has other rows than stockinette.
        stitches: Gauge,
        /// The row gauge of its own fabric.
        rows: Gauge,
    },
    /// So many stitches.
    Stitches(StitchSum),
}

impl Shape {
    /// As wide everywhere.
    pub const fn rectangle(stitches: u32, rows: u32) -> Self {
        Self::Trapezoid {
            stitches,
            to: stitches,
            rows,
        }
    }

    /// Of a measured piece its stitches across and its rows, parts and all; nothing of the others.
    pub fn across_and_rows(&self) -> (f64, f64) {
        match self {
            Self::Measured {
                width,
                length,
                stitches,
                rows,
            } => (stitches.count_over(*width), rows.count_over(*length)),
            _ => (0.0, 0.0),
        }
    }

    /// Stitches of the first and of the last row; none where the shape does not tell.
    pub(super) fn edges(&self) -> (u32, u32) {
        match self {
            Self::Trapezoid { stitches, to, .. } => (*stitches, *to),
            Self::Rows(levels) => {
                let stitches = |level: Option<&Level>| level.map_or(0, |level| level.stitches);
                (stitches(levels.first()), stitches(levels.last()))
            }
            Self::Measured { .. } => {
                let across = self.across_and_rows().0.round() as u32;
                (across, across)
            }
            Self::Stitches(_) => (0, 0),
        }
    }
}

/// Rows one after the other with the same stitches.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Level {
    /// Stitches on the needle, within [`STITCHES`].
    pub stitches: u32,
    /// For how many rows, within [`ROWS`].
    pub rows: u32,
}

/// Ways to bind off, by how much yarn they take.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum BindOff {
    /// The plain chain.
    Plain,
    /// One that stretches: sewn, lace, k2tog through the back.
    Elastic,
    /// An i-cord along the edge.
    ICord,
}

/// A number of stitches that may end in a half.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct StitchSum {
    /// Half stitches.
    pub halves: u64,
}

impl StitchSum {
    /// A whole number of stitches.
    pub const fn of(stitches: u64) -> Self {
        Self {
            halves: stitches.saturating_mul(2),
        }
    }

    /// The whole stitches.
    pub const fn whole(self) -> u64 {
        self.halves / 2
    }

    /// In stitches, halves and all.
    pub fn to_f64(self) -> f64 {
        self.halves as f64 / 2.0
    }

    /// Whether there is half a stitch beside them.
    pub const fn has_half(self) -> bool {
        self.halves % 2 == 1
    }
}
