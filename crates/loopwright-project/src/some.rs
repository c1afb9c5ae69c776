//! Any projects, for the tests that hold for each of them. Their steps are of the tool `adding`, or of none that there is.

use crate::{Draft, Project, Reference, Step, StepId, Typed};
use proptest::prelude::*;

/// What a step hands on.
pub fn from_step(step: StepId) -> Reference {
    let gift = "sum".into();
    Reference::Step { step, gift }
}

fn any_reference() -> impl Strategy<Value = Reference> {
    prop_oneof![
        Just(Reference::Fact("count".into())),
        (0u32..8).prop_map(|step| from_step(StepId(step))),
        "[a-z ]{0,4}".prop_map(Reference::Gone),
    ]
}

/// Any text with any unit.
pub fn any_typed() -> impl Strategy<Value = Typed> {
    ("[0-9]{0,3}|x", proptest::option::of("cm|absent")).prop_map(|(text, unit)| Typed { text, unit })
}

prop_compose! {
    fn any_step()(
        fields in proptest::collection::btree_map("one|other", any_typed(), 0..2),
        from in proptest::collection::btree_map("one|other", any_reference(), 0..2),
        section in "|yoke|body",
        tool in "adding|none",
    ) -> Step {
        Step { section, fields, from, ..Step::new(tool, "step") }
    }
}

prop_compose! {
    /// Any project that was made by adding steps.
    pub fn any_project()(
        count in proptest::option::of(any_typed()),
        steps in proptest::collection::vec(any_step(), 0..7),
    ) -> Project {
        let mut project = Project::default();
        if let Some(count) = count {
            project.facts.insert("count".into(), count);
        }
        for step in steps {
            project.add(step);
        }
        project
    }
}

prop_compose! {
    fn any_draft()(
        fields in proptest::collection::btree_map(".{0,3}", any_text(), 0..3),
        from in proptest::collection::btree_map(".{0,3}", any_reference(), 0..3),
    ) -> Draft {
        Draft { fields, from }
    }
}

/// Any text at all, with any unit at all.
fn any_text() -> impl Strategy<Value = Typed> {
    (".{0,6}", proptest::option::of(".{0,3}")).prop_map(|(text, unit)| Typed { text, unit })
}

prop_compose! {
    /// Any project with everything that can be in one, and any characters in its names.
    pub fn any_full_project()(
        project in any_project(),
        name in ".{0,8}",
        facts in proptest::collection::btree_map(".{0,4}", any_text(), 0..4),
        was in proptest::collection::btree_map(".{0,4}", proptest::option::of(any_text()), 0..4),
        drafts in proptest::collection::btree_map("[a-z]{1,4}_[a-z]{1,4}", any_draft(), 0..3),
        pace in ".{0,3}",
        words in proptest::collection::vec((".{0,6}", ".{0,6}", ".{0,3}", "[0-9]|gone .|.{0,2}", ".{0,3}"), 8),
    ) -> Project {
        let mut project = Project { name, facts, was, drafts, pace, ..project };
        for (step, (name, section, amount, alongside, from_row)) in project.steps.iter_mut().zip(words) {
            *step = Step { name, section, amount, alongside, from_row, ..step.clone() };
        }
        project
    }
}
