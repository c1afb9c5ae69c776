//! The sentences of gauge, with numbers worked by hand.

use super::*;
use loopwright::gauge::answer;
use loopwright::units::{Gauge, LengthUnit, print};

fn ten(count: u32) -> Gauge {
    Gauge::of(count, Gauge::TEN_CM)
}

const CM: Lengths = Lengths {
    unit: LengthUnit::Cm,
    step: print::Step::Tenth,
};

fn plain(text: &str) -> String {
    text.replace('\u{a0}', " ")
}

#[test]
fn without_a_pattern_the_gauge_is_said_over_both_spans() {
    let question = Question::about(ten(21));
    let answer = answer(&question).unwrap();
    assert_eq!(plain(&headline(&answer).1), "21 stitches over 10 cm");
    assert_eq!(plain(&outcome(&question, &answer, CM).1), "about 21¼ over 4 in");
    let written = findings(Direction::Stitches, question.width, &answer.stitches, CM);
    assert_eq!(
        written.iter().map(|line| plain(line)).collect::<Vec<_>>(),
        [
            "If half a stitch was misread, 100 cm may be anything from 97.7 cm to 102.4 cm. Counted over 15 cm, 98.4 cm to 101.6 cm; over 20 cm, 98.8 cm to 101.2 cm."
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
    let (before, after) = outcome(&question, &answer, CM);
    assert_eq!(
        plain(&(before + " " + &after)),
        "If nothing changed, 100 cm would measure 90.5 cm"
    );
    let written = findings(Direction::Stitches, question.width, &answer.stitches, CM);
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
    let written = findings(Direction::Rows, keep.length, rows, CM);
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
    let written = findings(Direction::Rows, question.length, rows, CM);
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
    assert!(ROWS_ONLY.contains("not by its row counts"));
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
        let (before, after) = outcome(&question, &answer, CM);
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
    let range = "As the spots differ, 100 cm may be anything from 87.5 cm to 116.7 cm.";
    assert_eq!(
        plain(&findings(Direction::Stitches, uneven.width, &found, CM)[1]),
        range
    );
}

#[test]
fn the_drawing_claims_no_height_that_nobody_counted() {
    let question = Question {
        pattern: Some(ten(19)),
        ..Question::about(ten(21))
    };
    let drawn = picture(&question, &answer(&question).unwrap(), CM);
    assert_eq!(plain(&drawn.would_be), "90.5 cm wide");
    assert_eq!(plain(&drawn.wanted), "wanted: 100 cm wide");
    assert!(!drawing(Seen::Apart, 0).contains("band") && drawing(Seen::Apart, 1).contains("The band:"));
    // And washing that changes nothing is not said to make it 0 % longer.
    let question = Question {
        stitches_unwashed: vec![ten(21)],
        ..question
    };
    let found = answer(&question).unwrap().stitches;
    assert_eq!(
        findings(Direction::Stitches, question.width, &found, CM).pop().unwrap(),
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
        assert!(
            counted(Direction::Stitches, &answer, &answer.stitches)
                .unwrap()
                .starts_with(lead)
        );
        let has = |words: &str| answer.notes.iter().any(|it| note(*it).contains(words));
        assert_eq!(has("from before washing"), lead != "Washed: ");
    }
}

#[test]
fn a_slash_between_counts_asks_for_commas() {
    let counts = Gauge::read_list("21/20", Gauge::TEN_CM).unwrap_err();
    let said = |field: Name, kind| problem(&Problem::new(field, kind), "21/20");
    assert!(said(Name::Stitches, Kind::UnreadableList(counts)).contains("commas"));
    assert!(!said(Name::Pattern, Kind::Unreadable(Unreadable::TwoNumbers)).contains("commas"));
}

#[test]
fn the_count_that_cannot_be_read_is_pointed_at() {
    let said = |text: &str| {
        let unread = Gauge::read_list(text, Gauge::TEN_CM).unwrap_err();
        plain(&problem(
            &Problem::new(Name::Stitches, Kind::UnreadableList(unread)),
            text,
        ))
    };
    assert_eq!(said("21, many, 20"), "“many”: Type a number in figures, as in 132.");
    assert_eq!(said("21, 500"), "“500”: Type 400 or less.");
    // There is but one: nothing has to be pointed at.
    assert_eq!(said("500"), "Type 400 or less.");
}

#[test]
fn the_next_needle_is_named_where_the_swatchs_is_known() {
    let on = |hundredths: Option<i64>| Question {
        pattern: Some(ten(22)),
        needle: hundredths.map(|hundredths| Length::from_nm(hundredths * 10_000)),
        ..Question::about(ten(21))
    };
    let said = |question: &Question| {
        let answer = answer(question).unwrap();
        (plain(&headline(&answer).1), needle(&answer).map(|said| plain(&said)))
    };
    assert_eq!(
        said(&on(Some(400))),
        (
            "Go down 1 needle size, from US 6 (4 mm) to US 5 (3.75 mm), and swatch again".into(),
            None
        )
    );
    let unnamed = "Go down 1 needle size and swatch again".to_owned();
    assert_eq!(said(&on(None)), (unnamed.clone(), Some(WHICH_NEEDLE.into())));
    let ends = "The table of needles ends before that: yours is 1.5 mm.".to_owned();
    assert_eq!(said(&on(Some(150))), (unnamed, Some(ends)));
    let thick = Problem::new(
        Name::Needle,
        Kind::TooLarge {
            most: loopwright::units::Amount::Length(Length::from_mm(50)),
        },
    );
    assert_eq!(plain(&problem(&thick, "60")), "Type 50 mm or less.");
}

/// 104 cm would measure 104 cm; 22 over 10 cm, so 22 over 10 cm.
#[test]
fn nothing_is_said_that_says_nothing() {
    let question = Question {
        pattern: Some(ten(21)),
        rows: vec![ten(28), ten(28)],
        pattern_rows: Some(ten(28)),
        stitches_unwashed: vec![ten(21)],
        ..Question::about(ten(21))
    };
    let found = answer(&question).unwrap();
    assert_eq!(
        outcome(&question, &found, CM),
        ("Your stitches are".into(), "the pattern’s".into())
    );
    let drawn = picture(&question, &found, CM);
    assert_eq!((drawn.seen, drawn.would_be.as_str()), (Seen::Same, ""));
    for (direction, measured) in found.directions() {
        let steps = steps(direction, &question, measured, CM);
        assert!(steps.iter().all(|step| !step.contains('×')), "{steps:?}");
    }
    let rows = found.rows.as_ref().unwrap();
    let said = findings(Direction::Rows, question.length, rows, CM);
    assert_eq!(said[..2], ["Both spots say the same.", "As many rows as the pattern."]);
    // What the headline says is not said again below it.
    let alone = Question::about(ten(21));
    let found = answer(&alone).unwrap();
    assert_eq!(counted(Direction::Stitches, &found, &found.stitches), None);
}

#[test]
fn three_spots_have_a_mean_that_is_said() {
    let half = |count: u32| Gauge::new(count * 500, Gauge::TEN_CM).unwrap();
    let question = Question {
        stitches: vec![half(42), half(41), half(42)],
        ..Question::about(ten(1))
    };
    let found = answer(&question).unwrap();
    assert_eq!(plain(&headline(&found).1), "about 20¾ stitches over 10 cm");
    let said = findings(Direction::Stitches, question.width, &found.stitches, CM);
    assert_eq!(
        plain(&said[0]),
        "That is the mean of 3 spots, from 20½ to 21 over 10 cm: they are 2.4 % apart."
    );
    let sum = steps(Direction::Stitches, &question, &found.stitches, CM);
    assert_eq!(
        plain(&sum[0]),
        "All stitches together: 62.5 over 30 cm, which is 20.83 over 10 cm."
    );
}

/// 5½ over 10 cm are as good as 5½ over 4 in: to say both says nothing.
#[test]
fn a_count_over_the_other_span_is_said_where_it_differs() {
    let half = |count: u32| Gauge::new(count * 500, Gauge::TEN_CM).unwrap();
    let question = Question {
        stitches: vec![half(11)],
        ..Question::about(ten(1))
    };
    let found = answer(&question).unwrap();
    let (before, after) = outcome(&question, &found, CM);
    assert_eq!([plain(&before), after], ["Over 4 in that is", "about the same"]);
    let rows = Question {
        pattern: Some(ten(21)),
        ..question
    };
    let found = answer(&rows).unwrap();
    let said = counted(Direction::Stitches, &found, &found.stitches).unwrap();
    assert_eq!(plain(&said), "Washed: 5½ over 10 cm.");
}

/// 100 cm × 19 ÷ 20¾ would be 91.6 cm.
#[test]
fn the_working_adds_up_as_it_is_printed() {
    let half = |count: u32| Gauge::new(count * 500, Gauge::TEN_CM).unwrap();
    let question = Question {
        stitches: vec![half(42), half(41), half(42)],
        pattern: Some(ten(19)),
        ..Question::about(ten(1))
    };
    let found = answer(&question).unwrap();
    let sum = steps(Direction::Stitches, &question, &found.stitches, CM);
    let sum = sum.iter().map(|step| plain(step)).find(|step| step.contains('×'));
    assert_eq!(
        sum.as_deref(),
        Some("100 cm × 19 over 10 cm ÷ 20.83 over 10 cm = 91.2 cm.")
    );
}
