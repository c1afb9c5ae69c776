//! The words of the cast-on count. Lengths come in printed, in the unit the knitter uses, by the function `long`.

use super::Title;
use super::intl::{decimal, say, say_made, say_with, stitches};
pub use super::tell::Long;
use super::units::span_of;
use loopwright::cast_on::{Answer, Knitting, MarkerPlan, Note, Question};
use loopwright::units::Length;

/// What it is called.
pub const TITLE: Title = Title {
    name: "Cast-on",
    asks: "How many stitches make the width you want.",
};
/// Before the choice of round or flat.
pub const I_KNIT: &str = "I knit";
/// The label of the choice of round or flat.
pub const LABEL_KNITTING: &str = "In the round or flat";
/// The label of the gauge.
pub const LABEL_GAUGE: &str = "Stitches in the washed swatch";
/// The label of the repeat.
pub const LABEL_MULTIPLE: &str = "The pattern takes a multiple of";
/// The label of the stitches beside the repeats.
pub const LABEL_PLUS: &str = "plus, for its two edges";
/// The label of the choice at the join.
pub const LABEL_JOIN: &str = "To join the round";
/// The label of the edge stitches.
pub const LABEL_EDGE: &str = "Edge stitches to be seen, at each edge";
/// The label of the seam stitches.
pub const LABEL_SEAM: &str = "Stitches the seam takes in, at each edge";
/// Where the answer will be.
pub const WAITING: &str = "The stitches you cast on appear here.";
/// The label of the choice of markers.
pub const LABEL_EVERY: &str = "Hang a marker";
/// Above the tally.
pub const TALLY: &str = "Count as you cast on";
/// All stitches are on the needle.
pub const AGAIN: &str = "Begin the count again";

/// How far apart markers are, each after its key.
pub const EVERY: [(&str, &str); 3] = [
    ("20", "every 20 stitches"),
    ("25", "every 25 stitches"),
    ("50", "every 50 stitches"),
];
/// In the round or flat.
pub const KNITTINGS: [(&str, &str); 2] = [("round", "in the round"), ("flat", "flat, back and forth")];
/// At the join.
pub const JOINS: [(&str, &str); 2] = [
    ("plain", "no stitch more"),
    ("extra", "one more, worked into the first"),
];
/// Above the neighbours.
pub const NEIGHBOURS: &str = "Or cast on";

/// What stands beside the pattern: at the seams, at the edges, at the join.
const BESIDE: [&str; 3] = [", # for the seams", ", # for the edges", ", # for the join"];

/// Above the count, its label of the width, and what the width is called: flat, or in the round.
pub const fn by_knitting(flat: bool) -> [&'static str; 3] {
    if flat {
        ["For the flat piece", "How wide, washed", "@ wide"]
    } else {
        ["For the round", "How far round, washed", "@ round"]
    }
}

/// The count.
pub fn headline(answer: &Answer) -> String {
    say("Cast on #", &[answer.pick.cast_on])
}

/// What it comes to; and before that what the count is made of, where not all of it is for the pattern.
pub fn outcome(question: &Question, answer: &Answer, long: Long) -> (String, String) {
    let (flat, beside) = match question.knitting {
        Knitting::Flat { edge, seam } => (true, [2 * seam, 2 * edge, 0]),
        Knitting::Round { extra } => (false, [0, 0, u32::from(extra)]),
    };
    let pick = &answer.pick;
    let mut before = String::new();
    if pick.inside < pick.cast_on {
        before = say("# for the pattern", &[pick.inside]);
        for (count, words) in beside.into_iter().zip(BESIDE) {
            if count > 0 {
                before += &say(words, &[count]);
            }
        }
        before += ". ";
    }
    before += "Washed, it is";
    (before, say_with(by_knitting(flat)[2], &[], &[&long(pick.width)]))
}

/// By how much a length misses what was wanted, if a tape shows it.
pub(super) fn off(over: Length, long: Long) -> String {
    let under = Length::ZERO.saturating_sub(over);
    let (pattern, off) = if under > Length::ZERO {
        ("@ less than you want", under)
    } else {
        ("@ more than you want", over)
    };
    let off = long(off);
    if off == long(Length::ZERO) {
        return "what you want".into();
    }
    say_with(pattern, &[], &[&off])
}

/// How near the width is, and what it is if the swatch was misread.
pub fn widths(answer: &Answer, long: Long) -> String {
    let pattern = "That is @. If the swatch was read half a stitch wrong, it is @ to @.";
    let range = answer.range;
    let words = vec![off(answer.pick.off, long), long(range.least), long(range.most)];
    say_made(pattern, &[], words)
}

