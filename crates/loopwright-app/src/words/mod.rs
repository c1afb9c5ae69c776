//! Every sentence of the app, made in this one place, in the language the page is built for.
//!
//! The maths hands over data; these functions write it. Each match is exhaustive, so that a missing sentence does not
//! compile. A language is a folder with a file for each tool and a few that all tools share, and it is chosen when the
//! page is built: one language, one WebAssembly. What is stored and linked are keys, and the same in all.

// The stub takes the place of some of these sentences.
#[cfg_attr(feature = "bracketed", allow(dead_code))]
mod english;

#[cfg(feature = "bracketed")]
mod bracketed;

#[cfg(feature = "bracketed")]
pub use bracketed::*;
#[cfg(not(feature = "bracketed"))]
pub use english::*;

/// What a tool is called, and the question it answers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Title {
    /// The trade's word for it.
    pub name: &'static str,
    /// The question it answers, in one line.
    pub asks: &'static str,
}

/// What a thing to choose is called where it is chosen.
pub trait Worded {
    /// Its words.
    fn words(self) -> &'static str;
}
