//! The words of the cast-on count. Lengths are printed in the unit the knitter uses, which [`Lengths`] names.

use super::intl::{decimal, fill_pattern, fill_pattern_with, fill_pattern_with_strings, stitches};
pub use super::tell::Long;
use super::tell::off;
use super::units::{Lengths, span_of};
use super::{Title, Worded};
use loopwright::cast_on::{Answer, Distance, Doing, Join, Knitting, MarkerPlan, Name, Note, Question, Working};

pub const TITLE: Title = Title {
    name: "Cast-on",
    asks: "How many stitches make the width you want.",
};
pub const I_KNIT: &str = "I knit";
pub const LABEL_KNITTING: &str = "In the round or flat";
pub const LABEL_MULTIPLE: &str = "The pattern takes a multiple of";
pub const LABEL_PLUS: &str = "plus, for its two edges";
pub const WAITING: &str = "The stitches you cast on appear here.";
pub const TALLY: &str = "Count as you cast on";
pub const AGAIN: &str = "Begin the count again";
pub const OUTSIDE: &str = "They are outside the width you asked for.";
pub const OUTSIDE_PRACTICE: &str =
    "They go into the seam, outside the width. One at each edge: common practice, no source.";
pub const NEIGHBOURS: &str = "Or cast on";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::Knitting => LABEL_KNITTING,
        Name::Width => width_label(Working::Round),
        Name::Gauge => "Stitches in the washed swatch",
        Name::Multiple => LABEL_MULTIPLE,
        Name::Plus => LABEL_PLUS,
        Name::Edge => "Edge stitches that stay in sight, at each edge",
        Name::Seam => "Stitches the seam takes in, at each edge",
        Name::Extra => "To join the round",
        Name::Every => "Hang a marker",
        Name::On => "Stitches on the needle",
    }
}

/// What the field of the width is called.
pub const fn width_label(working: Working) -> &'static str {
    match working {
        Working::Round => "How far round, washed",
        Working::Flat => "How wide, washed",
    }
}

impl Worded for Join {
    fn words(self) -> &'static str {
        match self {
            Self::Plain => "no stitch more",
            Self::Extra => "one more, worked into the first",
        }
    }
}

impl Worded for Distance {
    fn words(self) -> &'static str {
        match self {
            Self::Twenty => "every 20 stitches",
            Self::TwentyFive => "every 25 stitches",
            Self::Fifty => "every 50 stitches",
        }
    }
}

/// Above the count.
pub const fn title(knitting: Knitting) -> &'static str {
    match knitting {
        Knitting::Round { .. } => "For the round",
        Knitting::Flat { .. } => "For the flat piece",
    }
}

/// The count.
pub fn headline(answer: &Answer) -> String {
    fill_pattern("Cast on #", &[answer.pick.cast_on])
}

/// What it comes to; and before that what the count is made of, where not all of it is for the pattern.
pub fn outcome(question: &Question, answer: &Answer, lengths: Lengths) -> (String, String) {
    let pick = &answer.pick;
    let mut before = String::new();
    if pick.inside < pick.cast_on {
        before += &fill_pattern("# for the pattern", &[pick.inside]);
        for (count, pattern) in beside(question.knitting) {
            if count > 0 {
                before += &fill_pattern(pattern, &[count]);
            }
        }
        before += ". ";
    }
    let pattern = match question.knitting {
        Knitting::Round { .. } => "@ round",
        Knitting::Flat { .. } => "@ wide",
    };
    before += "Washed, it is";
    (before, fill_pattern_with(pattern, &[], &[&lengths.write(pick.width)]))
}

/// The stitches beside the pattern, and what each are for.
fn beside(knitting: Knitting) -> Vec<(u32, &'static str)> {
    match knitting {
        Knitting::Round { extra } => vec![(u32::from(extra), ", # for the join")],
        Knitting::Flat { edge, seam } => {
            vec![(2 * seam, ", # for the seams"), (2 * edge, ", # for the edges")]
        }
    }
}

/// How near the width is, and what it is if the swatch was misread.
pub fn widths(answer: &Answer, lengths: Lengths) -> String {
    let pattern = "That is @. If the swatch was read half a stitch wrong, it is @ to @.";
    let range = answer.range;
    let words = vec![
        off(answer.pick.off, lengths),
        lengths.write(range.least),
        lengths.write(range.most),
    ];
    fill_pattern_with_strings(pattern, &[], words)
}