/// The counts below and above, with what they would measure.
pub fn neighbours(answer: &Answer, long: Long) -> Vec<String> {
    let mut said = Vec::new();
    for (count, as_near) in [(&answer.below, false), (&answer.above, answer.as_near)] {
        let Some(count) = count else { continue };
        let pattern = match (count.inside < count.cast_on, as_near) {
            (false, false) => "#: @, @.",
            (false, true) => "#: @, @, just as near.",
            (true, false) => "# (# for the pattern): @, @.",
            (true, true) => "# (# for the pattern): @, @, just as near.",
        };
        let words = vec![long(count.width), off(count.off, long)];
        said.push(say_made(pattern, &[count.cast_on, count.inside], words));
    }
    said
}

/// How many are on the needle.
pub fn on_needle(on: u32, all: u32) -> String {
    let pattern = match on {
        0 => "Nothing is counted yet. Tap each time you reach a marker.",
        _ if on >= all => "All # are on the needle.",
        _ => "# of # are on the needle.",
    };
    say(pattern, &[on, all])
}

/// The tap at the next marker; the last one begins again.
pub fn reached(next: Option<u32>) -> String {
    match next {
        Some(next) => say("# are on", &[next]),
        None => AGAIN.into(),
    }
}

/// The tap that takes the last one back.
pub fn back(before: u32) -> String {
    say("Back to #", &[before])
}

/// The groups the markers make.
pub fn groups(plan: &MarkerPlan) -> String {
    let pattern = match plan.rest {
        0 => "# {group|groups} of #.",
        _ => "# {group|groups} of #, and # at the end.",
    };
    say(pattern, &[plan.groups, plan.every, plan.rest])
}

/// What the drawing shows.
pub fn drawing(plan: &MarkerPlan, on: u32) -> String {
    let words = [
        &*stitches(plan.stitches),
        &*groups(plan),
        &*on_needle(on, plan.stitches),
    ];
    say_with("A needle with @, cast on from right to left: @ @", &[], &words)
}

/// One thing to know.
pub fn note(note: &Note) -> String {
    let (pattern, count) = match *note {
        Note::PlusDropped { plus } => (
            "A round has no edges, so the # {stitch|stitches} beside the repeats {is|are} not cast on.",
            plus,
        ),
        Note::JoinTogether { after } => (
            "Join by working the last stitch together with the first: # {is|are} left in the round.",
            after,
        ),
        Note::SeamsTakeIn { stitches } => (
            "The seams take in # stitches; they are outside the width. One at each edge is usual (common practice, no source).",
            stitches,
        ),
        Note::EdgesWiden { stitches } => (
            "The # edge stitches stay to be seen, and make the piece wider than you asked.",
            stitches,
        ),
    };
    say(pattern, &[count])
}

/// The sum.
pub fn steps(question: &Question, answer: &Answer, long: Long) -> Vec<String> {
    let (gauge, pick) = (question.gauge, &answer.pick);
    let words = [
        &*long(question.width),
        &*decimal(gauge.count()),
        &*span_of(gauge.span()),
        &*decimal(answer.ideal.to_f64()),
        &*long(pick.width),
    ];
    let (of, plus) = (question.multiple.of, answer.plus);
    let multiple = match (of, plus) {
        (1, 0) => say("The nearest whole count: #.", &[pick.inside]),
        (_, 0) => say(
            "The nearest multiple of #: # × # = #.",
            &[of, pick.repeats, of, pick.inside],
        ),
        _ => {
            let numbers = [of, plus, pick.repeats, of, plus, pick.inside];
            say("The nearest multiple of # plus #: # × # + # = #.", &numbers)
        }
    };
    let mut steps = vec![
        say_with("Width times gauge: @ × @ ÷ @ = @ stitches.", &[], &words),
        multiple,
        say_with(
            "Its real width: # × @ ÷ @ = @.",
            &[pick.inside],
            &[words[2], words[1], words[4]],
        ),
    ];
    match question.knitting {
        Knitting::Round { extra: true } => {
            steps.push(say("One more for the join: # + 1 = #.", &[pick.worked, pick.cast_on]));
        }
        Knitting::Flat { edge, seam } => steps.push(say(
            "With # edge and # seam {stitch|stitches} at each edge: # + 2 × # + 2 × # = #.",
            &[edge, seam, pick.inside, edge, seam, pick.cast_on],
        )),
        Knitting::Round { .. } => {}
    }
    steps
}

/// Where the rule comes from.
pub const SOURCE: &str = "Width times gauge is arithmetic. What is outside the width, and a marker every 20, 25 or 50: common practice, no source.";

#[cfg(test)]
mod tests;
