//! The words of the tail. A tail, and whatever it is made of, is said no shorter than it is; lengths keep to the one
//! family of units that [`Print`] stands for.

mod print;

pub use print::Print;

use super::Title;
use super::intl::{decimal, say, say_with, tenths};
use loopwright::problem::{Kind, Problem};
use loopwright::tail::{ARM, Answer, Estimate, MEASURED_FROM, Remaining, Strand, TWO_STRANDS_ABOVE, Verdict, Way, Why};
use loopwright::units::parse::Unreadable;
use loopwright::units::{Amount, Length};
use print::across;

/// What it is called.
pub const TITLE: Title = Title {
    name: "Tail",
    asks: "How much yarn to leave before the first stitch.",
};
/// Before the count.
pub const I_CAST_ON: &str = "I cast on";
/// After it.
pub const STITCHES: &str = "stitches,";
/// Before the choice of yarn.
pub const IN_YARN: &str = "in yarn that is";
/// Before the choice of unit.
pub const MEASURED_IN: &str = "measured in";
/// The label of the count.
pub const LABEL_STITCHES: &str = "Stitches to cast on";
/// The label of the choice of method.
pub const LABEL_METHOD: &str = "How they are cast on";
/// The label of the choice of yarn.
pub const LABEL_YARN: &str = "The class on the ball band";
/// The label of the choice of unit.
pub const LABEL_UNIT: &str = "Unit of yarn";
/// The label of the needle.
pub const LABEL_NEEDLE: &str = "Needle you cast on with";
/// The label of a second needle.
pub const LABEL_SECOND: &str = "A second needle held with it";
/// The label of the wraps.
pub const LABEL_WRAPS: &str = "Wraps of the yarn in an inch";
/// The label of the edge.
pub const LABEL_WIDTH: &str = "Length of the edge";
/// The label of the stitches of a piece.
pub const LABEL_MEASURED: &str = "Stitches of a piece you measured";
/// The label of what they used.
pub const LABEL_USED: &str = "Tail they used, without the slip knot";
/// The label of the end.
pub const LABEL_END: &str = "End to weave in";
/// Where the fields for the middle of casting on are.
pub const MIDWAY: &str = "Will what is left do?";
/// The label of the tail that is left.
pub const LABEL_LEFT: &str = "Tail that is left";
/// The label of the stitches to go.
pub const LABEL_TO_GO: &str = "Stitches still to cast on";
/// Where the answer will be.
pub const WAITING: &str = "Type the count and choose the class on the ball band. If there is none, count wraps or measure a piece: see “More about this”.";
/// Above the estimates.
pub const ESTIMATES: &str = "Ways to reckon it";
/// Below the drawing.
const KEY: &str =
    "Solid for the stitches, dashed for the reserve, thin for the end. The upright lines are arm’s lengths of about @.";

/// The units of yarn.
pub const UNITS: [(&str, &str); 2] = [("m", "metres"), ("yd", "yards")];

/// Beside the estimate that the tail rests on.
pub const WINS: &str = "The tail rests on this one.";
/// Below the estimates.
pub const SURER: &str = "A piece of 20 stitches, measured, is better than any rule.";

/// The ways to cast on, in the order of the maths, each after the key it is stored under.
pub const METHODS: [(&str, &str); 8] = [
    ("long-tail", "long-tail"),
    ("twisted", "twisted (German)"),
    ("cable", "cable"),
    ("knitted", "knitted on"),
    ("backward loop", "backward loop"),
    ("crochet chain", "crochet chain"),
    ("tubular", "tubular"),
    ("two strands", "long-tail, two strands"),
];

/// The classes of yarn, in the order of the maths, and before them none; each after its key, in words, since a kept
/// one is offered by it.
pub const YARNS: [(&str, &str); 9] = [
    ("", "of which class?"),
    ("lace", "lace (0)"),
    ("super fine", "super fine (1), sock"),
    ("fine", "fine (2), sport"),
    ("light", "light (3), DK"),
    ("medium", "medium (4), worsted"),
    ("bulky", "bulky (5), chunky"),
    ("super bulky", "super bulky (6)"),
    ("jumbo", "jumbo (7)"),
];

