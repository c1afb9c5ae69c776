//! The words of rows and length. Lengths are printed in the unit the knitter uses, which [`Lengths`] names.

use super::intl::{fill_pattern, fill_pattern_with};
use super::tell::{self, Value, off};
use super::units::Lengths;
use super::{Title, Worded};
use loopwright::problem::{Kind, Problem};
use loopwright::rows::{Answer, Ask, Asked, Course, DROP, Fabric, LONG, Name, Question, Standing, Turning};
use loopwright::terms::Working;
use loopwright::units::Length;

pub const TITLE: Title = Title {
    name: "Rows and length",
    asks: "How many rows make a length, and are you on course?",
};
pub const I_HAVE: &str = "I have";
pub const MIDWAY: &str = "Am I on course?";
pub const WAITING: &str = "The rows, or the length, appear here.";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::Ask => "What you have",
        Name::Length => "How long, washed",
        Name::Rows | Name::Ridges | Name::Repeats => "How many",
        Name::Gauge => "Rows in the washed swatch",
        Name::Knitting => "In the round or flat",
        Name::Fabric => "The stitch",
        Name::Repeat => "Rows of one repeat",
        Name::SetUp => "Set-up rows before it",
        Name::EndAfter => "End after row (0 for whole repeats)",
        Name::Edges => "Edges measured along (0 to 2)",
        Name::TapeRows => "Rows done so far",
        Name::TapeLength => "The tape on the needle says",
        Name::Unwashed => "Rows in the swatch before washing",
    }
}

impl Worded for Asked {
    fn words(self) -> &'static str {
        match self {
            Self::Length => "a length to knit",
            Self::Rows => "a number of rows",
            Self::Ridges => "garter ridges",
            Self::Repeats => "repeats of a chart",
        }
    }
}

impl Worded for Turning {
    fn words(self) -> &'static str {
        match self {
            Self::Flat => Working::Flat.words(),
            Self::Round => Working::Round.words(),
        }
    }
}

impl Worded for Fabric {
    fn words(self) -> &'static str {
        match self {
            Self::Any => "any but garter",
            Self::Garter => "garter: two rows a ridge",
        }
    }
}

/// A sentence with these values in it.
fn fill_pattern_with_values(pattern: &str, values: &[Value], lengths: Lengths) -> String {
    tell::fill_pattern_with_values(pattern, values, &|length| lengths.write(length))
}

/// Whether rows are looked for, and not a length.
const fn is_length(question: &Question) -> bool {
    matches!(question.ask, Ask::Length(_))
}

/// Above the answer.
pub const fn title(question: &Question) -> &'static str {
    if is_length(question) {
        "For this length"
    } else {
        "When it is washed"
    }
}

/// The rows, or the length.
pub fn headline(question: &Question, answer: &Answer, lengths: Lengths) -> String {
    if is_length(question) {
        fill_pattern_with_values("Work @", &[rows(question, answer)], lengths)
    } else {
        fill_pattern_with_values("@ long", &[length(answer)], lengths)
    }
}

/// What they are made of, and what they come to.
pub fn outcome(question: &Question, answer: &Answer, lengths: Lengths) -> (String, String) {
    let (before, after) = if is_length(question) {
        (
            "Washed, that is",
            fill_pattern_with_values("@ long", &[length(answer)], lengths),
        )
    } else {
        (
            "That is",
            fill_pattern_with_values("@", &[rows(question, answer)], lengths),
        )
    };
    (made_of(question, answer) + before, after)
}

/// All rows or rounds.
const fn rows(question: &Question, answer: &Answer) -> Value {
    Value::Rows(answer.pick.rows, question.round)
}

/// How long they are.
const fn length(answer: &Answer) -> Value {
    Value::Length(answer.pick.length)
}

