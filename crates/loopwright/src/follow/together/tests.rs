//! Plans put together by hand, and any plans against a sum that is made row by row.

use super::*;
use crate::shaping::Knitting;
use crate::terms::Side;
use proptest::prelude::*;

const FLAT: Knitting = Knitting::Flat { next: Side::Right };

/// A plan that changes the stitches by so many in these rows.
fn plan(rows: u32, stitches: Option<u32>, changes: &[(u32, i32)]) -> Plan<()> {
    let event = |(row, change): &(u32, i32)| {
        let change = match change {
            0 => Change::None,
            more if *more > 0 => Change::Gain(more.unsigned_abs()),
            fewer => Change::Lose(fewer.unsigned_abs()),
        };
        Event::new(*row, change, ())
    };
    Plan {
        events: changes.iter().map(event).collect(),
        ..Plan::plain(FLAT, rows, stitches)
    }
}

fn track(from: u32, plan: Plan<()>) -> Track<()> {
    Track { from, plan }
}

fn meeting(first: &Plan<()>, tracks: &[Track<()>]) -> Option<(u32, u32, u32)> {
    let meeting = together(first, tracks).meeting?;
    Some((meeting.row, meeting.before, meeting.takes))
}

#[test]
fn a_row_in_which_both_shape_is_one_row() {
    let armhole = plan(20, Some(40), &[(1, -6), (5, -2), (9, -2)]);
    let neck = track(9, plan(16, None, &[(1, -4), (3, -1)]));
    let both = together(&armhole, &[neck]);
    assert_eq!(both.plan.rows, 24);
    let rows: Vec<u32> = both.plan.events.iter().map(|event| event.row).collect();
    assert_eq!(rows, [1, 5, 9, 11]);
    let ninth = both.plan.event_in(9).unwrap();
    assert_eq!(ninth.change, Change::Lose(6));
    let of: Vec<Of> = ninth.doing.iter().map(|part| part.of).collect();
    assert_eq!(of, [Of::First, Of::Track(0)]);
    assert_eq!(both.plan.stitches_after(24), Some(25));
    assert_eq!((both.meeting, both.turned), (None, Vec::new()));
}

#[test]
fn tracks_meet_where_a_row_takes_more_than_there_is() {
    let armhole = plan(20, Some(10), &[(1, -3), (11, -3)]);
    assert_eq!(meeting(&armhole, &[]), None);
    let neck = |changes: &[(u32, i32)]| track(9, plan(6, None, changes));
    assert_eq!(meeting(&armhole, &[neck(&[(1, -2), (3, -3)])]), Some((11, 5, 6)));
    // The same stitches, where one of them is added in that very row: it is not there yet for the decreases.
    let added = track(9, plan(6, None, &[(3, 1)]));
    assert_eq!(meeting(&armhole, &[neck(&[(1, -2), (3, -3)]), added]), Some((11, 5, 6)));
}

#[test]
fn all_may_be_bound_off_in_the_last_row_and_in_no_other() {
    let shoulder = plan(20, Some(10), &[(20, -10)]);
    assert_eq!(meeting(&shoulder, &[]), None);
    assert_eq!(meeting(&shoulder, &[track(15, plan(7, None, &[]))]), Some((20, 10, 10)));
}

#[test]
fn a_short_row_stays_short_where_nobody_else_works_in_it() {
    let mut shoulder = plan(4, Some(20), &[(2, 0)]);
    shoulder.events[0].worked = Some(7);
    assert_eq!(together(&shoulder, &[]).plan.worked(4), Some(3 * 20 + 7));
    let neck = track(2, plan(1, None, &[(1, -1)]));
    assert_eq!(together(&shoulder, &[neck]).plan.worked(4), Some(20 + 3 * 19));
}

#[test]
fn without_stitches_nothing_is_said_of_meeting() {
    let armhole = plan(20, None, &[(1, -30)]);
    let both = together(&armhole, &[track(3, plan(4, Some(9), &[(1, -30)]))]);
    assert_eq!((both.meeting, both.plan.stitches_after(20)), (None, None));
}

