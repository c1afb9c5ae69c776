//! The view of steps at a shoulder or a neck: how many stitches in how many steps; the instruction, the stairs, and the
//! rows one by one.

use super::State;
use crate::desk::Desk;
use crate::drawing::stairs as drawing;
use crate::part::plain::{el, list, says, tells};
use crate::part::{
    ChoiceRow, Label, Page, Reading, Say, Sheet, answered, asked, choice, choices, chosen, field, good_to_know, more,
    row_by_row, working,
};
use crate::words::{problem, shaping, stairs as words};
use loopwright::stairs::{Answer, Ask, Edge, Place, Question, ROWS, STEPS, STITCHES, Side, Way, answer};
use yew::prelude::*;

const WAY: ChoiceRow = ("way", words::LABEL_WAY, &words::WAYS);
const PLACE: ChoiceRow = ("place", words::LABEL_PLACE, &words::PLACES);
const BY: ChoiceRow = ("by", words::LABEL_BY, &words::BYS);
const EDGE: ChoiceRow = ("edge", words::LABEL_EDGE, &words::EDGES);
/// Each half of a neck is worked alone, and moves at one edge.
const INNER: ChoiceRow = ("edge", words::LABEL_EDGE, words::EDGES.split_at(2).0);
const NEXT: ChoiceRow = ("next", words::LABEL_NEXT, &words::NEXTS);

/// More rows than this are folded away.
const MOST_OPEN: usize = 40;

/// The named states.
pub const STATES: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "stitches=27&steps=4"),
    State::new("both", "stitches=27&steps=4&edge=both"),
    State::new("neck", "stitches=14&by=rows&rows=10&place=neck&edge=left"),
    State::new("short-rows", "stitches=27&steps=4&way=short&next=wrong"),
    State::new("one-step", "stitches=6&steps=1&way=short&edge=both"),
    State::new("impossible", "stitches=3&steps=4"),
    State::new("unreadable", "stitches=27 cm&steps=few"),
    State::new("extreme", "stitches=100000&steps=500&edge=both"),
];

/// Draws the tool.
pub fn view(desk: &Desk) -> Html {
    let sheet = Sheet::new(desk, "stairs");
    let mut reading = Reading::of(&sheet);
    let (count, start) = counted(&sheet);
    let question = Question {
        stitches: reading.count("stitches", STITCHES, ""),
        ask: match chosen(&sheet, &BY) {
            0 => Ask::Steps(reading.count(count, STEPS, &start)),
            _ => Ask::Rows(reading.count(count, ROWS, &start)),
        },
        edge: match chosen(&sheet, edge(&sheet)) {
            0 => Edge::Right,
            1 => Edge::Left,
            _ => Edge::Both,
        },
        place: if chosen(&sheet, &PLACE) == 0 {
            Place::Shoulder
        } else {
            Place::Neck
        },
        way: if chosen(&sheet, &WAY) == 0 {
            Way::BindOff
        } else {
            Way::ShortRows
        },
        next: if chosen(&sheet, &NEXT) == 0 {
            Side::Right
        } else {
            Side::Wrong
        },
    };
    let answers = reading.done().and_then(|()| answer(&question));
    let page = Page {
        folded: &[],
        waiting: words::WAITING,
        problem: &|wrong| problem::sentence(&wrong.kind),
    };
    asked(&sheet, &page, &form, answers.map(|answer| shown(&question, &answer)))
}

/// Its small picture.
pub fn sign() -> Html {
    drawing::sign()
}

/// The field of the steps or rows. Until it is typed in it has what stands in the other one.
fn counted(sheet: &Sheet) -> (&'static str, String) {
    let (field, other) = match chosen(sheet, &BY) {
        0 => ("steps", "rows"),
        _ => ("rows", "steps"),
    };
    (field, sheet.text(other, ""))
}

/// The edges there are to choose from.
fn edge(sheet: &Sheet) -> &'static ChoiceRow {
    if chosen(sheet, &PLACE) == 0 { &EDGE } else { &INNER }
}

/// The sentence with its fields, and the rest under "more".
fn form(sheet: &Sheet, say: Say) -> Html {
    let number = |name, label, start: &str| field(sheet, name, Label::Unseen(label), start, say(name));
    let (count, start) = counted(sheet);
    let sentence = vec![
        says("span", "", words::I_HAVE_TO),
        choice(sheet, &WAY),
        number("stitches", words::LABEL_STITCHES, ""),
        says("span", "", words::AT),
        choice(sheet, &PLACE),
        says("span", "", words::IN),
        number(count, words::LABEL_STEPS, &start),
        choice(sheet, &BY),
    ];
    list(vec![
        el("div", "line", sentence),
        more(vec![choices(sheet, &[edge(sheet), &NEXT])]),
    ])
}

/// The instruction, the stairs and the rows.
fn shown(question: &Question, answer: &Answer) -> Html {
    let line = tells("p", "row", words::headline(question, answer));
    let figure = vec![
        drawing::stairs(answer, question.edge, &words::drawing(question, answer)),
        says("figcaption", "quiet", words::KEY),
    ];
    list(vec![
        answered(shaping::OVER[0], line, words::outcome(question, answer)),
        el("figure", "needle", figure),
        row_by_row(words::listed(question, answer), answer.stairs.len() > MOST_OPEN),
        good_to_know(words::notes(question, answer)),
        working(words::steps(question, answer), words::SOURCE),
    ])
}
