//! What can be done with a tool as it stands: copy its link, print it, start afresh, put back what was there before. Inside
//! another page: what that page asks for, and a way to the tool itself that takes along what stands in the fields.

use super::clipboard::{ByHand, Copied, copied};
use super::plain::{button, element, element_with, status, text};
use super::{Frame, Sheet, View};
use crate::desk::{Announcement, Back, Desk};
use crate::route::{self, Route};
use crate::store::Fields;
use crate::words::{frame, page as words};
use gloo_utils::window;
use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

/// What can be done with a tool as it stands. Nothing, while nothing is typed.
pub fn actions(view: &View) -> Html {
    let sheet = &view.sheet;
    let Sheet { desk, id, frame } = sheet;
    if let Some(frame) = frame {
        return framed(view, frame);
    }
    let back = desk.back(id);
    if desk.fields(id).is_empty() && back.is_none() {
        return Html::default();
    }
    let put_back = match back {
        Some(Back::Own) => action(sheet, words::PUT_BACK, Desk::put_back),
        Some(Back::LookedAt) => action(sheet, words::PUT_BACK_LOOKED_AT, Desk::put_back),
        None => Html::default(),
    };
    let ways = vec![
        copy_link(view),
        action(sheet, words::PRINT, print),
        // What was there can be put back, as after a link.
        action(sheet, words::CLEAR, |desk, id| desk.open_link(id, &Fields::new())),
        put_back,
        status(announced(desk)),
    ];
    element("footer", "doings", ways)
}

/// A browser that does not print has nothing to say about it; nothing is lost.
fn print(_: &Desk, _: &str) {
    drop(window().print());
}

/// Inside another page nothing is kept and nothing announced. To start afresh is to go back to what that page filled in.
fn framed(view: &View, frame: &Frame) -> Html {
    let sheet = &view.sheet;
    let Sheet { desk, id, .. } = sheet.clone();
    let href = route::link(&Route::tool(id, &view.fields.typed_linked()));
    let away = [("href", &*href), ("target", "_blank"), ("rel", "noopener")];
    let mut ways = Vec::new();
    if frame.options.print {
        ways.push(action(sheet, words::PRINT, print));
    }
    if frame.options.afresh {
        let preset = frame.preset.clone();
        let afresh = move |_| desk.open_link(id, &preset);
        ways.push(button(words::CLEAR.into(), Callback::from(afresh)));
    }
    let open = if view.fields.have_a_pattern() {
        frame::OPEN_WITHOUT_PATTERN
    } else {
        frame::OPEN
    };
    let open = element_with("a", &away, vec![text(open.into())]);
    ways.push(element("p", "quiet", vec![open]));
    element("footer", "doings", ways)
}

fn action(sheet: &Sheet, label: &'static str, does: fn(&Desk, &str)) -> Html {
    let Sheet { desk, id, .. } = sheet.clone();
    button(label.into(), Callback::from(move |_| does(&desk, id)))
}

/// The link says all that stands in the fields: whoever opens it has another project.
fn copy_link(view: &View) -> Html {
    let (desk, link) = (view.sheet.desk.clone(), link_of(view));
    let done = if view.fields.have_a_pattern() {
        words::COPIED_BUT_PATTERN
    } else {
        words::COPIED
    };
    let copy = move |_| {
        let (desk, link) = (desk.clone(), link.clone());
        spawn_local(async move {
            desk.announce(match copied(&link).await {
                Copied::Taken => Announcement::Words(done.into()),
                Copied::Refused | Copied::NoAnswer => Announcement::Link(link),
            });
        });
    };
    button(words::COPY_LINK.into(), Callback::from(copy))
}

fn link_of(view: &View) -> String {
    route::link(&Route::tool(view.sheet.id, &view.fields.linked()))
}

/// What there is to say about the last tap.
pub fn announced(desk: &Desk) -> Html {
    match desk.announcement() {
        Announcement::Nothing => Html::default(),
        Announcement::Words(sentence) => text(sentence.into()),
        Announcement::Link(link) => html! { <ByHand {link} /> },
    }
}
