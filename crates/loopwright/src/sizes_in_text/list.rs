//! What is found in a text: its lists, each with its numbers and their places, and what is in doubt about it.

use super::Lines;
use crate::units::Unit;
use std::ops::Range;

/// All that was found in a text.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Found {
    /// How many sizes there are.
    pub sizes: usize,
    /// The lists, in the order of the text; none lies within another one.
    pub lists: Vec<List>,
    /// The lines of the text.
    pub lines: Lines,
}

impl Found {
    /// The lists of which something is in doubt.
    pub fn doubts(&self) -> impl Iterator<Item = (&List, &Doubt)> {
        self.lists
            .iter()
            .filter_map(|list| list.doubt.as_ref().map(|doubt| (list, doubt)))
    }
}

/// One list: a number for each size.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct List {
    /// Where it stands, from its first number to its last bracket, or to the unit behind that.
    pub range: Range<usize>,
    /// The line in which it begins, counted from nought.
    pub line: usize,
    /// The how-manyth list of its line it is, counted from nought.
    pub nth: usize,
    /// How it is printed.
    pub style: Style,
    /// Its numbers, one for each size where nothing is in doubt.
    pub entries: Vec<Entry>,
    /// A unit that is printed once and counts for all.
    pub unit: Option<UnitOnce>,
    /// What has to be asked.
    pub doubt: Option<Doubt>,
}

impl List {
    /// What is counted or measured, where that is printed.
    pub fn measured_in(&self) -> Option<Unit> {
        let once = self.unit.as_ref().map(|once| once.unit);
        once.or_else(|| self.entries.iter().find_map(|entry| entry.unit))
    }
}

/// How a list is printed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Style {
    /// The first number, and the others in brackets: `96 (108, 120)`.
    Brackets,
    /// All of them in one bracket: `(96, 108, 120)`.
    OneBracket,
    /// `8/9/10`
    Slashes,
    /// `81:86:91`
    Colons,
    /// `81-86-91`
    Dashes,
    /// `81 | 86 | 91`
    Bars,
    /// Commas, spaces or `and` alone: `96, 108 and 120`.
    Bare,
    /// The names of the sizes: `S (M, L)`.
    Names,
    /// Each number beside the name of its size: `S 96, M 108, L 120`.
    BesideNames,
}

/// What stands in a list for one size.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Entry {
    /// Where it stands, with the unit that is its own.
    pub range: Range<usize>,
    /// What it is.
    pub kind: EntryKind,
    /// The unit that stands behind it, and not once for all.
    pub unit: Option<Unit>,
    /// Where its number, or the first of its two, stands without a unit.
    pub number: Range<usize>,
}

/// What an entry is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum EntryKind {
    /// One number: `96`, `7½`.
    Number,
    /// One of an order: `6th`.
    Ordinal,
    /// From one number to another: `34"-36"`.
    Span,
    /// A dash in place of a number: this size has no such step.
    NoStep,
    /// The name of a size.
    Name,
}

/// A unit that counts for every number of its list.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct UnitOnce {
    /// Which.
    pub unit: Unit,
    /// Where it stands, with the space before it: behind the list, behind its last number, or behind its first.
    pub range: Range<usize>,
}

/// Something about a list that has to be asked: what, and at which place of it.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Doubt {
    /// What.
    pub kind: DoubtKind,
    /// The place to point at.
    pub at: Range<usize>,
}

/// What is in doubt about a list.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum DoubtKind {
    /// It has fewer numbers than there are sizes.
    TooFew,
    /// It has more numbers than there are sizes.
    TooMany,
    /// Its numbers neither rise nor fall, or fall where all other lists rise.
    OutOfOrder,
    /// A number is so many times its neighbour that a decimal point or a digit may be missing.
    FarApart,
    /// A bracket is closed by one of another kind.
    WrongBracket,
    /// A bracket is never closed.
    NotClosed,
    /// A bracket is closed that was never opened.
    NotOpened,
    /// A unit stands behind some of the numbers, and not behind the others.
    UnitAmong,
    /// Something stands among the numbers that is none.
    Strange,
    /// The first is a range and the others are not: it may be a range that the list ends.
    SomeRanges,
    /// It may be a repeat: `K6 (K7, K8)`.
    MayBeRepeat,
    /// What stands in the bracket may be a count, said in passing: `dec 4 sts (92)`.
    MayBeCount,
    /// They may be several numbers that all sizes have: `at 4, 8, 12 cm`.
    MayBeForAll,
    /// It may be a date.
    MayBeDate,
}
