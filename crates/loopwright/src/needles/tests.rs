//! Each obvious reading beside the right one, and what holds for every needle.

use super::*;
use crate::problem::Kind;
use crate::tables::needle::{NEEDLES, Number, System};
use crate::tail::NEEDLE;
use crate::units::Length;
use crate::units::meant::Meant;
use crate::units::parse::Unreadable;
use proptest::prelude::*;

fn mm(hundredths: i64) -> Length {
    Length::from_nm(hundredths * 10_000)
}

fn sized(size: Size) -> Vec<Needle> {
    answer(&Question { size }).unwrap().needles
}

fn numbers(needle: &Needle, system: System) -> Vec<String> {
    let named = needle.named.iter().filter(|named| named.system == system);
    named
        .map(|named| named.number.map_or(String::new(), |number| number.to_string()))
        .collect()
}

#[test]
fn needles_are_never_rounded() {
    for hundredths in [225, 275, 325, 375, 1275] {
        assert_eq!(sized(Size::Metric(mm(hundredths)))[0].across, mm(hundredths));
    }
    // The obvious print with one decimal makes 2.3 of 2.25, which no system has.
    let exact = &sized(Size::Metric(mm(225)))[0];
    let rounded = &sized(Size::Metric(mm(230)))[0];
    let off = |needle: &Needle| {
        needle
            .named
            .iter()
            .filter(|named| named.system != System::Japanese)
            .any(|named| named.off != Length::ZERO)
    };
    assert!(!off(exact) && off(rounded));
    assert_eq!(Size::read("2,25", System::Metric), Ok(Size::Metric(mm(225))));
}

#[test]
fn a_number_may_stand_for_two_needles_and_a_needle_for_none() {
    let seventeen = sized(Size::Us(Number::whole(17)));
    assert_eq!(
        seventeen.iter().map(|needle| needle.across).collect::<Vec<_>>(),
        [mm(1200), mm(1275)]
    );
    let thin = &sized(Size::Metric(mm(250)))[0];
    assert_eq!(numbers(thin, System::Us), ["1 1/2"]);
    // No UK number at 2.5 mm: 13 and 12 are equally near, and both are said.
    assert_eq!(numbers(thin, System::Uk), ["13", "12"]);
    // No UK number is so thick, and none is made up.
    assert!(numbers(&sized(Size::Metric(mm(1200)))[0], System::Uk).is_empty());
    let japanese = &sized(Size::Japanese(Number::whole(5)))[0];
    assert_eq!((japanese.across, japanese.hole), (mm(360), Some(mm(375))));
    assert_eq!(
        (numbers(japanese, System::Us), numbers(japanese, System::Uk)),
        (vec!["4".into()], vec!["9".into()])
    );
}

#[test]
fn the_same_number_is_another_needle_in_the_other_system() {
    // The obvious reading drops the system: US 8 is 5 mm, UK 8 is 4 mm. Only 7 is the same in both.
    for number in 0..=15 {
        let us = NEEDLES.iter().find(|row| row.us == Some(Number::whole(number)));
        let uk = NEEDLES.iter().find(|row| row.uk == Some(Number::whole(number)));
        if let (Some(us), Some(uk)) = (us, uk) {
            assert_eq!(us.across == uk.across, number == 7, "{number}");
        }
    }
}

#[test]
fn a_shaft_without_a_number_lies_between_two_holes() {
    let could = |passes| {
        let found = sized(Size::Hole(mm(passes)));
        found.iter().map(|needle| needle.across).collect::<Vec<_>>()
    };
    // It passes 3.75 and not 3.5: 3.75, or a Japanese 5 of 3.6; the obvious answer is the hole alone.
    assert_eq!(could(375), [mm(360), mm(375)]);
    assert_eq!(could(4_000), [mm(4_000)]);
    let five = &sized(Size::Metric(mm(360)))[0];
    assert_eq!((five.stops, five.hole), (Some(mm(350)), Some(mm(375))));
}

