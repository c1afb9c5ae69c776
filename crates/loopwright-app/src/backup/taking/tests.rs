//! Copies of this page go through as they are; what else stands in one is left out and counted.

use super::*;
use crate::project::demo;
use crate::store::Typed;
use std::time::Instant;

fn set(sheet: &str, field: &str, text: &str) -> Entry {
    Entry::new(sheet, field, Some(Typed::plain(text)))
}

fn taken(entries: Vec<Entry>) -> (usize, usize) {
    let taken = take(entries);
    let fields = taken.sheets.iter().map(|(_, fields)| fields.len()).sum();
    (fields, taken.left_out.number())
}

/// The fields of the sheets that this page keeps, as a year of knitting leaves them.
fn ours() -> Vec<Entry> {
    let rows = [
        ("settings", "measures", "inches"),
        ("settings", "light", "dusk"),
        ("settings", "hand", "left"),
        ("settings", "knit_awake", "off"),
        ("projects", "open", "2"),
        ("projects", "2", "here"),
        ("projects", "brought", "2 1"),
        ("projects", "beside", "1"),
        ("home", "search", "sock"),
        ("frame", "light", "day"),
        ("frame", "spacing.locked", "stitches"),
        ("known", "bust", "92"),
        ("known", "count_3", "96"),
        ("known", "count_3_name", "hood"),
        ("known.was", "bust", "90"),
        ("project", "name", "Mine"),
        ("project", "next", "4"),
        ("project", "pace", "25"),
        ("spacing", "stitches", "132"),
        ("spacing.from", "amount", "fact cast_on"),
        ("spacing.before", "stitches", "90"),
        ("spacing.from.before", "amount", "step 3 after"),
        ("spacing.link", "stitches", "132"),
        ("yoke.knit", "1764491000123-k3-0", "+1"),
        ("yoke.knit", "began", "40 rows"),
        ("yoke.knit", "counters", "2"),
        ("yoke.knit", "active", "1"),
        ("yoke.knit.2", "1764491000301-k3-1", "+1 quick"),
        ("p2/step.3.about", "tool", "tail"),
        ("p2/step.3.about", "name", "Neck"),
        ("p2/step.3.about", "place", "0"),
        ("p2/step.3.about", "from_row", "1"),
        ("p2/step.3", "stitches", "96"),
        ("p2/step.3.from", "width", "fact girth"),
        ("p2/step.3.knit", "1764491000123-k3-0", "start"),
        ("p2/undo", " ", "Moved"),
        ("p2/undo", "step.3.about place", "1"),
        ("p2/undo", "known count_3", "96"),
        ("p2/step.4.before", "stitches", "1"),
        ("p2/step.9.about", "tool", "loom"),
        ("p2/step.9", "ends", "200"),
        ("yarn", "s7_stitches", "90"),
    ];
    rows.into_iter()
        .map(|(sheet, field, text)| set(sheet, field, text))
        .collect()
}

#[test]
fn a_copy_from_here_comes_back_whole() {
    let ours = ours();
    let back = take(ours.clone());
    assert_eq!(back.left_out.of_a_copy(), None);
    let mut all = Sheets::default();
    all.apply_all(&ours);
    assert_eq!(back.sheets, all);
}

#[test]
fn every_state_of_every_tool_and_the_example_come_back_whole() {
    let of_state = |tool: &tool::Entry, link: &str| {
        let fields = crate::route::to_fields(&crate::route::parse_query(link));
        let entry = |(field, typed)| Entry::new(tool.id, field, Some(typed));
        fields.into_iter().map(entry).collect::<Vec<Entry>>()
    };
    for tool in tool::TOOLS {
        for state in tool.states {
            let back = take(of_state(tool, state.link));
            assert_eq!(
                back.left_out.number(),
                0,
                "{}, {}: {:?}",
                tool.id,
                state.name,
                back.left_out
            );
        }
    }
    let example = demo::pullover().to_sheets();
    let entries = example.into_iter().flat_map(|(sheet, fields)| {
        let entry = move |(field, typed)| Entry::new(sheet.clone(), field, Some(typed));
        fields.into_iter().map(entry)
    });
    let back = take(entries.collect());
    assert_eq!(back.left_out, LeftOut::default());
}

