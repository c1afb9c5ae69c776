//! No sentence stands without its numbers.

use super::*;
use loopwright::fabric::Fabric;
use loopwright::units::print::{Step, with_unit};
use loopwright::units::{Gauge, LengthUnit, Mass, MassUnit};
use loopwright::yarn::{Ball, BindOff, Level, Rest, Section, Shape, Swatch, answer};

const PRINT: &Printer = &Printer {
    yarn: &|length, step| with_unit(length, LengthUnit::M, step),
    mass: &|mass| with_unit(mass, MassUnit::Gram, Step::Tenth),
    unit: LengthUnit::M,
};

/// Every sentence about an answer.
fn all_said(question: &Question) -> Vec<String> {
    let told = answer(question).expect("an answer");
    let (before, after) = used(question, &told, PRINT);
    let mut written = vec![
        buy(&told),
        before,
        after,
        bought(question, &told, PRINT),
        drawing(&told, true, PRINT),
    ];
    let last = close(&told, PRINT);
    if !last.is_empty() {
        written.push(last.trim_end().into());
    }
    written.extend(told.lines.iter().map(|part| line(part, question, PRINT)));
    written.extend(told.notes.iter().map(|one| note(*one, question, PRINT)));
    written.extend(steps(question, &told, PRINT));
    for sentence in &written {
        for sign in ["@", "#", "{", "}", "NaN", "Some", "  ", "::"] {
            assert!(!sentence.contains(sign), "{sign} in: {sentence}");
        }
    }
    written
}

fn gauge(fabric: Fabric, rest: Rest) -> Swatch {
    Swatch::Gauge {
        fabric,
        stitches: Gauge::of(21, Gauge::TEN_CM),
        rows: Gauge::of(28, Gauge::TEN_CM),
        rest,
    }
}

fn piece(fabric: Fabric, shape: Shape, swatch: Swatch) -> Question {
    Question::about(vec![Section::of(fabric, shape)], swatch)
}

#[test]
fn every_sentence_has_its_numbers() {
    let rectangle = Shape::rectangle(40, 400);
    let taper = Shape::Trapezoid {
        stitches: 31,
        to: 46,
        rows: 25,
    };
    let levels = vec![Level { stitches: 60, rows: 3 }];
    let washed = gauge(Fabric::Stockinette, Rest::Washed);
    let unwashed = gauge(Fabric::Garter, Rest::Unwashed);
    let pinned = gauge(Fabric::Lace, Rest::PinnedOut { percent: 25 });
    let light = Swatch::Weighed {
        fabric: Fabric::Stockinette,
        stitches: 20,
        rows: 20,
        mass: Mass::from_grams(5),
    };
    for question in [
        piece(Fabric::Garter, rectangle.clone(), washed),
        piece(Fabric::Garter, rectangle.clone(), unwashed),
        piece(Fabric::Lace, rectangle.clone(), pinned),
        piece(Fabric::Stranded, taper, washed),
        piece(Fabric::Rib, Shape::Rows(levels), light),
        piece(
            Fabric::Cable,
            Shape::Stitches(loopwright::yarn::StitchSum::of(900)),
            light,
        ),
    ] {
        assert!(all_said(&question).len() > 15);
    }
    let measured = Shape::Measured {
        width: Length::of(50, LengthUnit::Cm),
        length: Length::of(180, LengthUnit::Cm),
        stitches: Gauge::of(21, Gauge::TEN_CM),
        rows: Gauge::of(28, Gauge::TEN_CM),
    };
    let by_tape = "Section 1: 1 × 105 stitches × 504 rows, by the swatch's gauge = 52920 stitches.";
    assert!(all_said(&piece(Fabric::Stockinette, measured, washed)).contains(&by_tape.into()));
    let mut icord = Section::stockinette(rectangle);
    icord.bind_off = Some(BindOff::ICord);
    icord.times = 2;
    let written = all_said(&Question::about(vec![icord], washed));
    assert!(written.contains(&"Section 1: 2 × 40 × 400 = 32000 stitches.".into()));
    assert_eq!(section(2), "Section 2");
}

