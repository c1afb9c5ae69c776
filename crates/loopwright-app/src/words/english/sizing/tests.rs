//! Every sentence that can be said about sizes is one: nothing left to fill in, nothing of the program's own.

use super::*;
use loopwright::sizing::{
    Answer, Ask, Garment, Gauges, Listed, Note, PerMille, Question, Ranked, Span, Step, Wrap, answer, read_sizes,
    with_stitches,
};
use loopwright::units::print::Step as Fineness;
use loopwright::units::{Gauge, Length, LengthUnit};

const CENTIMETRES: Lengths = Lengths {
    unit: LengthUnit::Cm,
    step: Fineness::Tenth,
};

fn cm(cm: i64) -> Length {
    Length::of(cm, LengthUnit::Cm)
}

fn about(question: &Question) -> Sentences<'_> {
    Sentences {
        question,
        lengths: CENTIMETRES,
    }
}

fn plain(sentence: &str) -> String {
    sentence.replace('\u{a0}', " ")
}

fn question(bust: i64, sizes: &str, listed: Listed) -> Question {
    let sizes = read_sizes(sizes, LengthUnit::Cm).unwrap();
    Question {
        listed: Some(listed),
        ..Question::about(cm(bust), sizes)
    }
}

fn is_a_sentence(written: &str) {
    assert!(!written.is_empty());
    for wrong in [
        "@", "#", "{", "|", "NaN", "Some(", "None", "  ", " .", " ,", ", ,", ": ,", "--",
    ] {
        assert!(!written.contains(wrong), "{wrong:?} in {written:?}");
    }
    assert!(!written.starts_with([':', ',', ' ']), "{written:?}");
}

fn all_sentences(question: &Question) -> Vec<String> {
    let answer = answer(question).unwrap();
    let sentences = about(question);
    let of_size = |(place, ranked): (usize, &Ranked)| {
        [
            sentences.next_best(Some(ranked)),
            sentences.among_all(ranked),
            sentences.drawn(ranked),
            sentences.drawn_name(place, ranked, false),
        ]
    };
    let Headline { title, line, outcome } = sentences.headline(&answer, &answer.ranked[0]);
    let mut all = vec![title.to_owned(), line, outcome.0, outcome.1, sentences.body(&answer)];
    all.extend(answer.ranked.iter().enumerate().flat_map(of_size));
    all.extend(answer.target.map(|target| sentences.target(target)));
    all.extend(answer.notes.iter().map(|note| sentences.note(note)));
    all.extend(answer.steps.iter().map(|step| sentences.step(step)));
    all.extend(answer.moves.iter().flat_map(|moved| moves(moved, CENTIMETRES)));
    all
}

fn gauges(stitches: u32, rows: Option<u32>) -> Option<Gauges> {
    Some(Gauges {
        stitches: Gauge::of(stitches, Gauge::TEN_CM),
        rows: rows.map(|rows| Gauge::of(rows, Gauge::FOUR_INCHES)),
    })
}

#[test]
fn every_answer_is_said_in_sentences() {
    let finished = "XS 85, S 91, M 97, L 103, XL 111";
    let gauged = |own, rows| {
        let question = question(91, finished, Listed::Garment);
        Question {
            sizes: with_stitches(question.sizes.clone(), "188, 200, 214, 226, 244").unwrap(),
            pattern: gauges(22, Some(30)),
            own: gauges(own, rows),
            ..question
        }
    };
    let wrap = |wrap| {
        let question = question(91, "130, 145, 160", Listed::Garment);
        Question {
            garment: Garment::Wrap(wrap),
            ..question
        }
    };
    let tight = Wrap {
        round: Some(cm(172)),
        neck: Some(cm(50)),
        ..Wrap::default()
    };
    let asked = [
        question(91, finished, Listed::Garment),
        question(94, "S 81-86, M 91-97, L 102-107", Listed::Body),
        question(88, "S 81-86, M 91-97, L 102-107", Listed::Body),
        question(130, "81-86, 91-97", Listed::Body),
        question(91, "One size 120", Listed::Garment),
        Question {
            ask: Ask::Percent(PerMille(-150)),
            ..question(112, finished, Listed::Garment)
        },
        Question {
            high_bust: Some(cm(80)),
            ..question(91, finished, Listed::Garment)
        },
        gauged(20, Some(29)),
        gauged(22, None),
        gauged(30, Some(30)),
        wrap(Wrap::default()),
        wrap(tight),
    ];
    for question in asked {
        all_sentences(&question)
            .iter()
            .for_each(|sentence| is_a_sentence(sentence));
    }
}

fn headline(question: &Question) -> Headline {
    let answer: Answer = answer(question).unwrap();
    about(question).headline(&answer, &answer.ranked[0])
}

#[test]
fn who_is_outside_all_sizes_is_told_so_first() {
    let line = |question: &Question| {
        let Headline { title, line, outcome } = headline(question);
        assert_eq!(title == "Outside all sizes", !line.starts_with("Knit size"));
        assert_eq!(
            title == "Outside all sizes",
            outcome.0.starts_with("The nearest is size")
        );
        plain(&line)
    };
    let bodies = |bust| question(bust, "S 81-86, M 91-97, L 102-107", Listed::Body);
    assert_eq!(line(&bodies(130)), "No size fits: the largest is 23 cm too small");
    assert_eq!(line(&bodies(88)), "Knit size S");
    assert_eq!(line(&bodies(94)), "Knit size M");
    let small = question(91, "121, 130", Listed::Garment);
    assert_eq!(line(&small), "No size fits: the smallest is 22.5 cm too large");
    let binds = Question {
        garment: Garment::Wrap(Wrap {
            round: Some(cm(172)),
            ..Wrap::default()
        }),
        ..question(110, "130, 145, 160", Listed::Garment)
    };
    assert_eq!(line(&binds), "No size fits: the largest is 12 cm too small");
    let only = question(91, "One size 120", Listed::Garment);
    assert_eq!(line(&only), "It does not fit: it is 21.5 cm too large");
}

