//! The words of a back neck that is raised by short rows in the round.

mod followed;

pub use followed::followed;

use super::super::Worded;
use super::super::intl::{fill_pattern, fill_pattern_with, number};
use super::super::row::terms;
use super::super::tell::{Long, Value, fill_pattern_with_values};
use super::MOST_SAID;
use loopwright::stairs::Side;
use loopwright::stairs::raise::{Across, Answer, Begins, Method, Question, ShortRow};

pub const WHEN: &str = "At the beginning of a round";
pub const KEY: &str =
    "The back from outside, with its middle. Each step is two rows. The numbers count from the middle.";

impl Worded for Method {
    fn words(self) -> &'static str {
        match self {
            Self::German => "German short rows",
            Self::Wrap => "wrap and turn",
        }
    }
}

impl Worded for Begins {
    fn words(self) -> &'static str {
        match self {
            Self::Middle => "in the middle of the back",
            Self::Edge => "at the edge of the back",
        }
    }
}

/// Where to turn.
pub fn headline(answer: &Answer) -> String {
    let turns = [many(answer)];
    if answer.turns.len() > MOST_SAID {
        return fill_pattern("Turn # times at each side of the middle, as listed below.", &turns);
    }
    let places: Vec<String> = answer.turns.iter().map(|place| number(*place)).collect();
    let pattern = "Turn @ stitches from the middle of the back, at each side.";
    fill_pattern_with(pattern, &[], &[&places.join(", ")])
}

/// What it comes to.
pub fn outcome(answer: &Answer, long: Long) -> (String, String) {
    let pattern = "# short rows. In its middle the back comes out higher by";
    (fill_pattern(pattern, &[rows(answer)]), long(answer.raised))
}

/// The short rows one by one, and the way home.
pub fn listed(question: &Question, answer: &Answer) -> Vec<String> {
    let row = |short: &ShortRow| one_row(question.method, short);
    answer.rows.iter().map(row).chain([home(question, answer)]).collect()
}

fn one_row(method: Method, short: &ShortRow) -> String {
    let side = match short.side {
        Side::Right => "RS",
        Side::Wrong => "WS",
    };
    let double = if short.double { "DS, " } else { "" };
    let turn = match method {
        Method::German => "turn",
        Method::Wrap => "w&t",
    };
    let words = [side, double, &terms(&short.worked).join(", "), turn];
    fill_pattern_with("Row # (@): @@, @", &[short.row], &words)
}

/// From the last turn to where the round begins.
fn home(question: &Question, answer: &Answer) -> String {
    let pattern = match (question.method, answer.home) {
        (Method::German, 0) => "Then DS, and the round begins here",
        (Method::Wrap, 0) => "Then the round begins here",
        (Method::German, _) => "Then DS, K# to where the round begins",
        (Method::Wrap, _) => "Then K# to where the round begins",
    };
    fill_pattern(pattern, &[answer.home])
}

/// What else she should know.
pub fn notes(question: &Question, answer: &Answer, long: Long) -> Vec<String> {
    let method = match question.method {
        Method::German => {
            "DS: after the turn bring the yarn to the front, slip the first stitch purlwise and pull the yarn up over the needle until the stitch shows two legs. Work both legs as one when you come to them."
        }
        Method::Wrap => {
            "w&t: slip the next stitch purlwise, take the yarn to the other side, slip the stitch back and turn. Work the wrap together with its stitch when you come to it."
        }
    };
    let mut notes = vec![method.to_owned()];
    let [asked, raised] = [question.height, answer.raised].map(long);
    if asked != raised {
        let pattern = match question.turns {
            None => "You asked for @: each turn at a side brings two rows, and this is the nearest.",
            Some(_) => "You asked for @: with your turns it is @.",
        };
        notes.push(fill_pattern_with(pattern, &[], &[&asked, &raised]));
    }
    if answer.left_out {
        let pattern = "Both sides are alike, so of # stitches one stays out.";
        notes.push(fill_pattern(pattern, &[answer.across + 1]));
    }
    notes
}

/// The sum.
pub fn steps(question: &Question, answer: &Answer, long: Long) -> Vec<String> {
    let mut steps = Vec::new();
    if let Across::Width { width, gauge } = question.across {
        let values = [Value::Length(width), Value::Gauge(gauge), Value::Count(answer.across)];
        steps.push(fill_pattern_with_values(
            "@ across the back at @: # stitches.",
            &values,
            long,
        ));
    }
    let values = [
        Value::Count(many(answer)),
        Value::Count(rows(answer)),
        Value::Gauge(question.rows),
        Value::Length(answer.raised),
    ];
    let pattern = "Two rows for each turn at a side: 2 × # = # rows at @, which is @.";
    steps.push(fill_pattern_with_values(pattern, &values, long));
    let half = answer.turns.last().copied().unwrap_or(0);
    let pattern = "# {stitch|stitches} at each side of the middle, shared out between # {turn|turns}.";
    steps.push(fill_pattern(pattern, &[half, many(answer)]));
    steps
}

/// What the drawing shows.
pub fn drawing(answer: &Answer) -> String {
    fill_pattern_with(
        "The back in steps that rise to its middle. @",
        &[],
        &[&headline(answer)],
    )
}

pub const SOURCE: &str = "Two rows a turn is arithmetic. Even shares between the turns: common practice, no source.";

/// Turns at one side.
fn many(answer: &Answer) -> u32 {
    u32::try_from(answer.turns.len()).unwrap_or(u32::MAX)
}

fn rows(answer: &Answer) -> u32 {
    u32::try_from(answer.rows.len()).unwrap_or(u32::MAX)
}

#[cfg(test)]
mod tests;
