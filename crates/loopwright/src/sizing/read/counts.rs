//! Counts as a pattern lists them, one for each size.

use super::pieces::{Piece, Pieces};
use super::{Unread, not_as_many, unread};
use crate::bounds::Bounds;
use crate::sizing::{STITCHES, Size};
use crate::units::count;
use crate::units::parse::Unreadable;

/// Gives every size its stitches from a list in the same order: `204 (216, 234)`. An empty list takes them away.
///
/// # Errors
/// The first piece that is no count, or that there are not as many as sizes.
pub fn with_stitches(mut sizes: Vec<Size>, text: &str) -> Result<Vec<Size>, Unread> {
    let counts = read_counts(text, STITCHES)?;
    if !text.trim().is_empty() && counts.len() != sizes.len() {
        return Err(not_as_many(text, counts.len(), sizes.len()));
    }
    for (place, size) in sizes.iter_mut().enumerate() {
        size.stitches = counts.get(place).copied();
    }
    Ok(sizes)
}

/// Reads a list of counts as a pattern has it, `132 (144, 156)`, each within bounds. No text makes it panic.
///
/// ```
/// use loopwright::bounds::Bounds;
/// use loopwright::sizing::read_counts;
///
/// assert_eq!(read_counts("132 (144, 156)", Bounds::new(1, 999)).unwrap(), [132, 144, 156]);
/// let misspelt = "132 (144, 15z)";
/// assert_eq!(read_counts(misspelt, Bounds::new(1, 999)).unwrap_err().piece(misspelt), "15z");
/// ```
///
/// # Errors
/// The first piece that is no count.
pub fn read_counts(text: &str, each: Bounds<u32>) -> Result<Vec<u32>, Unread> {
    let Pieces { names, numbers, .. } = Pieces::of(text);
    let mut counts = Vec::new();
    for Piece { words, .. } in &numbers {
        let read = count::read(&words.text, each).map_err(|why| unread(words, why))?;
        counts.push(read.value);
    }
    // Names are passed over; but what has a figure in it, and is not one name of as many, may be a count misspelt.
    let none = counts.is_empty();
    for Piece { words, .. } in &names {
        if none || names.len() != numbers.len() && words.text.contains(|mark: char| mark.is_ascii_digit()) {
            return Err(unread(words, Unreadable::NotANumber));
        }
    }
    Ok(counts)
}
