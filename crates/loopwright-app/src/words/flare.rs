//! The words of the flare. Lengths come in printed, in the unit the knitter uses, by the function `long`.

use super::Title;
use super::cast_on::Long;
use super::intl::{decimal, say, say_made, say_with};
use super::tail::Print;
use super::{rounds, schedule, units};
use loopwright::flare::{Answer, Hang, Hem, Question};
use loopwright::problem::{Kind, Problem};

/// What it is called.
pub const TITLE: Title = Title {
    name: "Flare",
    asks: "When to increase from neck to hem, and how it will hang.",
};
/// The label of the count at the neck.
pub const LABEL_NECK: &str = "Stitches at the neck";
/// The label of the choice of hem.
pub const LABEL_HEM: &str = "The hem";
/// The label of the hem's girth.
pub const LABEL_GIRTH: &str = "Round the hem, washed";
/// The label of the hem's count.
pub const LABEL_STITCHES: &str = "Stitches at the hem";
/// The label of the depth.
pub const LABEL_DEPTH: &str = "From neck to hem along the fabric";
/// The label of the gauge.
pub const LABEL_GAUGE: &str = "Stitches in the washed swatch";
/// The label of the row gauge.
pub const LABEL_ROWS: &str = "Rows in the washed swatch, in this fabric";
/// The label of the increases of one round.
pub const LABEL_EACH: &str = "Stitches added in one increase round";
/// The label of the choice of lines.
pub const LABEL_LINES: &str = "Where they are added";
/// The label of the repeat.
pub const LABEL_MULTIPLE: &str = "The hem is a multiple of";
/// The label of the plain rounds at the beginning.
pub const LABEL_FIRST: &str = "Plain rounds before the first increase";
/// The label of the plain rounds at the end.
pub const LABEL_LAST: &str = "Plain rounds at the end, at least";
/// Where the answer will be.
pub const WAITING: &str = "The increase rounds appear here.";
/// Above the answer.
pub const ANSWER: &str = "From neck to hem";

/// How wide the hem is to be.
pub const HEMS: [(&str, &str); 3] = [
    ("flat", "lies flat"),
    ("girth", "is so far round"),
    ("stitches", "has so many stitches"),
];
/// Where increases stand.
pub const LINES: [(&str, &str); 2] = [
    ("lines", "in lines, one above the other"),
    ("scattered", "scattered over the round"),
];

/// So many blocks are read as easily as the numbers of the rounds.
const FEW_BLOCKS: usize = 3;

/// What to knit.
pub fn headline(question: &Question, answer: &Answer) -> String {
    if answer.schedule.blocks.len() <= FEW_BLOCKS {
        return schedule::written(&answer.schedule);
    }
    let mut said = say("Increase #", &[question.each]) + &rounds::which(&answer.schedule);
    if let Some(rest) = answer.rest {
        said += &say("; only # in the last of them", &[rest]);
    }
    said
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
    let before = say(pattern, &numbers);
    (before, say_made("# stitches, @ round", &numbers[2..], girth))
}

/// How it hangs.
pub fn hang(answer: &Answer, long: Long) -> String {
    let shape = &answer.shape;
    let fullness = decimal(f64::from(shape.fullness) / 1_000.0);
    let (pattern, last) = match answer.hang {
        Hang::Tube => ("It hangs straight: a tube, @ deep.", fullness),
        Hang::Cone => (
            "It hangs as a cone: @ along its side, the hem @ out from the middle and @ below the neck.",
            long(shape.drop),
        ),
        Hang::Flat => (
            "It lies flat: @ from neck to hem, the hem @ out from the middle.",
            fullness,
        ),
        Hang::Ruffle => (
            "It ruffles: @ along the fabric and no farther out than that, @ from the middle. The hem is @ times as long as the circle there.",
            fullness,
        ),
    };
    say_made(pattern, &[], vec![long(shape.slant), long(shape.radius), last])
}

/// How it grows beside a flat circle, and where the increases stand.
pub fn growth(question: &Question, answer: &Answer) -> String {
    let said = say(
        "A flat circle would gain # stitches; this gains #.",
        &[answer.flat_gain, answer.gain],
    );
    if answer.gain == 0 {
        return said;
    }
    let pattern = if question.lines {
        " In an increase round, add one at each of # lines, marked at the neck."
    } else {
        " In an increase round, space # evenly, not above those of the last one: Even spacing says where."
    };
    said + &say(pattern, &[question.each])
}

