//! Needle sizes. Numbers are fixed by no standard, and makers differ.
//!
//! Source of the ends of its ranges: Craft Yarn Council. Those of classes 0 to 2 were read in its guide "YDKWYDK: A
//! guide to yarn weights". For class 3 the guide prints US 3-5 once more, a misprint: 3.75 to 4.5 mm are 5-7 in a copy
//! of the table. 7, 9 and 11 are as that copy has them. Everything else is from memory, and the table says so row by
//! row.

use crate::marks::{Marked, all, rows};
use loopwright::needles::{Question, Size, answer};
use loopwright::tables::needle::{NEEDLES, System, japanese};
use loopwright::tables::{Certainty, Source, Taken};
use loopwright::units::Length;

/// How sure each value is that is checked here.
pub const MARKS: &[Marked] = &[
    rows(Taken::UsNumbers, "000, 1, 3, 5", Certainty::Read),
    rows(Taken::UsNumbers, "7, 9, 11", Certainty::Quoted),
    rows(
        Taken::UsNumbers,
        "00, 0, 1 1/2, 2, 2 1/2, 4, 6, 8, 10, 10 1/2, 10 3/4, 13, 15, 17, 17, 19, 19, 35, 36, 50",
        Certainty::FromMemory,
    ),
    all(Taken::UkNumbers, Certainty::FromMemory),
    all(Taken::JapaneseNumbers, Certainty::FromMemory),
    all(Taken::Circulars, Certainty::FromMemory),
];

/// Millimetres and US numbers at the ends of the council's ranges, and whether the guide has them or a copy.
const COUNCIL: [(&str, &str, Certainty); 7] = [
    ("1.5", "000", Certainty::Read),
    ("2.25", "1", Certainty::Read),
    ("3.25", "3", Certainty::Read),
    ("3.75", "5", Certainty::Read),
    ("4.5", "7", Certainty::Quoted),
    ("5.5", "9", Certainty::Quoted),
    ("8", "11", Certainty::Quoted),
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
    for (mm, us, certainty) in COUNCIL {
        let across = sizes(mm, System::Metric)[0];
        assert!(sizes(us, System::Us).contains(&across), "{mm} {us}");
        let row = NEEDLES.iter().find(|row| row.across == across).expect(mm);
        assert_eq!(row.us_source.certainty(), certainty, "{mm}");
    }
}

#[test]
fn what_the_council_does_not_print_is_from_memory() {
    let is_remembered = |source: Source| source.certainty() == Certainty::FromMemory;
    let surer = NEEDLES.iter().filter(|row| !is_remembered(row.us_source));
    assert_eq!(surer.count(), COUNCIL.len());
    assert!(NEEDLES.iter().all(|row| is_remembered(row.uk_source)));
}

#[test]
fn japanese_numbers_rise_by_three_tenths() {
    for (number, tenths) in (0..).zip(JAPANESE) {
        let across = Length::from_nm(tenths * 100_000);
        assert_eq!(japanese(number), Some(across));
        assert_eq!(sizes(&format!("JP {number}"), System::Metric), [across]);
    }
}
