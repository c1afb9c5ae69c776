//! What a knitter reads, word for word.

use super::*;
use loopwright::shaping::{Ask, Increase, Slope, answer};

fn sentences(question: &Question) -> (String, String, Vec<String>) {
    let answer = answer(question).unwrap();
    let (before, after) = outcome(question, &answer);
    (
        headline(question, &answer),
        before + " " + &after,
        pair(question, &answer),
    )
}

#[test]
fn the_rows_used_and_both_ends_of_the_pair_are_told() {
    let (line, outcome, pair) = sentences(&Question::about(Ask::Lose(18), 66));
    assert_eq!(line, "Decrease now, then every 8th row 8 times more.");
    assert_eq!(outcome, "The last change is in row 65 of 66. You lose 18 stitches");
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
    assert_eq!(line, "Decrease in row 8, then every 8th row 8 times more.");
    assert_eq!(outcome, "The last change is in row 72 of 73. 58 stitches become 40");
    // Every 8th row: all of them are wrong-side rows, worked purlwise.
    assert_eq!(pair, ["From the wrong side: ssp, purl to the last 2 stitches, p2tog."]);
}

/// The trade's phrase comes first, and the one convention tells the same in full.
#[test]
fn the_trades_phrase_comes_first() {
    let question = Question::about(Ask::Lose(26), 110);
    let found = answer(&question).unwrap();
    assert_eq!(
        headline(&question, &found),
        "Decrease now, then every 8th row 6 times more, then every 10th row 6 times."
    );
    assert_eq!(
        in_full(&found).unwrap(),
        "In full: Work a decrease row. Then 7 rows plain, then a decrease row; 6 times. Then 9 rows plain, then a decrease row; 6 times. Then 1 row plain."
    );
    let any = Question {
        right_side: false,
        ..question
    };
    assert_eq!(
        headline(&any, &answer(&any).unwrap()),
        "Decrease now, then every 9th row 12 times more."
    );
    let once = Question::about(Ask::Gain(2), 12);
    let found = answer(&once).unwrap();
    assert_eq!(
        (headline(&once, &found), in_full(&found)),
        ("Increase 2 once, now.".into(), None)
    );
    let rest = Question {
        rest: true,
        ..Question::about(Ask::Lose(25), 68)
    };
    let sentence = headline(&rest, &answer(&rest).unwrap());
    assert!(sentence.ends_with("; only 1 in the last."), "{sentence}");
}

/// In the round no row is named.
#[test]
fn in_the_round_all_is_told_in_rounds() {
    let question = Question {
        knitting: Knitting::Round,
        ..Question::about(Ask::Lose(18), 66)
    };
    let found = answer(&question).unwrap();
    let mut sentences = vec![
        headline(&question, &found),
        key(&question, &found),
        outcome(&question, &found).0,
    ];
    sentences.extend(in_full(&found));
    let steep = Question {
        knitting: Knitting::Round,
        ..Question::about(Ask::Lose(66), 66)
    };
    sentences.extend(limits(&steep, &answer(&steep).unwrap()));
    sentences.extend(pair(&question, &found));
    sentences.extend(steps(&question, &found));
    sentences.extend(notes(&question, &found));
    sentences.push(crate::words::schedule::one_by_one(question.knitting).into());
    assert!(
        sentences
            .iter()
            .all(|sentence| !sentence.to_lowercase().contains("row")),
        "{sentences:?}"
    );
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
fn the_most_and_the_fewest_are_told_where_rows_are_tight() {
    let limits = |lost| {
        let question = Question::about(Ask::Lose(lost), 66);
        limits(&question, &answer(&question).unwrap())
    };
    assert_eq!((limits(18), limits(32)), (None, None));
    assert_eq!(
        limits(40).unwrap(),
        "At most 66 stitches could go in these 66 rows; 40 need at least 40 rows."
    );
}

/// A piece that only loses has no mark for what it gains.
#[test]
fn the_key_tells_the_marks_that_are_there() {
    let key = |ask| {
        let question = Question::about(ask, 66);
        key(&question, &answer(&question).unwrap())
    };
    assert!(key(Ask::Lose(18)).starts_with("▼ fewer, with the number of its row."));
    assert!(key(Ask::Gain(18)).starts_with("△ more, with the number of its row."));
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
            "So many stitches need 16 rows or more.",
            "Or change 4 or more in each shaping row.",
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
    assert_eq!(lines[1], "From row 79 on there are too few stitches for this.");
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
    assert_eq!(of(1).unwrap(), "Work every change at the same edge.");
    assert_eq!(of(3).unwrap(), "Spread the changes as your pattern says.");
}

#[test]
fn the_sum_names_every_gap() {
    let question = Question::about(Ask::Lose(18), 70);
    assert_eq!(
        steps(&question, &answer(&question).unwrap()),
        [
            "18 ÷ 2 = 9 decrease rows.",
            "70 − 1 − 1 = 68 rows are shared between 8 gaps: 6 of 8 and 2 of 10, a decrease row at the end of each.",
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
