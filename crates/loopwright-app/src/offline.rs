//! What the page knows of its own offline state: `boot.js` says it by `data-offline` and `data-update` on the root
//! element and by two events; the page answers by one event when the knitter takes the new version.

use crate::desk::Desk;
use gloo_events::EventListener;
use gloo_utils::{document_element, window};
use wasm_bindgen_futures::spawn_local;
use web_sys::Event;
use yew::prelude::*;

/// The offline state.
#[derive(Clone, Copy, PartialEq)]
pub struct Offline {
    /// All files are on this machine.
    pub ready: bool,
    /// A new version is here and waits to be asked in.
    pub update_waiting: bool,
}

/// The offline state of this page, always the newest.
#[hook]
pub fn use_offline() -> Offline {
    let seen = use_state_eq(look);
    let set = seen.setter();
    use_effect_with((), move |()| {
        let listeners = ["loopwright:offline", "loopwright:update"].map(|name| {
            let set = set.clone();
            EventListener::new(&window(), name, move |_| set.set(look()))
        });
        // Something may have been said between the first look and this moment.
        set.set(look());
        move || drop(listeners)
    });
    *seen
}

/// Takes the new version: what was typed is kept first, then the page is opened again, once. If it cannot be kept
/// nothing happens here; the desk's status says why.
pub fn accept(desk: &Desk) {
    let desk = desk.clone();
    spawn_local(async move {
        if desk.flush().await.is_ok() {
            dispatch("loopwright:accept");
        }
    });
}

fn look() -> Offline {
    let root = document_element();
    let is_marked = |name, value: &str| root.get_attribute(name).as_deref() == Some(value);
    Offline {
        ready: is_marked("data-offline", "ready"),
        update_waiting: is_marked("data-update", "waiting"),
    }
}

/// Says something to `boot.js`.
pub fn dispatch(name: &str) {
    if let Ok(event) = Event::new(name) {
        let _ = window().dispatch_event(&event);
    }
}
