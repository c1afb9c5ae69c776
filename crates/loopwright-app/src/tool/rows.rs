//! The view of rows and length: what is asked and the washed row gauge; the rows or the length with its neighbours, and
//! in mid-knit whether the tape is ahead or behind.

use super::State;
use crate::desk::Desk;
use crate::drawing::rows as drawing;
use crate::part::plain::{el, list, says, tells};
use crate::part::{
    Below, Field, Page, Reading, Say, Sheet, TAPE, answered, asked, choice, chosen, fields, folded_fields,
    good_to_know, working,
};
use crate::words::{page, rows as words, tell::Long};
use loopwright::bounds::Bounds;
use loopwright::cast_on::WIDTH;
use loopwright::rows::{Answer, Ask, EDGES, Question, REPEAT, ROWS, SET_UP, Tape, answer};
use loopwright::units::Length;
use yew::prelude::*;

/// The fields that may be folded away.
const FOLDED: [&str; 7] = [
    "repeat",
    "set_up",
    "end_after",
    "edges",
    "unwashed",
    "tape_rows",
    "tape_length",
];

/// The knitting, the chart, and the edges.
const MORE: [Field; 7] = [
    Field::Choice(&words::KNITTING),
    Field::Choice(&words::FABRIC),
    Field::Figure(("repeat", words::LABEL_REPEAT, "1", None)),
    Field::Figure(("set_up", words::LABEL_SET_UP, "0", None)),
    Field::Figure(("end_after", words::LABEL_END, "0", None)),
    Field::Figure(("edges", words::LABEL_EDGES, "0", None)),
    Field::Practice,
];

/// For the middle of the knitting.
const MIDWAY: [Field; 3] = [
    Field::Figure(("tape_rows", words::LABEL_DONE, "", None)),
    Field::Figure(("tape_length", words::LABEL_TAPE, "", Some(&TAPE))),
    Field::Gauge(("unwashed", words::LABEL_UNWASHED, "gauge_rows_unwashed")),
];

/// The named states.
pub const STATES: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "length=40&gauge=28"),
    State::new("chart", "length=40&gauge=28&repeat=12&set_up=2&end_after=7"),
    State::new("as-near", "length=10&gauge=28&repeat=8"),
    State::new("ridges", "ask=ridges&ridges=21&gauge=42"),
    State::new("garter", "length=10.7&gauge=42&fabric=garter&knitting=round&edges=2"),
    State::new("elsewhere", "ask=rows&rows=112&gauge=28&repeat=12"),
    State::new(
        "on-course",
        "length=50&gauge=28&unwashed=30&tape_rows=60&tape_length=20",
    ),
    State::new(
        "ahead",
        "length=50&gauge=28&unwashed=30&tape_rows=60&tape_length=21&repeat=4",
    ),
    State::new("behind", "length=50&gauge=28&tape_rows=60&tape_length=20"),
    State::new("past", "length=50&gauge=28&unwashed=30&tape_rows=150&tape_length=50"),
    State::new(
        "take-back",
        "length=37.3&gauge=28&unwashed=28&tape_rows=112&tape_length=40",
    ),
    State::new("set-up", "length=1&gauge=28&repeat=40&set_up=10"),
    State::new("impossible", "length=9999&gauge=400&end_after=13&tape_rows=5"),
    State::new("unreadable", "length=long&gauge=28 cm"),
    State::new("extreme", "length=2000&gauge=90&repeat=2"),
];

/// Draws the tool.
pub fn view(desk: &Desk) -> Html {
    let sheet = Sheet::new(desk, "rows");
    let long = |length: Length| TAPE.print(desk, length);
    let mut reading = Reading::of(&sheet);
    let question = question(&mut reading, &sheet);
    let answers = reading.done().and_then(|()| answer(&question));
    let answers = answers.map(|answer| shown(&question, &answer, &long));
    let page = Page {
        folded: &FOLDED,
        waiting: words::WAITING,
        problem: &words::problem,
    };
    asked(&sheet, &page, &form, answers)
}

