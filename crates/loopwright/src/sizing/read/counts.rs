//! Counts as a pattern lists them, one for each size.

use super::pieces::{Number, Pieces, Role, unread};
use super::{Unread, WhyUnread, not_as_many};
use crate::bounds::Bounds;
use crate::sizing::{STITCHES, Size};
use crate::units::parse::Unreadable;
use crate::units::printed::{Figure, Figures};
use crate::units::{Dimension, Unit, count};

/// Gives every size its stitches from a list in the same order: `204 (216, 234)`. An empty list takes them away, and a
/// dash in place of a number is a size of which they are not known.
///
/// # Errors
/// The first piece that is no count, or that there are not as many as sizes.
pub fn with_stitches(mut sizes: Vec<Size>, text: &str) -> Result<Vec<Size>, Unread> {
    let mut counts = counts(text, STITCHES)?;
    if counts.len() != sizes.len() {
        // A size that is not made has a dash in both lists.
        counts.retain(Option::is_some);
    }
    if !text.trim().is_empty() && counts.len() != sizes.len() {
        return Err(not_as_many(text, counts.len(), sizes.len()));
    }
    for (place, size) in sizes.iter_mut().enumerate() {
        size.stitches = counts.get(place).copied().flatten();
    }
    Ok(sizes)
}

/// Reads a list of counts as a pattern has it, `132 (144, 156)` or `88:92:96`, each within bounds. A dash in place of a
/// number is none. No text makes it panic.
///
/// ```
/// use loopwright::bounds::Bounds;
/// use loopwright::sizing::read_counts;
///
/// let any = Bounds::new(1, 999);
/// assert_eq!(read_counts("132 (144, 156)", any).unwrap(), [132, 144, 156]);
/// assert_eq!(read_counts("88:92:96", any).unwrap(), [88, 92, 96]);
/// let misspelt = "132 (144, 15z)";
/// assert_eq!(read_counts(misspelt, any).unwrap_err().piece(misspelt), "15z");
/// ```
///
/// # Errors
/// The first piece that is no count, or a number that would be left unused.
pub fn read_counts(text: &str, each: Bounds<u32>) -> Result<Vec<u32>, Unread> {
    Ok(counts(text, each)?.into_iter().flatten().collect())
}

/// The counts, and none where a dash stands in place of one.
fn counts(text: &str, each: Bounds<u32>) -> Result<Vec<Option<u32>>, Unread> {
    let mut pieces = Pieces::of(text)?;
    pieces.name_by_colon();
    let is_count = |number: &&Number| number.role == Role::Girth;
    let read = |number: &Number| {
        let place = number.figures.range();
        one(text, &number.figures, each).map_err(|why| unread(&place, WhyUnread::Number(why)))
    };
    let counts: Vec<Option<u32>> = pieces
        .numbers
        .iter()
        .filter(is_count)
        .map(read)
        .collect::<Result<_, _>>()?;
    // Names are passed over; but what has a figure in it may be a count misspelt, or one more count.
    let is_named = counts.len() > 1 && pieces.names.len() + pieces.numbers.len() == 2 * counts.len();
    let lost = pieces
        .names
        .iter()
        .find(|name| counts.is_empty() || !is_named && name.has_number());
    match lost {
        None => Ok(counts),
        Some(name) if name.text.chars().any(char::is_alphabetic) => {
            Err(unread(&name.range, WhyUnread::Number(Unreadable::NotANumber)))
        }
        Some(name) => Err(unread(&name.range, WhyUnread::Unused)),
    }
}

/// One count; none where a dash stands in its place.
fn one(text: &str, figures: &Figures, each: Bounds<u32>) -> Result<Option<u32>, Unreadable> {
    let count = |figure: &Figure| {
        if let Some(written @ (Unit::Length(_) | Unit::Mass(_))) = figure.unit {
            let wanted = Dimension::Count;
            return Err(Unreadable::WrongKind { written, wanted });
        }
        count::read(text.get(figure.range.clone()).unwrap_or_default(), each).map(|read| Some(read.value))
    };
    match figures {
        Figures::Nothing(_) => Ok(None),
        Figures::One(figure) => count(figure),
        Figures::Range(..) => Err(Unreadable::TwoNumbers),
        Figures::Open(..) => Err(Unreadable::Unfinished),
    }
}
