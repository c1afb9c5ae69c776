//! The words of rows and length. Lengths come in printed, in the unit the knitter uses, by the function `long`.

use super::Title;
use super::cast_on::off;
use super::intl::{say, say_with};
use super::tell::{Long, Value, tell};
use crate::part::ChoiceRow;
use loopwright::problem::{Kind, Problem};
use loopwright::rows::{Answer, Ask, Course, DROP, LONG, Question, Standing};
use loopwright::units::Length;

/// What it is called.
pub const TITLE: Title = Title {
    name: "Rows and length",
    asks: "How many rows make a length, and are you on course?",
};
/// Before the choice of what is known.
pub const I_HAVE: &str = "I have";
/// The label of the length.
pub const LABEL_LENGTH: &str = "How long, washed";
/// The label of a number.
pub const LABEL_MANY: &str = "How many";
/// The label of the washed gauge.
pub const LABEL_GAUGE: &str = "Rows in the washed swatch";
/// The label of the gauge before washing.
pub const LABEL_UNWASHED: &str = "Rows in the swatch before washing";
/// The label of the repeat.
pub const LABEL_REPEAT: &str = "Rows of one repeat";
/// The label of the set-up rows.
pub const LABEL_SET_UP: &str = "Set-up rows before it";
/// The label of the end.
pub const LABEL_END: &str = "End after row (0 for whole repeats)";
/// The label of the edges.
pub const LABEL_EDGES: &str = "Edges measured along (0 to 2)";
/// Where the fields for the middle of the knitting are.
pub const MIDWAY: &str = "Am I on course?";
/// The label of the rows that are done.
pub const LABEL_DONE: &str = "Rows done so far";
/// The label of the tape.
pub const LABEL_TAPE: &str = "The tape on the needle says";
/// Where the answer will be.
pub const WAITING: &str = "The rows, or the length, appear here.";

/// What is known, and what is wanted; each by the name of its field.
pub const ASK: ChoiceRow = (
    "ask",
    "What you have",
    &[
        ("length", "a length to knit"),
        ("rows", "a number of rows"),
        ("ridges", "garter ridges"),
        ("repeats", "repeats of a chart"),
    ],
);
/// Flat or in the round.
pub const KNITTING: ChoiceRow = (
    "knitting",
    "In the round or flat",
    &[("flat", "flat, back and forth"), ("round", "in the round")],
);
/// The stitch.
pub const FABRIC: ChoiceRow = (
    "fabric",
    "The stitch",
    &[("any", "any but garter"), ("garter", "garter: two rows a ridge")],
);

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
pub fn headline(question: &Question, answer: &Answer, long: Long) -> String {
    let pattern = if is_length(question) { "Work @" } else { "@ long" };
    tell(pattern, &figure(question, answer, is_length(question)), long)
}

/// What they are made of, and what they come to.
pub fn outcome(question: &Question, answer: &Answer, long: Long) -> (String, String) {
    let (before, after) = if is_length(question) {
        ("Washed, that is", "@ long")
    } else {
        ("That is", "@")
    };
    let figure = figure(question, answer, !is_length(question));
    (made_of(question, answer) + before, tell(after, &figure, long))
}

/// The rows, or how long they are.
const fn figure(question: &Question, answer: &Answer, rows: bool) -> [Value; 1] {
    [if rows {
        Value::Rows(answer.pick.rows, question.round)
    } else {
        Value::Length(answer.pick.length)
    }]
}

/// Ridges, and repeats of the chart.
fn made_of(question: &Question, answer: &Answer) -> String {
    let mut said = String::new();
    if question.garter {
        let half = "# {ridge|ridges} and half a one. ";
        let whole = "# {ridge|ridges}. ";
        let pattern = if answer.pick.ends_right_side() { half } else { whole };
        said = say(pattern, &[answer.ridges]);
    }
    if question.set_up > 0 && answer.repeats + answer.row == 0 {
        said += "The set-up only. ";
    }
    if question.repeat > 1 && answer.repeats > 0 {
        let pattern = match (question.set_up, answer.row) {
            (0, 0) => "# {repeat|repeats} of #. ",
            (0, _) => "# {repeat|repeats} of #, and # of the next. ",
            (_, 0) => "# {repeat|repeats} of #, after # for the set-up. ",
            _ => "# {repeat|repeats} of #, and # of the next, after # for the set-up. ",
        };
        let mut numbers = vec![answer.repeats, question.repeat];
        for number in [answer.row, question.set_up] {
            if number > 0 {
                numbers.push(number);
            }
        }
        said += &say(pattern, &numbers);
    }
    said
}

/// How near the length is, and what it is if the swatch was misread.
pub fn widths(question: &Question, answer: &Answer, long: Long) -> String {
    let range = [Value::Length(answer.range.least), Value::Length(answer.range.most)];
    let range = tell("If the swatch was read half a row wrong, it is @ to @.", &range, long);
    if is_length(question) {
        say_with("That is @. @", &[], &[&off(answer.off, long), &range])
    } else {
        range
    }
}

