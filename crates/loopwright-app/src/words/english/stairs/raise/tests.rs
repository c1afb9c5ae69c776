//! What a knitter reads of a raise, word for word.

use super::*;
use loopwright::stairs::raise::answer;
use loopwright::units::{Gauge, Length, LengthUnit, print};

fn centimetres(length: Length) -> String {
    print::with_unit(length, LengthUnit::Cm, print::Step::Tenth)
}

fn usual(stitches: u32) -> Question {
    let height = Length::from_mm(25);
    Question::about(Across::Stitches(stitches), height, Gauge::of(32, Gauge::TEN_CM))
}

#[test]
fn a_back_neck_is_raised_in_short_rows() {
    let question = usual(40);
    let answer = answer(&question).unwrap();
    assert_eq!(
        headline(&answer),
        "Turn 5, 10, 15, 20 stitches from the middle of the back, at each side."
    );
    let (before, after) = outcome(&answer, &centimetres);
    assert_eq!(
        before + " " + &after,
        "8 short rows. In its middle the back comes out higher by 2.5 cm"
    );
    let rows = listed(&question, &answer);
    assert_eq!(rows[..2], ["Row 1 (RS): K6, turn", "Row 2 (WS): DS, P11, turn"]);
    assert_eq!(rows[8], "Then DS, K20 to where the round begins");
    assert_eq!(
        steps(&question, &answer, &centimetres),
        [
            "Two rows for each turn at a side: 2 × 4 = 8 rows at 32\u{a0}over\u{a0}10\u{a0}cm, which is 2.5 cm.",
            "20 stitches at each side of the middle, shared out between 4 turns.",
        ]
    );
}

#[test]
fn a_wrap_is_told_in_its_own_words() {
    let question = Question {
        method: Method::Wrap,
        begins: Begins::Edge,
        ..usual(40)
    };
    let rows = listed(&question, &answer(&question).unwrap());
    assert_eq!(rows[..2], ["Row 1 (RS): K25, w&t", "Row 2 (WS): P10, w&t"]);
    assert_eq!(rows[8], "Then the round begins here");
}

/// What was asked for and what comes out stand side by side where they differ.
#[test]
fn what_a_raise_cannot_have_exactly_is_said() {
    let told = |question: &Question| notes(question, &answer(question).unwrap(), &centimetres);
    assert_eq!(told(&usual(40)).len(), 1);
    let turns = Some(3);
    assert_eq!(
        told(&Question { turns, ..usual(40) })[1],
        "You asked for 2.5 cm: with your turns it is 1.9 cm."
    );
    assert_eq!(
        told(&usual(41))[1],
        "Both sides are alike, so of 41 stitches one stays out."
    );
}

#[test]
fn no_sentence_shows_its_seams() {
    let across = Across::Width {
        width: Length::of(18, LengthUnit::Cm),
        gauge: Gauge::of(22, Gauge::TEN_CM),
    };
    for question in [usual(40), usual(3), usual(401), Question { across, ..usual(2) }] {
        let Ok(answer) = answer(&question) else { continue };
        let mut written = vec![headline(&answer), drawing(&answer), outcome(&answer, &centimetres).0];
        written.extend(listed(&question, &answer));
        written.extend(notes(&question, &answer, &centimetres));
        written.extend(steps(&question, &answer, &centimetres));
        for sentence in written {
            let seam = sentence.contains(['#', '@', '{', '|', '}']) || sentence.contains("  ");
            assert!(!seam, "{sentence}");
        }
    }
}
