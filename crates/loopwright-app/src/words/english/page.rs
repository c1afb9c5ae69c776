//! The words around every tool: headings, buttons, and what may be said about the storage.

use super::intl::fill_pattern_with;

/// The name of the whole.
pub const NAME: &str = "Loopwright";
/// The link to the list of tools.
pub const HOME: &str = "All tools";
/// The link to the page about storage and care.
pub const ABOUT: &str = "About";
/// For those who go by keyboard.
pub const SKIP: &str = "Skip to the page";
/// Where the less usual fields are.
pub const MORE: &str = "More about this";
/// In place of an answer, when what is wrong is there.
pub const UNDER_MORE: &str = "A figure in the folded part of the question has to change first.";
/// In place of an answer, when what is wrong can be seen.
pub const MEND: &str = "First mend what is marked in the question.";
/// Above the sum.
pub const WORKING: &str = "The working";
/// Above the notes.
pub const NOTES: &str = "Good to know";
/// Above the abbreviations.
pub const MEANINGS: &str = "What the abbreviations mean";
/// Empties a tool's fields.
pub const CLEAR: &str = "Start afresh";
/// Copies the address with the fields in it.
pub const COPY_LINK: &str = "Copy link";
/// After it was copied.
pub const COPIED: &str = "Link copied";
/// Where the browser does not let a page copy.
pub const COPY_THIS: &str = "Copy this link";
/// Prints the answer.
pub const PRINT: &str = "Print";
/// Beside the numbers that would be right.
pub const USE: &str = "Use";
/// Brings them back.
pub const PUT_BACK: &str = "Put mine back";
/// A new version waits.
pub const UPDATE: &str = "A new version is ready. Your figures stay as they are.";
/// Takes it.
pub const UPDATE_NOW: &str = "Use it now";
/// An address without a page.
pub const LOST: &str = "There is no page at this address.";

/// All that was typed is kept.
pub const KEPT: &str = "Kept on this device";
/// A change is on its way.
pub const KEEPING: &str = "Keeping…";
/// Inside another page.
pub const NOTHING_KEPT_INSIDE: &str = "Nothing is kept inside another page";

/// The last changes are on this page but could not be kept.
pub fn not_kept_yet(why: &str) -> String {
    fill_pattern_with("Not kept: @ The next change tries again.", &[], &[why])
}

/// There is no storage.
pub fn kept_in_memory_only(why: &str) -> String {
    fill_pattern_with("Not kept: @ All works until you close the page.", &[], &[why])
}

/// Why: pages may not store.
pub const STORAGE_DENIED: &str = "this browser does not let pages store anything.";
/// Why: no room.
pub const STORAGE_FULL: &str = "the storage of this browser is full.";
/// Why: no answer.
pub const STORAGE_SLOW: &str = "the storage of this browser does not answer.";
/// Why: framed.
pub const STORAGE_INSIDE: &str = "this page is shown inside another.";

/// Why, in the browser's own words.
pub fn storage_broken(what: &str) -> String {
    fill_pattern_with("the storage of this browser failed (@).", &[], &[what])
}

/// The browser will not forget on its own.
pub const WILL_NOT_FORGET: &str = "This browser has promised not to clear it on its own.";
/// It may.
pub const MAY_FORGET: &str = "This browser may clear it when room is short or after some days without a visit. Put the page on your home screen, or save a copy now and then.";
/// Nobody knows.
pub const SOME_FORGET: &str = "Some browsers clear what pages store after seven days without a visit, unless the page is on the home screen. Save a copy now and then.";

/// Beside a value that is common practice.
pub const PRACTICE: &str = "common practice, no source";
/// In place of an answer, when something was typed and only empty fields are left.
pub const STILL: &str = "An empty field of the question is still to be filled.";
