//! Lines to be copied, and what came of a tap on "copy". A clipboard may refuse, and in some frames and browsers it never
//! answers: then the lines are selected, so that they can be copied by hand.

use crate::part::plain::{button, status, text, text_element};
use crate::part::{Copied, copied};
use crate::words::panel as words;
use gloo_timers::callback::Timeout;
use wasm_bindgen_futures::spawn_local;
use web_sys::{Element, HtmlTextAreaElement, ScrollIntoViewOptions, ScrollLogicalPosition};
use yew::prelude::*;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The id of the lines.
    pub id: &'static str,
    /// What they are.
    pub title: &'static str,
    /// What they are for.
    pub about: &'static str,
    /// The lines.
    pub lines: AttrValue,
}

/// Lines with a button that copies them.
#[component]
pub fn Lines(props: &Props) -> Html {
    let area = use_node_ref();
    // With the lines that it is about: of others nothing has come yet.
    let outcome = use_state_eq(|| None::<(Copied, AttrValue)>);
    let onclick = {
        let (area, set, lines) = (area.clone(), outcome.setter(), props.lines.clone());
        Callback::from(move |_| copy(&area, &lines, &set))
    };
    let said = outcome.as_ref().filter(|(_, lines)| *lines == props.lines);
    let said = said.map_or("", |(outcome, _)| sentence(*outcome));
    html! {
        <section>
            <h2>{ props.title }</h2>
            { text_element("p", "quiet", props.about) }
            <textarea ref={area} onfocus={bring_into_sight} id={props.id} class="code" readonly=true rows="4" spellcheck="false"
                aria-label={props.title} value={props.lines.clone()} />
            <div class="line">{ button(words::COPY.into(), onclick) }{ status(text(said.into())) }</div>
        </section>
    }
}

const fn sentence(outcome: Copied) -> &'static str {
    match outcome {
        Copied::Taken => words::COPIED,
        Copied::Refused => words::NOT_COPIED,
        Copied::NoAnswer => words::NO_ANSWER,
    }
}

fn copy(area: &NodeRef, lines: &AttrValue, set: &UseStateSetter<Option<(Copied, AttrValue)>>) {
    let (area, lines, set) = (area.clone(), lines.clone(), set.clone());
    spawn_local(async move {
        let outcome = copied(&lines).await;
        if outcome != Copied::Taken {
            select(&area);
        }
        set.set(Some((outcome, lines)));
    });
}

/// All of a field is seen once it has the focus: WebKit scrolls to the caret, and leaves the rest outside the window.
pub fn bring_into_sight(event: FocusEvent) {
    let field: Element = event.target_unchecked_into();
    let nearest = ScrollIntoViewOptions::new();
    nearest.set_block(ScrollLogicalPosition::Nearest);
    // The browser scrolls once the event is over.
    Timeout::new(0, move || {
        field.scroll_into_view_with_scroll_into_view_options(&nearest)
    })
    .forget();
}

fn select(area: &NodeRef) {
    if let Some(area) = area.cast::<HtmlTextAreaElement>() {
        let _ = area.focus();
        area.select();
    }
}