/// Above the tail; the tail; what is said of it, and that; one thing to know.
pub const fn by_strand(strand: Strand) -> [&'static str; 5] {
    match strand {
        Strand::Thumb { .. } => [
            "Before the slip knot",
            "Leave a tail of @",
            "From nose to fingertips, that is",
            "@ arm’s lengths",
            "The tail is the strand that goes round the thumb.",
        ],
        Strand::EndOnly => [
            "Before the first stitch",
            "Leave @",
            "The stitches come from",
            "the ball",
            "The tail is only woven in.",
        ],
        Strand::HalfInWaste => [
            "Where the yarn itself begins",
            "Leave @",
            "The stitches come from",
            "the ball",
            "The waste yarn needs no tail of yours.",
        ],
        Strand::Second => [
            "Before the knot of both strands",
            "Leave @ of each strand",
            "The thumb’s strand comes from",
            "a second ball, or the other end",
            "There is one end more to weave in.",
        ],
    }
}

/// The tail.
pub fn headline(answer: &Answer, print: Print) -> String {
    say_with(by_strand(answer.strand)[1], &[], &[&print.up(answer.tail)])
}

/// What it comes to.
pub fn outcome(answer: &Answer) -> (String, String) {
    let [_, _, before, after, _] = by_strand(answer.strand);
    (before.into(), say_with(after, &[], &[&tenths(answer.arms.to_f64())]))
}

/// The range, and why the tail is what it is.
pub fn because(answer: &Answer, print: Print) -> String {
    let range = match answer.why {
        Why::NoLongTail => "@ to @ is usual (common practice, no source).",
        _ => "From @, the least without reserve, to @, the most with it.",
    };
    let why = match answer.why {
        Why::Measured => " It rests on your piece, which knows your hands better than any rule.",
        Why::FewMeasured => " It rests on the largest estimate, since fewer than # measured stitches say little.",
        Why::Largest => " It rests on the largest estimate: too long is cut off, too short is begun again.",
        Why::NoLongTail => "",
    };
    let ends = [print.nearest(answer.range.least), print.up(answer.range.most)];
    say_with(range, &[], &[&ends[0], &ends[1]]) + &say(why, &[MEASURED_FROM])
}

/// Whether what is left will do.
pub fn verdict(left: &Remaining, print: Print) -> String {
    let lacking = |over: Length| print.up(Length::ZERO.saturating_sub(over));
    let (pattern, off) = match left.verdict {
        Verdict::Enough => ("Enough: with # to go, @ will be over.", print.nearest(left.over)),
        Verdict::Tight => (
            "Tight: # to go just fit, but @ of the reserve is lacking.",
            lacking(left.over),
        ),
        Verdict::Short => (
            "Not enough: for # to go, @ is lacking. Begin again, or go on with a second strand.",
            lacking(left.over_bare),
        ),
    };
    say_with(pattern, &[left.to_go], &[&off])
}

/// What an estimate goes by, and its sum.
pub fn estimate(known: &Estimate, stitches: u32, print: Print) -> (&'static str, String) {
    let (by, sum, numbers, lengths) = match known.way {
        Way::Wraps { needle, yarn } => (
            "By turns round needle and yarn",
            "# × π × (@ + @)",
            [stitches; 2],
            [across(needle), across(yarn)],
        ),
        Way::Edge { width } => ("By the edge", "@", [0; 2], [print.fine(width), String::new()]),
        Way::Class { each, .. } => (
            "By the class of the yarn",
            "# × @",
            [stitches; 2],
            [print.fine(each), String::new()],
        ),
        Way::Measured(piece) => (
            "By the piece you measured",
            "@ ÷ # × #",
            [piece.stitches, stitches],
            [print.fine(piece.used), String::new()],
        ),
    };
    let mut said = say_with(sum, &numbers, &[&lengths[0], &lengths[1]]);
    if known.most_percent > 100 {
        let times = [known.least_percent, known.most_percent].map(|percent| decimal(f64::from(percent) / 100.0));
        said += &say_with(" × @ to @", &[], &[&times[0], &times[1]]);
    }
    let [least, most] = [known.needs.least, known.needs.most].map(|needs| print.fine_up(needs));
    let needs = if least == most { " = @." } else { " = @ to @." };
    (by, said + &say_with(needs, &[], &[&least, &most]))
}

