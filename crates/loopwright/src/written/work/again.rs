//! Rows worked again: so many times, or until there are so many stitches.
//!
//! A row among them that says by itself "rep rows ..." is worked with that, as it is written, and what comes of it without
//! is said: some mean only the row.

use super::super::line::{Counted, RowsAgain, RowsOften, WhichRows};
use super::super::needle::Needle;
use super::super::place::Place;
use super::course::Course;
use super::walk::Halt;
use super::{Doubt, MOST_ROWS, Otherwise, Outcome, Worked};

/// How rows were worked again.
pub(super) struct Again {
    pub needle: Needle,
    /// How often all of them were.
    pub times: u64,
    /// The lines of the rows that were worked, one for each.
    pub rows: Vec<usize>,
    /// Whether one of them says by itself that rows are worked again.
    pub has_inner: bool,
    pub halt: Option<Halt>,
}

impl Again {
    fn on(needle: Needle) -> Self {
        Self {
            needle,
            times: 0,
            rows: Vec::new(),
            has_inner: false,
            halt: None,
        }
    }

    fn outcome(&self) -> Outcome {
        self.halt.map_or(Outcome::ComesOut, |halt| halt.outcome)
    }

    /// What is said of a way that was not taken.
    fn told(&self, doubt: Doubt, is_usual: bool) -> Otherwise {
        Otherwise {
            doubt,
            is_usual,
            after: self.needle.total(),
            outcome: self.outcome(),
        }
    }
}

/// One way to understand rows that are worked again.
#[derive(Clone, Copy)]
pub(super) struct Way {
    pub often: Often,
    /// Whether a row that says by itself "rep rows ..." is worked with that; otherwise without it.
    pub with_inner: bool,
}

#[derive(Clone, Copy)]
pub(super) enum Often {
    Times(u64),
    Until(u64),
    /// As many rows as nobody has counted.
    ToLength,
}

