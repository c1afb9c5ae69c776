//! Whether the browser has promised to keep this page's storage when space is short or the page was not visited for
//! a while. Asked once, at the first change: some browsers show a question, and it should have a reason on the screen.

use js_sys::Promise;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;
use web_sys::StorageManager;

/// The browser's answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Persistence {
    /// It will not forget on its own.
    Granted,
    /// It may forget: a copy or the home screen is advised.
    Refused,
    /// It has not been asked, or cannot be.
    Unknown,
}

/// What holds already, without asking.
pub async fn already() -> Persistence {
    match answer(StorageManager::persisted).await {
        Some(true) => Persistence::Granted,
        Some(false) | None => Persistence::Unknown,
    }
}

/// Asks.
pub async fn ask() -> Persistence {
    match answer(StorageManager::persist).await {
        Some(true) => Persistence::Granted,
        Some(false) => Persistence::Refused,
        None => Persistence::Unknown,
    }
}

async fn answer(question: impl FnOnce(&StorageManager) -> Result<Promise, JsValue>) -> Option<bool> {
    let manager = gloo_utils::window().navigator().storage();
    // Absent where the page is not served securely.
    if manager.is_undefined() {
        return None;
    }
    JsFuture::from(question(&manager).ok()?).await.ok()?.as_bool()
}
