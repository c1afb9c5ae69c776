//! The fields of one tool as they stand: what was typed, or what each starts with.
//!
//! A snapshot, taken once a keystroke: the form is drawn from it and the question is read from it, so that both speak of
//! the same texts.

use super::strange::{list_unit, written_unit};
use super::{Field, Kind, LIST_UNITS, Start, TAPE, span_of};
use crate::store::{self, Typed};
use loopwright::choice::{Choice, FieldName, GroupName};
use loopwright::problem::FieldPath;
use loopwright::units::print::{self, Step};
use loopwright::units::{LengthUnit, MassUnit};
use loopwright_project::{Given, GivenText, Reference};
use std::collections::BTreeSet;
use std::rc::Rc;

/// What is chosen once for all tools: units.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Settings(store::Fields);

impl Settings {
    /// The settings on this sheet.
    pub const fn new(fields: store::Fields) -> Self {
        Self(fields)
    }

    /// What is set, if anything.
    pub fn text(&self, setting: &str) -> Option<&str> {
        self.0.get(setting).map(|typed| typed.text.as_str())
    }
}

/// The member of a repeated group and the key of its field, where a stored key names one: of `s12_stitches` they are 11
/// and `stitches`.
pub(super) fn member_of<'a>(group: &GroupName, stored: &'a str) -> Option<(usize, &'a str)> {
    let (number, key) = stored.strip_prefix(group.stored)?.split_once('_')?;
    let place = number.parse::<u32>().ok().filter(|place| place.to_string() == number)?;
    Some((place.checked_sub(1)? as usize, key))
}

/// The fields of one tool, or of one member of its repeated group.
#[derive(Clone)]
pub struct Fields {
    table: &'static [Field],
    pub(super) typed: Rc<store::Fields>,
    pub(super) given: Rc<Given>,
    settings: Rc<Settings>,
    member: Option<usize>,
}

impl PartialEq for Fields {
    /// Two snapshots of one tool are equal if the same stands in both.
    fn eq(&self, other: &Self) -> bool {
        self.member == other.member
            && self.typed == other.typed
            && self.given == other.given
            && self.settings == other.settings
    }
}

impl Fields {
    /// The fields of a table, with what was typed into them.
    pub fn new(table: &'static [Field], typed: store::Fields, settings: Settings) -> Self {
        Self {
            table,
            typed: Rc::new(typed),
            given: Rc::default(),
            settings: Rc::new(settings),
            member: None,
        }
    }

    /// The same with what the project gives to fields into which nothing was typed.
    pub fn with_given(self, given: Given) -> Self {
        Self {
            given: Rc::new(given),
            ..self
        }
    }

    /// What the project gives to a field, whether something else was typed there or not.
    pub fn given(&self, path: FieldPath) -> Option<&GivenText> {
        self.given.get(&path.stored())
    }

    /// Whether what stands in a field is given, and not typed.
    pub fn is_given(&self, path: FieldPath) -> bool {
        !self.typed.contains_key(&path.stored()) && self.given(path).is_some()
    }

    /// Where what stands in a field comes from, if it is given and not typed.
    pub fn given_from(&self, path: FieldPath) -> Option<&Reference> {
        let given = self.given(path).filter(|_| self.is_given(path));
        given.map(|given| &given.from)
    }

    /// What stands in the fields as if all of it had been typed: what was, and what is given where nothing was.
    pub fn filled(&self) -> store::Fields {
        let given = self.given.iter().map(|(key, given)| (key.clone(), given.typed.clone()));
        let mut filled: store::Fields = given.collect();
        filled.extend(self.typed.iter().map(|(key, typed)| (key.clone(), typed.clone())));
        filled
    }

    /// What stands in the fields as a link has it: without what is hers alone.
    pub fn linked(&self) -> store::Fields {
        let mut filled = self.filled();
        filled.retain(|key, _| self.stored_as(key).is_none_or(|(_, field)| field.linked));
        filled
    }

    /// Whether a pattern's text stands in the fields, which no link takes along.
    pub fn have_a_pattern(&self) -> bool {
        let is_pattern = |key| {
            self.stored_as(key)
                .is_some_and(|(_, field)| matches!(field.kind, Kind::Pattern))
        };
        self.filled().keys().any(|key| is_pattern(key))
    }

    /// What was typed, as a link has it.
    pub fn typed_linked(&self) -> store::Fields {
        let mut linked = self.linked();
        linked.retain(|key, _| self.typed.contains_key(key));
        linked
    }

