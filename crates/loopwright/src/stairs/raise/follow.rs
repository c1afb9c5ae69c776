//! The short rows of a raised back neck one by one, and the way home to where the round begins.
//!
//! How many stitches the round has beside the back is not asked; what each short row works is known, and is the measure of
//! how far she is.

use super::{Answer, Method, Question, ShortRow, Side};
use crate::follow::{Change, Event, Plan};
use crate::shaping::Knitting;

/// What is done in a row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Doing {
    /// So many stitches are worked, and the work is turned.
    Short {
        /// How it is turned.
        method: Method,
        /// The side that faces the knitter.
        side: Side,
        /// Whether the row begins by making the double stitch of the turn before.
        double: bool,
        /// Stitches that are worked before the turn, the double stitch not counted.
        stitches: u32,
    },
    /// So many stitches are worked on to where the round begins.
    Home {
        /// Whether it begins by making the double stitch of the turn before.
        double: bool,
        /// Stitches that are worked, the double stitch not counted.
        stitches: u32,
    },
}

/// The short rows one by one; behind them the stitches to where the round begins, where there is something to work.
///
/// ```
/// use loopwright::stairs::raise::{Across, Question, answer, plan};
/// use loopwright::units::{Gauge, Length, LengthUnit};
///
/// let question = Question::about(Across::Stitches(40), Length::of(25, LengthUnit::Mm), Gauge::of(32, Gauge::TEN_CM));
/// let plan = plan(&question, &answer(&question).unwrap());
/// // Four turns at each side, and home.
/// assert_eq!(plan.rows, 9);
/// // 5 stitches and the one that is turned on, back over 5 and 5 and that one.
/// assert_eq!((plan.worked(1), plan.worked(2)), (Some(6), Some(6 + 11)));
/// ```
pub fn plan(question: &Question, answer: &Answer) -> Plan<Doing> {
    let mut events: Vec<Event<Doing>> = answer.rows.iter().map(|short| short_row(question, short)).collect();
    let last = answer.rows.last().map_or(0, |short| short.row);
    let double = question.method == Method::German;
    let stitches = answer.home;
    if double || stitches > 0 {
        events.push(part(last + 1, stitches, Doing::Home { double, stitches }));
    }
    Plan {
        knitting: Knitting::Flat { next: Side::Right },
        rows: events.last().map_or(0, |event| event.row),
        stitches: None,
        events,
    }
}

fn short_row(question: &Question, short: &ShortRow) -> Event<Doing> {
    // No short row has more than there can be on a needle.
    let stitches = u32::try_from(short.worked.uses()).unwrap_or(u32::MAX);
    let doing = Doing::Short {
        method: question.method,
        side: short.side,
        double: short.double,
        stitches,
    };
    part(short.row, stitches, doing)
}

/// A row that works so many stitches only.
fn part(row: u32, stitches: u32, doing: Doing) -> Event<Doing> {
    Event {
        worked: Some(stitches),
        ..Event::new(row, Change::None, doing)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::follow::tests::work_through;
    use crate::stairs::raise::{Across, Begins, answer};
    use crate::units::{Gauge, Length};
    use proptest::prelude::*;

    proptest! {
        /// There and back and home: she ends where the round begins, and has worked what the rows say.
        #[test]
        fn the_yarn_comes_back_to_the_beginning(
            across in 2_u32..200,
            turns in 1_u32..20,
            is_wrapped in any::<bool>(),
            at_the_edge in any::<bool>(),
        ) {
            let question = Question {
                turns: Some(turns),
                method: if is_wrapped { Method::Wrap } else { Method::German },
                begins: if at_the_edge { Begins::Edge } else { Begins::Middle },
                ..Question::about(Across::Stitches(across), Length::from_mm(25), Gauge::of(32, Gauge::TEN_CM))
            };
            let Ok(answer) = answer(&question) else { return Ok(()) };
            let plan = plan(&question, &answer);
            prop_assert_eq!(work_through(&plan), None);
            let all = plan.events.iter().map(|event| u64::from(event.worked.unwrap())).sum();
            prop_assert_eq!(plan.worked(plan.rows), Some(all));
            let mut at = 0_i64;
            for event in &plan.events {
                let (double, stitches) = match event.doing {
                    Doing::Short { double, stitches, side, .. } => {
                        prop_assert_eq!(side, plan.knitting.side(event.row));
                        (double, stitches)
                    }
                    Doing::Home { double, stitches } => (double, stitches),
                };
                let step = i64::from(u32::from(double) + stitches);
                at += if plan.knitting.side(event.row) == Side::Right { step } else { -step };
            }
            // A German row is turned on the stitch behind the last, which is made a double one and lies beyond.
            prop_assert!(at == 0 || (!is_wrapped && at.abs() <= 1), "{at}");
        }
    }
}
