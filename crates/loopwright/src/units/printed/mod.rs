//! Number lists as patterns print them: `96 (108, 120)`, `81 [86: 91: 97]`, `81-86-91-97`, `34"-36" (38"-40")`.
//!
//! Two steps, each of use by itself. [`tokens`] cuts any text into numbers, words, units, brackets and the marks between
//! them, each with its place. [`read`] makes entries of them by recursive descent:
//!
//! ```text
//! list   = { entry | bracket | parting mark | unit }       a unit behind entries counts for all that have none
//! bracket = "(" list ")"                                    of three kinds, one within another
//! entry  = [ words ":" ] [ words ] [ figure ] [ words ]     words before a colon are its name
//! figure = number [ unit ] [ dash number [ unit ] ]         a range; or a dash alone: this size has none
//! ```
//!
//! Commas, semicolons, slashes, bars, lines and `and` part entries; so do colons between numbers, in brackets or where
//! three or more stand in a row, and dashes where three or more numbers are parted by them, since that cannot be a range.
//! Spaces part numbers too. What a word means is left to who asks: a tool of sizes knows that `finished` is a garment.
//!
//! Nothing is dropped: every sign that says a number is in an entry, or is pointed at in [`Reading::unplaced`].
//!
//! To find lists in running text, cut the text once, and look for a number that a bracket, a slash or a dash with another
//! number follows; [`read`] the piece from its first to its last token.
//!
//! ```
//! use loopwright::units::printed::{Figures, read};
//!
//! let text = "S (M, L): 34\"-36\" (38\"-40\", 42\"-44\")";
//! let reading = read(text);
//! let ranges = reading.entries.iter().filter(|entry| matches!(entry.figures, Some(Figures::Range(..))));
//! assert_eq!(ranges.count(), 3);
//! assert!(reading.unplaced.is_empty());
//!
//! // Three numbers and more with dashes between are a list.
//! assert_eq!(read("82–90–98–106").entries.len(), 4);
//! // What has no place is pointed at.
//! assert_eq!(read("86 + 91").unplaced, [3..4]);
//! ```

mod figure;
mod parse;
mod token;
mod unread;

pub use parse::read;
pub use token::{Bracket, Token, TokenKind, tokens};
pub use unread::{Unread, WhyUnread, what_was_read};

use crate::units::Unit;
use std::ops::Range;

/// A list as it was read.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Reading {
    /// Its entries, in the order of the text; brackets only part them.
    pub entries: Vec<Entry>,
    /// How many of them stand before the first colon, where there is one that parts no numbers.
    pub before_colon: Option<usize>,
    /// The first unit that counts for numbers.
    pub unit: Option<Unit>,
    /// Where something stands that has no place in a list.
    pub unplaced: Vec<Range<usize>>,
}

/// One entry: what it is called, and its number.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Entry {
    /// The words before its colon. A number there is a name.
    pub head: Vec<Range<usize>>,
    /// The words before its number, or alone. Words that a dash or a slash joins are one: `X-Small`, `M/L`.
    pub before: Vec<Range<usize>>,
    /// Its number.
    pub figures: Option<Figures>,
    /// The words behind its number.
    pub after: Vec<Range<usize>>,
    /// Its line, counted from nought. A line that ends in a comma goes on.
    pub row: usize,
}

/// The number of an entry, or its two.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Figures {
    /// A dash in place of a number: nothing for this size.
    Nothing(Range<usize>),
    /// One number.
    One(Figure),
    /// From the one to the other, as written.
    Range(Figure, Figure),
    /// A range whose other end is missing; the place of its dash.
    Open(Figure, Range<usize>),
}

impl Figures {
    /// Where they stand, without a unit behind them.
    pub fn range(&self) -> Range<usize> {
        match self {
            Self::Nothing(dash) => dash.clone(),
            Self::One(figure) => figure.range.clone(),
            Self::Range(from, to) => from.range.start..to.range.end,
            Self::Open(figure, dash) => figure.range.start..dash.end,
        }
    }

    /// The numbers, as written.
    pub fn each(&self) -> impl Iterator<Item = &Figure> {
        let (first, second) = match self {
            Self::Nothing(_) => (None, None),
            Self::One(figure) | Self::Open(figure, _) => (Some(figure), None),
            Self::Range(from, to) => (Some(from), Some(to)),
        };
        first.into_iter().chain(second)
    }

    /// A unit behind them counts for those that have none.
    fn measure(&mut self, unit: Unit) {
        let measure = |figure: &mut Figure| {
            figure.unit.get_or_insert(unit);
        };
        match self {
            Self::Nothing(_) => {}
            Self::One(figure) | Self::Open(figure, _) => measure(figure),
            Self::Range(from, to) => {
                measure(from);
                measure(to);
            }
        }
    }
}

/// A number as written, and its unit.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Figure {
    /// Where it stands.
    pub range: Range<usize>,
    /// The unit behind it, or behind its list.
    pub unit: Option<Unit>,
}

#[cfg(test)]
mod tests;

#[cfg(test)]
pub(crate) mod styles;
