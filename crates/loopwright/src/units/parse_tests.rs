//! What people type, and what it must mean: the examples, and the properties that hold for any text.

use super::*;
use crate::units::meant::{Cause, Meant};
use crate::units::{Length, LengthUnit, Mass, MassUnit};
use proptest::prelude::*;

const INCHES: [&str; 33] = [
    "7 1/2",
    "7½",
    "7 ½",
    "7-1/2",
    "7–1/2",
    "7—1/2",
    "7-½",
    "7.5",
    "7,5",
    "7.50",
    "07.5",
    "7 1/2 in",
    "7½in",
    "7 1/2\"",
    "7 1/2”",
    "7 1/2“",
    "7 1/2″",
    "7 1/2''",
    "7 1/2’’",
    "7 1/2 inches",
    "7 1/2 Inches.",
    "7.5-inch",
    "7\u{a0}1/2",
    "7\u{2009}1⁄2",
    "  7 1/2  ",
    "7 1 / 2",
    "7¹⁄₂",
    "7 ⅟2",
    "15/2",
    "７．５",
    "+7.5",
    "7·5",
    "7 4/8",
];

fn inches(text: &str) -> Result<Length, Unreadable> {
    read(text, &Wanted::any(LengthUnit::Inch)).map(|read| read.value)
}

fn metres(text: &str) -> Result<Length, Unreadable> {
    read(text, &Wanted::any(LengthUnit::M)).map(|read| read.value)
}

#[test]
fn seven_and_a_half_inches_in_every_way_of_writing() {
    for text in INCHES {
        assert_eq!(inches(text), Ok(Length::from_sixty_fourths(480)), "{text}");
    }
    for text in ["-7 1/2", "−7½", "- 7.5", "–7-1/2"] {
        assert_eq!(inches(text), Ok(Length::from_sixty_fourths(-480)), "{text}");
    }
    for text in [".5", ",5", "1/2", "½", "0,5", "0 1/2", "⁄".replace('⁄', "1⁄2").as_str()] {
        assert_eq!(inches(text), Ok(Length::from_sixty_fourths(32)), "{text}");
    }
}

#[test]
fn every_single_sign_fraction_is_what_it_says() {
    let signs = "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞↉";
    let parts = "1/4 1/2 3/4 1/7 1/9 1/10 1/3 2/3 1/5 2/5 3/5 4/5 1/6 5/6 1/8 3/8 5/8 7/8 0/3";
    assert_eq!(signs.chars().count(), parts.split(' ').count());
    for (sign, parts) in signs.chars().zip(parts.split(' ')) {
        assert_eq!(inches(&format!("3{sign}")), inches(&format!("3 {parts}")), "{sign}");
    }
}

// The eye would see 132 where 231 stands.
#[test]
fn digits_whose_direction_is_turned_around_are_no_number() {
    for text in ["\u{202e}231", "13\u{202d}2", "\u{2067}132\u{2069}"] {
        assert!(inches(text).is_err(), "{text:?}");
    }
}

#[test]
fn units_are_read_and_kept() {
    let wanted = Wanted::<Length>::any(LengthUnit::Cm);
    for (text, mm, unit) in [
        ("40 mm", 40, LengthUnit::Mm),
        ("4cm", 40, LengthUnit::Cm),
        ("4 centimetres", 40, LengthUnit::Cm),
        ("2 m", 2000, LengthUnit::M),
        ("2 Meters", 2000, LengthUnit::M),
        ("1250 yards", 1_143_000, LengthUnit::Yard),
    ] {
        let value = Length::from_mm(mm);
        assert_eq!(
            read(text, &wanted),
            Ok(Read {
                value,
                unit: Some(unit.into())
            }),
            "{text}"
        );
    }
    let wanted = Wanted::<Mass>::any(MassUnit::Gram);
    assert_eq!(
        read("1 3/4 oz", &wanted).map(|read| read.value),
        Ok(Mass::from_ng(49_611_665_469))
    );
    assert_eq!(read("1 lb", &wanted).map(|read| read.value), Ok(Mass::from_ounces(16)));
}

