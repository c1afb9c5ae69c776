//! The words of rows and length. Lengths are printed in the unit the knitter uses, which [`Lengths`] names.

mod followed;
mod picture;
mod steps;

pub use followed::followed;
pub use picture::{Mark, all, caption, done, drawing, for_the_set_up, of_the_next, to_go, whole_repeats};
pub use steps::{SOURCE, steps};

use super::intl::{fill_pattern, fill_pattern_with};
use super::tell::{self, Value, off};
use super::units::Lengths;
use super::{Title, Worded};
use loopwright::problem::{Kind, Problem};
use loopwright::rows::{Answer, Ask, Asked, Course, DROP, Fabric, Name, Note, Question, Standing, Turning, Wanted};
use loopwright::shaping::Side;
use loopwright::terms::Working;

pub const TITLE: Title = Title {
    name: "Rows and length",
    asks: "How many rows make a length, and are you on course?",
};
pub const I_HAVE: &str = "I have";
pub const I_GO_BY: &str = "I go by";
pub const MIDWAY: &str = "By the tape";
pub const WAITING: &str = "The rows, or the length, appear here.";
pub const WAITING_FOR_TAPE: &str =
    "Type how many rows are done and what the tape says, and whether you are ahead appears here.";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::Wanted => super::page::WANTED,
        Name::Ask => "What you have",
        Name::Length => "How long, washed",
        Name::Rows | Name::Ridges | Name::Repeats => "How many",
        Name::Gauge => "Rows in the washed swatch",
        Name::Knitting => "In the round or flat",
        Name::Fabric => "The stitch",
        Name::Repeat => "Rows of one repeat",
        Name::SetUp => "Set-up rows before it",
        Name::EndAfter => "End after row (0 for whole repeats)",
        Name::Edges => "Edges within the length: cast-on, bind-off (0 to 2)",
        Name::TapeRows => "Rows done so far",
        Name::TapeLength => "The tape on the needle says",
        Name::Unwashed => "Rows in the swatch before washing",
    }
}

impl Worded for Wanted {
    fn words(self) -> &'static str {
        match self {
            Self::Plan => "how many rows, or how long",
            Self::Course => "am I ahead or behind?",
        }
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
        "If half a row of the swatch was misread, it may be anything from @ to @.",
        &range,
        lengths,
    );
    if is_length(question) {
        let off = match lengths.is_nought(answer.off) {
            true => "Just as long as you want it.".into(),
            false => fill_pattern_with("That is @.", &[], &[&off(answer.off, lengths)]),
        };
        fill_pattern_with("@ @", &[], &[&off, &range])
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

/// Ahead, behind or neither.
pub fn standing(course: &Course, lengths: Lengths) -> String {
    let pattern = match course.standing {
        Standing::OnCourse => "On course",
        Standing::Ahead => "Ahead by @",
        Standing::Behind => "Behind by @",
    };
    fill_pattern_with_values(pattern, &[Value::Off(course.off)], lengths)
}

/// What follows for the rows that are to go.
pub fn remaining(question: &Question, course: &Course) -> (String, String) {
    let rows = super::schedule::rows(course.rows, question.round);
    let before = match course.standing {
        Standing::OnCourse => "As near as a tape tells, @ make the length:",
        Standing::Ahead | Standing::Behind => "Knitted on like this, @ make the length:",
    };
    let after = match (course.past, course.to_go) {
        (0, 0) => "you are there".into(),
        (0, to_go) => fill_pattern("# {is|are} to go", &[to_go]),
        (1, _) => "take back the last one".into(),
        (past, _) => fill_pattern("take back the last #", &[past]),
    };
    (fill_pattern_with(before, &[], &[&rows]), after)
}

/// What the tape should say, now and at the end.
pub fn tape_says(question: &Question, course: &Course, lengths: Lengths) -> String {
    let pattern = match (question.unwashed, question.edges) {
        (None, _) => {
            "By the washed swatch it should be @ now. But the tape meets unwashed knitting: count the swatch before washing too."
        }
        (Some(_), _) if course.past > 0 => "By the swatch it should be @ now. Washed, what is done will be @.",
        (Some(_), 0) => "By the swatch it should be @ now. Washed, what is done will be @. Stop when the tape says @.",
        (Some(_), _) => {
            "By the swatch it should be @ now. Washed, what is done will be @. Stop when the tape says @ without the edges."
        }
    };
    let values = [
        Value::Length(course.should_be),
        Value::Length(course.after_washing),
        Value::Length(course.stop_at),
    ];
    fill_pattern_with_values(pattern, &values, lengths)
}

/// One note.
pub fn note(note: Note) -> String {
    match note {
        Note::GarterInTheRound => {
            "In the round garter is a knit round, then a purl round. Increase or decrease on a knit round.".into()
        }
        Note::LastRow { side: Side::Right } => "If row 1 is a right-side row, so is the last.".into(),
        Note::LastRow { side: Side::Wrong } => "If row 1 is a right-side row, the last is a wrong-side one.".into(),
        Note::InsideRepeat => "It ends inside a repeat, not where the pattern does.".into(),
        Note::HalfRidge => "It ends in the middle of a ridge.".into(),
        Note::NeverWholeRidges => "With this repeat garter never ends on a whole ridge.".into(),
        Note::NoFewer => "With fewer rows it cannot end as it should.".into(),
        Note::Drops => fill_pattern(
            "So long a piece drops when worn, by # to #\u{a0}% in cotton or superwash wool (common practice, no source).",
            &[DROP.least, DROP.most],
        ),
    }
}

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