/// The numbers below and above, and what stands before them; none where any number will do.
pub fn neighbours(question: &Question, answer: &Answer, long: Long) -> (&'static str, Vec<String>) {
    let mut said = Vec::new();
    let lead = match (is_length(question), answer.ends) {
        (true, _) => "Or work",
        (false, false) => "These end as the pattern does",
        (false, true) => return ("", said),
    };
    for (count, as_near) in [(&answer.below, false), (&answer.above, answer.as_near)] {
        if let Some(count) = count {
            let pattern = if as_near { "@: @, just as near." } else { "@: @." };
            let values = [Value::Rows(count.rows, question.round), Value::Length(count.length)];
            said.push(tell(pattern, &values, long));
        }
    }
    (lead, said)
}

/// Ahead or behind, and how many rows are to go; then what the tape should say, now and at the end.
pub fn course(question: &Question, course: &Course, long: Long) -> [String; 2] {
    let mut standing = String::from(match course.standing {
        Standing::OnCourse => "On course, as near as a tape tells: ",
        Standing::Ahead => "Ahead by @. Knitted on like this, @ make the length: ",
        Standing::Behind => "Behind by @. Knitted on like this, @ make the length: ",
    });
    let values = [
        Value::Off(course.off),
        Value::Rows(course.rows, question.round),
        Value::Count(course.to_go.max(course.past)),
    ];
    standing += if course.past > 0 {
        "take back the last #."
    } else {
        "# to go."
    };
    let tape = match question.unwashed {
        Some(_) if course.past > 0 => "By the swatch it should be @ now. Washed, it will be @.",
        Some(_) => {
            "By the swatch it should be @ now. Washed, it will be @. Stop when the tape says @, without the edges."
        }
        None => {
            "By the washed swatch it should be @ now. The tape meets unwashed knitting: count the swatch before washing too."
        }
    };
    let lengths = [
        Value::Length(course.should_be),
        Value::Length(course.after_washing),
        Value::Length(course.stop_at),
    ];
    [tell(&standing, &values, long), tell(tape, &lengths, long)]
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
    let mut notes = Vec::new();
    for (holds, note) in known {
        if holds {
            notes.push(note.to_owned());
        }
    }
    if pick.length >= LONG {
        let drop = [DROP.least, DROP.most];
        notes.push(say(
            "So long a piece drops when worn, by # to #\u{a0}% in cotton or superwash wool (common practice, no source).",
            &drop,
        ));
    }
    notes
}

/// What the drawing shows.
pub fn drawing(question: &Question, answer: &Answer, long: Long) -> String {
    let rows = figure(question, answer, true);
    let done = question.tape.map_or(0, |tape| tape.rows);
    tell("@, the first on the left. ", &rows, long) + &made_of(question, answer) + &say("# done.", &[done])
}

/// Below the drawing; nothing where there is nothing to draw but rows.
pub const fn key(question: &Question) -> &'static str {
    match (question.repeat > 1, question.tape.is_some()) {
        (false, false) => "",
        (true, false) => "A long stroke ends each repeat.",
        (true, true) => "A long stroke ends each repeat; the thick line is done.",
        (false, true) => "The thick line is done.",
    }
}

/// The sum.
pub fn steps(question: &Question, answer: &Answer, long: Long) -> Vec<String> {
    let (rows, gauge) = (Value::Count(answer.pick.rows), Value::Gauge(question.gauge));
    let mut steps = Vec::new();
    if let Ask::Length(length) = question.ask {
        let values = [Value::Length(length), gauge, Value::Part(answer.ideal), rows];
        steps.push(tell("@ at @ take @ rows. The nearest that will do: #.", &values, long));
    }
    let pattern = match question.edges {
        0 => "# at @ measure @.",
        _ => "# at @ measure @, with # more for the edges.",
    };
    let edges = Value::Count(question.edges);
    steps.push(tell(
        pattern,
        &[rows, gauge, Value::Length(answer.pick.length), edges],
        long,
    ));
    if let (Some(tape), Some(course)) = (question.tape, &answer.course) {
        let gauge = Value::Gauge(question.unwashed.unwrap_or(question.gauge));
        let values = [Value::Count(tape.rows), gauge, Value::Length(course.should_be)];
        steps.push(tell("# at @ measure @ by the tape.", &values, long));
    }
    steps
}

/// Where the rule comes from.
pub const SOURCE: &str = "Arithmetic. One row for an edge, and how far a long piece drops: common practice, no source.";

/// What to type instead.
pub fn problem(problem: &Problem) -> String {
    match problem.kind {
        Kind::Missing if problem.field.key() == "repeat" => "Type the rows of one repeat to end in it.".into(),
        Kind::Missing => "Type this too, or empty the field that goes with it.".into(),
        _ => super::problem::sentence(&problem.kind),
    }
}

#[cfg(test)]
mod tests;
