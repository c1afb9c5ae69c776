//! The course of the lines: which is worked when, on which needle, and what is noted of it.

use super::super::line::{Doing, Every, Item, Label, Line, Pattern};
use super::super::needle::Needle;
use super::walk::Meant;
use super::{Outcome, Start, Worked};
use crate::terms::{Side, Working};
use std::collections::BTreeMap;

/// All that goes on from line to line.
pub(super) struct Course<'a> {
    pub pattern: &'a Pattern,
    pub size: usize,
    pub needle: Needle,
    pub working: Working,
    pub worked: Vec<Worked>,
    /// In which way each line was meant, when it was worked last.
    pub meant: Vec<Meant>,
    /// The line of each numbered row.
    pub numbered: BTreeMap<u32, usize>,
    /// Lines that stand for rows which are not named one by one.
    pub everys: Vec<(Every, usize)>,
    /// Whether right-side rows are the odd ones.
    pub right_is_odd: bool,
    /// The number of the row that was worked last; nought where it has none.
    pub last: u32,
    /// What was worked, a line at a time.
    pub history: Vec<Done>,
    /// The lines whose rows are being worked again, each within the one before.
    pub repeating: Vec<usize>,
    /// The first line since the count was sure that could not be worked as written.
    pub stands_on: Option<usize>,
    pub steps: u64,
    /// A line whose needle is kept as it was before its first row.
    pub watched: Option<usize>,
    /// That needle.
    pub kept: Option<(Needle, Working)>,
}

/// A line that was worked, and how many rows that were.
#[derive(Clone, Copy)]
pub(super) struct Done {
    pub line: usize,
    pub rows: u64,
}

impl<'a> Course<'a> {
    pub fn new(pattern: &'a Pattern, start: &Start, size: usize) -> Self {
        let not_worked = Worked {
            rows: 0,
            before: 0,
            used: 0,
            after: 0,
            outcome: Outcome::NotWorked,
            place: None,
            row: 0,
            otherwise: None,
            stands_on: None,
            crosses_marker: false,
        };
        Self {
            pattern,
            size,
            needle: Needle::with(u64::from(start.stitches), &start.markers, start.working),
            working: start.working,
            worked: vec![not_worked; pattern.lines.len()],
            meant: vec![None; pattern.lines.len()],
            numbered: BTreeMap::new(),
            everys: Vec::new(),
            right_is_odd: true,
            last: 0,
            history: Vec::new(),
            repeating: Vec::new(),
            stands_on: None,
            steps: 0,
            watched: None,
            kept: None,
        }
    }

    /// All lines.
    pub fn run(&mut self) {
        let lines = &self.pattern.lines;
        let mut at = 0;
        while let Some(line) = lines.get(at) {
            match &line.label {
                Some(label) if is_numbered(label) => at = self.block(at),
                _ => {
                    self.unnumbered(at, line);
                    at += 1;
                }
            }
        }
        for (worked, total) in self.worked.iter_mut().zip(std::iter::repeat(self.needle.total())) {
            if worked.outcome == Outcome::NotWorked && worked.rows == 0 && worked.before == 0 {
                (worked.before, worked.after) = (total, total);
            }
        }
    }

    /// A line without a number: a row, so many rows, or a sentence.
    fn unnumbered(&mut self, at: usize, line: &Line) {
        let times = line.label.as_ref().map_or(1, |label| label.times);
        let as_before = line.as_before();
        for place_among in 0..u64::from(times).min(super::MOST_ROWS) {
            match as_before {
                Some((again, place)) => self.next_as_before(place_among, at, again, place),
                None => self.row(at),
            }
        }
        if u64::from(times) > super::MOST_ROWS {
            self.fail(at, Outcome::Endless);
        }
        if line.items.iter().any(is_work) || as_before.is_some() {
            self.last = 0;
        }
    }

    /// Notes that a line cannot be worked at all.
    pub fn fail(&mut self, at: usize, outcome: Outcome) {
        let total = self.needle.total();
        let place = self.pattern.lines.get(at).map(|line| line.place);
        if let Some(worked) = self.worked.get_mut(at) {
            if worked.rows == 0 {
                (worked.before, worked.after) = (total, total);
                worked.stands_on = self.stands_on;
            }
            if worked.outcome.is_well() {
                (worked.outcome, worked.place) = (outcome, place);
            }
        }
        self.stands_on.get_or_insert(at);
    }

    /// Notes that a line was worked once, which is one row, or those of `work 3 rows even`.
    pub fn done(&mut self, line: usize) {
        let items = self.pattern.lines.get(line).map_or(&[][..], |line| &line.items);
        let rows = items.iter().filter_map(|item| match &item.doing {
            Doing::Rows(_, rows) | Doing::AtStartOfRows(_, rows) => Some(rows.value(self.size)),
            _ => None,
        });
        let rows = rows.sum::<u64>().max(1);
        self.history.push(Done { line, rows });
    }

    /// The line of a row by its number.
    pub fn line_of(&self, row: u32) -> Option<usize> {
        let by_number = self.numbered.get(&row).copied();
        by_number.or_else(|| {
            let stands_for = |(every, _): &&(Every, usize)| self.is_one_of(row, *every);
            self.everys.iter().rev().find(stands_for).map(|(_, line)| *line)
        })
    }

    fn is_one_of(&self, row: u32, every: Every) -> bool {
        let is_odd = row % 2 == 1;
        match every {
            Every::Even => !is_odd,
            Every::Odd => is_odd,
            Every::Side(Side::Right) => is_odd == self.right_is_odd,
            Every::Side(Side::Wrong) => is_odd != self.right_is_odd,
        }
    }
}

/// Whether a label names rows by their numbers.
pub(super) const fn is_numbered(label: &Label) -> bool {
    !label.rows.is_empty() || label.every.is_some()
}

/// Whether something is worked, so that a new row begins for it.
pub(super) const fn is_work(item: &Item) -> bool {
    !matches!(
        item.doing,
        Doing::Join | Doing::Said(_) | Doing::Turn | Doing::PlaceMarker | Doing::RowsAgain(_)
    )
}
