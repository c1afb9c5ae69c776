//! The flare round by round. Increases in lines are told by their lines; scattered ones are written out.

use super::{Answer, Question};
use crate::follow::{Change, Event, Plan};
use crate::row::{Row, Stitch};
use crate::shaping::Shaped;
use crate::spacing::{self, Ask, Spaced};

/// What is done in an increase round.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Doing {
    /// One is made at each of so many lines.
    InLines {
        /// How many lines.
        lines: u32,
    },
    /// So many are made, evenly over the round.
    Scattered(Spaced),
}

/// A flare with more increases than this in all has no rounds written out: to space them would keep the page waiting.
pub const MOST_WRITTEN: u32 = 5_000;

/// The flare round by round, from neck to hem.
///
/// ```
/// use loopwright::flare::{Hem, Question, answer, plan};
/// use loopwright::units::{Gauge, Length, LengthUnit};
///
/// let gauge = |count| Gauge::of(count, Gauge::TEN_CM);
/// let hem = Hem::Girth(Length::of(3, LengthUnit::M));
/// let question = Question { lines: false, ..Question::about(96, hem, Length::from_mm(300), gauge(21), gauge(28)) };
/// let answer = answer(&question).unwrap();
/// let plan = plan(&question, &answer);
/// assert_eq!(plan.stitches_after(plan.rows), Some(answer.hem));
/// assert_eq!(plan.events[0].written.as_ref().unwrap().to_string(), "K6, M1, (K12, M1) 7 times, K6");
/// ```
pub fn plan(question: &Question, answer: &Answer) -> Plan<Doing> {
    let writes = !question.lines && answer.gain <= MOST_WRITTEN;
    let event = |shaped: Shaped| Event {
        written: writes.then(|| written(shaped)).flatten(),
        ..Event::new(shaped.row, Change::Gain(shaped.change), doing(question, shaped))
    };
    Plan {
        knitting: answer.schedule.knitting,
        rows: answer.rounds,
        stitches: Some(question.neck),
        events: answer.schedule.rows().map(event).collect(),
    }
}

const fn doing(question: &Question, shaped: Shaped) -> Doing {
    match question.lines {
        true => Doing::InLines { lines: shaped.change },
        false => Doing::Scattered(Spaced {
            change: Stitch::M1,
            changes: shaped.change,
        }),
    }
}

/// An increase round, evenly spaced over the stitches before it.
fn written(shaped: Shaped) -> Option<Row> {
    let before = shaped.stitches?.checked_sub(shaped.change)?;
    let question = spacing::Question {
        ask: Ask::Gain(shaped.change),
        ..spacing::Question::about(before)
    };
    spacing::suggested_row(&question).ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::flare::{Hem, answer};
    use crate::follow::tests::work_through;
    use crate::units::{Gauge, Length};
    use proptest::prelude::*;

    proptest! {
        /// Every round that is written is worked on the needle, all of a scattered flare are, and the hem is the answer's.
        #[test]
        fn every_round_is_worked(
            neck in 1_u32..200, hem in 1_u32..900, depth in 5_i64..600, each in 1_u32..30, lines in any::<bool>(),
        ) {
            let gauge = |count| Gauge::of(count, Gauge::TEN_CM);
            let question = Question {
                each, lines,
                ..Question::about(neck, Hem::Stitches(hem), Length::from_mm(depth), gauge(21), gauge(28))
            };
            let Ok(answer) = answer(&question) else { return Ok(()) };
            let plan = plan(&question, &answer);
            prop_assert_eq!(work_through(&plan), Some(answer.hem));
            prop_assert!(plan.events.iter().all(|event| event.written.is_some() != lines));
        }
    }
}
