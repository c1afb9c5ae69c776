//! Every tool and every part in its named states: what the browser tests walk through, and where a maker looks.

use crate::desk::use_desk;
use crate::part::plain::{el, element, says, text};
use crate::part::{Advice, Label, Sheet, TAPE, field};
use crate::route::{self, Route};
use crate::store::{Entry, Typed};
use crate::tool::{self, TOOLS};
use crate::words::{gallery as words, page};
use yew::prelude::*;

/// The list of states.
pub fn gallery() -> Html {
    let mut entries = Vec::new();
    for tool in TOOLS {
        for state in tool.states {
            entries.push(entry(tool.id, state.name));
        }
    }
    for part in PARTS {
        entries.push(entry(PART, part.name));
    }
    let page = vec![
        says("h1", "", words::TITLE),
        says("p", "", words::INTRO),
        el("ul", "", entries),
    ];
    el("article", "gallery", page)
}

fn entry(tool: &'static str, state: &'static str) -> Html {
    let route = Route::GalleryState {
        tool: tool.into(),
        state: state.into(),
    };
    let attributes = [("data-state", &*name(tool, state)), ("href", &route::print(&route))];
    el(
        "li",
        "",
        vec![element(
            "a",
            &attributes,
            vec![text(format!("{tool}: {state}").into())],
        )],
    )
}

/// The name of a state among all.
fn name(tool: &str, state: &str) -> String {
    format!("{tool}/{state}")
}

/// One state, on a desk of its own.
pub fn gallery_state(tool: &str, state: &str) -> Html {
    if entries(tool, state).is_none() {
        return says("p", "", page::LOST);
    }
    html! { <Stage key={name(tool, state)} tool={tool.to_owned()} state={state.to_owned()} /> }
}

/// What lies on the desk in a state, if there is such a state.
fn entries(tool: &str, state: &str) -> Option<Vec<Entry>> {
    match tool {
        PART => PARTS
            .iter()
            .find(|part| part.name == state)
            .map(|part| (part.entries)()),
        tool => tool_state(tool, state),
    }
}

fn tool_state(tool: &str, state: &str) -> Option<Vec<Entry>> {
    let tool = tool::find(tool)?;
    let state = tool.states.iter().find(|known| known.name == state)?;
    let mut entries = Vec::new();
    for (field, typed) in route::to_fields(&route::parse_query(state.link)) {
        entries.push(Entry::new(tool.id, field, Some(typed)));
    }
    Some(entries)
}

#[derive(Properties, PartialEq)]
struct StageProps {
    tool: AttrValue,
    state: AttrValue,
}

/// Draws one state on a desk of its own.
#[component]
fn Stage(props: &StageProps) -> Html {
    let example = Some(entries(&props.tool, &props.state).unwrap_or_default());
    let Some(desk) = use_desk(&example) else {
        return Html::default();
    };
    if let Some(tool) = tool::find(&props.tool) {
        return (tool.view)(&desk);
    }
    let Some(part) = PARTS.iter().find(|part| props.state == part.name) else {
        return Html::default();
    };
    let form = el("form", "question", vec![(part.view)(&Sheet::new(&desk, PART))]);
    el("article", "tool", vec![says("h1", "", words::PART), form])
}

/// A part alone, in one state.
struct Part {
    name: &'static str,
    entries: fn() -> Vec<Entry>,
    view: fn(&Sheet) -> Html,
}

const PART: &str = "part";

/// The parts that no tool shows in all their states yet.
const PARTS: &[Part] = &[
    Part {
        name: "length-empty",
        entries: Vec::new,
        view: |sheet| length_field(sheet, None),
    },
    Part {
        name: "length-cm",
        entries: || typed("19", "cm"),
        view: |sheet| length_field(sheet, None),
    },
    Part {
        name: "length-inch",
        entries: || shown_in("in"),
        view: |sheet| length_field(sheet, None),
    },
    Part {
        name: "length-switched",
        entries: || shown_in("cm"),
        view: |sheet| length_field(sheet, None),
    },
    Part {
        name: "length-wrong",
        entries: || typed("7 apples", "cm"),
        view: |sheet| length_field(sheet, wrong()),
    },
    Part {
        name: "field-wrong",
        entries: || typed("7 1/2", "cm"),
        view: count_field,
    },
];

fn typed(text: &str, unit: &str) -> Vec<Entry> {
    vec![Entry::new(PART, "length", Some(Typed::with_unit(text, unit)))]
}

/// Seven and a half inches, shown in one unit or the other.
fn shown_in(unit: &str) -> Vec<Entry> {
    let mut entries = typed("7 1/2", "in");
    entries.push(Entry::new("settings", "length", Some(Typed::plain(unit))));
    entries
}

fn length_field(sheet: &Sheet, advice: Option<Advice>) -> Html {
    TAPE.field(sheet, "length", words::LENGTH, "", advice)
}

fn count_field(sheet: &Sheet) -> Html {
    el(
        "div",
        "fields",
        vec![field(sheet, "length", Label::Shown(words::COUNT), "", wrong())],
    )
}

fn wrong() -> Option<Advice> {
    Some(Advice {
        sentence: words::ADVICE.into(),
        nearest: vec![7, 8],
    })
}
