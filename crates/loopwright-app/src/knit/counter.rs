//! One counter of rows: what its taps come to in a plan.

use crate::store::Fields;
use loopwright::follow::Plan;
use loopwright::follow::learnt::{Pace, REST_MS, Timed};
use loopwright_project::knitting::{self, Made, Tap};

/// One counter, with all taps that were made on it.
#[derive(Clone, Debug, PartialEq)]
pub struct Counter {
    /// Which of the counters it is, from 1.
    pub number: u32,
    /// The rows that are done; no more than there are.
    pub done: u32,
    /// The rows that were tapped beyond the last one: two windows may tap at once, or the answer has become shorter.
    pub beyond: u32,
    taps: Vec<Made>,
}

/// A tap in the list of them.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Tapped {
    /// When it was made, in milliseconds since 1970.
    pub at: u64,
    /// What it means.
    pub tap: Tap,
    /// How many rows were done after it.
    pub rows: u32,
}

impl Counter {
    /// The counter of this number, whose taps these are, in a piece of so many rows.
    pub fn new(number: u32, texts: &Fields, rows: u32) -> Self {
        let taps = knitting::taps(texts);
        let done = knitting::rows_done(&taps);
        Self {
            number,
            done: done.min(rows),
            beyond: done.saturating_sub(rows),
            taps,
        }
    }

    /// The row she is in, where there is one left.
    pub const fn row(&self) -> u32 {
        self.done.saturating_add(1)
    }

    /// The repeats of this row that are done.
    pub fn repeats(&self) -> u32 {
        knitting::repeats_done(&self.taps, self.row())
    }

    /// A tap "this row is done" at this time of the clock.
    pub fn on(&self, now: u64) -> Tap {
        knitting::on(&self.taps, now)
    }

    /// A tap one row back, where there is one. Rows beyond the last one go back one by one as well.
    pub fn back(&self) -> Option<Tap> {
        (self.done.saturating_add(self.beyond) > 0).then_some(Tap::Rows(-1))
    }

    /// The tap that leads to a row; none where she is in it.
    pub fn to(&self, row: u32) -> Option<Tap> {
        let done = i64::from(self.done) + i64::from(self.beyond);
        let by = i64::from(row) - 1 - done;
        (by != 0).then_some(Tap::Rows(by))
    }

    /// Whether the last tap was made a moment after the one before it.
    pub fn was_quick(&self) -> bool {
        self.taps.last().is_some_and(|made| made.tap == Tap::Quick)
    }

    /// Whether a row is being timed.
    pub fn is_timing(&self) -> bool {
        self.taps.last().is_some_and(|made| made.tap == Tap::Start)
    }

    /// When the last tap was made.
    pub fn last_at(&self) -> Option<u64> {
        self.taps.last().map(|made| made.at)
    }

    /// All taps with what they came to, the last one first.
    pub fn history(&self) -> Vec<Tapped> {
        let mut rows = 0;
        let tapped = self.taps.iter().map(|made| {
            rows = knitting::moved(rows, made.tap.rows());
            Tapped {
                at: made.at,
                tap: made.tap,
                rows,
            }
        });
        let mut history: Vec<Tapped> = tapped.collect();
        history.reverse();
        history
    }

    /// Her pace, learnt from the last taps; a row weighs as much as is worked in it, and where that is not known of all rows
    /// each weighs the same.
    pub fn pace<Doing>(&self, plan: &Plan<Doing>) -> Option<Pace> {
        let times = knitting::times(&self.taps);
        let last = times.iter().rev().take(LEARNT_FROM);
        let timed: Vec<Timed> = last
            .map(|(row, millis)| Timed {
                millis: *millis,
                stitches: worked_in(plan, *row),
            })
            .collect();
        Pace::of(&timed)
    }

    /// Her pace in stitches a minute, as a project takes it; none where stitches are not known, or it is none that hands have.
    pub fn a_minute<Doing>(&self, plan: &Plan<Doing>) -> Option<u32> {
        plan.worked(plan.rows)?;
        self.pace(plan)?.a_minute()
    }

