//! A short buzz of the device, where it has one.

use gloo_utils::window;
use js_sys::{Function, Reflect};
use wasm_bindgen::{JsCast, JsValue};

/// How long a buzz is.
const BUZZ_MS: f64 = 30.0;

/// Whether the device can buzz at all.
pub fn can_buzz() -> bool {
    buzzer().is_some()
}

/// Buzzes. A device that will not makes no fuss about it.
pub fn buzz() {
    if let Some(buzzer) = buzzer() {
        drop(buzzer.call1(&window().navigator(), &JsValue::from_f64(BUZZ_MS)));
    }
}

fn buzzer() -> Option<Function> {
    Reflect::get(&window().navigator(), &"vibrate".into())
        .ok()?
        .dyn_into()
        .ok()
}
