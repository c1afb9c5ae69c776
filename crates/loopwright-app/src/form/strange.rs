//! What stands in a field and is nothing that the field knows: a unit beside a text, or a choice that is none. Such things
//! come from links, copies and files that somebody else wrote. They are kept as they are and said beside the field, and
//! nothing is answered with another unit or another choice in their place.

use super::{Field, Fields, Kind, LIST_UNITS, List, Place, SPANS, span_read};
use crate::store::Typed;
use crate::words::problem as words;
use loopwright::problem::{self, FieldPath, Problem};
use loopwright::units::parse::{Unreadable, read_unit};
use loopwright::units::{Dimension, Unit, count};

/// The unit that stands beside a text, if one does.
pub fn written_unit(typed: &Typed) -> Option<&str> {
    typed.unit.as_deref().map(str::trim).filter(|unit| !unit.is_empty())
}

impl Field {
    /// Why the unit beside a text means nothing in this field.
    pub fn strange_unit(&self, typed: &Typed) -> Option<Unreadable> {
        let written = written_unit(typed)?;
        match self.kind {
            Kind::Length(scale, _) => scale.unit_beside(typed).err(),
            Kind::Mass(scale, _) => scale.unit_beside(typed).err(),
            Kind::Gauge | Kind::Gauges => span_read(Some(typed)).err(),
            Kind::List(List { lengths: true, .. }) => list_unit(written).is_none().then_some(Unreadable::UnknownUnit),
            Kind::Count(_) | Kind::List(_) => no_count(written),
            // Beside these no unit ever counts.
            Kind::Choice(_) | Kind::Text | Kind::Pattern | Kind::Whole => None,
        }
    }

    /// Whether a stored choice is none of this field's.
    fn is_strange_choice(&self, typed: &Typed) -> bool {
        match self.kind {
            Kind::Choice(options) => options.read(&typed.text).is_none(),
            Kind::Count(_)
            | Kind::Length(..)
            | Kind::Mass(..)
            | Kind::Gauge
            | Kind::Gauges
            | Kind::List(_)
            | Kind::Text
            | Kind::Pattern
            | Kind::Whole => false,
        }
    }
}

/// The unit of a list of lengths that is written so.
pub(super) fn list_unit(written: &str) -> Option<(&'static str, loopwright::units::LengthUnit)> {
    let read = read_unit(written).ok()?;
    LIST_UNITS.into_iter().find(|(_, unit)| Unit::Length(*unit) == read)
}

/// Why a unit does not belong to a count; nothing where it names what is counted.
fn no_count(written: &str) -> Option<Unreadable> {
    match read_unit(written) {
        Ok(Unit::Count(_)) => None,
        Ok(written) => Some(Unreadable::WrongKind {
            written,
            wanted: Dimension::Count,
        }),
        Err(why) => Some(why),
    }
}

impl Fields {
    /// What is strange in the fields that are asked, each with its place. Of an empty field nothing is.
    pub fn strange(&self) -> Vec<Problem> {
        let given = self.given.iter().map(|(key, given)| (key, &given.typed));
        let given = given.filter(|(key, _)| !self.typed.contains_key(*key));
        let all = self.typed.iter().chain(given);
        let filled = all.filter(|(_, typed)| !typed.text.trim().is_empty());
        let found = filled.filter_map(|(key, typed)| {
            let (fields, field) = self.stored_as(key)?;
            let kind = fields.strange_in(field, typed)?;
            (field.asked)(&fields).then(|| Problem::new(fields.path_of(field), kind))
        });
        found.collect()
    }

    /// What is strange in a field that holds this.
    fn strange_in(&self, field: &'static Field, typed: &Typed) -> Option<problem::Kind> {
        if let Some(why) = field.strange_unit(typed) {
            return Some(problem::Kind::Unreadable(why));
        }
        // What stands beside the answer is read by that alone, which would have nothing to say of it.
        if let (Kind::Count(bounds), Place::Answer) = (field.kind, field.place) {
            let read = count::read(&typed.text, bounds);
            return read.err().map(problem::Kind::Unreadable);
        }
        // A field that is asked in several ways may hold what was chosen in another one of them.
        let mut rows = self.table(field.group).filter(|row| row.key == field.key);
        rows.all(|row| row.is_strange_choice(typed))
            .then_some(problem::Kind::NotOffered)
    }

    /// Whether what is stored in a field is strange.
    pub fn is_strange(&self, field: &'static Field) -> bool {
        let typed = self.typed(self.path_of(field));
        let typed = typed.filter(|typed| !typed.text.trim().is_empty());
        typed.is_some_and(|typed| self.strange_in(field, typed).is_some())
    }

    /// What is stored in a field of choices and is none of them, as it is stored.
    pub fn strange_choice(&self, field: &'static Field) -> Option<&str> {
        let typed = self.typed(self.path_of(field))?;
        let is_strange = self.strange_in(field, typed) == Some(problem::Kind::NotOffered);
        (is_strange && !typed.text.trim().is_empty()).then_some(&*typed.text)
    }

    /// What to say about what is strange in a field; nothing where nothing is.
    pub fn strange_sentence(&self, path: FieldPath) -> Option<String> {
        let field = self.row(path)?;
        let typed = self.typed(path).filter(|typed| !typed.text.trim().is_empty())?;
        if let (Kind::Choice(options), Some(problem::Kind::NotOffered)) = (field.kind, self.strange_in(field, typed)) {
            let all = options.all().into_iter();
            let offered = all.filter(|(key, _)| (field.offered)(self, key));
            let offered: Vec<&str> = offered.map(|(_, words)| words).collect();
            return Some(words::not_offered(&typed.text, &offered));
        }
        field.strange_unit(typed)?;
        let written = written_unit(typed)?;
        Some(match field.kind {
            Kind::Length(scale, _) => words::no_unit(written, &scale.units().map(|unit| unit.key).collect::<Vec<_>>()),
            Kind::Mass(scale, _) => words::no_unit(written, &scale.units().map(|unit| unit.key).collect::<Vec<_>>()),
            Kind::Gauge | Kind::Gauges => words::no_span(written, SPANS[0].key, SPANS[1].key),
            Kind::List(List { lengths: true, .. }) => words::no_unit(written, &LIST_UNITS.map(|(key, _)| key)),
            Kind::Count(_) | Kind::List(_) | Kind::Choice(_) | Kind::Text | Kind::Pattern | Kind::Whole => {
                words::no_count(written)
            }
        })
    }
}

#[cfg(test)]
mod tests;
