//! Shaping row by row: what is worked in each shaping row, written out where the stitches are known.

use super::{Answer, Pair, Question, Schedule, Shaped, Side};
use crate::follow::Plan;
use crate::row::{Item, Row, Run, Stitch};

/// What is worked in a shaping row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Doing {
    /// A change at each edge, in the order in which this row works them.
    Pair {
        /// The two changes.
        pair: Pair,
        /// The side that faces the knitter.
        side: Side,
    },
    /// So many changes.
    Changes {
        /// Whether stitches are gained; lost otherwise.
        gain: bool,
        /// How many.
        stitches: u32,
        /// Where they stand.
        placed: Placed,
    },
}

/// Where the changes of a row stand that is no pair at the edges.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Placed {
    /// At the same edge every time.
    AtTheSameEdge,
    /// In this row at one edge only; in the others at both.
    AtOneEdgeOnly,
    /// One at each edge, and there is no room for all the plain stitches outside of them.
    WithoutRoom,
    /// As the pattern has it.
    AsThePatternSays,
}

impl Doing {
    /// The same for a left-handed knitter: [`Stitch::left_handed`] says what changes.
    pub const fn left_handed(self) -> Self {
        match self {
            Self::Pair { pair, side } => {
                let (first, last) = (pair.first.left_handed(), pair.last.left_handed());
                Self::Pair {
                    pair: Pair { first, last, ..pair },
                    side,
                }
            }
            Self::Changes { .. } => self,
        }
    }
}

impl Pair {
    /// A row of this side over so many stitches that begins and ends with the pair; none where it has no room for it.
    ///
    /// ```
    /// use loopwright::row::Stitch;
    /// use loopwright::shaping::{Pair, Side};
    ///
    /// let pair = Pair { before: 1, first: Stitch::Ssk, last: Stitch::K2tog, after: 1 };
    /// assert_eq!(pair.written(Side::Right, 84).unwrap().to_string(), "K1, ssk, K78, k2tog, K1");
    /// assert_eq!(pair.written(Side::Wrong, 84).unwrap().to_string(), "P1, p2tog, P78, ssp, P1");
    /// ```
    pub fn written(self, side: Side, stitches: u32) -> Option<Row> {
        if stitches < self.takes() {
            return None;
        }
        let worked = self.on(side);
        let plain = match side {
            Side::Right => Stitch::Knit,
            Side::Wrong => Stitch::Purl,
        };
        let between = stitches - worked.before - worked.first.uses() - worked.at_end();
        let runs = [
            Run::new(plain, worked.before),
            Run::new(worked.first, 1),
            Run::new(plain, between),
            Run::new(worked.last, 1),
            Run::new(plain, worked.after),
        ];
        let runs = runs.into_iter().filter(|run| run.count > 0);
        Some(Row {
            items: runs.map(Item::Run).collect(),
        })
    }
}

/// The answer row by row: a pair in each shaping row that has room for it, written out where the stitches are known.
///
/// ```
/// use loopwright::shaping::{Ask, Question, answer, plan};
///
/// let question = Question { stitches: Some(84), ..Question::about(Ask::Lose(18), 66) };
/// let plan = plan(&question, &answer(&question).unwrap());
/// let first = plan.at(1).event.unwrap();
/// assert_eq!(first.written.as_ref().unwrap().to_string(), "K1, ssk, K78, k2tog, K1");
/// assert_eq!(plan.stitches_after(66), Some(66));
/// ```
pub fn plan(question: &Question, answer: &Answer) -> Plan<Doing> {
    let rest = |change: u32| match (question.each, change) {
        (1, _) => Placed::AtTheSameEdge,
        _ if answer.change == 1 => Placed::AtTheSameEdge,
        (2, 1) => Placed::AtOneEdgeOnly,
        (2, _) => Placed::WithoutRoom,
        _ => Placed::AsThePatternSays,
    };
    of_schedule(&answer.schedule, question.rows, answer.pair, rest)
}

/// A schedule row by row, with this pair where there is one, and otherwise with changes that stand where `placed` says for
/// so many of them.
pub(crate) fn of_schedule(
    schedule: &Schedule,
    rows: u32,
    pair: Option<Pair>,
    placed: impl Fn(u32) -> Placed,
) -> Plan<Doing> {
    let plain = Plan::of_schedule(schedule, rows);
    let mut plan = plain.told(|event| doing(schedule, &event.doing, pair, &placed));
    for (event, shaped) in plan.events.iter_mut().zip(schedule.rows()) {
        event.written = match event.doing {
            Doing::Pair { .. } => before(schedule, &shaped).and_then(|stitches| pair?.written(shaped.side, stitches)),
            Doing::Changes { .. } => None,
        };
    }
    plan
}

