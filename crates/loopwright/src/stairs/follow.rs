//! The steps row by row.
//!
//! How many stitches the piece has beside those that go is not asked, so no count on the needle is known; what a row binds
//! off is.

use super::{Answer, Edge, Question, Stair, Way};
use crate::follow::{Change, Event, Plan};
use crate::shaping::Knitting;

/// What is done in a row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Doing {
    /// So many are bound off at the beginning of the row, and the rest is worked.
    BindOff {
        /// How many.
        stitches: u32,
        /// How many are gone at this edge then.
        gone: u32,
    },
    /// So many are left unworked at the end of the row, and the work is turned.
    Turn {
        /// How many, those left before among them.
        left: u32,
    },
    /// The row behind a turn, worked to its end.
    Back,
    /// The row that ends the short rows of an edge, worked over all that was left.
    OverAll {
        /// How many those are; none where there was no turn.
        left: u32,
    },
}

/// The steps row by row. In short rows at one edge the way back from a turn is told as well: no plain row is like it.
///
/// ```
/// use loopwright::follow::Change;
/// use loopwright::stairs::{Ask, Doing, Question, answer, plan};
///
/// let question = Question::about(20, Ask::Steps(3));
/// let plan = plan(&question, &answer(&question).unwrap());
/// let third = plan.at(3).event.unwrap();
/// assert_eq!((third.change, third.doing), (Change::Lose(7), Doing::BindOff { stitches: 7, gone: 14 }));
/// ```
pub fn plan(question: &Question, answer: &Answer) -> Plan<Doing> {
    Plan {
        knitting: Knitting::Flat { next: question.next },
        rows: answer.used + answer.left,
        stitches: None,
        events: answer.stairs.iter().flat_map(|stair| events(question, stair)).collect(),
    }
}

fn events(question: &Question, stair: &Stair) -> Vec<Event<Doing>> {
    let Stair {
        row, stitches, gone, ..
    } = *stair;
    let is_alone = question.edge != Edge::Both;
    match (question.way, stair.last) {
        (Way::BindOff, _) => {
            let doing = Doing::BindOff { stitches, gone };
            vec![Event::new(row, Change::Lose(stitches), doing)]
        }
        (Way::ShortRows, false) => {
            let turn = Event::new(row, Change::None, Doing::Turn { left: gone });
            let back = Event::new(row + 1, Change::None, Doing::Back);
            [turn].into_iter().chain(is_alone.then_some(back)).collect()
        }
        (Way::ShortRows, true) => {
            let left = gone - stitches;
            vec![Event::new(row, Change::None, Doing::OverAll { left })]
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::follow::tests::work_through;
    use crate::stairs::{Ask, Place, Side, answer};
    use proptest::prelude::*;

    #[test]
    fn the_way_back_from_a_turn_is_told() {
        let question = Question {
            way: Way::ShortRows,
            ..Question::about(9, Ask::Steps(3))
        };
        let plan = plan(&question, &answer(&question).unwrap());
        let told: Vec<_> = plan.events.iter().map(|event| (event.row, event.doing)).collect();
        let expected = [
            (2, Doing::Turn { left: 3 }),
            (3, Doing::Back),
            (4, Doing::Turn { left: 6 }),
            (5, Doing::Back),
            (6, Doing::OverAll { left: 6 }),
        ];
        assert_eq!(told, expected);
    }

    proptest! {
        /// Bound off, all stitches go and in the order of the rows; in short rows none does, and every turn is gone back from.
        #[test]
        fn all_that_goes_is_told(
            stitches in 1_u32..80,
            amount in 1_u32..30,
            by_rows in any::<bool>(),
            edge in prop_oneof![Just(Edge::Left), Just(Edge::Right), Just(Edge::Both)],
            is_neck in any::<bool>(),
            is_short in any::<bool>(),
            from_wrong in any::<bool>(),
        ) {
            let question = Question {
                edge,
                place: if is_neck { Place::Neck } else { Place::Shoulder },
                way: if is_short { Way::ShortRows } else { Way::BindOff },
                next: if from_wrong { Side::Wrong } else { Side::Right },
                ..Question::about(stitches, if by_rows { Ask::Rows(amount) } else { Ask::Steps(amount) })
            };
            let Ok(answer) = answer(&question) else { return Ok(()) };
            let plan = plan(&question, &answer);
            prop_assert_eq!(work_through(&plan), None);
            let lost = |event: &Event<Doing>| match event.change { Change::Lose(lost) => lost, _ => 0 };
            let edges = if edge == Edge::Both { 2 } else { 1 };
            let gone = if is_short { 0 } else { stitches * edges };
            prop_assert_eq!(plan.events.iter().map(lost).sum::<u32>(), gone);
            for (event, stair) in answer.stairs.iter().map(|stair| (plan.event_in(stair.row), stair)) {
                prop_assert!(event.is_some());
                prop_assert_eq!(plan.knitting.side(stair.row), stair.side);
            }
            let turns = plan.events.iter().filter(|event| matches!(event.doing, Doing::Turn { .. }));
            for turn in turns {
                prop_assert!(plan.event_in(turn.row + 1).is_some());
            }
        }
    }
}
