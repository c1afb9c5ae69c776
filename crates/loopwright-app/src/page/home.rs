//! The first page, made from the list of tools: grouped by when the question comes up, each with its small picture.

use crate::desk::Desk;
use crate::part::plain::{element, element_with, link, path, text_element};
use crate::route::{self, Route};
use crate::tool::{Entry, TOOLS};
use crate::words::home as words;
use loopwright::tools::Group;
use yew::prelude::*;

/// The first page.
pub fn home(desk: &Desk) -> Html {
    let header = vec![
        text_element("h1", "", words::WELCOME),
        text_element("p", "", words::INTRO),
    ];
    let mut page = vec![element("header", "", header), strip()];
    for group in Group::ALL {
        if tools_of(group).next().is_some() {
            page.push(menu(desk, group));
        }
    }
    let fact = |(name, words)| {
        element(
            "li",
            "",
            vec![text_element("h3", "", name), text_element("p", "", words)],
        )
    };
    page.push(element("ul", "facts", words::FACTS.into_iter().map(fact).collect()));
    element("div", "home", page)
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
            text_element("span", "name", tool.title.name),
            text_element("span", "asks", tool.title.asks),
        ];
        if !desk.fields(tool.id).is_empty() {
            content.push(text_element("span", "begun", words::GO_ON));
        }
        element("li", "", vec![link(href, content)])
    };
    let entries = tools_of(group).map(entry).collect();
    element(
        "section",
        "menu",
        vec![text_element("h2", "", words::group(group)), element("ul", "", entries)],
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
    element_with(
        "svg",
        &attributes,
        vec![path("ticks", &plain), path("marks fewer open", &pairs)],
    )
}
