//! A stub of a language, for the tests: twenty of its sentences stand in brackets, all others are English. It shows that
//! another language can take the place of any sentence, and that nothing but this folder and two lines beside it is
//! touched for that. A real language leaves the English folder out and has all files of its own.

pub use super::english::*;

/// The words around every tool.
pub mod page {
    pub use crate::words::english::page::*;

    /// The link to the list of tools.
    pub const HOME: &str = "[All tools]";
    /// The link to the page about storage and care.
    pub const ABOUT: &str = "[About]";
    /// For those who go by keyboard.
    pub const SKIP: &str = "[Skip to the page]";
    /// Where the less usual fields are.
    pub const MORE: &str = "[More about this]";
    /// Above the sum.
    pub const WORKING: &str = "[The working]";
    /// Above the notes.
    pub const NOTES: &str = "[Good to know]";
    /// Empties a tool's fields.
    pub const CLEAR: &str = "[Start afresh]";
    /// Copies the address with the fields in it.
    pub const COPY_LINK: &str = "[Copy link]";
    /// Prints the answer.
    pub const PRINT: &str = "[Print]";
    /// Beside the numbers that would be right.
    pub const USE: &str = "[Use]";
    /// Beside a value that is common practice.
    pub const PRACTICE: &str = "[common practice, no source]";
    /// All that was typed is kept.
    pub const KEPT: &str = "[Kept on this device]";
}

/// The words of even spacing.
pub mod spacing {
    pub use crate::words::english::spacing::*;
    use crate::words::{Title, english};
    use loopwright::spacing::{Answer, Name, Note};

    /// What it is called.
    pub const TITLE: Title = Title {
        name: "[Even spacing]",
        asks: "[Lose or gain stitches evenly across a round or a row.]",
    };
    /// Before the first field.
    pub const I_HAVE: &str = "[I have]";
    /// Where the answer will be.
    pub const WAITING: &str = "[The row you knit appears here.]";

    /// What a field is called.
    pub const fn label(name: Name) -> &'static str {
        match name {
            Name::Stitches => "[Stitches on the needle]",
            Name::Amount => "[How many]",
            other => english::spacing::label(other),
        }
    }

    /// Below the row: the count.
    pub fn outcome(answer: &Answer) -> (String, String) {
        let (before, after) = english::spacing::outcome(answer);
        (format!("[{before}]"), format!("[{after}]"))
    }

    /// One note.
    pub fn note(note: &Note) -> String {
        format!("[{}]", english::spacing::note(note))
    }
}
