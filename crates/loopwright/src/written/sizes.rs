//! The sizes of a pattern: as many as are typed, or those that its own line names.

use crate::bounds::Bounds;
use crate::sizes_in_text::named;
use crate::units::count;
use crate::units::parse::Unreadable;

/// So many sizes are worked at most.
pub const SIZES: Bounds<u32> = Bounds::new(1, 30);

/// Reads sizes as they are typed: `5`, or their names, `S (M, L)`.
///
/// # Errors
/// Neither a number of sizes nor names of several.
pub fn read_sizes(text: &str) -> Result<Vec<String>, Unreadable> {
    if text.trim().is_empty() {
        return Ok(Vec::new());
    }
    match count::read(text, SIZES) {
        Ok(many) => Ok((1..=many.value).map(|size| size.to_string()).collect()),
        Err(why) => names(text).ok_or(why),
    }
}

fn names(text: &str) -> Option<Vec<String>> {
    let line = ["Sizes: ", text.trim()].concat();
    let found = named(&line).into_iter().next()?;
    usize::try_from(SIZES.most)
        .is_ok_and(|most| found.names.len() <= most)
        .then_some(found.names)
}

/// The sizes that the text itself names; none where it names none.
pub fn sizes_of(text: &str) -> Vec<String> {
    let found = named(text).into_iter().map(|line| line.names);
    let is_few = |names: &Vec<String>| usize::try_from(SIZES.most).is_ok_and(|most| names.len() <= most);
    found.into_iter().find(is_few).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sizes_are_a_number_or_names() {
        assert_eq!(read_sizes("3"), Ok(vec!["1".into(), "2".into(), "3".into()]));
        for text in ["S (M, L)", "S, M, L", "S/M/L"] {
            assert_eq!(read_sizes(text), Ok(vec!["S".into(), "M".into(), "L".into()]), "{text}");
        }
        assert_eq!(read_sizes(""), Ok(vec![]));
        assert!(read_sizes("0").is_err() && read_sizes("31").is_err() && read_sizes("?").is_err());
        assert_eq!(sizes_of("A shawl\nSizes: S (M, L)\nCO 9 (10, 11) sts"), ["S", "M", "L"]);
        assert_eq!(sizes_of("CO 9 sts"), [""; 0]);
    }
}