/// Ridges, and repeats of the chart.
fn made_of(question: &Question, answer: &Answer) -> String {
    let mut parts = String::new();
    if question.garter {
        let pattern = if answer.pick.ends_right_side() {
            "# {ridge|ridges} and half a one. "
        } else {
            "# {ridge|ridges}. "
        };
        parts += &fill_pattern(pattern, &[answer.ridges]);
    }
    if question.set_up > 0 && answer.repeats + answer.row == 0 {
        parts += "The set-up only. ";
    }
    if question.repeat > 1 && answer.repeats > 0 {
        parts += &repeats(question, answer);
    }
    parts
}

/// Repeats of the chart, and the rows before and after them.
fn repeats(question: &Question, answer: &Answer) -> String {
    let (repeats, of) = (answer.repeats, question.repeat);
    match (answer.row, question.set_up) {
        (0, 0) => fill_pattern("# {repeat|repeats} of #. ", &[repeats, of]),
        (row, 0) => fill_pattern("# {repeat|repeats} of #, and # of the next. ", &[repeats, of, row]),
        (0, set_up) => fill_pattern(
            "# {repeat|repeats} of #, after # for the set-up. ",
            &[repeats, of, set_up],
        ),
        (row, set_up) => fill_pattern(
            "# {repeat|repeats} of #, and # of the next, after # for the set-up. ",
            &[repeats, of, row, set_up],
        ),
    }
}

/// How near the length is, and what it is if the swatch was misread.
pub fn widths(question: &Question, answer: &Answer, lengths: Lengths) -> String {
    let range = [Value::Length(answer.range.least), Value::Length(answer.range.most)];
    let range = fill_pattern_with_values(
        "If the swatch was read half a row wrong, it is @ to @.",
        &range,
        lengths,
    );
    if is_length(question) {
        fill_pattern_with("That is @. @", &[], &[&off(answer.off, lengths), &range])
    } else {
        range
    }
}

/// What stands before the numbers below and above; nothing where any number will do.
pub const fn neighbours_lead(question: &Question, answer: &Answer) -> Option<&'static str> {
    match (is_length(question), answer.ends) {
        (true, _) => Some("Or work"),
        (false, false) => Some("These end as the pattern does"),
        (false, true) => None,
    }
}

/// The numbers below and above.
pub fn neighbours(question: &Question, answer: &Answer, lengths: Lengths) -> Vec<String> {
    let mut neighbours = Vec::new();
    for (count, as_near) in [(&answer.below, false), (&answer.above, answer.as_near)] {
        if let Some(count) = count {
            let pattern = if as_near { "@: @, just as near." } else { "@: @." };
            let values = [Value::Rows(count.rows, question.round), Value::Length(count.length)];
            neighbours.push(fill_pattern_with_values(pattern, &values, lengths));
        }
    }
    neighbours
}

/// Ahead or behind, and how many rows are to go.
pub fn standing(question: &Question, course: &Course, lengths: Lengths) -> String {
    let standing = match course.standing {
        Standing::OnCourse => "On course, as near as a tape tells: ",
        Standing::Ahead => "Ahead by @. Knitted on like this, @ make the length: ",
        Standing::Behind => "Behind by @. Knitted on like this, @ make the length: ",
    };
    let values = [Value::Off(course.off), Value::Rows(course.rows, question.round)];
    let rest = if course.past > 0 {
        fill_pattern("take back the last #.", &[course.past])
    } else {
        fill_pattern("# to go.", &[course.to_go])
    };
    fill_pattern_with_values(standing, &values, lengths) + &rest
}

/// What the tape should say, now and at the end.
pub fn tape_says(question: &Question, course: &Course, lengths: Lengths) -> String {
    let pattern = match question.unwashed {
        Some(_) if course.past > 0 => "By the swatch it should be @ now. Washed, it will be @.",
        Some(_) => {
            "By the swatch it should be @ now. Washed, it will be @. Stop when the tape says @, without the edges."
        }
        None => {
            "By the washed swatch it should be @ now. The tape meets unwashed knitting: count the swatch before washing too."
        }
    };
    let values = [
        Value::Length(course.should_be),
        Value::Length(course.after_washing),
        Value::Length(course.stop_at),
    ];
    fill_pattern_with_values(pattern, &values, lengths)
}

