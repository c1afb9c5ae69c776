//! Projects of one invented tool that adds two counts, so that what is handed on can be summed by hand.

use super::*;
use crate::change;
use crate::some::{any_project, any_typed, from_step};
use proptest::prelude::*;

/// Adds `one` and `other`. `one` asks for the fact `neck`, and for `count` where that is not known.
struct Adding;

impl Toolbox for Adding {
    fn asks(&self, _: &str, _: &Texts) -> Vec<(String, String)> {
        vec![("one".into(), "neck".into()), ("one".into(), "count".into())]
    }

    fn takes(&self, _: &str, _: &str, typed: &Typed) -> bool {
        typed.text.parse::<u64>().is_ok()
    }

    fn answer(&self, tool: &str, fields: &Texts) -> Answered {
        if tool != "adding" {
            return Err(vec![Trouble::NoSuchTool]);
        }
        let read = |field: &str| {
            let text = fields.get(field).map_or("0", |typed| &typed.text);
            text.parse::<u64>().map_err(|_| {
                vec![Trouble::Field {
                    field: field.into(),
                    sentence: "Type a number.".into(),
                }]
            })
        };
        let sum = read("one")?.wrapping_add(read("other")?);
        Ok(Outcome {
            headline: sum.to_string(),
            gifts: Texts::from([("sum".to_owned(), Typed::plain(sum.to_string()))]),
            ..Outcome::default()
        })
    }
}

fn adding(name: &str) -> Step {
    Step::new("adding", name)
}

fn headline(sheet: &Sheet, id: StepId) -> &str {
    sheet
        .step(id)
        .and_then(Derived::outcome)
        .map_or("none", |outcome| &outcome.headline)
}

/// Three steps that stand on one another: 5, 5 + 5, 5 + 10.
fn chain() -> (Project, [StepId; 3]) {
    let mut project = Project::default();
    project.facts.insert("count".into(), Typed::plain("5"));
    let first = project.add(adding("first"));
    let mut second = adding("second");
    second.from.insert("other".into(), from_step(first));
    let second = project.add(second);
    let mut third = adding("third");
    third.from.insert("other".into(), from_step(second));
    let third = project.add(third);
    (project, [first, second, third])
}

#[test]
fn of_several_facts_the_first_that_is_known_is_given() {
    let (mut project, [first, ..]) = chain();
    for (neck, sum) in [("", "5"), (" ", "5"), ("7", "7")] {
        project.facts.insert("neck".into(), Typed::plain(neck));
        assert_eq!(headline(&derive(&project, &Adding), first), sum, "{neck:?}");
    }
    // One that cannot be read is not passed over in silence.
    project.facts.insert("neck".into(), Typed::plain("wide"));
    assert!(derive(&project, &Adding).step(first).unwrap().given.is_empty());
}

#[test]
fn a_chain_moves_together() {
    let (mut project, steps) = chain();
    let before = derive(&project, &Adding);
    assert_eq!(steps.map(|step| headline(&before, step)), ["5", "10", "15"]);
    project.set_fact("count", Some(Typed::plain("7")));
    let after = derive(&project, &Adding);
    assert_eq!(steps.map(|step| headline(&after, step)), ["7", "14", "21"]);
    let changes = change::since_seen(&project, &Adding, &after);
    assert_eq!(changes.iter().map(|change| change.step).collect::<Vec<_>>(), steps);
    assert_eq!(changes[2].was.as_ref().unwrap().headline, "15");
    assert_eq!(changes[2].is.as_ref().unwrap().headline, "21");
}

#[test]
fn what_is_typed_counts_more_than_what_is_given() {
    let (mut project, [first, second, third]) = chain();
    project.steps[1].fields.insert("other".into(), Typed::plain("100"));
    let sheet = derive(&project, &Adding);
    assert_eq!(
        [first, second, third].map(|step| headline(&sheet, step)),
        ["5", "105", "110"]
    );
    // The project's own value is still known, to go back to.
    assert_eq!(sheet.step(second).unwrap().given["other"].typed, Typed::plain("5"));
}

#[test]
fn an_emptied_field_is_hers_and_takes_no_fact() {
    let (mut project, [first, ..]) = chain();
    project.steps[0].fields.insert("one".into(), Typed::plain(""));
    let sheet = derive(&project, &Adding);
    let Err(troubles) = &sheet.step(first).unwrap().answered else {
        panic!("an empty field is no number");
    };
    assert!(matches!(&troubles[..], [Trouble::Field { field, .. }] if field == "one"));
}

