//! Every staircase is knitted on a simulated needle, bound off and in short rows, and the two make one slope.

use super::*;
use crate::problem::{Kind, Problem};
use proptest::prelude::*;

/// A piece of columns, the right edge first; how many rows stand in each column when it is bound off or left.
/// Knows only what a needle does: a right-side row is worked from the right edge, a wrong-side row from the left.
fn knitted(question: &Question, answer: &Answer, width: usize) -> Vec<u32> {
    let mut height = vec![0_u32; width];
    // Columns from `right` to before `left` are worked on.
    let (mut right, mut left) = (0_usize, width);
    for row in 1..=answer.used + answer.left + 2 {
        let side = Knitting::Flat { next: question.next }.side(row);
        for stair in answer.stairs.iter().filter(|stair| stair.row == row) {
            assert_eq!(stair.side, side);
            let beginning = if side == Side::Right { Edge::Right } else { Edge::Left };
            match question.way {
                // Only the stitches at the beginning of the row can be bound off.
                Way::BindOff => assert_eq!(stair.edge, beginning),
                Way::ShortRows => assert_ne!(stair.edge, beginning),
            }
            if question.way == Way::ShortRows && stair.last {
                // No turn: the row goes on over all that were left at this edge.
                match stair.edge {
                    Edge::Right => right = 0,
                    _ => left = width,
                }
                continue;
            }
            match stair.edge {
                Edge::Right => right += stair.stitches as usize,
                _ => left -= stair.stitches as usize,
            }
            let gone = if stair.edge == Edge::Right { right } else { width - left };
            assert_eq!(gone, stair.gone as usize);
        }
        for column in &mut height[right..left] {
            *column += 1;
        }
    }
    height
}

fn of(answer: &Answer, edge: Edge) -> Vec<Stair> {
    answer
        .stairs
        .iter()
        .copied()
        .filter(|stair| stair.edge == edge)
        .collect()
}

fn sizes(stairs: &[Stair]) -> Vec<u32> {
    stairs.iter().map(|stair| stair.stitches).collect()
}

/// The obvious sum binds off in every row at one edge: 24 in 6 rows, 4 each. Half of those rows begin at the other edge.
#[test]
fn one_edge_moves_in_every_second_row() {
    let shoulder = answer(&Question::about(24, Ask::Rows(6))).unwrap();
    assert_eq!(sizes(&shoulder.stairs), [8, 8, 8]);
    assert_eq!(shoulder.stairs.iter().map(|s| s.row).collect::<Vec<_>>(), [1, 3, 5]);
    assert_eq!((shoulder.used, shoulder.left), (5, 1));
    assert_ne!(shoulder.steps, 6);
}

/// Half of 7 rows is 3, the obvious sum; but the edge that moves in row 1 moves in rows 1, 3, 5 and 7.
#[test]
fn an_odd_row_is_a_step_for_the_edge_that_begins() {
    let steps = |edge| {
        let question = Question {
            edge,
            ..Question::about(24, Ask::Rows(7))
        };
        let answer = answer(&question).unwrap();
        let rows: Vec<u32> = answer.stairs.iter().map(|stair| stair.row).collect();
        (sizes(&answer.stairs), rows, answer.left)
    };
    assert_eq!(steps(Edge::Right), (vec![6; 4], vec![1, 3, 5, 7], 0));
    assert_eq!(steps(Edge::Left), (vec![8; 3], vec![2, 4, 6], 1));
}

#[test]
fn the_two_shoulders_start_one_row_apart() {
    for next in [Side::Right, Side::Wrong] {
        for way in [Way::BindOff, Way::ShortRows] {
            let edge = Edge::Both;
            let both = answer(&Question {
                edge,
                way,
                next,
                ..Question::about(25, Ask::Rows(6))
            })
            .unwrap();
            let (right, left) = (of(&both, Edge::Right), of(&both, Edge::Left));
            assert_eq!(sizes(&right), sizes(&left));
            for (right, left) in right.iter().zip(&left) {
                assert_eq!(
                    right.row.abs_diff(left.row),
                    1,
                    "the obvious sum starts both in one row"
                );
                assert_ne!(right.side, left.side);
            }
        }
    }
}

#[test]
fn the_larger_steps_come_first_at_a_neck() {
    let place = Place::Neck;
    let neck = answer(&Question {
        place,
        ..Question::about(10, Ask::Steps(4))
    })
    .unwrap();
    assert_eq!(sizes(&neck.stairs), [3, 3, 2, 2]);
    // Larger and smaller in turn, which keeps a shoulder straight.
    let shoulder = answer(&Question::about(10, Ask::Steps(4))).unwrap();
    assert_eq!(sizes(&shoulder.stairs), [3, 2, 3, 2]);
    // In as many rows as the steps take there are as many steps.
    let rows = answer(&Question::about(11, Ask::Rows(8))).unwrap();
    assert_eq!(sizes(&rows.stairs), [3, 3, 3, 2]);
    assert_eq!((rows.used, rows.left), (7, 1));
    // The obvious sum rounds 11 / 4 to 3 in every step, and binds off a stitch that is not there.
    assert_eq!(3 * 4, 11 + 1);
}