#[test]
fn a_patterns_yarn_is_said_with_plurals() {
    let pattern = |balls| {
        let ball = Ball::USUAL;
        all_said(&Question::from_pattern(Ask::Balls { balls, ball }))
    };
    assert_eq!(pattern(1)[0], "Buy 1 ball");
    let seven = pattern(7);
    assert_eq!(seven[0], "Buy 7 balls");
    assert_eq!(seven[1], "The pattern means anything from 751 m to");
    assert_eq!(
        seven[3],
        "7 balls of 125 m hold 875 m, which leaves 0 m. What is used weighs 350 g."
    );
    let length = |metres| {
        let length = Length::of(metres, LengthUnit::M);
        all_said(&Question::from_pattern(Ask::Length(length)))
    };
    assert_eq!(
        length(745)[5],
        "6 balls are only just enough: 5 m to spare. Buy one more to be safe, or swatch."
    );
    assert_eq!(
        length(503)[5],
        "The last ball is for 3 m only. A slightly shorter piece can do without it."
    );
}

#[test]
fn what_is_likely_and_what_makes_sure_stand_together() {
    let washed = gauge(Fabric::Stockinette, Rest::Washed);
    let scarf = |rows| all_said(&piece(Fabric::Garter, Shape::rectangle(40, rows), washed));
    let long = scarf(1_450);
    assert_eq!(long[0], "Buy 12 balls");
    assert_eq!(
        long[5],
        "10 are likely enough; 12 make it sure. The last ball is reserve only."
    );
    for rows in 1..400 {
        for sentence in scarf(rows * 5) {
            let contradicts = sentence.contains("likely enough") && sentence.contains("one more");
            assert!(!contradicts, "{rows}: {sentence}");
        }
    }
    let mut pattern = Question::from_pattern(Ask::Length(Length::of(2_000, LengthUnit::M)));
    pattern.reserve = 25;
    assert_eq!(
        all_said(&pattern)[5],
        "16 are likely enough; 20 make it sure. The last 4 balls are reserve only."
    );
}

#[test]
fn the_same_ball_in_and_out_is_not_warned_of() {
    let ball = Ball::USUAL;
    let same = Question::from_pattern(Ask::Balls { balls: 7, ball });
    let told = answer(&same).expect("an answer");
    assert_eq!(close(&told, PRINT), "");
    assert!(!source(&Question::from_pattern(Ask::Length(Length::of(9, LengthUnit::M)))).contains("seven"));
}

#[test]
fn what_is_missing_is_named() {
    assert!(waiting(Some(Name::BallMass.into())).contains("weighs"));
    assert!(waiting(Some(Name::OwnRows.into())).contains("rows"));
    assert!(waiting(Some(Name::Length.into())).contains("pattern"));
    assert!(waiting(Some(SectionName::Length.at(1))).contains("width"));
    assert!(waiting(Some(SectionName::Times.at(1))).contains("how often"));
    assert_eq!(
        refused(Fabric::Rib),
        "From a gauge in rib the yarn cannot be told: see the question."
    );
}

/// 125 m are 136.7 yd and a little, and four of them are not four times 136.7.
#[test]
fn a_rounded_figure_says_so() {
    let yards = Printer {
        yarn: &|length, step| with_unit(length, LengthUnit::Yard, step),
        unit: LengthUnit::Yard,
        ..*PRINT
    };
    let ball = Length::of(125, LengthUnit::M);
    assert_eq!(yards.print(Value::Held(ball)), "about 136.7 yd");
    assert_eq!(PRINT.print(Value::Held(ball)), "125 m");
    assert_eq!(PRINT.print(Value::About(2.083)), "about 2.1");
    assert_eq!(PRINT.print(Value::About(10.0)), "10");
}

