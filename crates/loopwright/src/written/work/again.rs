//! Rows worked again: so many times, or until there are so many stitches.

use super::super::line::{Counted, RowsAgain, RowsOften, WhichRows};
use super::super::needle::Needle;
use super::super::place::Place;
use super::course::Course;
use super::walk::Halt;
use super::{Doubt, MOST_ROWS, Otherwise, Outcome};

/// How rows were worked again.
struct Again {
    needle: Needle,
    times: u64,
    halt: Option<Halt>,
}

impl Again {
    fn outcome(&self) -> Outcome {
        self.halt.map_or(Outcome::ComesOut, |halt| halt.outcome)
    }
}

impl Course<'_> {
    /// Works rows again, and notes what came of it at the line that says so.
    pub fn again(&mut self, at: usize, again: &RowsAgain, place: Place) {
        let before = self.needle.total();
        let lines = match self.lines_of(&again.rows) {
            Ok(lines) => lines,
            Err(row) => return self.fail_at(at, Outcome::NoSuchRow { row }, place),
        };
        let (done, otherwise) = match &again.often {
            RowsOften::Until(amount) => {
                let wanted = amount.value(self.size);
                (self.until(&lines, wanted, place), None)
            }
            RowsOften::Times(amount, counted) => {
                let times = amount.value(self.size);
                let usual = self.so_often(&lines, times, place);
                self.or_in_all(usual, *counted, (&lines, times, place))
            }
        };
        let items = &self.pattern.lines[at].items;
        let said = self.as_said_after(items, before, done.needle.total());
        let halt = done.halt.or(said.err());
        self.history.extend(
            lines
                .iter()
                .cycle()
                .take(lines.len() * usize::try_from(done.times).unwrap_or(0)),
        );
        self.note_again(at, before, Again { halt, ..done }, otherwise);
    }

    /// "Rep rows 1-2 3 times" is three times more to most, and three in all to some.
    fn or_in_all(
        &mut self,
        usual: Again,
        counted: Counted,
        (lines, times, place): (&[usize], u64, Place),
    ) -> (Again, Option<Otherwise>) {
        if counted == Counted::More || times == 0 {
            return (usual, None);
        }
        let other = self.so_often(lines, times - 1, place);
        if counted == Counted::All {
            return (other, None);
        }
        let told = |is_usual, again: &Again| Otherwise {
            doubt: Doubt::Times,
            is_usual,
            after: again.needle.total(),
            outcome: again.outcome(),
        };
        if usual.halt.is_some() && other.halt.is_none() {
            let otherwise = told(true, &usual);
            return (other, Some(otherwise));
        }
        let is_same = usual.outcome() == other.outcome() && usual.needle.total() == other.needle.total();
        let otherwise = (!is_same).then(|| told(false, &other));
        (usual, otherwise)
    }

    /// The lines of the rows, in their order; or the first row that there is not.
    fn lines_of(&mut self, rows: &WhichRows) -> Result<Vec<usize>, u32> {
        match rows {
            WhichRows::Last(many) => {
                let wanted = usize::try_from(*many).unwrap_or(usize::MAX);
                let from = self.history.len().checked_sub(wanted).ok_or(*many)?;
                Ok(self.history.get(from..).unwrap_or_default().to_vec())
            }
            WhichRows::Numbered(rows) => {
                let mut lines = Vec::new();
                for (first, last) in rows {
                    if u64::from(last - first) >= MOST_ROWS {
                        return Err(*last);
                    }
                    for row in *first..=*last {
                        lines.push(self.line_of(row).ok_or(row)?);
                    }
                }
                // Rows that only "even rows" stands for may not have been worked for the first time.
                let last = rows.last().map_or(0, |(_, last)| *last);
                self.between(self.last.saturating_add(1), last.saturating_add(1));
                Ok(lines)
            }
        }
    }

    fn so_often(&mut self, lines: &[usize], times: u64, place: Place) -> Again {
        let mut again = Again {
            needle: self.needle.clone(),
            times: 0,
            halt: None,
        };
        if times.saturating_mul(lines.len() as u64) > MOST_ROWS {
            let outcome = Outcome::Endless;
            again.halt = Some(Halt { outcome, place });
            return again;
        }
        while again.times < times && again.halt.is_none() {
            self.once(lines, &mut again);
        }
        again
    }

    /// The rows once more.
    fn once(&mut self, lines: &[usize], again: &mut Again) {
        again.times += 1;
        let pattern = self.pattern;
        for at in lines {
            let Some(line) = pattern.lines.get(*at) else { return };
            if !line.is_whole {
                let (outcome, place) = (Outcome::Unread, line.place);
                again.halt = Some(Halt { outcome, place });
                return;
            }
            let trial = self.trial(line, again.needle.clone(), self.meant[*at]);
            again.needle = trial.needle;
            match trial.halt {
                // What a row says of its count is said of the first time.
                None
                | Some(Halt {
                    outcome: Outcome::Differs { .. },
                    ..
                }) => {}
                halt => {
                    again.halt = halt;
                    return;
                }
            }
        }
    }

    fn until(&mut self, lines: &[usize], wanted: u64, place: Place) -> Again {
        let mut again = Again {
            needle: self.needle.clone(),
            times: 0,
            halt: None,
        };
        loop {
            let before = again.needle.total();
            if before == wanted || again.halt.is_some() {
                return again;
            }
            self.once(lines, &mut again);
            let after = again.needle.total();
            let is_nearer = after.abs_diff(wanted) < before.abs_diff(wanted);
            let is_past = (before > wanted) != (after > wanted) && after != wanted;
            let outcome = if !is_nearer || is_past {
                Outcome::NeverComesTo { wanted, before, after }
            } else if again.times.saturating_mul(lines.len() as u64) > MOST_ROWS {
                Outcome::Endless
            } else {
                continue;
            };
            again.halt.get_or_insert(Halt { outcome, place });
        }
    }

    fn fail_at(&mut self, at: usize, outcome: Outcome, place: Place) {
        self.fail(at, outcome);
        if let Some(worked) = self.worked.get_mut(at) {
            worked.place = Some(place);
        }
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
