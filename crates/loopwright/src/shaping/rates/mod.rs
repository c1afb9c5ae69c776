//! "Increase now, then every 2nd round 17 times, then every 4th round 4 times": shaping rounds as a knitter holds them in
//! her head, and how far that strays from the straight line.
//!
//! What is said counts from the shaping round before: *every 4th round* is three plain rounds and a shaping round, and the
//! first of all shaping rounds is named by itself, so that nothing of it can be meant in two ways. [`Rates`] is that
//! reading of any [`Schedule`](super::Schedule). It takes at most two rates, one after the other or by turns; a schedule
//! that needs more has to be listed.
//!
//! Which rates to offer ([`Track`]) goes by ease: one rate for all; else two, one after the other; else two by turns, the
//! shortest turn first and none of more than eight. Of each kind it is the one that strays least, and the easiest kind
//! that nowhere strays as far as one shaping round's growth is taken. Where none keeps so near, the rounds lie as even as
//! can be, and are listed. What is over at the end stays plain. All of it is arithmetic; that a growth more or less does
//! not show, and how long a turn is still held in the head, is common practice, no source.
//!
//! The straight line runs from the first shaping round to the last row that may be one. [`Drift`] is measured on it at
//! each shaping round: so many rounds before its place or behind it, or so many stitches more or fewer than the line has
//! there.

mod fit;

use super::even::{Rhythm, Rounds};
use super::{Pace, Schedule};
use crate::spacing::Fraction;

/// Every so many rows a shaping row, so many times.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rate {
    /// Rows from one shaping row to the next: 1 for every row.
    pub every: u32,
    /// How often, not counting the shaping row it is counted from.
    pub times: u32,
}

/// How the shaping rows behind the first one follow each other.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Rates {
    /// There is no shaping row.
    Nothing,
    /// There is one only.
    Once,
    /// All at one rate.
    One(Rate),
    /// At one rate, then at another.
    Two([Rate; 2]),
    /// At two rates by turns.
    ByTurns {
        /// The two rates of one turn.
        turn: [Rate; 2],
        /// How many shaping rows follow the first in all. The last turn may break off before its end.
        times: u32,
    },
    /// At more than two rates, which nobody holds in her head.
    Listed,
}

impl Rates {
    /// How the shaping rows of a schedule are said, whatever each of them changes.
    pub fn of(schedule: &Schedule) -> Self {
        let mut runs: Vec<Rate> = Vec::new();
        for (place, block) in schedule.blocks.iter().enumerate() {
            let (every, times) = (block.plain + 1, block.times - u32::from(place == 0));
            match runs.last_mut() {
                Some(run) if run.every == every => run.times += times,
                _ if times > 0 => runs.push(Rate { every, times }),
                _ => {}
            }
        }
        match *runs {
            [] if schedule.blocks.is_empty() => Self::Nothing,
            [] => Self::Once,
            [only] => Self::One(only),
            [one, other] => Self::Two([one, other]),
            _ => by_turns(&runs),
        }
    }
}

impl Schedule {
    /// Its rates in their order, each with the shaping row it is counted from and the last one at it; nothing where they are
    /// more than a knitter holds in her head.
    pub fn rate_rows(&self) -> Vec<(u32, [u32; 2])> {
        let rates = match Rates::of(self) {
            Rates::One(only) => vec![only],
            Rates::Two(both) => both.to_vec(),
            Rates::Nothing | Rates::Once | Rates::ByTurns { .. } | Rates::Listed => Vec::new(),
        };
        let mut from = self.rows().next().map_or(0, |shaped| shaped.row);
        let with_ends = |rate: Rate| {
            let to = from + rate.every * rate.times;
            let ends = [from, to];
            from = to;
            (rate.every, ends)
        };
        rates.into_iter().map(with_ends).collect()
    }
}

/// Runs that repeat the first two of them over and over; listed, if they do not, or are too long a turn to hold.
fn by_turns(runs: &[Rate]) -> Rates {
    let turn = [runs[0], runs[1]];
    let (last, before) = (runs[runs.len() - 1], &runs[..runs.len() - 1]);
    let of_turn = |place: usize| turn[place % 2];
    let repeats = before.iter().enumerate().all(|(place, run)| *run == of_turn(place));
    let ends = of_turn(runs.len() - 1);
    let gaps = runs.iter().map(|run| run.times).sum();
    let is_held = turn[0].times + turn[1].times <= fit::longest_turn(gaps);
    match is_held && repeats && last.every == ends.every && last.times <= ends.times {
        true => Rates::ByTurns { turn, times: gaps },
        false => Rates::Listed,
    }
}

