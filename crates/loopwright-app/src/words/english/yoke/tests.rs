//! What a yoke says: short enough to be knitted from, and the same counts throughout.

use super::*;
use loopwright::yoke::answer;

fn headline_of(question: &Question) -> String {
    headline(&answer(question).unwrap())
}

#[test]
fn the_rounds_are_told_with_what_they_change() {
    assert_eq!(
        headline_of(&Question::about(96, 320, 60)),
        "Increase 56 evenly in rounds 10, 20, 30 and 40, then work 20 rounds plain."
    );
    assert_eq!(
        headline_of(&Question::about(320, 96, 60)),
        "Work 20 rounds plain. Decrease 56 evenly in rounds 21, 33, 46 and 59."
    );
    assert_eq!(
        headline_of(&Question::about(97, 300, 50)),
        "Increase 51, 51, 50 and 51 evenly in rounds 8, 17, 25 and 34, then work 16 rounds plain."
    );
    let many = Question {
        shaping_rounds: 12,
        ..Question::about(96, 320, 60)
    };
    assert_eq!(
        headline_of(&many),
        "Increase 18 to 19 evenly in each of 12 rounds, as listed, then work 20 rounds plain."
    );
    let once = Question {
        shaping_rounds: 1,
        ..Question::about(100, 150, 30)
    };
    assert_eq!(
        headline_of(&once),
        "Increase 50 evenly in round 20, then work 10 rounds plain."
    );
}

#[test]
fn the_headline_of_any_yoke_fits_in_three_lines() {
    for (from, to) in [(96, 320), (320, 96), (97, 300), (301, 88), (1_000, 9_999), (2, 4)] {
        for rounds in [12, 60, 61, 9_999] {
            for shaping_rounds in 1..=12 {
                let question = Question {
                    shaping_rounds,
                    ..Question::about(from, to, rounds)
                };
                if let Ok(answer) = answer(&question) {
                    let headline = headline(&answer);
                    assert!(headline.len() <= THREE_LINES, "{} letters: {headline}", headline.len());
                }
            }
        }
    }
}

#[test]
fn each_round_is_told_with_its_share_and_the_count_after_it() {
    let question = Question::about(96, 320, 60);
    let told: Vec<String> = answer(&question)
        .unwrap()
        .rounds
        .iter()
        .map(|round| listed(&question, round))
        .collect();
    assert_eq!(
        told[0],
        "Round 10: increase 56 evenly, 58 % more. 152 stitches after it."
    );
    assert_eq!(
        told[3],
        "Round 40: increase 56 evenly, 21 % more. 320 stitches after it."
    );
}

#[test]
fn the_yoke_is_divided_in_either_direction() {
    let told = |question: &Question| division(question, &answer(question).unwrap());
    assert_eq!(
        told(&Question::about(96, 321, 60)),
        "Then divide: 96 for the front, 97 for the back, 64 put aside for each sleeve. Cast on 8 at each underarm: 209 round the body, 72 round each sleeve. The odd stitch is at the back."
    );
    assert_eq!(
        told(&Question::about(320, 96, 60)),
        "Begin with 208 round the body and 72 round each sleeve. At each underarm leave 8 of the body and 8 of the sleeve aside, and join the rest: 96 for the front, 96 for the back, 64 for each sleeve."
    );
    assert_eq!(
        told(&Question {
            shaping_rounds: 1,
            ..Question::about(2, 3, 9)
        }),
        "So few stitches cannot be divided for body and sleeves."
    );
}

#[test]
fn the_sum_is_told_line_by_line() {
    let question = Question {
        multiple: 8,
        ..Question::about(96, 320, 60)
    };
    assert_eq!(
        steps(&question, &answer(&question).unwrap()),
        [
            "From 96 to 320 in 4 equal steps, to the nearest multiple of 8.",
            "Of 60 rounds the 20 next to the underarm stay plain.",
            "At the underarm: 96 + 96 + 2 × 64 = 320.",
            "Round the body: 96 + 96 + 2 × 8 = 208.",
            "Round each sleeve: 64 + 8 = 72.",
        ]
    );
}

#[test]
fn steps_that_cannot_be_worked_say_why() {
    let told = |question: &Question| problem(Some(question), &answer(question).unwrap_err()[0]);
    let one = Question {
        shaping_rounds: 1,
        ..Question::about(60, 300, 60)
    };
    assert_eq!(
        told(&one),
        "No round can more than double, or lose more than half. Type 4 or more."
    );
    let eight = Question {
        multiple: 8,
        ..Question::about(96, 104, 60)
    };
    assert_eq!(
        told(&eight),
        "Each round has to change the count by a whole multiple at least. Type 1 or fewer."
    );
    let wide = Question {
        sleeve: Some(200),
        ..Question::about(96, 320, 60)
    };
    assert_eq!(
        told(&wide),
        "Two such sleeves leave nothing of 320 for front and back. Type 159 or fewer."
    );
}
