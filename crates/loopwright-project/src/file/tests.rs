//! Files of all kinds: ours, those of a later version, damaged ones, and such as were made to do harm.

use super::*;
use crate::some::any_full_project;
use crate::{Draft, Reference, Step, StepId, Typed};
use proptest::prelude::*;
use std::collections::BTreeSet;

/// A small project with something of everything.
fn yoke() -> Project {
    let mut project = Project {
        name: "My \"yoke\"".into(),
        ..Project::default()
    };
    project.facts.insert("bust".into(), Typed::with_unit("92", "cm"));
    project.set_fact("cast_on", Some(Typed::plain("96")));
    let yoke = project.add(Step::new("yoke", "Yoke"));
    let mut sleeve = Step::new("shaping", "Sleeve");
    sleeve.section = "Sleeves".into();
    sleeve.amount = "2".into();
    sleeve.fields.insert("rows".into(), Typed::plain("84"));
    let gift = "sleeve".into();
    sleeve
        .from
        .insert("stitches".into(), Reference::Step { step: yoke, gift });
    project.add(sleeve);
    let mut draft = Draft::default();
    draft.fields.insert("stitches".into(), Typed::plain("60"));
    project.drafts.insert("tail".into(), draft);
    project
}

#[test]
fn a_file_is_read_by_eye() {
    let expected = r#"{
  "loopwright-project": 1,
  "name": "My \"yoke\"",
  "facts": {
    "bust": {
      "text": "92",
      "unit": "cm"
    },
    "cast_on": "96"
  },
  "were": {
    "cast_on": null
  },
  "steps": [
    {
      "number": 1,
      "tool": "yoke",
      "name": "Yoke"
    },
    {
      "number": 2,
      "tool": "shaping",
      "name": "Sleeve",
      "section": "Sleeves",
      "amount": "2",
      "fields": {
        "rows": "84"
      },
      "from": {
        "stitches": "step 1 sleeve"
      }
    }
  ],
  "next": 3,
  "drafts": {
    "tail": {
      "fields": {
        "stitches": "60"
      }
    }
  }
}"#;
    assert_eq!(print(&yoke()), expected);
    assert_eq!(parse(expected), Ok(yoke()));
    assert_eq!(parse(&format!("\u{feff}{expected}\r\n")), Ok(yoke()));
}

#[test]
fn what_a_later_version_added_is_passed_over_and_said() {
    let text = r#"{"loopwright-project": 1, "colour": "madder", "steps": [{"number": 1, "tool": "tail", "tracks": [[1]],
        "fields": {"a": {"text": "1", "unit": "cm", "since": 3}}, "from": {"b": "sum 1 2", "c": "fact d"}}]}"#;
    let reading = read(text).unwrap();
    let places = reading.passed_over.iter().map(ToString::to_string).collect::<Vec<_>>();
    let expected = [
        "colour",
        "steps[1].tracks",
        "steps[1].fields.a.since",
        "steps[1].from.b",
    ];
    assert_eq!(places, expected);
    let step = reading.project.step(StepId(1)).unwrap();
    assert_eq!(step.fields["a"], Typed::with_unit("1", "cm"));
    assert_eq!(step.from.len(), 1);
}

#[test]
fn of_a_later_version_what_is_understood_is_read() {
    let later = print(&yoke()).replace("\"loopwright-project\": 1", "\"loopwright-project\": 2");
    let reading = read(&later).unwrap();
    assert_eq!(reading.made_by, MadeBy::LaterVersion);
    assert_eq!((reading.project, reading.passed_over), (yoke(), Vec::new()));
    assert_eq!(read(&print(&yoke())).unwrap().made_by, MadeBy::ThisVersion);
}

#[test]
fn a_step_that_is_passed_over_leaves_its_number_to_nobody() {
    let text = r#"{"loopwright-project": 2, "steps": [{"number": 7, "tool": 1},
        {"number": 1, "tool": "tail", "from": {"stitches": "step 7 after"}}]}"#;
    let mut project = parse(text).unwrap();
    assert_eq!(project.steps.len(), 1);
    assert_eq!(project.add(Step::new("tail", "Tail")), StepId(8));
}

