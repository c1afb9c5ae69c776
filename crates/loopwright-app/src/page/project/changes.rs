//! What moved since she last looked: each step with what it came to and what it comes to, until she says that she has seen
//! it; and the way back.

use super::Page;
use super::steps::answer_of;
use crate::part::plain::{button, element, list, text, text_element};
use crate::project::steps;
use crate::words::project as words;
use loopwright_project::change::Change;
use yew::prelude::*;

/// All that moved; nothing where nothing did.
pub fn changes(page: &Page) -> Html {
    if page.changes.is_empty() {
        return Html::default();
    }
    let moved = page.changes.iter().map(|change| moved(page, change)).collect();
    let tap = |label: &str, does: fn(&crate::desk::Desk)| {
        let desk = page.desk.clone();
        button(label.into(), Callback::from(move |_| does(&desk)))
    };
    let taps = vec![
        tap(words::SEEN, steps::seen),
        tap(words::BACK_TO_WAS, steps::back_to_what_was),
    ];
    let content = vec![
        text_element("h2", "", words::CHANGED),
        element("ul", "", moved),
        element("div", "doings", taps),
    ];
    element("section", "changes", content)
}

fn moved(page: &Page, change: &Change) -> Html {
    let Some(step) = page.project.step(change.step) else {
        return Html::default();
    };
    let said = |label: &'static str, answered| {
        let answer = answer_of(step, answered).unwrap_or_else(|_| words::NOTHING.into());
        list(vec![
            text_element("dt", "", label),
            element("dd", "", vec![text(answer.into())]),
        ])
    };
    let both = vec![said(words::WAS, &change.was), said(words::IS, &change.is)];
    let content = vec![text_element("h3", "", step.name.clone()), element("dl", "", both)];
    element("li", "", content)
}
