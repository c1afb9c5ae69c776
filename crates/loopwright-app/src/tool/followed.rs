//! Every answer that has rows is followed through each named state: it comes to the count and the rows that its outcome has,
//! and what happens in a row is told in whole sentences.

use super::tests::fields_in;
use super::{Entry, State, TOOLS, find};
use crate::form::{Fields, Settings};
use crate::route;
use crate::store::{self, Typed};
use loopwright::follow::Plan;
use loopwright::row::work;

/// The tools whose answers have rows.
const WITH_ROWS: [&str; 8] = [
    "spacing", "shaping", "stairs", "flare", "yoke", "raglan", "rows", "cast_on",
];

/// A sentence that is longer is not read at arm's length.
const LONGEST: usize = 120;

fn followed() -> impl Iterator<Item = (&'static Entry, &'static State, Fields, Plan<String>)> {
    let states = TOOLS
        .iter()
        .flat_map(|tool| tool.states.iter().map(move |state| (tool, state)));
    states.filter_map(|(tool, state)| {
        let fields = fields_in(tool.fields, state);
        let plan = (tool.plan)(&fields)?;
        Some((tool, state, fields, plan))
    })
}

#[test]
fn every_tool_with_rows_can_be_followed() {
    for id in WITH_ROWS {
        let tool = find(id).unwrap();
        let filled = tool.states.iter().find(|state| state.name == super::FILLED).unwrap();
        assert!((tool.plan)(&fields_in(tool.fields, filled)).is_some(), "{id}");
    }
    let plans = followed().count();
    assert!(plans >= 60, "{plans}");
}

#[test]
fn a_plan_comes_to_what_its_outcome_has() {
    for (tool, state, fields, plan) in followed() {
        let name = format!("{}, state {}", tool.id, state.name);
        let totals = (tool.outcome)(&fields).unwrap().totals;
        if let (Some(after), Some(said)) = (plan.stitches_after(plan.rows), totals.after) {
            assert_eq!(after, said, "{name}");
        }
        if let (Some(before), Some(said)) = (plan.stitches, totals.before) {
            assert_eq!(before, said, "{name}");
        }
        if let Some(rows) = totals.rows {
            assert_eq!(plan.rows, rows, "{name}");
        }
    }
}

#[test]
fn its_events_ascend_within_its_rows_and_what_is_written_is_worked() {
    for (tool, state, _, plan) in followed() {
        let name = format!("{}, state {}", tool.id, state.name);
        let rows: Vec<u32> = plan.events.iter().map(|event| event.row).collect();
        assert!(rows.is_sorted_by(|one, next| one < next), "{name}");
        assert!(rows.iter().all(|row| (1..=plan.rows).contains(row)), "{name}");
        // Some of them, where there are very many.
        for event in plan.events.iter().step_by(plan.events.len() / 50 + 1) {
            let at = plan.at(event.row);
            if let (Some(row), Some(before), Some(after)) = (&event.written, at.before, at.after) {
                let worked = work(row, before).unwrap_or_else(|stuck| panic!("{name}: {stuck}"));
                assert_eq!((worked.on_needle, worked.left_over), (u64::from(after), 0), "{name}");
            }
        }
    }
}

#[test]
fn what_happens_is_told_in_whole_sentences() {
    for (tool, state, _, plan) in followed() {
        for event in &plan.events {
            let told = &event.doing;
            let name = format!("{}, state {}, row {}: {told:?}", tool.id, state.name, event.row);
            assert!(
                !told.contains("  ") && !told.contains(['#', '@', '{', '|', '}']),
                "{name}"
            );
            assert!(told.ends_with('.') && !told.ends_with(".."), "{name}");
            assert!(told.starts_with(|first: char| first.is_uppercase()), "{name}");
            assert!(told.chars().count() <= LONGEST, "{name}");
        }
    }
}

/// Counts stay in the left hand; what is named by its lean changes its name, in the row and in the sentence.
#[test]
fn a_left_handed_knitter_follows_the_same_counts() {
    let settings = store::Fields::from_iter([("hand".to_owned(), Typed::plain("left"))]);
    let mut turned = 0;
    for (tool, state, _, plan) in followed() {
        let typed = route::to_fields(&route::parse_query(state.link));
        let fields = Fields::new(tool.fields, typed, Settings::new(settings.clone()));
        let left = (tool.plan)(&fields).unwrap();
        let counts = |plan: &Plan<String>| {
            let counts = plan.events.iter().map(|event| (event.row, event.change, event.worked));
            (plan.knitting, plan.rows, plan.stitches, counts.collect::<Vec<_>>())
        };
        assert_eq!(counts(&left), counts(&plan), "{}, state {}", tool.id, state.name);
        for (left, right) in left.events.iter().zip(&plan.events) {
            let names_lean = right.doing.contains("M1L") || right.doing.contains("M1R");
            assert_eq!(left.doing != right.doing, names_lean, "{left:?}");
            turned += u32::from(names_lean);
        }
    }
    assert!(turned > 0);
}