/// How far shaping rounds stray from the straight line.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Drift {
    /// Rounds by which the earliest of them comes before its place on the line.
    pub early: Fraction,
    /// Rounds by which the latest of them comes behind its place.
    pub late: Fraction,
    /// Rounds from one shaping round to the next on the line.
    pub gap: Fraction,
}

impl Drift {
    fn of(rounds: Rounds, rhythm: Rhythm, schedule: &Schedule) -> Self {
        let line = rounds.line(rhythm, schedule.shaping_rows());
        let (mut early, mut late) = (0, 0);
        for (count, shaped) in (1..).zip(schedule.rows()) {
            let behind = line.behind(count, shaped.row);
            (early, late) = (early.max(-behind), late.max(behind));
        }
        let in_rounds = |parts: i64| Fraction::new(parts.unsigned_abs(), line.parts_of_round().unsigned_abs());
        Self {
            early: in_rounds(early),
            late: in_rounds(late),
            gap: in_rounds(line.parts_of_gap()),
        }
    }

    /// Whether it strays more to the early side than to the late one.
    pub fn is_early(&self) -> bool {
        self.early > self.late
    }

    /// Rounds by which it strays, where that is farthest.
    pub fn rounds(&self) -> Fraction {
        if self.is_early() { self.early } else { self.late }
    }

    /// Whether no shaping round is a whole round from its place, which is as near as most rounds can be.
    pub fn is_within_a_round(&self) -> bool {
        self.rounds().over < self.rounds().under
    }

    /// The same in stitches, of which one shaping round changes so many.
    pub fn stitches(&self, each: u32) -> Fraction {
        // Rounds and gap are parts of the same round.
        Fraction::new(self.rounds().over * u64::from(each), self.gap.over)
    }

    /// Both to the nearest whole, as they are said: rounds, and stitches of which one shaping round changes so many.
    pub fn in_whole(&self, each: u32) -> (u32, u32) {
        let nearest =
            |part: Fraction| u32::try_from((2 * part.over + part.under) / (2 * part.under)).unwrap_or(u32::MAX);
        (nearest(self.rounds()), nearest(self.stitches(each)))
    }
}

/// Something that grows by the same number in each of its shaping rounds, and how far it strays from the straight line.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Track {
    /// Its shaping rounds, with its own count.
    pub schedule: Schedule,
    /// How far they stray.
    pub drift: Drift,
}

/// What grows, and from how many stitches.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Growth<'a> {
    /// Stitches before the first round.
    pub from: u32,
    /// What each shaping round adds, in their order.
    pub changes: &'a [u32],
}

impl Track {
    /// The shaping rounds of this growth at a pace.
    pub(crate) fn at(pace: Pace, rounds: Rounds, rhythm: Rhythm, growth: Growth) -> Self {
        let times = growth.changes.len() as u32;
        let fitted = match pace {
            Pace::Easiest => fit::easiest(rounds, rhythm, times, fit::Grid::any(rounds)),
            Pace::MostEven => None,
        };
        match fitted {
            Some(fitted) => Self::in_rounds(rounds, rhythm, growth, fitted.rounds()),
            None => {
                let schedule = rounds.share(rhythm, growth.from, true, growth.changes);
                Self::of(rounds, rhythm, schedule)
            }
        }
    }

    /// The easiest that shapes in shaping rounds of another track only, which has one rate and begins in the same round;
    /// none where that strays as far as one shaping round's growth.
    pub(crate) fn among(&self, rounds: Rounds, rhythm: Rhythm, growth: Growth) -> Option<Self> {
        let Rates::One(Rate { every, .. }) = Rates::of(&self.schedule) else {
            return None;
        };
        let end = self.schedule.rows().last()?.row;
        let grid = fit::Grid { every, end };
        let fitted = fit::easiest(rounds, rhythm, growth.changes.len() as u32, grid)?;
        Some(Self::in_rounds(rounds, rhythm, growth, fitted.rounds()))
    }

    /// The track that shapes in these rounds.
    pub(crate) fn in_rounds(
        rounds: Rounds,
        rhythm: Rhythm,
        growth: Growth,
        shaped: impl IntoIterator<Item = u32>,
    ) -> Self {
        let schedule = rounds.schedule(growth.from, true, growth.changes, shaped);
        Self::of(rounds, rhythm, schedule)
    }

    fn of(rounds: Rounds, rhythm: Rhythm, schedule: Schedule) -> Self {
        Self {
            drift: Drift::of(rounds, rhythm, &schedule),
            schedule,
        }
    }
}

#[cfg(test)]
mod tests;