#[test]
fn thousands_are_asked_about_and_never_guessed() {
    let asked = |text, unit| match read(text, &Wanted::<Length>::any(unit)) {
        Err(Unreadable::Ambiguous(readings)) => (readings.cause, readings.ways().map(Meant::text).collect::<Vec<_>>()),
        other => panic!("{text}: {other:?}"),
    };
    for (text, cause, ways) in [
        ("1,150", Cause::Comma, &["1150 yd", "1.15 yd"][..]),
        ("1,150 m", Cause::Comma, &["1150 m", "1.15 m"]),
        ("1,005", Cause::Comma, &["1005 yd", "1.005 yd"]),
        ("-1,250", Cause::Comma, &["-1250 yd", "-1.25 yd"]),
        ("1.500", Cause::Point, &["1500 yd", "1.5 yd"]),
        ("88 112", Cause::Space, &["88 yd", "112 yd", "88112 yd"]),
    ] {
        assert_eq!(
            asked(text, LengthUnit::Yard),
            (cause, ways.iter().map(|way| (*way).to_owned()).collect()),
            "{text}"
        );
    }
    for (text, mm) in [
        ("1,5", 1500),
        ("1,25", 1250),
        ("1,2500", 1250),
        ("0,125", 125),
        (",125", 125),
        ("2.125", 2125),
        ("0.500", 500),
        ("1000,125", 1_000_125),
        ("1,234.5", 1_234_500),
        ("1.234,5", 1_234_500),
        ("1 234,5", 1_234_500),
        ("1’234.500", 1_234_500),
        ("1,234,567", 1_234_567_000),
        ("1.234.567", 1_234_567_000),
        ("1 000", 1_000_000),
        ("1 000 234", 1_000_234_000),
        ("1'234", 1_234_000),
        ("1 234 1/2", 1_234_500),
    ] {
        assert_eq!(metres(text), Ok(Length::from_mm(mm)), "{text}");
    }
}

#[test]
fn only_what_the_field_accepts_is_asked_about() {
    let most = Length::of(50, LengthUnit::M);
    let wanted = Wanted {
        bounds: Bounds::new(Length::ZERO, most),
        unit: LengthUnit::M,
    };
    let ways = |text| match read(text, &wanted) {
        Err(Unreadable::Ambiguous(readings)) => readings.ways().map(Meant::text).collect::<Vec<_>>(),
        other => panic!("{text}: {other:?}"),
    };
    assert_eq!(ways("1,150"), ["1.15 m"]);
    assert_eq!(ways("20 112"), ["20 m"]);
    assert_eq!(
        read("200,150", &wanted),
        Err(Unreadable::TooLarge {
            most: Amount::Length(most)
        })
    );
    assert_eq!(read("200 150", &wanted), Err(Unreadable::TwoNumbers));
}

#[test]
fn each_kind_of_unreadable() {
    for (text, why) in [
        ("", Unreadable::Empty),
        (" \u{a0}\u{200b}", Unreadable::Empty),
        ("-", Unreadable::Unfinished),
        (".", Unreadable::Unfinished),
        ("7 1/", Unreadable::Unfinished),
        ("7-", Unreadable::Unfinished),
        ("about 7", Unreadable::NotANumber),
        ("NaN", Unreadable::NotANumber),
        ("--7", Unreadable::NotANumber),
        ("1.2.3", Unreadable::NotANumber),
        ("1,23,456", Unreadable::NotANumber),
        ("/2", Unreadable::NotANumber),
        ("1/x", Unreadable::NotANumber),
        ("12 14", Unreadable::TwoNumbers),
        ("88 112 130", Unreadable::TwoNumbers),
        ("7-8", Unreadable::TwoNumbers),
        ("7 to 8 in", Unreadable::TwoNumbers),
        ("12 16/8", Unreadable::TwoNumbers),
        ("7.5 1/2", Unreadable::TwoNumbers),
        ("7½ ½", Unreadable::TwoNumbers),
        ("7 ells", Unreadable::UnknownUnit),
        ("1e5", Unreadable::UnknownUnit),
        ("7 1/0", Unreadable::ZeroDenominator),
        ("0/0", Unreadable::ZeroDenominator),
        (
            "7 oz",
            Unreadable::WrongKind {
                written: MassUnit::Ounce.into(),
                wanted: Dimension::Length,
            },
        ),
    ] {
        assert_eq!(inches(text), Err(why), "{text}");
    }
}

