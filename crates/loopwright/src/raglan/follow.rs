//! The raglan round by round. Where its four lines stand is for her markers to say, so no round is written out.

use super::{Answer, Question, RaglanRound};
use crate::follow::{Change, Event, Plan};
use crate::shaping::Knitting;

/// The raglan round by round, with body and sleeves on one needle.
///
/// ```
/// use loopwright::raglan::{Question, answer, plan};
///
/// let question = Question { underarm: 8, ..Question::about([56, 16], [200, 68], 64) };
/// let answer = answer(&question).unwrap();
/// let plan = plan(&question, &answer);
/// assert_eq!(plan.stitches_after(64), Some(answer.needle));
/// let first = plan.at(1).event.unwrap().doing;
/// assert_eq!((first.front_and_back, first.sleeve), (60, 18));
/// ```
pub fn plan(question: &Question, answer: &Answer) -> Plan<RaglanRound> {
    let event = |round: RaglanRound| Event::new(round.round, Change::Gain(round.adds.stitches()), round);
    Plan {
        knitting: Knitting::Round,
        rows: question.rounds,
        stitches: Some(question.body + 2 * question.sleeve),
        events: answer.rounds().into_iter().map(event).collect(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::follow::tests::work_through;
    use crate::raglan::answer;
    use proptest::prelude::*;

    proptest! {
        /// After each round the needle holds front, back and both sleeves, and in the end the answer's.
        #[test]
        fn the_needle_holds_what_the_rounds_say(
            body in 8_u32..120, sleeve in 2_u32..60, many in 0_u32..40, more in 0_u32..40, rounds in 1_u32..100,
        ) {
            let question = Question::about([body, sleeve], [body + 4 * many, sleeve + 2 * more], rounds);
            let Ok(answer) = answer(&question) else { return Ok(()) };
            let plan = plan(&question, &answer);
            prop_assert_eq!(work_through(&plan), Some(answer.needle));
            for event in &plan.events {
                prop_assert_eq!(plan.stitches_after(event.row), Some(event.doing.needle()));
            }
        }
    }
}
