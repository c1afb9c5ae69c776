//! What is said of a pattern at another gauge.

use super::super::units::Lengths;
use super::*;
use loopwright::cast_on::{Knitting, Multiple};
use loopwright::regauge::{Answer, Question, Shaping, answer};
use loopwright::units::{Gauge, Length, LengthUnit, print};

const LENGTHS: Lengths = Lengths {
    unit: LengthUnit::Cm,
    step: print::Step::Tenth,
};

fn about<'a>(question: &'a Question, answer: &'a Answer) -> Sentences<'a> {
    Sentences {
        question,
        answer,
        lengths: LENGTHS,
    }
}

fn plain(sentence: &str) -> String {
    sentence.replace('\u{a0}', " ")
}

fn ten(count: u32) -> Gauge {
    Gauge::of(count, Gauge::TEN_CM)
}

/// Every sentence about a question.
fn all(question: &Question) -> Vec<String> {
    let answer = answer(question).unwrap();
    let sentences = about(question, &answer);
    let Lead { line, outcome, .. } = sentences.lead();
    let mut all = vec![outcome.0, outcome.1, line];
    all.extend(sentences.near());
    for found in answer.stitches.iter().chain(&answer.rows) {
        all.extend(Column::ALL.map(|column| sentences.cell(column, found, true)));
    }
    if let Some(shaped) = &answer.shaping {
        all.extend([sentences.ends(shaped), sentences.shaping(shaped)]);
        all.extend(figures(sentences.drawn_shaping(shaped)));
    }
    all.extend(
        answer
            .stitches
            .first()
            .map(|found| figures(sentences.drawn_stitches(found, answer.rows.first())))
            .unwrap_or_default(),
    );
    all.extend(
        answer
            .rows
            .first()
            .map(|found| figures(sentences.drawn_rows(found)))
            .unwrap_or_default(),
    );
    all.extend(sentences.rows_wait());
    all.extend(answer.notes.iter().copied().map(note));
    all.extend(sentences.steps());
    all
}

fn figures(drawn: Drawn) -> [String; 3] {
    [drawn.above, drawn.below, drawn.kept]
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
    let sentences = about(&question, &found);
    let lead = sentences.lead();
    assert_eq!(
        [lead.line, lead.outcome.0, plain(&lead.outcome.1)],
        [
            "198 (216, 233)",
            "In place of 180 (196, 212) in the pattern; at your gauge that measures",
            "90 (98.2, 105.9) cm"
        ]
    );
    assert_eq!(
        Column::ALL.map(|column| plain(&sentences.cell(column, &found.stitches[0], false))),
        ["180: 90 cm", "198: 90 cm", "81.8 cm"]
    );
    let followed = Question {
        wanted: Some(Length::from_mm(910)),
        ..question
    };
    let found = answer(&followed).unwrap();
    let lead = about(&followed, &found).lead();
    assert_eq!(lead.line, "Follow the size of 196 stitches");
    assert_eq!(plain(&lead.outcome.1), "89.1 cm, 1.9 cm less than you want");
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
    let sentences = about(&question, &found);
    assert_eq!(sentences.lead().line, "From 66 to 46 stitches");
    let shaped = found.shaping.as_ref().unwrap();
    assert_eq!(
        [sentences.ends(shaped), sentences.shaping(shaped)],
        [
            "From 66 to 46 stitches in 60 rows, 10 of them shaped.",
            "Work 4 rows plain, then a decrease row. Then 5 rows plain, then a decrease row; 9 times. Then 1 row plain."
        ]
    );
}

/// What is dropped, compared or never converted is told where it is so, and only there.
#[test]
fn what_the_conversion_keeps_is_told() {
    let plain_question = asked(&[180]);
    let has = |question: &Question, words: &str| {
        let found = answer(question).unwrap();
        found.notes.iter().copied().map(note).any(|note| note.contains(words))
    };
    let dropped = Question {
        multiple: Multiple { of: 8, plus: 3 },
        ..plain_question.clone()
    };
    let words = "the 3 stitches beside the repeats are dropped";
    assert!(has(&dropped, words) && !has(&plain_question, words));
    let spans = Question {
        own: Gauge::of(22, Gauge::FOUR_INCHES),
        ..plain_question.clone()
    };
    assert!(has(&spans, "4 in are longer than 10 cm") && !has(&plain_question, "4 in"));
    let shaped = Question {
        shaping: Some(Shaping {
            from: 60,
            to: 42,
            rows: 56,
            each: 2,
            right_side_only: false,
        }),
        ..plain_question.clone()
    };
    assert!(has(&shaped, "is no rate at another gauge") && !has(&plain_question, "rate at"));
    // 198 of them, at 22 1/2 and at 21 1/2 in 10 cm.
    let found = answer(&plain_question).unwrap();
    let near = about(&plain_question, &found).near().unwrap();
    assert!(
        plain(&near).ends_with("198 stitches measure 88 cm to 92.1 cm."),
        "{near}"
    );
}

