//! Where a page gets its desk.

use super::held::{TAKES, typed_in};
use super::keeper::{Keeper, News};
use super::others::{Others, Word};
use super::state::{Action, State};
use super::{Desk, persist};
use crate::store::{Entry, Idb, Memory, Store};
use gloo_events::EventListener;
use gloo_timers::callback::Timeout;
use gloo_utils::{document, window};
use std::rc::Rc;
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::spawn_local;
use web_sys::Element;
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
            News::Loaded(sheets) => dispatch.dispatch(Action::Loaded(sheets, typed_in())),
            News::Keeping(keeping) => dispatch.dispatch(Action::Keeping(keeping)),
            News::Word(word) => others.tell(word),
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

/// A first load, patience with it, a last try when the page is put away, and a look at the log when it comes back or another
/// window has written.
#[hook]
fn use_page_events(state: &UseReducerHandle<State>, keeper: &Rc<Keeper>, others: &Rc<Others>) {
    let (dispatch, keeper, others) = (state.dispatcher(), keeper.clone(), others.clone());
    use_effect_with((), move |()| {
        keep_trying(&keeper);
        let listeners = (!keeper.is_guest()).then(|| {
            let leaving = leaving(&dispatch);
            spawn_local(async move {
                dispatch.dispatch(Action::Persistence(persist::already().await));
            });
            (page_events(keeper, &others), leaving)
        });
        move || drop(listeners)
    });
}

/// What is listened to as long as the page is there.
type Listeners = (Timeout, Vec<EventListener>, Option<EventListener>);

fn page_events(keeper: Rc<Keeper>, others: &Others) -> Listeners {
    let waiting = keeper.clone();
    let patience = Timeout::new(PATIENCE_MS, move || waiting.is_slow());
    // The store belongs to the keeper, and so does what it calls: neither may hold the other for ever.
    let lost = Rc::downgrade(&keeper);
    keeper.when_lost(Box::new(move || {
        if let Some(lost) = lost.upgrade() {
            look_again(&lost);
        }
    }));
    let told = keeper.clone();
    let heard = others.hear(move |word| {
        told.hear(word);
        if matches!(word, Word::News | Word::Whole) {
            keep_trying(&told);
        }
    });
    (patience, looked_at(&keeper), heard)
}

/// A window that is looked at reads the log: a browser that lets hidden windows sleep tells them nothing, nor one that was
/// put away whole and comes back by the way back. One that is put away tries to keep what is not kept.
fn looked_at(keeper: &Rc<Keeper>) -> Vec<EventListener> {
    let (seen, focused, shown, gone) = (keeper.clone(), keeper.clone(), keeper.clone(), keeper.clone());
    let seen = EventListener::new(&document(), "visibilitychange", move |_| match document().hidden() {
        true => keep_trying(&seen),
        false => look_again(&seen),
    });
    let focused = EventListener::new(&window(), "focus", move |_| look_again(&focused));
    let shown = EventListener::new(&window(), "pageshow", move |_| look_again(&shown));
    let gone = EventListener::new(&window(), "pagehide", move |_| keep_trying(&gone));
    vec![seen, focused, shown, gone]
}

/// She leaves a field, or the window: what is kept may be shown where she was typing. The button that takes what another
/// window wrote belongs to the field.
fn leaving(dispatch: &UseReducerDispatcher<State>) -> [EventListener; 2] {
    let (field, whole) = (dispatch.clone(), dispatch.clone());
    let field = EventListener::new(&document(), "focusout", move |event| {
        if !is_to_taking(event) {
            field.dispatch(Action::GaveWay { is_left: true });
        }
    });
    let whole = EventListener::new(&window(), "blur", move |_| {
        whole.dispatch(Action::GaveWay { is_left: true })
    });
    [field, whole]
}

fn is_to_taking(event: &Event) -> bool {
    let event: &FocusEvent = event.unchecked_ref();
    let to = event.related_target().and_then(|to| to.dyn_into::<Element>().ok());
    to.is_some_and(|to| to.has_attribute(TAKES))
}

fn look_again(keeper: &Rc<Keeper>) {
    keeper.reload();
    keep_trying(keeper);
}

fn keep_trying(keeper: &Rc<Keeper>) {
    let keeper = keeper.clone();
    spawn_local(async move {
        // A failure is in the status already.
        let _ = keeper.flush().await;
    });
}
