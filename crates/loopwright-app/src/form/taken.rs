//! What is taken of what somebody else wrote, such as the fields of a link: what the tool has, and no text longer than anyone
//! types. What is left out is counted and named in one sentence. One pass, however much there is.

use super::fields::member_of;
use super::{Field, Kind, written_unit};
use crate::store::{self, Typed};
use crate::words::taken as words;

/// The most bytes of one text: more than any list that a pattern prints.
pub const MOST_BYTES: usize = 4_096;
/// The most members of a repeated group: as many sections as the one tool that has such a group takes.
const MOST_MEMBERS: usize = loopwright::yarn::SECTIONS.most as usize;
/// So many names are told, and the others are counted.
const TOLD: usize = 5;

/// Why something is left out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Why {
    /// There is nothing of that name here.
    Unknown,
    /// It is longer than anyone types.
    TooLong,
    /// There are more of them than anyone has.
    TooMany,
    /// The same name stands there once more, and the last one counts.
    Repeated,
    /// It is hers alone, and no link brings it.
    Hers,
}

/// What was left out.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct LeftOut {
    number: usize,
    told: Vec<String>,
    whys: Vec<Why>,
}

impl LeftOut {
    /// Notes one thing.
    pub fn note(&mut self, name: &str, why: Why) {
        self.number += 1;
        if self.told.len() < TOLD {
            self.told.push(words::name(name));
        }
        if !self.whys.contains(&why) {
            self.whys.push(why);
            self.whys.sort_unstable();
        }
    }

    /// How many things were left out.
    #[cfg(test)]
    pub const fn number(&self) -> usize {
        self.number
    }

    /// One sentence about parts of a link; nothing where all of it was taken.
    pub fn of_a_link(&self) -> Option<String> {
        self.said(&words::LINK)
    }

    /// One sentence about parts of a copy.
    pub fn of_a_copy(&self) -> Option<String> {
        self.said(&words::COPY)
    }

    fn said(&self, of: &words::Of) -> Option<String> {
        let reason = |why: &Why| match why {
            Why::Unknown => of.unknown,
            Why::TooLong => words::TOO_LONG,
            Why::TooMany => words::TOO_MANY,
            Why::Repeated => words::REPEATED,
            Why::Hers => words::HERS,
        };
        let reasons: Vec<&str> = self.whys.iter().map(reason).collect();
        (self.number > 0).then(|| words::left_out(of, self.number, &reasons, &self.told))
    }
}

/// Of these fields those that a table has; what is left out is noted.
pub fn take(table: &[Field], fields: store::Fields, left_out: &mut LeftOut) -> store::Fields {
    let take = |(key, typed): (String, Typed)| {
        let Some(row) = row_of(table, &key) else {
            left_out.note(&key, Why::Unknown);
            return None;
        };
        if !row.linked {
            left_out.note(&key, Why::Hers);
            return None;
        }
        let longest = typed.text.len().max(typed.unit.as_ref().map_or(0, String::len));
        if longest > MOST_BYTES {
            left_out.note(&key, Why::TooLong);
            return None;
        }
        Some((key.clone(), without_idle_unit(row, &key, typed, left_out)))
    };
    fields.into_iter().filter_map(take).collect()
}

/// Whether a table has a field that is stored so.
pub fn has(table: &[Field], stored: &str) -> bool {
    row_of(table, stored).is_some()
}

fn row_of<'a>(table: &'a [Field], stored: &str) -> Option<&'a Field> {
    let is_stored_so = |row: &&Field| match row.group {
        None => row.key == stored,
        Some(group) => member_of(group, stored).is_some_and(|(index, key)| index < MOST_MEMBERS && key == row.key),
    };
    let rows = table.iter().filter(|row| !matches!(row.kind, Kind::Whole));
    rows.into_iter().find(is_stored_so)
}

/// Beside a choice or a plain text no unit ever counts.
fn without_idle_unit(row: &Field, key: &str, typed: Typed, left_out: &mut LeftOut) -> Typed {
    match row.kind {
        Kind::Choice(_) | Kind::Text | Kind::Pattern if written_unit(&typed).is_some() => {
            left_out.note(&words::unit_of(key), Why::Unknown);
            Typed::plain(typed.text)
        }
        _ => typed,
    }
}

#[cfg(test)]
mod tests;
