//! What is said of schedules, word for word.

use super::*;
use loopwright::shaping::{Ask, Question, answer};

#[test]
fn plain_rows_come_first_and_the_whole_is_told() {
    let exact = answer(&Question::about(Ask::Lose(18), 66)).unwrap().schedule;
    assert_eq!(
        written(&exact),
        "Work a decrease row. Then 7 rows plain, then a decrease row; 8 times. Then 1 row plain."
    );
    assert_eq!(
        listed(&exact, 2),
        ["Row 1 (RS): 2 fewer in all", "Row 9 (RS): 4 fewer in all", "…"]
    );
}

/// One row alone may change fewer than each row should, and nothing else would tell.
#[test]
fn a_row_that_is_alone_says_what_it_changes() {
    let question = Question {
        each: 3,
        rest: true,
        ..Question::about(Ask::Gain(2), 12)
    };
    let exact = answer(&question).unwrap().schedule;
    assert_eq!(
        written(&exact),
        "Work an increase row of 2 stitches. Then 11 rows plain."
    );
}

/// Steep, then gentle; and each rate that is there once says when, not how often.
#[test]
fn the_trade_counts_from_the_shaping_row_before() {
    let phrase_of = |question: &Question| phrase(&answer(question).unwrap().schedule).unwrap();
    let lose = |rows| phrase_of(&Question::about(Ask::Lose(18), rows));
    assert_eq!(lose(66), "now, then every 8th row 8 times more");
    assert_eq!(
        lose(70),
        "now, then every 8th row 6 times more, then every 10th row twice"
    );
    assert_eq!(
        lose(68),
        "now, then every 8th row 7 times more, then once 10 rows later"
    );
    let round = Question {
        knitting: Knitting::Round,
        first: Some(2),
        ..Question::about(Ask::Gain(4), 9)
    };
    assert_eq!(phrase_of(&round), "in round 3, then once 5 rounds later");
    let once = Question {
        ask: Ask::Gain(2),
        ..round
    };
    assert_eq!(phrase_of(&once), "once, in round 3");
    let every_round = Question { rows: 11, ..round };
    let every_round = Question {
        ask: Ask::Gain(16),
        ..every_round
    };
    assert_eq!(phrase_of(&every_round), "in round 3, then every round 7 times more");
    let block = |plain, times| Block {
        plain,
        change: 2,
        times,
    };
    let turns = |blocks: &[Block]| Schedule {
        knitting: Knitting::Round,
        stitches: None,
        gain: true,
        blocks: blocks.to_vec(),
        left: 1,
    };
    let of_three = turns(&[block(0, 1), block(5, 1), block(7, 2), block(5, 1), block(7, 2)]);
    assert_eq!(
        phrase(&of_three).unwrap(),
        "now. Then twice over: 6 rounds later, then every 8th round twice"
    );
    let of_two = turns(&[block(2, 1), block(1, 1), block(3, 1), block(1, 1)]);
    assert_eq!(
        phrase(&of_two).unwrap(),
        "in round 3, then 2 rounds later, then 4 rounds later, then 2 rounds later"
    );
    let cut_short = turns(&[
        block(2, 1),
        block(0, 2),
        block(1, 1),
        block(0, 2),
        block(1, 1),
        block(0, 1),
    ]);
    assert_eq!(
        phrase(&cut_short).unwrap(),
        "in round 3. Then 3 times over: every round twice, then 2 rounds later; 8 in all"
    );
    let of_five = turns(&[block(2, 1), block(0, 4), block(1, 1), block(0, 4), block(1, 1)]);
    assert_eq!(
        phrase(&of_five).unwrap(),
        "in round 3. Then twice over: every round 4 times, then 2 rounds later"
    );
    // A turn of more than eight is a list, and so is a long one that does not come twice.
    let of_nine = turns(&[block(2, 1), block(0, 8), block(1, 1), block(0, 8), block(1, 1)]);
    assert_eq!(phrase(&of_nine), None);
    let not_twice = turns(&[block(2, 1), block(0, 4), block(1, 1), block(0, 3)]);
    assert_eq!(phrase(&not_twice), None);
    // More than two rates are a list.
    let uneven = turns(&[block(0, 1), block(5, 1), block(7, 2), block(5, 2), block(7, 2)]);
    assert_eq!(phrase(&uneven), None);
}

#[test]
fn ordinals_are_those_of_the_language() {
    let numbers = [1, 2, 3, 4, 11, 12, 13, 21, 22, 103, 111, 113];
    let words = numbers.map(ordinal);
    assert_eq!(
        words,
        [
            "1st", "2nd", "3rd", "4th", "11th", "12th", "13th", "21st", "22nd", "103rd", "111th", "113th"
        ]
    );
}

#[test]
fn a_round_is_a_round_and_a_last_one_may_differ() {
    let question = Question {
        stitches: Some(40),
        rest: true,
        knitting: Knitting::Round,
        first: None,
        ..Question::about(Ask::Gain(3), 9)
    };
    let exact = answer(&question).unwrap().schedule;
    assert_eq!(
        written(&exact),
        "Work 3 rounds plain, then an increase round of 2 stitches. Then 3 rounds plain, then an increase round of 1 stitch. Then 1 round plain."
    );
    assert_eq!(listed(&exact, 9)[1], "Round 8: 43 stitches");
}
