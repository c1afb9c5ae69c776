//! The words of a pattern at another gauge. Lengths come in printed, in the unit the knitter uses, by the function
//! `long`.

use super::Title;
use super::intl::{number, say};
use super::schedule::{rows, written};
use super::tell::{Long, Value, tell};
use crate::part::ChoiceRow;
use loopwright::cast_on::Knitting;
use loopwright::problem::{Kind, Problem};
use loopwright::regauge::{Answer, Converted, Question, Shaped};
use loopwright::units::{Gauge, Length};

/// What it is called.
pub const TITLE: Title = Title {
    name: "Another gauge",
    asks: "What a pattern’s numbers become at your own gauge.",
};
/// The label of the pattern's gauge.
pub const LABEL_PATTERN: &str = "The pattern’s stitches";
/// The label of the own gauge.
pub const LABEL_OWN: &str = "Your stitches, washed";
/// The label of the counts, and an example.
pub const LABEL_COUNTS: (&str, &str) = ("Stitches in the pattern, one or many", "such as 132 (144, 156)");
/// Where the fields about counts are.
pub const ABOUT_COUNTS: &str = "What the counts must keep";
/// The label of the width.
pub const LABEL_WANTED: &str = "Width I want: which size to follow?";
/// The label of the edge stitches.
pub const LABEL_EDGE: &str = "Flat: edge and seam stitches at each edge";
/// Where the fields about rows are.
pub const ABOUT_ROWS: &str = "Rows and lengths";
/// The label of the pattern's row gauge.
pub const LABEL_PATTERN_ROWS: &str = "The pattern’s rows";
/// The label of the own row gauge.
pub const LABEL_OWN_ROWS: &str = "Your rows, washed";
/// The label of the rows, and an example.
pub const LABEL_ROWS: (&str, &str) = ("Rows in the pattern, one or many", "such as 40 (42, 46)");
/// The label of the length.
pub const LABEL_LENGTH: &str = "A length that is worked by rows";
/// The label of the chart.
pub const LABEL_REPEAT: &str = "Rows of one repeat";
/// Where the fields about shaping are.
pub const ABOUT_SHAPING: &str = "Shaping in the pattern";
/// The label of the stitches before.
pub const LABEL_FROM: &str = "From so many stitches";
/// The label of the stitches after.
pub const LABEL_TO: &str = "to so many";
/// The label of the rows for it.
pub const LABEL_SHAPING_ROWS: &str = "in so many rows, plain ones too";
/// The label of what a row changes.
pub const LABEL_EACH: &str = "Stitches changed in a shaping row";
/// Where the answer will be.
pub const WAITING: &str = "The pattern’s numbers at your gauge appear here.";
/// Above the stitches.
pub const STITCHES: &str = "Stitches";
/// Above the rows.
pub const ROWS: &str = "Rows";
/// Above the shaping.
pub const SHAPING: &str = "The shaping, shared out anew";

/// In the round or flat.
pub const KNITTING: ChoiceRow = (
    "knitting",
    "In the round or flat",
    &[
        ("round", "in the round"),
        ("extra", "in the round, one more to join"),
        ("flat", "flat, back and forth"),
    ],
);
/// Odd and even.
pub const PARITY: ChoiceRow = (
    "parity",
    "Odd or even",
    &[("any", "need not stay"), ("kept", "stays: a stitch is the centre")],
);
/// On which side.
pub const SIDES: ChoiceRow = (
    "sides",
    "Shaping rows may be",
    &[("right", "right-side rows only"), ("any", "any rows")],
);

/// The columns of the table.
pub const COLUMNS: [&str; 3] = ["In the pattern", "At your gauge", "Kept as it is"];

/// The size to follow.
fn followed(answer: &Answer) -> Option<&Converted> {
    answer.stitches.get(answer.follow.as_ref()?.size)
}

const fn is_round(question: &Question) -> bool {
    matches!(question.knitting, Knitting::Round { .. })
}

/// Counts as a pattern has them: `132 (144, 156)`.
fn list(found: &[Converted], of: fn(&Converted) -> u32) -> String {
    let mut said = String::new();
    for (place, one) in found.iter().enumerate() {
        said += match place {
            0 => "",
            1 => " (",
            _ => ", ",
        };
        said += &number(of(one));
    }
    said + if found.len() > 1 { ")" } else { "" }
}

/// Above the answer; what is worked; what it comes to.
pub fn lead(question: &Question, answer: &Answer, long: Long) -> (&'static str, String, (String, String)) {
    let (title, found) = if answer.stitches.is_empty() {
        // The rows of a length stand last, and in the headline only where they are alone.
        let many = question.rows.len().max(1);
        ("Rows at your gauge", answer.rows.get(..many).unwrap_or_default())
    } else {
        ("Stitches at your gauge", answer.stitches.as_slice())
    };
    let (title, line, before, after) = match (followed(answer), &answer.shaping) {
        (Some(size), _) => (
            "For the width you want",
            say("Follow the size of # stitches", &[size.pattern]),
            "At your gauge it measures",
            measures(answer, size, long),
        ),
        (None, Some(shaped)) if found.is_empty() => (
            "Shaping at your gauge",
            say("From # to # stitches", &[shaped.from, shaped.to]),
            "In",
            rows(shaped.rows, is_round(question)),
        ),
        _ => (
            title,
            list(found, |one| one.count),
            "In place of",
            list(found, |one| one.pattern),
        ),
    };
    (title, line, (before.into(), after))
}

