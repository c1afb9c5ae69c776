//! The view of shaping over rows: how many stitches in how many rows; the instruction, what to work at the two edges,
//! the edges drawn row by row, and the rows one by one.

mod ask;
mod states;

pub use states::STATES;

use crate::desk::Desk;
use crate::drawing::shaping as drawing;
use crate::part::plain::{el, items, list, says, tells};
use crate::part::{Page, Reading, Sheet, answered, asked, good_to_know, row_by_row, working};
use crate::words::{schedule, shaping as words};
use loopwright::shaping::{Answer, Knitting, Question, answer};
use yew::prelude::*;

/// Shaping rows listed one by one.
const MOST_LISTED: usize = 400;

/// Draws the tool.
pub fn view(desk: &Desk) -> Html {
    let sheet = Sheet::new(desk, "shaping");
    let mut reading = Reading::of(&sheet);
    let question = ask::question(&mut reading, &sheet);
    let answers = reading.done().and_then(|()| answer(&question));
    // Too steep can be mended in the sentence, or by a figure that is folded away.
    let steep = answers.as_ref().is_err_and(|problems| problems.len() > 1);
    let page = Page {
        folded: if steep { &[] } else { &ask::FOLDED },
        waiting: words::WAITING,
        problem: &|wrong| words::problem(&question, wrong),
    };
    asked(
        &sheet,
        &page,
        &ask::form,
        answers.map(|answer| shown(&question, &answer)),
    )
}

/// Its small picture.
pub fn sign() -> Html {
    drawing::sign()
}

/// The instruction, the pair, the drawing and the rows.
fn shown(question: &Question, answer: &Answer) -> Html {
    let line = tells("p", "row", schedule::written(&answer.schedule));
    let rows = schedule::listed(&answer.schedule, MOST_LISTED);
    let round = usize::from(question.knitting == Knitting::Round);
    let both = question.each.is_multiple_of(2);
    let figure = vec![
        drawing::edges(answer, question.rows, both, &words::drawing(question, answer)),
        says("figcaption", "quiet", words::KEY),
    ];
    list(vec![
        answered(words::OVER[round], line, words::outcome(question, answer)),
        items("ul", words::pair(question, answer)),
        tells("p", "", words::limits(question, answer)),
        el("figure", "needle", figure),
        row_by_row(rows, schedule::is_short(&answer.schedule)),
        good_to_know(words::notes(question, answer)),
        working(words::steps(question, answer), words::SOURCE),
    ])
}
