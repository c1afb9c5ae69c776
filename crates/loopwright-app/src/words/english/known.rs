//! The words beside a field that stands for something the project knows.

use loopwright::tables::yarn_weight::Weight;

pub const TAKEN: &str = "the same as in the project";
pub const FROM_PROJECT: &str = "\u{21b3} from the project";
pub const BACK: &str = "Back to the project\u{2019}s";
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
