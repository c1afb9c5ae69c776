//! The view of the tail: how many stitches, how and in what yarn; the tail as a line beside an arm's length, the ways
//! it was reckoned side by side, and in the middle of casting on whether what is left will do.

mod ask;
mod states;

pub use states::STATES;

use crate::desk::Desk;
use crate::drawing::tail as drawing;
use crate::part::plain::{el, list, says, tells};
use crate::part::{Page, Reading, Sheet, TAPE, YARN, answered, asked, good_to_know, working};
use crate::words::page::PRACTICE;
use crate::words::tail::{self as words, Print};
use loopwright::tail::{ARM, Answer, Question, Strand, Way, Why, answer};
use loopwright::units::{Length, LengthUnit};
use yew::prelude::*;

/// Draws the tool.
pub fn view(desk: &Desk) -> Html {
    let sheet = Sheet::new(desk, "tail");
    let mut reading = Reading::of(&sheet);
    let question = ask::question(&mut reading, &sheet);
    let answers = reading.done().and_then(|()| answer(&question));
    let answers = answers.map(|answer| shown(desk, &question, &answer));
    let page = Page {
        folded: &ask::FOLDED,
        waiting: words::WAITING,
        problem: &words::problem,
    };
    asked(&sheet, &page, &ask::form, answers)
}

/// Its small picture: a tail in its three parts.
pub fn sign() -> Html {
    let parts = [240, 290, 350].map(|cm| Length::of(cm, LengthUnit::Cm));
    drawing::line(parts, ARM, "")
}

/// The tail, its drawing, the estimates and the sum.
fn shown(desk: &Desk, question: &Question, answer: &Answer) -> Html {
    // Where no yarn is measured off there is the end only, which was typed as a tape shows it.
    let is_yarn = matches!(answer.strand, Strand::Thumb { .. }) || answer.left.is_some();
    let yards = if is_yarn { &YARN } else { &TAPE }.in_inches(desk);
    let print = Print { yards };
    let line = tells("p", "row", words::headline(answer, print));
    let parts = [answer.needs, answer.with_reserve, answer.tail];
    let picture = vec![
        drawing::line(parts, ARM, &words::drawing(answer, print)),
        tells("figcaption", "quiet", words::key(print)),
    ];
    let mut said = vec![answered(
        words::by_strand(answer.strand)[0],
        line,
        words::outcome(answer),
    )];
    if let Some(left) = &answer.left {
        said.push(tells("p", "verdict", words::verdict(left, print)));
    }
    said.push(tells("p", "", words::because(answer, print)));
    said.push(el("figure", "needle", picture));
    said.push(estimates(question, answer, print));
    said.push(good_to_know(words::notes(answer)));
    said.push(working(words::sum(answer, question.end, print), words::SOURCE));
    list(said)
}

/// The ways it was reckoned, side by side.
fn estimates(question: &Question, answer: &Answer, print: Print) -> Html {
    let mut ways = Vec::new();
    for (place, estimate) in answer.estimates.iter().enumerate() {
        let (by, sum) = words::estimate(estimate, question.stitches, print);
        let mut said = vec![says("p", "", by), tells("p", "", sum)];
        if !matches!(estimate.way, Way::Measured(_)) {
            said.push(says("p", "practice", PRACTICE));
        }
        let wins = answer.wins == Some(place);
        if wins {
            said.push(says("strong", "", words::WINS));
        }
        ways.push(el("div", if wins { "wins" } else { "" }, said));
    }
    if ways.is_empty() {
        return Html::default();
    }
    let mut content = vec![says("h3", "", words::ESTIMATES), el("div", "ways", ways)];
    if answer.why != Why::Measured {
        content.push(says("p", "quiet", words::SURER));
    }
    el("section", "", content)
}
