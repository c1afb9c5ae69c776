//! What this version of the page understands of a project that is brought: the facts it knows, and the fields that its tools
//! ask; anything else would never be seen again. A step of a tool that it does not have is one that this format may have, and
//! is listed as such; in a format of a later version it is left out. No text is longer than anyone types. What is left out is
//! named with its place.

use crate::form::kept::Kept;
use crate::form::taken::{MOST_BYTES, has};
use crate::tool::{self, Entry};
use loopwright::choice::Key;
use loopwright_project::file::{MadeBy, Place, Reading};
use loopwright_project::{OwnCount, Project, Reference, Sheet, Step, Texts, Typed};
use std::collections::{BTreeMap, BTreeSet};

/// More counts of her own than any project has.
const MOST_OWN_COUNTS: usize = 200;
/// More fields than any tool has.
const MOST_OF_A_STRANGER: usize = 500;

/// The part of a reading that is understood here; what else is in it is among what was passed over.
pub fn understood(mut reading: Reading) -> Reading {
    let mut left_out = without_strange_drafts(&mut reading.project);
    left_out.extend(without_long_names(&mut reading.project));
    left_out.extend(without_strange_facts(&mut reading.project));
    left_out.extend(without_strange_steps(&mut reading.project, reading.made_by));
    let places = left_out.iter().map(|path| Place::name(path));
    reading.passed_over.extend(places);
    reading
}

fn without_strange_drafts(project: &mut Project) -> Vec<String> {
    let mut left_out = take_others(&mut project.drafts, "drafts", |tool, _| tool::find(tool).is_some());
    for (name, draft) in &mut project.drafts {
        if let Some(tool) = tool::find(name) {
            let at = ["drafts.", name].concat();
            left_out.extend(without_strange_fields(&mut draft.fields, &mut draft.from, tool, &at));
        }
    }
    left_out
}

/// What she calls something, and what else is typed about it, is no longer than anyone types either.
fn without_long_names(project: &mut Project) -> Vec<String> {
    let mut left_out = Vec::new();
    let mut shorten = |text: &mut String, at: String| {
        if text.len() > MOST_BYTES {
            text.clear();
            left_out.push(at);
        }
    };
    shorten(&mut project.name, "name".into());
    shorten(&mut project.pace, "pace".into());
    for (place, step) in project.steps.iter_mut().enumerate() {
        let about = [
            (&mut step.name, "name"),
            (&mut step.section, "section"),
            (&mut step.amount, "amount"),
            (&mut step.alongside, "alongside"),
            (&mut step.from_row, "from_row"),
        ];
        for (text, name) in about {
            shorten(text, format!("steps[{}].{name}", place + 1));
        }
    }
    left_out
}

fn without_strange_facts(project: &mut Project) -> Vec<String> {
    let counts = first_counts(project.facts.keys());
    let mut left_out = take_others(&mut project.facts, "facts", |key, typed| {
        is_fact(key, &counts) && is_typed(typed)
    });
    let counts = first_counts(project.was.keys());
    left_out.extend(take_others(&mut project.was, "were", |key, was| {
        is_fact(key, &counts) && was.as_ref().is_none_or(is_typed)
    }));
    left_out
}

/// Her own counts, as many as a project has.
fn first_counts<'a>(keys: impl Iterator<Item = &'a String>) -> BTreeSet<OwnCount> {
    let counts: BTreeSet<OwnCount> = keys.filter_map(|key| OwnCount::of_key(key)).collect();
    counts.into_iter().take(MOST_OWN_COUNTS).collect()
}

fn is_fact(key: &str, counts: &BTreeSet<OwnCount>) -> bool {
    let is_of_hers = || OwnCount::of_key(key).is_some_and(|count| counts.contains(&count));
    Kept::from_key(key).is_some() || is_of_hers()
}