#[test]
fn a_size_says_whom_it_is_made_for_and_how_it_sits() {
    let outcome = |question: Question| {
        let (before, after) = headline(&question).outcome;
        plain(&format!("{before} {after}"))
    };
    let bodies = |bust, list| outcome(question(bust, list, Listed::Body));
    assert_eq!(
        bodies(91, "90"),
        "The nearest is size 90. Made for a bust of 90 cm; yours is 1 cm more"
    );
    assert_eq!(
        bodies(89, "90"),
        "The nearest is size 90. Made for a bust of 90 cm; yours is 1 cm less"
    );
    assert_eq!(bodies(90, "90"), "Made for a bust of 90 cm, and yours is the same");
    assert_eq!(bodies(94, "91-97"), "Made for 91 to 97 cm, and yours is within");
    assert_eq!(
        bodies(100, "91-97"),
        "The nearest is size 91-97. Made for 91 to 97 cm; yours is 3 cm more"
    );
    let none = Question {
        ask: Ask::Ease(cm(0)),
        ..question(91, "91, 97", Listed::Garment)
    };
    assert_eq!(outcome(none), "91 cm round, as you measure: close");
}

#[test]
fn a_sum_names_its_size_its_gauges_and_its_sign() {
    let question = question(91, "M 97, 103", Listed::Garment);
    let sentences = about(&question);
    let by_gauges = Step::ByGauges {
        size: 1,
        listed: cm(103),
        pattern: Gauge::of(21, Gauge::FOUR_INCHES),
        own: Gauge::of(20, Gauge::TEN_CM),
        girth: cm(107),
    };
    assert_eq!(
        plain(&sentences.step(&by_gauges)),
        "Size 103: 103 cm listed, with 21 in 4 in in the pattern and 20 in 10 cm of yours: 107 cm."
    );
    let target = Step::Target {
        body: cm(91),
        ease: cm(-6),
        garment: cm(85),
    };
    assert_eq!(
        plain(&sentences.step(&target)),
        "Body and ease: 91 cm and −6 cm make 85 cm."
    );
    let heads = Span::new(cm(54), cm(60));
    let unsure = plain(&sentences.note(&Note::NeckUnsure { heads }));
    assert!(unsure.contains("54 to 60 cm"), "{unsure}");
}

#[test]
fn the_drawing_is_told_in_the_order_of_the_list() {
    let sizes = [("M: knit this", "+12 cm loose"), ("L", "+20 cm oversized")];
    assert_eq!(
        drawing("you 91 cm", Some("wanted 98 cm"), sizes.into_iter()),
        "A scale of girths: you 91 cm; wanted 98 cm; M: knit this, +12 cm loose; L, +20 cm oversized."
    );
}

#[test]
fn what_cannot_be_read_is_shown_with_what_to_type() {
    let sentence = |unread: Unread, text: &str| {
        let wrong = Problem::new(Name::Sizes, Kind::UnreadableList(unread));
        plain(&problem(&wrong, text, CENTIMETRES))
    };
    let list = |text: &str| sentence(read_sizes(text, LengthUnit::Cm).unwrap_err(), text);
    let not_as_many = "1 number for 2 sizes: type one for each, in the same order.";
    assert_eq!(list("S 86-91, M ?"), not_as_many);
    assert_eq!(list("S 3"), "“3”: Type 5 cm or more.");
    assert_eq!(list("S 86-"), "“86-”: one more number has to follow, as in 86-91.");
    assert_eq!(
        list("81: (86, 91, 97)"),
        "This is read as 86, 91 and 97, and “81” would be left out. Put it among them, or take it out."
    );
    assert_eq!(
        list("86 + 91"),
        "This is read as 86 and 91. The “+” has no place in such a list: take it out."
    );
    let sizes = read_sizes("86, 91", LengthUnit::Cm).unwrap();
    let few = with_stitches(sizes, "204").unwrap_err();
    assert_eq!(sentence(few, "204"), not_as_many);
    let in_inches = Lengths {
        unit: LengthUnit::Inch,
        step: Fineness::Eighths,
    };
    let small = Kind::TooSmall {
        least: Amount::Length(Length::from_inches(4)),
    };
    let small = Problem::new(Name::Bust, small);
    assert_eq!(plain(&problem(&small, "", in_inches)), "Type 4 in or more.");
}

/// With as many rows as stitches more, the pattern's counts take as much yarn, and only the same measures take more.
#[test]
fn the_yarn_for_another_gauge_is_said_for_both_ways_to_go_on() {
    let moved = loopwright::sizing::Moves::between(gauges(20, None).unwrap(), gauges(22, None).unwrap());
    let said = moves(&moved, CENTIMETRES);
    assert_eq!(
        plain(&said[1]),
        "If you keep the pattern’s stitch counts and its lengths, you need about as much yarn; for a piece of the same size, about 10 % more yarn."
    );
    assert!(said[0].ends_with("Row gauge was taken to change as the stitches do."));
}