/// What is good to know.
pub fn notes(answer: &Answer) -> Vec<String> {
    let mut notes = vec![by_strand(answer.strand)[4].to_owned()];
    if let Some(waste) = answer.waste {
        notes.push(say(
            "Cast on half of them, #, in waste yarn. Where that was rounded up, work one fewer in the first round.",
            &[waste],
        ));
    }
    if answer.two_strands {
        notes.push(say(
            "Above # stitches two strands are easier: one is the tail, the other the yarn (common practice, no source).",
            &[TWO_STRANDS_ABOVE],
        ));
    }
    notes
}

/// The sum from the winning estimate to the tail, a step a line: the stitches, the reserve, the end.
pub fn sum(answer: &Answer, end: Length, print: Print) -> Vec<String> {
    // A tape shows no hundredths of an inch.
    let end = if print.yards { print.up(end) } else { print.fine(end) };
    let [needs, with, exact] = [answer.needs, answer.with_reserve, answer.tail].map(|length| print.fine_up(length));
    let tail = print.up(answer.tail);
    let mut steps = Vec::new();
    let mut last = "The end to weave in, once: + @ = @.";
    if answer.why == Why::NoLongTail {
        last = "Only the end to weave in: @.";
    } else {
        steps.push(say_with("The stitches: @.", &[], &[&needs]));
        steps.push(say_with(
            "With #\u{a0}% reserve on them: @.",
            &[answer.reserve],
            &[&with],
        ));
        if exact != tail {
            last = "The end to weave in, once: + @ = @, rounded up to @.";
        }
    }
    steps.push(say_with(last, &[], &[&end, &exact, &tail]));
    steps
}

/// Below the drawing.
pub fn key(print: Print) -> String {
    say_with(KEY, &[], &[&print.nearest(ARM)])
}

/// What the drawing shows.
pub fn drawing(answer: &Answer, print: Print) -> String {
    say_with("A line of yarn, @ long. @", &[], &[&print.up(answer.tail), &key(print)])
}

/// Where the rules come from.
pub const SOURCE: &str = "Only the sums are arithmetic. One turn a stitch, 3 to 4 times the edge, so much a stitch by the class, the reserve, what each method takes, the length of an arm: common practice, no source. How thick a class is: Craft Yarn Council, its wraps from memory.";

/// What to type instead.
pub fn problem(problem: &Problem) -> String {
    if matches!(problem.field.key(), "needle" | "second")
        && let Some(said) = of_needle(&problem.kind)
    {
        return said;
    }
    match problem.kind {
        Kind::Missing => "Type this too, or empty the field that goes with it.".into(),
        _ => super::problem::sentence(&problem.kind),
    }
}

/// The same for a needle, which is in millimetres.
fn of_needle(kind: &Kind) -> Option<String> {
    let (pattern, length) = match kind {
        Kind::Unreadable(Unreadable::TooSmall { least }) | Kind::TooSmall { least } => ("Type @ or more.", least),
        Kind::Unreadable(Unreadable::TooLarge { most }) | Kind::TooLarge { most } => ("Type @ or less.", most),
        Kind::Unreadable(Unreadable::NotANumber | Unreadable::UnknownUnit | Unreadable::WrongKind { .. }) => {
            return Some("Type millimetres: the number on the needle that ends in mm.".into());
        }
        _ => return None,
    };
    let Amount::Length(length) = length else {
        return None;
    };
    Some(say_with(pattern, &[], &[&across(*length)]))
}

#[cfg(test)]
mod tests;
