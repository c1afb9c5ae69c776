//! The words of the first page.

use super::intl::{fill_pattern, fill_pattern_with};
use loopwright::tools::Group;

pub const WELCOME: &str = "Sums for the knitting on your needles";
pub const INTRO: &str = "Type in two numbers and read what to knit, with the internet or without.";
pub const SEARCH: &str = "Find";
pub const SEARCH_EXAMPLE: &str = "ease, long tail, short rows";
pub const SHOW_ALL: &str = "Show all";
pub const RECENT: &str = "Used last";
/// What to expect, each a word or two and a sentence.
pub const FACTS: [(&str, &str); 3] = [
    (
        "You see the sum",
        "Under each answer stands the sum with your own numbers in it, and where its rule comes from, or that it has no source.",
    ),
    (
        "It stays as you typed it",
        "What you type is kept in this browser when you close the page, load it again or get a new version. A browser can forget, so save a copy now and then.",
    ),
    (
        "The swatch decides",
        "A number is not a garment. The label on the yarn and your own knitting come first.",
    ),
];
pub const GO_ON: &str = "Go on";
pub const STRIP: &str = "A strip of knitting, drawn: here and there two stitches become one.";

/// When the question comes up.
pub fn group(group: Group) -> &'static str {
    match group {
        Group::Before => "Before you cast on",
        Group::Starting => "Casting on",
        Group::Needles => "On the needles",
        Group::Text => "The pattern on the table",
    }
}

/// Above the tools that were found.
pub fn found(count: u32) -> String {
    fill_pattern("# {tool|tools} for that:", &[count])
}

/// Above all tools, where none was found.
pub fn nothing_found(looked_for: &str) -> String {
    let pattern = "No tool here goes by “@”. Try another word, such as ease, evenly or tail, or look through them all.";
    fill_pattern_with(pattern, &[], &[looked_for])
}
