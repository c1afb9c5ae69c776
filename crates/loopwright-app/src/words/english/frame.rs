//! The words of a tool that is shown inside another page.

use super::intl::{fill_pattern, fill_pattern_with};
use super::taken::name as told;

pub const OPEN: &str = "Open in Loopwright";
/// A pattern that was pasted here is not taken along.
pub const OPEN_WITHOUT_PATTERN: &str = "Open in Loopwright, without the text";
/// Beside a field that is not to be changed.
pub const LOCKED: &str = "fixed";
pub const LOCKED_NOTE: &str = "What has a lock beside it is fixed by this page.";

pub const LIGHT_HOST: &str = "as the page around it";
pub const LIGHT_DAY: &str = "light";
pub const LIGHT_DUSK: &str = "dusk";
pub const UNITS_CENTIMETRES: &str = "centimetres";
pub const UNITS_INCHES: &str = "inches, with US needles";

/// There is no option of this name.
pub fn no_option(name: &str) -> String {
    fill_pattern_with(
        "“@” is nothing that a frame of this version knows, so it is left out.",
        &[],
        &[&told(name)],
    )
}

/// An option has no such value.
pub fn no_value(name: &str, value: &str) -> String {
    fill_pattern_with(
        "“@” is nothing that “@” can be, so that stays as it usually is.",
        &[],
        &[&told(value), name],
    )
}

/// A text is no colour.
pub fn no_colour(text: &str) -> String {
    fill_pattern_with(
        "“@” is no colour that is taken here: write three or six digits, 0 to 9 and a to f, such as 8a3324.",
        &[],
        &[&told(text)],
    )
}

/// A colour cannot be read by day.
pub fn faint_by_day(colour: &str) -> String {
    fill_pattern_with(
        "#@ is too pale to be read on light paper, so it is not used. Choose a darker colour.",
        &[],
        &[colour],
    )
}

/// A colour cannot be read at dusk.
pub fn faint_at_dusk(colour: &str) -> String {
    fill_pattern_with(
        "#@ is too dark to be read at dusk, so it is not used. Choose a lighter colour.",
        &[],
        &[colour],
    )
}

/// A colour cannot be read anywhere.
pub fn faint_anywhere(colour: &str) -> String {
    fill_pattern_with(
        "#@ can be read neither on light paper nor at dusk, so it is not used. Choose a darker or a lighter colour.",
        &[],
        &[colour],
    )
}

/// There is no such field.
pub fn no_field(key: &str) -> String {
    fill_pattern_with("This tool has no field “@”.", &[], &[&told(key)])
}

/// A field is to be locked and holds nothing.
pub fn locked_empty(label: &str) -> String {
    fill_pattern_with(
        "“@” was to be fixed, but nothing stands in it, so it can be filled in.",
        &[],
        &[label],
    )
}

/// How much more there is to say of an address than what is said.
pub fn more_faults(number: usize) -> String {
    let number = u32::try_from(number).unwrap_or(u32::MAX);
    fill_pattern(
        "# {part|parts} more of the address {is|are} not understood here.",
        &[number],
    )
}
