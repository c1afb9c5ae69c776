//! A size list as it is typed or copied from a pattern: `S 86-91, M 91-97`, `S (M, L): 34 (36½, 38)"`, `97 (103, 111) cm`.
//!
//! Brackets, lines, semicolons, commas, slashes and `and` part the sizes, and spaces where each number is plain. What
//! stands before the number of a size, or before its colon, is its name; names may also stand by themselves, as many as
//! there are numbers. Of two rows of as many numbers the first are names (`8 10 12` above `81 86 91`). A list without
//! names goes by its numbers. Words that only say what the list is (`to fit bust`) are passed over, but for telling the
//! bodies from the garments where both are listed. A unit counts for the whole list; of the same girths in two units
//! those in the wanted one are taken. What cannot be read comes back; nothing is guessed silently.
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
use crate::units::LengthUnit;
use crate::units::list::{Unread, WhyUnread};
use crate::units::parse::{Unreadable, Wanted, read};
use pieces::{Piece, Pieces, Role, Words, is_dash};

mod counts;
mod pieces;

pub use counts::{read_counts, with_stitches};

/// Numbers without names that are further apart than so many times are not all girths. Common practice, no source.
pub const FAR_APART: i64 = 3;

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
    let mut pieces = Pieces::of(text);
    let written = pieces.unit.unwrap_or(unit);
    if let Some(why) = pieces.settle(unit, listed) {
        return Err(Unread::whole(text, why));
    }
    let girths = pieces.girths();
    let names = pieces.called(girths.len());
    // A single name before several numbers is a heading.
    if names.len() != girths.len() && (girths.is_empty() || names.len() > 1) {
        return Err(not_as_many(text, girths.len(), names.len()));
    }
    if girths.is_empty() {
        return Err(Unread::whole(text, WhyUnread::Number(Unreadable::Empty)));
    }
    let is_named = names.len() == girths.len();
    let mut sizes = Vec::new();
    for (place, number) in girths.iter().enumerate() {
        let girth = span(number, written).map_err(|why| unread(&number.words, why))?;
        let name = names.get(place).filter(|_| is_named);
        sizes.push(Size::new(*name.unwrap_or(&number.words.text.as_str()), girth));
    }
    if !is_named && are_far_apart(&sizes) {
        return Err(Unread::whole(text, WhyUnread::FarApart));
    }
    Ok(sizes)
}

/// Whether some of these can be no girths, since others are.
fn are_far_apart(sizes: &[Size]) -> bool {
    let least = sizes.iter().map(|size| size.girth.from).min();
    let most = sizes.iter().map(|size| size.girth.to).max();
    most > least.map(|least| least.saturating_mul(FAR_APART))
}

fn unread(words: &Words, why: Unreadable) -> Unread {
    Unread {
        from: words.from,
        to: words.to,
        why: WhyUnread::Number(why),
    }
}

fn not_as_many(text: &str, numbers: usize, sizes: usize) -> Unread {
    Unread::whole(text, WhyUnread::NotAsMany { numbers, sizes })
}

impl Pieces {
    /// What the sizes are called, where so many of them are listed.
    fn called(&self, sizes: usize) -> Vec<&str> {
        let all = self.numbers.iter().chain(&self.names);
        let names = all.filter(|piece| piece.role == Role::Name);
        let names: Vec<&str> = names.map(|piece| piece.words.text.as_str()).collect();
        let &[name] = names.as_slice() else {
            return names;
        };
        // `XS/S/M 82/90/98`: one word for all names.
        let parting = if name.contains('/') { '/' } else { ' ' };
        let words: Vec<&str> = name.split(parting).filter(|word| !word.is_empty()).collect();
        if words.len() == sizes && !name.chars().any(char::is_lowercase) {
            words
        } else {
            names
        }
    }

    /// Gives each piece its part in the one list that is meant, or says why there is none.
    fn settle(&mut self, unit: LengthUnit, listed: Option<Listed>) -> Option<WhyUnread> {
        self.of_kind(listed)
            .or_else(|| self.in_unit(unit))
            .or_else(|| self.in_rows())
    }

    /// Leaves out bodies, or garments, where both are listed.
    fn of_kind(&mut self, listed: Option<Listed>) -> Option<WhyUnread> {
        let has = |kind| self.numbers.iter().any(|number| number.kind == Some(kind));
        if !(has(Listed::Body) && has(Listed::Garment)) {
            return None;
        }
        if listed.is_none() {
            return Some(WhyUnread::TwoLists);
        }
        let other = |piece: &Piece| piece.kind.is_some() && piece.kind != listed;
        let mut left = self.names.len();
        for number in &mut self.numbers {
            if other(number) {
                number.role = Role::None;
            } else {
                left = left.saturating_sub(1);
            }
        }
        // The names stand either before both or in each.
        for name in &mut self.names {
            if left > 0 && other(name) {
                name.role = Role::None;
            }
        }
        None
    }