#[test]
fn a_step_taken_out_leaves_its_text_and_a_mark() {
    let (mut project, [first, second, third]) = chain();
    let before = derive(&project, &Adding);
    project.take_out(first, &before);
    let after = derive(&project, &Adding);
    assert_eq!([second, third].map(|step| headline(&after, step)), ["10", "15"]);
    assert_eq!(
        project.step(second).unwrap().from["other"],
        Reference::Gone("first".into())
    );
    assert_eq!(project.step(second).unwrap().fields["other"], Typed::plain("5"));
}

#[test]
fn a_fact_that_no_field_would_take_is_not_given() {
    let (mut project, [first, ..]) = chain();
    project.facts.insert("count".into(), Typed::plain("some"));
    let sheet = derive(&project, &Adding);
    assert!(sheet.step(first).unwrap().given.is_empty());
    assert_eq!(headline(&sheet, first), "0");
}

#[test]
fn a_circle_is_a_trouble_and_no_end() {
    let (mut project, [first, second, third]) = chain();
    project.steps[0].from.insert("other".into(), from_step(third));
    project.steps[1].from.insert("one".into(), from_step(second));
    let sheet = derive(&project, &Adding);
    assert!(
        [first, second, third]
            .iter()
            .all(|step| sheet.step(*step).unwrap().outcome().is_none())
    );
    let closed = sheet.steps.iter().filter_map(|step| step.answered.as_ref().err());
    assert!(
        closed
            .flatten()
            .any(|trouble| matches!(trouble, Trouble::Circle { .. }))
    );
}

#[test]
fn steps_of_two_steps_of_the_same_place_are_answered_once() {
    // Without memory, 60 doublings would be 2^60 answers.
    let mut project = Project::default();
    project.facts.insert("count".into(), Typed::plain("1"));
    let mut last = project.add(adding("start"));
    for _ in 0..60 {
        let mut step = adding("doubled");
        step.from.insert("one".into(), from_step(last));
        step.from.insert("other".into(), from_step(last));
        last = project.add(step);
    }
    assert_eq!(headline(&derive(&project, &Adding), last), (1u64 << 60).to_string());
}

proptest! {
    #[test]
    fn any_project_has_a_sheet_and_comes_back_from_its_sheets(project in any_project()) {
        let sheet = derive(&project, &Adding);
        prop_assert_eq!(sheet.steps.len(), project.steps.len());
        let back = Project::from_sheets(&project.to_sheets());
        prop_assert_eq!(&back, &project);
        prop_assert_eq!(derive(&back, &Adding), sheet);
    }

    #[test]
    fn a_fact_changed_and_changed_back_changes_nothing(project in any_project(), other in any_typed()) {
        let now = project.facts.get("count").cloned();
        let mut changed = project.clone();
        changed.set_fact("count", Some(other));
        prop_assert_eq!(&changed.as_it_was().facts, &project.facts);
        changed.set_fact("count", now);
        prop_assert_eq!(changed, project);
    }

    #[test]
    fn the_order_of_edits_does_not_matter(project in any_project(), fact in any_typed(), field in any_typed()) {
        let set_field = |project: &mut Project| {
            if let Some(step) = project.steps.first_mut() {
                step.fields.insert("one".into(), field.clone());
            }
        };
        let (mut one, mut other) = (project.clone(), project);
        one.set_fact("count", Some(fact.clone()));
        set_field(&mut one);
        set_field(&mut other);
        other.set_fact("count", Some(fact));
        prop_assert_eq!(derive(&one, &Adding), derive(&other, &Adding));
    }

    #[test]
    fn what_still_stands_after_a_step_is_taken_out_says_what_it_said(project in any_project(), place in 0usize..7) {
        let Some(id) = project.steps.get(place).map(|step| step.id) else { return Ok(()) };
        let before = derive(&project, &Adding);
        let mut left = project.clone();
        left.take_out(id, &before);
        let after = derive(&left, &Adding);
        for step in &after.steps {
            let was = before.step(step.id).and_then(Derived::outcome);
            prop_assert!(was.is_none() || was == step.outcome());
        }
    }

    #[test]
    fn moving_a_step_there_and_back_changes_nothing(project in any_project(), place in 0usize..7) {
        let Some(id) = project.steps.get(place).map(|step| step.id) else { return Ok(()) };
        let mut moved = project.clone();
        moved.shift(id, true);
        if moved != project {
            moved.shift(id, false);
        }
        prop_assert_eq!(moved, project);
    }
}
