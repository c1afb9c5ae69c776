//! Needle sizes. Numbers are fixed by no standard, and makers differ.
//!
//! Source: Craft Yarn Council, Standard Yarn Weight System, for the ends of its ranges, seen on 2026-11-25. Everything else
//! is from memory, and the table says so row by row.

use loopwright::needles::{Question, Size, answer};
use loopwright::tables::Certainty;
use loopwright::tables::needle::{NEEDLES, System, japanese};
use loopwright::units::Length;

/// Seen: millimetres and US numbers at the ends of the council's ranges.
const COUNCIL: [(&str, &str); 7] = [
    ("1.5", "000"),
    ("2.25", "1"),
    ("3.25", "3"),
    ("3.75", "5"),
    ("4.5", "7"),
    ("5.5", "9"),
    ("8", "11"),
];

/// From memory: Japanese numbers 0 to 15, in tenths of a millimetre.
const JAPANESE: [i64; 16] = [21, 24, 27, 30, 33, 36, 39, 42, 45, 48, 51, 54, 57, 60, 63, 66];

fn sizes(text: &str, system: System) -> Vec<Length> {
    let size = Size::read(text, system).expect(text);
    let needles = answer(&Question { size }).expect(text).needles;
    needles.iter().map(|needle| needle.across).collect()
}

#[test]
fn the_ends_of_the_councils_ranges_are_in_the_table() {
    for (mm, us) in COUNCIL {
        let across = sizes(mm, System::Metric)[0];
        assert!(sizes(us, System::Us).contains(&across), "{mm} {us}");
        let row = NEEDLES.iter().find(|row| row.across == across).expect(mm);
        assert_eq!(row.us_certainty, Certainty::Seen, "{mm}");
    }
}

#[test]
fn what_the_council_does_not_print_is_from_memory() {
    let seen = NEEDLES.iter().filter(|row| row.us_certainty == Certainty::Seen);
    assert_eq!(seen.count(), COUNCIL.len());
    assert!(NEEDLES.iter().all(|row| row.uk_certainty != Certainty::Seen));
}

#[test]
fn japanese_numbers_rise_by_three_tenths() {
    for (number, tenths) in (0..).zip(JAPANESE) {
        let across = Length::from_nm(tenths * 100_000);
        assert_eq!(japanese(number), Some(across));
        assert_eq!(sizes(&format!("JP {number}"), System::Metric), [across]);
    }
}
