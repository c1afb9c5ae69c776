//! What is said of rows.

use super::*;
use loopwright::rows::answer;
use loopwright::units::{Gauge, Length, LengthUnit, print};

const CM: Lengths = Lengths {
    unit: LengthUnit::Cm,
    step: print::Step::Tenth,
};

fn ten(count: u32) -> Gauge {
    Gauge::of(count, Gauge::TEN_CM)
}

fn measured(rows: u32, mm: i64) -> Option<loopwright::rows::Tape> {
    let length = Length::from_mm(mm);
    Some(loopwright::rows::Tape { rows, length })
}

/// What is said of the course, with plain spaces: a line, what follows, and what the tape should say.
fn course(question: &Question, course: &Course) -> [String; 3] {
    let (before, after) = remaining(question, course);
    let follows = [before, after].join(" ");
    [standing(course, CM), follows, tape_says(question, course, CM)].map(|sentence| sentence.replace('\u{a0}', " "))
}

fn all_marks() -> String {
    let marks = [
        Mark::Washed,
        Mark::OnTheNeedle,
        Mark::Rows,
        Mark::Repeats,
        Mark::Done,
        Mark::Wanted,
        Mark::ShouldBe,
    ];
    caption(&marks, LengthUnit::Cm)
}

/// Every sentence about a question.
fn all(question: &Question) -> Vec<String> {
    let answer = answer(question).unwrap();
    let (before, after) = outcome(question, &answer, CM);
    let mut written = vec![before, after, headline(question, &answer, CM)];
    written.push(widths(question, &answer, CM));
    written.extend(neighbours(question, &answer, CM));
    if let Some(course) = &answer.course {
        written.extend(self::course(question, course));
    }
    written.extend(answer.notes.iter().copied().map(note));
    written.push(drawing(question, &answer, CM));
    written.push(all_marks());
    written.extend([super::all(question, answer.pick.rows), whole_repeats(question, &answer)]);
    written.extend(answer.course.as_ref().map(to_go));
    written.extend(steps(question, &answer, CM));
    written
}

#[test]
fn no_sentence_shows_its_seams() {
    let asks = [
        Ask::Length(Length::from_mm(5)),
        Ask::Length(Length::from_mm(601)),
        Ask::Rows(1),
        Ask::Ridges(21),
        Ask::Repeats(9),
    ];
    for ask in asks {
        for (repeat, set_up, end_after) in [(1, 0, 0), (12, 0, 0), (12, 3, 7), (6, 3, 0)] {
            for tape in [None, measured(60, 200), measured(1, 500), measured(900, 2_000)] {
                for garter in [false, true] {
                    let question = Question {
                        repeat,
                        set_up,
                        end_after,
                        tape,
                        garter,
                        round: end_after == 0,
                        edges: set_up % 2,
                        ..Question::about(ask, ten(28))
                    };
                    for sentence in all(&question) {
                        for seam in ["#", "@", "{", "|", "NaN", "Some"] {
                            assert!(!sentence.contains(seam), "{sentence}");
                        }
                    }
                }
            }
        }
    }
}

#[test]
fn ridges_and_repeats_are_named() {
    let question = Question {
        garter: true,
        ..Question::about(Ask::Length(Length::from_mm(400)), ten(28))
    };
    let found = answer(&question).unwrap();
    assert_eq!(headline(&question, &found, CM), "Work 112 rows");
    let written = |question: &Question| outcome(question, &answer(question).unwrap(), CM);
    assert_eq!(
        written(&question),
        ("56 ridges. Washed, that is".into(), "40\u{a0}cm long".into())
    );
    let chart = Question {
        garter: false,
        repeat: 12,
        set_up: 2,
        end_after: 7,
        ..question
    };
    let made = "9 repeats of 12, and 7 of the next, after 2 for the set-up. Washed, that is";
    assert_eq!(written(&chart), (made.into(), "41.8\u{a0}cm long".into()));
}

#[test]
fn the_course_says_how_many_are_to_go() {
    let question = Question {
        unwashed: Some(ten(30)),
        tape: measured(60, 210),
        ..Question::about(Ask::Length(Length::from_mm(500)), ten(28))
    };
    let found = answer(&question).unwrap().course.unwrap();
    assert_eq!(
        course(&question, &found),
        [
            "Ahead by 1 cm",
            "Knitted on like this, 133 rows make the length: 73 are to go",
            "By the swatch it should be 20 cm now. Washed, what is done will be 22.5 cm. Stop when the tape says 46.6 cm."
        ]
    );
    // Nobody can stop where she has been already.
    let past = Question {
        ask: Ask::Length(Length::from_mm(373)),
        gauge: ten(28),
        unwashed: Some(ten(28)),
        tape: measured(112, 400),
        ..question
    };
    let found = answer(&past).unwrap().course.unwrap();
    assert_eq!(
        course(&past, &found),
        [
            "On course",
            "As near as a tape tells, 104 rows make the length: take back the last 8",
            "By the swatch it should be 40 cm now. Washed, what is done will be 40 cm."
        ]
    );
    // Without a gauge before washing she is told what the comparison rests on.
    let unsure = Question {
        unwashed: None,
        ..question
    };
    let found = answer(&unsure).unwrap().course.unwrap();
    assert!(course(&unsure, &found)[2].contains("before washing"));
}

/// A purl round of garter is no place for a change: said in the round, and not where it is turned.
#[test]
fn garter_in_the_round_is_shaped_on_its_knit_round() {
    let garter = |round| {
        let ask = Ask::Length(Length::from_mm(100));
        let question = Question {
            garter: true,
            round,
            ..Question::about(ask, ten(42))
        };
        let notes = answer(&question).unwrap().notes;
        notes.into_iter().map(note).any(|note| note.contains("on a knit round"))
    };
    assert_eq!([true, false].map(garter), [true, false]);
}

#[test]
fn the_set_up_alone_is_named() {
    let question = Question {
        set_up: 10,
        repeat: 40,
        ..Question::about(Ask::Length(Length::from_mm(10)), ten(28))
    };
    let (before, _) = outcome(&question, &answer(&question).unwrap(), CM);
    assert_eq!(before, "The set-up only. Washed, that is");
}

/// The obvious bound sends her to 1, which is no answer to "end after row 5".
#[test]
fn an_end_without_a_chart_asks_for_its_repeat() {
    let question = Question {
        end_after: 5,
        ..Question::about(Ask::Rows(112), ten(28))
    };
    let wrong = answer(&question).unwrap_err();
    let told: Vec<_> = wrong.iter().map(problem).collect();
    assert_eq!(told, ["Type the rows of one repeat to end in it."]);
}

/// A part of a row is said to the quarter, and a sum that comes out even has no nearest number.
#[test]
fn the_sum_of_rows_says_no_thousandths() {
    let first = |mm: i64| {
        let question = Question::about(Ask::Length(Length::from_mm(mm)), ten(28));
        steps(&question, &answer(&question).unwrap(), CM)[0].replace('\u{a0}', " ")
    };
    assert_eq!(first(400), "40 cm at 28 over 10 cm take just 112 rows.");
    assert_eq!(
        first(357),
        "35.7 cm at 28 over 10 cm take about 100 rows. The nearest that will do: 100."
    );
}
