//! Where a page gets its desk.

use super::keeper::{Keeper, News};
use super::state::{Action, State};
use super::{Desk, persist};
use crate::store::{Entry, Idb, Memory, Store};
use gloo_events::EventListener;
use gloo_timers::callback::Timeout;
use gloo_utils::{document, window};
use std::rc::Rc;
use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

/// How long a knitter waits for her figures before the page opens without them.
const PATIENCE_MS: u32 = 2_000;

/// A desk, once its figures are there or it is known that they will not come (two seconds at most).
///
/// An `example` makes it a desk of its own for an example: this lies on it, and nothing is kept.
#[hook]
pub fn use_desk(example: &Option<Vec<Entry>>) -> Option<Desk> {
    let state = use_reducer_eq(State::default);
    let keeper = use_keeper(&state, example);
    use_page_events(&state, &keeper);
    state.open.then(|| Desk::new(state, keeper))
}

/// Whether this page is shown inside another one.
fn is_framed() -> bool {
    let window = window();
    // A page that may not even look at its frame is framed.
    !matches!(window.top(), Ok(Some(top)) if top == window)
}

/// A keeper that works from now on. It stays the same one as long as its page is there.
#[hook]
fn use_keeper(state: &UseReducerHandle<State>, example: &Option<Vec<Entry>>) -> Rc<Keeper> {
    let dispatch = state.dispatcher();
    use_memo((), |()| {
        Keeper::new(store_for(example), move |news| {
            dispatch.dispatch(match news {
                News::Loaded(sheets) => Action::Loaded(sheets),
                News::Keeping(keeping) => Action::Keeping(keeping),
            });
        })
    })
}

/// A page shown inside another one keeps nothing, like an example.
fn store_for(example: &Option<Vec<Entry>>) -> Box<dyn Store> {
    match example {
        Some(entries) => Box::new(Memory::holding(entries.clone())),
        None if is_framed() => Box::new(Memory::default()),
        None => Box::new(Idb::default()),
    }
}

/// A first load, patience with it, a last try when the page is put away, and a look at the log when it comes back.
#[hook]
fn use_page_events(state: &UseReducerHandle<State>, keeper: &Rc<Keeper>) {
    let (dispatch, keeper) = (state.dispatcher(), keeper.clone());
    use_effect_with((), move |()| {
        keep_trying(&keeper);
        let listeners = (!keeper.is_guest()).then(|| {
            spawn_local(async move {
                dispatch.dispatch(Action::Persistence(persist::already().await));
            });
            page_events(keeper)
        });
        move || drop(listeners)
    });
}

fn page_events(keeper: Rc<Keeper>) -> (Timeout, [EventListener; 2]) {
    let waiting = keeper.clone();
    let patience = Timeout::new(PATIENCE_MS, move || waiting.is_slow());
    let seen = keeper.clone();
    let seen = EventListener::new(&document(), "visibilitychange", move |_| {
        if !document().hidden() {
            seen.reload();
        }
        keep_trying(&seen);
    });
    let gone = EventListener::new(&window(), "pagehide", move |_| keep_trying(&keeper));
    (patience, [seen, gone])
}

fn keep_trying(keeper: &Rc<Keeper>) {
    let keeper = keeper.clone();
    spawn_local(async move {
        // A failure is in the status already.
        let _ = keeper.flush().await;
    });
}