/// Below the drawing.
pub fn key(answer: &Answer, long: Long) -> String {
    let pattern = " Left from the side, right from above. Solid: the hem, @ out from the middle. Dashed: a hem that lies flat, @ out. Thin: the neck.";
    say_made(
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
    let mut lengths = Vec::new();
    for [least, most] in &answer.bind_off {
        lengths.push(print.nearest(*least));
        lengths.push(print.up(*most));
    }
    say_made(pattern, &[answer.hem], lengths)
}

/// The sum.
pub fn steps(question: &Question, answer: &Answer, long: Long) -> Vec<String> {
    let [gauge, rows] = [question.gauge, question.row_gauge].map(units::gauge);
    let (depth, rate) = (long(question.depth), decimal(f64::from(answer.flat_rate) / 1_000.0));
    let numbers = [
        answer.rounds,
        answer.hem,
        question.neck,
        answer.gain,
        answer.increase_rounds,
        question.each,
        answer.flat_gain,
        answer.rounds,
    ];
    let mut steps = Vec::new();
    let mut step = |pattern: &str, from: usize, words: &[&str]| {
        steps.push(say_with(pattern, numbers.get(from..).unwrap_or_default(), words));
    };
    step("Depth times row gauge: @ at @ are # rounds.", 0, &[&depth, &rows]);
    if let Hem::Girth(girth) = question.hem {
        step(
            "Girth times gauge: @ at @; the nearest count that can be had is #.",
            1,
            &[&long(girth), &gauge],
        );
    }
    step("The hem less the neck: # − # = #, in # {round|rounds} of #.", 1, &[]);
    step(
        "A flat circle: 2 × π × @ ÷ @ = @ stitches a round, # in # rounds, rounded once.",
        6,
        &[&gauge, &rows, &rate],
    );
    steps
}

/// Where the rules come from.
pub const SOURCE: &str = "Geometry of circle and cone. Eight at a time, a plain round at the end, flat within a twentieth of the rate, yarn to bind off: common practice, no source.";

/// What to type instead. Of what would make growth that is too fast possible, one thing is enough.
pub fn problem(problem: &Problem) -> String {
    let before = match (problem.field.key(), problem.kind) {
        ("each", Kind::TooFew { least: 2.. }) => "There are too few rounds for that. Change one marked figure. ",
        ("each", Kind::TooMany { .. }) => "One to a gap at the neck. ",
        ("multiple", Kind::NoExact { .. }) => {
            "From this neck these increases never meet that multiple: scatter them, or take another neck. "
        }
        ("stitches", Kind::TooFew { .. }) | ("girth", Kind::TooSmall { .. }) => "A flare only grows. ",
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
        let mut said = vec![before, after, headline(question, &answer), hang(&answer, &long)];
        said.extend([growth(question, &answer), drawing(&answer, &long)]);
        said.push(bind_off(&answer, Print { yards: true }));
        said.extend(steps(question, &answer, &long));
        said
    }

    #[test]
    fn no_sentence_shows_its_seams() {
        let girth = |cm| Hem::Girth(Length::of(cm, LengthUnit::Cm));
        for hem in [Hem::Flat, girth(120), girth(300), Hem::Stitches(96)] {
            for lines in [true, false] {
                for said in all(&Question { lines, ..asked(hem) }) {
                    assert!(!said.contains(['#', '@', '{', '}', '|']), "{said}");
                    assert!(!said.trim().is_empty() && !said.contains("  "), "{said:?}");
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
        let said = headline(&even, &loopwright::flare::answer(&even).unwrap());
        assert_eq!(
            said,
            "Work 3 rounds plain, then an increase round. Then 6 rounds plain, then an increase round; 11 times. Then 3 rounds plain."
        );
    }

    /// The obvious sum binds off the 96 of the neck, and takes one rule for all.
    #[test]
    fn the_hem_is_bound_off_and_held_beside_a_circle() {
        let question = asked(Hem::Stitches(632));
        let answer = answer(&question).unwrap();
        let said = bind_off(&answer, Print { yards: false });
        assert!(said.starts_with("To bind off 632 stitches: "), "{said}");
        let [plain, elastic, cord] = [0, 1, 2].map(|way| answer.bind_off[way].map(|length| length.to_nm()));
        assert!(plain[0] < elastic[0] && elastic[0] < cord[0]);
        let print = Print { yards: false };
        for [least, _] in answer.bind_off {
            assert!(said.contains(&[&print.nearest(least), " to "].concat()), "{said}");
        }
        let circle = "A flat circle would gain 396 stitches; this gains 536.";
        assert!(growth(&question, &answer).starts_with(circle));
    }
}
