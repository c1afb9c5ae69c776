//! Texts against everything that reads text: nasty ones from a list, broken good ones, random ones, and huge ones.

use loopwright::bounds::Bounds;
use loopwright::gauge::Direction;
use loopwright::tables::needle::read_across;
use loopwright::units::parse::{Unreadable, Wanted, read};
use loopwright::units::print::{Step, print, with_unit};
use loopwright::units::switch::Typed;
use loopwright::units::{Gauge, Length, LengthUnit, Mass, MassUnit, Measure, count, gauge_text};
use proptest::prelude::*;
use std::time::{Duration, Instant};

/// Texts that have brought readers down, each for its own reason. The file is read line by line; `\u{..}` stands for
/// a character.
const NASTY: &str = include_str!("nasty.txt");

/// Pieces that good texts are made of, to be put together badly.
const PIECES: [&str; 36] = [
    "7", "0", "00", "132", "000", "1/2", "½", "⅞", "⅟", "/", "⁄", "¹", "²", "₂", ".", ",", "'", "’", "-", "–", "+",
    " ", "\u{a0}", "\u{202f}", "\u{200b}", "in", "\"", "”", "''", "cm", "yd", "g", "oz", "sts", "x", "to",
];

/// The lines of the list, with `\u{..}` turned into the character.
pub fn nasty() -> impl Iterator<Item = String> {
    NASTY.lines().filter(|line| !line.starts_with("# ")).map(|line| {
        let mut parts = line.split("\\u{");
        let mut text = parts.next().unwrap_or_default().to_owned();
        for part in parts {
            let (code, rest) = part.split_once('}').expect("a closing brace");
            let code = u32::from_str_radix(code, 16).expect("a hexadecimal code");
            text.push(char::from_u32(code).expect("a character"));
            text.push_str(rest);
        }
        text
    })
}

/// Reads the text as every quantity in every unit within these limits, and shows it in every unit.
fn torture(text: &str, least: i64, most: i64) {
    for unit in LengthUnit::ALL {
        measure::<Length>(text, unit, least, most, &LengthUnit::ALL);
    }
    for unit in MassUnit::ALL {
        measure::<Mass>(text, unit, least, most, &MassUnit::ALL);
    }
    let needles = Bounds::new(Length::from_nm(least), Length::from_nm(most));
    if let Ok(read) = read_across(text, needles) {
        assert!(needles.allow(read.across), "{text:?} gave {:?}", read.across);
    }
    if let Ok(read) = gauge_text::read(text, Gauge::TEN_CM) {
        let named = [Direction::Stitches, Direction::Rows].map(|direction| read.of(direction));
        let accepted = |gauge: Gauge| (1_000..=400_000).contains(&gauge.thousandths());
        assert!(
            named.into_iter().flatten().all(|counted| accepted(counted.gauge)),
            "{text:?}"
        );
    }
    let (few, many) = (least as u32, most as u32);
    let bounds = Bounds::new(few, many);
    match count::read(text, bounds) {
        Ok(read) => assert!(bounds.allow(read.value), "{text:?} gave {}", read.value),
        Err(Unreadable::NotWhole { below, above }) if few <= many => {
            assert!(
                bounds.allow(below) && bounds.allow(above) && below <= above,
                "{text:?}: {below} to {above}"
            );
        }
        Err(_) => {}
    }
}

/// Reads the text as one quantity, prints what was read, and switches the units of what was typed.
fn measure<T: Measure + PartialEq>(text: &str, unit: T::Unit, least: i64, most: i64, all: &[T::Unit]) {
    let bounds = Bounds::new(T::from_base(least), T::from_base(most));
    if let Ok(read) = read(text, &Wanted { bounds, unit }) {
        assert!(bounds.allow(read.value), "{text:?} gave {:?}", read.value);
        for step in Step::ALL {
            assert!(with_unit(read.value, unit, step).starts_with(&print(read.value, unit, step)));
        }
    }
    let typed = Typed::<T>::new(text, unit);
    for &other in all {
        let shown = typed.shown_in(other, Step::Tenth).into_owned();
        assert!(other != unit || shown == text, "{text:?} became {shown:?}");
    }
}

#[test]
fn the_list_is_refused_or_within_limits() {
    assert!(nasty().count() >= 300, "the list is shorter than it was");
    for text in nasty() {
        torture(&text, 0, 100_000_000_000);
        torture(&text, i64::MIN, i64::MAX);
        torture(&text, 1, 0);
    }
}

/// Every way of cutting and doubling good texts.
#[test]
fn good_texts_cut_short_or_doubled() {
    for good in [
        "7 1/2 in",
        "−7–1⁄2”",
        "1,234.5 m",
        "1 000 000,25 cm",
        "7¹⁄₂″",
        "132 (144, 156) sts",
        "⅟8 yards",
    ] {
        let marks: Vec<char> = good.chars().collect();
        for start in 0..marks.len() {
            for end in start..=marks.len() {
                let piece: String = marks[start..end].iter().collect();
                torture(&piece, 0, i64::MAX);
                torture(&piece.repeat(2), 0, i64::MAX);
            }
        }
    }
}

/// Every character of the first plane and a sample of the others, alone and around a number.
#[test]
fn every_character() {
    let wanted = Wanted::<Length>::any(LengthUnit::Inch);
    for mark in ('\0'..='\u{ffff}').chain(('\u{10000}'..=char::MAX).step_by(251)) {
        for text in [
            mark.to_string(),
            format!("7{mark}"),
            format!("{mark}7"),
            format!("7{mark}5"),
        ] {
            let _ = (read(&text, &wanted), count::read(&text, Bounds::new(0, u32::MAX)));
        }
    }
}

/// A megabyte of anything is answered in a moment: the work grows with the length, not with its square.
#[test]
fn a_megabyte_is_answered_in_a_moment() {
    let pieces = [
        "9", "0", " ", "1 000 ", "1,000,", " 000", ",000", "'000", "1/", "½", "-", ".", "in ", "\u{200b}", "¹", "🧶",
        "x 1",
    ];
    for piece in pieces {
        let text = format!("1{}", piece.repeat(1_000_000 / piece.len()));
        let start = Instant::now();
        let _ = read(&text, &Wanted::<Length>::any(LengthUnit::M));
        let _ = count::read(&text, Bounds::new(0, u32::MAX));
        let _ = read_across(&text, Bounds::new(Length::ZERO, Length::MAX));
        let _ = gauge_text::read_several(&text, Gauge::TEN_CM, Direction::Stitches);
        let took = start.elapsed();
        // Far above what it takes even unoptimised on a busy machine, far below what a square would take.
        assert!(took < Duration::from_secs(20), "{piece:?} took {took:?}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, cases: 2000, ..ProptestConfig::default() })]

    #[test]
    fn random_text(text in any::<String>(), least: i64, most: i64) {
        torture(&text, least, most);
    }

    #[test]
    fn good_pieces_put_together_badly(
        pieces in prop::collection::vec(prop::sample::select(&PIECES[..]), 0..9),
        least: i64,
        most: i64,
    ) {
        torture(&pieces.concat(), least, most);
        torture(&pieces.concat(), i64::MIN, i64::MAX);
    }
}