#[test]
fn a_long_name_is_shown_by_its_beginning() {
    let name = "x".repeat(100_000);
    let text = format!(r#"{{"loopwright-project": 1, "facts": {{"{name}": 1}}}}"#);
    let Err(FileError::Damaged(Place::Name(place))) = parse(&text) else {
        panic!("a number is no text");
    };
    assert_eq!(place.chars().count(), 81);
}

#[test]
fn no_step_is_given_a_number_that_another_one_has() {
    let mut project = Project {
        next: u32::MAX,
        ..Project::default()
    };
    let ids: BTreeSet<StepId> = (0..4).map(|_| project.add(Step::new("tail", "Tail"))).collect();
    assert_eq!(ids.len(), 4);
}

#[test]
fn what_is_too_long_is_refused_unread() {
    let name = "x".repeat(MOST_BYTES + 1);
    assert_eq!(parse(&name), Err(FileError::TooLong));
    let steps = |count: usize| {
        let steps: Vec<String> = (0..count)
            .map(|number| format!(r#"{{"number": {number}, "tool": ""}}"#))
            .collect();
        format!(r#"{{"loopwright-project": 1, "steps": [{}]}}"#, steps.join(","))
    };
    assert!(parse(&steps(MOST_STEPS)).is_ok());
    assert_eq!(parse(&steps(MOST_STEPS + 1)), Err(FileError::TooLong));
}

#[test]
fn what_is_nested_without_end_ends() {
    for (open, close) in [("[", "]"), (r#"{"a":"#, "}")] {
        let deep = [&open.repeat(100_000), "1", &close.repeat(100_000)].concat();
        assert_eq!(parse(&deep), Err(FileError::NotOurs));
        let within = format!(r#"{{"loopwright-project": 1, "later": {deep}}}"#);
        assert_eq!(parse(&within), Err(FileError::Damaged(Place::Line(1))));
    }
}

#[test]
fn a_step_that_is_added_to_any_file_has_a_number_of_its_own() {
    let text = format!(r#"{{"loopwright-project": 1, "steps": [{{"number": {HIGHEST_NUMBER}, "tool": "tail"}}]}}"#);
    let mut project = parse(&text).unwrap();
    let added = [0, 1].map(|_| project.add(Step::new("tail", "Tail")));
    assert_eq!(added, [1, 2].map(|more| StepId(HIGHEST_NUMBER + more)));
}

/// The lines of the list of strangers that are files of this version: what comes of each, and its text.
fn strangers() -> impl Iterator<Item = (&'static str, &'static str)> {
    let lines = include_str!("../../tests/hostile.txt").lines();
    let files = lines.filter_map(|line| line.strip_prefix("file | ")?.split_once('|'));
    let files = files.map(|(outcome, text)| (outcome.trim(), text.trim()));
    files.filter(|(_, text)| text.contains(r#""loopwright-project": 1"#))
}

/// What a schema cannot say: that a name, or the number of a step, is there twice.
const THERE_TWICE: [&str; 5] = [
    "damaged name",
    "damaged loopwright-project",
    "damaged facts.bust",
    "damaged steps[2].number",
    "damaged steps[1].fields.a",
];

#[test]
fn the_schema_tells_strangers_from_files_of_ours() {
    let mut told = [0, 0];
    for (outcome, text) in strangers() {
        let is_as_it_says = schema::faults(SCHEMA, text).is_empty();
        if outcome == "opens" {
            assert!(is_as_it_says, "{text}: {:?}", schema::faults(SCHEMA, text));
            told[0] += 1;
        } else if !outcome.starts_with("opens without") && !THERE_TWICE.contains(&outcome) {
            assert!(!is_as_it_says, "{outcome}: {text}");
            told[1] += 1;
        }
    }
    assert!(told[0] >= 5 && told[1] >= 30, "only {told:?} were told");
    let faults = schema::faults(
        SCHEMA,
        r#"{"loopwright-project": 1, "steps": [{"number": "1", "tool": "tail"}]}"#,
    );
    assert_eq!(faults, [r#"file.steps[1].number is not as type says: "integer""#]);
}

proptest! {
    #[test]
    fn any_file_is_as_the_schema_says(project in any_full_project()) {
        prop_assert_eq!(schema::faults(SCHEMA, &print(&project)), Vec::<String>::new());
        prop_assert_eq!(schema::faults(SCHEMA, &print(&yoke())), Vec::<String>::new());
    }

    #[test]
    fn any_project_comes_back_from_its_file(project in any_full_project()) {
        let reading = read(&print(&project)).unwrap();
        prop_assert_eq!(&reading.project, &project);
        prop_assert_eq!(reading.passed_over, Vec::new());
        prop_assert_eq!(parse(&print_short(&project)).unwrap(), project);
    }

    #[test]
    fn a_later_version_is_read_with_the_same_limits(with in r#"[\[{}",:0-9a-z\]]{0,3}"#, cut in 0usize..600) {
        let later = print(&yoke()).replace("project\": 1", "project\": 2");
        let cut = cut.min(later.len());
        if let Ok(reading) = read(&[&later[..cut], &with, &later[cut..]].concat()) {
            // Whatever is left of it is a project of this version.
            prop_assert_eq!(parse(&print(&reading.project)), Ok(reading.project));
        }
    }

    #[test]
    fn any_text_is_a_project_or_an_error(text in ".{0,40}", cut in 0usize..600, with in r#"[]\[{}",:0-9a-z]{0,3}"#) {
        prop_assert!(parse(&text).is_err());
        let whole = print(&yoke());
        let cut = cut.min(whole.len());
        // Never a panic; what still reads as a project is one.
        if let Ok(project) = parse(&[&whole[..cut], &with, &whole[cut..]].concat()) {
            prop_assert_eq!(parse(&print(&project)), Ok(project));
        }
    }
}
