//! The sentences of gauge, with numbers worked by hand.

use super::*;
use loopwright::gauge::answer;
use loopwright::units::{LengthUnit, print};

fn ten(count: u32) -> Gauge {
    Gauge::of(count, Gauge::TEN_CM)
}

fn long(length: Length) -> String {
    print::with_unit(length, LengthUnit::Cm, print::Step::Tenth)
}

fn plain(text: &str) -> String {
    text.replace('\u{a0}', " ")
}

#[test]
fn without_a_pattern_the_gauge_is_said_over_both_spans() {
    let question = Question::about(ten(21));
    let answer = answer(&question).unwrap();
    assert_eq!(plain(&headline(&answer).1), "21 stitches over 10 cm");
    assert_eq!(plain(&outcome(&question, &answer, &long).1), "21.3 over 4 in");
    let written = findings(Direction::Stitches, question.width, &answer.stitches, &long);
    assert_eq!(
        written.iter().map(|line| plain(line)).collect::<Vec<_>>(),
        [
            "If half a stitch is misread, 100 cm may come out so: counted over 10 cm, 97.7 cm to 102.4 cm; over 15 cm, 98.4 cm to 101.6 cm; over 20 cm, 98.8 cm to 101.2 cm."
        ]
    );
}

#[test]
fn too_many_stitches_go_up_and_the_piece_would_be_narrow() {
    let question = Question {
        pattern: Some(ten(19)),
        ..Question::about(ten(21))
    };
    let answer = answer(&question).unwrap();
    assert_eq!(headline(&answer).1, "Go up 2 needle sizes and swatch again");
    let (before, after) = outcome(&question, &answer, &long);
    assert_eq!(
        before + " " + &after,
        "If nothing changed, 100 cm would measure 90.5 cm"
    );
    let written = findings(Direction::Stitches, question.width, &answer.stitches, &long);
    assert_eq!(plain(&written[0]), "10.5 % more stitches than the pattern.");
}

#[test]
fn a_match_within_the_reading_is_said_to_be_one() {
    let question = Question {
        stitches: vec![ten(22)],
        pattern: Some(ten(21)),
        rows: vec![ten(30)],
        pattern_rows: Some(ten(28)),
        ..Question::about(ten(1))
    };
    let answer = answer(&question).unwrap();
    assert_eq!(headline(&answer).1, "Go up 1 needle size and swatch again");
    let keep = Question {
        stitches: vec![ten(21)],
        ..question
    };
    let answer = loopwright::gauge::answer(&keep).unwrap();
    assert_eq!(headline(&answer).1, "Keep this needle");
    let rows = answer.rows.as_ref().unwrap();
    let written = findings(Direction::Rows, keep.length, rows, &long);
    let rows = "7.1 % more rows than the pattern. By the pattern’s row counts 50 cm would be 46.7 cm.";
    assert_eq!(plain(&written[0]), rows);
}

#[test]
fn washing_says_what_to_knit() {
    let question = Question {
        rows: vec![ten(28)],
        rows_unwashed: vec![ten(30)],
        ..Question::about(ten(21))
    };
    let answer = answer(&question).unwrap();
    let rows = answer.rows.as_ref().unwrap();
    let written = findings(Direction::Rows, question.length, rows, &long);
    let washing = "Washing makes it 7.1 % longer: for 50 cm washed, knit 46.7 cm by the tape.";
    assert_eq!(plain(written.last().unwrap()), washing);
}

#[test]
fn the_practice_that_is_said_is_the_one_that_is_reckoned_with() {
    use loopwright::gauge::{LABEL_SPAN, MOST_SIZES, SIZE_PERMILLE};
    assert_eq!((MOST_SIZES, SIZE_PERMILLE, LABEL_SPAN), (2, 70, Gauge::TEN_CM));
    assert!(BAND.contains("is read as 10 cm") && plain(SOURCE).contains("7 % a needle size, two sizes at most"));
    // And 4 in are indeed 1.6 % more.
    let ratio = 100.0 * Gauge::FOUR_INCHES.to_nm() as f64 / Gauge::TEN_CM.to_nm() as f64;
    assert!((ratio - 101.6).abs() < 1e-9 && plain(BAND).contains("1.6 %"));
}