#[test]
fn limits_are_accepted_and_named_beyond() {
    let (least, most) = (Length::INCH, Length::YARD);
    let wanted = Wanted {
        bounds: Bounds::new(least, most),
        unit: LengthUnit::Inch,
    };
    assert_eq!(read("1", &wanted).map(|read| read.value), Ok(least));
    assert_eq!(read("1 yd", &wanted).map(|read| read.value), Ok(most));
    assert_eq!(
        read("0,999", &wanted),
        Err(Unreadable::TooSmall {
            least: Amount::Length(least)
        })
    );
    assert_eq!(
        read("-1", &wanted),
        Err(Unreadable::TooSmall {
            least: Amount::Length(least)
        })
    );
    assert_eq!(
        read("36.000001", &wanted),
        Err(Unreadable::TooLarge {
            most: Amount::Length(most)
        })
    );
    let nines = "9".repeat(1000);
    assert_eq!(
        read(&nines, &wanted),
        Err(Unreadable::TooLarge {
            most: Amount::Length(most)
        })
    );
    assert_eq!(
        read(&format!("-{nines} yd"), &wanted),
        Err(Unreadable::TooSmall {
            least: Amount::Length(least)
        })
    );
    assert_eq!(read(&format!("1/{nines}"), &wanted), Err(Unreadable::NotANumber));
}

#[test]
fn a_number_is_rounded_once_to_the_nearest() {
    assert_eq!(metres("0.0000000014"), Ok(Length::from_nm(1)));
    assert_eq!(metres("0.0000000015"), Ok(Length::from_nm(2)));
    assert_eq!(metres("-0.0000000015"), Ok(Length::from_nm(-2)));
    assert_eq!(inches("1/3"), Ok(Length::from_nm(8_466_667)));
    assert_eq!(
        inches("0.33333333333333333333333333333333"),
        Ok(Length::from_nm(8_466_667))
    );
}

proptest! {
    #[test]
    fn any_text_is_within_the_limits_or_an_error(text in any::<String>(), least: i64, most: i64) {
        let bounds = Bounds::new(Length::from_nm(least), Length::from_nm(most));
        if let Ok(read) = read(&text, &Wanted { bounds, unit: LengthUnit::Inch }) {
            prop_assert!(bounds.allow(read.value));
        }
    }

    #[test]
    fn likely_text_is_within_the_limits_or_an_error(text in "[-+ ]?[0-9½⅞ .,'/⁄–\"]{0,12}( ?(in|cm|m|yd|oz|g|sts)\\.?)?") {
        let bounds = Bounds::new(Length::from_mm(1), Length::from_mm(5000));
        if let Ok(read) = read(&text, &Wanted { bounds, unit: LengthUnit::Cm }) {
            prop_assert!(bounds.allow(read.value));
        }
    }

    #[test]
    fn a_fraction_means_the_same_with_a_space_a_dash_or_as_decimals(whole in 0..10_000_u32, part in 1..64_u32) {
        let spaced = inches(&format!("{whole} {part}/64"));
        prop_assert_eq!(spaced, inches(&format!("{whole}-{part}/64")));
        prop_assert_eq!(spaced, inches(&format!("{}/64", u64::from(whole) * 64 + u64::from(part))));
        // A nought more, so that three decimals are not taken for thousands.
        let decimals = format!("{:.6}0", f64::from(whole) + f64::from(part) / 64.0);
        prop_assert_eq!(spaced, inches(&decimals));
        prop_assert_eq!(spaced, inches(&decimals.replace('.', ",")));
    }
}
