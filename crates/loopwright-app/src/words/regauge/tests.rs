//! What is said of a pattern at another gauge.

use super::*;
use loopwright::cast_on::Multiple;
use loopwright::regauge::{Shaping, answer};
use loopwright::units::{Gauge, Length, LengthUnit, print};

fn long(length: Length) -> String {
    print::with_unit(length, LengthUnit::Cm, print::Step::Tenth)
}

fn ten(count: u32) -> Gauge {
    Gauge::of(count, Gauge::TEN_CM)
}

/// Every sentence about a question.
fn all(question: &Question) -> Vec<String> {
    let answer = answer(question).unwrap();
    let (_, headline, (before, after)) = lead(question, &answer, &long);
    let mut said = vec![before, after, headline];
    said.push(near(&answer, &long));
    for found in answer.stitches.iter().chain(&answer.rows) {
        said.extend([0, 1, 2].map(|column| cell(column, found, true, &long)));
    }
    said.extend(
        answer
            .shaping
            .iter()
            .flat_map(|shaped| shaping(question, shaped, &long)),
    );
    said.extend(notes(question, &answer));
    said.extend(steps(question, &answer, &long));
    said
}

/// From 20 stitches and 28 rows in 10 cm to 22 and 30.
fn asked(counts: &[u32]) -> Question {
    Question {
        pattern_rows: Some(ten(28)),
        own_rows: Some(ten(30)),
        ..Question::about(ten(20), ten(22), counts.to_vec())
    }
}

#[test]
fn no_sentence_shows_its_seams() {
    let shaping = Shaping {
        from: 100,
        to: 40,
        rows: 90,
        each: 2,
        right_side_only: true,
    };
    let steep = Shaping { rows: 3, ..shaping };
    let ways = [
        Knitting::Round { extra: false },
        Knitting::Round { extra: true },
        Knitting::Flat { edge: 2, seam: 1 },
    ];
    for knitting in ways {
        for counts in [&[][..], &[121][..], &[180, 198, 220][..]] {
            for rows in [&[][..], &[40][..], &[40, 46][..]] {
                for shaping in [shaping, steep] {
                    let question = Question {
                        rows: rows.to_vec(),
                        length: Some(Length::from_mm(220)),
                        wanted: (counts.len() > 1).then_some(Length::from_mm(950)),
                        shaping: Some(shaping),
                        multiple: Multiple { of: 8, plus: 3 },
                        knitting,
                        ..asked(counts)
                    };
                    for sentence in all(&question) {
                        for seam in ["#", "@", "{", "|", "NaN", "Some", "Length"] {
                            assert!(!sentence.contains(seam), "{sentence}");
                        }
                    }
                }
            }
        }
    }
}

#[test]
fn a_list_stands_as_in_the_pattern() {
    let question = asked(&[180, 196, 212]);
    let found = answer(&question).unwrap();
    let (_, headline, (_, old)) = lead(&question, &found, &long);
    assert_eq!((&*headline, &*old), ("198 (216, 233)", "180 (196, 212)"));
    assert_eq!(
        [0, 1, 2].map(|column| cell(column, &found.stitches[0], false, &long)),
        ["180: 90 cm", "198: 90 cm", "81.8 cm"]
    );
    let followed = Question {
        wanted: Some(Length::from_mm(910)),
        ..question
    };
    let found = answer(&followed).unwrap();
    let (_, headline, (_, measures)) = lead(&followed, &found, &long);
    assert_eq!(
        (&*headline, &*measures),
        ("Follow the size of 196 stitches", "89.1 cm, 1.9 cm less than you want")
    );
}

#[test]
fn shaping_is_told_in_the_one_convention() {
    let question = Question {
        knitting: Knitting::Flat { edge: 0, seam: 0 },
        shaping: Some(Shaping {
            from: 60,
            to: 42,
            rows: 56,
            each: 2,
            right_side_only: true,
        }),
        ..asked(&[])
    };
    let found = answer(&question).unwrap();
    assert_eq!(lead(&question, &found, &long).1, "From 66 to 46 stitches");
    assert_eq!(
        shaping(&question, found.shaping.as_ref().unwrap(), &long),
        [
            "From 66 to 46 stitches in 60 rows, 10 of them shaped.",
            "Work 4 rows plain, then a decrease row. Then 5 rows plain, then a decrease row; 9 times. Then 1 row plain."
        ]
    );
}

/// What is dropped, compared or never converted is told where it is so, and only there.
#[test]
fn what_the_conversion_keeps_is_told() {
    let plain = asked(&[180]);
    let has = |question: &Question, words: &str| {
        let found = answer(question).unwrap();
        notes(question, &found).iter().any(|note| note.contains(words))
    };
    let dropped = Question {
        multiple: Multiple { of: 8, plus: 3 },
        ..plain.clone()
    };
    let words = "the 3 beside the repeats are dropped";
    assert!(has(&dropped, words) && !has(&plain, words));
    let spans = Question {
        own: Gauge::of(22, Gauge::FOUR_INCHES),
        ..plain.clone()
    };
    assert!(has(&spans, "4 in are longer than 10 cm") && !has(&plain, "4 in"));
    let shaped = Question {
        shaping: Some(Shaping {
            from: 60,
            to: 42,
            rows: 56,
            each: 2,
            right_side_only: false,
        }),
        ..plain.clone()
    };
    assert!(has(&shaped, "never the rate") && !has(&plain, "rate"));
    // 198 of them, at 22 1/2 and at 21 1/2 in 10 cm.
    let found = answer(&plain).unwrap();
    assert!(near(&found, &long).ends_with("198 measure 88 cm to 92.1 cm."));
}