#[test]
fn rows_that_miss_are_told_apart_from_stitches_that_match() {
    assert!(ROWS_ONLY.contains("Lengths by measure hold"));
}

#[test]
fn what_cannot_be_judged_gets_no_needle() {
    let written = |stitches: &[Gauge], pattern| {
        let question = Question {
            stitches: stitches.to_vec(),
            pattern: Some(pattern),
            ..Question::about(ten(1))
        };
        let answer = answer(&question).unwrap();
        let (before, after) = outcome(&question, &answer, &long);
        plain(&[&*headline(&answer).1, ". ", &before, " ", &after].concat())
    };
    assert_eq!(
        written(&[Gauge::of(5, Length::INCH)], Gauge::of(22, Gauge::FOUR_INCHES)),
        "Count over 4 in or more. Too short a span to judge. So far, 100 cm would measure 110 cm"
    );
    assert_eq!(
        written(&[ten(18), ten(24)], ten(21)),
        "Count again, away from the edges. The spots differ too much; their mean is 21 over 10 cm"
    );
    assert_eq!(
        written(&[ten(14)], ten(22)),
        "Take another yarn, or another size at your gauge. Another needle alone will not do: 100 cm would measure 157.1 cm"
    );
    let uneven = Question {
        stitches: vec![ten(18), ten(24)],
        ..Question::about(ten(1))
    };
    let found = answer(&uneven).unwrap().stitches;
    let range = "As the spots differ, 100 cm may come out so: counted over 10 cm, 87.5 cm to 116.7 cm.";
    assert_eq!(
        plain(&findings(Direction::Stitches, uneven.width, &found, &long)[1]),
        range
    );
}

#[test]
fn the_drawing_claims_no_height_that_nobody_counted() {
    let question = Question {
        pattern: Some(ten(19)),
        ..Question::about(ten(21))
    };
    let key = drawing(&question, &answer(&question).unwrap(), &long);
    assert!(key.starts_with("Dotted, what you want: 100 cm wide. Solid, what it would be: 90.5 cm wide."));
    // And washing that changes nothing is not said to make it 0 % longer.
    let question = Question {
        stitches_unwashed: vec![ten(21)],
        ..question
    };
    let found = answer(&question).unwrap().stitches;
    assert_eq!(
        findings(Direction::Stitches, question.width, &found, &long)
            .pop()
            .unwrap(),
        "Washing does not change it."
    );
}

/// Counts from before washing are named as such.
#[test]
fn what_was_not_washed_is_not_said_to_be() {
    let washed = Question {
        pattern: Some(ten(20)),
        ..Question::about(ten(21))
    };
    let before = Question {
        stitches: Vec::new(),
        stitches_unwashed: vec![ten(21)],
        pattern: Some(Gauge::of(20, Gauge::FOUR_INCHES)),
        ..washed.clone()
    };
    for (question, lead) in [(&washed, "Washed: "), (&before, "Not washed: ")] {
        let answer = answer(question).unwrap();
        assert!(counted(&answer.stitches).starts_with(lead));
        let has = |words: &str| answer.notes.iter().any(|it| note(*it).contains(words));
        assert_eq!(has("from before washing"), lead != "Washed: ");
    }
}

#[test]
fn a_slash_between_counts_asks_for_commas() {
    let problem = |field: Name| {
        problem(&Problem {
            field: field.into(),
            kind: Kind::Unreadable(Unreadable::TwoNumbers),
        })
    };
    assert!(problem(Name::Stitches).contains("commas") && !problem(Name::Pattern).contains("commas"));
}
