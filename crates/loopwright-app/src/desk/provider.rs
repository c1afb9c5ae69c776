//! Where a page gets its desk.

use super::keeper::{Keeper, News};
use super::others::Others;
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
    let is_own = example.is_none() && !is_framed();
    let others = use_memo((), |()| if is_own { Others::new() } else { Others::nobody() });
    let keeper = use_keeper(&state, example, &others);
    use_page_events(&state, &keeper, &others);
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
fn use_keeper(state: &UseReducerHandle<State>, example: &Option<Vec<Entry>>, others: &Rc<Others>) -> Rc<Keeper> {
    let (dispatch, others) = (state.dispatcher(), others.clone());
    use_memo((), |()| {
        Keeper::new(store_for(example), move |news| match news {
            News::Loaded(sheets) => dispatch.dispatch(Action::Loaded(sheets)),
            News::Keeping(keeping) => dispatch.dispatch(Action::Keeping(keeping)),
            News::Appended => others.tell(),
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
fn use_page_events(state: &UseReducerHandle<State>, keeper: &Rc<Keeper>, others: &Rc<Others>) {
    let (dispatch, keeper, others) = (state.dispatcher(), keeper.clone(), others.clone());
    use_effect_with((), move |()| {
        keep_trying(&keeper);
        let listeners = (!keeper.is_guest()).then(|| {
            spawn_local(async move {
                dispatch.dispatch(Action::Persistence(persist::already().await));
            });
            page_events(keeper, &others)
        });
        move || drop(listeners)
    });
}

/// What is listened to as long as the page is there.
type Listeners = (Timeout, [EventListener; 2], Option<EventListener>);

fn page_events(keeper: Rc<Keeper>, others: &Others) -> Listeners {
    let waiting = keeper.clone();
    let patience = Timeout::new(PATIENCE_MS, move || waiting.is_slow());
    let seen = keeper.clone();
    let seen = EventListener::new(&document(), "visibilitychange", move |_| {
        if !document().hidden() {
            seen.reload();
        }
        keep_trying(&seen);
    });
    // The store belongs to the keeper, and so does what it calls: neither may hold the other for ever.
    let lost = Rc::downgrade(&keeper);
    keeper.when_lost(Box::new(move || {
        if let Some(lost) = lost.upgrade() {
            lost.reload();
            keep_trying(&lost);
        }
    }));
    let told = keeper.clone();
    let heard = others.hear(move || {
        told.reload();
        keep_trying(&told);
    });
    let gone = EventListener::new(&window(), "pagehide", move |_| keep_trying(&keeper));
    (patience, [seen, gone], heard)
}

fn keep_trying(keeper: &Rc<Keeper>) {
    let keeper = keeper.clone();
    spawn_local(async move {
        // A failure is in the status already.
        let _ = keeper.flush().await;
    });
}
