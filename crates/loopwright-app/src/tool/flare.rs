//! The view of the flare: where it begins, how deep it is and how wide the hem; the increase rounds, how it hangs from
//! the side and from above, the counts round by round, and the yarn of the bind-off.

mod states;

pub use states::STATES;

use crate::desk::Desk;
use crate::drawing::flare as drawing;
use crate::part::plain::{el, list, says, tells};
use crate::part::{
    Choice, GaugeRow, Label, Page, Reading, Row, Say, Sheet, TAPE, answered, asked, counted, gauges, known, more, rows,
    select, working,
};
use crate::words::tail::Print;
use crate::words::{flare as words, page::PRACTICE};
use loopwright::flare::{Answer, DEPTH, GIRTH, Hang, Hem, MULTIPLE, Question, STITCHES, Shape, answer};
use loopwright::shaping::{EACH, PLAIN};
use loopwright::units::Length;
use yew::prelude::*;

/// The fields under "more".
const FOLDED: [&str; 4] = ["each", "multiple", "first", "last"];

const NECK: [Row; 1] = [("neck", words::LABEL_NECK, "", None)];
const DEPTHS: [Row; 1] = [("depth", words::LABEL_DEPTH, "", Some(&TAPE))];
const GIRTHS: [Row; 1] = [("girth", words::LABEL_GIRTH, "", Some(&TAPE))];
const COUNTS: [Row; 1] = [("stitches", words::LABEL_STITCHES, "", None)];
const GAUGES: [GaugeRow; 2] = [
    ("gauge", words::LABEL_GAUGE, "gauge_stitches"),
    ("row_gauge", words::LABEL_ROWS, "gauge_rows"),
];
const EACH_ROUND: [Row; 1] = [("each", words::LABEL_EACH, "8", None)];
const REST: [Row; 3] = [
    ("multiple", words::LABEL_MULTIPLE, "1", None),
    ("first", words::LABEL_FIRST, "", None),
    ("last", words::LABEL_LAST, "1", None),
];

/// Draws the tool.
pub fn view(desk: &Desk) -> Html {
    let sheet = Sheet::new(desk, "flare");
    let mut reading = Reading::of(&sheet);
    let question = question(&mut reading, &sheet);
    let answers = reading.done().and_then(|()| answer(&question));
    let answers = answers.map(|answer| shown(desk, &question, &answer));
    let page = Page {
        folded: &FOLDED,
        waiting: words::WAITING,
        problem: &words::problem,
    };
    asked(&sheet, &page, &form, answers)
}

/// A cone, and how far it is from flat.
const SIGN: Shape = Shape {
    neck_girth: Length::from_mm(188),
    hem_girth: Length::from_mm(440),
    neck_radius: Length::from_mm(30),
    radius: Length::from_mm(70),
    flat_radius: Length::from_mm(100),
    slant: Length::from_mm(70),
    drop: Length::from_mm(57),
    fullness: 1_000,
};

/// Its small picture.
pub fn sign() -> Html {
    drawing::flare(&SIGN, Hang::Cone, "")
}

/// From the fields as typed to the question.
fn question(reading: &mut Reading, sheet: &Sheet) -> Question {
    Question {
        neck: reading.count("neck", STITCHES, ""),
        hem: match sheet.text("hem", "").as_str() {
            "girth" => Hem::Girth(reading.length(&TAPE, "girth", GIRTH, "")),
            "stitches" => Hem::Stitches(reading.count("stitches", STITCHES, "")),
            _ => Hem::Flat,
        },
        depth: reading.length(&TAPE, "depth", DEPTH, ""),
        gauge: reading.gauge("gauge"),
        row_gauge: reading.gauge("row_gauge"),
        each: reading.count("each", EACH, "8"),
        lines: sheet.text("lines", "") != "scattered",
        multiple: reading.count("multiple", MULTIPLE, "1"),
        first: reading.count_if_any("first", PLAIN),
        last: reading.count("last", PLAIN, "1"),
    }
}

/// The fields, and the rest under "more".
fn form(sheet: &Sheet, say: Say) -> Html {
    let choice = |name, label, choices| select(sheet, name, Label::Shown(label), Choice::keyed(choices), "");
    let hem: &[Row] = match sheet.text("hem", "").as_str() {
        "girth" => &GIRTHS,
        "stitches" => &COUNTS,
        _ => &[],
    };
    let first = vec![
        rows(sheet, &NECK, say),
        known(sheet, "neck", "cast_on"),
        rows(sheet, &DEPTHS, say),
        choice("hem", words::LABEL_HEM, &words::HEMS),
        rows(sheet, hem, say),
        gauges(sheet, &GAUGES, say),
    ];
    let rest = vec![
        rows(sheet, &EACH_ROUND, say),
        choice("lines", words::LABEL_LINES, &words::LINES),
        rows(sheet, &REST, say),
        says("p", "practice", PRACTICE),
    ];
    list(vec![el("div", "fields", first), more(rest)])
}

/// The increase rounds, how it hangs, the counts, the bind-off and the sum.
fn shown(desk: &Desk, question: &Question, answer: &Answer) -> Html {
    let long = &|length: Length| TAPE.print(desk, length);
    let print = Print {
        yards: TAPE.in_inches(desk),
    };
    let picture = vec![
        drawing::flare(&answer.shape, answer.hang, &words::drawing(answer, long)),
        tells("figcaption", "quiet", words::key(answer, long)),
    ];
    let headline = words::headline(question, answer);
    let counts = counted(&answer.schedule, &headline);
    let line = tells("p", "row", headline);
    list(vec![
        answered(words::ANSWER, line, words::outcome(answer, long)),
        tells("p", "verdict", words::hang(answer, long)),
        tells("p", "", words::growth(question, answer)),
        el("figure", "needle", picture),
        counts,
        tells("p", "", words::bind_off(answer, print)),
        working(words::steps(question, answer, long), words::SOURCE),
    ])
}
