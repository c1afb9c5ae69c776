//! Rows to a length, one by one: where each stands in its chart, and in garter in its ridge. Without either they are plain.

use super::{Answer, Question};
use crate::follow::{Change, Event, Plan};
use crate::shaping::Knitting;
use crate::terms::Side;

/// Where a row stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Doing {
    /// In the chart, where there is one.
    pub chart: Option<ChartRow>,
    /// In garter, of which two rows are a ridge.
    pub ridge: Option<RidgeRow>,
}

/// A row of a chart.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum ChartRow {
    /// Before the first repeat.
    SetUp {
        /// Its number.
        row: u32,
        /// How many such rows there are.
        of: u32,
    },
    /// In a repeat.
    Repeat {
        /// Its number within the repeat.
        row: u32,
        /// Rows of a repeat.
        of: u32,
        /// Which repeat it is, counted from one.
        repeat: u32,
        /// How many repeats are begun in all.
        repeats: u32,
    },
}

/// A row of garter.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct RidgeRow {
    /// Which ridge it is, counted from one.
    pub ridge: u32,
    /// How many ridges are begun in all.
    pub of: u32,
    /// Whether it is the second of its two rows, which ends the ridge.
    pub ends: bool,
    /// Whether it is purled: every second round. Back and forth all rows are knitted.
    pub purled: bool,
}

/// The rows one by one. No stitches are asked for, so none are known.
///
/// ```
/// use loopwright::rows::{Ask, ChartRow, Question, answer, plan};
/// use loopwright::units::Gauge;
///
/// let question = Question { repeat: 12, set_up: 2, ..Question::about(Ask::Rows(110), Gauge::of(28, Gauge::TEN_CM)) };
/// let plan = plan(&question, &answer(&question).unwrap());
/// let chart = |row| plan.at(row).event.unwrap().doing.chart.unwrap();
/// assert_eq!(chart(2), ChartRow::SetUp { row: 2, of: 2 });
/// assert_eq!(chart(110), ChartRow::Repeat { row: 12, of: 12, repeat: 9, repeats: 9 });
/// ```
pub fn plan(question: &Question, answer: &Answer) -> Plan<Doing> {
    let rows = answer.pick.rows;
    let knitting = match question.round {
        true => Knitting::Round,
        false => Knitting::Flat { next: Side::Right },
    };
    let doing = |row| Doing {
        chart: chart_row(question, answer, row),
        ridge: question.garter.then(|| ridge_row(question, rows, row)),
    };
    let event = |row| match doing(row) {
        Doing {
            chart: None,
            ridge: None,
        } => None,
        doing => Some(Event::new(row, Change::None, doing)),
    };
    Plan {
        events: (1..=rows).filter_map(event).collect(),
        ..Plan::plain(knitting, rows, None)
    }
}

fn chart_row(question: &Question, answer: &Answer, row: u32) -> Option<ChartRow> {
    let (set_up, of) = (question.set_up, question.repeat);
    if row <= set_up {
        return Some(ChartRow::SetUp { row, of: set_up });
    }
    // A repeat of one row is none.
    let past = row - set_up - 1;
    (of > 1).then(|| ChartRow::Repeat {
        row: past % of + 1,
        of,
        repeat: past / of + 1,
        repeats: answer.repeats + u32::from(answer.row > 0),
    })
}

const fn ridge_row(question: &Question, rows: u32, row: u32) -> RidgeRow {
    let ends = row.is_multiple_of(2);
    RidgeRow {
        ridge: row.div_ceil(2),
        of: rows.div_ceil(2),
        ends,
        purled: question.round && ends,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::follow::tests::work_through;
    use crate::rows::{Ask, answer};
    use crate::units::Gauge;
    use proptest::prelude::*;

    fn plan_of(question: &Question) -> Plan<Doing> {
        plan(question, &answer(question).unwrap())
    }

    fn about(ask: Ask) -> Question {
        Question::about(ask, Gauge::of(28, Gauge::TEN_CM))
    }

    #[test]
    fn without_chart_and_garter_all_rows_are_plain() {
        let plan = plan_of(&about(Ask::Rows(40)));
        assert_eq!((plan.rows, plan.events.len()), (40, 0));
    }

    #[test]
    fn garter_in_the_round_purls_every_second_round() {
        let question = Question {
            garter: true,
            round: true,
            ..about(Ask::Ridges(21))
        };
        let purled = |question: &Question| {
            let plan = plan_of(question);
            let rows = plan.events.iter().filter(|event| event.doing.ridge.unwrap().purled);
            rows.map(|event| event.row).take(3).collect::<Vec<_>>()
        };
        assert_eq!(purled(&question), [2, 4, 6]);
        assert_eq!(
            purled(&Question {
                round: false,
                ..question
            }),
            [0; 0]
        );
    }

    proptest! {
        /// Row after row the chart goes on by one, and the last row is where the answer says it ends.
        #[test]
        fn the_chart_ends_where_the_answer_ends(
            rows in 1_u32..300, repeat in 1_u32..20, set_up in 0_u32..6, garter in any::<bool>(),
        ) {
            let question = Question { repeat, set_up, garter, ..about(Ask::Rows(rows)) };
            let answer = answer(&question).unwrap();
            let plan = plan(&question, &answer);
            prop_assert_eq!(work_through(&plan), None);
            prop_assert_eq!(plan.rows, rows);
            match plan.event_in(rows).and_then(|event| event.doing.chart) {
                Some(ChartRow::SetUp { row, of }) => prop_assert!(row == rows && of == set_up),
                Some(ChartRow::Repeat { row, of, repeat, repeats }) => {
                    prop_assert_eq!((row % of, repeat), (answer.row, repeats));
                }
                None => prop_assert!(repeat == 1),
            }
            let ridges = plan.events.iter().filter(|event| event.doing.ridge.is_some_and(|ridge| ridge.ends));
            prop_assert_eq!(ridges.count() as u32, if garter { answer.ridges } else { 0 });
        }
    }
}
