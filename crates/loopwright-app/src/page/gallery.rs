//! Every tool, every part and the page of a project in its named states: what the browser tests walk through, and where a maker looks.

use super::project::{project, states};
use crate::desk::{Desk, use_desk};
use crate::fields;
use crate::form::{Field, Fields, SETTINGS, Settings, TAPE};
use crate::part::plain::{element, element_with, text, text_element};
use crate::part::{Form, Sheet, View};
use crate::route::{self, Route};
use crate::store::{Entry, Typed};
use crate::tool::{self, TOOLS};
use crate::words::{gallery as words, page};
use loopwright::cast_on::{STITCHES, WIDTH};
use loopwright::problem::{Kind, Problem};
use yew::prelude::*;

/// The list of states.
pub fn gallery() -> Html {
    let mut entries = Vec::new();
    for tool in TOOLS {
        for state in tool.states {
            entries.push(entry(tool.id, state.name, state.link));
        }
    }
    for part in PARTS {
        entries.push(entry(PART, part.name, ""));
    }
    for state in states::names() {
        entries.push(entry(states::PAGE, state, ""));
    }
    let page = vec![
        text_element("h1", "", words::TITLE),
        text_element("p", "", words::INTRO),
        element("ul", "", entries),
    ];
    element("article", "gallery", page)
}

/// A state by its name, with the fields that bring it about for those who drive the page.
fn entry(tool: &'static str, state: &'static str, link: &'static str) -> Html {
    let route = Route::GalleryState {
        tool: tool.into(),
        state: state.into(),
    };
    let attributes = [
        ("data-state", &*name(tool, state)),
        ("data-link", link),
        ("href", &route::print(&route)),
    ];
    element(
        "li",
        "",
        vec![element_with(
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
        return text_element("p", "", page::LOST);
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
        states::PAGE => states::entries(state),
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
        return tool.page(&desk);
    }
    if props.tool == states::PAGE {
        return project(&desk);
    }
    PARTS
        .iter()
        .find(|part| props.state == part.name)
        .map_or_else(Html::default, |part| stage_part(&desk, part))
}

/// A part alone, in one state.
struct Part {
    name: &'static str,
    entries: fn() -> Vec<Entry>,
    /// The one field that it shows.
    field: Name,
    /// What is wrong with it, if anything.
    problem: Option<Kind>,
}

const PART: &str = "part";

/// The fields that are shown alone.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Name {
    Length,
    Count,
}

loopwright::field_names!(Name { Length = "length", Count = "count" });

const fn label(name: Name) -> &'static str {
    match name {
        Name::Length => words::LENGTH,
        Name::Count => words::COUNT,
    }
}

fields! { FIELDS of Name, label;
    Length => Field::length(&TAPE, WIDTH),
    Count => Field::count(STITCHES),
}

const WRONG: Option<Kind> = Some(Kind::NoExact {
    below: Some(7),
    above: Some(8),
});

/// The parts that no tool shows in all their states yet.
const PARTS: &[Part] = &[
    Part::new("length-empty", Vec::new, Name::Length, None),
    Part::new("length-cm", || typed(Name::Length, "19", "cm"), Name::Length, None),
    Part::new("length-inch", || shown_in("in"), Name::Length, None),
    Part::new("length-switched", || shown_in("cm"), Name::Length, None),
    Part::new(
        "length-wrong",
        || typed(Name::Length, words::NO_LENGTH, "cm"),
        Name::Length,
        WRONG,
    ),
    Part::new("field-wrong", || typed(Name::Count, "7 1/2", "cm"), Name::Count, WRONG),
];

impl Part {
    const fn new(name: &'static str, entries: fn() -> Vec<Entry>, field: Name, problem: Option<Kind>) -> Self {
        Self {
            name,
            entries,
            field,
            problem,
        }
    }
}

/// Draws a part on a desk.
fn stage_part(desk: &Desk, part: &Part) -> Html {
    let settings = Settings::new(desk.fields(SETTINGS));
    let view = View {
        fields: Fields::new(FIELDS, desk.fields(PART), settings),
        sheet: Sheet::new(desk, PART, None),
    };
    let problems: Vec<Problem> = part
        .problem
        .map(|kind| Problem::new(part.field, kind))
        .into_iter()
        .collect();
    let form = Form {
        view: &view,
        problems: &problems,
        sentence: &|_| words::ADVICE.into(),
    };
    html! {
        <article class="tool">
            <h1>{ words::PART }</h1>
            <form class="question"><div class="fields">{ form.labelled(part.field) }</div></form>
        </article>
    }
}

fn typed(name: Name, text: &str, unit: &str) -> Vec<Entry> {
    vec![Entry::new(PART, name.key(), Some(Typed::with_unit(text, unit)))]
}

/// Seven and a half inches, shown in one unit or the other.
fn shown_in(unit: &str) -> Vec<Entry> {
    let mut entries = typed(Name::Length, "7 1/2", "in");
    entries.push(Entry::new(SETTINGS, TAPE.setting, Some(Typed::plain(unit))));
    entries
}
