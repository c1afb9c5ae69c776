//! The view of the swatch: the gauge that is hoped for, round or flat; the count, how high, the middle that is measured,
//! and what is done in which order.

use super::State;
use crate::desk::Desk;
use crate::drawing::outline;
use crate::part::plain::{el, items, list, says, tells};
use crate::part::{
    Choice, GaugeRow, Label, Page, Reading, Row, Say, Sheet, answered, asked, gauges_taken, good_to_know, more,
    multiple, multiple_fields, rows, select, working,
};
use crate::words::{cast_on, problem, swatch as words, units::length_beside};
use loopwright::cast_on::MULTIPLE;
use loopwright::swatch::{Answer, Question, answer};
use loopwright::units::Length;
use yew::prelude::*;

/// The fields under "more".
const FOLDED: [&str; 4] = ["rows", "multiple", "plus", "row_repeat"];

/// What is hoped for, with the name of what is kept.
const GAUGE: [GaugeRow; 1] = [("gauge", words::LABEL_GAUGE, "gauge_stitches")];
const ROWS: [GaugeRow; 1] = [("rows", words::LABEL_ROWS, "gauge_rows")];

/// Rows of one repeat.
const REPEAT: [Row; 1] = [("row_repeat", words::LABEL_ROW_REPEAT, "1", None)];

/// The named states.
pub const STATES: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "gauge=21&rows=28"),
    State::new("repeats", "gauge=21&knitting=flat&rows=28&multiple=8 + 3&row_repeat=8"),
    State::new("short", "gauge=5 in 1 in&rows=7 in 1 in"),
    State::new("plus", "gauge=21&multiple=8&plus=3"),
    State::new("impossible", "gauge=21&multiple=0&row_repeat=0"),
    State::new("unreadable", "gauge=21 cm&rows=some"),
    State::new("extreme", "gauge=400 in 1 m&rows=99 in 5mm&multiple=1000"),
];

/// Draws the tool.
pub fn view(desk: &Desk) -> Html {
    let sheet = Sheet::new(desk, "swatch");
    let mut reading = Reading::of(&sheet);
    let question = Question {
        rows: reading.gauge_if_any("rows"),
        multiple: multiple(&mut reading, &sheet),
        row_repeat: reading.count("row_repeat", MULTIPLE, REPEAT[0].2),
        round: sheet.text("knitting", "") != "flat",
        ..Question::about(reading.gauge("gauge"))
    };
    let answers = reading.done().and_then(|()| answer(&question));
    let answers = answers.map(|answer| shown(&question, &answer));
    let page = Page {
        folded: &FOLDED,
        waiting: words::WAITING,
        problem: &|wrong| problem::sentence(&wrong.kind),
    };
    asked(&sheet, &page, &form, answers)
}

/// Its small picture: a swatch and its middle.
pub fn sign() -> Html {
    outline::swatch([Length::from_mm(160), Length::from_mm(84)], Length::from_mm(50), "")
}

/// The fields, and the rest under "more".
fn form(sheet: &Sheet, say: Say) -> Html {
    let label = Label::Unseen(cast_on::LABEL_KNITTING);
    let how = vec![
        says("span", "", words::I_KNIT),
        select(sheet, "knitting", label, Choice::keyed(&cast_on::KNITTINGS), ""),
    ];
    let labels = [cast_on::LABEL_MULTIPLE, cast_on::LABEL_PLUS];
    list(vec![
        gauges_taken(sheet, &GAUGE, say),
        el("div", "line", how),
        more(vec![
            gauges_taken(sheet, &ROWS, say),
            multiple_fields(sheet, labels, say),
            rows(sheet, &REPEAT, say),
        ]),
    ])
}

/// The count, the drawing, the order, and the sum.
fn shown(question: &Question, answer: &Answer) -> Html {
    let long: words::Long = &|length| length_beside(question.gauge, length);
    let key = words::drawing(answer, long);
    let figure = vec![
        outline::swatch([answer.width, answer.height], answer.span, &key),
        tells("figcaption", "quiet", key),
    ];
    let line = tells("p", "row", words::headline(answer));
    list(vec![
        answered(words::BEFORE, line, words::outcome(answer)),
        tells("p", "", words::height(question, answer, long)),
        el("figure", "scale", figure),
        says("h3", "", words::ORDER),
        items("ol", words::order(question.round, answer.span)),
        good_to_know(words::notes(question)),
        working(words::steps(question, answer, long), words::SOURCE),
    ])
}
