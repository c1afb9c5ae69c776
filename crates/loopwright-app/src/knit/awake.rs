//! Keeping the screen awake while she knits: the browser's wake lock, and the truth about it.
//!
//! A lock is asked for, may be refused, is let go when the page is hidden or the battery runs low, and is asked for again
//! when the page is seen. web-sys has it only behind an unstable switch, so it is reached by its name.

use crate::words::{Worded, knit as words};
use gloo_events::EventListener;
use gloo_utils::{document, window};
use js_sys::{Function, Promise, Reflect};
use std::cell::{Cell, RefCell};
use std::rc::Rc;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::EventTarget;
use yew::prelude::*;

/// Whether the screen stays awake.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Awake {
    /// It was not asked for.
    Off,
    /// It was asked for, and there is no answer yet.
    Asking,
    /// It stays awake.
    On,
    /// The device said no.
    Refused,
    /// It was let go, by the device or since the page was hidden.
    Lost,
    /// This browser cannot do it.
    Absent,
}

impl Worded for Awake {
    fn words(self) -> &'static str {
        match self {
            Self::Off => words::AWAKE_OFF,
            Self::Asking => words::AWAKE_ASKING,
            Self::On => words::AWAKE_ON,
            Self::Refused => words::AWAKE_REFUSED,
            Self::Lost => words::AWAKE_LOST,
            Self::Absent => words::AWAKE_ABSENT,
        }
    }
}

/// Keeps the screen awake as long as that is wanted and the page is there; answers whether it does.
#[hook]
pub fn use_awake(wanted: bool) -> Awake {
    let state = use_state_eq(|| Awake::Off);
    let set = state.setter();
    use_effect_with(wanted, move |wanted| {
        let screen = Rc::new(Screen {
            set,
            held: RefCell::default(),
            is_wanted: Cell::new(*wanted),
        });
        screen.ask();
        let seen = screen.clone();
        let listener = EventListener::new(&document(), "visibilitychange", move |_| seen.ask());
        move || {
            drop(listener);
            screen.let_go();
        }
    });
    *state
}

/// The screen, and the lock that is held on it.
struct Screen {
    set: UseStateSetter<Awake>,
    held: RefCell<Option<(EventTarget, EventListener)>>,
    is_wanted: Cell<bool>,
}

impl Screen {
    /// Asks for the lock, where it is wanted, not held, and the page is seen.
    fn ask(self: &Rc<Self>) {
        if !self.is_wanted.get() {
            return self.set.set(Awake::Off);
        }
        if document().hidden() || self.held.borrow().is_some() {
            return;
        }
        let Some(promise) = request() else {
            return self.set.set(Awake::Absent);
        };
        self.set.set(Awake::Asking);
        let screen = self.clone();
        spawn_local(async move {
            let lock = JsFuture::from(promise).await;
            match lock.and_then(|lock| lock.dyn_into::<EventTarget>()) {
                Ok(lock) => screen.hold(lock),
                Err(_) => screen.set.set(Awake::Refused),
            }
        });
    }

    fn hold(self: &Rc<Self>, lock: EventTarget) {
        if !self.is_wanted.get() {
            return release(&lock);
        }
        let screen = self.clone();
        let lost = EventListener::once(&lock, "release", move |_| {
            // What holds this very listener is let go when it is done.
            let held = screen.held.take();
            spawn_local(async move { drop(held) });
            screen.set.set(Awake::Lost);
        });
        self.held.replace(Some((lock, lost)));
        self.set.set(Awake::On);
    }

    fn let_go(&self) {
        self.is_wanted.set(false);
        if let Some((lock, lost)) = self.held.take() {
            drop(lost);
            release(&lock);
        }
    }
}

/// Asks the browser; none where it knows no such thing.
fn request() -> Option<Promise> {
    let lock = Reflect::get(&window().navigator(), &"wakeLock".into()).ok()?;
    let request: Function = Reflect::get(&lock, &"request".into()).ok()?.dyn_into().ok()?;
    match request.call1(&lock, &JsValue::from_str("screen")) {
        Ok(promise) => promise.dyn_into().ok(),
        Err(refused) => Some(Promise::reject(&refused)),
    }
}

fn release(lock: &EventTarget) {
    let release = Reflect::get(lock, &"release".into()).ok();
    if let Some(release) = release.and_then(|release| release.dyn_into::<Function>().ok()) {
        // A lock that was let go already has nothing to say.
        drop(release.call0(lock));
    }
}
