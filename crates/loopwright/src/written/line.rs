//! What was read, as data: a pattern is lines, a line is what is worked in it, each with its place in the text.

use super::name::{Manner, StitchName};
use super::place::Place;
use crate::terms::Side;

/// The lines of a pattern as they were read.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Pattern {
    /// How many sizes there are.
    pub sizes: usize,
    /// Its lines, in the order of the text.
    pub lines: Vec<Line>,
    /// Brackets right behind a number, which might be sizes or a repeat, and as which they were read.
    pub brackets: Vec<Bracketed>,
}

/// A bracket right behind a number, and what it was taken for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Bracketed {
    /// Where it stands.
    pub place: Place,
    /// Whether it holds the numbers of the other sizes; otherwise it is repeated.
    pub is_sizes: bool,
}

/// One line: a row, a round, several that are alike, or a sentence.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Line {
    /// Where it stands.
    pub place: Place,
    /// What it is called: `Row 1 (RS)`.
    pub label: Option<Label>,
    /// What is worked, in order.
    pub items: Vec<Item>,
    /// Words that say nothing by themselves, or belong to what was not understood.
    pub passed: Vec<Place>,
    /// Whether all of it was understood; otherwise it is not worked.
    pub is_whole: bool,
}

impl Line {
    /// The rows that were worked before, where the line is those and nothing else: `Rows 5-8: Rep rows 1-4`. A line that
    /// stands for one row without a number may still repeat as many as it likes: `Next row: Rep rows 1-4 twice`.
    pub(super) fn as_before(&self) -> Option<(&RowsAgain, Place)> {
        let label = self.label.as_ref()?;
        let mut worked = self.items.iter().filter(|item| !matches!(item.doing, Doing::Said(_)));
        let (Some(only), None) = (worked.next(), worked.next()) else {
            return None;
        };
        let Doing::RowsAgain(again) = &only.doing else {
            return None;
        };
        let is_named = again.often == RowsOften::Named;
        let is_as_before = match label.many() {
            Some(1) => is_named || !label.rows.is_empty(),
            Some(_) => true,
            // `Even rows: As row 2` is the same row each time.
            None => is_named && label.every.is_some() && again.rows.many() == 1,
        };
        is_as_before.then_some((again, only.place))
    }
}

/// What a line is called.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Label {
    /// Where it stands, with its colon.
    pub place: Place,
    /// Whether it says row or round, where it says either.
    pub round: Option<bool>,
    /// The numbers it names, each from the first to the last; none of `Next row`.
    pub rows: Vec<(u32, u32)>,
    /// Which others it stands for beside those: `and all even rows`.
    pub every: Option<Every>,
    /// The side it names.
    pub side: Option<Side>,
    /// How many rows it stands for where it says so: four of `Next 4 rows`.
    pub times: u32,
    /// The label as it is written, without the mark behind it.
    pub called: String,
}

impl Label {
    /// How many rows it names; none where it does not say, as `Even rows` or `Yoke`.
    pub(super) fn many(&self) -> Option<u64> {
        match (self.every, self.rows.as_slice(), self.round) {
            (Some(_), ..) | (None, [], None) => None,
            (None, [], Some(_)) => Some(self.times.into()),
            (None, rows, _) => Some(in_all(rows)),
        }
    }

    /// How many of the rows that it names stand before this one.
    pub(super) fn place_among(&self, row: u32) -> u64 {
        let mut before = 0;
        for (first, last) in &self.rows {
            if (*first..=*last).contains(&row) {
                return before + u64::from(row - first);
            }
            before += u64::from(last - first) + 1;
        }
        before
    }
}

/// How many rows these are.
fn in_all(rows: &[(u32, u32)]) -> u64 {
    rows.iter().map(|(first, last)| u64::from(last - first) + 1).sum()
}

/// Which rows a line stands for, where they are not named one by one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Every {
    /// Rows 2, 4, 6 ...
    Even,
    /// Rows 1, 3, 5 ...
    Odd,
    /// Every row of a side. Which rows that are follows from row 1.
    Side(Side),
}

/// One thing that is done, and where it is written.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Item {
    /// Where it stands.
    pub place: Place,
    /// What is done.
    pub doing: Doing,
}

