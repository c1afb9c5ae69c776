//! What came of a line, as data.

use super::super::place::Place;
use crate::terms::Working;

/// What is on the needle before the first line.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Start {
    /// So many stitches; none before the cast-on.
    pub stitches: u32,
    /// Markers, each after so many stitches of the next row.
    pub markers: Vec<u32>,
    /// In the round or flat, until a line says otherwise.
    pub working: Working,
}

impl Start {
    /// So many stitches, flat and without markers.
    pub const fn with(stitches: u32) -> Self {
        Self {
            stitches,
            markers: Vec::new(),
            working: Working::Flat,
        }
    }
}

/// What came of a line for one size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Worked {
    /// How many rows of it were worked.
    pub rows: u64,
    /// Stitches on the needle before it.
    pub before: u64,
    /// Stitches of those that its first row uses.
    pub used: u64,
    /// Stitches after it.
    pub after: u64,
    /// Whether it comes out.
    pub outcome: Outcome,
    /// Where it does not.
    pub place: Option<Place>,
    /// Which of its rows that was, counted from one.
    pub row: u64,
    /// What may be meant in another way, and what comes of that.
    pub otherwise: Option<Otherwise>,
    /// An earlier line that could not be worked as it is written, so that the count before this one is not sure.
    pub stands_on: Option<usize>,
    /// Whether a marker stood in the midst of a stitch that takes several.
    pub crosses_marker: bool,
}

/// Whether a line comes out, and if not why.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Outcome {
    /// Every stitch is used, and none is missing.
    ComesOut,
    /// Stitches are left at the end.
    LeftOver {
        /// How many.
        stitches: u64,
        /// After how many repeats, where the line has any.
        repeats: Option<u64>,
    },
    /// There are too few stitches for the next one.
    RunsOut {
        /// How many are missing for it.
        short: u64,
        /// The how-manyth time it is worked in the line.
        time: u64,
    },
    /// "To the last so many" does not stop there.
    ToLast {
        /// How many were to be left.
        wanted: u64,
        /// How many are left when it is worked once more, or already.
        leaves: u64,
        /// How many are left when it is not.
        before: u64,
        /// How often it was worked by then.
        repeats: u64,
    },
    /// A repeat uses no stitch, so that it never comes to its end.
    MakesNothing,
    /// There is no marker, or it is not here.
    NoMarker {
        /// So many stitches on, if there is one.
        ahead: Option<u64>,
    },
    /// The next marker is too near: so many stitches are missing before it.
    PastMarker {
        /// How many are missing.
        short: u64,
    },
    /// There is nothing on the right needle to pass over, or nothing on a holder to return.
    Nothing,
    /// The pattern says another count than there is.
    Differs {
        /// What it says.
        said: u64,
        /// What is.
        is: u64,
    },
    /// Rows are to be repeated that the pattern does not have.
    NoSuchRow {
        /// The first of them.
        row: u32,
    },
    /// A line names some rows, and what it repeats makes others: `Rows 3-8: Rep rows 1-2 four times`.
    OtherRows {
        /// How many it names.
        named: u64,
        /// How many there are.
        made: u64,
    },
    /// Rows are repeated to a length, and change the count, so that it cannot be told after them.
    ByLength,
    /// Repeated until there are so many stitches, which never happens.
    NeverComesTo {
        /// How many were wanted.
        wanted: u64,
        /// The count before it is passed.
        before: u64,
        /// The count after.
        after: u64,
    },
    /// Longer than anybody knits.
    Endless,
    /// Words are not known, so that it was not worked.
    Unread,
    /// Nothing is worked in it: a heading, or a line for rows that never come.
    NotWorked,
    /// Turned in the round and worked on past the beginning: it cannot be told.
    CannotTell,
}

impl Outcome {
    /// Whether a knitter could work the line as it is written.
    pub const fn is_well(self) -> bool {
        matches!(self, Self::ComesOut | Self::NotWorked)
    }
}

/// What may be meant in two ways.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Doubt {
    /// `rep from * 3 times`: after the first, or in all.
    Times,
    /// `BO 5, k10`: whether the stitch that is on the right needle after the bind-off is one of the ten.
    BindOff,
    /// `CO 5, k25`: whether the new stitches are worked in the same row.
    CastOn,
    /// `rep rows 1-4` where row 2 says by itself `rep row 1 twice more`: with that, or without.
    RowsWithin,
}

/// What comes of the line when the doubtful place is meant in the other way.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Otherwise {
    /// What is in doubt.
    pub doubt: Doubt,
    /// Whether the usual meaning was given up for the other, since only that one comes out; then this is the usual one.
    pub is_usual: bool,
    /// Stitches after it.
    pub after: u64,
    /// Whether it comes out so.
    pub outcome: Outcome,
}
