//! The view of the yoke: from how many stitches to how many and in how many rounds; the shaping rounds, each with how
//! many it changes and the count after it.

use super::State;
use crate::desk::Desk;
use crate::drawing::rounds as drawing;
use crate::part::plain::{el, items, list, says, tells};
use crate::part::{Page, Reading, Row, Say, Sheet, answered, asked, known, plain_form, rows, working};
use crate::words::yoke as words;
use loopwright::shaping::{PLAIN, ROWS, Schedule};
use loopwright::yoke::{MULTIPLE, Question, SHAPING_ROUNDS, STITCHES, answer};
use yew::prelude::*;

/// The fields under "more".
const FOLDED: [&str; 4] = ["shaping_rounds", "multiple", "first", "last"];

const FROM: [Row; 1] = [("from", words::LABEL_FROM, "", None)];
const FIRST: [Row; 2] = [
    ("to", words::LABEL_TO, "", None),
    ("rounds", words::LABEL_ROUNDS, "", None),
];
const REST: [Row; 4] = [
    ("shaping_rounds", words::LABEL_SHAPING, "4", None),
    ("multiple", words::LABEL_MULTIPLE, "1", None),
    ("first", words::LABEL_FIRST, "", None),
    ("last", words::LABEL_LAST, "1", None),
];

/// The named states.
pub const STATES: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "from=320&to=96&rounds=60&multiple=8"),
    State::new("neck-down", "from=97&to=300&rounds=50&shaping_rounds=3"),
    State::new("mixed", "from=96&to=280&rounds=60&multiple=8"),
    State::new("impossible", "from=300&to=8&rounds=3"),
    State::new("unreadable", "from=wide&to=9 1/2&rounds=20 cm&last=some"),
    State::new("extreme", "from=1000&to=100000&rounds=10000&shaping_rounds=100"),
];

/// Draws the tool.
pub fn view(desk: &Desk) -> Html {
    let sheet = Sheet::new(desk, "yoke");
    let mut reading = Reading::of(&sheet);
    let question = Question {
        from: reading.count("from", STITCHES, ""),
        to: reading.count("to", STITCHES, ""),
        rounds: reading.count("rounds", ROWS, ""),
        shaping_rounds: reading.count("shaping_rounds", SHAPING_ROUNDS, "4"),
        multiple: reading.count("multiple", MULTIPLE, "1"),
        first: reading.count_if_any("first", PLAIN),
        last: reading.count("last", PLAIN, "1"),
    };
    let answers = reading.done().and_then(|()| answer(&question));
    let answers = answers.map(|answer| shown(&question, &answer.schedule));
    let page = Page {
        folded: &FOLDED,
        waiting: words::WAITING,
        problem: &words::problem,
    };
    asked(&sheet, &page, &form, answers)
}

/// The fields; the count at the beginning may be the one cast on.
fn form(sheet: &Sheet, say: Say) -> Html {
    let first = vec![
        rows(sheet, &FROM, say),
        known(sheet, "from", "cast_on"),
        rows(sheet, &FIRST, say),
    ];
    plain_form(sheet, list(first), &REST, say)
}

/// Its small picture: three steps from a neck.
pub fn sign() -> Html {
    drawing::sign(5, 30, 3)
}

/// The shaping rounds, and the sum.
fn shown(question: &Question, schedule: &Schedule) -> Html {
    let line = tells("p", "row", words::headline(schedule));
    let picture = vec![
        drawing::rounds(schedule, &words::drawing(schedule)),
        says("figcaption", "quiet", words::KEY),
    ];
    list(vec![
        answered(words::ANSWER, line, words::outcome(question)),
        items("ul", words::listed(schedule)),
        says("p", "", words::EVENLY),
        el("figure", "needle", picture),
        working(words::steps(question, schedule), words::SOURCE),
    ])
}
