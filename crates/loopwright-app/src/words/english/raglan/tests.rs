//! What a knitter reads of a raglan, word for word.

use super::*;
use loopwright::raglan::answer;
use loopwright::shaping::Pace;

fn usual() -> Question {
    Question {
        underarm: 8,
        ..Question::about([56, 16], [200, 68], 64)
    }
}

/// Each track has its own line, at two rates at most, and says how near it keeps.
#[test]
fn body_and_sleeves_are_told_as_two_tracks() {
    let raglan = answer(&usual()).unwrap();
    assert_eq!(
        headline(&raglan),
        [
            "Body: 4 now, then every 2nd round 31 times more.",
            "Sleeves: 2 each now. Then 11 times over: 2 rounds later, then 4 rounds later; 22 in all."
        ]
    );
    let drift = drift(&raglan).unwrap();
    assert_eq!(drift, "Both grow evenly, to the round.");
    let labels = labels(&usual(), &raglan);
    assert_eq!([labels.front_to, labels.back_to], ["100", "100"]);
    assert_eq!(
        steps(&usual(), &raglan),
        [
            "Body: 56 + 32 × 4 + 2 × 8 cast on = 200.",
            "Each sleeve: 16 + 22 × 2 + 8 cast on = 68.",
            "On the needle before you divide: 184 + 2 × 60 = 304."
        ]
    );
    assert_eq!(listed(&raglan, 2)[1], "Round 3, body and sleeves: 64 + 2 × 20 = 104");
}

/// Where both take as many rounds one line tells both.
#[test]
fn body_and_sleeves_that_grow_together_are_told_as_one() {
    let raglan = answer(&Question::about([40, 10], [120, 50], 40)).unwrap();
    assert_eq!(
        headline(&raglan),
        ["Increase 8 now, then every 2nd round 19 times more."]
    );
}

#[test]
fn the_most_even_order_sends_to_the_list() {
    let question = Question {
        rhythm: Pace::MostEven,
        ..Question::about([56, 16], [196, 68], 85)
    };
    let raglan = answer(&question).unwrap();
    assert!(!tells_rounds(&raglan), "{:?}", headline(&raglan));
    assert_eq!(headline(&raglan)[0], "Body: 4 in 35 rounds, as listed below.");
    assert_eq!(listed(&raglan, 400).len(), 35);
}

/// What is cast on at the underarm is not among the stitches that are put aside.
#[test]
fn a_sleeve_is_put_aside_without_its_underarm() {
    let question = Question {
        underarm: 8,
        ..Question::about([80, 12], [160, 70], 50)
    };
    assert_eq!(
        underarm(&question, &answer(&question).unwrap()),
        "Then put 62 aside for each sleeve and cast on 8 at each underarm: 160 round the body, 70 round each sleeve."
    );
}

/// Nothing is increased: neither lines nor drift are told.
#[test]
fn nothing_to_increase_is_plain() {
    let question = Question {
        underarm: 8,
        ..Question::about([80, 16], [96, 24], 60)
    };
    let plain = answer(&question).unwrap();
    assert_eq!(headline(&plain), ["Work 60 rounds plain."]);
    assert_eq!((lines(&question, &plain), drift(&plain)), (None, None));
}
