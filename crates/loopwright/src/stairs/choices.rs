//! The names of the fields by which steps are asked for, and what can be chosen in them.

use super::{Edge, Place, Way};
use crate::choice::{Choice, Key};

/// A field of the question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// Bound off or left on the needle.
    Way,
    /// Stitches to go at one edge.
    Stitches,
    /// Shoulder or neck.
    Place,
    /// In how many steps.
    Steps,
    /// In how many rows.
    Rows,
    /// Whether steps or rows are counted.
    By,
    /// At which edge.
    Edge,
    /// The side of the next row.
    Next,
    /// How high the back neck is raised.
    Height,
    /// Rows in the swatch.
    RowGauge,
    /// Turns at one side.
    Turns,
    /// How wide the back is, where its stitches are not counted.
    Width,
    /// Stitches in the swatch.
    Gauge,
    /// How a short row is turned.
    Method,
    /// Where the round begins.
    Begins,
}

crate::field_names!(Name {
    Way = "way",
    Stitches = "stitches",
    Place = "place",
    Steps = "steps",
    Rows = "rows",
    By = "by",
    Edge = "edge",
    Next = "next",
    Height = "height",
    RowGauge = "row_gauge",
    Turns = "turns",
    Width = "width",
    Gauge = "gauge",
    Method = "method",
    Begins = "begins",
});

/// Whether steps or rows are counted: an [`Ask`](super::Ask) without its number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Asked {
    /// Steps at each edge.
    Steps,
    /// Rows there are.
    Rows,
}

crate::choice!(Asked starts Steps { Steps = "steps", Rows = "rows" });

crate::choice!(Edge starts Right { Right = "right", Left = "left", Both = "both" });

crate::choice!(Place starts Shoulder { Shoulder = "shoulder", Neck = "neck" });

crate::choice!(Way starts BindOff { BindOff = "bind", ShortRows = "short" });

/// What is done: a [`Way`], or the back neck raised in the round.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Work {
    /// Stitches go at an edge.
    Edge(Way),
    /// The back neck is raised: a [`raise`](super::raise).
    Raise,
}

impl Key for Work {
    const ALL: &'static [Self] = &[Self::Edge(Way::BindOff), Self::Edge(Way::ShortRows), Self::Raise];

    fn key(self) -> &'static str {
        match self {
            Self::Edge(way) => way.key(),
            Self::Raise => "raise",
        }
    }
}

impl Choice for Work {
    const START: Self = Self::Edge(Way::START);
}
