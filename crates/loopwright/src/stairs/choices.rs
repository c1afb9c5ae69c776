//! The names of the fields by which steps are asked for, and what can be chosen in them.

use super::{Edge, Place, Way};

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
