//! Other windows of this page: when one has kept something, the others read the log again, so that all show one truth. What
//! is said between them is only that there is news; the log says what.

use gloo_events::EventListener;
use wasm_bindgen::JsValue;
use web_sys::BroadcastChannel;

/// The name under which the windows hear of each other.
const NAME: &str = "loopwright";

/// The way to the other windows; none where the browser has none, and then a window reads the log when it is looked at.
pub struct Others(Option<BroadcastChannel>);

impl Others {
    /// The way to the other windows of this page.
    pub fn new() -> Self {
        Self(BroadcastChannel::new(NAME).ok())
    }

    /// Nobody: an example, or a page inside another one.
    pub const fn nobody() -> Self {
        Self(None)
    }

    /// Tells them that something was kept.
    pub fn tell(&self) {
        if let Some(channel) = &self.0 {
            // A window that is not told reads the log when it is looked at.
            let _ = channel.post_message(&JsValue::TRUE);
        }
    }

    /// Calls when one of them has kept something, as long as the listener is held.
    pub fn hear(&self, heard: impl Fn() + 'static) -> Option<EventListener> {
        let channel = self.0.as_ref()?;
        Some(EventListener::new(channel, "message", move |_| heard()))
    }
}
