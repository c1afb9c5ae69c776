//! Circular yoke: "96 stitches at the neck, 320 at the underarm, 60 rounds, shaped in 4 of them. How many in each, how
//! are they spaced, and how is the yoke divided?"
//!
//! A yoke changes in few rounds and by many stitches each, so that a pattern has room between them; next to the underarm
//! about a third of its rounds stays plain. The counts lie on a straight line from the first to the last, or follow the
//! circle (`growth`), each the nearest multiple of the repeat. Neck down or body up is the same sum. No round may lose
//! more than half of its stitches, which takes all of them in pairs, or gain more than it has, one to a gap. How the
//! changes of one round are spaced is [`crate::spacing`], whose row stands in the answer; how the yoke is divided at the
//! underarm is `divide`. The sums are arithmetic; in how many rounds a yoke is shaped and how many stay plain is common
//! practice, no source.
//!
//! ```
//! use loopwright::yoke::{Question, answer};
//!
//! let answer = answer(&Question { multiple: 8, ..Question::about(96, 320, 60) }).unwrap();
//! let rounds: Vec<_> = answer.rounds.iter().map(|round| (round.round, round.change, round.after)).collect();
//! assert_eq!(rounds, [(10, 56, 152), (20, 56, 208), (30, 56, 264), (40, 56, 320)]);
//! assert_eq!(loopwright::row::work(&answer.rounds[0].row, 96).unwrap().on_needle, 152);
//! let divided = answer.division.unwrap();
//! assert_eq!((divided.front, divided.back, divided.sleeve), (96, 96, 64));
//! ```

mod choices;
mod divide;
mod follow;
mod growth;

pub use choices::{Growth, Name};
pub use divide::Division;
pub use follow::plan;

use crate::bounds::Bounds;
use crate::check::Check;
use crate::problem::{Kind, Problem};
use crate::row::Row;
use crate::shaping::{PLAIN, ROWS, Rhythm, Rounds, Schedule, Shaped, USUAL_LAST};
use crate::spacing::{self, Ask};
use crate::terms::Multiple;

pub use crate::flare::{MULTIPLE, STITCHES};

/// How many shaping rounds a yoke may have.
pub const SHAPING_ROUNDS: Bounds<u32> = Bounds::new(1, 100);

/// How many stitches may be cast on at one underarm.
pub const UNDERARM: Bounds<u32> = Bounds::new(0, 1_000);

/// In how many rounds a yoke is shaped when nothing else is said. Common practice, no source.
pub const USUAL_ROUNDS: u32 = 4;

/// How many stitches are cast on at an underarm when nothing else is said. Common practice, no source.
pub const USUAL_UNDERARM: u32 = 8;

/// Which part of its rounds a yoke keeps plain next to the underarm: one in so many. Common practice, no source.
const PLAIN_PART: u32 = 3;

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
    /// How the growth is shared between them.
    pub growth: Growth,
    /// Stitches of one repeat that every count but the first is a multiple of, within [`MULTIPLE`]; 1 for any.
    pub multiple: u32,
    /// Plain rounds before the first shaping round, within [`PLAIN`]. None is the usual: from the body up, which begins at
    /// the underarm, [`Question::usual_plain`]; from the neck down a gap like the others.
    pub first: Option<u32>,
    /// Plain rounds at least at the end, within [`PLAIN`]. None is the usual: from the neck down, which ends at the
    /// underarm, [`Question::usual_plain`]; from the body up one.
    pub last: Option<u32>,
    /// Stitches of each sleeve at the underarm, without those cast on; none for [`Division::usual_sleeve`].
    pub sleeve: Option<u32>,
    /// Stitches cast on at each underarm, within [`UNDERARM`].
    pub underarm: u32,
}

impl Question {
    /// The usual question: [`USUAL_ROUNDS`] in equal steps, no repeat, plain rounds as yokes have them.
    pub const fn about(from: u32, to: u32, rounds: u32) -> Self {
        Self {
            from,
            to,
            rounds,
            shaping_rounds: USUAL_ROUNDS,
            growth: Growth::Equal,
            multiple: Multiple::ANY.of,
            first: None,
            last: None,
            sleeve: None,
            underarm: USUAL_UNDERARM,
        }
    }

    /// Whether it is worked from the neck down.
    pub const fn is_neck_down(&self) -> bool {
        self.to > self.from
    }

    /// Stitches at the underarm, before the yoke is divided.
    pub const fn widest(&self) -> u32 {
        if self.is_neck_down() { self.to } else { self.from }
    }

    /// How many rounds stay plain next to the underarm when nothing else is said: a third, or what the shaping rounds
    /// leave.
    pub fn usual_plain(&self) -> u32 {
        let (other, least) = if self.is_neck_down() {
            (self.first.unwrap_or(0), USUAL_LAST)
        } else {
            (self.last.unwrap_or(USUAL_LAST), 0)
        };
        let spare = self.rounds.saturating_sub(self.shaping_rounds).saturating_sub(other);
        (self.rounds / PLAIN_PART).min(spare).min(PLAIN.most).max(least)
    }