/// Its small picture: two repeats, and half of the rows done.
pub fn sign() -> Html {
    drawing::strip(26, 2, 8, 13, "")
}

/// The field of what is asked.
fn asked_by(sheet: &Sheet) -> &'static str {
    let (_, _, fields) = words::ASK;
    fields.get(chosen(sheet, &words::ASK)).map_or("length", |field| field.0)
}

/// What is asked, by the field that holds it: a length, or a number.
fn ask(reading: &mut Reading, field: &'static str) -> Ask {
    if field == "length" {
        return Ask::Length(reading.length(&TAPE, field, WIDTH, ""));
    }
    let count = reading.count(field, ROWS, "");
    match field {
        "ridges" => Ask::Ridges(count),
        "repeats" => Ask::Repeats(count),
        _ => Ask::Rows(count),
    }
}

/// From the fields as typed to the question.
fn question(reading: &mut Reading, sheet: &Sheet) -> Question {
    let ask = ask(reading, asked_by(sheet));
    let tape = reading.both(("tape_rows", ROWS), ("tape_length", &TAPE, WIDTH));
    Question {
        ask,
        gauge: reading.gauge("gauge"),
        unwashed: reading.gauge_if_any("unwashed"),
        garter: chosen(sheet, &words::FABRIC) == 1 || matches!(ask, Ask::Ridges(_)),
        round: chosen(sheet, &words::KNITTING) == 1,
        repeat: reading.count("repeat", REPEAT, "1"),
        set_up: reading.count("set_up", SET_UP, "0"),
        end_after: reading.count("end_after", Bounds::new(0, REPEAT.most), "0"),
        edges: reading.count("edges", EDGES, "0"),
        tape: tape.map(|(rows, length)| Tape { rows, length }),
    }
}

/// The fields, and the rest folded away.
fn form(sheet: &Sheet, say: Say) -> Html {
    let have = vec![says("span", "", words::I_HAVE), choice(sheet, &words::ASK)];
    let (label, scale) = match asked_by(sheet) {
        "length" => (words::LABEL_LENGTH, Some(&TAPE)),
        _ => (words::LABEL_MANY, None),
    };
    let asked = [
        Field::Figure((asked_by(sheet), label, "", scale)),
        Field::Gauge(("gauge", words::LABEL_GAUGE, "gauge_rows")),
    ];
    list(vec![
        el("div", "line", have),
        fields(sheet, &asked, say),
        folded_fields(sheet, page::MORE, &MORE, say),
        folded_fields(sheet, words::MIDWAY, &MIDWAY, say),
    ])
}

/// The rows or the length, the course, the neighbours, the drawing and the sum.
fn shown(question: &Question, answer: &Answer, long: Long) -> Html {
    let line = tells("p", "row", words::headline(question, answer, long));
    let outcome = words::outcome(question, answer, long);
    let mut below = Below::of(answered(words::title(question), line, outcome));
    below.tell("", words::widths(question, answer, long));
    if let Some(course) = &answer.course {
        let [standing, tape] = words::course(question, course, long);
        below.tell("verdict", standing);
        below.tell("", tape);
    }
    let (lead, next) = words::neighbours(question, answer, long);
    below.list(lead, next);
    let key = words::key(question);
    if !key.is_empty() {
        let done = question.tape.map_or(0, |tape| tape.rows);
        let picture = words::drawing(question, answer, long);
        let figure = vec![
            drawing::strip(answer.pick.rows, question.set_up, question.repeat, done, &picture),
            says("figcaption", "quiet", key),
        ];
        below.add(el("figure", "needle", figure));
    }
    below.add(good_to_know(words::notes(question, answer)));
    below.add(working(words::steps(question, answer, long), words::SOURCE));
    below.done()
}
