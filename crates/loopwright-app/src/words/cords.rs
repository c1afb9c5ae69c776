//! The words of cords. Lengths come in printed, in the unit the knitter uses: `long` prints any length, `cord` one of a
//! circular needle, which is known by its label.

use super::Title;
use super::intl::{say, say_with};
use super::tell::{Long, Value, tell};
use crate::part::ChoiceRow;
use loopwright::cords::{Answer, Around, By, Gap, Question, Run, SQUEEZE, Stretch};
use loopwright::tables::needle::CIRCULARS;
use loopwright::units::Length;

/// What it is called.
pub const TITLE: Title = Title {
    name: "Cords",
    asks: "Which circular needles a piece needs, and when to change.",
};
/// What stands before each field of the piece; the field, and its label.
pub const PIECE: [(&str, &str, &str); 3] = [
    ("From", "from", "Stitches at the start"),
    ("to", "to", "Stitches at the end"),
    ("stitches in", "rounds", "Over how many rounds"),
];
/// After them.
pub const fn rounds(flat: bool) -> &'static str {
    if flat { "rows" } else { "rounds" }
}
/// Before the choice of swatch.
pub const SWATCH: &str = "My swatch is";
/// The label of the gauge.
pub const LABEL_GAUGE: &str = "Stitches in the swatch";
/// The label of the girth.
pub const LABEL_AROUND: &str = "Or how far round, on the needle";
/// The label of the cords, and what stands in it.
pub const LABEL_CORDS: (&str, &str) = ("Your circular needles", "40, 60, 80");
/// The label of the tip.
pub const LABEL_TIP: &str = "Tip of your short ones";
/// Where the answer will be.
pub const WAITING: &str = "Type the stitches and the gauge; the other two fields only if the piece grows or shrinks.";
/// Above the answer.
pub const ANSWER: &str = "Knit it on";

/// Whether the swatch is washed.
pub const SWATCHES: ChoiceRow = (
    "swatch",
    "Whether the swatch is washed",
    &[("", "not washed"), ("washed", "washed, and not counted before")],
);
/// In the round or flat.
pub const KNITTINGS: ChoiceRow = (
    "knitting",
    "In the round or flat",
    &[("round", "in the round"), ("flat", "flat, back and forth")],
);

/// A circular needle, in inches by its label where it has one.
pub fn cord(length: Length, inches: bool, long: Long) -> String {
    let row = CIRCULARS.iter().find(|row| inches && row.label == length);
    row.map_or_else(|| long(length), |row| say("#\u{a0}in", &[u32::from(row.inches)]))
}

/// Which cords, one after the other.
pub fn headline(answer: &Answer, cord: Long) -> String {
    let mut said = String::new();
    for stretch in &answer.plan {
        if !said.is_empty() {
            said += ", then ";
        }
        match stretch.by {
            By::Cord(length) => said += &cord(length),
            By::Gap(Gap { small: true, .. }) => said += "double-pointed needles or magic loop",
            By::Gap(Gap {
                cord: Some((shortest, _)),
                ..
            }) => said += &say_with("a cord of @ or more", &[], &[&cord(shortest)]),
            By::Gap(_) => said += "two circular needles",
        }
    }
    said
}

/// What lies on the needle.
pub fn outcome(answer: &Answer, long: Long) -> (String, String) {
    let [start, end] = answer.girths;
    let pattern = if start == end { "@" } else { "@, in the end @" };
    let girths = tell(pattern, &[Value::Length(start), Value::Length(end)], long);
    ("On the needle, before washing, that is".into(), girths)
}

/// A round, or a row of what is knitted back and forth.
pub const fn round(flat: bool) -> &'static str {
    if flat { "row" } else { "round" }
}

/// When to change to a part of the plan; nothing where there is no change to a cord.
pub fn change(before: Option<&Stretch>, to: &Stretch, flat: bool, cord: Long) -> String {
    let (Some(before), By::Cord(length)) = (before, to.by) else {
        return String::new();
    };
    let pattern = match before.by {
        By::Gap(_) => "@ from @ # on.",
        By::Cord(_) if to.earliest == to.latest => "Change to @ at @ #: no other @ will do.",
        By::Cord(_) => "Change to @ between @ # and @ #, on a plain @.",
    };
    let round = round(flat);
    say_with(
        pattern,
        &[to.earliest, to.latest],
        &[&cord(length), round, round, round],
    )
}

