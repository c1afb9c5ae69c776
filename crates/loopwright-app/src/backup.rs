//! A copy to keep elsewhere, and bringing one back: one JSON file, `{"loopwright": 1, "sheets": {...}}`.
//!
//! A copy is laid over what is there like a link is, so that each sheet can be put back. Whatever is wrong with a
//! file is a value, and what it holds beside what this page keeps is left out and counted (`taking.rs`).

mod taking;

use crate::desk::{Desk, undo};
use crate::form::taken::LeftOut;
use crate::store::{Entry, Sheets, json};
use gloo_timers::callback::Timeout;
use gloo_utils::document;
use js_sys::{Array, JSON};
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

/// Hands the knitter a file with everything on the desk.
pub fn save_copy(desk: &Desk) -> Result<(), BackupError> {
    let text = json::sheets_object(&desk.newest())
        .and_then(|sheets| json::object(&[("loopwright", VERSION.into()), ("sheets", sheets)]))
        .and_then(|copy| json::text(&copy, 2))
        .ok_or(BackupError::NotMade)?;
    download(&text, FILE_NAME)?;
    SAVED.set((*desk.newest()).clone());
    desk.copy_was_saved();
    Ok(())
}

/// Whether everything on the desk is in the last copy of this visit, or there is nothing.
pub fn holds(desk: &Desk) -> bool {
    SAVED.with_borrow(|saved| *saved == *desk.newest())
}

/// What came of a copy that was brought back.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Brought {
    /// How many fields changed.
    pub changed: usize,
    /// What of the file was left out.
    pub left_out: LeftOut,
}

/// Lays a file's sheets on the desk.
pub async fn bring_back(desk: &Desk, file: &File) -> Result<Brought, BackupError> {
    let text = text_of(file, MAX_BYTES).await?;
    let taking::Taken { sheets, left_out } = taking::take(read(&text)?);
    let entries = changes(&desk.newest(), &sheets);
    let changed = entries.iter().filter(|entry| !undo::is_side_sheet(&entry.sheet));
    let changed = changed.count();
    desk.write_stored(entries);
    Ok(Brought { changed, left_out })
}

/// The changes that lay a copy over the desk. What the copy remembers as "before" gives way to what is there now.
fn changes(now: &Sheets, copy: &Sheets) -> Vec<Entry> {
    let mut sheets = now.clone();
    let mut entries = Vec::new();
    let mut take = |sheets: &mut Sheets, new: Vec<Entry>| {
        sheets.apply_all(&new);
        entries.extend(new);
    };
    let sides = copy.iter().filter(|(name, _)| undo::is_side_sheet(name));
    for (name, fields) in sides.filter(|(name, _)| now.fields(name).is_empty()) {
        let new = undo::become_exactly(&sheets, name, fields);
        take(&mut sheets, new);
    }
    for (name, fields) in copy.iter().filter(|(name, _)| !undo::is_side_sheet(name)) {
        let new = undo::lay_over(&sheets, name, fields);
        take(&mut sheets, new);
    }
    entries
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
    use crate::store::{Fields, Typed};

    fn fields(text: &str) -> Fields {
        Fields::from_iter([("stitches".to_string(), Typed::plain(text))])
    }

    fn desk(rows: &[(&str, &str)]) -> Sheets {
        let mut sheets = Sheets::default();
        for (sheet, text) in rows {
            sheets.apply(&Entry::new(*sheet, "stitches", Some(Typed::plain(*text))));
        }
        sheets
    }

    fn brought(mut sheets: Sheets, copy: &[(&str, &str)]) -> Sheets {
        let entries = changes(&sheets, &desk(copy));
        sheets.apply_all(&entries);
        sheets
    }

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

    #[test]
    fn a_new_machine_gets_everything() {
        let sheets = brought(desk(&[]), &[("spacing", "132"), ("tail.before", "7")]);
        assert_eq!(sheets.fields("spacing"), fields("132"));
        assert_eq!(sheets.fields("tail.before"), fields("7"));
    }

    #[test]
    fn what_was_there_can_be_put_back_and_other_sheets_stay() {
        let here = desk(&[("spacing", "90"), ("tail", "5")]);
        let sheets = brought(here, &[("spacing", "132"), ("spacing.before", "1")]);
        assert_eq!(sheets.fields("spacing"), fields("132"));
        assert_eq!(sheets.fields("spacing.before"), fields("90"));
        assert_eq!(sheets.fields("tail"), fields("5"));
    }

    #[test]
    fn the_same_copy_again_changes_nothing() {
        let sheets = brought(desk(&[("spacing", "90")]), &[("spacing", "132")]);
        assert_eq!(brought(sheets.clone(), &[("spacing", "132")]), sheets);
    }
}
