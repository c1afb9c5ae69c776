//! The words of the tail. A tail, and whatever it is made of, is said no shorter than it is; lengths keep to the one
//! family of units that [`Print`] stands for.

pub mod left;
mod print;

pub use print::Print;

use super::intl::{decimal, fill_pattern, fill_pattern_with, tenths};
use super::units::span_of;
use super::{Title, Worded};
use loopwright::problem::{Kind, Problem};
use loopwright::tables::yarn_weight::Weight;
use loopwright::tail::{
    ARM, Answer, Estimate, MEASURED_FROM, Method, Name, Range, Strand, TWO_STRANDS_ABOVE, Wanted, Way, Why, YarnClass,
};
use loopwright::units::parse::Unreadable;
use loopwright::units::{Amount, Length};
use print::across;

pub const TITLE: Title = Title {
    name: "Tail",
    asks: "How much yarn to leave, and whether it will do.",
};
pub const I_CAST_ON: &str = "I cast on";
pub const STITCHES: &str = "stitches,";
pub const THE_YARN_IS: &str = "The yarn is";
pub const MEASURED_IN: &str = "I measure yarn in";
pub const LABEL_UNIT: &str = "Unit of yarn";
pub const WAITING: &str = "Type the count and choose the class on the ball band. If there is none, count wraps or measure a piece: see “More about this”.";
pub const WAITING_FOR_LEFT: &str = "Type the tail you have, and choose the class on the ball band. If there is none, count wraps or measure a piece: see “More about this”.";
pub const ESTIMATES: &str = "Ways to reckon it";
/// Below the drawing.
const KEY: &str =
    "Solid for the stitches, dashed for the reserve, thin for the end. The upright lines are arm’s lengths of about @.";

const WINS: &str = "The tail rests on this one.";

/// Beside the estimate that wins; nothing where it is the only one.
pub const fn wins(answer: &Answer) -> Option<&'static str> {
    if answer.estimates.len() > 1 { Some(WINS) } else { None }
}

pub const SURER: &str = "A piece of 20 stitches, measured, is better than any rule.";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::Wanted => super::page::WANTED,
        Name::Stitches => "Stitches to cast on",
        Name::Method => "How they are cast on",
        Name::Yarn => "The class on the ball band",
        Name::Needle => "Needle you cast on with",
        Name::Second => "A second needle held with it",
        Name::Wraps => "Wraps of the yarn in an inch",
        Name::Width => "How long the edge will lie",
        Name::Gauge => "Or the stitches of your swatch",
        Name::MeasuredStitches => "Stitches of a piece you measured",
        Name::MeasuredUsed => "Tail they used, without the slip knot",
        Name::End => "End to weave in",
        Name::LeftTail => "Tail you have",
        Name::LeftToGo => "Stitches still to cast on",
    }
}

impl Worded for Wanted {
    fn words(self) -> &'static str {
        match self {
            Self::Tail => "how long a tail to leave",
            Self::Left => "how far my tail will go",
        }
    }
}

impl Worded for Method {
    fn words(self) -> &'static str {
        match self {
            Self::LongTail => "long-tail",
            Self::TwistedGerman => "twisted (German)",
            Self::Cable => "cable",
            Self::Knitted => "knitted on",
            Self::BackwardLoop => "backward loop",
            Self::CrochetChain => "crochet chain",
            Self::Tubular => "tubular",
            Self::TwoStrand => "long-tail, two strands",
        }
    }
}

impl Worded for YarnClass {
    fn words(self) -> &'static str {
        match self {
            Self::NotSaid => "of which class?",
            Self::Of(Weight::Lace) => "lace (0)",
            Self::Of(Weight::SuperFine) => "super fine (1), sock",
            Self::Of(Weight::Fine) => "fine (2), sport",
            Self::Of(Weight::Light) => "light (3), DK",
            Self::Of(Weight::Medium) => "medium (4), worsted",
            Self::Of(Weight::Bulky) => "bulky (5), chunky",
            Self::Of(Weight::SuperBulky) => "super bulky (6)",
            Self::Of(Weight::Jumbo) => "jumbo (7)",
        }
    }
}

/// Above the tail.
pub const fn title(strand: Strand) -> &'static str {
    match strand {
        Strand::Thumb { .. } => "Before the slip knot",
        Strand::EndOnly => "Before the first stitch",
        Strand::HalfInWaste => "Where the yarn itself begins",
        Strand::Second => "Before the knot of both strands",
    }
}

/// The tail.
pub fn headline(answer: &Answer, print: Print) -> String {
    let pattern = match answer.strand {
        Strand::Thumb { .. } => "Leave a tail of @",
        Strand::EndOnly | Strand::HalfInWaste => "Leave @",
        Strand::Second => "Leave @ of each strand",
    };
    fill_pattern_with(pattern, &[], &[&print.up(answer.tail)])
}

/// What it comes to.
pub fn outcome(answer: &Answer) -> (String, String) {
    let (before, after) = match answer.strand {
        Strand::Thumb { .. } => ("From nose to fingertips, that is", "@ arm’s lengths"),
        Strand::EndOnly | Strand::HalfInWaste => ("The stitches come from", "the ball"),
        Strand::Second => ("The thumb’s strand comes from", "a second ball, or the other end"),
    };
    (
        before.into(),
        fill_pattern_with(after, &[], &[&tenths(answer.arms.to_f64())]),
    )
}

/// What the tail has to do.
const fn strand_note(strand: Strand) -> &'static str {
    match strand {
        Strand::Thumb { .. } => "The tail is the strand that goes round the thumb.",
        Strand::EndOnly => "The tail is only woven in.",
        Strand::HalfInWaste => "The waste yarn needs no tail of yours.",
        Strand::Second => "There is one end more to weave in.",
    }
}

