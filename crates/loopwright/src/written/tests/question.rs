//! Every line of a pattern in every size, and what is asked before there is an answer.

use super::*;
use crate::problem::{Kind, Problem};
use crate::units::parse::Unreadable;

const TWO_SIZES: &str = "A cowl of our own\n\
    Sizes: S (M)\n\
    Body:\n\
    CO 20 (22) sts. Join in the round.\n\
    Rnd 1: *K2, p2; rep from * to end.\n\
    Rnd 2: Knit.\n\
    Rnd 3: K2, bobbly, k to end.";

#[test]
fn every_line_has_an_outcome_in_every_size() {
    let answer = answer(&Question::about(TWO_SIZES)).unwrap();
    assert_eq!(answer.sizes, ["S", "M"]);
    let kinds: Vec<LineKind> = answer.lines.iter().map(|line| line.kind).collect();
    use LineKind::{Heading, Row, Sentence, Sizes, Unread};
    assert_eq!(kinds, [Sentence, Sizes, Heading, Row, Row, Row, Unread]);
    assert!(answer.lines.iter().all(|line| line.sizes.len() == 2));
    assert_eq!((answer.worked, answer.failing, answer.unread), (3, 1, 1));
    let failure = &answer.failures[0];
    assert_eq!((failure.line, failure.size, failure.sizes), (4, 1, 1));
    let left = Outcome::LeftOver {
        stitches: 2,
        repeats: Some(5),
    };
    assert_eq!(failure.worked.outcome, left);
    assert!(failure.drawn.is_some());
    let near = |failure: &Failure| {
        let line = answer.lines[failure.line].place;
        failure.nearest.iter().find_map(|near| near.text(TWO_SIZES, line))
    };
    assert_eq!(
        near(failure),
        None,
        "two stitches are no repeat, and the needle has to have another count"
    );
}

#[test]
fn a_word_of_hers_makes_its_line_a_row() {
    let own = vec![OwnStitch {
        word: "bobbly".into(),
        uses: 1,
        gives: 1,
    }];
    let question = Question {
        own,
        ..Question::about(TWO_SIZES)
    };
    let answer = answer(&question).unwrap();
    assert_eq!((answer.worked, answer.unread), (4, 0));
}

#[test]
fn there_has_to_be_something_to_work_on() {
    let problem = |question: &Question| answer(question).map(|_| ()).unwrap_err()[0];
    assert_eq!(
        problem(&Question::about(" ")),
        Problem::new(Name::PatternText, Kind::Unreadable(Unreadable::Empty))
    );
    assert_eq!(
        problem(&Question::about("K10")),
        Problem::new(Name::Stitches, Kind::Missing)
    );
    let three = Question {
        stitches: vec![10, 11, 12],
        ..Question::about("Sizes: S (M)\nK10 (11)")
    };
    assert_eq!(
        problem(&three),
        Problem::new(Name::Stitches, Kind::Differs { other: 2 })
    );
    let two = Question {
        stitches: vec![10, 11],
        ..three
    };
    assert_eq!(answer(&two).unwrap().failing, 0);
    // A heading alone needs no stitches.
    assert_eq!(answer(&Question::about("Yoke:")).unwrap().worked, 0);
}

#[test]
fn of_many_failures_the_first_are_opened_and_all_are_counted() {
    let text = ["CO 10 sts\n", &"K9\n".repeat(100)].concat();
    let answer = answer(&Question::about(text)).unwrap();
    assert_eq!((answer.failing, answer.failures.len()), (100, MOST_OPENED));
}

#[test]
fn the_nearest_line_is_written_out_with_its_numbers() {
    let near = |text: &str, stitches: u32| -> Vec<String> {
        let question = Question {
            stitches: vec![stitches],
            ..Question::about(text)
        };
        let answer = answer(&question).unwrap();
        let line = answer.lines[0].place;
        answer.failures[0]
            .nearest
            .iter()
            .filter_map(|near| near.text(text, line))
            .collect()
    };
    let found = near("Row 1: K2, (k2, p2) twice, k2", 16);
    assert!(
        found.contains(&"Row 1: K2, (k2, p2) 3 times, k2".to_owned()),
        "{found:?}"
    );
    let found = near("K1, *k2, p2; rep from * to last st, k1", 19);
    assert!(found.iter().all(|line| !line.contains("last 1")), "{found:?}");
}

/// A cast-on with words that cannot be read: what stands on it is worked with its count, and marked as not sure.
#[test]
fn lines_behind_a_cast_on_that_is_not_read_are_not_sure() {
    let answer = answer(&Question::about(
        "With a wibble, CO 40 sts.\nRnd 1: *K2, p2; rep from * to end.",
    ))
    .unwrap();
    let [cast_on, rib] = [0, 1].map(|line| answer.lines[line].sizes[0]);
    assert_eq!((cast_on.outcome, rib.outcome), (Outcome::Unread, Outcome::ComesOut));
    assert_eq!((rib.before, rib.after, rib.stands_on), (40, 40, Some(0)));
    assert_eq!((answer.failing, answer.unread), (0, 1));
}

/// A first line that is not read and casts nothing on says nothing of the needle, which is asked for.
#[test]
fn a_first_line_that_is_not_read_asks_for_the_stitches() {
    let problems = answer(&Question::about("Row 1: K2, wibble.\nRow 2: Purl."))
        .map(|_| ())
        .unwrap_err();
    assert_eq!(problems, [Problem::new(Name::Stitches, Kind::Missing)]);
}

#[test]
fn a_line_of_a_megabyte_is_answered_with_a_problem() {
    let text = "k1, ".repeat(250_000);
    let problems = answer(&Question::about(text)).map(|_| ()).unwrap_err();
    assert_eq!(
        problems,
        [Problem::new(Name::PatternText, Kind::TooMany { most: 250_000 })]
    );
}
