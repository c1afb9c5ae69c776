//! Which of the names and numbers of a text are meant: of bodies and garments one, of two units one, and of two rows the
//! first as names.

use super::pieces::{Number, Pieces, Role};
use super::span;
use crate::sizing::Listed;
use crate::units::LengthUnit;
use crate::units::printed::WhyUnread;

impl Pieces {
    /// Gives each piece its part in the one list that is meant, or says why there is none.
    pub(super) fn settle(&mut self, text: &str, unit: LengthUnit, listed: Option<Listed>) -> Option<WhyUnread> {
        self.of_kind(listed)
            .or_else(|| self.in_unit(text, unit))
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
        let is_other = |kind: Option<Listed>| kind.is_some() && kind != listed;
        let mut left = self.names.len();
        for number in &mut self.numbers {
            if is_other(number.kind) {
                number.role = Role::None;
            } else {
                left = left.saturating_sub(1);
            }
        }
        // The names stand either before both or in each.
        for name in &mut self.names {
            if left > 0 && is_other(name.kind) {
                name.role = Role::None;
            }
        }
        None
    }

    /// Leaves out those in another unit than is wanted, or else than the first, where the same girths are in two.
    fn in_unit(&mut self, text: &str, unit: LengthUnit) -> Option<WhyUnread> {
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
        if !self.has_twins(text, wanted) {
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
    fn has_twins(&self, text: &str, wanted: LengthUnit) -> bool {
        let mut twins = self.measured().filter(|number| number.unit != Some(wanted));
        for number in self.measured() {
            if number.unit == Some(wanted) && !twins.next().is_some_and(|twin| is_same(text, number, twin)) {
                return false;
            }
        }
        twins.next().is_none()
    }

    /// The numbers that are not left out and have a unit.
    fn measured(&self) -> impl Iterator<Item = &Number> {
        let is_measured = |number: &&Number| number.unit.is_some() && number.role == Role::Girth;
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
        if !are_names_and_girths {
            self.name_by_colon();
            return None;
        }
        for number in self.numbers.iter_mut().filter(|number| number.role == Role::Girth) {
            if names == Some(number.row) {
                number.role = Role::Name;
            }
        }
        for name in &mut self.names {
            name.role = Role::None;
        }
        None
    }

    /// Takes the numbers before the first colon for names where they are, with the other names, one for each behind it.
    pub(super) fn name_by_colon(&mut self) {
        let girths = self.girths();
        let names = self.names.iter().filter(|name| name.role == Role::Name).count();
        let before = girths.iter().filter(|number| number.before_colon).count();
        if before == 0 || names + before != girths.len() - before {
            return;
        }
        for number in &mut self.numbers {
            if number.role == Role::Girth && number.before_colon {
                number.role = Role::Name;
            }
        }
    }

    /// The numbers that are girths.
    pub(super) fn girths(&self) -> Vec<&Number> {
        self.numbers
            .iter()
            .filter(|number| number.role == Role::Girth)
            .collect()
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
fn is_same(text: &str, one: &Number, other: &Number) -> bool {
    let middle = |number: &Number| match span(text, &number.figures, LengthUnit::Cm) {
        Ok(Some(span)) => span.middle().to_nm(),
        Ok(None) | Err(_) => 0,
    };
    let (one, other) = (middle(one), middle(other));
    one > 0 && (one - other).abs() <= one / 20
}
