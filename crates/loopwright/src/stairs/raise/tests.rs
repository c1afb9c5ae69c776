//! Every raise is knitted on a simulated needle from its written rows, and the rows in every stitch are counted.

use super::*;
use crate::row;
use proptest::prelude::*;

fn cm(whole: i64) -> Length {
    Length::of(whole, LengthUnit::Cm)
}

fn usual(stitches: u32) -> Question {
    let height = Length::from_mm(25);
    Question::about(Across::Stitches(stitches), height, Gauge::of(32, Gauge::TEN_CM))
}

/// A ring of stitches with the back in it, and how many short rows stand in each. Knows only what a needle does: a
/// right-side row goes on through the round, a wrong-side row back; a double stitch is pulled out of its row again.
struct Needle {
    heights: Vec<i64>,
    /// The place between two stitches where the yarn is.
    at: usize,
}

impl Needle {
    fn work(&mut self, short: &ShortRow, method: Method) {
        // The row is read as it is written.
        let read = row::read(&short.worked.to_string()).unwrap();
        if short.double {
            // The turned stitch is slipped, and has no row of its own.
            match short.side {
                Side::Right => self.at += 1,
                Side::Wrong => self.at -= 1,
            }
        }
        for _ in 0..read.uses() {
            match short.side {
                Side::Right => {
                    self.heights[self.at] += 1;
                    self.at += 1;
                }
                Side::Wrong => {
                    self.at -= 1;
                    self.heights[self.at] += 1;
                }
            }
        }
        if method == Method::German {
            let turned = match short.side {
                Side::Right => self.at - 1,
                Side::Wrong => self.at,
            };
            self.heights[turned] -= 1;
        }
    }
}

/// The rows in each stitch, with `beside` stitches at either side of the back; and where the yarn is in the end.
fn knitted(question: &Question, answer: &Answer, beside: usize) -> Needle {
    let half = answer.across as usize / 2;
    let start = match question.begins {
        Begins::Middle => beside + half,
        Begins::Edge => beside,
    };
    let mut needle = Needle {
        heights: vec![0; 2 * (beside + half)],
        at: start,
    };
    for short in &answer.rows {
        needle.work(short, question.method);
    }
    // Home with the right side facing; the double stitch of the last turn is slipped.
    needle.at += usize::from(question.method == Method::German);
    for _ in 0..answer.home {
        needle.heights[needle.at] += 1;
        needle.at += 1;
    }
    assert_eq!(needle.at, start, "{question:?}");
    needle
}

/// The obvious sum takes a turn for a row: 8 turns at each side, and twice as high.
#[test]
fn each_turn_at_a_side_is_two_rows() {
    let answer = answer(&usual(40)).unwrap();
    assert_eq!(answer.turns, [5, 10, 15, 20]);
    assert_eq!(
        (answer.rows.len(), answer.raised, answer.off),
        (8, Length::from_mm(25), Length::ZERO)
    );
}

#[test]
fn both_methods_turn_behind_the_same_stitch() {
    let written = |method| {
        let question = Question { method, ..usual(40) };
        let rows = answer(&question).unwrap().rows;
        rows.iter()
            .take(4)
            .map(|row| row.worked.to_string())
            .collect::<Vec<_>>()
    };
    assert_eq!(written(Method::Wrap), ["K5", "P10", "K15", "P20"]);
    assert_eq!(written(Method::German), ["K6", "P11", "K16", "P21"]);
}

#[test]
fn a_round_that_begins_at_the_edge_goes_to_the_middle_first() {
    let question = Question {
        begins: Begins::Edge,
        method: Method::Wrap,
        ..usual(40)
    };
    let answer = answer(&question).unwrap();
    assert_eq!(answer.rows[0].worked.to_string(), "K25");
    assert_eq!(answer.home, 0);
}

#[test]
fn a_width_is_as_many_stitches_as_it_has_at_the_gauge() {
    let across = Across::Width {
        width: cm(20),
        gauge: Gauge::of(20, Gauge::TEN_CM),
    };
    let answer = answer(&Question { across, ..usual(1) }).unwrap();
    assert_eq!(answer.across, 40);
}

