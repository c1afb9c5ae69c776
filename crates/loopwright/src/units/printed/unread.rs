//! A list that cannot be read: which piece of it, and what is wrong with that.
//!
//! ```
//! use loopwright::sizing::read_sizes;
//! use loopwright::units::LengthUnit;
//! use loopwright::units::printed::what_was_read;
//!
//! let text = "81: (86, 91, 97)";
//! let unread = read_sizes(text, LengthUnit::Cm).unwrap_err();
//! assert_eq!(unread.piece(text), "81");
//! assert_eq!(what_was_read(text, unread), ["86", "91", "97"]);
//! ```

use super::read;
use crate::units::parse::Unreadable;
use std::ops::Range;

/// A piece of a list that could not be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Unread {
    /// Where in the text the piece begins, in bytes.
    pub from: usize,
    /// Where it ends.
    pub to: usize,
    /// What is wrong with it.
    pub why: WhyUnread,
}

impl Unread {
    /// Something is wrong with all of a text.
    pub const fn whole(text: &str, why: WhyUnread) -> Self {
        Self {
            from: 0,
            to: text.len(),
            why,
        }
    }

    /// Something is wrong with what stands here.
    pub const fn at(place: &Range<usize>, why: WhyUnread) -> Self {
        Self {
            from: place.start,
            to: place.end,
            why,
        }
    }

    /// The piece, of the text that was read.
    pub fn piece(self, text: &str) -> &str {
        text.get(self.from..self.to).unwrap_or(text)
    }
}

/// What is wrong with a piece of a list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum WhyUnread {
    /// A number that cannot be one of these.
    Number(Unreadable),
    /// A mark that has no place in a list.
    Misplaced,
    /// A number that would be left unused.
    Unused,
    /// Centimetres and inches that are not the same girths.
    TwoUnits,
    /// More than one list.
    TwoLists,
    /// No names, and the largest number is so many times the smallest that some of them are no girths.
    FarApart,
    /// Not as many numbers as there are sizes.
    NotAsMany {
        /// How many there are.
        numbers: usize,
        /// How many sizes there are.
        sizes: usize,
    },
}

/// The numbers of a text that were read, as written: all but those in the piece that was not.
pub fn what_was_read(text: &str, unread: Unread) -> Vec<&str> {
    let reading = read(text);
    let figures = reading.entries.iter().filter_map(|entry| entry.figures.as_ref());
    let read = figures
        .map(super::Figures::range)
        .filter(|range| range.end <= unread.from || range.start >= unread.to);
    read.filter_map(|range| text.get(range)).collect()
}
