//! The rows that are worked again, one after the other, each as it is written.

use super::super::line::{Doing, Line};
use super::super::place::Place;
use super::again::{Again, Often, Way};
use super::course::Course;
use super::walk::Halt;
use super::{MOST_ROWS, Outcome};

impl Course<'_> {
    /// Works the rows on the needle of `again`, in one way.
    pub fn rows_again(&mut self, way: Way, lines: &[usize], place: Place, again: &mut Again) {
        match way.often {
            Often::Times(times) => self.so_often(way, lines, times, place, again),
            Often::Until(wanted) => self.until(way, lines, wanted, place, again),
            Often::ToLength => self.up_to_a_length(way, lines, place, again),
        }
    }

    fn so_often(&mut self, way: Way, lines: &[usize], times: u64, place: Place, again: &mut Again) {
        if times.saturating_mul(lines.len() as u64) > MOST_ROWS {
            let outcome = Outcome::Endless;
            again.halt = Some(Halt { outcome, place });
        }
        for _ in 0..times {
            if again.halt.is_some() {
                return;
            }
            self.once(way, lines, place, again);
            again.times += 1;
        }
    }

    /// Rows that leave the count as it is do so however often they are worked. An even number of them leaves the work on
    /// the side on which it was.
    fn up_to_a_length(&mut self, way: Way, lines: &[usize], place: Place, again: &mut Again) {
        let before = again.needle.total();
        self.so_often(way, lines, 2, place, again);
        if again.needle.total() != before {
            let outcome = Outcome::ByLength;
            again.halt.get_or_insert(Halt { outcome, place });
        }
    }

    /// The rows once more.
    fn once(&mut self, way: Way, lines: &[usize], place: Place, again: &mut Again) {
        let pattern = self.pattern;
        for at in lines {
            let Some(line) = pattern.lines.get(*at) else { return };
            again.halt = self.once_more(*at, line, place, again);
            if again.halt.is_none() {
                self.inner(way, *at, line, again);
            }
            if again.halt.is_some() {
                return;
            }
        }
    }

    /// One of the rows once more; why it cannot be worked, if so.
    fn once_more(&mut self, at: usize, line: &Line, place: Place, again: &mut Again) -> Option<Halt> {
        if !line.is_whole {
            let (outcome, place) = (Outcome::Unread, line.place);
            return Some(Halt { outcome, place });
        }
        if again.rows.len() as u64 >= MOST_ROWS {
            let outcome = Outcome::Endless;
            return Some(Halt { outcome, place });
        }
        let meant = self.meant.get(at).copied().flatten();
        let trial = self.trial(line, again.needle.clone(), meant);
        again.needle = trial.needle;
        again.rows.push(at);
        // What a row says of its count is said of the first time.
        trial
            .halt
            .filter(|halt| !matches!(halt.outcome, Outcome::Differs { .. }))
    }

    /// Rows that a repeated row repeats by itself. The line that is being followed is not begun again within itself.
    fn inner(&mut self, way: Way, at: usize, line: &Line, again: &mut Again) {
        for item in &line.items {
            let Doing::RowsAgain(inner) = &item.doing else { continue };
            if self.repeating.contains(&at) {
                return;
            }
            again.has_inner = true;
            if !way.with_inner {
                return;
            }
            let lines = match self.lines_of(&inner.rows) {
                Ok(lines) => lines,
                Err(row) => {
                    let (outcome, place) = (Outcome::NoSuchRow { row }, item.place);
                    again.halt = Some(Halt { outcome, place });
                    return;
                }
            };
            let often = self.so_often_as(&inner.often);
            let times = again.times;
            self.repeating.push(at);
            self.rows_again(Way { often, ..way }, &lines, item.place, again);
            self.repeating.pop();
            again.times = times;
        }
    }

    fn until(&mut self, way: Way, lines: &[usize], wanted: u64, place: Place, again: &mut Again) {
        loop {
            let before = again.needle.total();
            if before == wanted || again.halt.is_some() {
                return;
            }
            self.once(way, lines, place, again);
            again.times += 1;
            let after = again.needle.total();
            let is_nearer = after.abs_diff(wanted) < before.abs_diff(wanted);
            let is_past = (before > wanted) != (after > wanted) && after != wanted;
            if !is_nearer || is_past {
                let outcome = Outcome::NeverComesTo { wanted, before, after };
                again.halt.get_or_insert(Halt { outcome, place });
            }
        }
    }
}