#[test]
fn too_few_rows_say_how_many() {
    let edge = Edge::Left;
    let problems = answer(&Question {
        edge,
        ..Question::about(8, Ask::Rows(1))
    })
    .unwrap_err();
    let kind = Kind::TooFew { least: 2 };
    assert_eq!(problems, [Problem::new(Name::Rows, kind)]);
    // No step without a stitch.
    let steps = answer(&Question::about(3, Ask::Steps(4))).unwrap_err();
    let kind = Kind::TooMany { most: 3 };
    assert_eq!(steps, [Problem::new(Name::Steps, kind)]);
    // With more rows than stitches, one stitch a step and plain rows behind.
    let few = answer(&Question::about(2, Ask::Rows(20))).unwrap();
    assert_eq!((sizes(&few.stairs), few.left), (vec![1, 1], 17));
}

fn questions() -> impl Strategy<Value = Question> {
    let ask = prop_oneof![(1_u32..30).prop_map(Ask::Steps), (1_u32..40).prop_map(Ask::Rows)];
    let edge = prop_oneof![Just(Edge::Right), Just(Edge::Left), Just(Edge::Both)];
    let place = prop_oneof![Just(Place::Shoulder), Just(Place::Neck)];
    let way = prop_oneof![Just(Way::BindOff), Just(Way::ShortRows)];
    let next = prop_oneof![Just(Side::Right), Just(Side::Wrong)];
    (1_u32..60, ask, edge, place, way, next).prop_map(|(stitches, ask, edge, place, way, next)| Question {
        stitches,
        ask,
        edge,
        place,
        way,
        next,
    })
}

proptest! {
    #[test]
    fn all_steps_together_are_the_stitches(question in questions()) {
        let Ok(answer) = answer(&question) else {
            prop_assert!(matches!(question.ask, Ask::Rows(1)) || matches!(question.ask, Ask::Steps(steps) if steps > question.stitches));
            return Ok(());
        };
        for edge in [Edge::Right, Edge::Left] {
            let stairs = of(&answer, edge);
            if stairs.is_empty() { continue; }
            let sizes = sizes(&stairs);
            prop_assert_eq!(sizes.iter().sum::<u32>(), question.stitches);
            prop_assert_eq!(sizes.len() as u32, answer.steps);
            prop_assert!(question.ask == Ask::Steps(answer.steps) || matches!(question.ask, Ask::Rows(_)));
            prop_assert!(sizes.iter().max().unwrap() - sizes.iter().min().unwrap() <= 1);
            prop_assert!(stairs.windows(2).all(|pair| pair[1].row == pair[0].row + 2));
            prop_assert!(stairs.iter().all(|stair| stair.row <= answer.used));
            prop_assert!(question.place == Place::Shoulder || sizes.is_sorted_by(|a, b| a >= b));
            prop_assert!(stairs.last().unwrap().last);
            if question.way == Way::ShortRows {
                prop_assert_eq!(stairs.iter().filter(|stair| !stair.last).count() as u32, answer.turns);
            }
        }
        prop_assert_eq!(answer.stairs.last().map(|stair| stair.row), Some(answer.used));
        if let Ask::Rows(rows) = question.ask { prop_assert_eq!(answer.used + answer.left, rows); }
    }

    /// Bound off or in short rows: the outermost step ends first, every further one two rows higher.
    #[test]
    fn both_ways_make_the_same_slope(question in questions()) {
        let width = 2 * question.stitches as usize + 3;
        let Ok(done) = answer(&question) else { return Ok(()) };
        let height = knitted(&question, &done, width);
        for edge in [Edge::Right, Edge::Left] {
            let stairs = of(&done, edge);
            let column = |from_edge: u32| match edge {
                Edge::Right => height[from_edge as usize],
                _ => height[width - 1 - from_edge as usize],
            };
            for (step, stair) in stairs.iter().enumerate() {
                let first = stair.gone - stair.stitches;
                for from_edge in first..stair.gone {
                    prop_assert_eq!(column(from_edge), column(0) + 2 * step as u32);
                }
            }
        }
    }

    #[test]
    fn no_question_about_steps_panics(stitches: u32, count: u32, question in questions()) {
        for ask in [Ask::Steps(count), Ask::Rows(count), question.ask] {
            let _ = answer(&Question { stitches, ask, ..question });
            let _ = answer(&Question { ask, ..question });
        }
    }
}
