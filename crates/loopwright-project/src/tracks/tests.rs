//! Steps in bundles: what is followed, what stands alone and why, and that nothing runs for ever.

use super::*;
use crate::outcome::{Outcome, Totals};
use crate::some::any_project;
use proptest::prelude::*;

/// A project of so many steps of one part, and a sheet in which each has so many rows.
fn steps(rows: &[u32]) -> (Project, Sheet, Vec<StepId>) {
    let mut project = Project::default();
    let ids: Vec<StepId> = rows.iter().map(|_| project.add(Step::new("shaping", "step"))).collect();
    let derived = ids.iter().zip(rows).map(|(id, rows)| Derived {
        id: *id,
        given: Default::default(),
        answered: Ok(Outcome {
            totals: Totals {
                rows: Some(*rows),
                ..Totals::default()
            },
            ..Outcome::default()
        }),
    });
    let sheet = Sheet {
        steps: derived.collect(),
    };
    (project, sheet, ids)
}

fn put(project: &mut Project, track: StepId, with: StepId, row: &str) {
    let step = project.steps.iter_mut().find(|step| step.id == track).unwrap();
    step.set_alongside(Some(with));
    step.from_row = row.into();
}

fn trouble(project: &Project, sheet: &Sheet, id: StepId) -> Option<TrackTrouble> {
    project.track(project.step(id)?, sheet)?.err()
}

#[test]
fn a_track_of_a_track_begins_where_that_one_does_and_on() {
    let (mut project, sheet, ids) = steps(&[60, 40, 30]);
    put(&mut project, ids[1], ids[0], "21");
    put(&mut project, ids[2], ids[1], " 11 ");
    let bundles = project.bundles(&sheet);
    let expected = Bundle {
        first: ids[0],
        tracks: vec![(ids[1], 21), (ids[2], 31)],
    };
    assert_eq!(bundles, [expected]);
    assert_eq!(bundles[0].rows(&sheet), Some(60));
    assert!(ids.iter().all(|id| bundles[0].holds(*id)));
}

#[test]
fn rows_go_on_behind_the_end_of_the_first() {
    let (mut project, sheet, ids) = steps(&[20, 40]);
    put(&mut project, ids[1], ids[0], "");
    assert_eq!(project.bundles(&sheet)[0].rows(&sheet), Some(40));
    put(&mut project, ids[1], ids[0], "20");
    assert_eq!(project.bundles(&sheet)[0].rows(&sheet), Some(59));
}

#[test]
fn what_cannot_be_followed_stands_alone_and_says_why() {
    let (mut project, sheet, ids) = steps(&[60, 40, 30]);
    put(&mut project, ids[1], ids[0], "61");
    let behind = TrackTrouble::RowBehind { step: ids[0], rows: 60 };
    assert_eq!(trouble(&project, &sheet, ids[1]), Some(behind));
    for row in ["0", "-3", "2 1/2", "many", "99999999999"] {
        put(&mut project, ids[1], ids[0], row);
        assert_eq!(trouble(&project, &sheet, ids[1]), Some(TrackTrouble::NoRow));
    }
    put(&mut project, ids[1], StepId(99), "1");
    assert_eq!(trouble(&project, &sheet, ids[1]), Some(TrackTrouble::Gone(None)));
    assert!(project.bundles(&sheet).iter().all(|bundle| bundle.tracks.is_empty()));
    put(&mut project, ids[1], ids[0], "1");
    project.steps[0].section = "body".into();
    assert_eq!(trouble(&project, &sheet, ids[1]), Some(TrackTrouble::OtherPart(ids[0])));
    project.steps[0].section.clear();
    project.steps[0].amount = "2".into();
    assert_eq!(trouble(&project, &sheet, ids[1]), Some(TrackTrouble::Amounts(ids[0])));
}

#[test]
fn a_circle_is_said_by_those_who_are_in_it() {
    let (mut project, sheet, ids) = steps(&[60, 40, 30]);
    put(&mut project, ids[0], ids[1], "1");
    put(&mut project, ids[1], ids[0], "1");
    put(&mut project, ids[2], ids[1], "1");
    for id in &ids[..2] {
        assert_eq!(trouble(&project, &sheet, *id), Some(TrackTrouble::Circle));
    }
    // The step outside the circle is a track of one that stands alone until it is mended.
    let bundles = project.bundles(&sheet);
    assert_eq!((bundles.len(), &*bundles[1].tracks), (2, &[(ids[2], 1)][..]));
    put(&mut project, ids[0], ids[0], "1");
    assert_eq!(trouble(&project, &sheet, ids[0]), Some(TrackTrouble::Circle));
}

#[test]
fn no_circle_is_offered() {
    let (mut project, _, ids) = steps(&[60, 40, 30]);
    put(&mut project, ids[1], ids[0], "1");
    let offered = |step: usize, other: usize| project.may_go_along(&project.steps[step], &project.steps[other]);
    assert!(offered(2, 0) && offered(2, 1) && offered(1, 2));
    assert!(!offered(0, 0) && !offered(0, 1));
}

#[test]
fn parts_move_with_their_steps() {
    let (mut project, _, ids) = steps(&[1, 2, 3, 4]);
    for (step, section) in project.steps.iter_mut().zip(["yoke", "body", "yoke", "sleeve"]) {
        step.section = section.into();
    }
    let order = |project: &Project| project.steps.iter().map(|step| step.id).collect::<Vec<_>>();
    project.shift_part("sleeve", false);
    project.shift_part("yoke", true);
    assert_eq!(order(&project), ids);
    project.shift_part("body", true);
    assert_eq!(order(&project), [ids[1], ids[0], ids[2], ids[3]]);
    project.shift_part("sleeve", true);
    assert_eq!(order(&project), [ids[1], ids[3], ids[0], ids[2]]);
}

#[test]
fn the_name_of_a_step_that_was_taken_out_stays() {
    let (mut project, sheet, ids) = steps(&[60, 40]);
    put(&mut project, ids[1], ids[0], "5");
    project.take_out(ids[0], &sheet);
    let gone = TrackTrouble::Gone(Some("step".into()));
    assert_eq!(trouble(&project, &sheet, ids[1]), Some(gone));
}

proptest! {
    /// Whatever a file says, each step is in exactly one bundle, and nothing runs for ever.
    #[test]
    fn any_tracks_are_followed(mut project in any_project(), with in proptest::collection::vec((0u32..9, 0u32..4), 7)) {
        for (step, (with, row)) in project.steps.iter_mut().zip(with) {
            step.set_alongside((with > 0).then_some(StepId(with)));
            step.from_row = row.to_string();
        }
        let bundles = project.bundles(&Sheet::default());
        for step in &project.steps {
            let held = bundles.iter().filter(|bundle| bundle.holds(step.id)).count();
            prop_assert!(held == 1, "{} is in {held} bundles of {bundles:?}", step.id);
        }
    }
}
