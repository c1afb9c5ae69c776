//! A shaped piece as it measures, so that the pattern's and one's own can be laid over each other.

use super::fit::Scale;
use crate::units::Length;
use crate::units::rate::Rate;

/// A piece that is worked upwards from one count of stitches to another.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Piece {
    /// Stitches at its lower edge.
    pub from: u32,
    /// Stitches at its upper edge.
    pub to: u32,
    /// Rows from the one to the other.
    pub rows: u32,
    /// How wide its lower edge is, without edge and seam stitches.
    pub lower: Length,
    /// How wide its upper edge is.
    pub upper: Length,
    /// How high it is.
    pub height: Length,
}

impl Piece {
    /// At the pattern's gauges; of both counts so many stand outside the measure.
    pub(super) fn theirs(scales: (Scale, Scale), edges: u32, counts: [u32; 3]) -> Self {
        Self::at(scales.0.theirs, scales.1.theirs, edges, counts)
    }

    /// At one's own gauges.
    pub(super) fn ours(scales: (Scale, Scale), edges: u32, counts: [u32; 3]) -> Self {
        Self::at(scales.0.ours, scales.1.ours, edges, counts)
    }

    fn at(wide: Rate, tall: Rate, edges: u32, [from, to, rows]: [u32; 3]) -> Self {
        let width = |count: u32| wide.width_of(count.saturating_sub(edges));
        Self {
            from,
            to,
            rows,
            lower: width(from),
            upper: width(to),
            height: tall.width_of(rows),
        }
    }
}
