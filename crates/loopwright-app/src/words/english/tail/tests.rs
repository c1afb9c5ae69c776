//! What is said of a tail, in both families of units.

use super::*;
use loopwright::choice::Key;
use loopwright::tables::yarn_weight::class;
use loopwright::tail::{self, Left, Piece, Question, Thickness, answer};
use loopwright::units::Gauge;

const METRIC: Print = Print { yards: false };
const YARDS: Print = Print { yards: true };

/// Every sentence about a question.
fn all(question: &Question, print: Print) -> Vec<String> {
    let answer = answer(question).unwrap();
    let (before, after) = outcome(&answer);
    let mut written = vec![before, after, headline(&answer, print), because(&answer, print)];
    if let Some(remaining) = &answer.left {
        let (before, after) = left::verdict(remaining, print);
        written.extend([before, after, left::headline(remaining)]);
        written.push(left::because(&answer, remaining, question.end, print));
        written.extend(left::sum(&answer, remaining, question.end, print));
    }
    written.push(left::estimates(question.stitches));
    written.extend(notes(&answer));
    written.extend(sum(&answer, question.end, print));
    written.push(drawing(&answer, print));
    for known in &answer.estimates {
        written.extend([way(&known.way).into(), estimate(known, question.stitches, print)]);
    }
    written
}

#[test]
fn no_sentence_shows_its_seams() {
    let mm = Length::from_mm;
    let yarns = [Thickness::Wraps(9), Thickness::Class(Weight::SuperFine)];
    for method in Method::ALL {
        for (yarn, stitches, measured) in [(yarns[0], 1, 10), (yarns[1], 221, 20)] {
            for left in [0, 900, 9_000] {
                let question = Question {
                    method: *method,
                    yarn: Some(yarn),
                    needle: Some(mm(4)),
                    second: Some(mm(5)),
                    width: Some(mm(500)),
                    gauge: Some(Gauge::of(21, Gauge::TEN_CM)),
                    measured: Some(Piece {
                        stitches: measured,
                        used: mm(340),
                    }),
                    left: Some(Left {
                        tail: mm(left),
                        to_go: 1,
                    }),
                    ..Question::about(stitches)
                };
                for sentence in [METRIC, YARDS].iter().flat_map(|print| all(&question, *print)) {
                    for seam in ["#", "@", "{", "|", "NaN", "Some", "Length"] {
                        assert!(!sentence.contains(seam), "{sentence}");
                    }
                }
            }
        }
    }
}

#[test]
fn a_class_and_a_count_are_enough() {
    let question = Question {
        yarn: Some(Thickness::Class(Weight::Medium)),
        ..Question::about(120)
    };
    // An inch a stitch, 10 %, and 20 cm, which make 3.5528 m.
    let written = [all(&question, METRIC), all(&question, YARDS)].concat();
    for sentence in [
        "Leave a tail of 3.6 m",
        "120 × 2.54 cm = 3.05 m.",
        "The stitches: 3.05 m.",
        "With 10 % reserve on them: 3.36 m.",
        "The end to weave in, once: + 20 cm = 3.56 m, rounded up to 3.6 m.",
        "Leave a tail of 3.9 yd",
        "120 × 1 in = 3.34 yd.",
        "The end to weave in, once: + 8 in = 3.89 yd, rounded up to 3.9 yd.",
    ] {
        let sentence = sentence.replace(" %", "\u{a0}%");
        let plain = |written: &String| written.replace('\u{a0}', " ") == sentence.replace('\u{a0}', " ");
        assert!(written.iter().any(plain), "{sentence}: {written:?}");
    }
}

#[test]
fn a_tail_is_never_said_shorter_than_it_is() {
    let tail = |mm: i64, print: Print| print.up(Length::from_mm(mm)).replace('\u{a0}', " ");
    let of = |mm: i64| [tail(mm, METRIC), tail(mm, YARDS)];
    assert_eq!(of(3_134), ["3.2 m", "3.5 yd"]);
    assert_eq!(of(4_010), ["4.1 m", "4.4 yd"]);
    assert_eq!(of(4_000)[0], "4 m");
    // Between a yard and a metre, and below both.
    assert_eq!(of(920), ["92 cm", "1.1 yd"]);
    assert_eq!(of(341), ["34.5 cm", "13 1/2 in"]);
}