/// What stood on a step that is left out says so in its fields.
fn without_strange_steps(project: &mut Project, made_by: MadeBy) -> Vec<String> {
    let mut left_out = Vec::new();
    let mut strange = Vec::new();
    for (place, step) in project.steps.iter_mut().enumerate() {
        let at = format!("steps[{}]", place + 1);
        match (tool::find(&step.tool), made_by) {
            (Some(tool), _) => left_out.extend(without_strange_fields(&mut step.fields, &mut step.from, tool, &at)),
            (None, MadeBy::ThisVersion) => left_out.extend(without_many_fields(step, &at)),
            (None, MadeBy::LaterVersion) => {
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

/// Of a step whose tool is not here nobody knows the fields; it has no more of them than a tool has.
fn without_many_fields(step: &mut Step, at: &str) -> Vec<String> {
    let few = |names: Vec<String>| names.into_iter().take(MOST_OF_A_STRANGER).collect::<BTreeSet<String>>();
    let fields = few(step.fields.keys().cloned().collect());
    let from = few(step.from.keys().cloned().collect());
    let is_one = |name: &str, typed: &Typed| fields.contains(name) && is_typed(typed);
    let mut left_out = take_others(&mut step.fields, &[at, ".fields"].concat(), is_one);
    left_out.extend(take_others(&mut step.from, &[at, ".from"].concat(), |name, _| {
        from.contains(name)
    }));
    left_out
}

fn without_strange_fields(
    fields: &mut Texts,
    from: &mut BTreeMap<String, Reference>,
    tool: &Entry,
    at: &str,
) -> Vec<String> {
    let is_asked = |name: &str| has(tool.fields, name);
    let mut left_out = take_others(fields, &[at, ".fields"].concat(), |name, typed| {
        is_asked(name) && is_typed(typed)
    });
    left_out.extend(take_others(from, &[at, ".from"].concat(), |name, _| is_asked(name)));
    left_out
}

/// Whether a text is no longer than anyone types.
fn is_typed(typed: &Typed) -> bool {
    typed.text.len() <= MOST_BYTES && typed.unit.as_ref().is_none_or(|unit| unit.len() <= MOST_BYTES)
}

/// Takes out what has a strange name, and answers the places.
fn take_others<T>(all: &mut BTreeMap<String, T>, at: &str, is_known: impl Fn(&str, &T) -> bool) -> Vec<String> {
    let strange = all.iter().filter(|(name, one)| !is_known(name, one));
    let strange: Vec<String> = strange.map(|(name, _)| name.clone()).collect();
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
    fn of_this_version_a_step_of_no_tool_of_ours_is_listed_and_a_strange_name_is_left_out() {
        let (project, places) = read(
            r#"{"loopwright-project": 1, "facts": {"bust": "92", "wingspan": "150", "count_1": "96", "count_1_name": "hood"},
            "steps": [{"number": 1, "tool": "loom", "fields": {"ends": "200"}},
                {"number": 2, "tool": "tail", "fields": {"stitches": "96", "f0": "1"}, "from": {"f1": "fact bust"}}],
            "drafts": {"tail": {"fields": {"stitches": "60", "f2": "1"}}}}"#,
        );
        assert_eq!((project.facts.len(), project.steps.len()), (3, 2));
        assert_eq!(project.steps[0].fields.len(), 1);
        let expected = [
            "drafts.tail.fields.f2",
            "facts.wingspan",
            "steps[2].fields.f0",
            "steps[2].from.f1",
        ];
        assert_eq!(places, expected);
    }

    /// A count of hers is a fact of this version like the others.
    #[test]
    fn a_count_of_hers_is_understood_whoever_made_the_file() {
        let (project, places) =
            read(r#"{"loopwright-project": 2, "facts": {"count_1": "96", "count_1_name": "hood"}}"#);
        assert_eq!((project.facts.len(), places.len()), (2, 0));
    }

    #[test]
    fn a_hundred_thousand_strange_names_are_left_out_in_one_pass() {
        let names = |prefix: &str| {
            (0..30_000)
                .map(|number| format!("\"{prefix}{number}\":\"1\""))
                .collect::<Vec<_>>()
                .join(",")
        };
        let text = format!(
            "{{\"loopwright-project\":1,\"facts\":{{{},{}}},\"steps\":[{{\"number\":1,\"tool\":\"tail\",\"fields\":{{{}}}}}]}}",
            names("f"),
            names("count_"),
            (0..5_000)
                .map(|number| format!("\"g{number}\":\"1\""))
                .collect::<Vec<_>>()
                .join(",")
        );
        let begun = std::time::Instant::now();
        let (project, places) = read(&text);
        println!("{} names left out in {:?}", places.len(), begun.elapsed());
        assert_eq!(project.facts.len(), MOST_OWN_COUNTS);
        assert!(project.steps[0].fields.is_empty());
        assert_eq!(places.len(), 60_000 + 5_000 - MOST_OWN_COUNTS);
    }

    #[test]
    fn no_text_is_longer_than_anyone_types() {
        let long = "9".repeat(MOST_BYTES + 1);
        let text = format!(
            r#"{{"loopwright-project": 1, "name": "{long}", "facts": {{"bust": "{long}"}},
                "steps": [{{"number": 1, "tool": "loom", "section": "{long}", "fields": {{"a": "{long}"}}}}]}}"#
        );
        let (project, places) = read(&text);
        assert!(project.facts.is_empty() && project.steps[0].fields.is_empty());
        assert_eq!(places, ["name", "steps[1].section", "facts.bust", "steps[1].fields.a"]);
        assert!(project.name.is_empty());
    }
}
