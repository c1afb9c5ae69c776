//! The sections of a piece, as data, and how many stitches each comes to.
//!
//! Sums are exact and in halves: 31 to 46 stitches over 25 rows is 962 1/2, and is kept so. Where the rows are known one
//! by one ([`Shape::Rows`]) they are summed one by one; a trapezoid is only the middle of what a schedule may come to.

use super::{ROWS, SIDE, STITCHES, TAPERED, TIMES, check};
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
        if let Fabric::Stranded { percent } = self.fabric {
            found.count("percent", percent, check::PERCENT);
        }
        match &self.shape {
            Shape::Rectangle { stitches, rows } => {
                found.count("stitches", *stitches, STITCHES);
                found.count("rows", *rows, ROWS);
            }
            Shape::Trapezoid { from, to, rows } => {
                found.count("from", *from, TAPERED);
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
            Shape::Stitches(_) => {}
            Shape::Area {
                width,
                length,
                stitches,
                rows,
            } => {
                found.length("width", *width, SIDE);
                found.length("length", *length, SIDE);
                found.gauge("stitches", *stitches);
                found.gauge("rows", *rows);
            }
        }
        if found.is_empty() && self.once().halves == 0 {
            found.count("stitches", 0, STITCHES);
        }
        found.into()
    }

    /// Stitches of the section worked once.
    pub fn once(&self) -> StitchSum {
        self.shape.sum()
    }

    /// Stitches of the section every time it is worked.
    pub fn sum(&self) -> StitchSum {
        self.once().times(self.times)
    }

    /// Stitches cast on, and bound off, all times together; nothing where the shape does not tell.
    pub(super) fn edges(&self) -> (Option<u64>, Option<u64>) {
        let (first, last) = self.shape.edges();
        let all = |edge: Option<u32>| edge.map(|stitches| u64::from(stitches) * u64::from(self.times));
        (
            all(first).filter(|_| self.cast_on),
            all(last).filter(|_| self.bind_off.is_some()),
        )
    }
}

/// How a section is measured out in stitches.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Shape {
    /// As wide everywhere.
    Rectangle {
        /// Stitches across, within [`STITCHES`].
        stitches: u32,
        /// Rows, within [`ROWS`].
        rows: u32,
    },
    /// Evenly wider or narrower from one end to the other.
    Trapezoid {
        /// Stitches at the beginning, within [`TAPERED`].
        from: u32,
        /// Stitches at the end, within [`TAPERED`].
        to: u32,
        /// Rows, within [`ROWS`].
        rows: u32,
    },
    /// Row by row, as a shaping schedule has them.
    Rows(Vec<Level>),
    /// So many stitches.
    Stitches(StitchSum),
    /// Measured with a tape, for a quick estimate. The gauge is that of *this section's* fabric.
    Area {
        /// How wide, within [`SIDE`].
        width: Length,
        /// How long, within [`SIDE`].
        length: Length,
        /// Its stitches.
        stitches: Gauge,
        /// Its rows.
        rows: Gauge,
    },
}

impl Shape {
    fn sum(&self) -> StitchSum {
        let rectangle = |stitches: u32, rows: u32| (2 * u64::from(stitches)).saturating_mul(u64::from(rows));
        let halves = match self {
            Self::Rectangle { stitches, rows } => rectangle(*stitches, *rows),
            Self::Trapezoid { from, to, rows } => (u64::from(*from) + u64::from(*to)).saturating_mul(u64::from(*rows)),
            Self::Rows(levels) => levels.iter().fold(0, |sum: u64, level| {
                sum.saturating_add(rectangle(level.stitches, level.rows))
            }),
            Self::Stitches(sum) => sum.halves,
            Self::Area {
                width,
                length,
                stitches,
                rows,
            } => (2.0 * stitches.count_over(*width) * rows.count_over(*length)).round() as u64,
        };
        StitchSum { halves }
    }

    /// Stitches of the first and of the last row.
    fn edges(&self) -> (Option<u32>, Option<u32>) {
        match self {
            Self::Rectangle { stitches, .. } => (Some(*stitches), Some(*stitches)),
            Self::Trapezoid { from, to, .. } => (Some(*from), Some(*to)),
            Self::Rows(levels) => {
                let stitches = |level: &Level| level.stitches;
                (levels.first().map(stitches), levels.last().map(stitches))
            }
            Self::Stitches(_) => (None, None),
            Self::Area { width, stitches, .. } => {
                let across = Some(stitches.count_over(*width).ceil() as u32);
                (across, across)
            }
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

    /// Whether there is half a stitch beside them.
    pub const fn has_half(self) -> bool {
        self.halves % 2 == 1
    }

    const fn times(self, times: u32) -> Self {
        Self {
            halves: self.halves.saturating_mul(times as u64),
        }
    }
}
