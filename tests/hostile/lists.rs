//! Texts against the reader of printed lists: pieces of lists put together badly, random ones, and huge ones.

use crate::readers::lists::every_number_is_used_or_pointed_at as account;
use loopwright::bounds::Bounds;
use loopwright::sizing::{read_counts, read_sizes};
use loopwright::units::LengthUnit;
use proptest::prelude::*;
use std::time::Instant;

/// Pieces that lists are made of.
const PIECES: [&str; 48] = [
    "86",
    "91",
    "7",
    "132",
    "150",
    "1",
    "½",
    "1/2",
    "7/8",
    "⁷⁄₈",
    "²",
    "٣",
    "96,5",
    "(",
    ")",
    "[",
    "]",
    "{",
    "}",
    ",",
    ", ",
    ":",
    ": ",
    ";",
    "/",
    " / ",
    "-",
    "–",
    " - ",
    " ",
    "\n",
    "\u{a0}",
    "=",
    "+",
    "x",
    "×",
    "•",
    "cm",
    "\"",
    "”",
    "in",
    " to ",
    " and ",
    "S",
    "XL",
    "2X",
    "to fit",
    "finished",
];

#[test]
fn every_line_of_the_nasty_list() {
    for text in crate::text::nasty() {
        account(&text);
        account(&format!("81 (86, {text})"));
    }
}

/// A list as long as a book is answered. The time is told, and decides nothing.
#[test]
fn a_list_as_long_as_a_book_is_answered() {
    for piece in PIECES.into_iter().chain([
        "1 a ", "a 1 ", "a) cm ", "86-", "86, ", "(86 ", "S: ", "1/2/", "1,150,", "- - ",
    ]) {
        let text = piece.repeat(100_000 / piece.len());
        let start = Instant::now();
        let _ = read_sizes(&text, LengthUnit::Cm);
        let _ = read_counts(&text, Bounds::new(0, u32::MAX));
        let took = start.elapsed();
        println!("{piece:?}, {} bytes of it: {took:?}", text.len());
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, cases: 4000, ..ProptestConfig::default() })]

    #[test]
    fn random_text_drops_no_number(text in any::<String>(), signs in "[0-9SMLXcmin(){}\\[\\],.:;/ \n½\"+x×–-]{0,40}") {
        account(&text);
        account(&signs);
    }

    #[test]
    fn pieces_of_lists_put_together_badly_drop_no_number(
        pieces in prop::collection::vec(prop::sample::select(&PIECES[..]), 0..24),
    ) {
        account(&pieces.concat());
    }
}
