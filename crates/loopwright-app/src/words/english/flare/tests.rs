//! What a knitter reads of a flare, word for word.

use super::*;
use loopwright::flare::answer;
use loopwright::shaping::Pace;
use loopwright::units::{Gauge, Length, LengthUnit, print};

fn long(length: Length) -> String {
    print::with_unit(length, LengthUnit::Cm, print::Step::Tenth)
}

fn asked(hem: Hem) -> Question {
    let gauge = |count| Gauge::of(count, Gauge::TEN_CM);
    Question::about(96, hem, Length::from_mm(300), gauge(21), gauge(28))
}

/// Every sentence about a question.
fn all(question: &Question) -> Vec<String> {
    let answer = answer(question).unwrap();
    let (before, after) = outcome(&answer, &long);
    let mut sentences = vec![before, after, headline(question, &answer), hang(&answer, &long)];
    sentences.extend([growth(question, &answer), labels(question, &answer, &long).words]);
    sentences.extend(drift(question, &answer));
    sentences.push(bind_off(&answer, Print { yards: true }));
    sentences.extend(steps(question, &answer, &long));
    sentences
}

#[test]
fn no_sentence_shows_its_seams() {
    let girth = |cm| Hem::Girth(Length::of(cm, LengthUnit::Cm));
    for hem in [Hem::Flat, girth(120), girth(300), Hem::Stitches(96)] {
        for lines in [true, false] {
            for sentence in all(&Question { lines, ..asked(hem) }) {
                assert!(!sentence.contains(['#', '@', '{', '}', '|']), "{sentence}");
                assert!(!sentence.trim().is_empty() && !sentence.contains("  "), "{sentence:?}");
            }
        }
    }
}

#[test]
fn each_way_to_hang_is_told() {
    let hangs = |hem| hang(&answer(&asked(hem)).unwrap(), &long);
    assert_eq!(hangs(Hem::Stitches(96)), "It hangs straight: a tube, 30 cm deep.");
    assert!(hangs(Hem::Flat).starts_with("It lies flat: 30 cm from neck to hem"));
    assert!(hangs(Hem::Stitches(248)).contains("27.7 cm below the neck"));
    assert!(hangs(Hem::Stitches(632)).ends_with("It is 1.3 times as long as the circle there, and waves."));
}

/// At two rates at most, whatever the hem; the list of rounds is for whoever wants them as even as can be.
#[test]
fn the_increase_rounds_are_told_in_one_breath() {
    let told = |question: &Question| headline(question, &answer(question).unwrap());
    assert_eq!(
        told(&asked(Hem::Stitches(96 + 8 * 12))),
        "Increase 8 in round 4, then every 7th round 11 times more."
    );
    assert_eq!(told(&asked(Hem::Stitches(104))), "Increase 8 once, in round 42.");
    let even = Question {
        rhythm: Pace::MostEven,
        ..asked(Hem::Stitches(248))
    };
    assert_eq!(told(&even), "Increase 8 in 19 rounds, as listed below.");
    let mut listed = Vec::new();
    for hem in (104..=96 + 8 * 83).step_by(8) {
        let question = asked(Hem::Stitches(hem));
        let found = answer(&question).unwrap();
        if !tells_rounds(&found) {
            listed.push(hem);
        }
        let sentence = headline(&question, &found);
        assert!(sentence.len() < 130, "{sentence}");
    }
    // Only where two rounds of three increase, and more, may no two rates keep near the line: some of those are listed.
    assert!(
        listed.len() <= 14 && listed.iter().all(|hem| hem - 96 > 8 * 83 * 2 / 3),
        "{listed:?}"
    );
}

/// A broken circle is told only where one is drawn beside the solid one.
#[test]
fn the_key_tells_what_is_there() {
    let key_of = |hem| key(&answer(&asked(hem)).unwrap(), 96, &long);
    assert!(key_of(Hem::Stitches(248)).contains("Broken: "));
    assert!(!key_of(Hem::Flat).contains("Broken: ") && !key_of(Hem::Stitches(632)).contains("Broken: "));
}

/// The obvious sum binds off the 96 of the neck, and takes one rule for all.
#[test]
fn the_hem_is_bound_off_and_held_beside_a_circle() {
    let question = asked(Hem::Stitches(632));
    let answer = answer(&question).unwrap();
    let print_metres = Print { yards: false };
    let sentence = bind_off(&answer, print_metres);
    assert!(sentence.starts_with("To bind off 632 stitches: "), "{sentence}");
    let BindOffYarn { plain, elastic, i_cord } = answer.bind_off;
    for range in [plain, elastic, i_cord] {
        let between = [&print_metres.nearest(range.least), " to "].concat();
        assert!(sentence.contains(&between), "{sentence}");
    }
    let circle = "To lie flat it would gain 396 stitches; it gains 536.";
    assert!(growth(&question, &answer).starts_with(circle));
}
