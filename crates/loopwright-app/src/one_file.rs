//! The page as one file, to take to a place without a network. `boot.js` makes it when it hears `loopwright:copy`, leaves
//! its address in `data-copy` on the root element, empty where it could not, and says `loopwright:copied`; here the file
//! gets its name and is handed over.
//!
//! A page that was opened from such a file is told by the block that holds its WebAssembly. What is typed there is kept
//! by the browser it is opened in, or not at all, and never in the file.

use crate::backup::{self, BackupError};
use crate::desk::{Desk, Keeping};
use crate::offline::dispatch;
use futures_channel::oneshot;
use gloo_events::{EventListener, EventListenerOptions};
use gloo_utils::{document, document_element, window};
use js_sys::Date;
use yew::prelude::*;

/// The block with the WebAssembly; there is one only where the page is one file.
const PROGRAM: &str = "loopwright-wasm";

/// Whether this page was opened from one file.
pub fn is_opened() -> bool {
    document().get_element_by_id(PROGRAM).is_some()
}

/// Hands the knitter the page as one file; answers what it is called.
pub async fn save() -> Result<String, BackupError> {
    let (sender, made) = oneshot::channel();
    let listener = EventListener::once(&window(), "loopwright:copied", move |_| {
        let _ = sender.send(());
    });
    dispatch("loopwright:copy");
    made.await.map_err(|_| BackupError::NotMade)?;
    drop(listener);
    let address = document_element().get_attribute("data-copy").unwrap_or_default();
    if address.is_empty() {
        return Err(BackupError::NotMade);
    }
    let name = name();
    backup::hand_over(address, &name).map_err(|_| BackupError::NotMade)?;
    Ok(name)
}

/// The browser asks before it closes what would be lost, and is in no copy: a file in which something is typed that is not
/// kept; and a page that a newer version keeps from keeping what was typed last, which she is told to reload.
#[hook]
pub fn use_question_before_closing(desk: Option<&Desk>) {
    let unkept = desk.filter(|desk| match desk.status().keeping {
        Keeping::Superseded { is_all_kept } => !is_all_kept,
        Keeping::Kept | Keeping::Writing => false,
        Keeping::KeptInDoubt | Keeping::Cleared(_) | Keeping::Failed(_) | Keeping::MemoryOnly(_) => is_opened(),
    });
    use_effect_with(unkept.cloned(), |unkept| {
        let listener = unkept.clone().map(|desk| {
            let options = EventListenerOptions::enable_prevent_default();
            EventListener::new_with_options(&window(), "beforeunload", options, move |event| {
                if !backup::holds(&desk) {
                    event.prevent_default();
                }
            })
        });
        move || drop(listener)
    });
}

/// With the version and the day, so that a newer one is told from an older.
fn name() -> String {
    let (version, now) = (env!("CARGO_PKG_VERSION"), Date::new_0());
    let (year, month, day) = (now.get_full_year(), now.get_month() + 1, now.get_date());
    format!("loopwright-{version}-{year:04}-{month:02}-{day:02}.html")
}
