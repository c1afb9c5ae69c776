//! The view of gauge: counts from the swatch and the pattern's; the gauge or the needle to try, the piece as it would be
//! beside the one that is wanted, and what stitches and rows say, each with the tap that keeps it for all tools.

use super::State;
use crate::desk::Desk;
use crate::drawing::outline;
use crate::part::plain::{el, list, says, tells};
use crate::part::{
    GaugeRow, Page, Reading, Row, Say, Sheet, TAPE, answered, asked, gauge_typed, gauges_taken, good_to_know, keep,
    more, rows, working,
};
use crate::words::gauge as words;
use loopwright::cast_on::WIDTH;
use loopwright::gauge::{Answer, Measured, Question, answer};
use loopwright::problem::Kind;
use loopwright::units::parse::Unreadable;
use loopwright::units::{Gauge, Length, LengthUnit};
use yew::prelude::*;

/// The fields under "more".
const FOLDED: [&str; 6] = [
    "rows",
    "pattern_rows",
    "stitches_unwashed",
    "rows_unwashed",
    "width",
    "length",
];

/// The gauges that are asked for first, each with its name among what is kept.
const FIRST: [GaugeRow; 2] = [
    ("stitches", words::LABEL_STITCHES, KEPT[0][0]),
    ("pattern", words::LABEL_PATTERN, ""),
];

/// And those under "more".
const REST: [GaugeRow; 4] = [
    ("rows", words::LABEL_ROWS, KEPT[1][0]),
    ("pattern_rows", words::LABEL_PATTERN_ROWS, ""),
    ("stitches_unwashed", words::LABEL_UNWASHED, KEPT[0][1]),
    ("rows_unwashed", words::LABEL_ROWS_UNWASHED, KEPT[1][1]),
];

/// The piece, before anything is typed and where it was emptied, in centimetres.
const PIECE: [Row; 2] = [
    ("width", words::LABEL_WIDTH, "100", Some(&TAPE)),
    ("length", words::LABEL_LENGTH, "50", Some(&TAPE)),
];

/// What stitches and rows are called among what is kept, washed and not.
const KEPT: [[&str; 2]; 2] = [
    ["gauge_stitches", "gauge_stitches_unwashed"],
    ["gauge_rows", "gauge_rows_unwashed"],
];

/// The piece of the sign, and the one that was wanted.
const SMALL: outline::Size = [Length::from_mm(272), Length::from_mm(84)];
const WANTED: outline::Size = [Length::from_mm(320), Length::from_mm(84)];

/// The named states.
pub const STATES: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "stitches=21, 20 1/2, 21&pattern=19"),
    State::new("alone", "stitches=21"),
    State::new("keep", "stitches=21, 21 1/2&pattern=21&rows=30&pattern_rows=28"),
    State::new(
        "washed",
        "stitches=21&pattern=22 in 4 in&rows=28&pattern_rows=28&stitches_unwashed=21 1/2&rows_unwashed=30",
    ),
    State::new("unwashed-far-off", "stitches_unwashed=30&pattern=20"),
    State::new("uneven", "stitches=18, 24&pattern=21"),
    State::new("short", "stitches=5 in 1 in&pattern=22 in 4 in"),
    State::new("impossible", "stitches=21, 0&pattern=500&rows=28 in 2 m"),
    State::new("unreadable", "stitches=21, many&pattern=21 cm"),
    State::new(
        "extreme",
        "stitches=400 in 5 mm&pattern=1 in 100 cm&rows=1 in 100 cm&pattern_rows=400 in 5 mm&width=20 m",
    ),
];

/// Draws the tool.
pub fn view(desk: &Desk) -> Html {
    let sheet = Sheet::new(desk, "gauge");
    let mut reading = Reading::of(&sheet);
    let question = question(&mut reading);
    let answers = reading.done().and_then(|()| answer(&question));
    let answers = answers.map(|answer| shown(desk, &question, &answer));
    let page = Page {
        folded: &FOLDED,
        waiting: words::WAITING,
        problem: &words::problem,
    };
    asked(&sheet, &page, &form, answers)
}

/// Its small picture: a piece that comes out smaller than the one that was wanted.
pub fn sign() -> Html {
    let nothing = [Length::ZERO; 2];
    outline::piece(SMALL, WANTED, [nothing; 2], "")
}

