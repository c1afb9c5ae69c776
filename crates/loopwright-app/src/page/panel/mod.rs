//! "Put this in my page": at the foot of every tool, folded. From what stands in the fields it makes the lines that put the
//! tool into a lesson or a blog, and shows how it will look there.
//!
//! It is drawn only while it is open: the preview is the page itself in a frame, and nobody waits for one unasked.

mod address;
mod choices;
pub mod chosen;
mod heights;
mod lines;
mod preview;
mod snippet;

use super::links;
use crate::desk::Desk;
use crate::form::{SETTINGS, Settings};
use crate::part::plain::{element, list, text_element};
use crate::route::{self, Route};
use crate::tool::{self, Entry};
use crate::words::panel as words;
use address::{Address, Caution, NoAddress};
use choices::Panes;
use chosen::{Chosen, SHEET, Setting};
use lines::Lines;
use preview::Preview;
use snippet::Placed;
use web_sys::Element;
use yew::prelude::*;

/// The panel of a tool, if there is such a tool.
pub fn panel(desk: &Desk, id: &str) -> Html {
    let tool = tool::find(id).filter(|tool| !tool.is_hers_alone);
    tool.map_or_else(Html::default, |tool| {
        // It stands in one list with the tool, which has its id for a key.
        let key = [SHEET, "-", tool.id].concat();
        html! { <Panel {key} id={tool.id} desk={desk.clone()} /> }
    })
}

#[derive(Properties, PartialEq)]
struct Props {
    id: &'static str,
    desk: Desk,
}

#[component]
fn Panel(props: &Props) -> Html {
    let open = use_state_eq(|| false);
    let set = open.setter();
    let ontoggle = move |event: Event| {
        let fold: Element = event.target_unchecked_into();
        // A fold inside this one says so too.
        if fold.class_name() == "panel" {
            set.set(fold.has_attribute("open"));
        }
    };
    let content = tool::find(props.id).filter(|_| *open);
    let content = content.map_or_else(Html::default, |tool| inside(&props.desk, tool));
    html! { <details class="panel" {ontoggle}><summary>{ words::TITLE }</summary>{ content }</details> }
}

/// What is in it: the choices, the lines to copy, and the preview.
fn inside(desk: &Desk, tool: &'static Entry) -> Html {
    let settings = Settings::new(desk.fields(SETTINGS));
    let chosen = chosen::chosen(tool, &tool.filled(desk), &desk.fields(SHEET), &settings);
    let here = route::link(&Route::Home);
    let typed = desk.text(SHEET, Setting::Address.key());
    let address = Address::of(&typed.map_or_else(String::new, |typed| typed.text), &here);
    let panes = Panes {
        desk,
        id: tool.id,
        chosen: &chosen,
    };
    let asked = vec![panes.fields(), panes.look(), panes.address(&here, advice(&address))];
    let copied = element("div", "lines", vec![lines(&chosen.placed, &address)]);
    list(vec![
        text_element("p", "quiet", words::INTRO),
        element("p", "quiet", vec![links::way()]),
        element("div", "halves", vec![element("div", "asked", asked), copied]),
        preview(&chosen, &here),
    ])
}

/// What is to be said about the address.
fn advice(address: &Result<Address, NoAddress>) -> Option<&'static str> {
    match address {
        Err(NoAddress::Disk) => Some(words::ADDRESS_DISK),
        Err(NoAddress::NoAddress) => Some(words::ADDRESS_NONE),
        Ok(address) => address.caution().map(|caution| match caution {
            Caution::Near => words::ADDRESS_NEAR,
            Caution::Open => words::ADDRESS_OPEN,
        }),
    }
}

/// The lines, in both ways; none without an address.
fn lines(placed: &Placed, address: &Result<Address, NoAddress>) -> Html {
    let Ok(address) = address else {
        return text_element("p", "quiet", words::NO_LINES);
    };
    html! {
        <>
            <Lines id="panel-frame" title={words::FRAME} about={words::FRAME_TEXT} lines={placed.frame(address)} />
            <Lines id="panel-element" title={words::ELEMENT} about={words::ELEMENT_TEXT} lines={placed.element(address)} />
        </>
    }
}

/// How it will look, where the page can be shown in a frame.
fn preview(chosen: &Chosen, here: &str) -> Html {
    let heading = text_element("h2", "", words::PREVIEW);
    if here.starts_with("file:") {
        return list(vec![heading, text_element("p", "quiet", words::PREVIEW_NONE)]);
    }
    let Placed { title, width, .. } = chosen.placed;
    let (hash, height) = (chosen::preview(&chosen.placed), chosen.placed.height());
    list(vec![heading, html! { <Preview {hash} {title} {width} {height} /> }])
}
