//! Published tables and rules of practice, each row with where it comes from and how sure we are of it.
//!
//! A table is data, not a formula, and its rows differ in how far they can be trusted. So each row carries a
//! [`Source`], which cannot be made without a mark, and the page prints the mark beside the value in small type.
//!
//! ```
//! use loopwright::tables::Certainty;
//! assert!(Certainty::Read.is_from_outside() && Certainty::Quoted.is_from_outside());
//! assert!(!Certainty::Practice.is_from_outside());
//! ```

pub mod body;
pub mod fit;
mod marks;
pub mod needle;
mod source;
pub mod yarn_weight;

pub use source::{Source, Taken};

/// How sure we are of a value, and of what kind it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Certainty {
    /// Published, and read in the source that is named beside it.
    Read,
    /// Published, and read as others quote it: the source that is named was not read.
    Quoted,
    /// Written down from memory: if a source is named, it was not read for it.
    FromMemory,
    /// Common practice, no source.
    Practice,
    /// Follows from other values by the sum that is shown.
    Computed,
}

impl Certainty {
    /// Whether it was taken from somebody else, as against practice and sums of our own.
    pub const fn is_from_outside(self) -> bool {
        matches!(self, Self::Read | Self::Quoted | Self::FromMemory)
    }
}
