//! Circular yoke: "320 stitches at the underarm, 96 at the neck, 60 rounds, shaped in 4 of them. How many in each?"
//!
//! A yoke changes in few rounds and by many stitches each, so that a pattern has room between them. The rounds are as
//! even as they can be, and the counts between them lie on a straight line from the first to the last, each the nearest
//! multiple of the repeat: then the yoke is a cone. Neck down or body up is the same sum. No round may lose more than half
//! of its stitches, which takes all of them in pairs, or gain more than it has, one to a gap. The sum is arithmetic; many
//! yokes keep their rounds for the upper half, which is common practice, no source, and not done here.
//!
//! ```
//! use loopwright::flare::yoke::{Question, answer};
//!
//! let answer = answer(&Question { multiple: 8, ..Question::about(320, 96, 60, 4) }).unwrap();
//! let rounds: Vec<_> = answer.rounds.iter().map(|round| (round.round, round.change, round.after)).collect();
//! assert_eq!(rounds, [(14, 56, 264), (29, 56, 208), (44, 56, 152), (59, 56, 96)]);
//! ```

use super::{MULTIPLE, STITCHES};
use crate::bounds::Bounds;
use crate::problem::{Kind, Problem};
use crate::shaping::{self, ROWS};

/// How many shaping rounds a yoke may have.
pub const SHAPING_ROUNDS: Bounds<u32> = Bounds::new(1, 100);

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
    /// Plain rounds before the first shaping round; none makes the beginning a gap like the others.
    pub first: Option<u32>,
    /// Plain rounds at least at the end.
    pub last: u32,
}

impl Question {
    /// The usual question: no repeat, one plain round at the end.
    pub const fn about(from: u32, to: u32, rounds: u32, shaping_rounds: u32) -> Self {
        Self {
            from,
            to,
            rounds,
            shaping_rounds,
            multiple: 1,
            first: None,
            last: 1,
        }
    }
}

/// The shaping rounds of a yoke.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// In the order they are worked.
    pub rounds: Vec<Round>,
    /// Whether stitches are gained; lost otherwise.
    pub gain: bool,
    /// Plain rounds after the last.
    pub left: u32,
}

/// One shaping round; how its changes are spaced is [`crate::spacing`].
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Round {
    /// Plain rounds since the one before.
    pub plain: u32,
    /// Its number.
    pub round: u32,
    /// Stitches before it.
    pub before: u32,
    /// Stitches lost or gained.
    pub change: u32,
    /// Stitches after it.
    pub after: u32,
}

/// Works out the rounds.
///
/// # Errors
/// Every [`Problem`] has the field `from`, `to`, `rounds`, `shaping_rounds`, `multiple`, `first` or `last`, and the
/// nearest value that can be had.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    let mut problems = Vec::new();
    let counts = [
        ("from", question.from, STITCHES),
        ("to", question.to, STITCHES),
        ("rounds", question.rounds, ROWS),
        ("shaping_rounds", question.shaping_rounds, SHAPING_ROUNDS),
        ("multiple", question.multiple, MULTIPLE),
    ];
    for (field, value, bounds) in counts {
        problems.extend(Problem::of_count(field, value, bounds));
    }
    if !problems.is_empty() {
        return Err(problems);
    }
    let problem = |field, kind| Err(vec![Problem { field, kind }]);
    let (to, of) = (question.to, question.multiple);
    if !to.is_multiple_of(of) {
        let (below, above) = (to / of * of, to / of * of + of);
        let below = (below > 0).then_some(below);
        let above = (above <= STITCHES.most).then_some(above);
        return problem("to", Kind::NoExact { below, above });
    }
    if question.from == to {
        return problem("to", Kind::Already);
    }
    let Some(mut rounds) = counts_of(question, question.shaping_rounds) else {
        let fits = |times: &u32| counts_of(question, *times).is_some();
        let below = (1..question.shaping_rounds).rev().find(fits);
        let above = (question.shaping_rounds + 1..=SHAPING_ROUNDS.most).find(fits);
        return problem("shaping_rounds", Kind::NoExact { below, above });
    };
    let places = shaping::Question {
        each: 1,
        knitting: shaping::Knitting::Round,
        first: question.first,
        last: question.last,
        order: shaping::Order::Mixed,
        ..shaping::Question::about(shaping::Ask::Gain(question.shaping_rounds), question.rounds)
    };
    let places = shaping::answer(&places).map_err(said_of_rounds)?.schedule;
    let mut last = 0;
    for (round, place) in rounds.iter_mut().zip(places.rows()) {
        round.plain = place.row - last - 1;
        round.round = place.row;
        last = place.row;
    }
    Ok(Answer {
        rounds,
        gain: to > question.from,
        left: places.left,
    })
}

/// The problems of a schedule in the words of this question.
fn said_of_rounds(problems: Vec<Problem>) -> Vec<Problem> {
    let mut said = Vec::new();
    for Problem { field, kind } in problems {
        match field {
            "rows" => said.push(Problem { field: "rounds", kind }),
            "amount" => said.push(Problem {
                field: "shaping_rounds",
                kind,
            }),
            // More than one shaping round in a round there cannot be.
            "each" => {}
            field => said.push(Problem { field, kind }),
        }
    }
    said
}

/// The counts in so many shaping rounds, their places still open; none when some round cannot be worked.
fn counts_of(question: &Question, times: u32) -> Option<Vec<Round>> {
    let Question { from, to, multiple, .. } = *question;
    let (start, end) = (i64::from(from), i64::from(to));
    let (of, all) = (i64::from(multiple), i64::from(times));
    let mut rounds = Vec::new();
    let mut before = from;
    for step in 1..=all {
        // The nearest multiple to the straight line, in whole numbers: halves go up.
        let ideal = start * all + (end - start) * step;
        let after = (2 * ideal + of * all).div_euclid(2 * of * all) * of;
        let after = u32::try_from(after).ok()?;
        let change = after.abs_diff(before);
        let most = if to > from { before } else { before / 2 };
        if change == 0 || change > most || (after > before) != (to > from) {
            return None;
        }
        rounds.push(Round {
            plain: 0,
            round: 0,
            before,
            change,
            after,
        });
        before = after;
    }
    Some(rounds)
}

#[cfg(test)]
mod tests;
