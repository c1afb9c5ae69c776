//! The words beside a field whose value holds for all tools.

/// The value is the kept one.
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

/// A value with its unit.
pub fn value(text: &str, unit: Option<&str>) -> String {
    match unit {
        // A gauge carries its span as its unit.
        Some(span) if span.contains(' ') => format!("{text} over {span}"),
        Some(unit) => format!("{text} {unit}"),
        None => text.into(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_kept_value_is_named_with_its_unit() {
        assert_eq!(take(&value("21", Some("10 cm"))), "Use 21 over 10 cm");
        assert_eq!(take(&value("91", Some("cm"))), "Use 91 cm");
        assert_eq!(keep(&value("132", None)), "Keep 132 for all tools");
    }
}