impl Course<'_> {
    /// Works rows again, and notes what came of it at the line that says so.
    pub fn again(&mut self, at: usize, again: &RowsAgain, place: Place) {
        // A line that is followed already is not begun within itself.
        if !self.repeating.contains(&at) {
            self.repeating.push(at);
            self.follow(at, again, place);
            self.repeating.pop();
        }
    }

    fn follow(&mut self, at: usize, again: &RowsAgain, place: Place) {
        let before = self.needle.total();
        self.catch_up(&again.rows);
        let lines = match self.lines_of(&again.rows) {
            Ok(lines) => lines,
            Err(row) => return self.fail_at(at, Outcome::NoSuchRow { row }, place),
        };
        let (done, otherwise) = self.in_the_best_way(at, again, &lines, before, place);
        done.rows.iter().for_each(|line| self.done(*line));
        self.note_again(at, before, done, otherwise);
    }

    /// In the usual way, or in another one where only that comes out; and what comes of the one that was not taken.
    fn in_the_best_way(
        &mut self,
        at: usize,
        again: &RowsAgain,
        lines: &[usize],
        before: u64,
        place: Place,
    ) -> (Again, Option<Otherwise>) {
        let usual_way = Way {
            often: self.so_often_as(&again.often),
            // Rows that came last are those that were worked, each by itself.
            with_inner: matches!(again.rows, WhichRows::Numbered(_)),
        };
        let usual = self.in_one_way(at, usual_way, lines, before, place);
        let mut first = None;
        for (doubt, way) in other_ways(again, usual_way, usual.has_inner) {
            let other = self.in_one_way(at, way, lines, before, place);
            if usual.halt.is_some() && other.halt.is_none() {
                let otherwise = usual.told(doubt, true);
                return (other, Some(otherwise));
            }
            let is_same = other.outcome() == usual.outcome() && other.needle.total() == usual.needle.total();
            if !is_same {
                first.get_or_insert(other.told(doubt, false));
            }
        }
        (usual, first)
    }

    /// How often that is, as it is usually meant: "rep rows 1-2 3 times" is three times more.
    pub fn so_often_as(&self, often: &RowsOften) -> Often {
        match often {
            RowsOften::Until(amount) => Often::Until(amount.value(self.size)),
            // Only a line that names its rows says so, and it is worked row by row.
            RowsOften::Named => Often::Times(0),
            RowsOften::ToLength(_) => Often::ToLength,
            RowsOften::Times(amount, counted) => {
                let times = amount.value(self.size);
                Often::Times(times.saturating_sub(u64::from(*counted == Counted::All)))
            }
        }
    }

    /// In one way, and whether the pattern says the count that there is then.
    fn in_one_way(&mut self, at: usize, way: Way, lines: &[usize], before: u64, place: Place) -> Again {
        let mut again = Again::on(self.needle.clone());
        self.rows_again(way, lines, place, &mut again);
        let pattern = self.pattern;
        let said = pattern.lines.get(at).map_or(Ok(()), |line| {
            self.as_said_after(&line.items, before, again.needle.total())
        });
        again.halt = again.halt.or(said.err());
        again
    }

    /// Rows that only "even rows" stands for may not have been worked for the first time.
    fn catch_up(&mut self, rows: &WhichRows) {
        if let WhichRows::Numbered(rows) = rows
            && self.lines_of_numbers(rows).is_ok()
        {
            let last = rows.last().map_or(0, |(_, last)| *last);
            self.between(self.last.saturating_add(1), last.saturating_add(1));
        }
    }

    /// The lines of the rows, in their order; or the first row that there is not.
    pub fn lines_of(&self, rows: &WhichRows) -> Result<Vec<usize>, u32> {
        match rows {
            WhichRows::Last(many) => self.last_lines(*many),
            WhichRows::Numbered(rows) => self.lines_of_numbers(rows),
        }
    }

    /// The lines of so many rows that came last. Where they begin in the midst of a line such as `work 3 rows even`, all of
    /// that is taken, since its rows are alike.
    fn last_lines(&self, many: u32) -> Result<Vec<usize>, u32> {
        let mut missing = u64::from(many);
        let mut lines = Vec::new();
        for done in self.history.iter().rev() {
            if missing == 0 {
                break;
            }
            lines.push(done.line);
            missing = missing.saturating_sub(done.rows);
        }
        lines.reverse();
        if missing > 0 { Err(many) } else { Ok(lines) }
    }

    fn lines_of_numbers(&self, rows: &[(u32, u32)]) -> Result<Vec<usize>, u32> {
        let mut lines = Vec::new();
        for (first, last) in rows {
            if u64::from(last - first) >= MOST_ROWS {
                return Err(*last);
            }
            for row in *first..=*last {
                lines.push(self.line_of(row).ok_or(row)?);
            }
        }
        Ok(lines)
    }

    pub fn fail_at(&mut self, at: usize, outcome: Outcome, place: Place) {
        let is_well = |worked: &&mut Worked| worked.outcome.is_well();
        if let Some(worked) = self.worked.get_mut(at).filter(is_well) {
            (worked.outcome, worked.place) = (outcome, Some(place));
        }
        self.fail(at, outcome);
    }

    fn note_again(&mut self, at: usize, before: u64, again: Again, otherwise: Option<Otherwise>) {
        let outcome = again.outcome();
        self.needle = again.needle;
        if let Some(worked) = self.worked.get_mut(at) {
            worked.before = before;
            worked.rows = again.times;
            worked.after = self.needle.total();
            worked.otherwise = otherwise;
            worked.stands_on = self.stands_on;
            worked.row = again.times;
            worked.outcome = outcome;
            worked.place = again.halt.map(|halt| halt.place);
        }
        if outcome != Outcome::ComesOut {
            self.stands_on.get_or_insert(at);
            let line = &self.pattern.lines[at];
            self.believe(line);
        }
    }
}

/// What else may be meant: so many times in all, or without what a row repeats by itself.
fn other_ways(again: &RowsAgain, usual: Way, has_inner: bool) -> Vec<(Doubt, Way)> {
    let mut ways = Vec::new();
    if let (RowsOften::Times(_, Counted::Unsaid), Often::Times(times @ 1..)) = (&again.often, usual.often) {
        let often = Often::Times(times - 1);
        ways.push((Doubt::Times, Way { often, ..usual }));
    }
    if has_inner && usual.with_inner {
        let with_inner = false;
        ways.push((Doubt::RowsWithin, Way { with_inner, ..usual }));
    }
    ways
}