#[test]
fn sizes_are_read_as_they_are_written() {
    let read = |text| Size::read(text, System::Us);
    assert_eq!(read("10.5"), Ok(Size::Us(Number::quarters(42))));
    assert_eq!(read("10 3/4"), Ok(Size::Us(Number::quarters(43))));
    assert_eq!(read(" 00 "), Ok(Size::Us(Number::noughts(2))));
    assert_eq!(read("0"), Ok(Size::Us(Number::whole(0))));
    assert_eq!(read("UK13"), Ok(Size::Uk(Number::whole(13))));
    assert_eq!(read("JP 8"), Ok(Size::Japanese(Number::whole(8))));
    assert_eq!(read("3 3/4 mm"), Ok(Size::Metric(mm(375))));
    for text in ["", "US", "x", "10 1/3", "-2", "ü7"] {
        assert!(read(text).is_err(), "{text}");
    }
}

#[test]
fn the_neighbours_of_a_named_number_are_named_too() {
    for system in [System::Metric, System::Us, System::Uk] {
        let Err(Unreadable::Ambiguous(readings)) = Size::read("12 US", system) else {
            panic!("{system:?}");
        };
        let ways: Vec<String> = readings.ways().map(Meant::text).collect();
        // A bare 11 would be another needle beside millimetres.
        assert_eq!(ways, ["US 11", "US 13"]);
    }
}

#[test]
fn a_number_that_no_needle_has_names_its_neighbours() {
    let wrong = |size| {
        let problems = answer(&Question { size }).unwrap_err();
        problems[0].kind
    };
    let near = |below, above| Kind::NoExact { below, above };
    assert_eq!(wrong(Size::Us(Number::whole(12))), near(Some(11), Some(13)));
    assert_eq!(wrong(Size::Us(Number::whole(60))), near(Some(50), None));
    assert_eq!(wrong(Size::Uk(Number::whole(20))), near(Some(15), None));
    assert_eq!(wrong(Size::Japanese(Number::quarters(2))), near(Some(0), Some(1)));
    assert_eq!(wrong(Size::Us(Number::noughts(9))), near(None, Some(0)));
    assert_eq!(wrong(Size::Japanese(Number::whole(16))), near(Some(15), None));
    assert!(matches!(wrong(Size::Metric(mm(6_000))), Kind::TooLarge { .. }));
}

proptest! {
    #[test]
    fn the_nearest_of_a_system_is_nearest(hundredths in 50_i64..3_000) {
        let needle = &sized(Size::Metric(mm(hundredths)))[0];
        for named in &needle.named {
            prop_assert_eq!(named.off, named.across.saturating_sub(needle.across));
            let number = |row: &&crate::tables::needle::Needle| match named.system {
                System::Us => row.us.is_some(),
                System::Uk => row.uk.is_some(),
                System::Metric | System::Japanese => named.system == System::Metric,
            };
            let off = |row: &crate::tables::needle::Needle| row.across.saturating_sub(needle.across).to_nm().abs();
            let least = NEEDLES.iter().filter(number).map(off).min();
            prop_assert!(least.is_none_or(|least| named.off.to_nm().abs() == least));
            prop_assert!(least.is_some() || named.off.to_nm().abs() <= 1_500_000);
        }
        prop_assert!(needle.hole.is_none_or(|hole| hole >= needle.across));
    }

    #[test]
    fn each_number_is_found_again(quarters in -3_i16..300) {
        let number = Number::quarters(quarters);
        for (system, size) in [(System::Us, Size::Us(number)), (System::Uk, Size::Uk(number))] {
            prop_assert_eq!(Size::read(&number.to_string(), system), Ok(size));
            let found = answer(&Question { size });
            for needle in found.iter().flat_map(|answer| &answer.needles) {
                prop_assert!(numbers(needle, system).contains(&number.to_string()));
            }
        }
    }

    #[test]
    fn nothing_panics(nm: i64, quarters: i16, text in ".*") {
        let (across, number) = (Length::from_nm(nm), Number::quarters(quarters));
        let within = Length::from_nm(nm % NEEDLE.most.to_nm());
        let metric = [Size::Metric(across), Size::Hole(across), Size::Metric(within), Size::Hole(within)];
        for size in metric.into_iter().chain([Size::Us(number), Size::Uk(number), Size::Japanese(number)]) {
            let _ = answer(&Question { size });
        }
        let _ = Size::read(&text, System::Us);
    }
}
