//! What people type for a needle, and how thick it then is, or what they are asked.

use super::*;
use crate::tail::NEEDLE;
use proptest::prelude::*;

fn across(text: &str) -> Result<Length, Unreadable> {
    read_across(text, NEEDLE).map(|read| read.across)
}

fn mm(hundredths: i64) -> Length {
    Length::from_nm(hundredths * 10_000)
}

/// Why it is asked about, and the texts to choose from.
fn asked(text: &str) -> (Cause, Vec<String>) {
    match across(text) {
        Err(Unreadable::Ambiguous(readings)) => (readings.cause, readings.ways().map(Meant::text).collect()),
        other => panic!("{text}: {other:?}"),
    }
}

#[test]
fn a_number_of_a_named_system_is_read_in_every_way_of_writing() {
    for (texts, hundredths) in [
        (
            &[
                "US 6",
                "6 US",
                "US6",
                "6us",
                "us 6",
                "U.S. 6",
                "US size 6",
                "size 6 US",
                "US #6",
                "USA 6",
                "US no. 6",
            ][..],
            400,
        ),
        (
            &["us 10½", "US 10 1/2", "10.5 US", "US10-1/2", "US 10,5", "10½ us"][..],
            650,
        ),
        (&["UK 8", "8 UK", "uk8", "old UK 8", "Canadian 8", "U.K. 8"][..], 400),
        (&["US 000", "000 us"][..], 150),
        (&["UK 000"][..], 1000),
        (&["JP 8", "8 JP", "Japanese 8"][..], 450),
        (&["4 mm", "4mm", "4", "4,0", "4.0 MM", "size 4 mm"][..], 400),
        (
            &[
                "US 7 (4.5 mm)",
                "4.5 mm (US 7)",
                "US 7/4.5 mm",
                "US 7 / 4.5mm",
                "4.5 mm/US 7",
                "US 7 = UK 7 = 4.5 mm",
                "7 (4.5 mm)",
            ][..],
            450,
        ),
        (&["US 8/5 mm", "US 8 / 5 mm"][..], 500),
        (&["US 10 1/2 / 6.5 mm", "US 10½/6.5 mm", "US 10 1/2 (6.5 mm)"][..], 650),
        // The millimetres say which of the two needles of that number it is.
        (&["US 17 (12.75 mm)", "US 17/12.75mm"][..], 1275),
    ] {
        for text in texts {
            assert_eq!(across(text), Ok(mm(hundredths)), "{text}");
        }
    }
}

#[test]
fn every_number_of_every_system_is_its_own_needle_before_and_behind() {
    for system in System::ALL {
        let rows = system.numbered();
        for row in &rows {
            let prefix = system.prefix().unwrap();
            for text in [format!("{prefix} {}", row.number), format!("{} {prefix}", row.number)] {
                match across(&text) {
                    Ok(read) => assert_eq!(read, row.across, "{text}"),
                    Err(_) => assert!(
                        rows.iter().filter(|other| other.number == row.number).count() == 2,
                        "{text}"
                    ),
                }
            }
        }
    }
    for needle in super::super::NEEDLES {
        let text = Meant::millimetres(needle.across).text();
        assert_eq!(across(&text), Ok(needle.across));
        // The number alone is millimetres too, in decimals: none of these is asked about.
        assert_eq!(across(text.trim_end_matches(" mm")), Ok(needle.across), "{text}");
    }
}

#[test]
fn a_half_in_a_field_of_millimetres_is_asked_about() {
    let either = |first: &str, second: &str| (Cause::NeedleSystem, vec![first.to_owned(), second.to_owned()]);
    for text in ["10½", "10 1/2", "10.5", "10,5"] {
        assert_eq!(asked(text), either("10.5 mm", "US 10 1/2"), "{text}");
    }
    assert_eq!(asked("2½"), either("2.5 mm", "US 2 1/2"));
    // 2.5 mm is sold, and decimals are how millimetres are written.
    assert_eq!(across("2.5"), Ok(mm(250)));
    // No needle is called 5 1/2.
    assert_eq!(across("5½"), Ok(mm(550)));
    assert_eq!(asked("000"), either("US 000", "UK 000"));
    assert_eq!(asked("0"), either("US 0", "UK 0"));
}

#[test]
fn what_is_tapped_is_read_in_one_way() {
    for text in ["10½", "2½", "10 3/4", "000", "00", "0", "US 17", "US 12", "UK 16"] {
        let Err(Unreadable::Ambiguous(readings)) = across(text) else {
            panic!("{text}")
        };
        for way in readings.ways() {
            let wanted = match way {
                Meant::Length { value, .. } => value,
                Meant::Needle { across, .. } => across,
                Meant::Count(_) | Meant::Mass { .. } => panic!("{way:?}"),
            };
            assert_eq!(across(&way.text()), Ok(wanted), "{text}");
        }
    }
}