/// The range, and why the tail is what it is.
pub fn because(answer: &Answer, print: Print) -> String {
    let range = match answer.why {
        Why::NoLongTail => "@ to @ is usual (common practice, no source).",
        Why::Measured | Why::FewMeasured | Why::Largest => {
            "You may need only @; @ has a reserve in it. Too long can be cut off."
        }
    };
    let why = match answer.why {
        Why::Measured => " It rests on your piece, which knows your hands better than any rule.",
        Why::FewMeasured => " It rests on the largest estimate, since fewer than # measured stitches say little.",
        Why::Largest if answer.estimates.len() < 2 => "",
        Why::Largest => " It rests on the largest estimate.",
        Why::NoLongTail => "",
    };
    let ends = [print.nearest(answer.range.least), print.up(answer.range.most)];
    fill_pattern_with(range, &[], &[&ends[0], &ends[1]]) + &fill_pattern(why, &[MEASURED_FROM])
}

/// What an estimate goes by.
pub const fn way(way: &Way) -> &'static str {
    match way {
        Way::Wraps { .. } => "By turns round needle and yarn",
        Way::Edge { .. } => "By the edge",
        Way::Gauge { .. } => "By the edge, from your gauge",
        Way::Class { .. } => "By the class of the yarn",
        Way::Measured(_) => "By the piece you measured",
    }
}

/// The sum of an estimate.
pub fn estimate(known: &Estimate, stitches: u32, print: Print) -> String {
    let mut sum = match known.way {
        Way::Wraps { needle, yarn } => {
            fill_pattern_with("# × π × (@ + @)", &[stitches], &[&across(needle), &across(yarn)])
        }
        Way::Edge { width } => print.fine(width),
        Way::Gauge { gauge, .. } => fill_pattern_with(
            "# ÷ @ × @",
            &[stitches],
            &[&decimal(gauge.count()), &span_of(gauge.span())],
        ),
        Way::Class { each, .. } => fill_pattern_with("# × @", &[stitches], &[&print.fine(each)]),
        Way::Measured(piece) => fill_pattern_with("@ ÷ # × #", &[piece.stitches, stitches], &[&print.fine(piece.used)]),
    };
    if known.most_percent > 100 {
        let times = [known.least_percent, known.most_percent].map(|percent| decimal(f64::from(percent) / 100.0));
        sum += &fill_pattern_with(" × @ to @", &[], &[&times[0], &times[1]]);
    }
    let Range { least, most } = known.needs;
    let needs = if least == most {
        fill_pattern_with(" = @.", &[], &[&print.fine_up(most)])
    } else {
        fill_pattern_with(" = @ to @.", &[], &[&print.fine_up(least), &print.fine_up(most)])
    };
    sum + &needs
}

/// What is good to know.
pub fn notes(answer: &Answer) -> Vec<String> {
    let mut notes = vec![strand_note(answer.strand).to_owned()];
    if let Some(waste) = answer.waste {
        notes.push(fill_pattern(
            "Cast on half of them, #, in waste yarn. Where that was rounded up, work one fewer in the first round.",
            &[waste],
        ));
    }
    if answer.two_strands {
        notes.push(fill_pattern(
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
        steps.push(fill_pattern_with("The stitches: @.", &[], &[&needs]));
        steps.push(fill_pattern_with(
            "With #\u{a0}% reserve on them: @.",
            &[answer.reserve],
            &[&with],
        ));
        if exact != tail {
            last = "The end to weave in, once: + @ = @, rounded up to @.";
        }
    }
    steps.push(fill_pattern_with(last, &[], &[&end, &exact, &tail]));
    steps
}

/// Below the drawing.
pub fn key(print: Print) -> String {
    fill_pattern_with(KEY, &[], &[&print.nearest(ARM)])
}

/// What the drawing shows.
pub fn drawing(answer: &Answer, print: Print) -> String {
    fill_pattern_with("A line of yarn, @ long. @", &[], &[&print.up(answer.tail), &key(print)])
}

pub const SOURCE: &str = "Only the sums are arithmetic. One turn a stitch, 3 to 4 times the edge, so much a stitch by the class, the reserve, what each method takes, the length of an arm: common practice, no source. How thick a class is: by wraps an inch, from memory, no source.";

/// What to type instead.
pub fn problem(problem: &Problem) -> String {
    let of_needle = match problem.field.name() {
        Some(Name::Needle | Name::Second) => of_needle(&problem.kind),
        _ => None,
    };
    of_needle.unwrap_or_else(|| match problem.kind {
        Kind::Missing => "Type this too, or empty the field that goes with it.".into(),
        _ => super::problem::sentence(&problem.kind),
    })
}

/// The same for a needle.
fn of_needle(kind: &Kind) -> Option<String> {
    let (pattern, length) = match kind {
        Kind::Unreadable(Unreadable::TooSmall { least }) | Kind::TooSmall { least } => ("Type @ or more.", least),
        Kind::Unreadable(Unreadable::TooLarge { most }) | Kind::TooLarge { most } => ("Type @ or less.", most),
        Kind::Unreadable(Unreadable::NotANumber | Unreadable::UnknownUnit | Unreadable::WrongKind { .. }) => {
            return Some("Type the number on the needle, as in 4 mm or US 6.".into());
        }
        _ => return None,
    };
    let Amount::Length(length) = length else {
        return None;
    };
    Some(fill_pattern_with(pattern, &[], &[&across(*length)]))
}

#[cfg(test)]
mod tests;
