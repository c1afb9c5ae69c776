//! The words below a field that another window wrote into while she was typing there.

use super::known::shortened;
use super::units::span;
use loopwright_project::Typed;

pub const TAKE: &str = "Take it";
pub const PUT_BACK: &str = "Put mine back";

/// So many characters of a text are repeated.
const LONGEST: usize = 32;

/// Another window wrote here, and the field still shows hers.
pub fn wrote(ours: Option<&Typed>, theirs: Option<&Typed>) -> String {
    match theirs.filter(|theirs| !theirs.text.is_empty()) {
        None => "Another window emptied this field. Type on and yours is kept; leave it, and it is empty.".into(),
        Some(theirs) => {
            let theirs = quoted(theirs, ours);
            format!("Another window wrote {theirs} here. Type on and yours is kept; leave it, and that stands here.")
        }
    }
}

/// Another window wrote here, and the field shows that.
pub fn wrote_over(ours: Option<&Typed>) -> String {
    match ours {
        Some(ours) => format!("Another window wrote here. Yours was {}.", quoted(ours, None)),
        None => "Another window wrote here.".into(),
    }
}

/// A text with its unit, where that is another one than that of the other text.
fn quoted(typed: &Typed, other: Option<&Typed>) -> String {
    let is_same_unit = other.is_some_and(|other| other.unit == typed.unit);
    let unit = typed.unit.as_deref().filter(|_| !is_same_unit).map(unit_as_kept);
    let text = shortened(&typed.text, LONGEST);
    match unit {
        Some(unit) => format!("\u{201c}{text}\u{201d} {unit}"),
        None => format!("\u{201c}{text}\u{201d}"),
    }
}

/// A unit by the key it is kept under; a gauge has the span that it is counted over in its place.
fn unit_as_kept(key: &str) -> String {
    match key {
        "us" => "US".into(),
        key if key.contains(' ') => span(key),
        key => key.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_is_named_with_its_unit_where_that_differs() {
        let [centimetres, inches] = ["cm", "in"].map(|unit| Typed::with_unit("36", unit));
        assert!(wrote(Some(&centimetres), Some(&inches)).contains("\u{201c}36\u{201d} in here."));
        assert!(wrote(Some(&centimetres), Some(&centimetres)).contains("\u{201c}36\u{201d} here."));
        let gauge = Typed::with_unit("22", "10 cm");
        assert_eq!(
            wrote_over(Some(&gauge)),
            "Another window wrote here. Yours was \u{201c}22\u{201d} over 10 cm."
        );
        assert!(wrote(Some(&gauge), None).starts_with("Another window emptied this field."));
    }
}
