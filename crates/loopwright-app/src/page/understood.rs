//! What this version of the page understands of a project that is brought. Of its own format that is all of it, but for what
//! is begun in a tool that it does not have: that would never be seen again. Of a later version's it is the facts it knows,
//! the steps of tools it has, and the fields that these ask. What is left out is named with its place.

use super::project::named_facts;
use crate::tool::{self, Entry};
use loopwright_project::file::{MadeBy, Place, Reading};
use loopwright_project::{Project, Sheet, Step, Texts};
use std::collections::BTreeMap;

/// The part of a reading that is understood here; what else is in it is among what was passed over.
pub fn understood(mut reading: Reading) -> Reading {
    let mut left_out = without_strange_drafts(&mut reading.project);
    if reading.made_by == MadeBy::LaterVersion {
        left_out.extend(without_strange_facts(&mut reading.project));
        left_out.extend(without_strange_steps(&mut reading.project));
    }
    let places = left_out.iter().map(|path| Place::name(path));
    reading.passed_over.extend(places);
    reading
}

fn without_strange_drafts(project: &mut Project) -> Vec<String> {
    take_others(&mut project.drafts, "drafts", |tool| tool::find(tool).is_some())
}

fn without_strange_facts(project: &mut Project) -> Vec<String> {
    let is_known = |key: &str| named_facts().any(|(_, known, _)| known == key);
    let mut left_out = take_others(&mut project.facts, "facts", is_known);
    left_out.extend(take_others(&mut project.was, "were", is_known));
    left_out
}

/// What stood on a step that is left out says so in its fields.
fn without_strange_steps(project: &mut Project) -> Vec<String> {
    let mut left_out = Vec::new();
    let mut strange = Vec::new();
    for (place, step) in project.steps.iter_mut().enumerate() {
        let at = format!("steps[{}]", place + 1);
        match tool::find(&step.tool) {
            Some(tool) => left_out.extend(without_strange_fields(step, tool, &at)),
            None => {
                left_out.push([&at, " (", &step.tool, ")"].concat());
                strange.push(step.id);
            }
        }
    }
    for id in strange {
        project.take_out(id, &Sheet::default());
    }
    left_out
}

fn without_strange_fields(step: &mut Step, tool: &Entry, at: &str) -> Vec<String> {
    let is_asked = |name: &str| asks(tool, name);
    let fields: &mut Texts = &mut step.fields;
    let mut left_out = take_others(fields, &[at, ".fields"].concat(), is_asked);
    left_out.extend(take_others(&mut step.from, &[at, ".from"].concat(), is_asked));
    left_out
}

/// Whether a tool has a field under this stored name: `stitches`, or `s2_stitches` of a group that is there several times.
fn asks(tool: &Entry, name: &str) -> bool {
    tool.fields.iter().any(|field| match field.group {
        None => field.key == name,
        Some(group) => {
            let rest = name.strip_prefix(group.stored);
            let numbered = rest.and_then(|rest| rest.split_once('_'));
            numbered.is_some_and(|(number, key)| number.parse::<usize>().is_ok() && field.key == key)
        }
    })
}

/// Takes out what has a strange name, and answers the places.
fn take_others<T>(all: &mut BTreeMap<String, T>, at: &str, is_known: impl Fn(&str) -> bool) -> Vec<String> {
    let strange = all.keys().filter(|name| !is_known(name));
    let strange: Vec<String> = strange.cloned().collect();
    strange
        .into_iter()
        .map(|name| {
            all.remove(&name);
            [at, ".", &name].concat()
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright_project::{Draft, Reference, StepId, Typed, file};

    fn read(text: &str) -> (Project, Vec<String>) {
        let reading = understood(file::read(text).unwrap());
        let places = reading.passed_over.iter().map(ToString::to_string).collect();
        (reading.project, places)
    }

    #[test]
    fn what_is_begun_in_no_tool_of_ours_is_left_out_and_named() {
        let mut project = Project::default();
        project.drafts.insert("tail".into(), Draft::default());
        let ours = project.clone();
        project.drafts.insert("settings".into(), Draft::default());
        let (understood, places) = read(&file::print(&project));
        assert_eq!(understood, ours);
        assert_eq!(places, ["drafts.settings"]);
    }

    #[test]
    fn of_a_later_version_only_what_this_one_has_is_taken() {
        let (project, places) = read(
            r#"{"loopwright-project": 2, "name": "Yoke", "yarns": [1],
            "facts": {"bust": {"text": "92", "unit": "cm"}, "wingspan": "150"}, "were": {"wingspan": null},
            "steps": [
                {"number": 1, "tool": "loom", "name": "Warp"},
                {"number": 2, "tool": "tail", "fields": {"stitches": "96", "twist": "S"}, "from": {"gauge": "step 1 after"}},
                {"number": 3, "tool": "yarn", "fields": {"s1_stitches": "9", "s1_twist": "S", "sx_stitches": "1"}}
            ]}"#,
        );
        assert_eq!(project.name, "Yoke");
        assert_eq!(
            project.facts,
            Texts::from([("bust".into(), Typed::with_unit("92", "cm"))])
        );
        let ids: Vec<StepId> = project.steps.iter().map(|step| step.id).collect();
        assert_eq!(ids, [StepId(2), StepId(3)]);
        assert_eq!(project.steps[0].from["gauge"], Reference::Gone("Warp".into()));
        let expected = [
            "yarns",
            "facts.wingspan",
            "were.wingspan",
            "steps[1] (loom)",
            "steps[2].fields.twist",
            "steps[3].fields.s1_twist",
            "steps[3].fields.sx_stitches",
        ];
        assert_eq!(places, expected);
    }

    #[test]
    fn a_project_of_this_version_is_taken_as_it_is() {
        let text =
            r#"{"loopwright-project": 1, "facts": {"wingspan": "150"}, "steps": [{"number": 1, "tool": "loom"}]}"#;
        let (project, places) = read(text);
        assert_eq!((project.facts.len(), project.steps.len()), (1, 1));
        assert!(places.is_empty());
    }
}