    /// Leaves out those in another unit than is wanted, or else than the first, where the same girths are in two.
    fn in_unit(&mut self, unit: LengthUnit) -> Option<WhyUnread> {
        let (mut wanted, mut two) = (self.unit?, false);
        for number in self.measured() {
            two |= number.unit != self.unit;
            if number.unit == Some(unit) {
                wanted = unit;
            }
        }
        if !two {
            return None;
        }
        if !self.has_twins(wanted) {
            return Some(WhyUnread::TwoUnits);
        }
        for number in &mut self.numbers {
            if number.unit.is_some_and(|unit| unit != wanted) {
                number.role = Role::None;
            }
        }
        None
    }

    /// Whether every number in this unit has one in another that is the same girth.
    fn has_twins(&self, wanted: LengthUnit) -> bool {
        let mut twins = self.measured().filter(|number| number.unit != Some(wanted));
        for number in self.measured() {
            if number.unit == Some(wanted) && !twins.next().is_some_and(|twin| is_same(number, twin)) {
                return false;
            }
        }
        twins.next().is_none()
    }

    /// The numbers that are not left out and have a unit.
    fn measured(&self) -> impl Iterator<Item = &Piece> {
        let is_measured = |number: &&Piece| number.unit.is_some() && number.role == Role::Girth;
        self.numbers.iter().filter(is_measured)
    }

    /// Finds numbers that are names: the first of two rows of as many, or what stands before a colon.
    fn in_rows(&mut self) -> Option<WhyUnread> {
        let rows = self.rows();
        let are_names_and_girths = match rows.as_slice() {
            [first, _, ..] => rows.iter().all(|row| row.numbers == first.numbers),
            _ => false,
        };
        let names = self.row_of_names(&rows);
        if are_names_and_girths && (rows.len() > 2 || names.is_none()) {
            return Some(WhyUnread::TwoLists);
        }
        let stand_before_colon = self.stand_before_colon();
        for number in self.numbers.iter_mut().filter(|number| number.role == Role::Girth) {
            let is_name = if are_names_and_girths {
                names == Some(number.row)
            } else {
                stand_before_colon && number.before_colon
            };
            if is_name {
                number.role = Role::Name;
            }
        }
        if are_names_and_girths {
            for name in &mut self.names {
                name.role = Role::None;
            }
        }
        None
    }

    /// The numbers that are not left out.
    fn girths(&self) -> Vec<&Piece> {
        let girths = self.numbers.iter().filter(|number| number.role == Role::Girth);
        girths.collect()
    }

    /// Rows of several numbers that do not all have names of their own.
    fn rows(&self) -> Vec<Row> {
        let names = |row| {
            let names = self.names.iter().filter(|name| name.role == Role::Name);
            names.filter(|name| name.row == row).count()
        };
        let girths = self.girths();
        let rows = girths.chunk_by(|one, other| one.row == other.row);
        let rows = rows.map(|numbers| Row {
            row: numbers[0].row,
            numbers: numbers.len(),
            names: names(numbers[0].row),
            is_of_a_kind: numbers[0].kind.is_some(),
        });
        rows.filter(|row| row.numbers > 1 && row.names < row.numbers).collect()
    }

    /// Which of the rows has the names: the one that is said to be sizes, or the first, where nothing else is said of it.
    fn row_of_names(&self, rows: &[Row]) -> Option<usize> {
        let named = rows.iter().rfind(|row| self.sizes == Some(row.row));
        let first = rows.first().filter(|row| row.names == 0 && !row.is_of_a_kind);
        named.or(first).map(|row| row.row)
    }

    /// Whether the numbers before the first colon are names, with the other names one for each girth behind it.
    fn stand_before_colon(&self) -> bool {
        let girths = self.girths();
        let names = self.names.iter().filter(|name| name.role == Role::Name).count();
        let before = girths.iter().filter(|number| number.before_colon).count();
        before > 0 && names + before == girths.len() - before
    }
}

/// A row of a list.
struct Row {
    /// Which one.
    row: usize,
    /// How many numbers it has.
    numbers: usize,
    /// How many names.
    names: usize,
    /// Whether its words say what it measures.
    is_of_a_kind: bool,
}

/// Whether two numbers are the same girth, each rounded in its unit.
fn is_same(one: &Piece, other: &Piece) -> bool {
    let middle = |piece| span(piece, LengthUnit::Cm).map_or(0, |span| span.middle().to_nm());
    let (one, other) = (middle(one), middle(other));
    one > 0 && (one - other).abs() <= one / 20
}

/// A girth or a range of girths.
fn span(Piece { words, unit, .. }: &Piece, written: LengthUnit) -> Result<Span, Unreadable> {
    let text = &words.text;
    let unit = unit.unwrap_or(written);
    let wanted = Wanted { bounds: GIRTH, unit };
    let one = |text: &str| read(text, &wanted).map(|read| read.value);
    match (one(text), text.split_once(is_dash)) {
        (Ok(girth), _) => Ok(Span::one(girth)),
        (Err(_), Some((from, to))) => Ok(Span::new(one(from)?, one(to)?)),
        (Err(why), None) => Err(why),
    }
}

#[cfg(test)]
mod tests;
