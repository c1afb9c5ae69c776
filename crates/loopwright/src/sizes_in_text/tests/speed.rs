//! The time that a long pattern takes, and texts that are nothing but brackets.

use super::super::*;
use std::fmt::Write;
use std::time::Instant;

/// A pattern of so many lines and twelve sizes.
fn long(lines: usize) -> String {
    let mut text = String::new();
    for line in 0..lines {
        let numbers: Vec<String> = (1..12).map(|size| (80 + line % 90 + 12 * size).to_string()).collect();
        let numbers = numbers.join(", ");
        let _ = writeln!(
            text,
            "Row {line} (RS): k{} ({numbers}), p2, *k1, p1; rep from * to last st.",
            80 + line % 90
        );
    }
    text
}

/// It is printed, and not a matter of passing: no timing decides whether a test passes. Run it with `--release
/// -- --nocapture`.
#[test]
fn a_pattern_of_five_thousand_lines_and_twelve_sizes_is_read_whole() {
    let text = long(5_000);
    let names: Vec<String> = (1..=12).map(|size| size.to_string()).collect();
    let start = Instant::now();
    let found = find(&text, &names);
    let taken = start.elapsed();
    let shown = pieces(&text, &found, &Hers::one(6), &[]);
    println!(
        "5,000 lines, 12 sizes: found in {taken:?}, with its pieces in {:?}",
        start.elapsed()
    );
    assert_eq!((found.lists.len(), found.doubts().count()), (5_000, 0));
    assert_eq!(
        shown.iter().filter(|piece| piece.kind == PieceKind::Hers).count(),
        5_000
    );
}

/// Each of these would take minutes if a bracket were read to the end of the text from each of its numbers.
#[test]
fn a_long_text_of_one_kind_of_mark_is_read_in_one_pass() {
    for piece in [
        "1 (", "1 (a ", "(", "1,", "1/", "1-", "1 ", ")", "S (", "S,", "((1,", "1 (2, ", "-(", "1 (,", "sizes S,",
    ] {
        let text = piece.repeat(200_000 / piece.len());
        let start = Instant::now();
        let found = find(&text, &["S", "M", "L"]);
        let _ = named(&text);
        println!("{piece:?}: {} lists in {:?}", found.lists.len(), start.elapsed());
        assert_eq!(found.sizes, 3);
    }
}