/// Both sides are alike, so of 41 stitches one stays out.
#[test]
fn of_an_odd_number_one_stays_out() {
    let answer = answer(&usual(41)).unwrap();
    assert_eq!((answer.across, answer.left_out), (40, true));
    assert!(!super::answer(&usual(40)).unwrap().left_out);
}

#[test]
fn turns_that_are_typed_say_how_high_they_raise() {
    let turns = Some(3);
    let answer = answer(&Question { turns, ..usual(40) }).unwrap();
    // Six rows of 3.125 mm in place of 25 mm.
    assert_eq!((answer.turns.len(), answer.raised), (3, Length::from_nm(18_750_000)));
    assert_eq!(answer.off, Length::from_nm(-6_250_000));
}

#[test]
fn more_turns_than_stitches_are_refused() {
    let most = |question: &Question| answer(question).unwrap_err()[0];
    let narrow = usual(6);
    // Three turns at a side, six rows.
    let high = Amount::Length(Length::from_nm(18_750_000));
    assert_eq!(most(&narrow), Problem::new(Name::Height, Kind::TooLarge { most: high }));
    let turns = Some(4);
    let typed = Question { turns, ..narrow };
    assert_eq!(most(&typed), Problem::new(Name::Turns, Kind::TooMany { most: 3 }));
}

fn questions() -> impl Strategy<Value = Question> {
    let method = prop_oneof![Just(Method::German), Just(Method::Wrap)];
    let begins = prop_oneof![Just(Begins::Middle), Just(Begins::Edge)];
    let turns = prop_oneof![Just(None), (1_u32..12).prop_map(Some)];
    (2_u32..200, 2_i64..100, 10_u32..60, turns, method, begins).prop_map(
        |(stitches, mm, rows, turns, method, begins)| Question {
            across: Across::Stitches(stitches),
            height: Length::from_mm(mm),
            rows: Gauge::of(rows, Gauge::TEN_CM),
            turns,
            method,
            begins,
        },
    )
}

proptest! {
    #[test]
    fn every_stitch_has_its_rows_and_both_sides_are_alike(question in questions()) {
        let Ok(answer) = answer(&question) else { return Ok(()) };
        let beside = 3;
        let needle = knitted(&question, &answer, beside);
        let half = answer.across as usize / 2;
        let turns = answer.turns.len() as i64;
        for (place, height) in needle.heights.iter().enumerate() {
            let from_middle = if place < beside + half { beside + half - place } else { place - beside - half + 1 };
            let turned_beyond = answer.turns.iter().filter(|turn| **turn as usize >= from_middle).count() as i64;
            prop_assert_eq!(*height, 2 * turned_beyond, "stitch {}, {:?}", place, needle.heights);
        }
        prop_assert_eq!(needle.heights[beside + half], 2 * turns);
        prop_assert_eq!(answer.turns.last().copied(), Some(half as u32));
        prop_assert!(answer.turns.windows(2).all(|pair| pair[0] < pair[1]));
    }

    #[test]
    fn the_raise_is_as_high_as_was_promised(question in questions()) {
        let Ok(answer) = answer(&question) else { return Ok(()) };
        let row = Rate::of(question.rows).width_of(1).to_nm();
        let high = Rate::of(question.rows).width_of(answer.rows.len() as u32);
        prop_assert_eq!(answer.raised, high);
        prop_assert_eq!(answer.off, answer.raised.saturating_sub(question.height));
        // Two rows are the step, so it is off by one row at the most, unless she said how many turns.
        let least = question.height.to_nm() < row;
        prop_assert!(question.turns.is_some() || least || answer.off.to_nm().abs() <= row + 1);
    }

    #[test]
    fn no_question_about_a_raise_panics(stitches: u32, nm: [i64; 3], counts: [u32; 3], question in questions()) {
        let [height, width, span] = nm.map(Length::from_nm);
        let across = Across::Width { width, gauge: Gauge::of(counts[0], span) };
        let rows = Gauge::of(counts[1], span);
        let _ = answer(&Question { across, height, rows, turns: Some(counts[2]), ..question });
        let _ = answer(&Question { across: Across::Stitches(stitches), height, ..question });
        let _ = answer(&Question { across: Across::Stitches(stitches), ..question });
    }
}
