//! The view of the raglan: body and sleeve at the neck and below the underarm, and the rounds between; which rounds add
//! to both and which to one of them, and what is cast on at the underarm.

use super::State;
use crate::desk::Desk;
use crate::drawing::rounds as drawing;
use crate::part::plain::{el, list, says, tells};
use crate::part::{Page, Reading, Row, Sheet, answered, asked, counted, plain_form, rows, working};
use crate::words::{problem, raglan as words};
use loopwright::raglan::{Answer, Question, STITCHES, UNDERARM, answer};
use loopwright::shaping::{PLAIN, ROWS};
use yew::prelude::*;

/// The fields under "more".
const FOLDED: [&str; 3] = ["underarm", "first", "last"];

const FIRST: [Row; 5] = [
    ("body", words::LABEL_BODY, "", None),
    ("sleeve", words::LABEL_SLEEVE, "", None),
    ("body_to", words::LABEL_BODY_TO, "", None),
    ("sleeve_to", words::LABEL_SLEEVE_TO, "", None),
    ("rounds", words::LABEL_ROUNDS, "", None),
];
const REST: [Row; 3] = [
    ("underarm", words::LABEL_UNDERARM, "0", None),
    ("first", words::LABEL_FIRST, "0", None),
    ("last", words::LABEL_LAST, "1", None),
];

/// The named states.
pub const STATES: &[State] = &[
    State::new("empty", ""),
    State::new(
        "filled",
        "body=56&sleeve=16&body_to=200&sleeve_to=68&rounds=64&underarm=8",
    ),
    State::new(
        "sleeves-only",
        "body=80&sleeve=12&body_to=160&sleeve_to=70&rounds=50&underarm=6",
    ),
    State::new(
        "plain",
        "body=80&sleeve=16&body_to=96&sleeve_to=24&rounds=60&underarm=8",
    ),
    State::new("impossible", "body=56&sleeve=16&body_to=200&sleeve_to=68&rounds=30"),
    State::new("unreadable", "body=front&sleeve=1/2&rounds=20 cm&underarm=-8"),
    State::new(
        "extreme",
        "body=1000&sleeve=1000&body_to=30000&sleeve_to=9000&rounds=10000",
    ),
];

/// Draws the tool.
pub fn view(desk: &Desk) -> Html {
    let sheet = Sheet::new(desk, "raglan");
    let mut reading = Reading::of(&sheet);
    let question = Question {
        body: reading.count("body", STITCHES, ""),
        sleeve: reading.count("sleeve", STITCHES, ""),
        body_to: reading.count("body_to", STITCHES, ""),
        sleeve_to: reading.count("sleeve_to", STITCHES, ""),
        underarm: reading.count("underarm", UNDERARM, "0"),
        rounds: reading.count("rounds", ROWS, ""),
        first: reading.count("first", PLAIN, "0"),
        last: reading.count("last", PLAIN, "1"),
    };
    let answers = reading.done().and_then(|()| answer(&question));
    let answers = answers.map(|answer| shown(&question, &answer));
    let page = Page {
        folded: &FOLDED,
        waiting: words::WAITING,
        problem: &|wrong| problem::sentence(&wrong.kind),
    };
    asked(
        &sheet,
        &page,
        &|sheet, say| plain_form(sheet, rows(sheet, &FIRST, say), &REST, say),
        answers,
    )
}

/// Its small picture: many small steps from a neck.
pub fn sign() -> Html {
    drawing::sign(1, 8, 12)
}

/// The raglan rounds, the underarm and the sum.
fn shown(question: &Question, answer: &Answer) -> Html {
    let headline = words::headline(answer);
    let counts = counted(&answer.schedule, &headline);
    let line = tells("p", "row", headline);
    let picture = vec![
        drawing::rounds(&answer.schedule, &words::drawing(answer)),
        says("figcaption", "quiet", words::KEY),
    ];
    list(vec![
        answered(words::ANSWER, line, words::outcome(answer)),
        tells("p", "", words::lines(question, answer)),
        tells("p", "verdict", words::underarm(question, answer)),
        el("figure", "needle", picture),
        counts,
        working(words::steps(question, answer), words::SOURCE),
    ])
}