fn doing(schedule: &Schedule, shaped: &Shaped, pair: Option<Pair>, placed: impl Fn(u32) -> Placed) -> Doing {
    let has_room = |pair: &Pair| before(schedule, shaped).is_none_or(|stitches| stitches >= pair.takes());
    match pair.filter(|pair| shaped.change == 2 && has_room(pair)) {
        Some(pair) => Doing::Pair {
            pair: pair.on(shaped.side),
            side: shaped.side,
        },
        None => Doing::Changes {
            gain: schedule.gain,
            stitches: shaped.change,
            placed: placed(shaped.change),
        },
    }
}

/// Stitches before a shaping row, where known.
fn before(schedule: &Schedule, shaped: &Shaped) -> Option<u32> {
    let after = shaped.stitches?;
    Some(match schedule.gain {
        true => after.saturating_sub(shaped.change),
        false => after.saturating_add(shaped.change),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::follow::tests::work_through;
    use crate::shaping::{Ask, Increase, KnittingKind, Slope, answer};
    use crate::terms::Hand;
    use proptest::prelude::*;

    /// From the wrong side the row begins at the other edge: the pair changes places and is purled.
    #[test]
    fn wrong_side_rows_are_written_from_the_purl_side() {
        let question = Question {
            stitches: Some(60),
            right_side: false,
            ..Question::about(Ask::Lose(20), 11)
        };
        let plan = plan(&question, &answer(&question).unwrap());
        let text = |row: u32| plan.at(row).event.unwrap().written.as_ref().unwrap().to_string();
        assert_eq!(text(1), "K1, ssk, K54, k2tog, K1");
        assert_eq!(text(2), "P1, p2tog, P52, ssp, P1");
    }

    #[test]
    fn the_last_of_an_odd_number_stands_at_one_edge() {
        let question = Question {
            stitches: Some(40),
            rest: true,
            ..Question::about(Ask::Lose(7), 30)
        };
        let plan = plan(&question, &answer(&question).unwrap());
        let last = plan.events.last().unwrap();
        let placed = Placed::AtOneEdgeOnly;
        let (gain, stitches) = (false, 1);
        assert_eq!(last.doing, Doing::Changes { gain, stitches, placed });
        assert_eq!(work_through(&plan), Some(33));
    }

    #[test]
    fn where_there_is_no_room_for_the_pair_no_row_is_written() {
        let question = Question {
            stitches: Some(80),
            edge: 3,
            rest: true,
            ..Question::about(Ask::Lose(75), 80)
        };
        let answer = answer(&question).unwrap();
        let cramped = answer.cramped.unwrap();
        for event in plan(&question, &answer).events {
            assert_eq!(event.written.is_some(), event.row < cramped, "row {}", event.row);
        }
    }

    #[test]
    fn a_left_handed_knitter_has_the_other_names_of_a_gain() {
        let question = Question {
            stitches: Some(10),
            ..Question::about(Ask::Gain(2), 6)
        };
        let plan = plan(&question, &answer(&question).unwrap()).for_hand(Hand::Left, Doing::left_handed);
        let event = &plan.events[0];
        assert_eq!(event.written.as_ref().unwrap().to_string(), "K1, M1L, K8, M1R, K1");
        let Doing::Pair { pair, .. } = event.doing else {
            panic!()
        };
        assert_eq!((pair.first, pair.last), (Stitch::M1L, Stitch::M1R));
    }

    proptest! {
        /// Each row that is written is worked on the needle and gives the next count, and the last one is the answer's.
        #[test]
        fn every_row_is_worked_to_the_end(
            amount in 1_u32..40,
            gains in any::<bool>(),
            rows in 2_u32..120,
            stitches in proptest::option::of(1_u32..120),
            each in 1_u32..5,
            edge in 0_u32..5,
            knitting in prop_oneof![
                Just(KnittingKind::Round), Just(KnittingKind::FlatFromRight), Just(KnittingKind::FlatFromWrong)
            ],
            right_side in any::<bool>(),
            across in any::<bool>(),
            increase in prop_oneof![Just(Increase::M1), Just(Increase::Yo), Just(Increase::Kfb)],
        ) {
            let question = Question {
                stitches, each, edge, right_side, increase,
                rest: true,
                knitting: knitting.knitting(),
                slope: if across { Slope::Across } else { Slope::Along },
                ..Question::about(if gains { Ask::Gain(amount) } else { Ask::Lose(amount) }, rows)
            };
            let Ok(answer) = answer(&question) else { return Ok(()) };
            let plan = plan(&question, &answer);
            prop_assert_eq!(work_through(&plan), answer.after);
            for event in &plan.events {
                let Some(row) = &event.written else { continue };
                let is_purled = row.runs().all(|run| run.stitch == run.stitch.on_purl_side());
                let is_wrong = plan.knitting.side(event.row) == Side::Wrong;
                prop_assert!(is_wrong == is_purled);
            }
        }
    }
}