    fn held(&self, stored: &str) -> Option<&Typed> {
        let given = || self.given.get(stored).map(|given| &given.typed);
        self.typed.get(stored).or_else(given)
    }

    /// The fields as one member of the repeated group sees them, counted from nought.
    pub fn member(&self, index: usize) -> Self {
        Self {
            member: Some(index),
            ..self.clone()
        }
    }

    /// Which member of the repeated group this is, if any.
    pub const fn index(&self) -> Option<usize> {
        self.member
    }

    /// The members of a repeated group in which anything was ever typed or is given, in their order.
    pub fn typed_members<N: FieldName>(&self) -> BTreeSet<usize> {
        let Some(group) = N::GROUP else {
            return BTreeSet::new();
        };
        let keys = self.typed.keys().chain(self.given.keys());
        let stored = keys.filter_map(|key| member_of(group, key));
        let members = stored.filter(|(_, key)| N::from_key(key).is_some());
        members.map(|(index, _)| index).collect()
    }

    /// The keys under which anything was ever typed, in their order.
    pub fn typed_keys(&self) -> impl Iterator<Item = &str> {
        self.typed.keys().map(String::as_str)
    }

    /// The rows of the table that stand alone, or those of a repeated group.
    pub fn table(&self, group: Option<&'static GroupName>) -> impl Iterator<Item = &'static Field> {
        self.table.iter().filter(move |field| field.group == group)
    }

    /// What is chosen once for all tools.
    pub fn settings(&self) -> &Settings {
        &self.settings
    }

    /// What was typed under a key that no row of the table has.
    pub fn unknown(&self) -> Vec<&str> {
        let is_row = |stored: &str| {
            self.table.iter().any(|row| match row.group {
                None => row.key == stored,
                Some(group) => member_of(group, stored).is_some_and(|(_, key)| key == row.key),
            })
        };
        let keys = self.typed.keys().map(String::as_str);
        keys.filter(|key| !is_row(key)).collect()
    }

    /// Whether anything stands in any field that was typed, more than spaces.
    pub fn is_begun(&self) -> bool {
        self.typed.values().any(|typed| !typed.text.trim().is_empty())
    }

    /// The fields in which other texts stand than in a snapshot taken later, as this one has them.
    pub fn unlike(&self, later: &Self) -> Vec<(Self, &'static Field)> {
        let [now, then] = [self, later].map(|fields| fields.typed.keys().chain(fields.given.keys()));
        let keys: BTreeSet<&String> = now.chain(then).collect();
        let unlike = keys.into_iter().filter(|key| self.held(key) != later.held(key));
        unlike.filter_map(|key| self.stored_as(key)).collect()
    }

    /// The field that is stored under a key, with the fields as it sees them; the row that is asked, where there are several.
    pub fn stored_as(&self, stored: &str) -> Option<(Self, &'static Field)> {
        let (fields, field) = self.first_stored_as(stored)?;
        let asked = fields.row(fields.path_of(field)).unwrap_or(field);
        Some((fields, asked))
    }

    fn first_stored_as(&self, stored: &str) -> Option<(Self, &'static Field)> {
        self.table.iter().find_map(|row| match row.group {
            None => (row.key == stored).then(|| (self.clone(), row)),
            Some(group) => {
                let (index, key) = member_of(group, stored)?;
                (row.key == key).then(|| (self.member(index), row))
            }
        })
    }

    /// Where a field is. A name of the repeated group means the member that this is, and the first one where it is none.
    pub fn path<N: FieldName>(&self, name: N) -> FieldPath {
        match N::GROUP {
            Some(group) => FieldPath::in_group(group, self.member.unwrap_or(0), name.key()),
            None => name.into(),
        }
    }

    /// Where the field of a row is.
    pub fn path_of(&self, field: &'static Field) -> FieldPath {
        match field.group {
            Some(group) => FieldPath::in_group(group, self.member.unwrap_or(0), field.key),
            None => FieldPath::alone(field.key),
        }
    }

    /// The row of a field: the one that is asked, where there are several.
    pub fn row(&self, path: FieldPath) -> Option<&'static Field> {
        let rows = || {
            let table = self.table.iter();
            table.filter(|field| field.key == path.key() && field.group == path.group())
        };
        match (rows().next(), rows().nth(1)) {
            (Some(_), Some(_)) => rows().find(|field| (field.asked)(self)).or_else(|| rows().next()),
            (only, _) => only,
        }
    }

