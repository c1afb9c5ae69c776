//! Links as strangers write them.

use super::*;
use crate::form::taken::{MOST_BYTES, has};
use crate::form::{Fields, Kind, Settings};
use crate::route::{self, Route};
use crate::store::Typed;
use crate::tool::{TOOLS, find};
use std::time::Instant;

fn take(tool: &str, query: &str) -> Taken {
    find(tool).unwrap().take(&route::parse_query(query))
}

fn said(tool: &str, query: &str) -> Option<String> {
    take(tool, query).left_out.of_a_link()
}

#[test]
fn of_a_link_what_the_tool_has_is_taken_and_the_rest_is_said() {
    let taken = take("spacing", "f0=1&stitches=132&f1=&f2=x&decrease=nosuch");
    assert_eq!(taken.fields.len(), 2);
    assert_eq!(taken.fields["decrease"], Typed::plain("nosuch"));
    assert_eq!(
        taken.left_out.of_a_link().unwrap(),
        "3 parts of the link are not known to this tool and were left out: f0, f1, f2."
    );
    assert_eq!(said("spacing", "stitches=132&amount=16"), None);
}

#[test]
fn a_unit_without_its_field_and_a_name_that_is_there_twice_are_said() {
    let taken = take(
        "cast_on",
        "width=1&width=36&width.unit=inches&gauge.unit=4+in&knitting=flat&knitting.unit=cm",
    );
    assert_eq!(taken.fields["width"], Typed::with_unit("36", "inches"));
    assert_eq!(taken.fields["knitting"], Typed::plain("flat"));
    assert_eq!(taken.left_out.number(), 3);
    let said = taken.left_out.of_a_link().unwrap();
    assert!(
        ["width", "gauge.unit", "knitting.unit"]
            .iter()
            .all(|name| said.contains(name)),
        "{said}"
    );
}

#[test]
fn a_text_is_taken_up_to_four_kilobytes() {
    let fits = "9".repeat(MOST_BYTES);
    assert_eq!(take("sizing", &format!("sizes={fits}")).fields["sizes"].text, fits);
    let taken = take("sizing", &format!("sizes={fits}9&bust=92&bust.unit={fits}9"));
    assert!(taken.fields.is_empty());
    assert_eq!(
        taken.left_out.of_a_link().unwrap(),
        "2 parts of the link are longer than 4 kB and were left out: bust, sizes."
    );
}

/// Every field that a tool has in any of its states is taken from a link, as it was typed, but for what is hers alone.
#[test]
fn whatever_a_tool_links_it_takes() {
    for tool in TOOLS {
        for state in tool.states {
            let mut pairs = route::parse_query(state.link);
            let is_linked = |key: &String| tool.fields.iter().all(|field| field.key != key || field.linked);
            pairs.retain(|(key, _)| is_linked(key));
            let taken = tool.take(&pairs);
            assert_eq!(taken.left_out, LeftOut::default(), "{}, {}", tool.id, state.name);
            assert_eq!(taken.fields, route::to_fields(&pairs), "{}, {}", tool.id, state.name);
        }
    }
}

/// Links of an earlier release are taken whole, and nothing in them is strange.
#[test]
fn links_from_before_are_taken_whole() {
    const BEFORE: &str = include_str!("../../../../../tests/browser/fixtures/links.txt");
    let links: Vec<&str> = BEFORE.lines().filter(|line| line.starts_with("#/")).collect();
    assert!(links.len() > 10);
    for link in links {
        let Route::Tool { id, fields } = route::parse(link) else {
            continue;
        };
        let tool = find(&id).unwrap();
        let taken = tool.take(&fields);
        assert_eq!(taken.left_out.of_a_link(), None, "{link}");
        assert_eq!(taken.fields, route::to_fields(&fields), "{link}");
        let fields = Fields::new(tool.fields, taken.fields, Settings::default());
        assert_eq!(fields.strange(), [], "{link}");
    }
}

/// Of so many names as many are looked at once: what is kept and what is said does not grow with them.
#[test]
fn fifty_thousand_names_are_one_sentence() {
    for number in [50_000, 100_000] {
        let names: Vec<String> = (0..number).map(|name| format!("f{name}=1&f{name}.unit=cm")).collect();
        let begun = Instant::now();
        let hash = format!("#/spacing?{}&stitches=132&amount=16", names.join("&"));
        let Route::Tool { id, fields } = route::parse(&hash) else {
            panic!("a tool's link is a tool's link");
        };
        let taken = find(&id).unwrap().take(&fields);
        println!("{number} names of a link taken in {:?}", begun.elapsed());
        assert_eq!(taken.fields.len(), 2);
        assert_eq!(taken.left_out.number(), number);
        assert!(taken.left_out.of_a_link().unwrap().len() < 200);
    }
}

/// As many sections as there may be: it is read, and said once where it cannot be answered.
#[test]
fn a_link_brings_no_more_sections_than_a_piece_has() {
    let section = |number: u32| format!("s{number}_on=yes&s{number}_stitches=90&s{number}_rows=40&s{number}_nosuch=1");
    let sections: Vec<String> = (1..=1_000).map(section).collect();
    let tool = find("yarn").unwrap();
    let taken = tool.take(&route::parse_query(&sections.join("&")));
    assert_eq!(taken.fields.len(), 600);
    let begun = Instant::now();
    let fields = Fields::new(tool.fields, taken.fields, Settings::default());
    let problems = (tool.problems)(&fields);
    println!(
        "200 sections answered in {:?}: {} problems",
        begun.elapsed(),
        problems.len()
    );
}

/// A width in inches is one, and a unit that is none is said beside its field; a choice that is none as well.
#[test]
fn no_link_is_answered_with_another_unit_or_another_choice() {
    let read = |tool: &str, query: &str| {
        let tool = find(tool).unwrap();
        let fields = Fields::new(
            tool.fields,
            tool.take(&route::parse_query(query)).fields,
            Settings::default(),
        );
        (tool.outcome)(&fields)
    };
    let cast_on = |unit: &str| {
        read(
            "cast_on",
            &format!("width=36&width.unit={unit}&gauge=20&gauge.unit=10%20cm"),
        )
    };
    let inches = cast_on("inches").unwrap();
    assert_eq!(inches, cast_on("in").unwrap());
    assert_ne!(inches, cast_on("cm").unwrap());
    assert_eq!(cast_on("inchs").unwrap_err().len(), 1);
    let spacing = |choice: &str| read("spacing", &format!("stitches=132&amount=16&{choice}"));
    assert!(spacing("decrease=ssk").is_ok());
    for strange in ["decrease=nosuch", "knitting=Flat"] {
        assert_eq!(spacing(strange).unwrap_err().len(), 1, "{strange}");
    }
}

#[test]
fn a_field_that_the_table_has_is_taken_and_no_other() {
    let table = find("yarn").unwrap().fields;
    for key in ["s1_stitches", "s200_rows", "ball_mass", "from"] {
        assert!(has(table, key), "{key}");
    }
    for key in [
        "s0_rows",
        "s201_rows",
        "s4294967295_rows",
        "s1_nosuch",
        "",
        "__proto__",
        "ball_mass.unit",
    ] {
        assert!(!has(table, key), "{key}");
    }
    // A place below which a sentence stands is no field.
    let places = table
        .iter()
        .filter(|row| matches!(row.kind, Kind::Whole) && row.group.is_none());
    for place in places {
        let has_field = table
            .iter()
            .any(|row| row.key == place.key && !matches!(row.kind, Kind::Whole));
        assert_eq!(has(table, place.key), has_field, "{}", place.key);
    }
}
