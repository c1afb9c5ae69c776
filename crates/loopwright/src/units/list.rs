//! A list that cannot be read: which piece of it, and what is wrong with that.
//!
//! ```
//! use loopwright::sizing::read_sizes;
//! use loopwright::units::LengthUnit;
//!
//! let text = "S 81-86, M 91-";
//! assert_eq!(read_sizes(text, LengthUnit::Cm).unwrap_err().piece(text), "91-");
//! ```

use super::parse::Unreadable;

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