    /// Its rounds, with the plain ones that are kept.
    fn plan(&self) -> Rounds {
        let usual = self.usual_plain();
        let (first, last) = if self.is_neck_down() {
            (self.first, self.last.unwrap_or(usual))
        } else {
            (Some(self.first.unwrap_or(usual)), self.last.unwrap_or(USUAL_LAST))
        };
        Rounds {
            all: self.rounds,
            first,
            last,
        }
    }
}

/// The shaping rounds of a yoke, and what follows at the underarm.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// Each shaping round, what it changes and the count after it.
    pub schedule: Schedule,
    /// The same rounds, each written out.
    pub rounds: Vec<Round>,
    /// Plain rounds between the underarm and the shaping round next to it.
    pub plain: u32,
    /// The yoke divided into front, back and two sleeves; none where it has too few stitches for four.
    pub division: Option<Division>,
}

/// One shaping round.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Round {
    /// Its number.
    pub round: u32,
    /// Stitches before it.
    pub before: u32,
    /// Stitches gained or lost in it.
    pub change: u32,
    /// Stitches after it.
    pub after: u32,
    /// How much that is of the stitches before it, in whole per cent.
    pub percent: u32,
    /// What is knitted, evenly spaced.
    pub row: Row,
}

/// Works out the rounds, and the division at the underarm.
///
/// # Errors
/// Every [`Problem`] has the field `from`, `to`, `rounds`, `shaping_rounds`, `multiple`, `first`, `last`, `sleeve` or
/// `underarm`, and the nearest value that can be had.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    check(question)?;
    check_end(question)?;
    let not_in_so_many = || vec![Problem::new(Name::ShapingRounds, nearest_shaping_rounds(question))];
    let changes = growth::changes(question, question.shaping_rounds).ok_or_else(not_in_so_many)?;
    let plan = question.plan();
    check_room(question, plan)?;
    let schedule = plan.share(Rhythm::Straight, question.from, question.is_neck_down(), &changes);
    let written = schedule.rows().map(|shaped| written(question, shaped));
    let rounds = written.collect::<Option<Vec<_>>>().ok_or_else(not_in_so_many)?;
    let plain = if question.is_neck_down() {
        schedule.left
    } else {
        schedule.blocks.first().map_or(0, |block| block.plain)
    };
    Ok(Answer {
        schedule,
        rounds,
        plain,
        division: Division::of(question)?,
    })
}

/// One shaping round, written out by even spacing in its suggested order; none where it cannot be worked.
fn written(question: &Question, shaped: Shaped) -> Option<Round> {
    let after = shaped.stitches?;
    let (before, ask) = if question.is_neck_down() {
        (after.checked_sub(shaped.change)?, Ask::Gain(shaped.change))
    } else {
        (after.checked_add(shaped.change)?, Ask::Lose(shaped.change))
    };
    let about = spacing::Question::about(before);
    let row = spacing::suggested_row(&spacing::Question { ask, ..about }).ok()?;
    let percent = (200 * u64::from(shaped.change) + u64::from(before)) / (2 * u64::from(before));
    Some(Round {
        round: shaped.row,
        before,
        change: shaped.change,
        after,
        percent: u32::try_from(percent).ok()?,
        row,
    })
}

fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let mut check = Check::default();
    check.count(Name::From, question.from, STITCHES);
    check.count(Name::To, question.to, STITCHES);
    check.count(Name::Rounds, question.rounds, ROWS);
    check.count(Name::ShapingRounds, question.shaping_rounds, SHAPING_ROUNDS);
    check.count(Name::Multiple, question.multiple, MULTIPLE);
    check.count(Name::First, question.first.unwrap_or(0), PLAIN);
    check.count(Name::Last, question.last.unwrap_or(0), PLAIN);
    check.count(Name::Underarm, question.underarm, UNDERARM);
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
fn check_room(question: &Question, plan: Rounds) -> Result<(), Vec<Problem>> {
    let most = plan.room();
    let mut check = Check::default();
    if question.shaping_rounds > most {
        let least = plan.kept() + question.shaping_rounds;
        check.wrong(Name::Rounds, Kind::TooFew { least });
        if most > 0 {
            check.wrong(Name::ShapingRounds, Kind::TooMany { most });
        }
    }
    check.done()
}

/// The nearest numbers of shaping rounds of which every one can be worked.
fn nearest_shaping_rounds(question: &Question) -> Kind {
    let can_be_worked = |times: &u32| growth::changes(question, *times).is_some();
    let wanted = question.shaping_rounds;
    Kind::NoExact {
        below: (SHAPING_ROUNDS.least..wanted).rev().find(can_be_worked),
        above: (wanted..=SHAPING_ROUNDS.most).find(can_be_worked),
    }
}

#[cfg(test)]
mod tests;
