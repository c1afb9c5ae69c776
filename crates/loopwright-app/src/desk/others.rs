//! Other windows of this page: when one has kept something, the others read the log again, so that all show one truth. What
//! is said between them is only that there is news, or that the storage is in doubt; the log says what.

use gloo_events::EventListener;
use loopwright::choice::Key;
use wasm_bindgen::JsCast;
use web_sys::{BroadcastChannel, MessageEvent};

/// The name under which the windows hear of each other.
const NAME: &str = "loopwright";

/// What a window says to the others.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Word {
    /// Something was kept.
    News,
    /// A write failed, so that it is in doubt what is kept from here on.
    InDoubt,
    /// Everybody is to let go of the storage, so that it can be seen what is left of it.
    LetGo,
    /// All is there: nothing is in doubt any more.
    Whole,
}

loopwright::keys!(Word {
    News = "news",
    InDoubt = "in-doubt",
    LetGo = "let-go",
    Whole = "whole",
});

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

    /// Tells them.
    pub fn tell(&self, word: Word) {
        if let Some(channel) = &self.0 {
            // A window that is not told reads the log when it is looked at.
            let _ = channel.post_message(&word.key().into());
        }
    }

    /// Calls when one of them says something, as long as the listener is held.
    pub fn hear(&self, heard: impl Fn(Word) + 'static) -> Option<EventListener> {
        let channel = self.0.as_ref()?;
        Some(EventListener::new(channel, "message", move |event| {
            let said = event.unchecked_ref::<MessageEvent>().data().as_string();
            // Older releases say something else when they have kept something.
            heard(said.and_then(|said| Word::from_key(&said)).unwrap_or(Word::News));
        }))
    }
}
