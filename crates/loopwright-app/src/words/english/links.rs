//! The words of the page for whoever writes links.

use super::intl::{fill_pattern, fill_pattern_with};
use super::problem::amount;
use loopwright::bounds::Bounds;
use loopwright::units::{Length, Mass, Measure};

pub const TITLE: &str = "Links, for those who write them";
/// The way here.
pub const WAY: &str = "For those who write links: every tool, field and choice";
pub const WHAT: &str = "A link opens a tool with its fields filled in. Behind the address of this page stand #/ and the tool, then ? and the fields, each with = and its text, with & between them:";
pub const UNIT: &str =
    "A unit stands beside its field. A number without one is in the unit that is named first for its field:";
pub const SIGNS: &str = "Spaces and signs are written as in any address: %20 is a space, %2F a stroke, so that 7 1/2 is 7%201%2F2. What a field takes is read as if it was typed, and whoever opens the link sees it there.";
pub const LEFT_OUT: &str = "A field that a tool does not have is left out, and so is a text longer than 4 kB; the page then says which. A unit or a choice that it does not know stays in its field, and the page says what to write instead.";
pub const TRY: &str = "Open it";

pub const UNITS: &str = "Units";
pub const LENGTHS: &str = "lengths";
pub const WEIGHTS: &str = "weights";
pub const SPANS: &str = "what a gauge is counted over";
pub const BY_NAME: &str = "Their names will do as well, such as inches or grams.";

pub const INSIDE: &str = "Inside another page";
pub const INSIDE_TEXT: &str =
    "There the address has embed/ before the tool, and behind the fields it may say how the tool is shown:";
pub const LOCKED: &str = "fields that are fixed, with commas between them";
pub const CURSOR: &str = "the field with the cursor";
pub const ACCENT: &str = "the colour of links and results, in three or six digits: 8a3324";
pub const LIGHT: &str = "how light it is";
pub const FRAME_UNITS: &str = "in what it measures";
pub const PRINT: &str = "a button that prints";
pub const AFRESH: &str = "a button that starts afresh";
pub const LANGUAGE: &str = "its language, where the page has it";
pub const YES: &str = "asked for";

pub const FIELDS: &str = "The tools and their fields";
pub const EACH: &str = "With s1 the first section is meant, with s2 the second, and so on.";
pub const STARTS: &str = "as long as nothing is chosen";
pub const TEXT: &str = "a text";
pub const LIST: &str = "a list of numbers";
pub const CHOICE: &str = "one of these:";

/// A whole number within bounds.
pub fn count(bounds: Bounds<u32>) -> String {
    fill_pattern("a whole number from # to #", &[bounds.least, bounds.most])
}

/// A repeat with the stitches beside it.
pub fn count_with_plus(bounds: Bounds<u32>) -> String {
    fill_pattern(
        "a whole number from # to #, or two as in 8 + 3",
        &[bounds.least, bounds.most],
    )
}

/// A length within bounds, with the units that the field shows.
pub fn length(bounds: Bounds<Length>, units: &[&str]) -> String {
    measure("a length", bounds, units)
}

/// A weight.
pub fn weight(bounds: Bounds<Mass>, units: &[&str]) -> String {
    measure("a weight", bounds, units)
}

fn measure<T: Measure>(what: &str, bounds: Bounds<T>, units: &[&str]) -> String {
    let [least, most] = [bounds.least, bounds.most].map(|bound| amount(&bound.amount()));
    fill_pattern_with("@ from @ to @, in @", &[], &[what, &least, &most, &units.join(" or ")])
}

/// A needle, by its thickness or its number.
pub fn needle(units: &[&str]) -> String {
    fill_pattern_with(
        "a needle in @, or by its number as in US 6",
        &[],
        &[&units.join(" or ")],
    )
}

/// A gauge, by what is counted in it, with the spans it may be over.
pub fn gauge(is_rows: bool, spans: &[&str]) -> String {
    let counted = if is_rows { "rows" } else { "stitches" };
    fill_pattern_with("@ of a gauge, over @", &[], &[counted, &spans.join(" or ")])
}

/// Several counts of one gauge.
pub fn gauges(is_rows: bool, spans: &[&str]) -> String {
    [&gauge(is_rows, spans), "; several with commas between them"].concat()
}

/// A list of lengths.
pub fn lengths(units: &[&str]) -> String {
    fill_pattern_with("a list of lengths, in @", &[], &[&units.join(" or ")])
}

/// A tool as its fold is called: its name, and what it is called in a link.
pub fn tool(name: &str, id: &str) -> String {
    [name, ": ", id].concat()
}
