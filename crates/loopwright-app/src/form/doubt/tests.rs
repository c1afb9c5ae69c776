//! What is said and offered beside fields of every kind.

use super::*;
use crate::form::{NEEDLE, Settings, TAPE, WEIGHT};
use crate::store;
use loopwright::units::{LengthUnit, Mass};

const LONG: Bounds<Length> = Bounds::new(Length::from_mm(1), Length::of(10, LengthUnit::M));

const TABLE: &[Field] = &[
    Field::gauge().beside("rows").named("stitches", None, ""),
    Field::gauge().of_rows().beside("stitches").named("rows", None, ""),
    Field::gauge().named("only", None, ""),
    Field::gauges().named("spots", None, ""),
    Field::length(&NEEDLE, loopwright::tail::NEEDLE).named("needle", None, ""),
    Field::length(&TAPE, LONG).kept(Kept::Bust).named("bust", None, ""),
    Field::length(&TAPE, LONG).named("width", None, ""),
    Field::mass(&WEIGHT, Bounds::new(Mass::ZERO, Mass::from_grams(10_000))).named("ball", None, ""),
];

fn fields(typed: &[(&str, &str, &str)], settings: &[(&str, &str)]) -> Fields {
    let typed = typed
        .iter()
        .map(|(key, text, unit)| ((*key).to_owned(), Typed::with_unit(*text, *unit)));
    let settings = settings
        .iter()
        .map(|(key, text)| ((*key).to_owned(), Typed::plain(*text)));
    Fields::new(
        TABLE,
        typed.collect::<store::Fields>(),
        Settings::new(settings.collect()),
    )
}

/// What is said beside a field, and what its taps say and write.
fn seen(fields: &Fields, key: &str) -> Vec<(String, String)> {
    let field = TABLE.iter().find(|field| field.key == key).unwrap();
    let one = |beside: Beside| {
        let said = [
            beside.sentence.as_str(),
            if beside.mark.is_empty() { "" } else { " " },
            beside.mark,
        ]
        .concat();
        let written = beside
            .tap
            .map_or_else(String::new, |Tap { label, typed, .. }| match typed {
                Some(Typed { text, unit }) => [&label, " -> ", &text, " | ", unit.as_deref().unwrap_or("")].concat(),
                None => label,
            });
        (said.replace('\u{a0}', " "), written.replace('\u{a0}', " "))
    };
    beside(fields, field).into_iter().map(one).collect()
}

fn of_one(key: &str, text: &str, unit: &str) -> Vec<(String, String)> {
    seen(&fields(&[(key, text, unit)], &[("length", "cm")]), key)
}

fn said(sentence: &str) -> Vec<(String, String)> {
    vec![(sentence.to_owned(), String::new())]
}

fn tapped(tap: &str) -> Vec<(String, String)> {
    vec![(String::new(), tap.to_owned())]
}

#[test]
fn a_needle_typed_by_its_number_shows_its_millimetres() {
    assert_eq!(of_one("needle", "us 6", "mm"), said("US 6 (4 mm) from memory"));
    assert_eq!(
        of_one("needle", "5 US", "mm"),
        said("US 5 (3.75 mm) read in its source")
    );
    let quoted = "US 7 (4.5 mm) as others quote it; the source itself was not read";
    assert_eq!(of_one("needle", "7 US", "mm"), said(quoted));
    assert_eq!(of_one("needle", "UK 8", "mm"), said("UK 8 (4 mm) from memory"));
    assert_eq!(of_one("needle", "11", "mm"), tapped("US 11 (8 mm)? -> US 11 | mm"));
    for text in ["4", "4 mm", "10½", "US 12", "six", ""] {
        assert_eq!(of_one("needle", text, "mm"), [], "{text}");
    }
}

#[test]
fn what_was_left_in_the_wrong_unit_is_a_tap_away() {
    assert_eq!(of_one("bust", "38 1/4", "cm"), tapped("38 1/4 in? -> 38 1/4 | in"));
    assert_eq!(of_one("bust", "38", "cm"), tapped("38 in? -> 38 | in"));
    assert_eq!(of_one("width", "7 1/2", "cm"), tapped("7 1/2 in? -> 7 1/2 | in"));
    assert_eq!(of_one("ball", "1 3/4", "g"), tapped("1 3/4 oz? -> 1 3/4 | oz"));
    for (key, text) in [("bust", "96.5"), ("bust", "38 1/4 in"), ("width", "38"), ("ball", "50")] {
        assert_eq!(of_one(key, text, "cm"), [], "{text}");
    }
    // Shown converted, it is no longer in doubt.
    let switched = fields(&[("bust", "38 1/4", "cm")], &[("length", "in")]);
    assert_eq!(seen(&switched, "bust"), []);
}

