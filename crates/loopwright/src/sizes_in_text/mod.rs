//! One size marked through the text of a pattern.
//!
//! A knitter's first act is to take a copy of her pattern and mark her size through all of it, since one number read from
//! the wrong place costs an evening. Here every list of the text that has a number for each size is found, with the place
//! of each number; what could be something else is pointed at and never guessed.
//!
//! # What is a list
//!
//! Tokens are those of [`printed`](crate::units::printed), and so is what a number, a fraction, a range and a unit is.
//!
//! ```text
//! list      = bracketed | in one bracket | row | names
//! bracketed = entry bracket { bracket } [ [ "more" ] unit ]   96 (108, 120) sts   96[108:120]   1 (2) [3] {4}   - (4, 6)
//!           | entry bracket { entry bracket } [ entry ]       21 (22) 23 (24) 25, where it has as many as there are sizes
//! bracket   = "(" { entry | mark | bracket } ")"              of three kinds, one within another, over the end of a line
//! row       = entry mark entry { mark entry } [ unit ]        8/9/10   81:86:91   81-86-91   81 | 86 | 91   96, 108, 120
//! names     = name { mark | bracket | name [ ":" ] entry }    S (M, L)   S 96, M 108, L 120
//! entry     = number [ unit ] [ dash number [ unit ] ]        34"-36"   7½   6th
//!           | dash                                            this size has no such step
//! mark      = "," | ";" | ":" | "/" | "|" | "and"
//! ```
//!
//! # What is none
//!
//! - What has words in its bracket: `(k1, p1) 3 times`, `4 mm (US 6)`, `14 sts (2 sts each side)`, `(8 sts dec'd)`. A list
//!   within such a bracket is found: `(8 (10, 12) sts dec'd)`.
//! - A number with another one in another unit: `4" (10 cm)`, `22 sts x 30 rows`.
//! - Of three sizes and more, one number and one in a bracket of which one has a unit: `Row 12 (96 sts)`.
//! - A range: `rows 1-4`. In `rows 1-2 3 (4, 5) more times` the list begins with 3, and in `rows 1-4 (6, 8)` with 4.
//! - Numbers in a row behind `rows`, `rounds`, `pages` and the like; a date with its year; a number of a telephone or a book.
//! - Commas alone: a list where the whole text prints no other lists than these, and in doubt where it does.
//! - Of two sizes, a slash between two numbers where other lists have brackets: `2/2` is a cable.
//!
//! What is said to some of the sizes in words, `Sizes M and L only: work 4 more rows`, is in no list: [`for_some`] points at
//! the words.
//!
//! # What is in doubt
//!
//! Each [`DoubtKind`] says one. A list that is in doubt is shown whole until she has said what it is, and her word
//! ([`Decision`]) is kept by the words of its line. That a pattern prints its numbers in order, and which numbers are too
//! far from each other, is common practice, no source.
//!
//! ```
//! use loopwright::sizes_in_text::{Hers, find, named, pieces, plain_text};
//!
//! let text = "Sizes: S (M, L)\nCast on 96 (108, 120) sts. Work (k1, p1) for 6 (7, 7½)\" (15 [18, 19] cm).\n\
//!             Row 1: K6 (7, 8), p2; rep rows 1-2 3 (-, 4) more times.";
//! let sizes = &named(text)[0];
//! assert_eq!(sizes.names, ["S", "M", "L"]);
//!
//! let found = find(text, &sizes.names);
//! assert_eq!(found.lists.len(), 6);
//! assert_eq!(found.doubts().count(), 0);
//! let medium = Hers::one(1);
//! assert_eq!(
//!     plain_text(text, &found, &medium, &[]),
//!     "Sizes: M\nCast on 108 sts. Work (k1, p1) for 7\" (18 cm).\nRow 1: K7, p2; rep rows 1-2 - more times."
//! );
//! // The pieces are the text, each byte once.
//! let shown = pieces(text, &found, &medium, &[]);
//! assert_eq!(shown.iter().map(|piece| &text[piece.range.clone()]).collect::<String>(), text);
//! ```

mod ask;
mod bracketed;
mod called;
mod choices;
mod counts;
mod decision;
mod figure;
mod find;
mod for_some;
mod group;
mod hers;
mod judge;
mod kept;
mod lines;
mod list;
mod marked;
mod named;
mod order;
mod pieces;
mod row;
mod scan;
mod shape;

pub use ask::{Answer, HerCount, Question, SIZES, TEXT, answer, read_names};
pub use choices::{Name, Show};
pub use counts::{Part, StitchCount, counts};
pub use decision::{Decision, ListPlace, Verdict};
pub use find::find;
pub use for_some::{ForSome, for_some};
pub use hers::{FromLine, Hers, Join};
pub use kept::{
    print_size, read_decisions, read_from_lines, read_size, with_decision, with_from_line, without_decision,
    without_from_line,
};
pub use lines::{LinePlace, Lines, line_number};
pub use list::{Doubt, DoubtKind, Entry, EntryKind, Found, List, Style, UnitOnce};
pub use marked::{Asked, MarkedLine};
pub use named::{Says, SizesLine, named};
pub use pieces::{Piece, PieceKind, only_hers, pieces, plain_text};

#[cfg(test)]
mod tests;
