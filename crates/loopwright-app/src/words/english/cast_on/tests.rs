//! What is said of a count.

use super::*;
use loopwright::cast_on::{Multiple, answer};
use loopwright::units::{Gauge, Length, LengthUnit, print};

const CM: Lengths = Lengths {
    unit: LengthUnit::Cm,
    step: print::Step::Tenth,
};

/// Every sentence about a question.
fn all(question: &Question) -> Vec<String> {
    let answer = answer(question).unwrap();
    let (before, after) = outcome(question, &answer, CM);
    let mut written = vec![before, after, headline(&answer), widths(&answer, CM)];
    written.extend(neighbours(&answer, CM));
    written.extend(answer.notes.iter().map(note));
    written.extend(steps(question, &answer, CM));
    written.extend(answer.markers.iter().map(|plan| drawing(plan, 20)));
    written
}

fn asked(width: i64, count: u32, multiple: (u32, u32), knitting: Knitting) -> Question {
    let (of, plus) = multiple;
    Question {
        multiple: Multiple { of, plus },
        knitting,
        ..Question::about(Length::from_mm(width), Gauge::of(count, Gauge::FOUR_INCHES))
    }
}

#[test]
fn no_sentence_shows_its_seams() {
    let ways = [
        Knitting::Round { extra: false },
        Knitting::Round { extra: true },
        Knitting::Flat { edge: 0, seam: 0 },
        Knitting::Flat { edge: 2, seam: 1 },
    ];
    for knitting in ways {
        for multiple in [(1, 0), (8, 3), (400, 1)] {
            for width in [5, 500, 20_000] {
                for sentence in all(&asked(width, 21, multiple, knitting)) {
                    for seam in ["#", "@", "{", "|", "NaN", "Some", "Length"] {
                        assert!(!sentence.contains(seam), "{sentence}");
                    }
                }
            }
        }
    }
}

#[test]
fn the_working_has_her_numbers_in_it() {
    let question = asked(1_000, 21, (8, 3), Knitting::Flat { edge: 0, seam: 1 });
    let steps = steps(&question, &answer(&question).unwrap(), CM);
    assert_eq!(
        steps,
        [
            "Width times gauge: 100\u{a0}cm × 21 ÷ 4\u{a0}in is about 206.75 stitches.",
            "The nearest multiple of 8 plus 3: 25 × 8 + 3 = 203.",
            "Its real width: 203 × 4\u{a0}in ÷ 21 = 98.2\u{a0}cm.",
            "With 0 edge and 1 seam stitch at each edge: 203 + 2 × 0 + 2 × 1 = 205.",
        ]
    );
}

#[test]
fn what_the_count_is_made_of_is_named() {
    let before = |multiple, knitting| {
        let question = asked(1_016, 22, multiple, knitting);
        let answer = answer(&question).unwrap();
        let written = neighbours(&answer, CM);
        (headline(&answer), outcome(&question, &answer, CM).0, written)
    };
    let (line, written, near) = before((8, 3), Knitting::Flat { edge: 0, seam: 1 });
    assert_eq!(line, "Cast on 221");
    assert_eq!(written, "219 for the pattern, 2 for the seams. Washed, it is");
    assert!(near[0].starts_with("213 (211 for the pattern): "), "{near:?}");
    let (_, written, _) = before((8, 3), Knitting::Flat { edge: 2, seam: 0 });
    assert_eq!(written, "219 for the pattern, 4 for the edges. Washed, it is");
    let (_, written, near) = before((8, 3), Knitting::Round { extra: true });
    assert_eq!(written, "216 for the pattern, 1 for the join. Washed, it is");
    assert!(near[1].ends_with(", just as near."), "{near:?}");
    let (line, written, near) = before((8, 0), Knitting::Round { extra: false });
    assert_eq!((&*line, &*written), ("Cast on 216", "Washed, it is"));
    assert!(near[0].starts_with("208: ") && !near[0].contains("near"), "{near:?}");
    assert!(
        near[1].starts_with("224: ") && near[1].ends_with(", just as near."),
        "{near:?}"
    );
}

/// The obvious sentence leaves as many in the round as were cast on.
#[test]
fn the_join_takes_one_that_was_cast_on() {
    let question = asked(1_016, 22, (8, 0), Knitting::Round { extra: true });
    let written = all(&question);
    let has = |words: &str| assert!(written.iter().any(|line| line.contains(words)), "{words}: {written:?}");
    has("Cast on 217");
    has(": 216 are left in the round.");
    has("One more for the join: 216 + 1 = 217.");
    // The swatch that has half a stitch more makes it narrower, and so stands first.
    has("half a stitch wrong, it is 97.5\u{a0}cm to 102.1\u{a0}cm.");
}
