//! The classes of yarn as the Craft Yarn Council prints them.
//!
//! Source: Craft Yarn Council, Standard Yarn Weight System: the guide "YDKWYDK: A guide to yarn weights", which was
//! read for classes 0 to 3, and a copy of the table by others for 4 and 5. What is from memory is marked at each row.

use crate::marks::{Marked, all, rows, value};
use loopwright::tables::yarn_weight::{CLASSES, Place, Weight, place};
use loopwright::tables::{Certainty, Taken};
use loopwright::units::{Gauge, Length, LengthUnit};

/// How sure each value is that is checked here.
pub const MARKS: &[Marked] = &[
    rows(Taken::YarnClasses, "0, 1, 2, 3", Certainty::Read),
    rows(Taken::YarnClasses, "4, 5", Certainty::Quoted),
    rows(Taken::YarnClasses, "6, 7", Certainty::FromMemory),
    all(Taken::Wraps, Certainty::FromMemory),
    value("that needles meet where classes meet", Certainty::FromMemory),
    value("20 in 10 cm against 4 in", Certainty::Computed),
];

/// Stitches in 4 in, hundredths of a millimetre of needle, wraps in an inch, and how sure stitches and needle are.
/// Wraps are all from memory, no source: the copies of the table have none, others add other numbers. An end that is
/// missing is open.
type Row = (Weight, Range, Range, Range, Certainty);
type Range = (Option<u32>, Option<u32>);

const TABLE: [Row; 8] = {
    use Certainty::{FromMemory, Quoted, Read};
    use Weight::*;
    const fn to(least: u32, most: u32) -> Range {
        (Some(least), Some(most))
    }
    [
        (Lace, to(33, 40), to(150, 225), (Some(30), None), Read),
        (SuperFine, to(27, 32), to(225, 325), to(14, 30), Read),
        (Fine, to(23, 26), to(325, 375), to(12, 18), Read),
        (Light, to(21, 24), to(375, 450), to(11, 15), Read),
        (Medium, to(16, 20), to(450, 550), to(9, 12), Quoted),
        (Bulky, to(12, 15), to(550, 800), to(6, 9), Quoted),
        (SuperBulky, to(7, 11), to(800, 1275), to(5, 6), FromMemory),
        (Jumbo, (None, Some(6)), (Some(1275), None), to(1, 4), FromMemory),
    ]
};

fn four_inches(thousandths: u32) -> Place {
    place(Gauge::new(thousandths, Gauge::FOUR_INCHES).expect("above zero"))
}

#[test]
fn table() {
    let mm = |hundredths: Option<u32>| hundredths.map(|count| Length::from_nm(i64::from(count) * 10_000));
    for (number, (weight, stitches, needle, wraps, certainty)) in TABLE.into_iter().enumerate() {
        let ours = CLASSES[number];
        assert_eq!((usize::from(ours.number), ours.weight), (number, weight));
        assert_eq!((ours.stitches.least, ours.stitches.most), stitches, "{weight:?}");
        assert_eq!(
            (ours.needle.least, ours.needle.most),
            (mm(needle.0), mm(needle.1)),
            "{weight:?}"
        );
        assert_eq!((ours.wraps.least, ours.wraps.most), wraps, "{weight:?}");
        assert_eq!(
            (ours.source.certainty(), ours.wraps_source.certainty()),
            (certainty, Certainty::FromMemory)
        );
    }
}

/// Read in its source: 23-26 is Fine and 21-24 is Light, so that 23 and 24 are both.
#[test]
fn overlap() {
    let both = Place::Within {
        thicker: Weight::Light,
        thinner: Weight::Fine,
    };
    assert_eq!(four_inches(23_000), both);
    assert_eq!(four_inches(24_000), both);
    assert_ne!(four_inches(22_999), both);
    assert_ne!(four_inches(24_001), both);
}

/// As others quote it: Medium ends at 20. Read in its source: Light begins at 21, so that 20 1/2 is neither.
#[test]
fn gap() {
    let between = Place::Between {
        thicker: Weight::Medium,
        thinner: Weight::Light,
    };
    assert_eq!(four_inches(20_500), between);
    assert_ne!(four_inches(20_000), between);
    assert_ne!(four_inches(21_000), between);
}

/// Computed: 20 in 10 cm is 20.32 in 4 in, so a gauge over 10 cm may fall into a gap that its label does not show.
#[test]
fn ten_centimetres_are_not_four_inches() {
    assert_eq!(place(Gauge::of(20, Gauge::TEN_CM)), four_inches(20_320));
    assert_ne!(four_inches(20_000), four_inches(20_320));
}

/// From memory: sizes of needles meet where classes meet.
#[test]
fn needles_meet() {
    for pair in CLASSES.windows(2) {
        assert_eq!(pair[0].needle.most, pair[1].needle.least);
    }
    let thickest = CLASSES[7].needle;
    assert_eq!(
        (thickest.least, thickest.most),
        (Length::from_f64(12.75, LengthUnit::Mm), None)
    );
}
