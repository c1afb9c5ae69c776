//! The words of the flare. Lengths come in printed, in the unit the knitter uses, by the function `long`.

use super::cast_on::Long;
use super::intl::{decimal, fill_pattern, fill_pattern_with, fill_pattern_with_strings};
use super::tail::Print;
use super::{Title, Worded, rounds, schedule, units};
use loopwright::flare::{Answer, BindOffYarn, Hang, Hem, HemKind, Name, Placing, Question};
use loopwright::problem::{Kind, Problem};
use loopwright::terms::Range;

pub const TITLE: Title = Title {
    name: "Flare",
    asks: "When to increase from neck to hem, and how it will hang.",
};
pub const WAITING: &str = "The increase rounds appear here.";
pub const ANSWER: &str = "From neck to hem";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::Neck => "Stitches at the neck",
        Name::Depth => "From neck to hem along the fabric",
        Name::Hem => "The hem",
        Name::Girth => "Round the hem, washed",
        Name::Stitches => "Stitches at the hem",
        Name::Gauge => "Stitches in the washed swatch",
        Name::RowGauge => "Rows in the washed swatch, in this fabric",
        Name::Each => "Stitches added in one increase round",
        Name::Lines => "Where they are added",
        Name::Multiple => "The hem is a multiple of",
        Name::First => "Plain rounds before the first increase",
        Name::Last => "Plain rounds at the end, at least",
    }
}

impl Worded for HemKind {
    fn words(self) -> &'static str {
        match self {
            Self::Flat => "lies flat",
            Self::Girth => "is so far round",
            Self::Stitches => "has so many stitches",
        }
    }
}

impl Worded for Placing {
    fn words(self) -> &'static str {
        match self {
            Self::InLines => "in lines, one above the other",
            Self::Scattered => "scattered over the round",
        }
    }
}

/// So many blocks are read as easily as the numbers of the rounds.
const FEW_BLOCKS: usize = 3;

/// Whether the increase rounds are told block by block, and not by their numbers.
fn is_told_in_blocks(answer: &Answer) -> bool {
    answer.schedule.blocks.len() <= FEW_BLOCKS
}

/// Whether the headline names all increase rounds; otherwise it sends to the counts below it.
pub fn names_rounds(answer: &Answer) -> bool {
    is_told_in_blocks(answer) || rounds::which_is_named(&answer.schedule)
}

/// What to knit.
pub fn headline(question: &Question, answer: &Answer) -> String {
    if is_told_in_blocks(answer) {
        return schedule::written(&answer.schedule);
    }
    let mut sentence = fill_pattern("Increase #", &[question.each]) + &rounds::which(&answer.schedule);
    if let Some(rest) = answer.rest {
        sentence += &fill_pattern("; only # in the last of them", &[rest]);
    }
    sentence
}

/// What it comes to.
pub fn outcome(answer: &Answer, long: Long) -> (String, String) {
    let girth = vec![long(answer.shape.hem_girth)];
    let numbers = [answer.rounds, answer.increase_rounds, answer.hem];
    let pattern = if answer.gain == 0 {
        "# {round|rounds}, all plain. The hem has"
    } else {
        "# rounds, # of them {an increase round|increase rounds}. The hem has"
    };
    let before = fill_pattern(pattern, &numbers);
    (
        before,
        fill_pattern_with_strings("# stitches, @ round", &numbers[2..], girth),
    )
}

/// How it hangs.
pub fn hang(answer: &Answer, long: Long) -> String {
    let shape = &answer.shape;
    let (slant, radius) = (long(shape.slant), long(shape.radius));
    match answer.hang {
        Hang::Tube => fill_pattern_with_strings("It hangs straight: a tube, @ deep.", &[], vec![slant]),
        Hang::Cone => fill_pattern_with_strings(
            "It hangs as a cone: @ along its side, the hem @ out from the middle and @ below the neck.",
            &[],
            vec![slant, radius, long(shape.drop)],
        ),
        Hang::Flat => fill_pattern_with_strings(
            "It lies flat: @ from neck to hem, the hem @ out from the middle.",
            &[],
            vec![slant, radius],
        ),
        Hang::Ruffle => fill_pattern_with_strings(
            "It ruffles: @ along the fabric and no farther out than that, @ from the middle. The hem is @ times as long as the circle there.",
            &[],
            vec![slant, radius, decimal(f64::from(shape.fullness) / 1_000.0)],
        ),
    }
}