#[test]
fn a_track_that_begins_on_the_other_side_is_named() {
    let armhole = plan(20, Some(40), &[]);
    let turned = |from| together(&armhole, &[track(from, plan(4, None, &[]))]).turned;
    assert_eq!(turned(3), Vec::<usize>::new());
    assert_eq!(turned(4), [0]);
}

#[test]
fn no_number_is_too_large() {
    let armhole = plan(u32::MAX, Some(u32::MAX), &[(1, i32::MAX), (u32::MAX, i32::MIN)]);
    let neck = track(u32::MAX, plan(u32::MAX, None, &[(u32::MAX, i32::MIN)]));
    assert_eq!(together(&armhole, &[neck]).plan.rows, u32::MAX);
    let early = track(0, plan(2, None, &[(0, 1)]));
    assert_eq!(together(&armhole, &[early]).plan.rows, u32::MAX);
}

prop_compose! {
    fn any_plan(stitches: std::ops::Range<u32>)(
        rows in 1_u32..40,
        stitches in stitches,
        changes in proptest::collection::btree_map(1_u32..40, -5_i32..3, 0..8),
    ) -> Plan<()> {
        let changes: Vec<(u32, i32)> = changes.into_iter().filter(|(row, _)| *row <= rows).collect();
        plan(rows, Some(stitches), &changes)
    }
}

prop_compose! {
    fn any_track()(from in 1_u32..40, plan in any_plan(0..90)) -> Track<()> {
        track(from, plan)
    }
}

fn added(change: Change) -> i64 {
    match change {
        Change::Gain(more) => more.into(),
        Change::Lose(fewer) => -i64::from(fewer),
        Change::None => 0,
    }
}

/// What a plan that begins in row `from` changes in a row of the whole, counted without the module.
fn changed(from: u32, plan: &Plan<()>, row: u32) -> i64 {
    let mine = plan.events.iter().filter(|event| from - 1 + event.row == row);
    mine.map(|event| added(event.change)).sum()
}

proptest! {
    /// Up to the row in which they meet the count is the first one's, and all that is changed row by row.
    #[test]
    fn stitches_are_the_sum_row_by_row(first in any_plan(20..90), tracks in proptest::collection::vec(any_track(), 0..4)) {
        let both = together(&first, &tracks);
        let known = both.meeting.map_or(both.plan.rows, |meeting| meeting.row - 1);
        let mut stitches = i64::from(first.stitches.unwrap());
        for row in 1..=known {
            stitches += changed(1, &first, row);
            stitches += tracks.iter().map(|track| changed(track.from, &track.plan, row)).sum::<i64>();
            prop_assert!(stitches >= 0);
            prop_assert_eq!(both.plan.stitches_after(row).map(i64::from), Some(stitches));
        }
        // What is told of a meeting is what is on the needle there.
        if let Some(meeting) = both.meeting {
            prop_assert_eq!(i64::from(meeting.before), stitches);
        }
    }

    /// Nothing but the places of the tracks differs when they are named in another order.
    #[test]
    fn the_order_of_tracks_does_not_matter(first in any_plan(0..40), mut tracks in proptest::collection::vec(any_track(), 0..4)) {
        let forth = together(&first, &tracks);
        tracks.reverse();
        let back = together(&first, &tracks);
        prop_assert_eq!(forth.meeting, back.meeting);
        prop_assert_eq!(forth.turned.len(), back.turned.len());
        let without_places = |both: &Together<()>| both.plan.told(|event| event.doing.len());
        prop_assert_eq!(without_places(&forth), without_places(&back));
    }

    /// A first plan alone is what it was.
    #[test]
    fn alone_it_is_what_it_was(first in any_plan(0..90)) {
        let alone = together(&first, &[]).plan;
        prop_assert_eq!(alone.told(|_| ()), first);
    }
}
