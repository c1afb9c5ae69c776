//! Plans in blocks and row by row; and what knits any plan on the simulated needle, for the tests of every tool that has one.

use super::*;
use crate::row;
use crate::shaping::{self, Ask, Question};
use proptest::prelude::*;

/// Knits a plan: its events lie within the rows and ascend, each row that is written out is worked on the simulated needle
/// over all its stitches and gives the next count, with no increase lost at an edge. Gives the count in the end.
pub fn work_through<Doing: std::fmt::Debug>(plan: &Plan<Doing>) -> Option<u32> {
    let rows: Vec<u32> = plan.events.iter().map(|event| event.row).collect();
    assert!(rows.is_sorted_by(|one, next| one < next), "{rows:?}");
    assert!(
        rows.iter().all(|row| (1..=plan.rows).contains(row)),
        "{rows:?} of {}",
        plan.rows
    );
    for event in &plan.events {
        let at = plan.at(event.row);
        let (Some(row), Some(before)) = (&event.written, at.before) else {
            assert!(event.written.is_none(), "written over no count: {event:?}");
            continue;
        };
        let worked = row::work(row, before).unwrap_or_else(|stuck| panic!("{row}: {stuck}"));
        assert_eq!(
            (Some(worked.on_needle), worked.left_over),
            (at.after.map(u64::from), 0),
            "{row}"
        );
        // In the round the gap at the marker lies between two stitches, and a round may begin or end in it.
        let is_lost = worked.ended_in_gap || worked.crowded_gap;
        assert!(!is_lost || plan.knitting == Knitting::Round, "{row}");
    }
    plan.stitches_after(plan.rows)
}

fn sleeve(rows: u32) -> Plan<Shaped> {
    let question = Question {
        stitches: Some(84),
        ..Question::about(Ask::Lose(18), rows)
    };
    Plan::of_schedule(&shaping::answer(&question).unwrap().schedule, rows)
}

#[test]
fn plain_rows_know_what_is_next_and_the_last_rows_know_that_nothing_is() {
    let plan = sleeve(66);
    let first = plan.at(1);
    assert_eq!((first.before, first.after), (Some(84), Some(82)));
    assert!(first.event.is_some());
    let plain = plan.at(2);
    assert_eq!((plain.before, plain.after, plain.event), (Some(82), Some(82), None));
    assert_eq!(plain.next.map(|next| (next.rows_between, next.event.row)), Some((6, 9)));
    let last = plan.at(66);
    assert_eq!((last.after, last.event, last.next), (Some(66), None, None));
    assert!(plan.is_done(66) && !plan.is_done(65));
}

#[test]
fn no_stitches_are_known_where_none_were_said() {
    let plan = Plan::of_schedule(
        &shaping::answer(&Question::about(Ask::Lose(18), 66)).unwrap().schedule,
        66,
    );
    assert_eq!((plan.stitches_after(20), plan.worked(20)), (None, None));
    assert_eq!(plan.at(9).before, None);
}

#[test]
fn what_was_worked_is_the_sum_of_all_rows() {
    // 84 - 2 in row 1, then 7 plain rows of 82, then 80.
    assert_eq!(sleeve(66).worked(9), Some(8 * 82 + 80));
    assert_eq!(sleeve(66).worked(0), Some(0));
}

/// In short rows fewer stitches are worked than are on the needle, and then the needle need not be known.
#[test]
fn a_short_row_counts_what_is_worked_in_it() {
    let short = |row, worked| Event {
        worked: Some(worked),
        ..Event::new(row, Change::None, ())
    };
    let mut plan = Plan {
        knitting: Knitting::Round,
        rows: 4,
        stitches: Some(100),
        events: vec![short(1, 6), short(2, 12)],
    };
    assert_eq!(plan.worked(4), Some(6 + 12 + 100 + 100));
    plan.stitches = None;
    assert_eq!((plan.worked(2), plan.worked(3)), (Some(18), None));
}

proptest! {
    /// The sum in blocks is the sum row by row, and nothing is worked behind the end.
    #[test]
    fn stitches_add_up_row_by_row(rows in 40_u32..300, done in 0_u32..400) {
        let plan = sleeve(rows);
        let each = (1..=done.min(rows)).map(|row| u64::from(plan.at(row).after.unwrap()));
        prop_assert_eq!(plan.worked(done), Some(each.sum()));
    }

    /// From each row the counts go on to the next.
    #[test]
    fn a_row_ends_as_the_next_begins(rows in 40_u32..300) {
        let plan = sleeve(rows);
        for row in 1..rows {
            prop_assert_eq!(plan.at(row).after, plan.at(row + 1).before);
        }
    }
}
