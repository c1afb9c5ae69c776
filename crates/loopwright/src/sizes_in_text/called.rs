//! Lists that are told by the names of the sizes: the names alone, `S (M, L)`, or each beside its number, `S 96, M 108`.

use super::figure::Pairs;
use super::group::MOST_ENTRIES;
use super::scan::Scan;
use super::shape::Shape;
use super::{Entry, EntryKind, Style};
use crate::units::printed::{TokenKind, tokens};

/// The names of the sizes as tokens; nothing where they are numbers only, since those are read as numbers.
pub(super) struct Names {
    names: Vec<Vec<String>>,
}

impl Names {
    pub(super) fn of(names: &[impl AsRef<str>]) -> Self {
        let is_word = |name: &str| name.contains(char::is_alphabetic);
        let are_words = names.iter().all(|name| is_word(name.as_ref()));
        Self::all(if are_words { names } else { &[] })
    }

    /// The names, numbers or not.
    pub(super) fn all(names: &[impl AsRef<str>]) -> Self {
        let cut = |name: &str| tokens(name).iter().map(|token| token.text(name).to_owned()).collect();
        let names = names.iter().map(|name| cut(name.as_ref())).collect();
        Self { names }
    }

    pub(super) fn len(&self) -> usize {
        self.names.len()
    }

    /// Which of them stands at a token, and the token behind it. The longest is meant: `L` is no `L/XL`.
    pub(super) fn one(&self, scan: &Scan<'_>, at: usize) -> Option<(usize, usize)> {
        let ends = self.names.iter().enumerate().filter(|(_, name)| !name.is_empty());
        let found = ends.filter_map(|(size, name)| Some((size, behind(scan, at, name)?)));
        found.max_by_key(|(_, end)| *end)
    }

    /// The list of all names, in their order, that begins at a token.
    pub(super) fn list(&self, scan: &Scan<'_>, at: usize) -> Option<Shape> {
        let first = behind(scan, at, self.names.first()?)?;
        let figure = number_behind(scan, first);
        let style = if figure.is_some() {
            Style::BesideNames
        } else {
            Style::Names
        };
        let (mut entries, mut end, mut open) = (Vec::new(), at, 0_usize);
        for name in &self.names {
            let start = next_name(scan, end, &mut open);
            let named = behind(scan, start, name)?;
            let (entry, behind) = match style {
                Style::BesideNames => number_behind(scan, named)?,
                _ => (name_entry(scan, start, named), named),
            };
            entries.push(entry);
            end = behind;
        }
        while open > 0 && scan.closes(end).is_some() {
            open -= 1;
            end += 1;
        }
        (entries.len() > 1 && entries.len() <= MOST_ENTRIES).then(|| Shape::new(style, entries, at..end))
    }
}

/// The token behind a name, where it stands here. Single letters are told apart by case.
fn behind(scan: &Scan<'_>, at: usize, name: &[String]) -> Option<usize> {
    let is_same = |(place, word): (usize, &String)| {
        let here = scan.word(at + place);
        here == word || word.len() > 1 && here.eq_ignore_ascii_case(word)
    };
    name.iter().enumerate().all(is_same).then_some(at + name.len())
}

/// Over marks and brackets, of which those that stay open are counted.
fn next_name(scan: &Scan<'_>, from: usize, open: &mut usize) -> usize {
    let mut at = from;
    loop {
        match scan.kind(at) {
            Some(TokenKind::Open(_)) => *open += 1,
            Some(TokenKind::Close(_)) if *open > 0 => *open -= 1,
            Some(TokenKind::Dash) => {}
            _ if scan.is_parting(at) => {}
            _ => return at,
        }
        at += 1;
    }
}

/// The number beside a name; a colon may stand between.
fn number_behind(scan: &Scan<'_>, at: usize) -> Option<(Entry, usize)> {
    let is_mark = matches!(scan.kind(at), Some(TokenKind::Colon | TokenKind::Equals));
    let at = if is_mark { at + 1 } else { at };
    let (mut entries, end) = scan.chain(at, Pairs::Dashes)?;
    let entry = entries.pop().filter(|_| entries.is_empty())?;
    Some(in_inches(scan, entry, end))
}

/// In `S 15 in, M 17 in` it is inches before a name too.
fn in_inches(scan: &Scan<'_>, mut entry: Entry, end: usize) -> (Entry, usize) {
    let (TokenKind::Unit(unit), true) = (scan.kind(end).unwrap_or(TokenKind::Other), scan.is_word(end, &["in"])) else {
        return (entry, end);
    };
    entry.unit = Some(unit);
    entry.range.end = scan.end(end);
    (entry, end + 1)
}

fn name_entry(scan: &Scan<'_>, from: usize, to: usize) -> Entry {
    let range = scan.range(from).start..scan.range(to.saturating_sub(1)).end;
    Entry {
        number: range.clone(),
        range,
        kind: EntryKind::Name,
        unit: None,
    }
}
