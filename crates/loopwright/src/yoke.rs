//! Circular yoke: "320 stitches at the underarm, 96 at the neck, 60 rounds, shaped in 4 of them. How many in each?"
//!
//! A yoke changes in few rounds and by many stitches each, so that a pattern has room between them. The rounds are as
//! even as they can be, and the counts between them lie on a straight line from the first to the last, each the nearest
//! multiple of the repeat: then the yoke is a cone. Neck down or body up is the same sum. No round may lose more than half
//! of its stitches, which takes all of them in pairs, or gain more than it has, one to a gap. How the changes of one round
//! are spaced is [`crate::spacing`]. The sum is arithmetic; in how many rounds a yoke is shaped, and that many yokes keep
//! them for the upper half, which is not done here, are common practice, no source.
//!
//! ```
//! use loopwright::yoke::{Question, answer};
//!
//! let answer = answer(&Question { multiple: 8, ..Question::about(320, 96, 60) }).unwrap();
//! let rounds: Vec<_> = answer.schedule.rows().map(|round| (round.row, round.change, round.stitches)).collect();
//! assert_eq!(rounds, [(14, 56, Some(264)), (29, 56, Some(208)), (44, 56, Some(152)), (59, 56, Some(96))]);
//! ```

use crate::bounds::Bounds;
use crate::check::Check;
use crate::problem::{Kind, Problem};
use crate::shaping::{PLAIN, ROWS, Rhythm, Rounds, Schedule, USUAL_LAST};
use crate::terms::Multiple;

pub use crate::flare::{MULTIPLE, STITCHES};

/// How many shaping rounds a yoke may have.
pub const SHAPING_ROUNDS: Bounds<u32> = Bounds::new(1, 100);

/// In how many rounds a yoke is shaped when nothing else is said. Common practice, no source.
pub const USUAL_ROUNDS: u32 = 4;

/// A field of the question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// Stitches at the beginning.
    From,
    /// Stitches at the end.
    To,
    /// Rounds there are.
    Rounds,
    /// In how many of them the count changes.
    ShapingRounds,
    /// Stitches of one repeat.
    Multiple,
    /// Plain rounds before the first shaping round.
    First,
    /// Plain rounds at the end.
    Last,
}

crate::field_names!(Name {
    From = "from",
    To = "to",
    Rounds = "rounds",
    ShapingRounds = "shaping_rounds",
    Multiple = "multiple",
    First = "first",
    Last = "last",
});

/// A yoke, worked in either direction.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// Stitches at the beginning, within [`STITCHES`].
    pub from: u32,
    /// Stitches at the end, within [`STITCHES`].
    pub to: u32,
    /// Rounds there are, within [`ROWS`].
    pub rounds: u32,
    /// In how many of them the count changes, within [`SHAPING_ROUNDS`].
    pub shaping_rounds: u32,
    /// Stitches of one repeat that every count but the first is a multiple of, within [`MULTIPLE`]; 1 for any.
    pub multiple: u32,
    /// Plain rounds before the first shaping round, within [`PLAIN`]; none makes the beginning a gap like the others.
    pub first: Option<u32>,
    /// Plain rounds at least at the end, within [`PLAIN`].
    pub last: u32,
}

impl Question {
    /// The usual question: [`USUAL_ROUNDS`], no repeat, one plain round at the end.
    pub const fn about(from: u32, to: u32, rounds: u32) -> Self {
        Self {
            from,
            to,
            rounds,
            shaping_rounds: USUAL_ROUNDS,
            multiple: Multiple::ANY.of,
            first: None,
            last: USUAL_LAST,
        }
    }
}

/// The shaping rounds of a yoke.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// Each shaping round, what it changes and the count after it.
    pub schedule: Schedule,
}

/// Works out the rounds.
///
/// # Errors
/// Every [`Problem`] has the field `from`, `to`, `rounds`, `shaping_rounds`, `multiple`, `first` or `last`, and the
/// nearest value that can be had.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    check(question)?;
    let rounds = Rounds {
        all: question.rounds,
        first: question.first,
        last: question.last,
    };
    check_end(question)?;
    let changes = changes_of(question, question.shaping_rounds);
    if changes.is_empty() {
        let problem = Problem::new(Name::ShapingRounds, nearest_shaping_rounds(question));
        return Err(vec![problem]);
    }
    check_room(question, rounds)?;
    let gain = question.to > question.from;
    let schedule = rounds.share(Rhythm::Straight, question.from, gain, &changes);
    Ok(Answer { schedule })
}

fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let mut check = Check::default();
    check.count(Name::From, question.from, STITCHES);
    check.count(Name::To, question.to, STITCHES);
    check.count(Name::Rounds, question.rounds, ROWS);
    check.count(Name::ShapingRounds, question.shaping_rounds, SHAPING_ROUNDS);
    check.count(Name::Multiple, question.multiple, MULTIPLE);
    check.count(Name::First, question.first.unwrap_or(0), PLAIN);
    check.count(Name::Last, question.last, PLAIN);
    check.done()
}

/// The end must be such a multiple, and another count than the beginning.
fn check_end(question: &Question) -> Result<(), Vec<Problem>> {
    let Question { from, to, multiple, .. } = *question;
    let mut check = Check::default();
    let over = to % multiple;
    if over > 0 {
        let below = Some(to - over).filter(|below| *below > 0);
        let above = Some(to - over + multiple).filter(|above| *above <= STITCHES.most);
        check.wrong(Name::To, Kind::NoExact { below, above });
    } else if from == to {
        check.wrong(Name::To, Kind::Already);
    }
    check.done()
}

/// The rounds must have room for the shaping rounds.
fn check_room(question: &Question, rounds: Rounds) -> Result<(), Vec<Problem>> {
    let most = rounds.room();
    let mut check = Check::default();
    if question.shaping_rounds > most {
        let least = rounds.kept() + question.shaping_rounds;
        check.wrong(Name::Rounds, Kind::TooFew { least });
        if most > 0 {
            check.wrong(Name::ShapingRounds, Kind::TooMany { most });
        }
    }
    check.done()
}

/// The nearest numbers of shaping rounds of which every one can be worked.
fn nearest_shaping_rounds(question: &Question) -> Kind {
    let can_be_worked = |times: &u32| !changes_of(question, *times).is_empty();
    let wanted = question.shaping_rounds;
    Kind::NoExact {
        below: (SHAPING_ROUNDS.least..wanted).rev().find(can_be_worked),
        above: (wanted..=SHAPING_ROUNDS.most).find(can_be_worked),
    }
}

/// What each of so many shaping rounds changes; nothing when some round cannot be worked.
fn changes_of(question: &Question, times: u32) -> Vec<u32> {
    let [from, to, of, all] = [question.from, question.to, question.multiple, times].map(i64::from);
    let mut changes = Vec::new();
    let mut before = from;
    for step in 1..=all {
        // The nearest multiple to the straight line, in whole numbers: halves go up.
        let ideal = from * all + (to - from) * step;
        let after = (2 * ideal + of * all).div_euclid(2 * of * all) * of;
        let (change, most) = if to > from {
            (after - before, before)
        } else {
            (before - after, before / 2)
        };
        if change < 1 || change > most {
            return Vec::new();
        }
        changes.push(change as u32);
        before = after;
    }
    changes
}

#[cfg(test)]
mod tests;
