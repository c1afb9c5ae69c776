//! The first page, made from the list of tools: a field that finds them by the words knitters use, the ones she used
//! last, and all of them, grouped by when the question comes up, each with its small picture.

use super::search;
use super::units::units;
use crate::desk::Desk;
use crate::part::Label;
use crate::part::plain::{button, element, element_with, link, list, path, status, text, text_element};
use crate::project;
use crate::route::{self, Route};
use crate::store::Typed;
use crate::tool::{self, Entry, TOOLS};
use crate::words::{home as words, project as project_words};
use gloo_utils::window;
use loopwright::tools::Group;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// The sheet of this page: what is looked for.
pub const SHEET: &str = "home";
/// The field on it.
pub const SEARCH: &str = "search";
/// Tools named as the last ones used: as many as a phone has room for.
const MOST_RECENT: usize = 3;

/// The first page.
pub fn home(desk: &Desk) -> Html {
    let looked_for = desk.text(SHEET, SEARCH).map_or_else(String::new, |typed| typed.text);
    let found = search::find(&looked_for);
    let header = vec![
        text_element("h1", "", words::WELCOME),
        text_element("p", "", words::INTRO),
    ];
    // As many elements whatever is found: of another number the field that is being typed in would be made anew.
    let tools = match found {
        Some(found) => results(desk, &looked_for, &found),
        None => list(vec![recent(desk), menus(desk)]),
    };
    let page = vec![
        element("header", "", header),
        element("div", "start", vec![looking(desk, &looked_for), units(desk)]),
        tools,
        example(desk),
        strip(),
        facts(),
    ];
    element("div", "home", page)
}

/// The field that finds. Enter goes to the first tool that is found.
fn looking(desk: &Desk, looked_for: &str) -> Html {
    let id = [SHEET, SEARCH].join("-");
    let oninput = {
        let desk = desk.clone();
        move |event: InputEvent| {
            let text = event.target_unchecked_into::<HtmlInputElement>().value();
            look_for(&desk, text);
        }
    };
    let onsubmit = {
        let desk = desk.clone();
        move |event: SubmitEvent| {
            event.prevent_default();
            go_to_first(&desk);
        }
    };
    let clear = {
        let desk = desk.clone();
        Callback::from(move |_| look_for(&desk, String::new()))
    };
    let cleared = if looked_for.is_empty() {
        Html::default()
    } else {
        button(words::SHOW_ALL.into(), clear)
    };
    html! {
        <form class="looking" role="search" {onsubmit}>
            { Label::Shown(words::SEARCH).draw(&id) }
            <input {id} type="search" value={looked_for.to_owned()} {oninput} placeholder={words::SEARCH_EXAMPLE}
                autocomplete="off" autocapitalize="none" spellcheck="false" enterkeyhint="go" />
            { cleared }
        </form>
    }
}

/// What is looked for is kept like all that is typed; an emptied field is as if nothing had ever stood there.
fn look_for(desk: &Desk, text: String) {
    let typed = (!text.is_empty()).then(|| Typed::plain(text));
    desk.write(SHEET, SEARCH, typed);
}

fn go_to_first(desk: &Desk) {
    let typed = desk.text(SHEET, SEARCH);
    let found = typed.and_then(|typed| search::find(&typed.text)).unwrap_or_default();
    if let Some(first) = found.first() {
        // A browser that does not go there has the link still.
        drop(window().location().set_hash(&address(first)));
    }
}

/// The tools that were found; all of them, below a sentence, where none was.
fn results(desk: &Desk, looked_for: &str, found: &[&'static Entry]) -> Html {
    if found.is_empty() {
        let sentence = status(text(words::nothing_found(looked_for.trim()).into()));
        return list(vec![sentence, menus(desk)]);
    }
    let entries = found.iter().map(|tool| entry(desk, tool)).collect();
    let count = u32::try_from(found.len()).unwrap_or(u32::MAX);
    let said = status(text(words::found(count).into()));
    element("section", "menu found", vec![said, element("ul", "", entries)])
}

/// The tools she used last, the last one first.
fn recent(desk: &Desk) -> Html {
    let sheets = desk.newest();
    let used: Vec<_> = sheets.last_written().filter_map(tool::find).take(MOST_RECENT).collect();
    if used.is_empty() {
        return Html::default();
    }
    let name = |tool: &&Entry| link(address(tool), vec![text(tool.title.name.into())]);
    let mut line = vec![text_element("span", "", words::RECENT)];
    line.extend(used.iter().map(name));
    element_with("nav", &[("class", "recent"), ("aria-label", words::RECENT)], line)
}

/// All tools, by when the question comes up.
fn menus(desk: &Desk) -> Html {
    let groups = Group::ALL.into_iter();
    let menus = groups.filter(|group| tools_of(*group).next().is_some());
    list(menus.map(|group| menu(desk, group)).collect())
}

fn tools_of(group: Group) -> impl Iterator<Item = &'static Entry> {
    TOOLS.iter().filter(move |tool| tool.group == group)
}

/// The tools of one group.
fn menu(desk: &Desk, group: Group) -> Html {
    let entries = tools_of(group).map(|tool| entry(desk, tool)).collect();
    let heading = text_element("h2", "", words::group(group));
    element("section", "menu", vec![heading, element("ul", "", entries)])
}

fn entry(desk: &Desk, tool: &Entry) -> Html {
    let mut content = vec![
        (tool.sign)(),
        text_element("span", "name", tool.title.name),
        text_element("span", "asks", tool.title.asks),
    ];
    if !desk.fields(tool.id).is_empty() {
        content.push(text_element("span", "begun", words::GO_ON));
    }
    element_with("li", &[], vec![link(address(tool), content)])
}

fn address(tool: &Entry) -> String {
    route::print(&Route::Tool {
        id: tool.id.into(),
        fields: Vec::new(),
    })
}

/// The invented project, opened by one tap.
fn example(desk: &Desk) -> Html {
    let desk = desk.clone();
    let open = Callback::from(move |_| {
        project::bringing::bring_in(&desk, &project::demo::pullover());
        // A browser that does not go there has the link at the top.
        drop(window().location().set_hash(&route::print(&Route::Project)));
    });
    let content = vec![
        text_element("p", "", project_words::DEMO_WHY),
        button(project_words::DEMO.into(), open),
    ];
    element("div", "example", content)
}

/// What to expect.
fn facts() -> Html {
    let fact = |(name, words)| {
        let content = vec![text_element("h3", "", name), text_element("p", "", words)];
        element("li", "", content)
    };
    element("ul", "facts", words::FACTS.into_iter().map(fact).collect())
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
