//! The words of the first page.

use loopwright::tools::Group;

pub const WELCOME: &str = "Sums for the knitting on your needles";
pub const INTRO: &str =
    "Type two numbers and read what to knit, on the tablet beside your knitting, with or without a network.";
/// What to expect, each a word or two and a sentence.
pub const FACTS: [(&str, &str); 3] = [
    (
        "The sum is shown",
        "Under each answer stands its working, with your numbers in it, and where the rule comes from.",
    ),
    (
        "Nothing is lost",
        "What you type stays as you typed it, through a closed tab, a reload and an update.",
    ),
    (
        "The swatch decides",
        "A number is not a garment. The yarn's label and your own knitting come first.",
    ),
];
pub const GO_ON: &str = "Go on";
pub const STRIP: &str = "A drawn strip of knitting in which five pairs of stitches become one.";

/// When the question comes up.
pub fn group(group: Group) -> &'static str {
    match group {
        Group::Before => "Before casting on",
        Group::Starting => "Starting",
        Group::Needles => "On the needles",
    }
}
