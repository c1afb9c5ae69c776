//! A size list as it is typed or copied from a pattern: `S 86-91, M 91-97`, `S (M, L): 34 (36½, 38)"`, `97 [103: 111] cm`.
//!
//! How lists are printed is known to [`printed`](crate::units::printed); here its entries become sizes. What stands
//! before the number of a size, or before its colon, is its name; names may also stand by themselves, as many as there
//! are numbers. Of two rows of as many numbers the first are names (`8 10 12` above `81 86 91`). A list without names
//! goes by its numbers. Words that only say what the list is (`to fit bust`) are passed over, but for telling the bodies
//! from the garments where both are listed. A unit counts for the whole list; of the same girths in two units those in
//! the wanted one are taken. A dash in place of a number is a size that is not made. What cannot be read comes back, and a
//! list in which a number would be left unused is not read.
//!
//! ```
//! use loopwright::sizing::{Span, read_sizes};
//! use loopwright::units::{Length, LengthUnit};
//!
//! let sizes = read_sizes("To fit bust: S 32-34, M 36-38, 1X 44-46 in", LengthUnit::Cm).unwrap();
//! assert_eq!(sizes[2].label, "1X");
//! assert_eq!(sizes[2].girth, Span::new(Length::from_inches(44), Length::from_inches(46)));
//! assert_eq!(read_sizes("S 86-", LengthUnit::Cm).unwrap_err().piece("S 86-"), "86-");
//! ```

use super::{GIRTH, Listed, Size, Span};
use crate::units::parse::{Unreadable, Wanted, read};
use crate::units::printed::{Figure, Figures, Unread, WhyUnread};
use crate::units::{Dimension, LengthUnit, Unit};
use pieces::{Name, Pieces, Role};
use std::ops::Range;

mod counts;
mod pieces;
mod settle;

pub use counts::{read_counts, with_stitches};

/// Numbers without names that are further apart than so many times are not all girths. Common practice, no source.
pub const FAR_APART: i64 = 3;

/// A list of sizes, with an account of what was read.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct SizeList {
    /// The sizes, in the order of the list.
    pub sizes: Vec<Size>,
    /// Where in the text their names and numbers stand.
    pub used: Vec<Range<usize>>,
    /// Where another list stands that is not meant: the same girths in another unit, garments beside bodies.
    pub set_aside: Vec<Range<usize>>,
}

/// Reads a list of sizes; `unit` is meant where the text names none. No text makes it panic.
///
/// # Errors
/// The first piece that could not be read, or what is wrong with the whole.
pub fn read_sizes(text: &str, unit: LengthUnit) -> Result<Vec<Size>, Unread> {
    read_listed(text, unit, None)
}

/// The same; of a text that lists both bodies and garments those are read that are meant.
///
/// # Errors
/// The first piece that could not be read, or what is wrong with the whole.
pub fn read_listed(text: &str, unit: LengthUnit, listed: Option<Listed>) -> Result<Vec<Size>, Unread> {
    read_size_list(text, unit, listed).map(|list| list.sizes)
}

/// The same, with an account of every number.
///
/// # Errors
/// The first piece that could not be read, or what is wrong with the whole.
pub fn read_size_list(text: &str, unit: LengthUnit, listed: Option<Listed>) -> Result<SizeList, Unread> {
    let mut pieces = Pieces::of(text)?;
    let written = pieces.unit.unwrap_or(unit);
    if let Some(why) = pieces.settle(text, unit, listed) {
        return Err(Unread::whole(text, why));
    }
    let girths = pieces.girths();
    let names = pieces.called(text, girths.len());
    if let (true, &[name]) = (girths.is_empty(), pieces.names.iter().collect::<Vec<_>>().as_slice()) {
        return Err(Unread::at(&name.range, WhyUnread::Number(Unreadable::NotANumber)));
    }
    // A single name before several numbers is a heading.
    if names.len() != girths.len() && (girths.is_empty() || names.len() > 1) {
        return Err(not_as_many(text, girths.len(), names.len()));
    }
    let is_named = names.len() == girths.len();
    if let Some(name) = pieces.unused(is_named) {
        return Err(Unread::at(&name.range, WhyUnread::Unused));
    }
    if let Some(name) = pieces.among_numbers().filter(|_| !is_named) {
        return Err(Unread::at(&name.range, WhyUnread::Misplaced));
    }
    let mut sizes = Vec::new();
    for (place, number) in girths.iter().enumerate() {
        let range = number.figures.range();
        let Some(girth) =
            span(text, &number.figures, written).map_err(|why| Unread::at(&range, WhyUnread::Number(why)))?
        else {
            continue;
        };
        let name = names.get(place).filter(|_| is_named);
        let label = name.map_or_else(|| by_number(text, &number.figures), |name| (*name).to_owned());
        sizes.push(Size::new(label, girth));
    }
    if sizes.is_empty() {
        return Err(Unread::whole(text, WhyUnread::Number(Unreadable::Empty)));
    }
    if !is_named && are_far_apart(&sizes) {
        return Err(Unread::whole(text, WhyUnread::FarApart));
    }
    let (used, set_aside) = pieces.account();
    Ok(SizeList { sizes, used, set_aside })
}

