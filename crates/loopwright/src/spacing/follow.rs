//! The spaced row as a plan of one row, written out.

use super::{Answer, Face, Knitting, Question, Way};
use crate::follow::{Change, Event, Plan};
use crate::row::Stitch;
use crate::shaping;
use crate::terms::Side;

/// Changes spread evenly over a row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Spaced {
    /// The change, as it is worked on this side of the fabric.
    pub change: Stitch,
    /// How many of them.
    pub changes: u32,
}

impl Spaced {
    /// Whether stitches are gained.
    pub const fn gains(self) -> bool {
        self.change.gives() > self.change.uses()
    }
}

/// The row of this answer, in one of its ways, as a plan of one row.
///
/// ```
/// use loopwright::spacing::{Ask, Question, answer, plan};
///
/// let question = Question { ask: Ask::Lose(12), ..Question::about(132) };
/// let answer = answer(&question).unwrap();
/// let plan = plan(&question, &answer, &answer.ways[answer.suggested]);
/// assert_eq!((plan.rows, plan.stitches_after(0), plan.stitches_after(1)), (1, Some(132), Some(120)));
/// let written = plan.events[0].written.as_ref().unwrap();
/// assert_eq!(written.to_string(), "K4, k2tog, (K9, k2tog) 11 times, K5");
/// ```
pub fn plan(question: &Question, answer: &Answer, way: &Way) -> Plan<Spaced> {
    let spaced = Spaced {
        change: answer.change,
        changes: answer.changes,
    };
    let next = match question.face {
        Face::Knit => Side::Right,
        Face::Purl => Side::Wrong,
    };
    Plan {
        knitting: match question.knitting {
            Knitting::Round { .. } => shaping::Knitting::Round,
            Knitting::Flat { .. } => shaping::Knitting::Flat { next },
        },
        rows: 1,
        stitches: Some(answer.before),
        events: vec![Event {
            written: Some(way.row.clone()),
            ..Event::new(1, Change::between(answer.before, answer.after), spaced)
        }],
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::follow::tests::work_through;
    use crate::spacing::{Ask, Edge, answer};
    use proptest::prelude::*;

    #[test]
    fn a_purl_row_is_worked_from_the_wrong_side() {
        let flat = Knitting::Flat { edge: Edge::Half };
        let question = Question {
            face: Face::Purl,
            knitting: flat,
            ..Question::about(20)
        };
        let answer = answer(&question).unwrap();
        assert_eq!(plan(&question, &answer, &answer.ways[0]).at(1).side, Side::Wrong);
    }

    proptest! {
        /// Every way to write it is worked on the needle and gives the count of the answer.
        #[test]
        fn every_way_comes_to_the_count(
            stitches in 2_u32..300,
            changes in 1_u32..100,
            gains in any::<bool>(),
            knitting in prop_oneof![
                any::<bool>().prop_map(|end_on_change| Knitting::Round { end_on_change }),
                Just(Knitting::Flat { edge: Edge::Half }),
                Just(Knitting::Flat { edge: Edge::Mirrored }),
            ],
        ) {
            let ask = if gains { Ask::Gain(changes) } else { Ask::Lose(changes) };
            let question = Question { ask, knitting, ..Question::about(stitches) };
            let Ok(answer) = answer(&question) else { return Ok(()) };
            for way in &answer.ways {
                let plan = plan(&question, &answer, way);
                prop_assert_eq!(plan.events[0].doing.gains(), gains);
                prop_assert_eq!(work_through(&plan), Some(answer.after));
            }
        }
    }
}
