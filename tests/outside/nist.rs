//! The exact conversions of inch, yard, ounce and pound, as NIST publishes them.
//!
//! Source: NIST Special Publication 811, appendix B.8, and NIST Handbook 44, appendix C, section 4. Neither
//! table was read; what is as others quote it and what is from memory is in the README beside this file.

use crate::marks::{Marked, rows, value};
use loopwright::tables::{Certainty, Taken};
use loopwright::units::parse::{Wanted, read};
use loopwright::units::{Length, LengthUnit, Mass, MassUnit, Measure};

/// How sure each value is that is checked here.
pub const MARKS: &[Marked] = &[
    rows(Taken::Conversions, "oz, lb", Certainty::Quoted),
    rows(Taken::Conversions, "in, yd", Certainty::FromMemory),
    value(
        "metre in yards, 4 in against 10 cm, 50 g in ounces, circular lengths",
        Certainty::Computed,
    ),
];

/// The value of a text, in whichever unit it names.
fn length(text: &str) -> Length {
    read(text, &Wanted::any(LengthUnit::M)).expect(text).value
}

/// The value of a text, in whichever unit it names.
fn mass(text: &str) -> Mass {
    read(text, &Wanted::any(MassUnit::Gram)).expect(text).value
}

/// From memory: 1 in = 2.54 cm exactly.
#[test]
fn inch() {
    assert_eq!(Length::INCH.to_nm(), 25_400_000);
    assert_eq!(length("1 in"), length("2.54 cm"));
    assert_eq!(length("100 in"), length("2.54 m"));
}

/// From memory: 1 yd = 0.9144 m exactly. Computed: it is 36 in.
#[test]
fn yard() {
    assert_eq!(Length::YARD.to_nm(), 914_400_000);
    assert_eq!(length("1 yd"), length("0.9144 m"));
    assert_eq!(length("1 yd"), length("36 in"));
}

/// Computed: 1 m = 1/0.9144 yd = 1.0936132983 yd, to ten decimals.
#[test]
fn metre_in_yards() {
    let yards = Length::of(1, LengthUnit::M).in_unit(LengthUnit::Yard);
    assert!((yards - 1.093_613_298_3).abs() < 5e-11, "{yards}");
}

/// As others quote it: 1 lb = 453.592 37 g exactly.
#[test]
fn pound() {
    assert_eq!(Mass::per_unit(MassUnit::Pound), 453_592_370_000);
    assert_eq!(mass("1 lb"), mass("453.59237 g"));
}

/// As others quote it: 1 oz = 28.349 523 125 g exactly. Computed: it is a pound over sixteen.
#[test]
fn ounce() {
    assert_eq!(Mass::OUNCE.to_ng(), 28_349_523_125);
    assert_eq!(mass("1 oz"), mass("28.349523125 g"));
    assert_eq!(mass("16 oz"), mass("1 lb"));
}

/// Computed: 4 in = 10.16 cm, so the label "4 in / 10 cm" is off by 1.6 %.
#[test]
fn four_inches_are_not_ten_centimetres() {
    let (inches, label) = (length("4 in"), length("10 cm"));
    assert_eq!(inches, length("10.16 cm"));
    assert_eq!(
        inches.saturating_sub(label).saturating_mul(1000),
        label.saturating_mul(16)
    );
}

/// Computed: 50 g = 50/28.349523125 oz = 1.7637 oz, to four decimals; labels say 1.75.
#[test]
fn a_ball_of_fifty_grams() {
    let ounces = Mass::from_grams(50).in_unit(MassUnit::Ounce);
    assert!((ounces - 1.7637).abs() < 5e-5, "{ounces}");
    assert!(mass("50 g") > mass("1 3/4 oz"));
}

/// Computed from 25.4 mm: what the lengths on circular needles are exactly; their labels are nominal.
#[test]
fn circular_needles() {
    for (inches, cm) in [
        ("9 in", "22.86 cm"),
        ("12 in", "30.48 cm"),
        ("16 in", "40.64 cm"),
        ("20 in", "50.8 cm"),
        ("24 in", "60.96 cm"),
        ("29 in", "73.66 cm"),
        ("32 in", "81.28 cm"),
        ("36 in", "91.44 cm"),
        ("40 in", "101.6 cm"),
        ("47 in", "119.38 cm"),
        ("60 in", "152.4 cm"),
    ] {
        assert_eq!(length(inches), length(cm), "{inches}");
    }
}
