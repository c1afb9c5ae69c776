//! The first page, made from the list of tools: grouped by when the question comes up, each with its small picture.

use crate::desk::Desk;
use crate::part::plain::{el, element, link, path, says};
use crate::route::{self, Route};
use crate::tool::{Entry, TOOLS};
use crate::words::home as words;
use loopwright::tools::Group;
use yew::prelude::*;

/// The first page.
pub fn home(desk: &Desk) -> Html {
    let header = vec![says("h1", "", words::WELCOME), says("p", "", words::INTRO)];
    let mut page = vec![el("header", "", header), strip()];
    for group in Group::ALL {
        if tools_of(group).next().is_some() {
            page.push(menu(desk, group));
        }
    }
    let fact = |(name, words)| el("li", "", vec![says("h3", "", name), says("p", "", words)]);
    page.push(el("ul", "facts", words::FACTS.into_iter().map(fact).collect()));
    el("div", "home", page)
}

fn tools_of(group: Group) -> impl Iterator<Item = &'static Entry> {
    TOOLS.iter().filter(move |tool| tool.group == group)
}

/// The tools of one group.
fn menu(desk: &Desk, group: Group) -> Html {
    let entry = |tool: &Entry| {
        let href = route::print(&Route::Tool {
            id: tool.id.into(),
            fields: Vec::new(),
        });
        let mut content = vec![
            (tool.sign)(),
            says("span", "name", tool.title.name),
            says("span", "asks", tool.title.asks),
        ];
        if !desk.fields(tool.id).is_empty() {
            content.push(says("span", "begun", words::GO_ON));
        }
        el("li", "", vec![link(href, content)])
    };
    let entries = tools_of(group).map(entry).collect();
    el(
        "section",
        "menu",
        vec![says("h2", "", words::group(group)), el("ul", "", entries)],
    )
}

/// The ornament: columns of stitches, some of which meet in pairs.
fn strip() -> Html {
    const COLUMNS: u32 = 30;
    let (mut plain, mut pairs) = (String::new(), String::new());
    for column in 0..COLUMNS {
        let x = 12 + 24 * column;
        let top = ["M", &x.to_string(), " 8V"].concat();
        let bend = |to: u32| [&top, "44Q", &x.to_string(), " 60 ", &to.to_string(), " 72"].concat();
        match column % 6 {
            1 => pairs += &(bend(x + 12) + "V112"),
            2 => pairs += &bend(x - 12),
            _ => plain += &(top + "112"),
        }
    }
    let attributes = [
        ("class", "strip"),
        ("viewBox", "0 0 720 120"),
        ("preserveAspectRatio", "xMidYMid slice"),
        ("role", "img"),
        ("aria-label", words::STRIP),
    ];
    element(
        "svg",
        &attributes,
        vec![path("ticks", &plain), path("marks fewer open", &pairs)],
    )
}