/// What a size without a name is called: its number as typed, without units.
fn by_number(text: &str, figures: &Figures) -> String {
    let numbers = figures
        .each()
        .map(|figure| text.get(figure.range.clone()).unwrap_or_default());
    numbers.collect::<Vec<_>>().join("-")
}

/// Whether some of these can be no girths, since others are.
fn are_far_apart(sizes: &[Size]) -> bool {
    let least = sizes.iter().map(|size| size.girth.from).min();
    let most = sizes.iter().map(|size| size.girth.to).max();
    most > least.map(|least| least.saturating_mul(FAR_APART))
}

fn not_as_many(text: &str, numbers: usize, sizes: usize) -> Unread {
    Unread::whole(text, WhyUnread::NotAsMany { numbers, sizes })
}

impl Pieces {
    /// What the sizes are called, where so many of them are listed.
    fn called<'a>(&'a self, text: &'a str, sizes: usize) -> Vec<&'a str> {
        let numbers = self.numbers.iter().filter(|number| number.role == Role::Name);
        let numbers = numbers.map(|number| text.get(number.figures.range()).unwrap_or_default());
        let names = self.names.iter().filter(|name| name.role == Role::Name);
        let names: Vec<&str> = numbers.chain(names.map(|name| name.text.as_str())).collect();
        let &[name] = names.as_slice() else {
            return names;
        };
        // `XS/S/M 82/90/98`: one word for all names.
        let is_mark = |mark: char| {
            if name.contains('/') {
                mark == '/'
            } else {
                mark == ' ' || is_dash(mark)
            }
        };
        let words: Vec<&str> = name.split(is_mark).filter(|word| !word.is_empty()).collect();
        if words.len() == sizes && !name.chars().any(char::is_lowercase) {
            words
        } else {
            names
        }
    }

    /// A name with a number in it that would be lost: a heading, or a word beside two rows of numbers.
    fn unused(&self, is_named: bool) -> Option<&Name> {
        let are_rows = self.numbers.iter().any(|number| number.role == Role::Name);
        let is_lost = |name: &&Name| match name.role {
            Role::Name => !is_named,
            Role::None => are_rows,
            Role::Girth => false,
        };
        self.names.iter().filter(is_lost).find(|name| name.has_number())
    }

    /// A word behind the first number: where it names no size it is no heading either.
    fn among_numbers(&self) -> Option<&Name> {
        let first = self.numbers.iter().find(|number| number.role == Role::Girth)?;
        let behind = first.figures.range().end;
        let mut names = self.names.iter().filter(|name| name.role == Role::Name);
        names.find(|name| name.range.start >= behind)
    }

    /// Where names and numbers stand, and where what belongs to another list does.
    fn account(&self) -> (Vec<Range<usize>>, Vec<Range<usize>>) {
        let numbers = self.numbers.iter().map(|number| (number.role, number.figures.range()));
        let names = self.names.iter().map(|name| (name.role, name.range.clone()));
        let (used, aside): (Vec<_>, Vec<_>) = numbers.chain(names).partition(|(role, _)| *role != Role::None);
        let ranges = |all: Vec<(Role, Range<usize>)>| all.into_iter().map(|(_, range)| range).collect();
        (ranges(used), ranges(aside))
    }
}

/// A girth or a range of girths; none where a dash stands in its place.
fn span(text: &str, figures: &Figures, written: LengthUnit) -> Result<Option<Span>, Unreadable> {
    let one = |figure: &Figure| {
        let unit = match figure.unit {
            None => written,
            Some(Unit::Length(unit)) => unit,
            Some(written @ (Unit::Mass(_) | Unit::Count(_))) => {
                let wanted = Dimension::Length;
                return Err(Unreadable::WrongKind { written, wanted });
            }
        };
        let wanted = Wanted { bounds: GIRTH, unit };
        read(text.get(figure.range.clone()).unwrap_or_default(), &wanted).map(|read| read.value)
    };
    match figures {
        Figures::Nothing(_) => Ok(None),
        Figures::One(figure) => one(figure).map(|girth| Some(Span::one(girth))),
        Figures::Range(from, to) => Ok(Some(Span::new(one(from)?, one(to)?))),
        Figures::Open(..) => Err(Unreadable::Unfinished),
    }
}

/// Whether a mark joins the names of sizes.
fn is_dash(mark: char) -> bool {
    matches!(mark, '-' | '\u{2010}'..='\u{2015}' | '\u{2212}')
}

#[cfg(test)]
mod tests;
