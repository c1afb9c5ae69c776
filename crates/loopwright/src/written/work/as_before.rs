//! Lines that are nothing but rows of before, one row after the other: `Rows 5-8: Rep rows 1-4`, `Row 4: As row 2`.
//!
//! How many rows there are follows from those the line names. Each is worked as the line of the row it repeats says, and
//! what comes of it is noted at the line that repeats; behind the last row the line is held to what else it says.

use super::super::line::{Counted, Line, RowsAgain, RowsOften, WhichRows};
use super::super::place::Place;
use super::Outcome;
use super::course::{Course, is_work};
use super::walk::Halt;

impl Course<'_> {
    /// A row by its number. Who repeats that one later means the row which it is like.
    pub fn numbered_as_before(&mut self, row: u32, at: usize, again: &RowsAgain, place: Place) {
        let label = self.pattern.lines.get(at).and_then(|line| line.label.as_ref());
        let place_among = label.map_or(0, |label| label.place_among(row));
        if let Some(source) = self.as_before(place_among, at, again, place) {
            self.numbered.insert(row, source);
        }
    }

    /// One of so many rows without a number.
    pub fn next_as_before(&mut self, place_among: u64, at: usize, again: &RowsAgain, place: Place) {
        self.as_before(place_among, at, again, place);
    }

    /// Works one of the rows of a line, and says by which line it was worked.
    fn as_before(&mut self, place_among: u64, at: usize, again: &RowsAgain, place: Place) -> Option<usize> {
        let source = match self.source(place_among, &again.rows) {
            Ok(source) => source,
            Err(row) => {
                self.fail_at(at, Outcome::NoSuchRow { row }, place);
                return None;
            }
        };
        self.once_as(at, source);
        let pattern = self.pattern;
        if let Some(line) = pattern.lines.get(at)
            && line.label.as_ref().and_then(|label| label.many()) == Some(place_among + 1)
        {
            self.behind_the_last(at, line, again, place);
        }
        Some(source)
    }

    /// The line of the row that is repeated; or its number, where nothing is worked in that.
    fn source(&self, place_among: u64, rows: &WhichRows) -> Result<usize, u32> {
        let (row, line) = match rows {
            // Each row that is worked comes last itself, so that the one to repeat is always as far back.
            WhichRows::Last(many) => {
                let back = usize::try_from(*many).unwrap_or(usize::MAX);
                let done = self.history.len().checked_sub(back).and_then(|at| self.history.get(at));
                (*many, done.filter(|done| done.rows == 1).map(|done| done.line))
            }
            WhichRows::Numbered(ranges) => {
                let row = numbered(ranges, place_among % rows.many().max(1));
                (row, self.line_of(row))
            }
        };
        let is_worked = |line: &usize| {
            let line = self.pattern.lines.get(*line);
            line.is_some_and(|line| !line.is_whole || line.items.iter().any(is_work))
        };
        line.filter(is_worked).ok_or(row)
    }

    /// Works one row as another line says.
    fn once_as(&mut self, at: usize, source: usize) {
        let pattern = self.pattern;
        let (Some(line), Some(row)) = (pattern.lines.get(at), pattern.lines.get(source)) else {
            return;
        };
        self.choose_working(line);
        if !row.is_whole {
            self.fail_at(at, Outcome::Unread, row.place);
            return self.believe(line);
        }
        let before = self.needle.total();
        let meant = self.meant.get(source).copied().flatten();
        let mut trial = self.trial(row, self.needle.clone(), meant);
        // What that line says of its count is said of the first time.
        trial.halt = trial
            .halt
            .filter(|halt| !matches!(halt.outcome, Outcome::Differs { .. }));
        self.note(at, line, before, trial, None);
        self.done(source);
    }

    /// Whether the rows are as many as the line says, and the stitches behind the last of them.
    fn behind_the_last(&mut self, at: usize, line: &Line, again: &RowsAgain, place: Place) {
        let named = line.label.as_ref().and_then(|label| label.many()).unwrap_or(0);
        if let Some(made) = self.other_rows(named, again) {
            return self.fail_at(at, Outcome::OtherRows { named, made }, place);
        }
        let (before, is) = (
            self.worked.get(at).map_or(0, |worked| worked.before),
            self.needle.total(),
        );
        let until = match &again.often {
            RowsOften::Until(amount) => amount.value(self.size),
            _ => is,
        };
        let end = if until == is {
            self.as_said_after(&line.items, before, is)
        } else {
            let outcome = Outcome::Differs { said: until, is };
            Err(Halt { outcome, place })
        };
        if let Err(halt) = end {
            self.fail_at(at, halt.outcome, halt.place);
            self.believe(line);
        }
    }

    /// How many rows the repeats make, where the line names another number. "4 times" may count the first time or not.
    fn other_rows(&self, named: u64, again: &RowsAgain) -> Option<u64> {
        let of_once = again.rows.many();
        match &again.often {
            RowsOften::Until(_) | RowsOften::ToLength(_) => None,
            RowsOften::Named => (of_once == 0 || !named.is_multiple_of(of_once)).then_some(of_once),
            RowsOften::Times(amount, counted) => {
                let times = amount.value(self.size);
                let made = times.saturating_mul(of_once);
                let may_count_the_first = *counted != Counted::More;
                let is_named = made == named || (may_count_the_first && made == named.saturating_add(of_once));
                (!is_named).then_some(made)
            }
        }
    }
}

/// One of the rows by its place among them.
fn numbered(ranges: &[(u32, u32)], place: u64) -> u32 {
    let mut place = place;
    for (first, last) in ranges {
        let many = u64::from(last - first) + 1;
        if place < many {
            return first.saturating_add(u32::try_from(place).unwrap_or(u32::MAX));
        }
        place -= many;
    }
    0
}
