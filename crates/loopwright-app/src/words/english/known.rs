//! The words beside a field whose value holds for all tools.

use loopwright::tables::yarn_weight::Weight;

pub const TAKEN: &str = "the one you keep for all tools";
/// Keeps this value of an answer for all tools.
pub fn keep(text: &str) -> String {
    format!("Keep {text} for all tools")
}

/// This value of an answer is the kept one.
pub fn taken(text: &str) -> String {
    format!("{text} is the one you keep for all tools.")
}

/// Takes the kept value.
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
        assert_eq!(keep(&measured("132", None)), "Keep 132 for all tools");
    }
}