#[test]
fn a_gauge_that_nobody_knits_may_be_over_an_inch() {
    assert_eq!(
        of_one("stitches", "5.5", "10 cm"),
        tapped("5.5 over 1 in? -> 5.5 | 1 in")
    );
    assert_eq!(
        of_one("spots", "5 1/2, 5.25", "4 in"),
        tapped("5 1/2, 5.25 over 1 in? -> 5 1/2, 5.25 | 1 in")
    );
    assert_eq!(of_one("only", "32", "1 in"), tapped("32 over 4 in? -> 32 | 4 in"));
    for text in ["22", "21, 22", "5.5 in 10 cm"] {
        assert_eq!(of_one("spots", text, "10 cm"), [], "{text}");
    }
    assert_eq!(of_one("spots", "5.5, 22", "10 cm"), []);
}

#[test]
fn how_a_label_was_read_is_said() {
    assert_eq!(
        of_one("only", "21-22", "10 cm"),
        said("Read as 21.5, the middle of 21 to 22.")
    );
    assert_eq!(
        of_one("only", "22 sts = 4 in", "10 cm"),
        said("Read over 4 in, as you typed it.")
    );
    assert_eq!(of_one("only", "22 sts = 10 cm", "10 cm"), []);
    assert_eq!(
        of_one("only", "22 x 30", "10 cm"),
        said("The 30 rows are not needed here.")
    );
}

#[test]
fn what_a_label_names_for_the_field_beside_it_is_shown_there() {
    let label = ("stitches", "20 sts and 28 rows", "10 cm");
    let filled = [("Filled in from “20 sts and 28 rows”.".to_owned(), "Clear it".to_owned())];
    assert_eq!(seen(&fields(&[label, ("rows", "28", "10 cm")], &[]), "rows"), filled);
    let take = tapped("Use 28, from “20 sts and 28 rows” -> 28 | 10 cm");
    for beside in [
        &[label][..],
        &[label, ("rows", "31", "10 cm")],
        &[label, ("rows", "", "10 cm")],
    ] {
        assert_eq!(seen(&fields(beside, &[]), "rows"), take);
        assert_eq!(seen(&fields(beside, &[]), "stitches"), []);
    }
    let backwards = fields(&[("rows", "20 sts and 28 rows", "4 in")], &[]);
    assert_eq!(
        seen(&backwards, "stitches"),
        tapped("Use 20, from “20 sts and 28 rows” -> 20 | 4 in")
    );
}

#[test]
fn a_tap_to_the_other_unit_shows_that_unit_beside_the_field() {
    let chosen = |settings: &[(&str, &str)]| {
        let fields = fields(&[("bust", "38 1/4", "cm")], settings);
        let field = TABLE.iter().find(|field| field.key == "bust").unwrap();
        let taps = beside(&fields, field).into_iter().filter_map(|beside| beside.tap);
        taps.map(|tap| tap.chosen).collect::<Vec<_>>()
    };
    let inches = Entry::new(SETTINGS, "length", Some(Typed::plain("in")));
    assert_eq!(chosen(&[]), [Some(inches.clone())]);
    assert_eq!(chosen(&[("length", "cm")]), [Some(inches)]);
    // The unit beside the field follows the text.
    assert_eq!(chosen(&[("measures", "metric")]), [None]);
}

#[test]
fn a_needle_typed_before_us_needles_were_chosen_has_the_us_needle_a_tap_away() {
    let beside =
        |unit: &str, measures: &str| seen(&fields(&[("needle", "6", unit)], &[("measures", measures)]), "needle");
    assert_eq!(beside("mm", "inches"), tapped("US 6 (4 mm)? -> US 6 | mm"));
    assert_eq!(beside("mm", "metric"), []);
    // Typed since then it is asked about below the field.
    assert_eq!(beside("us", "inches"), []);
}
