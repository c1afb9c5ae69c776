//! Texts against everything that reads text: nasty ones from a list, broken good ones, random ones, and huge ones.

use crate::readers::measures::{every_reading_is_within_limits, torture};
use loopwright::bounds::Bounds;
use loopwright::gauge::Direction;
use loopwright::tables::needle::read_across;
use loopwright::units::parse::{Wanted, read};
use loopwright::units::{Gauge, Length, LengthUnit, count, gauge_text};
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

#[test]
fn the_list_is_refused_or_within_limits() {
    assert!(nasty().count() >= 300, "the list is shorter than it was");
    for text in nasty() {
        every_reading_is_within_limits(&text);
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
