//! The one sentence about what was left out of something that somebody else wrote.

use super::intl::{fill_pattern, fill_pattern_with};

/// Letters of a name that are enough to know it by.
const ENOUGH: usize = 40;

/// What something was left out of.
pub struct Of {
    /// Before the reasons.
    parts: &'static str,
    /// Why, where there is nothing of that name.
    pub unknown: &'static str,
}

pub const LINK: Of = Of {
    parts: "# {part|parts} of the link {is|are} @ and {was|were} left out: @.",
    unknown: "not known to this tool",
};
pub const COPY: Of = Of {
    parts: "# {part|parts} of the copy {is|are} @ and {was|were} left out: @.",
    unknown: "not known here",
};
pub const TOO_LONG: &str = "longer than 4 kB";
pub const TOO_MANY: &str = "more than anyone has";
pub const HERS: &str = "a pattern's text, which no link brings";
pub const REPEATED: &str = "there more than once";

/// What was left out, how much of it, why, and the first names.
pub fn left_out(of: &Of, number: usize, reasons: &[&str], told: &[String]) -> String {
    let count = |number: usize| u32::try_from(number).unwrap_or(u32::MAX);
    let more = match number.saturating_sub(told.len()) {
        0 => String::new(),
        more => fill_pattern(" and # more", &[count(more)]),
    };
    let names = [told.join(", "), more].concat();
    fill_pattern_with(of.parts, &[count(number)], &[&reasons.join(" or "), &names])
}

/// A name as it is told: of a long one its beginning.
pub fn name(name: &str) -> String {
    match name.char_indices().nth(ENOUGH) {
        Some((end, _)) => [&name[..end], "…"].concat(),
        None if name.is_empty() => "“”".into(),
        None => name.to_owned(),
    }
}

/// The unit that stands beside a field, as a link has it.
pub fn unit_of(field: &str) -> String {
    [field, ".unit"].concat()
}

/// A field of a sheet of a copy.
pub fn on_sheet(sheet: &str, field: &str) -> String {
    [sheet, ".", field].concat()
}