/// What is good to know.
pub fn notes(question: &Question, answer: &Answer) -> Vec<String> {
    let pick = &answer.pick;
    let (garter, odd) = (question.garter, pick.ends_right_side());
    let known = [
        (
            garter && question.round,
            "In the round garter is a knit round, then a purl round. Increase or decrease on a knit round.",
        ),
        (!question.round && odd, "If row 1 is a right-side row, so is the last."),
        (
            !question.round && !odd,
            "If row 1 is a right-side row, the last is a wrong-side one.",
        ),
        (!answer.ends, "It does not end where the pattern does."),
        (
            answer.ends && garter && odd,
            "With this repeat garter never ends on a whole ridge.",
        ),
        (
            answer.below.is_none() && answer.off > Length::ZERO,
            "Fewer do not end so.",
        ),
    ];
    let known = known.into_iter().filter(|(holds, _)| *holds);
    let mut notes: Vec<String> = known.map(|(_, note)| note.to_owned()).collect();
    if pick.length >= LONG {
        let drop = [DROP.least, DROP.most];
        notes.push(fill_pattern(
            "So long a piece drops when worn, by # to #\u{a0}% in cotton or superwash wool (common practice, no source).",
            &drop,
        ));
    }
    notes
}

/// What the drawing shows.
pub fn drawing(question: &Question, answer: &Answer, lengths: Lengths) -> String {
    let done = question.tape.map_or(0, |tape| tape.rows);
    fill_pattern_with_values("@, the first on the left. ", &[rows(question, answer)], lengths)
        + &made_of(question, answer)
        + &fill_pattern("# done.", &[done])
}

/// Below the drawing; none where there is nothing to draw but rows.
pub const fn key(question: &Question) -> Option<&'static str> {
    match (question.repeat > 1, question.tape.is_some()) {
        (false, false) => None,
        (true, false) => Some("A long stroke ends each repeat."),
        (true, true) => Some("A long stroke ends each repeat; the thick line is done."),
        (false, true) => Some("The thick line is done."),
    }
}

/// The sum.
pub fn steps(question: &Question, answer: &Answer, lengths: Lengths) -> Vec<String> {
    let (rows, gauge) = (Value::Count(answer.pick.rows), Value::Gauge(question.gauge));
    let mut steps = Vec::new();
    if let Ask::Length(length) = question.ask {
        let values = [Value::Length(length), gauge, Value::Part(answer.ideal), rows];
        steps.push(fill_pattern_with_values(
            "@ at @ take @ rows. The nearest that will do: #.",
            &values,
            lengths,
        ));
    }
    let pattern = match question.edges {
        0 => "# at @ measure @.",
        _ => "# at @ measure @, with # more for the edges.",
    };
    let edges = Value::Count(question.edges);
    steps.push(fill_pattern_with_values(
        pattern,
        &[rows, gauge, length(answer), edges],
        lengths,
    ));
    if let (Some(measured), Some(course)) = (question.tape, &answer.course) {
        let gauge = Value::Gauge(question.unwashed.unwrap_or(question.gauge));
        let values = [Value::Count(measured.rows), gauge, Value::Length(course.should_be)];
        steps.push(fill_pattern_with_values(
            "# at @ measure @ by the tape.",
            &values,
            lengths,
        ));
    }
    steps
}

pub const SOURCE: &str = "Arithmetic. One row for an edge, and how far a long piece drops: common practice, no source.";

/// What to type instead.
pub fn problem(problem: &Problem) -> String {
    match problem.kind {
        Kind::Missing if problem.field.name() == Some(Name::Repeat) => {
            "Type the rows of one repeat to end in it.".into()
        }
        Kind::Missing => "Type this too, or empty the field that goes with it.".into(),
        _ => super::problem::sentence(&problem.kind),
    }
}

#[cfg(test)]
mod tests;
