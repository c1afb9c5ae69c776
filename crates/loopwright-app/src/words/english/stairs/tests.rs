//! What a knitter reads, word for word.

use super::*;
use loopwright::stairs::{Ask, answer};

fn sentences(question: &Question) -> (String, Vec<String>) {
    let answer = answer(question).unwrap();
    (headline(question, &answer), listed(question, &answer))
}

#[test]
fn a_shoulder_is_bound_off_at_the_start_of_its_rows() {
    let question = Question::about(27, Ask::Steps(4));
    let (line, rows) = sentences(&question);
    assert_eq!(line, "Bind off 7, 7, 7, 6, each at the start of a right-side row.");
    assert_eq!(rows[0], "Row 1 (RS): bind off 7; 7 of 27 gone");
    assert_eq!(rows[3], "Row 7 (RS): bind off 6; 27 of 27 gone");
    let rows = Question {
        edge: Edge::Left,
        ..Question::about(27, Ask::Rows(9))
    };
    assert_eq!(
        sentences(&rows).0,
        "Bind off 7, 7, 7, 6, each at the start of a wrong-side row. Then 1 row plain."
    );
}

#[test]
fn one_step_is_not_each() {
    let (line, _) = sentences(&Question::about(25, Ask::Steps(1)));
    assert_eq!(line, "Bind off 25 at the start of a right-side row.");
}

#[test]
fn the_sum_says_which_steps_are_larger() {
    let of = |stitches, place| {
        let question = Question {
            place,
            ..Question::about(stitches, Ask::Steps(4))
        };
        steps(&question, &answer(&question).unwrap()).concat()
    };
    assert_eq!(
        of(25, Place::Shoulder),
        "25 ÷ 4 = 6, and 1 over: 1 step takes 7, the first."
    );
    assert_eq!(
        of(27, Place::Neck),
        "27 ÷ 4 = 6, and 3 over: 3 steps take 7, the first ones: a round neck."
    );
}

/// The obvious text has both edges of a neck move on one piece, which is a shoulder on either side.
#[test]
fn the_halves_of_a_neck_are_worked_alone() {
    let question = Question {
        place: Place::Neck,
        ..Question::about(14, Ask::Steps(2))
    };
    assert!(notes(&question, &answer(&question).unwrap())[0].starts_with("Each half of a neck is worked alone;"));
}

/// The obvious text binds off both shoulders in the same rows.
#[test]
fn both_shoulders_take_turns() {
    let question = Question {
        edge: Edge::Both,
        ..Question::about(14, Ask::Steps(2))
    };
    let (line, rows) = sentences(&question);
    assert_eq!(line, "Bind off 7, 7, 7, 7, each at the start of a row.");
    assert_eq!(rows[1], "Row 2 (WS): bind off 7; 7 of 14 gone");
    let answer = answer(&question).unwrap();
    assert_eq!(
        notes(&question, &answer),
        ["The two edges move in turn, so they begin one row apart."]
    );
}

#[test]
fn short_rows_count_their_turns() {
    let question = Question {
        way: Way::ShortRows,
        next: Side::Wrong,
        ..Question::about(27, Ask::Steps(4))
    };
    let (line, rows) = sentences(&question);
    assert_eq!(
        line,
        "Turn with 7, 14, 21 stitches left, each at the end of a wrong-side row. Then work 1 such row to the end."
    );
    assert_eq!(rows[1], "Row 3 (WS): turn with 14 left");
    assert_eq!(rows[3], "Row 7 (WS): work to the end");
    let (before, after) = outcome(&question, &answer(&question).unwrap());
    assert_eq!(
        before + " " + &after,
        "4 steps, the last in row 7; 3 turns at an edge. Then bind off in one 27 stitches"
    );
}

/// The obvious sentence has the other edge always one row behind.
#[test]
fn the_other_edge_may_have_begun() {
    let other = |edge| {
        let question = Question {
            edge,
            ..Question::about(14, Ask::Steps(2))
        };
        notes(&question, &answer(&question).unwrap()).concat()
    };
    assert!(other(Edge::Right).contains("one row later, in row 2"));
    assert!(other(Edge::Left).contains("one row earlier, in row 1"));
}