/// What is done.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Doing {
    /// Stitches of one kind.
    Stitches(Stitches),
    /// What is worked again and again.
    Repeat(Repeat),
    /// All of a bracket worked into one stitch: `(k1, yo, k1) in next st`.
    IntoOne(Vec<Item>),
    /// `pm`
    PlaceMarker,
    /// `sm`
    SlipMarker,
    /// `rm`
    RemoveMarker,
    /// `BO 5`, or all of them.
    BindOff(Share),
    /// `CO 5`
    CastOn(Amount),
    /// `place next 20 sts on holder`
    Hold(Share),
    /// `return held sts to needle`
    Return,
    /// `BO 5 sts at beg of next 2 rows`: each of so many rows begins so and goes on to its end.
    AtStartOfRows(Box<Item>, Amount),
    /// `join`
    Join,
    /// `turn`
    Turn,
    /// `w&t`
    WrapAndTurn,
    /// `Knit 4 rows`: each of so many rows all the way in this stitch.
    Rows(StitchName, Amount),
    /// `Work in St st for 2 inches`: rows in this stitch all the way, as many as make the length.
    RowsToLength(StitchName, Length),
    /// `Repeat rows 1-2 3 times more`
    RowsAgain(RowsAgain),
    /// What the pattern says there is: `(96 sts)`.
    Said(Said),
}

/// Stitches of one kind.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Stitches {
    /// Which.
    pub name: StitchName,
    /// Where its word stands.
    pub word: Place,
    /// How many.
    pub count: Count,
    /// How they are made.
    pub manner: Vec<Manner>,
}

/// How many.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Count {
    /// One: no number is said.
    One,
    /// So many.
    Of(Amount),
    /// As far as that.
    Reach(Reach),
}

/// How far something goes on.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Reach {
    /// To the end of the row.
    End,
    /// Until so many are left.
    Last(Amount),
    /// To the next marker, or to so many stitches before it.
    Marker(Option<Amount>),
}

/// A number, or one for each size.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Amount {
    /// Where it stands.
    pub place: Place,
    /// One for all sizes, or one for each.
    pub figures: Vec<Figure>,
}

/// A number of a list; none where a dash stands for it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Figure {
    /// Where it stands.
    pub place: Place,
    /// What it says.
    pub value: Option<u32>,
}

impl Amount {
    /// The number of one size; none where it has none.
    pub fn of(&self, size: usize) -> Option<Figure> {
        let alone = if self.figures.len() == 1 { 0 } else { size };
        self.figures.get(alone).copied()
    }

    /// What it says for one size: nought where a dash stands.
    pub fn value(&self, size: usize) -> u64 {
        self.of(size).and_then(|figure| figure.value).map_or(0, u64::from)
    }
}

/// So many stitches, or all that are left.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Share {
    /// So many.
    Of(Amount),
    /// All that are left.
    Rest,
}

/// What is worked again and again.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Repeat {
    /// What.
    pub body: Vec<Item>,
    /// How often.
    pub often: Often,
    /// How many asterisks stand before it; none where it is in a bracket.
    pub stars: Option<u8>,
    /// What it is some of the times: `but K2 the 5th and 10th time`.
    pub but: Option<Box<But>>,
}

/// How often.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Often {
    /// So many times, and what that counts.
    Times(Amount, Counted),
    /// As far as that.
    Reach(Reach),
}

/// What "so many times" counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Counted {
    /// All times: `(k2, p2) 3 times`, `3 times in all`.
    All,
    /// Those after the first: `rep from * 3 times more`.
    More,
    /// It is not said: `rep from * 3 times` is four in all to most, and three to some.
    Unsaid,
}

/// What a bracket is some of the times.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct But {
    /// What is worked in place of the first run of the same stitch.
    pub instead: Stitches,
    /// Which times, each larger than the one before.
    pub at: Vec<u32>,
}

/// Rows that were worked, worked again.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct RowsAgain {
    /// Which.
    pub rows: WhichRows,
    /// How often.
    pub often: RowsOften,
}

/// Which rows are worked again.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum WhichRows {
    /// By their numbers, each from the first to the last.
    Numbered(Vec<(u32, u32)>),
    /// So many that came last.
    Last(u32),
}

impl WhichRows {
    /// How many they are.
    pub(super) fn many(&self) -> u64 {
        match self {
            Self::Numbered(rows) => in_all(rows),
            Self::Last(many) => (*many).into(),
        }
    }
}

/// How often rows are worked again.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum RowsOften {
    /// So many times.
    Times(Amount, Counted),
    /// Until there are so many stitches.
    Until(Amount),
    /// As often as makes the rows that the line names: `Rows 5-8: Rep rows 1-4`, `Row 4: As row 2`.
    Named,
    /// As often as makes a length: `rep rows 1-2 for 5 cm`.
    ToLength(Length),
}

/// How long something becomes. How many rows that are is not known to the one who reads it.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Length {
    /// Where it is written.
    pub place: Place,
    /// As it is written: `until piece measures 10 (11, 12) in from cast-on edge`.
    pub written: String,
}

/// What the pattern says there is.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Said {
    /// So many stitches on the needle.
    Total(Amount),
    /// So many more than before.
    Gained(Amount),
    /// So many fewer than before.
    Lost(Amount),
}
