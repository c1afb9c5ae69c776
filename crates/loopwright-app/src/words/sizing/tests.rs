//! Every sentence that can be said about sizes is one: nothing left to fill in, nothing of the program's own.

use super::*;
use loopwright::sizing::{
    Ask, Garment, Gauges, Listed, PerMille, Question, Span, Told, Value, Wrap, answer, read_sizes, with_stitches,
};
use loopwright::units::print::{Step as Fineness, with_unit};
use loopwright::units::{Gauge, LengthUnit};

fn cm(cm: i64) -> Length {
    Length::of(cm, LengthUnit::Cm)
}

fn centimetres(length: Length) -> String {
    with_unit(length, LengthUnit::Cm, Fineness::Tenth)
}

fn question(bust: i64, sizes: &str, listed: Listed) -> Question {
    let sizes = read_sizes(sizes, LengthUnit::Cm).unwrap();
    Question {
        listed: Some(listed),
        ..Question::about(cm(bust), sizes)
    }
}

fn is_a_sentence(said: &str) {
    assert!(!said.is_empty());
    for wrong in [
        "@", "#", "{", "|", "NaN", "Some(", "None", "  ", " .", " ,", ", ,", ": ,", "--",
    ] {
        assert!(!said.contains(wrong), "{wrong:?} in {said:?}");
    }
    assert!(!said.starts_with([':', ',', ' ']), "{said:?}");
}

fn all_said(question: &Question) -> Vec<String> {
    let answer = answer(question).unwrap();
    let teller = Teller {
        question,
        print: &centimetres,
    };
    let mut said = vec![teller.why(answer.why).to_owned(), teller.body(&answer)];
    said.extend(teller.beyond(&answer));
    for (place, ranked) in answer.ranked.iter().enumerate() {
        let (measured, feels) = teller.measured(ranked);
        said.extend([measured, feels, teller.sits("Size @. ", ranked)]);
        said.extend([teller.drawn(ranked), teller.drawn_name(place, ranked, false)]);
    }
    said.extend(answer.target.map(|target| teller.target(target)));
    let lines = answer.notes.iter().chain(&answer.steps);
    said.extend(lines.map(|line| teller.tell(told(line.told).0, &line.values)));
    said.extend(answer.moves.iter().flat_map(|told| moves(told, &centimetres)));
    said
}

fn gauges(stitches: u32, rows: Option<u32>) -> Option<Gauges> {
    Some(Gauges {
        stitches: Gauge::of(stitches, Gauge::TEN_CM),
        rows: rows.map(|rows| Gauge::of(rows, Gauge::FOUR_INCHES)),
    })
}

#[test]
fn every_answer_is_said_in_sentences() {
    let finished = "XS 85, S 91, M 97, L 103, XL 111";
    let gauged = |own, rows| {
        let question = question(91, finished, Listed::Garment);
        Question {
            sizes: with_stitches(question.sizes.clone(), "188, 200, 214, 226, 244").unwrap(),
            pattern: gauges(22, Some(30)),
            own: gauges(own, rows),
            ..question
        }
    };
    let wrap = |wrap| {
        let question = question(91, "130, 145, 160", Listed::Garment);
        Question {
            garment: Garment::Wrap(wrap),
            ..question
        }
    };
    let tight = Wrap {
        round: Some(cm(172)),
        neck: Some(cm(50)),
        ..Wrap::default()
    };
    let asked = [
        question(91, finished, Listed::Garment),
        question(94, "S 81-86, M 91-97, L 102-107", Listed::Body),
        question(88, "S 81-86, M 91-97, L 102-107", Listed::Body),
        question(130, "81-86, 91-97", Listed::Body),
        question(91, "One size 120", Listed::Garment),
        Question {
            ask: Ask::Percent(PerMille(-150)),
            ..question(112, finished, Listed::Garment)
        },
        Question {
            high_bust: Some(cm(80)),
            ..question(91, finished, Listed::Garment)
        },
        gauged(20, Some(29)),
        gauged(22, None),
        gauged(30, Some(30)),
        wrap(Wrap::default()),
        wrap(tight),
    ];
    for question in asked {
        all_said(&question).iter().for_each(|said| is_a_sentence(said));
    }
}

