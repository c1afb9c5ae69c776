//! Copying to the clipboard. It may refuse, and in some frames and browsers it never answers: after a second that is said, and
//! the text stands there selected, to be copied by hand.

use crate::words::page as words;
use futures_channel::oneshot;
use gloo_timers::callback::Timeout;
use gloo_utils::window;
use std::cell::RefCell;
use std::rc::Rc;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// How long a clipboard is waited for.
const PATIENCE_MS: u32 = 1_000;

/// What came of a tap that copies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Copied {
    /// The clipboard has it.
    Taken,
    /// The browser does not let the page copy.
    Refused,
    /// The clipboard has not answered for a second.
    NoAnswer,
}

/// Copies a text, and waits no longer than a second for what comes of it.
pub async fn copied(text: &str) -> Copied {
    let (send, answer) = oneshot::channel();
    // Whichever is first: the clipboard, or the end of patience.
    let send = Rc::new(RefCell::new(Some(send)));
    let say = move |outcome| {
        if let Some(send) = send.take() {
            // Nobody waits any more where the page was left.
            let _ = send.send(outcome);
        }
    };
    let late = say.clone();
    let waiting = Timeout::new(PATIENCE_MS, move || late(Copied::NoAnswer));
    let text = text.to_owned();
    spawn_local(async move { say(put(&text).await) });
    let outcome = answer.await.unwrap_or(Copied::NoAnswer);
    drop(waiting);
    outcome
}

async fn put(text: &str) -> Copied {
    // A page that was not served securely has no clipboard, whatever its type says.
    let navigator = window().navigator();
    let clipboard = js_sys::Reflect::get(&navigator, &"clipboard".into());
    if !clipboard.is_ok_and(|clipboard| clipboard.is_object()) {
        return Copied::Refused;
    }
    match JsFuture::from(navigator.clipboard().write_text(text)).await {
        Ok(_) => Copied::Taken,
        Err(_) => Copied::Refused,
    }
}

/// What a link to be copied by hand is drawn from.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The link.
    pub link: AttrValue,
}

/// A link that the clipboard did not take, selected to be copied by hand.
#[component]
pub fn ByHand(props: &Props) -> Html {
    let field = use_node_ref();
    let selected = field.clone();
    use_effect_with(props.link.clone(), move |_| {
        if let Some(field) = selected.cast::<HtmlInputElement>() {
            // Where it cannot have the focus it is selected all the same.
            let _ = field.focus();
            field.select();
        }
    });
    html! {
        <label>{ words::COPY_THIS }{ " " }<input ref={field} readonly=true value={props.link.clone()} /></label>
    }
}