/// Above the ways to knit where no cord serves; `whole` when that is all of the piece.
pub fn gap(stretch: &Stretch, whole: bool, flat: bool) -> String {
    let pattern = if whole {
        "No cord at hand serves. Instead:"
    } else {
        "From @ # to @ # no cord at hand serves. Instead:"
    };
    let round = round(flat);
    say_with(pattern, &[stretch.latest, stretch.last], &[round, round])
}

/// The ways to knit where no cord serves.
pub fn ways(gap: &Gap, long: Long) -> Vec<String> {
    let magic = gap.magic_loop.unwrap_or_default();
    let (shortest, longest) = gap.cord.unwrap_or_default();
    let known = [
        (gap.small, "Double-pointed needles.", magic),
        (
            gap.magic_loop.is_some(),
            "Magic loop, on a cord of @ or more, tips and all.",
            magic,
        ),
        (gap.cord.is_some(), "A cord of @ to @.", shortest),
        (true, "Two circular needles, with half the stitches on each.", magic),
    ];
    let mut ways = Vec::new();
    for (holds, pattern, length) in known {
        if holds {
            ways.push(tell(pattern, &[Value::Length(length), Value::Length(longest)], long));
        }
    }
    ways
}

/// The cords that serve all of a piece that neither grows nor shrinks.
pub fn serving(answer: &Answer, cord: Long) -> String {
    let mut said = String::new();
    for other in &answer.cords {
        if !other.runs.is_empty() {
            said += if said.is_empty() { "Cords that serve: " } else { ", " };
            said += &cord(other.length);
        }
    }
    said
}

/// The rounds of a cord, or of what no cord serves, in the drawing's words.
pub fn runs(name: &str, runs: &[Run], flat: bool) -> String {
    let mut said = String::new();
    for run in runs {
        said += &say_with("@, @ # to #. ", &[run.from, run.to], &[name, round(flat)]);
    }
    said
}

/// Before the line where no cord serves.
pub const NO_CORD: &str = "no cord";
/// Below the drawing.
pub const KEY: &str = "Thick: take these. Thin: would serve too. Dotted: none serves. Numbers: rounds, or rows.";

/// What is good to know.
pub fn notes(question: &Question, answer: &Answer, long: Long, cord: Long) -> Vec<String> {
    let mut notes = Vec::new();
    if matches!(question.around, Around::Girth(_)) {
        notes.push("A ruffle’s girth is that of its stitches, not of the body.".into());
    } else if question.unwashed.is_none() {
        notes.push("What lies on the needle is not washed, and your swatch is: near a limit, measure it.".into());
    }
    for other in &answer.cords {
        let pattern = match other.tip {
            Some(_) if other.stiff => "@ is left out: tips longer than @ do not bend into a ring.",
            Some(_) if question.tip.is_none() && answer.picks.contains(&other.length) => {
                "Are the tips of your @ longer than @? They do not bend into a ring: type the tip."
            }
            _ => continue,
        };
        let most = other.tip.map_or(String::new(), long);
        notes.push(say_with(pattern, &[], &[&cord(other.length), &most]));
    }
    if question.cords.is_empty() {
        notes.push(
            "The fewest of the usual cords, 40 to 150 cm (16 to 60 in). Type yours under “More about this”.".into(),
        );
    }
    notes
}

/// The sum.
pub fn steps(question: &Question, answer: &Answer, long: Long, cord: Long) -> Vec<String> {
    let mut steps = Vec::new();
    if let (Around::Even { from, to, .. }, Some(over)) = (&question.around, question.gauge()) {
        let pattern = if from == to {
            "# {stitch|stitches} at @: @."
        } else {
            "# and # stitches at @: @ and @."
        };
        let [start, end] = answer.girths.map(Value::Length);
        let values = [Value::Count(*from), Value::Count(*to), Value::Gauge(over), start, end];
        steps.push(tell(pattern, &values, long));
    }
    for pick in &answer.picks {
        let least = if question.flat { Length::ZERO } else { *pick };
        let values = [Value::Length(least), Value::Length(pick.saturating_mul(SQUEEZE))];
        steps.push(cord(*pick) + &tell(" serves @ to @.", &values, long));
    }
    steps
}

/// Where the rules come from.
pub const SOURCE: &str = "A cord serves from its length, tips and all, to twice it; back and forth from nothing. Up to 40 cm a tip is at most a quarter of it; magic loop takes 80 cm. Common practice, no source.";

#[cfg(test)]
mod tests;