    /// The stitches that are left to work, or the rows, where stitches are not known.
    pub fn left<Doing>(&self, plan: &Plan<Doing>) -> u64 {
        let rows = u64::from(plan.rows.saturating_sub(self.done));
        match (plan.worked(plan.rows), plan.worked(self.done)) {
            (Some(all), Some(done)) => all.saturating_sub(done),
            _ => rows,
        }
    }

    /// How much of the whole is worked, in hundredths of its stitches; none where they are not known.
    pub fn hundredths<Doing>(&self, plan: &Plan<Doing>) -> Option<u32> {
        let (all, done) = (plan.worked(plan.rows)?, plan.worked(self.done)?);
        let hundredths = done.saturating_mul(100).checked_div(all)?;
        u32::try_from(hundredths).ok()
    }

    /// For how many minutes she has been at it, where it is time to rest: the last tap was made within the last minutes.
    pub fn rest_due(&self, now: u64) -> Option<u32> {
        let is_at_it = now.saturating_sub(self.last_at()?) <= REST_MS;
        let minutes = knitting::at_it_for(&self.taps, REST_MS)? / 60_000;
        (is_at_it && minutes >= REST_AFTER_MINUTES).then(|| u32::try_from(minutes).unwrap_or(u32::MAX))
    }
}

/// Stitches that are worked in a row; 1 where those of all rows are not known.
fn worked_in<Doing>(plan: &Plan<Doing>, row: u32) -> u64 {
    let before = plan.worked(row.saturating_sub(1));
    match (plan.worked(plan.rows), plan.worked(row), before) {
        (Some(_), Some(after), Some(before)) => after.saturating_sub(before),
        _ => 1,
    }
}

/// A pace is learnt from so many rows, the last ones: she may have grown quicker since the first.
const LEARNT_FROM: usize = 40;

/// After so many minutes without a rest the hands are spoken of. Common practice, no source.
const REST_AFTER_MINUTES: u64 = 30;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::store::Typed;
    use loopwright::shaping::Knitting;

    fn taps(made: &[(u64, &str)]) -> Fields {
        let kept =
            |(count, (at, text)): (usize, &(u64, &str))| (knitting::name(*at, "w", count as u32), Typed::plain(*text));
        made.iter().enumerate().map(kept).collect()
    }

    fn counter(made: &[(u64, &str)], rows: u32) -> Counter {
        Counter::new(1, &taps(made), rows)
    }

    #[test]
    fn rows_beyond_the_last_are_seen_and_go_back() {
        let counter = counter(&[(1, "+1"), (2, "+4")], 3);
        assert_eq!((counter.done, counter.beyond), (3, 2));
        assert_eq!(counter.back(), Some(Tap::Rows(-1)));
        assert_eq!(counter.to(1), Some(Tap::Rows(-5)));
    }

    #[test]
    fn before_the_first_row_there_is_no_way_back() {
        assert_eq!(counter(&[], 3).back(), None);
        assert_eq!(counter(&[(1, "+1"), (2, "-1")], 3).back(), None);
        assert_eq!(counter(&[], 3).to(1), None);
    }

    #[test]
    fn what_is_left_is_counted_in_stitches_where_they_are_known() {
        let known: Plan<()> = Plan::plain(Knitting::Round, 10, Some(100));
        let unknown: Plan<()> = Plan::plain(Knitting::Round, 10, None);
        let counter = counter(&[(1, "+4")], 10);
        assert_eq!((counter.left(&known), counter.left(&unknown)), (600, 6));
        assert_eq!(
            (counter.hundredths(&known), counter.hundredths(&unknown)),
            (Some(40), None)
        );
    }

    #[test]
    fn hands_are_spoken_of_after_half_an_hour_without_a_rest_and_not_after_it() {
        let minute = 60_000;
        let made: Vec<(u64, &str)> = (0..=32).map(|row| (row * minute, "+1")).collect();
        let counter = counter(&made, 100);
        assert_eq!(counter.rest_due(32 * minute), Some(32));
        assert_eq!(counter.rest_due(40 * minute), None);
    }

    #[test]
    fn the_history_says_where_each_tap_led() {
        let history = counter(&[(1, "+1"), (2, "+9"), (3, "-1")], 60).history();
        let rows: Vec<u32> = history.iter().map(|tapped| tapped.rows).collect();
        assert_eq!(rows, [9, 10, 1]);
    }
}
