//! A copy to keep elsewhere, and bringing one back: one JSON file, `{"loopwright": 1, "sheets": {...}}`.
//!
//! A copy is laid over what is there like a link is, so that each tool can be put back (`laying.rs`); and as long as the page
//! is open all of it can (`undoing.rs`). Whatever is wrong with a file is a value, and what it holds beside what this page
//! keeps is left out and counted (`taking.rs`).

mod laying;
pub mod taking;
mod undoing;

pub use laying::Brought;
pub use undoing::{can_undo, undo};

use crate::desk::Desk;
use crate::desk::undo::become_desk;
use crate::form::taken::LeftOut;
use crate::store::{Entry, Sheets, json};
use gloo_timers::callback::Timeout;
use gloo_utils::document;
use js_sys::{Array, JSON};
use laying::laid_over;
use std::cell::RefCell;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, BlobPropertyBag, File, HtmlAnchorElement, Url};

/// The name of the file.
pub const FILE_NAME: &str = "loopwright-backup.json";

/// More than anyone types in a life.
const MAX_BYTES: f64 = 4_000_000.0;
const VERSION: u32 = 1;
/// Long enough for any browser to have begun the download.
const FORGET_MS: u32 = 60_000;

thread_local! {
    /// What the last copy of this visit holds.
    static SAVED: RefCell<Sheets> = RefCell::default();
}

/// Why a copy could not be made or brought back. The sentence for each is in `words`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum BackupError {
    /// The browser did not make the file.
    NotMade,
    /// The file could not be read.
    Unreadable,
    /// Too long to be one of ours.
    TooLong,
    /// Not one of ours, or damaged.
    NotOurs,
    /// Made by a later version than this.
    Newer,
}

/// Hands the knitter a file with everything on the desk that is to be kept.
pub fn save_copy(desk: &Desk) -> Result<(), BackupError> {
    let text = json::sheets_object(&desk.to_be_kept())
        .and_then(|sheets| json::object(&[("loopwright", VERSION.into()), ("sheets", sheets)]))
        .and_then(|copy| json::text(&copy, 2))
        .ok_or(BackupError::NotMade)?;
    download(&text, FILE_NAME)?;
    SAVED.set(desk.to_be_kept());
    desk.copy_was_saved();
    Ok(())
}

/// Whether everything on the desk is in the last copy of this visit, or there is nothing.
pub fn holds(desk: &Desk) -> bool {
    SAVED.with_borrow(|saved| *saved == desk.to_be_kept())
}

/// What came of a copy that was brought back.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BroughtBack {
    /// What changed.
    pub changes: Brought,
    /// What of the file was left out.
    pub left_out: LeftOut,
}

/// Lays a file's sheets on the desk.
pub async fn bring_back(desk: &Desk, file: &File) -> Result<BroughtBack, BackupError> {
    let text = text_of(file, MAX_BYTES).await?;
    let taking::Taken { sheets, left_out } = taking::take(read(&text)?);
    let now = desk.newest();
    let then = laid_over(&now, &sheets);
    let entries = become_desk(&now, &then);
    let changes = Brought::of(&entries);
    undoing::note(&now, &then);
    desk.write_stored(entries);
    Ok(BroughtBack { changes, left_out })
}

/// What a file would write, sheet by sheet.
fn read(text: &str) -> Result<Vec<Entry>, BackupError> {
    let copy = JSON::parse(text).map_err(|_| BackupError::NotOurs)?;
    let version = json::get(&copy, "loopwright").and_then(|version| version.as_f64());
    check_version(version)?;
    let entries = json::get(&copy, "sheets").and_then(|sheets| json::sheets_entries(&sheets));
    entries.ok_or(BackupError::NotOurs)
}

/// Of a copy from here the version is a whole number, from 1 on: one that is no number at all, such as `"1"`, was never
/// written here.
fn check_version(version: Option<f64>) -> Result<(), BackupError> {
    match version.filter(|version| version.fract() == 0.0) {
        Some(version) if version == f64::from(VERSION) => Ok(()),
        Some(version) if version > f64::from(VERSION) => Err(BackupError::Newer),
        Some(_) | None => Err(BackupError::NotOurs),
    }
}

/// The text of a file; one that is longer than this is not read.
pub async fn text_of(file: &File, most_bytes: f64) -> Result<String, BackupError> {
    if file.size() > most_bytes {
        return Err(BackupError::TooLong);
    }
    let text = JsFuture::from(file.text()).await.ok();
    text.and_then(|text| text.as_string()).ok_or(BackupError::Unreadable)
}

/// Hands the knitter a text as a file of this name.
pub fn download(text: &str, name: &str) -> Result<(), BackupError> {
    let address = address_of(text).map_err(|_| BackupError::NotMade)?;
    hand_over(address, name).map_err(|_| BackupError::NotMade)
}

fn address_of(text: &str) -> Result<String, JsValue> {
    let kind = BlobPropertyBag::new();
    kind.set_type("application/json");
    let blob = Blob::new_with_str_sequence_and_options(&Array::of1(&text.into()), &kind)?;
    Url::create_object_url_with_blob(&blob)
}

/// Has the browser download what is at an address of this page's own making; the address is given up after a while.
pub fn hand_over(address: String, name: &str) -> Result<(), JsValue> {
    let anchor: HtmlAnchorElement = document().create_element("a")?.dyn_into()?;
    anchor.set_href(&address);
    anchor.set_download(name);
    anchor.click();
    Timeout::new(FORGET_MS, move || {
        let _ = Url::revoke_object_url(&address);
    })
    .forget();
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_version_that_was_never_written_is_not_ours() {
        assert_eq!(check_version(Some(1.0)), Ok(()));
        for newer in [2.0, 7.0, 1e15] {
            assert_eq!(check_version(Some(newer)), Err(BackupError::Newer), "{newer}");
        }
        for strange in [0.0, -0.0, -5.0, 1.5, 0.5, f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
            assert_eq!(check_version(Some(strange)), Err(BackupError::NotOurs), "{strange}");
        }
        // A text, nothing, or anything else that is no number.
        assert_eq!(check_version(None), Err(BackupError::NotOurs));
    }
}
