//! The page of a tool: the question on one side; on the other the answer, one line, large; then what is good to know,
//! what the abbreviations mean, and the sum. Inside another page the sum is folded.

use super::View;
use super::actions::actions;
use super::plain::{element, element_with, folded, items, list, text, text_element};
use crate::words::{self, Title, frame, page, stitch};
use loopwright::row::{Row, Stitch};
use loopwright::terms::Hand;
use yew::prelude::*;

/// Runs of a row that are looked at for abbreviations: a long row repeats itself.
const LOOKED_AT: usize = 500;

/// The page of a tool. The answers stand below the question or beside it, so that it does not move as they grow.
pub fn tool_page(view: &View, title: Title, question: Html, answers: Html) -> Html {
    let stay = |event: SubmitEvent| event.prevent_default();
    // A question that stays in sight stays within the two sides, and never lies over what comes below.
    html! {
        <article class="tool">
            <header><h1>{ title.name }</h1><p>{ title.asks }</p></header>
            <div class="sides">
                <form class="question" onsubmit={stay}>{ question }{ locked_note(&view.sheet) }</form>
                { answers }
            </div>
            { actions(view) }
        </article>
    }
}

/// What the locks mean, where there are any.
fn locked_note(sheet: &super::Sheet) -> Html {
    if sheet.locks_any(|_| true) {
        text_element("p", "quiet", frame::LOCKED_NOTE)
    } else {
        Html::default()
    }
}

/// The headline of an answer: what is done with it, the line, and the count it comes to. Read out politely as it
/// changes. Before it stands the line once more, for the eye only: on a phone the styles stick it to the foot of the window
/// until the answer itself is in sight, and everywhere else they hide it.
pub fn answered(title: &'static str, line: Html, (before, after): (String, String)) -> Html {
    let foot = vec![line.clone(), text_element("strong", "", after.clone())];
    // What it comes to has a line of its own: at the end of the words before it, it would jump as these get longer.
    let outcome = vec![text((before + " ").into()), text_element("strong", "", after)];
    let attributes = [("class", "answer"), ("aria-live", "polite")];
    let answer = vec![text_element("h2", "", title), line, element("p", "outcome", outcome)];
    list(vec![
        element_with("div", &[("class", "foot"), ("aria-hidden", "true")], foot),
        element_with("div", &attributes, answer),
    ])
}

/// A row to knit, broken between its terms; a bracket stays together where the line has room for it. The terms of another
/// row are other terms: none of them goes from its place in one row to its place in the next.
pub fn row(row: &Row) -> Html {
    let mut terms = words::row::terms(row);
    let last = terms.len().saturating_sub(1);
    terms.iter_mut().take(last).for_each(|term| term.push(','));
    let whole = terms.concat();
    let term = |(place, term): (usize, String)| {
        html! { <key={format!("{place} of {whole}")}><span>{ term }</span>{ " " }</> }
    };
    html! { <p class="row">{ for terms.into_iter().enumerate().map(term) }</p> }
}

/// What to knit, as it is said: a line for each track.
pub fn spoken(lines: Vec<String>) -> Html {
    list(
        lines
            .into_iter()
            .map(|line| text_element("p", "row spoken", line))
            .collect(),
    )
}

/// What is good to know.
pub fn good_to_know(notes: Vec<String>) -> Html {
    if notes.is_empty() {
        return Html::default();
    }
    let said = vec![text_element("h3", "", page::NOTES), items("ul", notes)];
    element("section", "notes", said)
}

/// What is good to know, and what the abbreviations of a row mean.
pub fn notes(notes: Vec<String>, row: &Row) -> Html {
    let mut seen: Vec<Stitch> = Vec::new();
    let mut meanings = Vec::new();
    for run in row.runs().take(LOOKED_AT) {
        if !seen.contains(&run.stitch) {
            seen.push(run.stitch);
            meanings.push(text_element("dt", "", stitch::abbreviation(run.stitch).trim()));
            meanings.push(text_element("dd", "", stitch::meaning(run.stitch, Hand::Right)));
        }
    }
    list(vec![
        good_to_know(notes),
        folded("meanings", page::MEANINGS, vec![element("dl", "", meanings)]),
    ])
}

/// The sum with her numbers in it, and where its rule comes from.
pub fn working(steps: Vec<String>, source: &'static str) -> Html {
    html! { <Working {steps} {source} /> }
}

/// What everything inside of a frame is told: that it stands in another page, where room is dear.
#[derive(Clone, PartialEq)]
pub struct InFrame;

#[derive(Properties, PartialEq)]
struct WorkingProps {
    steps: Vec<String>,
    source: &'static str,
}

/// The sum. It is a component, so that it can be told where it stands.
#[component]
fn Working(props: &WorkingProps) -> Html {
    let sum = vec![
        items("ol", props.steps.clone()),
        text_element("p", "source", props.source),
    ];
    match use_context::<InFrame>() {
        Some(InFrame) => folded("working", page::WORKING, sum),
        None => element(
            "section",
            "working",
            vec![text_element("h3", "", page::WORKING), list(sum)],
        ),
    }
}