/// What the size to follow measures, and by how much that misses the width.
fn measures(answer: &Answer, size: &Converted, long: Long) -> String {
    let off = answer.follow.map_or(Length::ZERO, |follow| follow.off);
    let under = Length::ZERO.saturating_sub(off);
    let (pattern, off) = if under > Length::ZERO {
        ("@, @ less than you want", under)
    } else {
        ("@, @ more than you want", off)
    };
    let pattern = if long(off) == long(Length::ZERO) { "@" } else { pattern };
    tell(pattern, &[Value::Length(size.unchanged), Value::Length(off)], long)
}

/// What it may be if the swatch was misread; of a size that is followed also whether another is as near.
pub fn near(answer: &Answer, long: Long) -> String {
    let Some(first) = answer.stitches.first() else {
        return String::new();
    };
    let tied = answer.follow.and_then(|follow| answer.stitches.get(follow.tied?));
    let pattern = match tied {
        Some(_) => "Half a stitch misread, # measure @ to @. The size of # is as near, and stretches less.",
        None => "Half a stitch misread, # measure @ to @.",
    };
    let values = [
        Value::Count(followed(answer).map_or(first.count, |size| size.pattern)),
        Value::Length(answer.range.least),
        Value::Length(answer.range.most),
        Value::Count(tied.map_or(0, |tied| tied.pattern)),
    ];
    tell(pattern, &values, long)
}

/// What stands in a column of the table, the size to follow marked by a word.
pub fn cell(column: usize, found: &Converted, follow: bool, long: Long) -> String {
    let (pattern, count, length) = match column {
        0 => ("#: @", found.pattern, found.was),
        1 => ("#: @", found.count, found.becomes),
        _ if follow => ("@: follow this", 0, found.unchanged),
        _ => ("@", 0, found.unchanged),
    };
    tell(pattern, &[Value::Count(count), Value::Length(length)], long)
}

/// The shaping: its ends and rows, and the instruction.
pub fn shaping(question: &Question, shaped: &Shaped, long: Long) -> [String; 2] {
    let round = is_round(question);
    let values = [
        Value::Count(shaped.from),
        Value::Count(shaped.to),
        Value::Rows(shaped.rows, round),
        Value::Count(shaped.times),
    ];
    let ends = tell("From # to # stitches in @, # of them shaped.", &values, long);
    let steep = "Too steep at your gauge: it takes @. Change more at once, or begin sooner.";
    let told = match &shaped.schedule {
        Some(schedule) => written(schedule),
        None => tell(steep, &[Value::Rows(shaped.needs, round)], long),
    };
    [ends, told]
}

/// What is good to know.
pub fn notes(question: &Question, answer: &Answer) -> Vec<String> {
    let plus = question.multiple.plus;
    let outside = matches!(
        question.knitting,
        Knitting::Round { extra: true } | Knitting::Flat { edge: 1.., .. }
    );
    let known = [
        (
            is_round(question) && plus > 0,
            "A round has no edges: the # beside the repeats {is|are} dropped.",
        ),
        (outside, "Edges and the join are in the counts, not in their measures."),
        (
            question.pattern.span() != question.own.span(),
            "The spans differ, and are compared so: 4 in are longer than 10 cm.",
        ),
        (
            answer.shaping.is_some(),
            "Ends and rows are converted and shared out anew, never the rate.",
        ),
    ];
    let mut notes = Vec::new();
    for (holds, note) in known {
        if holds {
            notes.push(say(note, &[plus]));
        }
    }
    notes
}

/// The sum.
pub fn steps(question: &Question, answer: &Answer, long: Long) -> Vec<String> {
    let mut steps = Vec::new();
    let mut step = |found: &[Converted], theirs: Gauge, ours: Gauge| {
        if let [found, ..] = found {
            let values = [
                Value::Count(found.pattern),
                Value::Gauge(theirs),
                Value::Length(found.was),
                Value::Gauge(ours),
                Value::Part(found.ideal),
                Value::Count(found.count),
            ];
            let sum = "# at @ measure @; at @ that takes @, so #.";
            steps.push(tell(sum, &values, long));
        }
    };
    step(&answer.stitches, question.pattern, question.own);
    if let (Some(theirs), Some(ours)) = (question.pattern_rows, question.own_rows) {
        step(&answer.rows, theirs, ours);
    }
    if let Some(size) = followed(answer) {
        let values = [
            Value::Count(size.pattern),
            Value::Gauge(question.own),
            Value::Length(size.unchanged),
        ];
        steps.push(tell("# at @ measure @.", &values, long));
    }
    steps
}

/// Where the rule comes from.
pub const SOURCE: &str = "Arithmetic. Of two equally near the smaller: common practice, no source. Yarn goes with the square root of stitches times rows: Munden 1959, from memory.";

/// What to type instead.
pub fn problem(problem: &Problem) -> String {
    match problem.kind {
        Kind::Missing if problem.field.key() == "counts" => "Type the stitches of the sizes here.".into(),
        Kind::Missing if problem.field.key().ends_with("_rows") => "Type both row gauges for this.".into(),
        Kind::Missing => "Type this too, or empty the field that goes with it.".into(),
        _ => super::problem::sentence(&problem.kind),
    }
}

#[cfg(test)]
mod tests;