#[test]
fn yards_go_with_inches_and_metres_with_centimetres() {
    let question = Question {
        yarn: Some(Thickness::Class(Weight::Light)),
        left: Some(Left {
            tail: Length::from_mm(900),
            to_go: 40,
        }),
        ..Question::about(120)
    };
    let has = |written: &[String], unit: &str| {
        written
            .iter()
            .any(|written| written.contains(&["\u{a0}", unit].concat()))
    };
    let (metric, yards) = (all(&question, METRIC), all(&question, YARDS));
    assert!(has(&metric, "m") && has(&metric, "cm") && !has(&metric, "in") && !has(&metric, "yd"));
    assert!(has(&yards, "yd") && has(&yards, "in") && !has(&yards, "m") && !has(&yards, "cm"));
    let plain = yards.join(" ").replace('\u{a0}', " ");
    for written in [
        "120 × 0.88 in = 2.92 yd.",
        "+ 8 in = 3.43 yd, rounded up to 3.5 yd.",
        "of about 35 1/2 in.",
    ] {
        assert!(plain.contains(written), "{written}: {plain}");
    }
}

#[test]
fn needles_are_asked_for_in_millimetres() {
    let least = Amount::Length(tail::NEEDLE.least);
    let written = |name: Name, why| problem(&Problem::new(name, Kind::Unreadable(why)));
    assert_eq!(
        written(Name::Second, Unreadable::TooSmall { least }),
        "Type 0.5\u{a0}mm or more."
    );
    let us = written(Name::Needle, Unreadable::NotANumber);
    assert_eq!(us, "Type the number on the needle, as in 4 mm or US 6.");
    assert_ne!(written(Name::Width, Unreadable::NotANumber), us);
}

/// Her ball band has the number as well.
#[test]
fn a_class_is_named_with_its_number() {
    for chosen in YarnClass::ALL {
        if let Some(weight) = chosen.weight() {
            let number = format!("({})", class(weight).number);
            assert!(chosen.words().contains(&number), "{}", chosen.words());
        }
    }
}

/// The edge by the gauge has its sum in it.
#[test]
fn the_edge_by_the_gauge_shows_its_sum() {
    let question = Question {
        gauge: Some(Gauge::of(20, Gauge::TEN_CM)),
        ..Question::about(120)
    };
    let answer = answer(&question).unwrap();
    let sum = estimate(&answer.estimates[0], 120, METRIC);
    assert_eq!(sum, "120 ÷ 20 × 10\u{a0}cm × 3 to 4 = 1.8\u{a0}m to 2.4\u{a0}m.");
}

/// The obvious sentence has a single estimate win over others that are not there.
#[test]
fn a_single_estimate_has_no_others_to_win_over() {
    let class = Question {
        yarn: Some(Thickness::Class(Weight::Light)),
        ..Question::about(120)
    };
    let both = Question {
        gauge: Some(Gauge::of(20, Gauge::TEN_CM)),
        ..class
    };
    let [alone, several] = [class, both].map(|question| answer(&question).unwrap());
    let plain = |answer: &Answer| because(answer, METRIC).replace('\u{a0}', " ");
    assert!(plain(&alone).starts_with("You may need only "), "{}", plain(&alone));
    assert!(plain(&alone).ends_with(" has a reserve in it. Too long can be cut off."));
    assert!(plain(&several).ends_with("It rests on the largest estimate."));
    assert_eq!([wins(&alone), wins(&several)], [None, Some(WINS)]);
}

/// What is left is answered alone: how many stitches it gives, with the reserve and without, and whether that will do.
#[test]
fn the_tail_that_is_left_says_how_many_stitches_it_gives() {
    let written = |method: Method, mm: i64| {
        let question = Question {
            method,
            yarn: Some(Thickness::Class(Weight::Medium)),
            left: Some(Left {
                tail: Length::from_mm(mm),
                to_go: 40,
            }),
            ..Question::about(120)
        };
        let left = answer(&question).unwrap().left.unwrap();
        let (before, after) = left::verdict(&left, METRIC);
        [left::headline(&left), [before, after].join(" ")].map(|sentence| sentence.replace('\u{a0}', " "))
    };
    // Less 20 cm there are 1.05 m: at 2.54 cm a stitch 41, with 10 % more for each 37.
    let tight = "Tight: 40 to go just fit, but of the reserve 7 cm is lacking";
    assert_eq!(written(Method::LongTail, 1_250), ["It gives 37 to 41 stitches", tight]);
    let short = "Not enough: for 40 to go, 32 cm is lacking";
    assert_eq!(written(Method::LongTail, 900), ["It gives 25 to 27 stitches", short]);
    let none = "Not enough: for 40 to go, 1.2 m is lacking";
    assert_eq!(written(Method::LongTail, 90), ["It gives no stitch more", none]);
    let cable = "Enough: with 40 to go, 5 cm will be over";
    assert_eq!(written(Method::Cable, 250), ["It only has to be woven in", cable]);
}
