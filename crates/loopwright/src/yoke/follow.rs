//! The yoke round by round: every shaping round is written out.

use super::{Answer, Question, Round};
use crate::follow::{Change, Event, Plan};
use crate::row::Stitch;
use crate::shaping::Knitting;
use crate::spacing::Spaced;

/// The yoke round by round.
///
/// ```
/// use loopwright::yoke::{Question, answer, plan};
///
/// let question = Question { multiple: 8, ..Question::about(96, 320, 60) };
/// let plan = plan(&question, &answer(&question).unwrap());
/// let now = plan.at(20);
/// assert_eq!((now.before, now.after), (Some(152), Some(208)));
/// assert_eq!(now.next.map(|next| next.rows_between), Some(9));
/// ```
pub fn plan(question: &Question, answer: &Answer) -> Plan<Spaced> {
    let change = if question.is_neck_down() {
        Stitch::M1
    } else {
        Stitch::K2tog
    };
    Plan {
        knitting: Knitting::Round,
        rows: question.rounds,
        stitches: Some(question.from),
        events: answer.rounds.iter().map(|round| shaping_round(change, round)).collect(),
    }
}

fn shaping_round(change: Stitch, round: &Round) -> Event<Spaced> {
    let spaced = Spaced {
        change,
        changes: round.change,
    };
    Event {
        written: Some(round.row.clone()),
        ..Event::new(round.round, Change::between(round.before, round.after), spaced)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::follow::tests::work_through;
    use crate::yoke::answer;
    use proptest::prelude::*;

    proptest! {
        /// Neck down and body up, every round is worked on the needle and the last count is the one that was asked for.
        #[test]
        fn every_round_is_worked(from in 20_u32..300, to in 20_u32..300, rounds in 5_u32..90, shaping_rounds in 1_u32..8) {
            let question = Question { shaping_rounds, ..Question::about(from, to, rounds) };
            let Ok(answer) = answer(&question) else { return Ok(()) };
            let plan = plan(&question, &answer);
            prop_assert_eq!(work_through(&plan), Some(to));
            let is_right = |event: &Event<Spaced>| {
                let changes = event.written.as_ref().map(|row| row.changes().count() as u32);
                let stitch = event.written.as_ref().and_then(|row| row.changes().next()).map(|change| change.stitch);
                changes == Some(event.doing.changes) && stitch == Some(event.doing.change)
            };
            prop_assert!(plan.events.iter().all(is_right));
        }
    }
}
