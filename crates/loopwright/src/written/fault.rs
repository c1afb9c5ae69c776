//! What could not be read: where, and what was looked for there.

use super::place::Place;
use std::fmt::{Display, Formatter, Result};

/// A place that could not be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Fault {
    /// Where, in bytes; at the end of a line where something is missing there.
    pub place: Place,
    /// What is wrong, or was looked for.
    pub kind: FaultKind,
}

/// What is wrong with a place, or was looked for there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum FaultKind {
    /// A word that is not known.
    UnknownWord,
    /// A word that means one thing to some and another to others.
    Twofold,
    /// A known word or sign that says nothing in this place.
    OutOfPlace,
    /// A whole number that a needle could hold.
    Number,
    /// A list that has another number of entries than there are sizes.
    Sizes {
        /// How many entries it has.
        found: usize,
        /// How many sizes there are.
        wanted: usize,
    },
    /// How often: `3 times`, `to end`, `to last 4 sts`.
    HowOften,
    /// How many stitches.
    HowMany,
    /// The bracket that closes it.
    Closing,
    /// The bracket that it closes.
    Opening,
    /// Something to repeat between the asterisk or bracket and its end.
    Empty,
    /// An asterisk to repeat from.
    Star,
    /// `rep from *`: the asterisk is never repeated from.
    Repeat,
    /// Which rows.
    Rows,
    /// Fewer brackets within brackets.
    TooDeep,
    /// A bracket of runs in front of "but", one of them of the stitch that differs.
    Simple,
    /// One of the times that the bracket is worked, behind the one before.
    Time,
}

impl Display for Fault {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        write!(f, "{:?} at {}..{}", self.kind, self.place.start, self.place.end)
    }
}

impl std::error::Error for Fault {}
