//! All her projects: which is open, and what can be done with each; and the choice of one at the top of every page.

use crate::desk::Desk;
use crate::part::plain::{button, element, option, text_element};
use crate::project::{self, Listed, Standing};
use crate::store::{Entry, ProjectId, Sheets};
use crate::words::project as words;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

/// What stands for "another one" in the choice at the top.
const NEW: &str = "new";

/// The choice of the project that is open.
pub fn choosing(desk: &Desk) -> Html {
    let open = desk.project_id();
    let all = project::list(&desk.newest());
    let here = all
        .into_iter()
        .filter(|listed| listed.standing == Standing::Here || listed.id == open);
    let mut options: Vec<(String, String)> = here.map(|listed| (listed.id.to_string(), named(&listed))).collect();
    options.push((NEW.into(), words::NEW.into()));
    let desk = desk.clone();
    let onchange = Callback::from(move |event: Event| {
        let chosen = event.target_unchecked_into::<HtmlSelectElement>().value();
        desk.write_stored(match ProjectId::parse(&chosen) {
            Some(id) => project::open(id),
            None => project::start(&desk.newest()),
        });
    });
    let open = open.to_string();
    let drawn = |(key, name): (String, String)| option(&key, name, key == open);
    html! {
        <select id="open-project" aria-label={words::CHOOSE} {onchange}>{ for options.into_iter().map(drawn) }</select>
    }
}

/// What a project is called, also before she calls it anything.
pub fn named(listed: &Listed) -> String {
    match (listed.name.trim(), listed.id) {
        ("", ProjectId::FIRST) => words::UNNAMED.into(),
        ("", id) => words::numbered(words::UNNAMED, id.0),
        (name, _) => name.to_owned(),
    }
}

/// The list of all projects.
pub fn projects(desk: &Desk) -> Html {
    let all = project::list(&desk.newest());
    let items = all.iter().map(|listed| item(desk, listed)).collect();
    let content = vec![
        text_element("h2", "", words::PROJECTS),
        element("ul", "", items),
        tap(desk, words::NEW, |sheets, _| project::start(sheets), desk.project_id()),
    ];
    element("section", "projects", content)
}

fn item(desk: &Desk, listed: &Listed) -> Html {
    let is_open = listed.id == desk.project_id();
    let standing = match listed.standing {
        _ if is_open => words::OPEN_NOW,
        Standing::Here => "",
        Standing::Away => words::IS_AWAY,
        Standing::Deleted => words::IS_DELETED,
    };
    let tap = |label, does| tap(desk, label, does, listed.id);
    let taps = match listed.standing {
        Standing::Deleted => vec![
            tap(words::HAVE_BACK, |_, id| project::open(id)),
            tap(words::FORGET, project::forget),
        ],
        Standing::Away => vec![tap(words::OPEN, |_, id| project::open(id)), deleting(desk, listed.id)],
        Standing::Here => {
            let mut taps = Vec::new();
            if !is_open {
                taps.push(tap(words::OPEN, |_, id| project::open(id)));
            }
            taps.push(copying(desk, listed));
            taps.push(setting_aside(desk, words::PUT_AWAY, listed.id, Standing::Away));
            taps.push(deleting(desk, listed.id));
            taps
        }
    };
    let content = vec![
        text_element("strong", "", named(listed)),
        text_element("span", "quiet", standing),
        element("div", "doings", taps),
    ];
    element("li", "", content)
}

fn tap(desk: &Desk, label: &'static str, does: fn(&Sheets, ProjectId) -> Vec<Entry>, id: ProjectId) -> Html {
    let desk = desk.clone();
    button(
        label.into(),
        Callback::from(move |_| desk.write_stored(does(&desk.newest(), id))),
    )
}

fn copying(desk: &Desk, listed: &Listed) -> Html {
    let (desk, id, name) = (desk.clone(), listed.id, words::copy_of(&named(listed)));
    button(
        words::COPY.into(),
        Callback::from(move |_| desk.write_stored(project::copy(&desk.newest(), id, name.clone()))),
    )
}

fn setting_aside(desk: &Desk, label: &'static str, id: ProjectId, standing: Standing) -> Html {
    let desk = desk.clone();
    let onclick = move |_| desk.write_stored(project::set_aside(&desk.newest(), id, desk.project_id(), standing));
    button(label.into(), Callback::from(onclick))
}

fn deleting(desk: &Desk, id: ProjectId) -> Html {
    setting_aside(desk, words::DELETE, id, Standing::Deleted)
}
