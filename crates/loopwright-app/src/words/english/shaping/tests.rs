//! What a knitter reads, word for word.

use super::*;
use loopwright::shaping::{Ask, Increase, Slope, answer};

fn sentences(question: &Question) -> (String, String, Vec<String>) {
    let answer = answer(question).unwrap();
    let (before, after) = outcome(question, &answer);
    (
        written(&answer.schedule),
        before + " " + &after,
        pair(question, &answer),
    )
}

#[test]
fn the_rows_used_and_both_ends_of_the_pair_are_told() {
    let (line, outcome, pair) = sentences(&Question::about(Ask::Lose(18), 66));
    assert_eq!(
        line,
        "Work a decrease row. Then 7 rows plain, then a decrease row; 8 times. Then 1 row plain."
    );
    assert_eq!(outcome, "65 rows used of 66. You lose 18 stitches");
    assert_eq!(
        pair,
        ["From the right side: K1, ssk, knit to the last 3 stitches, k2tog, K1."]
    );
    let gap = Question {
        first: None,
        stitches: Some(58),
        right_side: false,
        edge: 0,
        slope: Slope::Across,
        ..Question::about(Ask::Lose(18), 73)
    };
    let (line, outcome, pair) = sentences(&gap);
    assert_eq!(
        line,
        "Work 7 rows plain, then a decrease row; 9 times. Then 1 row plain."
    );
    assert_eq!(outcome, "72 rows used of 73. 58 stitches become 40");
    // Every 8th row: all of them are wrong-side rows, worked purlwise.
    assert_eq!(pair, ["From the wrong side: ssp, purl to the last 2 stitches, p2tog."]);
}

/// The bar of a kfb comes behind its stitch: the mirror of "K1, kfb" is "kfb, K2".
#[test]
fn a_kfb_has_one_plain_stitch_more_at_the_end() {
    let question = Question {
        increase: Increase::Kfb,
        knitting: Knitting::Round,
        ..Question::about(Ask::Gain(8), 30)
    };
    let (_, _, pair) = sentences(&question);
    assert_eq!(pair, ["K1, kfb, knit to the last 3 stitches, kfb, K2."]);
    assert_eq!(notes(&question, &answer(&question).unwrap()).len(), 1);
}

#[test]
fn the_least_and_the_most_are_told() {
    let question = Question::about(Ask::Lose(18), 66);
    assert_eq!(
        limits(&question, &answer(&question).unwrap()),
        "In these 66 rows at least 2 (1 decrease row) and at most 66 can go. 18 stitches need 18 rows."
    );
}

#[test]
fn what_is_too_steep_can_be_mended_in_three_fields() {
    let sentences = |question: &Question| -> Vec<String> {
        let problems = answer(question).unwrap_err();
        problems.iter().map(|wrong| problem(question, wrong)).collect()
    };
    let lost = sentences(&Question::about(Ask::Lose(16), 12));
    assert_eq!(
        lost,
        [
            "That many stitches need 16 rows or more.",
            "Or change 4 or more each time.",
            "12 is the most that goes this way. For more, bind off in steps (the tool Steps).",
        ]
    );
    // Nobody binds off to gain.
    let gained = sentences(&Question::about(Ask::Gain(16), 12));
    assert_eq!(
        gained.last().unwrap(),
        "12 is the most that comes this way. For more, cast on in steps."
    );
    let bare = Question {
        stitches: Some(20),
        ..Question::about(Ask::Lose(57), 66)
    };
    assert_eq!(sentences(&bare), ["There are only 20 on the needle."]);
}

#[test]
fn where_a_pair_ends_is_told() {
    let single = Question {
        rest: true,
        ..Question::about(Ask::Lose(25), 68)
    };
    let (_, _, lines) = sentences(&single);
    assert_eq!(lines[1], "In row 67 change one stitch only, at one edge.");
    let narrow = Question {
        stitches: Some(80),
        edge: 3,
        ..Question::about(Ask::Reach(6), 80)
    };
    let (_, _, lines) = sentences(&narrow);
    assert_eq!(lines[1], "From row 79 on there is no room for this.");
}

#[test]
fn where_other_changes_stand_is_told() {
    let of = |each| {
        let question = Question {
            each,
            ..Question::about(Ask::Gain(12), 66)
        };
        notes(&question, &answer(&question).unwrap()).pop()
    };
    assert_eq!(of(1).unwrap(), "Change at one edge, always the same.");
    assert_eq!(of(3).unwrap(), "Spread the changes as your pattern says.");
}

#[test]
fn the_sum_names_every_gap() {
    let question = Question::about(Ask::Lose(18), 70);
    assert_eq!(
        steps(&question, &answer(&question).unwrap()),
        [
            "18 ÷ 2 = 9 decrease rows.",
            "68 rows are shared between 8 gaps: 6 of 8 and 2 of 10, a decrease row at the end of each.",
        ]
    );
}

/// Every 8th row from a wrong-side row is a wrong-side row, and is listed as one.
#[test]
fn the_side_of_a_row_is_the_one_that_faces_her() {
    let wrong = Question {
        knitting: Knitting::Flat { next: Side::Wrong },
        right_side: false,
        ..Question::about(Ask::Lose(18), 66)
    };
    let rows = crate::words::schedule::listed(&answer(&wrong).unwrap().schedule, 2);
    assert_eq!(rows[..2], ["Row 1 (WS): 2 fewer in all", "Row 9 (WS): 4 fewer in all"]);
    let right = Question {
        right_side: true,
        ..wrong
    };
    let found = answer(&right).unwrap();
    let rows = crate::words::schedule::listed(&found.schedule, 1);
    assert_eq!(rows[0], "Row 2 (RS): 2 fewer in all");
}

/// In 67 rows the gaps of right-side rows leave one row more than was asked for, and it is told where.
#[test]
fn the_row_that_does_not_fit_is_told() {
    let sentences = |rows| {
        let question = Question::about(Ask::Lose(18), rows);
        notes(&question, &answer(&question).unwrap())
    };
    assert_eq!(
        sentences(67),
        ["Right-side rows are two rows apart, so 2 plain rows stay at the end."]
    );
    assert!(sentences(66).is_empty());
}
