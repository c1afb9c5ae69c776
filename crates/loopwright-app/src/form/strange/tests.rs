//! Units and choices that are none, in fields of every kind.

use super::*;
use crate::fields;
use crate::form::{NEEDLE, Settings, TAPE, WEIGHT};
use crate::store;
use loopwright::bounds::Bounds;
use loopwright::problem::Kind as Wrong;
use loopwright::spacing::Decrease;
use loopwright::units::{Length, LengthUnit, Mass, MassUnit};

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Name {
    Width,
    Weight,
    Needle,
    Gauge,
    Sizes,
    Stitches,
    Decrease,
    Hidden,
}

loopwright::field_names!(Name {
    Width = "width",
    Weight = "weight",
    Needle = "needle",
    Gauge = "gauge",
    Sizes = "sizes",
    Stitches = "stitches",
    Decrease = "decrease",
    Hidden = "hidden",
});

const fn label(_: Name) -> &'static str {
    ""
}

const fn never(_: &Fields) -> bool {
    false
}

const LENGTHS: Bounds<Length> = Bounds::new(Length::ZERO, Length::of(1_000, LengthUnit::M));
const WEIGHTS: Bounds<Mass> = Bounds::new(Mass::ZERO, Mass::of(10, MassUnit::Kilogram));

fields! { FIELDS of Name, label;
    Width => Field::length(&TAPE, LENGTHS),
    Weight => Field::mass(&WEIGHT, WEIGHTS),
    Needle => Field::length(&NEEDLE, LENGTHS),
    Gauge => Field::gauge(),
    Sizes => Field::lengths(""),
    Stitches => Field::count(Bounds::new(1, 100)),
    Decrease => Field::choice::<Decrease>(),
    Hidden => Field::choice::<Decrease>().only_if(never),
}

fn fields(key: &str, typed: Typed) -> Fields {
    Fields::new(
        FIELDS,
        store::Fields::from([(key.to_owned(), typed)]),
        Settings::default(),
    )
}

fn strange(key: &str, text: &str, unit: &str) -> Vec<Wrong> {
    let problems = fields(key, Typed::with_unit(text, unit)).strange();
    problems.into_iter().map(|problem| problem.kind).collect()
}

/// What a width comes to, in inches.
fn inches(unit: &str) -> Option<Length> {
    TAPE.read_any(&Typed::with_unit("36", unit))
}

#[test]
fn a_unit_beside_a_number_is_read_by_any_of_its_names() {
    for inch in ["inches", "inch", "in", "Inches", "in.", "\"", "”", " in "] {
        assert_eq!(inches(inch), Some(Length::from_inches(36)), "{inch}");
    }
    assert_eq!(inches("mm"), Some(Length::from_mm(36)));
    assert_eq!(inches("yards"), Some(Length::from_inches(36 * 36)));
    for usual in ["cm", "centimetres", "", " "] {
        assert_eq!(inches(usual), Some(Length::from_mm(360)), "{usual}");
    }
    let needle = |unit: &str| NEEDLE.read(&Typed::with_unit("1/4", unit), LENGTHS);
    assert_eq!(needle("inch"), Ok(Length::from_sixty_fourths(16)));
    assert_eq!(
        NEEDLE.read(&Typed::with_unit("4", "millimetres"), LENGTHS),
        Ok(Length::from_mm(4))
    );
}

#[test]
fn a_unit_that_is_none_is_said_and_never_another_one() {
    for (key, unit) in [
        ("width", "inchs"),
        ("width", "oz"),
        ("width", "4 in"),
        ("weight", "cm"),
        ("needle", "inchs"),
        ("gauge", "in"),
        ("gauge", "18 cm"),
        ("sizes", "mm"),
        ("sizes", "inchs"),
        ("stitches", "cm"),
        ("stitches", "f"),
    ] {
        assert!(
            matches!(strange(key, "36", unit)[..], [Wrong::Unreadable(_)]),
            "{key} {unit}"
        );
        let fields = fields(key, Typed::with_unit("36", unit));
        let (_, field) = fields.stored_as(key).unwrap();
        assert!(!field.takes(&Typed::with_unit("36", unit)), "{key} takes {unit}");
        let said = fields.strange_sentence(fields.path_of(field)).unwrap();
        assert!(said.contains(&page_quoted(unit)) && said.ends_with('.'), "{said}");
        // What stands there is told as it stands, with the unit that it has.
        let standing = fields.standing(field).unwrap();
        let has_unit = matches!(field.kind, Kind::Count(_) | Kind::List(_)) || standing.ends_with(unit);
        assert!(standing.starts_with("36") && has_unit, "{standing}");
    }
}

fn page_quoted(text: &str) -> String {
    crate::words::page::quoted(text)
}

#[test]
fn a_unit_that_is_known_is_not_strange() {
    for (key, unit) in [
        ("width", "yd"),
        ("weight", "Pounds"),
        ("needle", "us"),
        ("needle", "mm"),
        ("gauge", "4 inches"),
        ("sizes", "inches"),
        ("stitches", "sts"),
        ("decrease", "cm"),
    ] {
        let text = if key == "decrease" { "ssk" } else { "36" };
        assert_eq!(strange(key, text, unit), [], "{key} {unit}");
    }
    // An empty field says nothing.
    assert_eq!(strange("width", " ", "inchs"), []);
}

#[test]
fn a_choice_that_is_none_is_said_and_kept() {
    for text in ["nosuch", "SSK", "k2tog "] {
        let fields = fields("decrease", Typed::plain(text));
        let (_, field) = fields.stored_as("decrease").unwrap();
        assert_eq!(
            fields.strange(),
            [Problem::new(Name::Decrease, Wrong::NotOffered)],
            "{text}"
        );
        assert_eq!(fields.strange_choice(field), Some(text));
        assert_eq!(fields.standing(field).as_deref(), Some(text.trim()));
        let said = fields.strange_sentence(Name::Decrease.into()).unwrap();
        assert!(said.contains(text.trim()) && said.contains("ssk"), "{said}");
    }
    for text in ["ssk", "", " "] {
        assert_eq!(fields("decrease", Typed::plain(text)).strange(), [], "{text}");
    }
    // What is not asked counts nothing.
    assert_eq!(fields("hidden", Typed::plain("nosuch")).strange(), []);
}
