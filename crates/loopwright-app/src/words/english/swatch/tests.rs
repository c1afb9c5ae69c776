//! The sentences of the swatch: what is done, and in which order.

use super::*;
use loopwright::choice::Key;
use loopwright::swatch::answer;
use loopwright::terms::Multiple;
use loopwright::units::{Gauge, LengthUnit, print};

fn long(length: Length) -> String {
    print::with_unit(length, LengthUnit::Cm, print::Step::Tenth)
}

#[test]
fn a_swatch_is_washed_and_dry_before_it_is_measured_and_one_for_a_round_is_cut() {
    for knitting in Working::ALL {
        let round = *knitting == Working::Round;
        let order = order(*knitting, Gauge::TEN_CM);
        let at = |words: &str| order.iter().position(|step| step.contains(words));
        // Measured as it comes off the needle, it would tell the gauge of nothing that is ever worn.
        let done = ["Bind off", "Wash", "Lay it out", "Lay the tape over"].map(|words| at(words).unwrap());
        assert!(done.is_sorted());
        assert_eq!(at("loosely across the back").is_some(), round);
        assert_eq!(at("Cut").is_some_and(|cut| cut < done[1]), round);
        assert!(at("wood and metal").is_some());
    }
}

#[test]
fn rows_height_and_repeats_are_said() {
    let question = Question {
        rows: Some(Gauge::of(28, Gauge::TEN_CM)),
        multiple: Multiple { of: 8, plus: 3 },
        row_repeat: 8,
        knitting: Working::Flat,
        ..Question::about(Gauge::of(21, Gauge::TEN_CM))
    };
    let plan = answer(&question).unwrap();
    assert_eq!(headline(&plan), "Cast on 43");
    assert_eq!(
        height(&question, &plan, &long),
        "That is 5 repeats of 8, plus 3. Work 48 rows, 17.1 cm high; it should be 20.5 cm wide."
    );
    let steps = steps(&question, &plan, &long);
    let rows = "Half as much again as 10 cm in height: 42 rows; in whole repeats 6 × 8 = 48, 17.1 cm.";
    assert_eq!(steps[1].replace('\u{a0}', " "), rows);
    let plain = Question::about(question.gauge);
    let plan = answer(&plain).unwrap();
    assert_eq!(
        height(&plain, &plan, &long),
        "Work until it is 15 cm high; it should be 20.5 cm wide."
    );
}

/// The obvious count is of the whole swatch, whose edge stitches are drawn in.
#[test]
fn the_middle_is_what_is_measured() {
    let plan = answer(&Question::about(Gauge::of(21, Gauge::TEN_CM))).unwrap();
    let (before, after) = outcome(&plan);
    assert_eq!(
        before + " " + &after,
        "Over 10\u{a0}cm in the middle you hope for 21 stitches"
    );
}

#[test]
fn only_a_piece_in_the_round_is_warned_of_a_flat_swatch() {
    let notes = |knitting| {
        let question = Question {
            knitting,
            multiple: Multiple { of: 8, plus: 3 },
            ..Question::about(Gauge::of(21, Gauge::TEN_CM))
        };
        let notes = answer(&question).unwrap().notes;
        notes.iter().map(note).collect::<Vec<_>>()
    };
    assert_eq!(notes(Working::Flat).len(), 0);
    let round = notes(Working::Round);
    assert!(round[0].contains("the 3 stitches beside the repeats are not cast on"));
    assert!(round[1].contains("a swatch worked flat"));
}

#[test]
fn a_sum_without_repeats_speaks_of_none() {
    let question = Question {
        rows: Some(Gauge::of(28, Gauge::TEN_CM)),
        ..Question::about(Gauge::of(21, Gauge::TEN_CM))
    };
    let plain = |question: &Question| {
        let steps = steps(question, &answer(question).unwrap(), &long);
        steps
            .into_iter()
            .map(|step| step.replace('\u{a0}', " "))
            .collect::<Vec<_>>()
    };
    assert_eq!(
        plain(&question),
        [
            "About half of that again on each side, never under 3: 21 + 22 = 43.",
            "Half as much again as 10 cm in height: 42 rows."
        ]
    );
    let inch = Question::about(Gauge::of(5, Length::INCH));
    assert_eq!(plain(&inch)[0], "5 over 1 in, so 20 over 4 in.");
}

/// The obvious count in the middle is the whole stitches there is room for, 21.
#[test]
fn half_a_stitch_is_hoped_for_as_half_a_stitch() {
    let question = Question::about(Gauge::new(20_500, Gauge::TEN_CM).unwrap());
    let plan = answer(&question).unwrap();
    assert_eq!(outcome(&plan).1, "20½ stitches");
    assert_eq!(drawn(&plan), ["20½ stitches", "43 stitches"]);
    let first = steps(&question, &plan, &long)[0].replace('\u{a0}', " ");
    assert_eq!(first, "20½ over 10 cm, so room for 21 whole stitches in 10 cm.");
}

#[test]
fn the_needles_to_try_next_are_named() {
    let said = |hundredths: Option<i64>| {
        let question = Question {
            needle: hundredths.map(|hundredths| Length::from_nm(hundredths * 10_000)),
            ..Question::about(Gauge::of(21, Gauge::TEN_CM))
        };
        needles(&answer(&question).unwrap()).map(|said| said.replace('\u{a0}', " "))
    };
    assert_eq!(said(None), None);
    let both = "Knit it with US 6 (4 mm). If it comes out with too few stitches, swatch again with US 5 (3.75 mm); with too many, with US 7 (4.5 mm).";
    assert_eq!(said(Some(400)).as_deref(), Some(both));
}
