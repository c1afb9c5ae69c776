//! The sections of a piece, as data, and how many stitches each comes to.
//!
//! Sums are exact and in halves: 31 to 46 stitches over 25 rows is 962 1/2, and is kept so. Where the rows are known one
//! by one ([`Shape::Rows`]) they are summed one by one; a trapezoid is only the middle of what a schedule may come to.

use super::{MEASURED, Name, ROWS, STITCHES, SectionName, TAPERED, TIMES, USUAL_TIMES, check};
use crate::check::Check;
use crate::fabric::Fabric;
use crate::problem::{Kind, Problem};
use crate::units::{Gauge, Length};

/// One section of a piece.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Section {
    /// What the knitter calls it; empty where she gave it no name.
    pub name: String,
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
            name: String::new(),
            shape,
            fabric,
            times: USUAL_TIMES,
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

    /// What is wrong with this section alone, which is the one at this place among the sections, counted from nought.
    pub fn problems(&self, index: usize) -> Vec<Problem> {
        let mut check = Check::default();
        check.count(SectionName::Times.at(index), self.times, TIMES);
        let (stitches, rows) = (SectionName::Stitches.at(index), SectionName::Rows.at(index));
        match &self.shape {
            Shape::Trapezoid {
                stitches: from,
                to,
                rows: many,
            } => {
                check.count(stitches, *from, TAPERED);
                check.count(SectionName::To.at(index), *to, TAPERED);
                check.count(rows, *many, ROWS);
            }
            Shape::Rows(levels) => {
                check.count(rows, check::counted(levels.len()), ROWS);
                for level in levels {
                    check.count(stitches, level.stitches, STITCHES);
                    check.count(rows, level.rows, ROWS);
                }
            }
            Shape::Measured {
                width,
                length,
                stitches,
                rows,
            } => {
                let names = Name::gauge_in(self.fabric);
                check.length(SectionName::Width.at(index), *width, MEASURED);
                check.length(SectionName::Length.at(index), *length, MEASURED);
                check::check_gauge(&mut check, names[0], *stitches);
                check::check_gauge(&mut check, names[1], *rows);
            }
            Shape::Stitches(_) => {}
        }
        if check.problems.is_empty() && self.once().halves == 0 {
            let least = STITCHES.least;
            check.wrong(self.shape.first_figure().at(index), Kind::TooFew { least });
        }
        check.problems
    }

    /// Stitches of the section worked once.
    pub fn once(&self) -> StitchSum {
        let halves = match &self.shape {
            Shape::Trapezoid { stitches, to, rows } => {
                (u64::from(*stitches) + u64::from(*to)).saturating_mul(u64::from(*rows))
            }
            Shape::Rows(levels) => levels.iter().map(Level::halves).fold(0, u64::saturating_add),
            // Rounded once, to the half.
            Shape::Measured {
                width,
                length,
                stitches,
                rows,
            } => (2.0 * stitches.count_over(*width) * rows.count_over(*length)).round() as u64,
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

    /// Of a measured piece its stitches across and its rows, parts and all; none of the others, which are counted.
    pub fn across_and_rows(&self) -> Option<(f64, f64)> {
        match self {
            Self::Measured {
                width,
                length,
                stitches,
                rows,
            } => Some((stitches.count_over(*width), rows.count_over(*length))),
            Self::Trapezoid { .. } | Self::Rows(_) | Self::Stitches(_) => None,
        }
    }

    /// The figure to change where the shape has no stitches at all.
    const fn first_figure(&self) -> SectionName {
        match self {
            Self::Trapezoid { .. } | Self::Rows(_) | Self::Stitches(_) => SectionName::Stitches,
            Self::Measured { .. } => SectionName::Width,
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
            Self::Measured { width, stitches, .. } => {
                let across = stitches.count_over(*width).round() as u32;
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

impl Level {
    /// Its stitches in halves.
    fn halves(&self) -> u64 {
        (2 * u64::from(self.stitches)).saturating_mul(u64::from(self.rows))
    }
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
