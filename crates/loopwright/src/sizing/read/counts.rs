//! Counts as a pattern lists them, one for each size.

use super::pieces::{Name, Number, Pieces, Role};
use super::{Unread, WhyUnread, not_as_many};
use crate::bounds::Bounds;
use crate::sizing::{STITCHES, Size};
use crate::units::parse::Unreadable;
use crate::units::printed::{Figure, Figures};
use crate::units::{Dimension, Unit, count};

/// What may be said behind the last count: `156 sts in total`.
const SAID_BEHIND: [&str; 2] = ["total", "altogether"];

/// Gives every size its stitches from a list in the same order: `204 (216, 234)`. An empty list takes them away, and a
/// dash in place of a number is a size of which they are not known.
///
/// # Errors
/// The first piece that is no count, or that there are not as many as sizes.
pub fn with_stitches(mut sizes: Vec<Size>, text: &str) -> Result<Vec<Size>, Unread> {
    let mut counts = read_counts(text, STITCHES)?;
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

/// Reads a list of counts as a pattern has it, `132 (144, 156)` or `88:92:96`, each within bounds; none for a
/// dash in place of a number, which is a size without it. No text makes it panic.
///
/// ```
/// use loopwright::bounds::Bounds;
/// use loopwright::sizing::read_counts;
///
/// let any = Bounds::new(1, 999);
/// assert_eq!(read_counts("132 (144, 156)", any).unwrap(), [Some(132), Some(144), Some(156)]);
/// assert_eq!(read_counts("88 (-, 96)", any).unwrap(), [Some(88), None, Some(96)]);
/// let misspelt = "132 (144, 15z)";
/// assert_eq!(read_counts(misspelt, any).unwrap_err().piece(misspelt), "15z");
/// ```
///
/// # Errors
/// The first piece that is no count, a number that would be left unused, or a word that is neither a heading nor a name.
pub fn read_counts(text: &str, each: Bounds<u32>) -> Result<Vec<Option<u32>>, Unread> {
    let mut pieces = Pieces::of(text)?;
    pieces.name_by_colon();
    let is_count = |number: &&Number| number.role == Role::Girth;
    let read = |number: &Number| {
        let place = number.figures.range();
        one(text, &number.figures, each).map_err(|why| Unread::at(&place, WhyUnread::Number(why)))
    };
    let counts: Vec<Option<u32>> = pieces
        .numbers
        .iter()
        .filter(is_count)
        .map(read)
        .collect::<Result<_, _>>()?;
    match pieces.lost(counts.len()) {
        None => Ok(counts),
        Some(name) if !counts.is_empty() && !name.has_number() => Err(Unread::at(&name.range, WhyUnread::Misplaced)),
        Some(name) if name.text.chars().any(char::is_alphabetic) => {
            Err(Unread::at(&name.range, WhyUnread::Number(Unreadable::NotANumber)))
        }
        Some(name) => Err(Unread::at(&name.range, WhyUnread::Unused)),
    }
}

impl Pieces {
    /// The first word that may be a count misspelt, or one more of them. A heading is none, nor are the names of the
    /// sizes where there is one for each count.
    fn lost(&self, counts: usize) -> Option<&Name> {
        let is_named = counts > 1 && self.names.len() + self.numbers.len() == 2 * counts && self.are_names();
        let is_lost = |name: &&Name| {
            let is_passed_over = is_named || !name.has_number() && (self.is_heading(name) || self.is_said_behind(name));
            counts == 0 || !is_passed_over
        };
        self.names.iter().find(is_lost)
    }

    /// Whether names stand as those of sizes do: all before the first count, or each beside one.
    fn are_names(&self) -> bool {
        let are_before = self.names.iter().all(|name| self.is_before_counts(name));
        are_before || self.names.iter().all(|name| !name.is_alone)
    }

    /// Whether a name stands before the first count, and not in place of it: `Cast on 132`, but not `x (144, 156)`.
    fn is_heading(&self, name: &Name) -> bool {
        let has_row = || self.numbers.iter().all(|number| number.row != name.row);
        self.is_before_counts(name) && (!name.is_alone || has_row())
    }

    fn is_before_counts(&self, name: &Name) -> bool {
        let first = self.numbers.iter().find(|number| number.role == Role::Girth);
        first.is_some_and(|first| name.range.end <= first.figures.range().start)
    }

    fn is_said_behind(&self, name: &Name) -> bool {
        let is_behind = |number: &Number| number.figures.range().end <= name.range.start;
        let is_said = SAID_BEHIND.iter().any(|said| said.eq_ignore_ascii_case(&name.text));
        is_said && self.numbers.iter().all(is_behind)
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