    /// What was typed into a field, if anything ever was, or else what is given to it.
    pub fn typed(&self, path: FieldPath) -> Option<&Typed> {
        self.held(&path.stored())
    }

    /// Whether something stands in a field that was typed, more than spaces.
    pub fn is_typed(&self, name: impl FieldName) -> bool {
        self.is_typed_at(self.path(name))
    }

    /// The same, by the place of the field.
    pub fn is_typed_at(&self, path: FieldPath) -> bool {
        let typed = self.typed(path);
        typed.is_some_and(|typed| !typed.text.trim().is_empty())
    }

    /// The text that stands in a field: what was typed, or what it starts with.
    pub fn text(&self, path: FieldPath) -> String {
        match self.typed(path) {
            Some(typed) => typed.text.clone(),
            None => self.start(path).text,
        }
    }

    /// What a field starts with, in the unit that its scale has first.
    pub fn start(&self, path: FieldPath) -> Typed {
        let Some(row) = self.row(path) else {
            return Typed::plain("");
        };
        self.typed_start(row.start, &row.kind)
    }

    /// What stands in an empty field as an example, in the unit that its scale has first; nothing where there is none.
    pub fn example(&self, path: FieldPath) -> Typed {
        self.row(path).map_or_else(
            || Typed::plain(""),
            |row| match row.example {
                Start::Empty => Typed::plain(""),
                example => self.typed_start(example, &row.kind),
            },
        )
    }

    fn typed_start(&self, start: Start, kind: &Kind) -> Typed {
        match (start, kind) {
            (Start::Empty, Kind::Choice(options)) => Typed::plain(options.start()),
            (Start::Empty, _) => Typed::plain(""),
            (Start::Count(count), _) => Typed::plain(count.to_string()),
            (Start::Text(text), _) => Typed::plain(text),
            (Start::Length(length), Kind::Length(scale, _)) => scale.typed(length),
            (Start::Length(length), _) => Typed::plain(print::print(length, LengthUnit::Cm, Step::Tenth)),
            (Start::Mass(mass), Kind::Mass(scale, _)) => scale.typed(mass),
            (Start::Mass(mass), _) => Typed::plain(print::print(mass, MassUnit::Gram, Step::Tenth)),
            (Start::From(start), _) => Typed::plain(start(self)),
        }
    }

    /// What is chosen in a field; what it starts with, where what is stored is none of its options. That is said beside the
    /// field, and nothing is answered as long as it stands there ([`Fields::strange`]).
    pub fn choice<C: Choice>(&self, name: impl FieldName) -> C {
        let chosen = self.chosen(self.path(name)).and_then(C::from_key);
        debug_assert!(chosen.is_some(), "{} offers other things to choose", name.key());
        chosen.unwrap_or(C::START)
    }

    /// The key of what is chosen in a field.
    pub fn chosen(&self, path: FieldPath) -> Option<&'static str> {
        let row = self.row(path)?;
        let Kind::Choice(options) = row.kind else {
            return None;
        };
        let typed = self.typed(path).and_then(|typed| options.read(&typed.text));
        let start = || options.read(&self.start(path).text);
        typed
            .filter(|key| (row.offered)(self, key))
            .or_else(start)
            .or_else(|| Some(options.start()))
    }

    /// The unit of a list that names none: the one that was shown when it was typed.
    pub fn list_unit(&self, path: FieldPath) -> (&'static str, LengthUnit) {
        let written = match self.typed(path) {
            Some(typed) => written_unit(typed).unwrap_or_default(),
            None => TAPE.shown(&self.settings).key,
        };
        list_unit(written).unwrap_or(LIST_UNITS[0])
    }

    /// The text of a gauge and the span that stands beside it.
    pub fn gauge(&self, path: FieldPath) -> (&str, super::Span) {
        let typed = self.typed(path);
        match typed {
            Some(typed) => (&typed.text, span_of(Some(typed))),
            None => ("", self.settings.measures().span()),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_stored_key_names_a_member_of_a_group() {
        let sections = &GroupName {
            name: "sections",
            stored: "s",
        };
        assert_eq!(member_of(sections, "s12_stitches"), Some((11, "stitches")));
        for other in [
            "s0_rows",
            "s01_rows",
            "s_rows",
            "rows",
            "swatch_rows",
            "s-1_rows",
            "s1rows",
        ] {
            assert_eq!(member_of(sections, other), None, "{other}");
        }
    }
}