/// The log of an earlier release, brought back as a copy.
#[test]
fn what_was_kept_before_comes_back_whole() {
    const LOG: &str = include_str!("../../../../../tests/browser/fixtures/log.jsonl");
    let text = |value: &serde_json::Value| value.as_str().unwrap().to_owned();
    let entry = |line: &str| {
        let line: serde_json::Value = serde_json::from_str(line).unwrap();
        let line = line
            .as_str()
            .map_or(line.clone(), |line| serde_json::from_str(line).unwrap());
        let typed = Typed {
            text: line["typed"]["text"].as_str()?.to_owned(),
            unit: line["typed"]["unit"].as_str().map(str::to_owned),
        };
        Some(Entry::new(text(&line["sheet"]), text(&line["field"]), Some(typed)))
    };
    let entries: Vec<Entry> = LOG.lines().filter_map(entry).collect();
    assert!(entries.len() > 100);
    assert_eq!(take(entries).left_out.of_a_copy(), None);
}

#[test]
fn what_this_page_has_no_place_for_is_left_out_and_counted() {
    let strange = [
        ("spacing", "f0"),
        ("spacing.before", "f0"),
        ("nosuch", "stitches"),
        ("p1/known", "bust"),
        ("p2/settings", "light"),
        ("settings", "f0"),
        ("known", "wingspan"),
        ("projects", "two"),
        ("frame", "nosuch.locked"),
        ("yoke.knit", "f0"),
        ("nosuch.knit", "1764491000123-k3-0"),
        ("undo", "settings f0"),
        ("undo", "undo x"),
        ("__proto__", "x"),
        ("", ""),
    ];
    let entries: Vec<Entry> = strange.iter().map(|(sheet, field)| set(sheet, field, "+1")).collect();
    let back = take(entries);
    assert_eq!(back.sheets, Sheets::default());
    assert_eq!(back.left_out.number(), strange.len());
    assert_eq!(
        taken(vec![set("spacing", "stitches", &"9".repeat(MOST_BYTES + 1))]),
        (0, 1)
    );
}

/// Names of one kind, what each sets, and how many of them are kept.
type Kind = (&'static str, fn(usize) -> Entry, usize);

/// A hundred thousand names of any kind: what is kept does not grow with them.
#[test]
fn a_hundred_thousand_names_are_one_sentence() {
    let number = 100_000;
    let kinds: [Kind; 6] = [
        ("fields", |name| set("spacing", &format!("f{name}"), "1"), 0),
        ("sheets", |name| set(&format!("f{name}"), "stitches", "1"), 0),
        (
            "own counts",
            |name| set("known", &format!("count_{}", name + 1), "1"),
            MOST_OWN_COUNTS,
        ),
        (
            "projects",
            |name| set(&format!("p{}/known", name + 2), "bust", "92"),
            MOST_SHEETS,
        ),
        ("sections", |name| set("yarn", &format!("s{}_rows", name + 1), "1"), 200),
        (
            "steps",
            |name| set(&format!("step.{name}.about"), "name", "x"),
            MOST_SHEETS,
        ),
    ];
    for (kind, entry, kept) in kinds {
        let entries: Vec<Entry> = (0..number).map(entry).collect();
        let begun = Instant::now();
        let found = taken(entries);
        println!("{number} {kind} of a copy taken in {:?}", begun.elapsed());
        assert_eq!(found, (kept, number - kept), "{kind}");
    }
}

/// Taps are many, and each is hers.
#[test]
fn taps_come_back_however_many() {
    let tap = |count: usize| {
        set(
            "yoke.knit",
            &format!("{:013}-k3-{count}", 1_764_491_000_000_u64 + count as u64),
            "+1",
        )
    };
    let begun = Instant::now();
    assert_eq!(taken((0..100_000).map(tap).collect()), (100_000, 0));
    println!("100000 taps of a copy taken in {:?}", begun.elapsed());
}
