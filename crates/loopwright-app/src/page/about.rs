//! What is stored and how to keep a copy of it, light and dusk, and the usual cautions.

use super::light::{self, Light};
use super::links;
use super::storage;
use super::units::units;
use super::whole::WholeWorkbox;
use crate::backup::{self, BackupError, BroughtBack};
use crate::desk::{Announcement, Desk};
use crate::one_file;
use crate::part::plain::{button, element, link, list, status, text, text_element};
use crate::part::{Label, announced, settings_choice};
use crate::route::{self, Route};
use crate::words::about as words;
use wasm_bindgen_futures::spawn_local;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// The page about storage and care.
pub fn about(desk: &Desk, offline_ready: bool) -> Html {
    let heading = |words| text_element("h2", "", words);
    let says_so = |words| text_element("p", "", words);
    let light = settings_choice::<Light>(desk, light::SETTING, words::LIGHT_LABEL);
    let gallery = link(route::print(&Route::Gallery), vec![text(words::GALLERY.into())]);
    let cares = words::CARES.iter().map(|care| text_element("li", "", *care)).collect();
    let page = vec![
        text_element("h1", "", words::TITLE),
        says_so(words::WHAT),
        heading(words::CARE),
        element("ul", "", cares),
        text_element("p", "source", words::CARES_SOURCE),
        heading(words::MEASURES),
        units(desk),
        says_so(words::MEASURES_TEXT),
        heading(words::STORED),
        stored(desk),
        heading(words::COPY),
        says_so(words::COPY_TEXT),
        copies(desk),
        heading(words::OFFLINE),
        says_so(without_network(offline_ready)),
        heading(words::WHOLE),
        says_so(words::WHOLE_TEXT),
        says_so(on_tablets()),
        html! { <WholeWorkbox /> },
        heading(words::LIGHT),
        element("div", "line", vec![light]),
        element("p", "", vec![links::way()]),
        element("p", "practice", vec![gallery]),
    ];
    element("article", "about", page)
}

/// Where what is typed is kept, and whether the browser may clear it.
fn stored(desk: &Desk) -> Html {
    let sentences = if one_file::is_opened() {
        vec![words::STORED_IN_FILE]
    } else {
        vec![words::STORED_TEXT, storage::persistence(desk.status().persistence)]
    };
    let mut said: Vec<Html> = sentences
        .into_iter()
        .map(|words| text_element("p", "", words))
        .collect();
    match desk.strange_records() {
        0 => (),
        count => said.push(text_element("p", "", words::strange_records(count))),
    }
    list(said)
}

/// Whether the page opens without the internet.
fn without_network(offline_ready: bool) -> &'static str {
    if one_file::is_opened() {
        words::OFFLINE_IN_FILE
    } else if offline_ready {
        words::OFFLINE_READY
    } else {
        words::OFFLINE_NOT
    }
}

/// What to do where a file is shown and does no sums. A file has no address to open it from.
fn on_tablets() -> &'static str {
    if one_file::is_opened() {
        words::WHOLE_ON_TABLETS_IN_FILE
    } else {
        words::WHOLE_ON_TABLETS
    }
}

/// Saves a copy; what went wrong is said where the page says such things.
fn save_copy(desk: &Desk) {
    desk.announce(match backup::save_copy(desk) {
        Ok(()) => Announcement::Nothing,
        Err(why) => Announcement::Words(refused(&why).into()),
    });
}

/// Saving a copy and bringing one back.
fn copies(desk: &Desk) -> Html {
    let save = {
        let desk = desk.clone();
        Callback::from(move |_| save_copy(&desk))
    };
    let bring = {
        let desk = desk.clone();
        Callback::from(move |event: Event| {
            let input: HtmlInputElement = event.target_unchecked_into();
            let Some(file) = input.files().and_then(|files| files.get(0)) else {
                return;
            };
            let desk = desk.clone();
            spawn_local(async move {
                let sentence = match backup::bring_back(&desk, &file).await {
                    Ok(brought) => brought_back(&brought),
                    Err(why) => refused(&why).into(),
                };
                desk.announce(Announcement::Words(sentence));
                // The same file chosen again is a new choice.
                input.set_value("");
            });
        })
    };
    let ways = vec![
        button(words::SAVE.into(), save),
        Label::Shown(words::BRING).draw("bring-back"),
        html! { <input id="bring-back" type="file" accept="application/json,.json" onchange={bring} /> },
    ];
    list(vec![
        element("div", "line", ways),
        status(announced(desk)),
        undoing(desk),
    ])
}

/// As long as something is still as the last copy made it, all of that can be put back.
fn undoing(desk: &Desk) -> Html {
    if !backup::can_undo(desk) {
        return Html::default();
    }
    let desk = desk.clone();
    let undo = move |_| {
        let undone = backup::undo(&desk);
        desk.announce(Announcement::Words(words::put_back(undone.put_back, undone.stay)));
    };
    button(words::UNDO_COPY.into(), Callback::from(undo))
}

/// What came of a copy, and what of it was left out.
fn brought_back(brought: &BroughtBack) -> String {
    let left_out = brought.left_out.of_a_copy();
    let sentences: Vec<String> = [words::brought_back(brought.changes.set, brought.changes.taken_away)]
        .into_iter()
        .chain(left_out)
        .collect();
    sentences.join(" ")
}

/// Why a copy could not be made or brought back.
pub const fn refused(why: &BackupError) -> &'static str {
    match why {
        BackupError::NotMade => words::COPY_NOT_MADE,
        BackupError::Unreadable => words::COPY_UNREADABLE,
        BackupError::TooLong => words::COPY_TOO_LONG,
        BackupError::NotOurs => words::COPY_NOT_OURS,
        BackupError::Newer => words::COPY_NEWER,
    }
}
