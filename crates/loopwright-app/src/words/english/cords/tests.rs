//! What is said of cords, growing and shrinking, in both families of units.

use super::*;
use loopwright::cords::{Stretch, answer};
use loopwright::units::{Gauge, LengthUnit, print};

fn centimetres(length: Length) -> String {
    print::with_unit(length, LengthUnit::Cm, print::Step::Tenth)
}

fn asked(around: Around, cords: &[i64], flat: bool) -> Question {
    let mut question = Question::about(around);
    question.unwashed = Some(Gauge::of(20, Gauge::TEN_CM));
    question.cords = cords.iter().map(|cm| Length::of(*cm, LengthUnit::Cm)).collect();
    question.flat = flat;
    question
}

/// Every sentence about a question.
fn all(question: &Question) -> Vec<String> {
    let long: Long = &centimetres;
    let answer = answer(question).unwrap();
    let (before, after) = outcome(question, &answer, long);
    let mut written = vec![headline(&answer, long), before, after, serving(&answer, long)];
    for pair in answer.plan.windows(2) {
        written.push(change(Some(&pair[0]), &pair[1], question.flat, long));
    }
    for stretch in &answer.plan {
        if let By::Gap(none) = &stretch.by {
            written.push(gap(stretch, answer.plan.len() == 1, question.flat));
            written.extend(ways(none, long));
        }
    }
    for cord in &answer.cords {
        written.push(runs(&long(cord.length), &cord.runs, question.flat));
    }
    written.extend(answer.easier.iter().map(|one| easier(one, question.flat, long)));
    written.push(key(&answer, false, question.flat));
    written.extend(notes(question, &answer, long, long));
    written.extend(steps(question, &answer, long, long));
    written
}

#[test]
fn no_sentence_shows_its_seams() {
    let mut pieces = vec![Around::Girth(Length::from_mm(350)), Around::Rounds(vec![30, 90, 30])];
    for (from, to) in [(90, 230), (240, 40), (100, 100), (1, 1), (800, 900)] {
        let rounds = 60;
        pieces.push(Around::Even { from, to, rounds });
    }
    for around in pieces {
        for cords in [&[][..], &[40, 100], &[30, 200]] {
            for flat in [false, true] {
                let mut question = asked(around.clone(), cords, flat);
                question.tip = cords.first().map(|_| Length::from_mm(90));
                for written in all(&question) {
                    let seam = written.contains(['#', '@', '{', '|', '}']) || written.contains("  ");
                    assert!(!seam, "{written:?} about {question:?}");
                }
            }
        }
    }
}

#[test]
fn a_change_is_told_with_its_window() {
    let (from, to, rounds) = (90, 230, 60);
    let written = all(&asked(Around::Even { from, to, rounds }, &[], false));
    assert_eq!(written[0], "40 cm, then 60 cm");
    assert_eq!(
        written[4],
        "Change to 60 cm between round 14 and round 31, on a plain round."
    );
    let at = |earliest, latest| Stretch {
        by: By::Cord(Length::from_mm(800)),
        earliest,
        latest,
        last: 60,
    };
    let told = change(Some(&at(1, 1)), &at(31, 31), true, &centimetres);
    assert_eq!(told, "Change to 80 cm at row 31: no other row will do.");
}

#[test]
fn in_inches_a_cord_is_known_by_its_label() {
    let inches = |cm| cord(Length::of(cm, LengthUnit::Cm), true, &centimetres);
    assert_eq!(
        [inches(40), inches(80), inches(41)],
        ["16\u{a0}in", "32\u{a0}in", "41 cm"]
    );
    assert_eq!(cord(Length::from_mm(400), false, &centimetres), "40 cm");
}

