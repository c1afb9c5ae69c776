//! The cast-on as a plan of one row, with its markers; and where one more is cast on for the join, the join behind it.

use super::{Answer, Distance, Knitting, MarkerPlan, Question};
use crate::follow::{Change, Event, Plan};
use crate::shaping;
use crate::terms::Side;

/// What is done in a row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Doing {
    /// All stitches are cast on, with markers between the groups.
    CastOn(MarkerPlan),
    /// The round is joined by working the last stitch and the first together, and worked.
    Join,
}

/// The cast-on with a marker at each such distance.
///
/// ```
/// use loopwright::cast_on::{Distance, Question, answer, plan};
/// use loopwright::units::{Gauge, Length, LengthUnit};
///
/// let question = Question::about(Length::of(1, LengthUnit::M), Gauge::of(21, Gauge::TEN_CM));
/// let plan = plan(&question, &answer(&question).unwrap(), Distance::Twenty);
/// assert_eq!((plan.rows, plan.stitches_after(0), plan.stitches_after(1)), (1, Some(0), Some(210)));
/// ```
pub fn plan(question: &Question, answer: &Answer, distance: Distance) -> Plan<Doing> {
    let markers = answer.markers_at(distance);
    let cast_on = Event::new(1, Change::Gain(markers.stitches), Doing::CastOn(markers));
    let join = || Event::new(2, Change::Lose(1), Doing::Join);
    let (knitting, joins) = match question.knitting {
        Knitting::Round { extra } => (shaping::Knitting::Round, extra),
        Knitting::Flat { .. } => (shaping::Knitting::Flat { next: Side::Right }, false),
    };
    let events: Vec<Event<Doing>> = [cast_on].into_iter().chain(joins.then(join)).collect();
    Plan {
        knitting,
        rows: events.last().map_or(0, |event| event.row),
        stitches: Some(0),
        events,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cast_on::{Multiple, answer};
    use crate::follow::tests::work_through;
    use crate::units::{Gauge, Length};
    use proptest::prelude::*;

    proptest! {
        /// In the end there are as many as the first row or round is worked on.
        #[test]
        fn it_ends_with_what_is_worked(mm in 5_i64..3_000, of in 1_u32..20, extra in any::<bool>(), flat in any::<bool>()) {
            let question = Question {
                multiple: Multiple { of, plus: 0 },
                knitting: if flat { Knitting::SEWN } else { Knitting::Round { extra } },
                ..Question::about(Length::from_mm(mm), Gauge::of(21, Gauge::TEN_CM))
            };
            let answer = answer(&question).unwrap();
            let plan = plan(&question, &answer, Distance::Twenty);
            prop_assert_eq!(work_through(&plan), Some(answer.pick.worked));
            prop_assert_eq!(plan.stitches_after(1), Some(answer.pick.cast_on));
        }
    }
}
