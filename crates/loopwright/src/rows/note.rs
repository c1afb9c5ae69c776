//! What else she should know of rows: on which side they end, whether they end where the chart does, whether they drop.

use super::{Answer, LONG, Question};
use crate::shaping::Side;
use crate::units::Length;

/// What else she should know.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Note {
    /// In the round garter is a knit round and a purl round in turn.
    GarterInTheRound,
    /// Back and forth, with row 1 on the right side, the last row is on this side.
    LastRow {
        /// On which.
        side: Side,
    },
    /// The rows that were asked about end in another row of the repeat than the chart does.
    InsideRepeat,
    /// The rows that were asked about end in the middle of a ridge.
    HalfRidge,
    /// With this repeat garter never ends on a whole ridge.
    NeverWholeRidges,
    /// Longer than was wanted, and nothing shorter ends as asked.
    NoFewer,
    /// So long a piece drops under its own weight when worn, by [`DROP`](super::DROP).
    Drops,
}

/// The notes on an answer, in the order they are told.
pub(super) fn notes(question: &Question, answer: &Answer) -> Vec<Note> {
    let pick = &answer.pick;
    let is_half_ridge = question.garter && pick.ends_right_side();
    let side = if pick.ends_right_side() {
        Side::Right
    } else {
        Side::Wrong
    };
    let all = [
        (question.garter && question.round).then_some(Note::GarterInTheRound),
        (!question.round).then_some(Note::LastRow { side }),
        ends_inside(question, answer).then_some(Note::InsideRepeat),
        (is_half_ridge && !answer.ends).then_some(Note::HalfRidge),
        (is_half_ridge && answer.ends).then_some(Note::NeverWholeRidges),
        (answer.below.is_none() && answer.off > Length::ZERO).then_some(Note::NoFewer),
        (pick.length >= LONG).then_some(Note::Drops),
    ];
    all.into_iter().flatten().collect()
}

/// Whether the rows end in another row of the chart than they should; fewer than come before the first end do.
fn ends_inside(question: &Question, answer: &Answer) -> bool {
    let outside = question.rows_outside_repeats();
    let past = answer.pick.rows.checked_sub(outside);
    !past.is_some_and(|past| past.is_multiple_of(question.repeat))
}
