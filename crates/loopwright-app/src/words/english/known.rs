//! The words beside a field that stands for something the project knows.

use loopwright::tables::yarn_weight::Weight;

pub const TAKEN: &str = "the same as in the project";
pub const FROM_PROJECT: &str = "\u{21b3} from the project";
pub const BACK: &str = "Back to the project\u{2019}s";
pub const NO_LONGER_KNOWN: &str = "This came from the project, which does not know it any more.";
pub const TO_PROJECT: &str = "To the project";
pub const COUNTS: &str = "From the project:";
pub const MORE_COUNTS: &str = "More counts";
pub const KEEP_COUNT: &str = "Keep this count by its name";
pub const NAME_IT: &str = "What do you call it?";
pub const MAKE_IT: &str = "Make this the project\u{2019}s";

/// A text comes from a step.
pub fn from_step(name: &str) -> String {
    format!("\u{21b3} from \u{201c}{name}\u{201d}")
}

/// A text came from a step that was taken out.
pub fn from_gone(name: &str) -> String {
    format!("came from \u{201c}{name}\u{201d}, which was taken out")
}

/// Something else is typed than what the project gives.
pub fn own(given: &str) -> String {
    format!("Only tried here: the project has {given}.")
}

/// Nothing stands here, and the project has something.
pub fn left_empty(given: &str) -> String {
    format!("Left empty here: the project has {given}.")
}

/// Keeps this value in the project.
pub fn keep(text: &str) -> String {
    format!("Keep {text} for the project")
}

/// This value of an answer is the one in the project.
pub fn taken(text: &str) -> String {
    format!("{text} is in the project.")
}

/// Takes what the project has.
pub fn take(value: &str) -> String {
    format!("Use {value}")
}

/// So many characters of a name of hers are shown beside a field; all of it stands on the project's page.
const LONGEST_NAME: usize = 24;

/// So many characters of what cannot be read are repeated.
const LONGEST_UNREAD: usize = 32;

/// A name of hers as it is shown: its beginning, if it is long.
pub fn own_name(name: &str) -> String {
    match name {
        "" => "unnamed".into(),
        name => shortened(name, LONGEST_NAME),
    }
}

/// A name of hers in a sentence.
pub fn quoted(name: &str) -> String {
    match name {
        "" => "a count without a name".into(),
        name => format!("\u{201c}{}\u{201d}", own_name(name)),
    }
}

/// A part of the garment in a sentence.
pub fn the(part: &str) -> String {
    format!("the {part}")
}

/// A count of the project, by its name.
pub fn counted_as(name: &str, count: &str) -> String {
    format!("{name} {count}")
}

/// A text comes from one of the project's counts.
pub fn from_count(name: &str) -> String {
    format!("{FROM_PROJECT}: {name}")
}

/// The numbers of counts of one name.
pub fn and(numbers: &str, number: &str) -> String {
    format!("{numbers}, {number}")
}

/// Keeps this count under a name.
pub fn keep_as(count: &str, name: &str) -> String {
    format!("Keep {count} as {name}")
}

/// Keeps this count under a name that has another number now.
pub fn keep_instead(count: &str, name: &str, was: &str) -> String {
    format!("Keep {count} as {name}, instead of {}", shortened(was, LONGEST_UNREAD))
}

/// This count of an answer is in the project under a name.
pub fn taken_as(count: &str, name: &str) -> String {
    format!("{count} is in the project as {name}.")
}

/// Keeps this count under a name that she gives it.
pub fn keep_own(count: &str) -> String {
    format!("Keep {count} under a name of your own")
}

/// Something of the project cannot be read, where a field asks for it.
pub fn unread(label: &str, text: &str) -> String {
    let text = shortened(text, LONGEST_UNREAD);
    format!("In the project, \u{201c}{label}\u{201d} cannot be read: \u{201c}{text}\u{201d}.")
}

pub(super) fn shortened(text: &str, longest: usize) -> String {
    match text.char_indices().nth(longest) {
        Some((end, _)) => format!("{}\u{2026}", text.get(..end).unwrap_or_default()),
        None => text.to_owned(),
    }
}

/// A count, or a length with its unit.
pub fn measured(text: &str, unit: Option<&str>) -> String {
    match unit {
        Some(unit) => [text, " ", unit].concat(),
        None => text.to_owned(),
    }
}

/// A gauge with its span, where the span does not stand in the text.
pub fn counted(text: &str, span: Option<&str>) -> String {
    match span {
        Some(span) => [text, " over ", span].concat(),
        None => text.to_owned(),
    }
}

/// A class of yarn.
pub const fn class(weight: Weight) -> &'static str {
    match weight {
        Weight::Lace => "lace",
        Weight::SuperFine => "super fine",
        Weight::Fine => "fine",
        Weight::Light => "light",
        Weight::Medium => "medium",
        Weight::Bulky => "bulky",
        Weight::SuperBulky => "super bulky",
        Weight::Jumbo => "jumbo",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_kept_value_is_named_with_its_unit() {
        assert_eq!(take(&counted("21", Some("10 cm"))), "Use 21 over 10 cm");
        assert_eq!(take(&measured("91", Some("cm"))), "Use 91 cm");
        assert_eq!(keep(&measured("132", None)), "Keep 132 for the project");
    }
}