#[test]
fn who_is_outside_all_sizes_is_told_so_first() {
    let said = |question: &Question| {
        let answer = answer(question).unwrap();
        let teller = Teller {
            question,
            print: &centimetres,
        };
        teller.beyond(&answer)
    };
    let bodies = |bust| question(bust, "S 81-86, M 91-97, L 102-107", Listed::Body);
    let large = "No size fits: the largest is 23 cm too small";
    assert_eq!(said(&bodies(130)).as_deref(), Some(large));
    assert_eq!(said(&bodies(88)), None);
    assert_eq!(said(&bodies(94)), None);
    let small = "No size fits: the smallest is 22.5 cm too large";
    assert_eq!(said(&question(91, "121, 130", Listed::Garment)).as_deref(), Some(small));
    let binds = Question {
        garment: Garment::Wrap(Wrap {
            round: Some(cm(172)),
            ..Wrap::default()
        }),
        ..question(110, "130, 145, 160", Listed::Garment)
    };
    assert_eq!(
        said(&binds).as_deref(),
        Some("No size fits: the largest is 12 cm too small")
    );
    let only = question(91, "One size 120", Listed::Garment);
    assert_eq!(said(&only).as_deref(), Some("It does not fit: it is 21.5 cm too large"));
}

#[test]
fn a_size_says_whom_it_is_made_for_and_how_it_sits() {
    let said = |question: Question| {
        let answer = answer(&question).unwrap();
        let teller = Teller {
            question: &question,
            print: &centimetres,
        };
        let (before, after) = teller.measured(&answer.ranked[0]);
        [&before, " ", &after].concat()
    };
    let bodies = |bust, list| said(question(bust, list, Listed::Body));
    assert_eq!(bodies(91, "90"), "Made for a bust of 90 cm; yours is 1 cm more");
    assert_eq!(bodies(89, "90"), "Made for a bust of 90 cm; yours is 1 cm less");
    assert_eq!(bodies(90, "90"), "Made for a bust of 90 cm, and yours is the same");
    assert_eq!(bodies(94, "91-97"), "Made for 91 to 97 cm, and yours is within");
    assert_eq!(bodies(100, "91-97"), "Made for 91 to 97 cm; yours is 3 cm more");
    let none = Question {
        ask: Ask::Ease(cm(0)),
        ..question(91, "91, 97", Listed::Garment)
    };
    assert_eq!(said(none), "91 cm round, as you measure: close");
}

#[test]
fn a_line_has_its_values_in_the_order_of_its_sentence() {
    let question = question(91, "M 97, 103", Listed::Garment);
    let teller = Teller {
        question: &question,
        print: &centimetres,
    };
    let (four_inches, ten_cm) = (Gauge::of(21, Gauge::FOUR_INCHES), Gauge::of(20, Gauge::TEN_CM));
    let said = |line, values: &[Value]| teller.tell(told(line).0, values);
    let by_gauges = [
        Value::Size(1),
        Value::Length(cm(103)),
        Value::Gauge(four_inches),
        Value::Gauge(ten_cm),
        Value::Length(cm(107)),
    ];
    assert_eq!(
        said(Told::ByGauges, &by_gauges),
        "Size 103: 103 cm listed, with 21 in 4 in in the pattern and 20 in 10 cm of yours: 107 cm."
    );
    let ease = [Value::Length(cm(91)), Value::Ease(cm(-6)), Value::Length(cm(85))];
    assert_eq!(said(Told::Target, &ease), "Body and ease: 91 cm and −6 cm make 85 cm.");
    let heads = [Value::Span(Span::new(cm(54), cm(60)))];
    assert!(said(Told::NeckUnsure, &heads).contains("54 to 60 cm"));
}

#[test]
fn what_cannot_be_read_is_shown_with_what_to_type() {
    let said = |text: &str| unread(&read_sizes(text, LengthUnit::Cm).unwrap_err(), &centimetres);
    assert_eq!(
        said("S 86-91, M ?"),
        "1 number for 2 sizes: type one for each, in the same order."
    );
    assert_eq!(said("S 3"), "“3”: Type 5 cm or more.");
    assert_eq!(
        said("86-91-97"),
        "“86-91-97”: part the sizes with commas, as in S 86, M 91, L 97."
    );
    let sizes = read_sizes("86, 91", LengthUnit::Cm).unwrap();
    let few = with_stitches(sizes, "204").unwrap_err();
    assert_eq!(
        unread(&few, &centimetres),
        "1 number for 2 sizes: type one for each, in the same order."
    );
    let in_inches = |length| with_unit(length, LengthUnit::Inch, Fineness::Eighths);
    let small = Kind::TooSmall {
        least: Amount::Length(Length::from_inches(4)),
    };
    let small = Problem::new("bust", small);
    assert_eq!(problem(&small, &in_inches), "Type 4 in or more.");
}