#[test]
fn a_problem_says_what_to_type() {
    let rib = gauge(Fabric::Rib, Rest::Washed);
    let question = piece(Fabric::Rib, Shape::rectangle(9, 9), rib);
    let found = answer(&question).expect_err("a rib gauge");
    let written = problem(&found[0]);
    assert!(written.contains("weigh a swatch"), "{written}");
    for field in [Name::Sections, Name::Reserve] {
        let kind = Kind::TooMany { most: 5 };
        let written = problem(&Problem::new(field, kind));
        assert!(written.contains("Type"), "{written}");
    }
    let most = SECTIONS.most;
    let written = problem(&Problem::new(Name::Sections, Kind::TooMany { most }));
    assert_eq!(written, "That is more than 200 sections. Take some out.");
}

/// A name she typed stands in the list and in the sum, whatever signs are in it.
#[test]
fn a_section_is_called_by_its_name() {
    let washed = gauge(Fabric::Stockinette, Rest::Washed);
    let mut sections = vec![Section::stockinette(Shape::rectangle(40, 100)); 2];
    sections[0].name = "front # @".into();
    let question = Question::about(sections, washed);
    let told = answer(&question).expect("an answer");
    assert!(line(&told.lines[0], &question, PRINT).starts_with("front # @: "));
    assert!(line(&told.lines[1], &question, PRINT).starts_with("Section 2: "));
    assert_eq!(
        steps(&question, &told, PRINT)[0],
        "front # @: 1 × 40 × 100 = 4000 stitches."
    );
}

/// What is not bound off is told with what it would take, and by its name where there are several.
#[test]
fn what_is_left_open_is_told() {
    let washed = gauge(Fabric::Stockinette, Rest::Washed);
    let open = Section {
        bind_off: None,
        ..Section::stockinette(Shape::rectangle(100, 10))
    };
    let told = |sections| {
        let question = Question::about(sections, washed);
        let notes = answer(&question).expect("an answer").notes;
        let sentences = notes.iter().map(|one| note(*one, &question, PRINT));
        sentences
            .filter(|sentence| sentence.contains("binding off"))
            .collect::<Vec<_>>()
    };
    let alone = told(vec![open.clone()]);
    assert_eq!(
        alone,
        ["Nothing is counted for binding off; a plain bind-off takes about 1.9 m more."]
    );
    let mut named = open.clone();
    named.name = "sleeve".into();
    assert!(told(vec![named, open])[0].starts_with("sleeve: nothing is counted for binding off"));
}

/// A ball without its weight leaves the weight of what is used unsaid.
#[test]
fn no_weight_is_said_where_none_is_known() {
    let ball = Ball {
        mass: None,
        ..Ball::USUAL
    };
    let question = Question {
        ball,
        ..Question::from_pattern(Ask::Length(Length::of(750, LengthUnit::M)))
    };
    let told = answer(&question).expect("an answer");
    assert_eq!(
        bought(&question, &told, PRINT),
        "6 balls of 125 m hold 750 m, which leaves 0 m."
    );
}

/// Each yarn has its own balls in the headline, and its own sum.
#[test]
fn several_yarns_are_told_apart() {
    let section = |rows| Section::stockinette(Shape::rectangle(40, rows));
    let question = Question {
        yarns: vec![1, 2],
        ..Question::about(
            vec![section(400), section(140)],
            gauge(Fabric::Stockinette, Rest::Washed),
        )
    };
    all_said(&question);
    let told = answer(&question).unwrap();
    let [one, two] = [told.yarns[0].balls, told.yarns[1].balls];
    assert_eq!(
        buy(&told),
        format!("Buy {} balls: {one} of yarn 1, {two} of yarn 2", one + two)
    );
    let each = apart(&told, PRINT);
    assert!(
        each[0].starts_with("Yarn 1: it takes ") && each[1].starts_with("Yarn 2: it takes "),
        "{each:?}"
    );
    assert!(
        each.iter().all(|sentence| !sentence.contains(['@', '#', '{'])),
        "{each:?}"
    );
    let sums = steps(&question, &told, PRINT);
    assert!(
        sums[sums.len() - 1].starts_with("Yarn 2: top of the range "),
        "{sums:?}"
    );
}
