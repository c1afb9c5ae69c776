//! The most even order against published Euclidean patterns.
//!
//! Source: G. T. Toussaint, "The Euclidean algorithm generates traditional musical rhythms", BRIDGES, Banff 2005,
//! pp. 47-56. The patterns were read in a public README that quotes the paper's list, not in the paper itself.
//! A pattern of k strokes on n beats is a round of n stitches with k changes that use one stitch each (kfb). Different
//! codes begin a pattern at different strokes, so two are the same when one is a turn of the other.

use crate::marks::{Marked, all, value};
use loopwright::spacing::{Ask, Increase, Knitting, Order, Question, answer};
use loopwright::tables::{Certainty, Taken};

/// How sure each value is that is checked here.
pub const MARKS: &[Marked] = &[
    all(Taken::MostEven, Certainty::FromMemory),
    value("21 patterns", Certainty::Quoted),
    value("five on sixteen, corrected", Certainty::Quoted),
    value("that a pattern is a turn of ours", Certainty::Computed),
];

/// As others quote it: strokes, beats and pattern.
const PATTERNS: [(u32, u32, &str); 21] = [
    (2, 3, "x.x"),
    (2, 5, "x.x.."),
    (3, 4, "x.xx"),
    (3, 5, "x.x.x"),
    (3, 7, "x.x.x.."),
    (3, 8, "x..x..x."),
    (4, 7, "x.x.x.x"),
    (4, 9, "x.x.x.x.."),
    (4, 11, "x..x..x..x."),
    (5, 6, "x.xxxx"),
    (5, 7, "x.xx.xx"),
    (5, 8, "x.xx.xx."),
    (5, 9, "x.x.x.x.x"),
    (5, 11, "x.x.x.x.x.."),
    (5, 12, "x..x.x..x.x."),
    (7, 8, "x.xxxxxx"),
    (7, 12, "x.xx.x.xx.x."),
    (7, 16, "x..x.x.x..x.x.x."),
    (9, 16, "x.xx.x.x.xx.x.x."),
    (11, 24, "x..x.x.x.x.x..x.x.x.x.x."),
    (13, 24, "x.xx.x.x.x.x.xx.x.x.x.x."),
];

/// The order this crate gives, as strokes and beats.
fn ours(strokes: u32, beats: u32) -> String {
    let question = Question {
        ask: Ask::Increases(strokes),
        increase: Increase::Kfb,
        knitting: Knitting::Round { end_on_change: true },
        ..Question::about(beats)
    };
    let answer = answer(&question).expect("as many changes as there are stitches fit");
    let even = answer
        .ways
        .iter()
        .find(|way| way.order == Order::MostEven)
        .expect("always offered");
    let mut pattern = vec!['.'; beats as usize];
    for change in even.row.changes() {
        pattern[usize::try_from(change.after).expect("small")] = 'x';
    }
    pattern.into_iter().collect()
}

fn is_a_turn_of(pattern: &str, other: &str) -> bool {
    pattern.len() == other.len() && other.repeat(2).contains(pattern)
}

#[test]
fn the_most_even_order_is_the_published_pattern_up_to_a_turn() {
    for (strokes, beats, pattern) in PATTERNS {
        let ours = ours(strokes, beats);
        assert!(
            is_a_turn_of(&ours, pattern),
            "{strokes} on {beats}: {ours} against {pattern}"
        );
    }
}

/// As others quote it, corrected: five on sixteen in a public test. The paper's own is a misprint, 17 beats long.
#[test]
fn five_on_sixteen_is_the_corrected_pattern() {
    assert!(is_a_turn_of(&ours(5, 16), "x..x..x..x..x..."));
}

/// The comparison itself can fail.
#[test]
fn an_uneven_pattern_is_no_turn_of_ours() {
    assert!(!is_a_turn_of(&ours(5, 8), "xxx.x.x."));
}
