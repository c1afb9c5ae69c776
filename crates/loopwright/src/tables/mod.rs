//! Published tables and rules of practice, each row with where it comes from and how sure we are of it.
//!
//! A table is data, not a formula, and its rows differ in how far they can be trusted. So each row carries a
//! [`Certainty`], and the page prints it beside the value in small type.
//!
//! ```
//! use loopwright::tables::Certainty;
//! assert!(Certainty::Seen.is_published() && Certainty::FromMemory.is_published());
//! assert!(!Certainty::Practice.is_published());
//! ```

pub mod body;
pub mod fit;
pub mod needle;
pub mod yarn_weight;

/// How sure we are of a value, and of what kind it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Certainty {
    /// Published, and read in the source that is named beside it.
    Seen,
    /// Published, but written down from memory: the source that is named was not read for it.
    FromMemory,
    /// Common practice, no source.
    Practice,
    /// Follows from other values by the sum that is shown.
    Computed,
}

impl Certainty {
    /// Whether somebody published it, as against practice and sums of our own.
    pub const fn is_published(self) -> bool {
        matches!(self, Self::Seen | Self::FromMemory)
    }
}