/// How it grows beside a flat circle, and where the increases stand.
pub fn growth(question: &Question, answer: &Answer) -> String {
    let sentence = fill_pattern(
        "A flat circle would gain # stitches; this gains #.",
        &[answer.flat_gain, answer.gain],
    );
    if answer.gain == 0 {
        return sentence;
    }
    let pattern = if question.lines {
        " In an increase round, add one at each of # lines, marked at the neck."
    } else {
        " In an increase round, space # evenly, not above those of the last one: Even spacing says where."
    };
    sentence + &fill_pattern(pattern, &[question.each])
}

/// Below the drawing.
pub fn key(answer: &Answer, long: Long) -> String {
    let pattern = " Left from the side, right from above. Solid: the hem, @ out from the middle. Dashed: a hem that lies flat, @ out. Thin: the neck.";
    fill_pattern_with_strings(
        pattern,
        &[],
        vec![long(answer.shape.radius), long(answer.shape.flat_radius)],
    )
}

/// What the drawing shows.
pub fn drawing(answer: &Answer, long: Long) -> String {
    hang(answer, long) + &key(answer, long)
}

/// What a bind-off takes.
pub fn bind_off(answer: &Answer, print: Print) -> String {
    let pattern = "To bind off # stitches: @ to @ of yarn plain, @ to @ elastic, @ to @ as an i-cord (common practice, no source).";
    let BindOffYarn { plain, elastic, i_cord } = answer.bind_off;
    let between = |range: Range| [print.nearest(range.least), print.up(range.most)];
    let lengths = [plain, elastic, i_cord].map(between).concat();
    fill_pattern_with_strings(pattern, &[answer.hem], lengths)
}

/// The sum.
pub fn steps(question: &Question, answer: &Answer, long: Long) -> Vec<String> {
    let [gauge, rows] = [question.gauge, question.row_gauge].map(units::gauge);
    let (depth, rate) = (long(question.depth), decimal(f64::from(answer.flat_rate) / 1_000.0));
    let mut steps = vec![fill_pattern_with(
        "Depth times row gauge: @ at @ are # rounds.",
        &[answer.rounds],
        &[&depth, &rows],
    )];
    if let Hem::Girth(girth) = question.hem {
        steps.push(fill_pattern_with(
            "Girth times gauge: @ at @; the nearest count that can be had is #.",
            &[answer.hem],
            &[&long(girth), &gauge],
        ));
    }
    steps.push(fill_pattern(
        "The hem less the neck: # − # = #, in # {round|rounds} of #.",
        &[
            answer.hem,
            question.neck,
            answer.gain,
            answer.increase_rounds,
            question.each,
        ],
    ));
    steps.push(fill_pattern_with(
        "A flat circle: 2 × π × @ ÷ @ = @ stitches a round, # in # rounds, rounded once.",
        &[answer.flat_gain, answer.rounds],
        &[&gauge, &rows, &rate],
    ));
    steps
}

pub const SOURCE: &str = "Geometry of circle and cone. Eight at a time, a plain round at the end, flat within a twentieth of the rate, yarn to bind off: common practice, no source.";

/// What to type instead. Of what would make growth that is too fast possible, one thing is enough.
pub fn problem(problem: &Problem) -> String {
    let before = match (problem.field.name(), problem.kind) {
        (Some(Name::Each), Kind::TooFew { least: 2.. }) => {
            "There are too few rounds for that. Change one marked figure. "
        }
        (Some(Name::Each), Kind::TooMany { .. }) => "One to a gap at the neck. ",
        (Some(Name::Multiple), Kind::NoExact { .. }) => {
            "From this neck these increases never meet that multiple: scatter them, or take another neck. "
        }
        (Some(Name::Stitches), Kind::TooFew { .. }) | (Some(Name::Girth), Kind::TooSmall { .. }) => {
            "A flare only grows. "
        }
        _ => "",
    };
    [before, &super::problem::sentence(&problem.kind)].concat()
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright::flare::answer;
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
        sentences.extend([growth(question, &answer), drawing(&answer, &long)]);
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
        assert!(hangs(Hem::Stitches(632)).ends_with("The hem is 1.285 times as long as the circle there."));
    }

    #[test]
    fn a_short_schedule_is_told_in_the_one_convention() {
        let even = Question {
            last: 0,
            ..asked(Hem::Stitches(96 + 8 * 12))
        };
        let sentence = headline(&even, &loopwright::flare::answer(&even).unwrap());
        assert_eq!(
            sentence,
            "Work 3 rounds plain, then an increase round. Then 6 rounds plain, then an increase round; 11 times. Then 3 rounds plain."
        );
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
        let circle = "A flat circle would gain 396 stitches; this gains 536.";
        assert!(growth(&question, &answer).starts_with(circle));
    }
}