/// The counts below and above, with what they would measure.
pub fn neighbours(answer: &Answer, lengths: Lengths) -> Vec<String> {
    let mut neighbours = Vec::new();
    for (count, as_near) in [(&answer.below, false), (&answer.above, answer.as_near)] {
        let Some(count) = count else { continue };
        let pattern = match (count.inside < count.cast_on, as_near) {
            (false, false) => "#: @, @.",
            (false, true) => "#: @, @, just as near.",
            (true, false) => "# (# for the pattern): @, @.",
            (true, true) => "# (# for the pattern): @, @, just as near.",
        };
        let words = vec![lengths.write(count.width), off(count.off, lengths)];
        neighbours.push(fill_pattern_with_strings(
            pattern,
            &[count.cast_on, count.inside],
            words,
        ));
    }
    neighbours
}

/// How many are on the needle.
pub fn on_needle(on: u32, all: u32) -> String {
    let pattern = match on {
        0 => "Nothing is counted yet. Tap each time you reach a marker.",
        _ if on >= all => "All # are on the needle.",
        _ => "# of # are on the needle.",
    };
    fill_pattern(pattern, &[on, all])
}

/// The tap at the next marker; the last one begins again.
pub fn reached(next: Option<u32>) -> String {
    match next {
        Some(next) => fill_pattern("# are on", &[next]),
        None => AGAIN.into(),
    }
}

/// The tap that takes the last one back.
pub fn back(before: u32) -> String {
    fill_pattern("Back to #", &[before])
}

/// The groups the markers make.
pub fn groups(plan: &MarkerPlan) -> String {
    let pattern = match plan.rest {
        0 => "# {group|groups} of #.",
        _ => "# {group|groups} of #, and # at the end.",
    };
    fill_pattern(pattern, &[plan.groups, plan.every, plan.rest])
}

/// What is done in a row of the cast-on that is followed: "Cast on 132 stitches, with a marker after every 20: 6 groups of
/// 20, and 12 at the end."
pub fn followed(doing: &Doing) -> String {
    let plan = match doing {
        Doing::Join => {
            return "Join by working the last stitch together with the first, then work to the end of the round."
                .into();
        }
        Doing::CastOn(plan) => plan,
    };
    if plan.stitches <= plan.every {
        return fill_pattern("Cast on # {stitch|stitches}.", &[plan.stitches]);
    }
    let numbers = [plan.stitches, plan.every];
    let pattern = "Cast on # {stitch|stitches}, with a marker after every #: @";
    fill_pattern_with(pattern, &numbers, &[&groups(plan)])
}

/// What the drawing shows.
pub fn drawing(plan: &MarkerPlan, on: u32) -> String {
    let words = [
        &*stitches(plan.stitches),
        &*groups(plan),
        &*on_needle(on, plan.stitches),
    ];
    fill_pattern_with("A needle with @, cast on from right to left: @ @", &[], &words)
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
    fill_pattern(pattern, &[count])
}

/// The sum.
pub fn steps(question: &Question, answer: &Answer, lengths: Lengths) -> Vec<String> {
    let (gauge, pick) = (question.gauge, &answer.pick);
    let (wanted, width) = (lengths.write(question.width), lengths.write(pick.width));
    let (count, span) = (decimal(gauge.count()), span_of(gauge.span()));
    let ideal = answer.ideal_in_quarters();
    let (of, plus) = (question.multiple.of, answer.plus);
    let multiple = match (of, plus) {
        (1, 0) => fill_pattern("The nearest whole count: #.", &[pick.inside]),
        (_, 0) => fill_pattern(
            "The nearest multiple of #: # × # = #.",
            &[of, pick.repeats, of, pick.inside],
        ),
        _ => {
            let numbers = [of, plus, pick.repeats, of, plus, pick.inside];
            fill_pattern("The nearest multiple of # plus #: # × # + # = #.", &numbers)
        }
    };
    let mut steps = vec![
        fill_pattern_with(
            if ideal == answer.ideal.to_f64() {
                "Width times gauge: @ × @ ÷ @ = @ stitches."
            } else {
                "Width times gauge: @ × @ ÷ @ is about @ stitches."
            },
            &[],
            &[&wanted, &count, &span, &decimal(ideal)],
        ),
        multiple,
        fill_pattern_with(
            "Its real width: # × @ ÷ @ = @.",
            &[pick.inside],
            &[&span, &count, &width],
        ),
    ];
    match question.knitting {
        Knitting::Round { extra: true } => {
            steps.push(fill_pattern(
                "One more for the join: # + 1 = #.",
                &[pick.worked, pick.cast_on],
            ));
        }
        Knitting::Flat { edge, seam } => steps.push(fill_pattern(
            "With # edge and # seam {stitch|stitches} at each edge: # + 2 × # + 2 × # = #.",
            &[edge, seam, pick.inside, edge, seam, pick.cast_on],
        )),
        Knitting::Round { .. } => {}
    }
    steps
}

pub const SOURCE: &str = "Width times gauge is arithmetic. What is outside the width, and a marker every 20, 25 or 50: common practice, no source.";

#[cfg(test)]
mod tests;
