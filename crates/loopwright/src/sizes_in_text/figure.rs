//! What stands for one size: a number with its unit, a range, one of an order, or a dash in place of a number.

use super::group::MOST_ENTRIES;
use super::scan::Scan;
use super::{Entry, EntryKind};
use crate::units::Unit;
use crate::units::printed::TokenKind;

/// Which marks make one entry of two numbers.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Pairs {
    /// Dashes and `to`: `34-36`.
    Dashes,
    /// Slashes as well: `10/12 (14/16, 18/20)`.
    SlashesToo,
}

/// Entries that stand at a token, one or, where dashes part them, several; and the token behind.
pub(super) type Taken = (Vec<Entry>, usize);

impl Scan<'_> {
    /// A number, a range, or three numbers and more with dashes between.
    pub(super) fn chain(&self, at: usize, pairs: Pairs) -> Option<Taken> {
        if let Some((entry, end)) = self.ordinal(at) {
            return Some((vec![entry], end));
        }
        let (first, mut end) = self.number(at)?;
        let mut numbers = vec![first];
        while self.joins_numbers(end, pairs) && numbers.len() < MOST_ENTRIES {
            let Some((next, behind)) = self.number(end + 1) else {
                break;
            };
            numbers.push(next);
            end = behind;
        }
        if let [from, to] = numbers.as_slice() {
            return Some((vec![span(from, to)], end));
        }
        Some((numbers, end))
    }

    /// The same, or a dash in place of a number.
    pub(super) fn chain_or_dash(&self, at: usize, pairs: Pairs) -> Option<Taken> {
        let is_dash = self.is(at, TokenKind::Dash) && !(self.is(at + 1, TokenKind::Number) && self.touches_next(at));
        if is_dash {
            return Some((vec![self.no_step(at)], at + 1));
        }
        self.chain(at, pairs)
    }

    /// A dash in place of a number.
    pub(super) fn no_step(&self, at: usize) -> Entry {
        Entry {
            range: self.range(at),
            kind: EntryKind::NoStep,
            unit: None,
            number: self.range(at),
        }
    }

    /// One number with the unit behind it.
    pub(super) fn number(&self, at: usize) -> Option<(Entry, usize)> {
        if !self.is(at, TokenKind::Number) {
            return None;
        }
        let number = self.range(at);
        let unit = self.unit(at + 1).filter(|_| !self.is_ordinal_ending(at));
        let last = if unit.is_some() { at + 1 } else { at };
        let entry = Entry {
            range: number.start..self.end(last),
            kind: EntryKind::Number,
            unit,
            number,
        };
        Some((entry, last + 1))
    }

    /// `6th`, `2nd`, and `21st`, whose ending is also the sign of a stitch.
    fn ordinal(&self, at: usize) -> Option<(Entry, usize)> {
        let last = if self.is_ordinal_ending(at) {
            at + 1
        } else if self.is(at, TokenKind::Word) && is_ordinal_word(self.word(at)) {
            at
        } else {
            return None;
        };
        let range = self.range(at).start..self.range(last).end;
        let digits = self.word(at).chars().take_while(char::is_ascii_digit).count();
        let number = range.start..range.start + digits;
        let entry = Entry {
            range,
            kind: EntryKind::Ordinal,
            unit: None,
            number,
        };
        Some((entry, last + 1))
    }

    fn is_ordinal_ending(&self, at: usize) -> bool {
        let number = self.word(at);
        let is_first = number.ends_with('1') && !number.ends_with("11");
        is_first && self.is(at, TokenKind::Number) && self.touches_next(at) && self.word(at + 1) == "st"
    }

    /// Whether what stands here makes one entry of the numbers around it.
    fn joins_numbers(&self, at: usize, pairs: Pairs) -> bool {
        let is_next_number = self.is(at + 1, TokenKind::Number);
        let is_slash = pairs == Pairs::SlashesToo && self.is(at, TokenKind::Slash);
        is_next_number && (is_slash || self.is(at, TokenKind::Dash) || self.is_word(at, &["to"]))
    }
}

/// A range of two numbers.
fn span(from: &Entry, to: &Entry) -> Entry {
    Entry {
        range: from.range.start..to.range.end,
        kind: EntryKind::Span,
        unit: to.unit.or(from.unit),
        number: from.number.clone(),
    }
}

fn is_ordinal_word(word: &str) -> bool {
    let ending = word.trim_start_matches(|mark: char| mark.is_ascii_digit());
    ending.len() < word.len() && matches!(ending, "st" | "nd" | "rd" | "th")
}

/// The end of an entry's numbers without the unit behind them, where it has one of its own.
pub(super) fn end_without_unit(scan: &Scan<'_>, entry: &Entry) -> usize {
    let text = scan.text.get(entry.range.clone()).unwrap_or_default();
    let is_figure = |mark: char| mark.is_numeric() || mark == '-';
    let last = text.char_indices().rfind(|(_, mark)| is_figure(*mark));
    last.map_or(entry.range.end, |(at, mark)| entry.range.start + at + mark.len_utf8())
}

/// Whether two units may stand in one list: the same one, written in whichever way.
pub(super) fn agree(one: Option<Unit>, other: Option<Unit>) -> bool {
    match (one, other) {
        (Some(one), Some(other)) => one == other,
        (None, _) | (_, None) => true,
    }
}