/// From the fields as typed to the question.
fn question(reading: &mut Reading) -> Question {
    let question = Question {
        stitches: reading.gauges("stitches"),
        rows: reading.gauges("rows"),
        stitches_unwashed: reading.gauges("stitches_unwashed"),
        rows_unwashed: reading.gauges("rows_unwashed"),
        pattern: reading.gauge_if_any("pattern"),
        pattern_rows: reading.gauge_if_any("pattern_rows"),
        width: reading
            .length_if_any(&TAPE, "width", WIDTH)
            .unwrap_or(Length::of(100, LengthUnit::Cm)),
        length: reading
            .length_if_any(&TAPE, "length", WIDTH)
            .unwrap_or(Length::of(50, LengthUnit::Cm)),
    };
    if question.stitches.is_empty() && question.stitches_unwashed.is_empty() {
        let rows = [&question.rows, &question.rows_unwashed]
            .iter()
            .any(|rows| !rows.is_empty());
        let kind = if rows {
            Kind::Missing
        } else {
            Kind::Unreadable(Unreadable::Empty)
        };
        reading.wrong("stitches", kind);
    }
    question
}

/// The fields, and the rest under "more".
fn form(sheet: &Sheet, say: Say) -> Html {
    list(vec![
        gauges_taken(sheet, &FIRST, say),
        says("p", "practice", words::BAND),
        more(vec![gauges_taken(sheet, &REST, say), rows(sheet, &PIECE, say)]),
    ])
}

/// The answer, the drawing, what stitches and rows say, and the sum.
fn shown(desk: &Desk, question: &Question, answer: &Answer) -> Html {
    let long: words::Long = &|length| TAPE.print(desk, length);
    let (title, line) = words::headline(answer);
    let wanted = [question.width, question.length];
    // Without rows beside the pattern's, the length is the one that is wanted.
    let (mut would_be, mut known) = (wanted, [[Length::ZERO; 2]; 2]);
    let (mut ways, mut steps) = (Vec::new(), Vec::new());
    for (way, found) in [Some(&answer.stitches), answer.rows.as_ref()].into_iter().enumerate() {
        let Some(found) = found else { continue };
        if found.against.is_some() {
            would_be[way] = found.would_be;
            known[way] = [found.reading[0].least, found.reading[0].most];
        }
        ways.push(one_way(desk, way, wanted[way], found, long));
        words::steps(way, question, found, long, &mut steps);
    }
    let verdict = if answer.rows_only {
        says("p", "verdict", words::ROWS_ONLY)
    } else {
        Html::default()
    };
    let figure = if answer.stitches.against.is_some() {
        let key = words::drawing(question, answer, long);
        let figure = vec![
            outline::piece(would_be, wanted, known, &key),
            tells("figcaption", "quiet", key),
        ];
        el("figure", "scale", figure)
    } else {
        Html::default()
    };
    list(vec![
        answered(title, tells("p", "row", line), words::outcome(question, answer, long)),
        verdict,
        figure,
        el("div", "ways", ways),
        good_to_know(words::notes(answer)),
        working(steps, words::SOURCE),
    ])
}

/// What stitches, or rows, say.
fn one_way(desk: &Desk, way: usize, wanted: Length, found: &Measured, long: words::Long) -> Html {
    let mut said = vec![
        says("h3", "", words::HEADINGS[way]),
        tells("p", "", words::counted(found)),
    ];
    let [washed, unwashed] = KEPT[way];
    said.push(kept(desk, if found.washed { washed } else { unwashed }, found.gauge));
    if let Some(before) = found.unwashed.filter(|_| found.washed) {
        said.push(tells("p", "", words::before(before)));
        said.push(kept(desk, unwashed, before));
    }
    for sentence in words::said(way, wanted, found, long) {
        said.push(tells("p", "", sentence));
    }
    el("div", "", said)
}

/// The tap that keeps a gauge for all tools, if a field of theirs takes it.
fn kept(desk: &Desk, name: &'static str, gauge: Gauge) -> Html {
    gauge_typed(gauge).map_or_else(Html::default, |typed| keep(desk, name, typed))
}