#[test]
fn a_number_of_two_needles_or_of_none_is_asked_about() {
    assert_eq!(
        asked("US 17"),
        (Cause::TwoNeedles, vec!["12 mm".to_owned(), "12.75 mm".to_owned()])
    );
    assert_eq!(
        asked("US 12"),
        (Cause::NoSuchNeedle, vec!["US 11".to_owned(), "US 13".to_owned()])
    );
    assert_eq!(asked("UK 16"), (Cause::NoSuchNeedle, vec!["UK 15".to_owned()]));
}

#[test]
fn a_thickness_that_is_not_sold_may_be_a_number() {
    let also = |text| read_across(text, NEEDLE).unwrap().also.map(Meant::text);
    assert_eq!(also("11"), Some("US 11".to_owned()));
    assert_eq!(across("11"), Ok(mm(1100)));
    assert_eq!(
        (also("6"), also("4.5"), also("11 mm"), also("US 11"), also("14")),
        (None, None, None, None, None)
    );
}

#[test]
fn what_is_no_needle_says_why() {
    for (text, why) in [
        ("", Unreadable::Empty),
        ("US", Unreadable::Unfinished),
        ("10 1/", Unreadable::Unfinished),
        ("seven", Unreadable::NotANumber),
        ("US six", Unreadable::NotANumber),
        ("bus 6", Unreadable::NotANumber),
        ("US 6 mm", Unreadable::TwoNumbers),
        ("US 7 (4 mm)", Unreadable::TwoNumbers),
        ("4 or 5", Unreadable::TwoNumbers),
        ("US 6 or 7", Unreadable::TwoNumbers),
        (
            "60 mm",
            Unreadable::TooLarge {
                most: NEEDLE.most.amount(),
            },
        ),
        (
            "0.2",
            Unreadable::TooSmall {
                least: NEEDLE.least.amount(),
            },
        ),
    ] {
        assert_eq!(across(text), Err(why), "{text}");
    }
}

proptest! {
    #[test]
    fn no_text_makes_it_panic(text in "[-0-9usjpkmo ./½()=,#]{0,14}", any: String) {
        for text in [text, any] {
            if let Ok(read) = read_across(&text, NEEDLE) {
                prop_assert!(NEEDLE.allow(read.across));
            }
        }
    }
}

/// The same, where needles are known by their US numbers.
fn asked_beside_us(text: &str) -> Option<(Cause, Vec<String>)> {
    match read_across_as(text, NEEDLE, Bare::MillimetresOrUs) {
        Err(Unreadable::Ambiguous(readings)) => Some((readings.cause, readings.ways().map(Meant::text).collect())),
        Err(_) | Ok(_) => None,
    }
}

#[test]
fn beside_us_needles_a_number_that_is_one_is_asked_about() {
    for (text, ways) in [
        ("6", ["US 6", "6 mm"]),
        ("4.0", ["US 4", "4 mm"]),
        ("10½", ["US 10 1/2", "10.5 mm"]),
        ("size 8", ["US 8", "8 mm"]),
    ] {
        let ways = ways.map(String::from).to_vec();
        assert_eq!(asked_beside_us(text), Some((Cause::NeedleSystem, ways)), "{text}");
    }
    let ways = ["12 mm", "12.75 mm", "17 mm"].map(String::from).to_vec();
    assert_eq!(asked_beside_us("17"), Some((Cause::TwoNeedles, ways)));
    // Thinner than any needle: only the number is left.
    assert_eq!(asked_beside_us("0"), Some((Cause::NeedleSystem, vec!["US 0".into()])));
}

#[test]
fn beside_us_needles_every_way_of_a_number_is_one_that_is_read() {
    for row in System::Us.numbered() {
        let (_, ways) = asked_beside_us(&row.number.to_string()).unwrap();
        for way in ways {
            assert!(read_across_as(&way, NEEDLE, Bare::MillimetresOrUs).is_ok(), "{way}");
        }
    }
}

#[test]
fn beside_us_needles_a_unit_a_system_or_no_us_number_leaves_no_doubt() {
    for text in [
        "6 mm",
        "US 6",
        "6 US",
        "UK 8",
        "3.5",
        "3.25",
        "12",
        "US 7 (4.5 mm)",
        "six",
        "US 12",
        "99",
    ] {
        let plain = read_across(text, NEEDLE);
        assert_eq!(read_across_as(text, NEEDLE, Bare::MillimetresOrUs), plain, "{text}");
    }
}
