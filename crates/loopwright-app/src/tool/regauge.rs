//! The view of a pattern at another gauge: both gauges and the counts; the size to follow or the counts that take their
//! place, then rows, shaping, and what else the gauge moves.

mod ask;
mod states;

pub use states::STATES;

use crate::desk::Desk;
use crate::drawing::rows::strip;
use crate::part::plain::{el, list, says, tells};
use crate::part::{Below, Page, Reading, Sheet, TAPE, answered, asked, good_to_know, row_by_row, working};
use crate::words::{regauge as words, schedule, sizing, tell::Long};
use loopwright::regauge::{Answer, Converted, Question, answer};
use loopwright::units::Length;
use yew::prelude::*;

/// More shaping rows than this are not listed one by one.
const MOST_LISTED: usize = 300;

/// Draws the tool.
pub fn view(desk: &Desk) -> Html {
    let sheet = Sheet::new(desk, "regauge");
    let long = |length: Length| TAPE.print(desk, length);
    let mut reading = Reading::of(&sheet);
    let question = ask::question(&mut reading, &sheet);
    let answers = reading.done().and_then(|()| answer(&question));
    let answers = answers.map(|answer| shown(&question, &answer, &long));
    let page = Page {
        folded: &ask::FOLDED,
        waiting: words::WAITING,
        problem: &words::problem,
    };
    asked(&sheet, &page, &ask::form, answers)
}

/// Its small picture: stitches, and wider ones over the same width.
pub fn sign() -> Html {
    strip(22, 0, 5, 0, "")
}

/// The counts and rows as tables, the shaping, and the sum.
fn shown(question: &Question, answer: &Answer, long: Long) -> Html {
    let (title, headline, outcome) = words::lead(question, answer, long);
    let mut below = Below::of(answered(title, tells("p", "row", headline), outcome));
    below.tell("", words::near(answer, long));
    let picked = answer.follow.as_ref().map(|follow| follow.size);
    below.add(table(words::STITCHES, &answer.stitches, picked, long));
    below.add(table(words::ROWS, &answer.rows, None, long));
    if let Some(shaped) = &answer.shaping {
        let [ends, told] = words::shaping(question, shaped, long);
        below.add(says("h3", "", words::SHAPING));
        below.tell("", ends);
        below.tell("verdict", told);
        if let Some(schedule) = &shaped.schedule {
            below.add(row_by_row(schedule::listed(schedule, MOST_LISTED), true));
        }
    }
    below.list(sizing::MOVES, sizing::moves(&answer.moves, long));
    below.add(good_to_know(words::notes(question, answer)));
    below.add(working(words::steps(question, answer, long), words::SOURCE));
    below.done()
}

/// Old and new, a line each, the one to follow marked by a word.
fn table(title: &'static str, found: &[Converted], picked: Option<usize>, long: Long) -> Html {
    if found.is_empty() {
        return Html::default();
    }
    let mut head = Vec::new();
    for column in words::COLUMNS {
        head.push(says("th", "", column));
    }
    let mut lines = vec![el("tr", "", head)];
    for (place, one) in found.iter().enumerate() {
        let follow = picked == Some(place);
        let mut line = Vec::new();
        for column in 0..words::COLUMNS.len() {
            line.push(tells("td", "", words::cell(column, one, follow, long)));
        }
        lines.push(el("tr", if follow { "pick" } else { "" }, line));
    }
    list(vec![
        says("h3", "", title),
        el("table", "", vec![el("tbody", "", lines)]),
    ])
}