#[test]
fn rows_that_wait_say_for_what_and_where_to_type_it() {
    let wait = |pattern_rows, own_rows| {
        let question = Question {
            rows: vec![40],
            pattern_rows,
            own_rows,
            ..asked(&[180])
        };
        let found = answer(&question).unwrap();
        let sentences = about(&question, &found);
        assert_eq!(sentences.lead().line, "198");
        sentences.rows_wait()
    };
    let rows = Some(ten(28));
    assert_eq!(wait(rows, rows), None);
    let both = "Rows and shaping are still to come: type the pattern’s rows and those of your swatch under “Rows and lengths”.";
    assert_eq!(wait(None, None).as_deref(), Some(both));
    assert!(wait(rows, None).unwrap().contains("type the rows of your swatch under"));
    assert!(wait(None, rows).unwrap().contains("type the pattern’s rows under"));
}

#[test]
fn shaping_that_is_half_typed_says_what_to_fill_in() {
    assert_eq!(shaping_waits(&[]), None);
    let one = "The shaping is still to come: under “Shaping in the pattern” fill in “to so many”.";
    assert_eq!(shaping_waits(&[Name::To]).as_deref(), Some(one));
    let two = shaping_waits(&[Name::To, Name::ShapingRows]).unwrap();
    assert!(
        two.ends_with("fill in “to so many” and “in so many rows, plain ones too”."),
        "{two}"
    );
}

#[test]
fn a_sum_that_says_nothing_is_not_said() {
    let steps = |own: u32, counts: &[u32]| {
        let question = Question::about(ten(20), ten(own), counts.to_vec());
        let found = answer(&question).unwrap();
        plain(&about(&question, &found).steps()[0])
    };
    assert_eq!(
        steps(22, &[180]),
        "180 at 20 over 10 cm measure 90 cm; at 22 over 10 cm that takes 198."
    );
    // Nobody says 206.8 stitches.
    assert_eq!(
        steps(22, &[188]),
        "188 at 20 over 10 cm measure 94 cm; at 22 over 10 cm that takes about 206¾, so 207."
    );
    let question = Question::about(ten(20), ten(20), vec![180]);
    let found = answer(&question).unwrap();
    assert_eq!(
        about(&question, &found).lead().outcome.0,
        "As in the pattern; at your gauge that measures"
    );
}

#[test]
fn a_figure_has_the_counts_of_the_answer_in_it() {
    let question = asked(&[180]);
    let found = answer(&question).unwrap();
    let drawn = about(&question, &found).drawn_stitches(&found.stitches[0], None);
    assert_eq!(
        figures(drawn).map(|words| plain(&words)),
        ["180 stitches, 90 cm", "198 stitches, 90 cm", "180 kept: 81.8 cm"]
    );
    let tall = Question {
        rows: vec![84],
        ..question
    };
    let found = answer(&tall).unwrap();
    let drawn = about(&tall, &found).drawn_stitches(&found.stitches[0], found.rows.first());
    assert_eq!(drawn.above, "180 stitches by 84 rounds");
    assert_eq!(drawn.below, "198 stitches by 90 rounds");
    let followed = Question {
        wanted: Some(Length::from_mm(910)),
        ..asked(&[180, 196])
    };
    let found = answer(&followed).unwrap();
    let drawn = about(&followed, &found).drawn_stitches(&found.stitches[1], None);
    assert_eq!(
        figures(drawn).map(|words| plain(&words)),
        ["wanted: 91 cm", "196 stitches, 89.1 cm", ""]
    );
}

#[test]
fn a_count_that_would_be_left_out_is_named_and_the_others_are_shown() {
    let each = loopwright::regauge::STITCHES;
    let sentence = |text: &str| {
        let unread = loopwright::sizing::read_counts(text, each).unwrap_err();
        problem(&Problem::new(Name::Counts, Kind::UnreadableList(unread)), text)
    };
    assert_eq!(
        sentence("88: (92, 96)"),
        "This is read as 92 and 96, and “88” would be left out. Put it among them, or take it out."
    );
    assert_eq!(sentence("88 (92, 9z)"), "“9z”: Type a number in figures, as in 132.");
    assert_eq!(sentence("88-92"), "“88-92”: Type one number only.");
    assert_eq!(
        sentence("88 (x, 112)"),
        "This is read as 88 and 112. The “x” has no place in such a list: take it out."
    );
    assert_eq!(
        sentence(&"x".repeat(500)),
        format!("“{}…”: Type a number in figures, as in 132.", "x".repeat(32))
    );
}

#[test]
fn a_dash_keeps_its_place_among_the_counts() {
    for (gap, line, pattern) in [(0, "– (198, 216)", "– (180, 196)"), (1, "198 (–, 216)", "180 (–, 196)")] {
        let question = Question {
            count_gaps: vec![gap],
            ..asked(&[180, 196])
        };
        let found = answer(&question).unwrap();
        let lead = about(&question, &found).lead();
        assert_eq!(lead.line, line);
        assert!(lead.outcome.0.contains(pattern), "{}", lead.outcome.0);
    }
}
