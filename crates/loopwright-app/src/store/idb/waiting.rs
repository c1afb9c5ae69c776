//! Waiting for the browser's database: its events as futures, and its exceptions by their names.

use crate::store::StoreError;
use futures_channel::oneshot;
use gloo_events::EventListener;
use gloo_timers::callback::Timeout;
use js_sys::Error;
use std::cell::RefCell;
use std::rc::Rc;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{DomException, EventTarget, IdbRequest, IdbTransaction};

/// What a request answers.
pub async fn answer(request: &IdbRequest) -> Result<JsValue, StoreError> {
    if first_event(request, "success", "error").await {
        request.result().map_err(why)
    } else {
        Err(request.error().ok().flatten().map_or_else(unnamed, named))
    }
}

/// Waits until a transaction is on the disc.
pub async fn completed(transaction: &IdbTransaction) -> Result<(), StoreError> {
    if first_event(transaction, "complete", "abort").await {
        Ok(())
    } else {
        Err(transaction.error().map_or_else(unnamed, named))
    }
}

/// Waits for the good or the bad event, whichever comes first; true for the good one.
async fn first_event(target: &EventTarget, good: &'static str, bad: &'static str) -> bool {
    let (send, receive) = oneshot::channel();
    let send = Rc::new(RefCell::new(Some(send)));
    let listen = |name: &'static str, answer: bool| {
        let send = send.clone();
        EventListener::once(target, name, move |_| {
            if let Some(send) = send.take() {
                let _ = send.send(answer);
            }
        })
    };
    let _listeners = (listen(good, true), listen(bad, false));
    receive.await.unwrap_or(false)
}

/// Waits.
pub async fn pause(millis: u32) {
    let (send, receive) = oneshot::channel();
    let timeout = Timeout::new(millis, move || {
        let _ = send.send(());
    });
    let _ = receive.await;
    drop(timeout);
}

/// What was thrown, by its name.
pub fn why(thrown: JsValue) -> StoreError {
    match thrown.dyn_into::<DomException>() {
        Ok(exception) => named(exception),
        Err(other) => match other.dyn_into::<Error>() {
            Ok(error) => StoreError::Broken(error.message().into()),
            Err(_) => unnamed(),
        },
    }
}

fn named(exception: DomException) -> StoreError {
    match exception.name().as_str() {
        "QuotaExceededError" => StoreError::Full,
        "SecurityError" | "NotAllowedError" => StoreError::Denied,
        "VersionError" => StoreError::Newer,
        // The connection is closed: nothing was written, and the next try opens another.
        "InvalidStateError" => StoreError::Dropped,
        name => StoreError::Broken([name, ": ", &exception.message()].concat()),
    }
}

/// Something failed, and nothing says why.
pub fn unnamed() -> StoreError {
    StoreError::Broken("the storage stopped without a reason".into())
}