/// A washed gauge, long tips and a ruffle are told, each where it is so; the obvious note is none.
#[test]
fn what_the_rule_does_not_know_is_told() {
    let even = |flat| {
        let around = Around::Even {
            from: 90,
            to: 90,
            rounds: 1,
        };
        asked(around, &[40], flat)
    };
    let has_sentence = |question: &Question, words: &str| all(question).iter().any(|line| line.contains(words));
    let tube = even(false);
    let washed = Question {
        unwashed: None,
        washed: tube.unwashed,
        ..tube.clone()
    };
    let caution = "what lies on the needle is not";
    assert!(has_sentence(&washed, caution) && !has_sentence(&tube, caution));
    assert!(has_sentence(&washed, "take the numbers of rounds as about right"));
    // The obvious outcome calls a washed gauge what lies on the needle.
    let before = |question: &Question| outcome(question, &answer(question).unwrap(), &centimetres).0;
    assert_eq!(before(&washed), "By your washed swatch that is");
    assert_eq!(before(&tube), "On the needle, before washing, that is");
    let long_tips = Question {
        tip: Some(Length::from_mm(120)),
        ..tube.clone()
    };
    assert!(has_sentence(&long_tips, "is left out: tips longer than 10 cm") && !has_sentence(&tube, "left out"));
    let girth = asked(Around::Girth(Length::from_mm(450)), &[40], false);
    assert!(has_sentence(&girth, "A ruffle’s girth is that of its stitches") && !has_sentence(&tube, "ruffle"));
    assert!(
        has_sentence(&tube, "takes from 40 cm to 80 cm") && has_sentence(&even(true), "takes anything up to 80 cm")
    );
}

/// The obvious legend explains all three kinds of bar, whether they are there or not.
#[test]
fn the_key_explains_the_marks_that_are_there() {
    let (from, to, rounds) = (90, 230, 60);
    let key_of = |cords: &[i64], has_gap| {
        let question = asked(Around::Even { from, to, rounds }, cords, false);
        key(&answer(&question).unwrap(), has_gap, false)
    };
    assert_eq!(key_of(&[40, 60], false), "Thick: take these. The numbers are rounds.");
    assert_eq!(
        key_of(&[40, 60, 80], false),
        "Thick: take these. Thin: would do too. The numbers are rounds."
    );
    assert!(key_of(&[40], true).contains("Dotted"));
}

#[test]
fn a_single_round_to_change_in_is_eased_by_one_cord_more() {
    let (from, to, rounds) = (90, 300, 60);
    let question = asked(Around::Even { from, to, rounds }, &[40, 60, 80], false);
    let answer = answer(&question).unwrap();
    let told = easier(answer.easier.as_ref().unwrap(), false, &centimetres);
    assert!(
        told.starts_with("With a cord of 60 cm as well you have more time to change: to 60 cm between round "),
        "{told}"
    );
}

/// How the stitches change is said: evenly, or not at all where no end was typed.
#[test]
fn growth_is_said_as_it_is_taken() {
    let note = |from, to, rounds| {
        notes(
            &asked(Around::Even { from, to, rounds }, &[40], false),
            &answer(&asked(Around::Even { from, to, rounds }, &[40], false)).unwrap(),
            &centimetres,
            &centimetres,
        )[0]
        .clone()
    };
    assert!(note(90, 130, 40).starts_with("The growth is taken as even"));
    assert!(note(130, 90, 40).starts_with("The stitches are taken to go evenly"));
    assert!(note(90, 90, 40).starts_with("All 40 rounds have 90 stitches"));
}

/// No needle is sold at 49.5 cm.
#[test]
fn a_missing_cord_is_one_that_is_sold() {
    let question = asked(Around::Rounds(vec![90, 198, 199]), &[40], false);
    let told = headline(&answer(&question).unwrap(), &centimetres);
    assert_eq!(told, "40 cm, then a cord of 50 cm, which is not among these");
}

#[test]
fn all_cords_are_of_one_thickness() {
    let said = |to, thick: Option<i64>| {
        let question = Question {
            needle: thick.map(Length::from_mm),
            ..asked(
                Around::Even {
                    from: 90,
                    to,
                    rounds: 60,
                },
                &[],
                false,
            )
        };
        needle(&answer(&question).unwrap()).map(|said| said.replace('\u{a0}', " "))
    };
    assert_eq!(said(90, None), None);
    let one = "Take it as US 6 (4 mm): another thickness would change your gauge.";
    assert_eq!(said(90, Some(4)).as_deref(), Some(one));
    assert!(
        said(300, Some(4))
            .unwrap()
            .starts_with("Take each of them as US 6 (4 mm), tips")
    );
}

/// A word among the cords is pointed at by itself.
#[test]
fn what_is_no_cord_is_pointed_at() {
    let text = "40, 60 or 80";
    let unread = loopwright::cords::read_list(text, LengthUnit::Cm).unwrap_err();
    let said = problem(&Problem::new(Name::Cords, Kind::UnreadableList(unread)), text);
    assert_eq!(
        said,
        "This is read as 40, 60 and 80. The “or” has no place in such a list: take it out."
    );
}
