//! What is hers alone: the text of a pattern, and what quotes its lines. It lies on the desk like anything else that is typed,
//! and goes to the store only while the field `keep` of the same sheet says so. Where she takes that back it is taken out of
//! the store and stays on the page. Pure: sheets and entries in, entries and sheets out.
//!
//! Links, addresses and embedded pages leave such fields out by the tables of the tools (`Field::unlinked`); a backup holds
//! what is stored; and a project that is handed on as a file or a link has none of it.

use super::undo::{is_side_sheet, main_sheet};
use crate::store::{Entry, Fields, Sheets, Typed};
use loopwright::terms::Keep;
use loopwright_project::Project;
use std::collections::BTreeSet;

/// The field that says where the others may stay.
pub const KEEP: &str = "keep";

/// The fields that are hers alone, on whatever sheet they stand.
const HERS: [&str; 4] = ["pattern_text", "decided", "other_sizes", "own_stitches"];

/// The most bytes that one of them holds in a copy.
pub const MOST_BYTES: usize = 1_000_000;

/// Whether a field is hers alone.
pub fn is_hers(field: &str) -> bool {
    HERS.contains(&field)
}

/// Whether a sheet says that what is hers on it is kept.
fn is_kept(fields: &Fields) -> bool {
    let said = fields.get(KEEP);
    said.is_some_and(|said| said.text == Keep::OnDevice.key())
}

fn is_kept_on(sheets: &Sheets, sheet: &str) -> bool {
    sheets.sheet(sheet).is_some_and(is_kept)
}

fn hers_on(sheets: &Sheets, sheet: &str) -> Vec<(String, Typed)> {
    let fields = sheets.sheet(sheet).into_iter().flatten();
    let hers = fields.filter(|(field, _)| is_hers(field));
    hers.map(|(field, typed)| (field.clone(), typed.clone())).collect()
}

/// Of changes to a desk those that go to the store, with what has to follow from them there: all that is hers where she says
/// that it is kept, and its end where she takes that back.
pub fn to_be_kept(seen: &Sheets, entries: &[Entry]) -> Vec<Entry> {
    if !entries.iter().any(|entry| is_hers(&entry.field) || entry.field == KEEP) {
        return entries.to_vec();
    }
    let mut then = seen.clone();
    then.apply_all(entries);
    let mut kept: Vec<Entry> = entries.iter().filter_map(|entry| as_kept(seen, &then, entry)).collect();
    let sheets: BTreeSet<&str> = entries.iter().map(|entry| entry.sheet.as_str()).collect();
    for sheet in sheets {
        let written = |field: &str| entries.iter().any(|entry| entry.sheet == sheet && entry.field == field);
        let (lying, becomes): (_, fn(Typed) -> Option<Typed>) =
            match (is_kept_on(seen, sheet), is_kept_on(&then, sheet)) {
                (false, true) => (hers_on(&then, sheet), Some),
                (true, false) => (hers_on(seen, sheet), |_| None),
                (true, true) | (false, false) => continue,
            };
        let following = lying.into_iter().filter(|(field, _)| !written(field));
        kept.extend(following.map(|(field, typed)| Entry::new(sheet, field, becomes(typed))));
    }
    kept
}

/// One change as it goes to the store, if it does.
fn as_kept(seen: &Sheets, then: &Sheets, entry: &Entry) -> Option<Entry> {
    match (
        is_hers(&entry.field),
        is_kept_on(seen, &entry.sheet),
        is_kept_on(then, &entry.sheet),
    ) {
        (false, _, _) | (true, _, true) => Some(entry.clone()),
        (true, true, false) => Some(Entry::new(&entry.sheet, &entry.field, None)),
        (true, false, false) => None,
    }
}

/// What follows on the desk where she takes back that something is kept: it counts for what was put aside of the same sheet
/// as well.
pub fn taken_back(seen: &Sheets, entries: &[Entry]) -> Vec<Entry> {
    let takes_back = |entry: &&Entry| {
        let said = entry.typed.as_ref().map(|typed| typed.text.as_str());
        let is_main = !is_side_sheet(&entry.sheet) && entry.field == KEEP;
        is_main && said == Some(Keep::OnPage.key()) && is_kept_on(seen, &entry.sheet)
    };
    let of_sheet = |entry: &Entry| {
        let aside = seen
            .iter()
            .filter(|(name, _)| **name != entry.sheet && main_sheet(name) == entry.sheet);
        let kept = aside.filter(|(_, fields)| is_kept(fields));
        let becomes = |(name, _): (&String, &Fields)| Entry::new(name, KEEP, entry.typed.clone());
        kept.map(becomes).collect::<Vec<_>>()
    };
    entries.iter().filter(takes_back).flat_map(of_sheet).collect()
}

/// Whether changes leave something of hers in the log that nobody is to find there any more: an older text, or one that is
/// taken out.
pub fn leaves_behind(seen: &Sheets, kept: &[Entry]) -> bool {
    let was_kept = |entry: &&Entry| is_kept_on(seen, &entry.sheet) && seen.text(&entry.sheet, &entry.field).is_some();
    kept.iter()
        .filter(|entry| is_hers(&entry.field))
        .any(|entry| was_kept(&entry))
}

/// Puts what is on this page only into the sheets that were read: no log has it, and another window may have written to the
/// same sheet. Where that window kept a text of its own this one goes on with what she sees here.
pub fn carry_over(seen: &Sheets, read: &mut Sheets) {
    for (sheet, fields) in seen.iter() {
        let hers = hers_on(seen, sheet);
        let is_begun = hers.iter().any(|(_, typed)| !typed.text.trim().is_empty());
        let said = read.text(sheet, KEEP).cloned();
        let is_taken_back = said.as_ref().is_some_and(|said| said.text == Keep::OnPage.key());
        let says = match is_kept(fields) {
            _ if !is_begun => continue,
            false => fields.get(KEEP).cloned(),
            // Another window took back that it is kept.
            true if is_taken_back => said,
            true => continue,
        };
        for field in HERS {
            read.apply(&Entry::new(sheet, field, fields.get(field).cloned()));
        }
        read.apply(&Entry::new(sheet, KEEP, says));
    }
}

/// Whether something of hers is on this page only.
pub fn has_unkept(sheets: &Sheets) -> bool {
    let is_begun = |(field, typed): (&String, &Typed)| is_hers(field) && !typed.text.trim().is_empty();
    let mut unkept = sheets.iter().filter(|(_, fields)| !is_kept(fields));
    unkept.any(|(_, fields)| fields.iter().any(is_begun))
}

/// The sheets without what is on this page only.
pub fn without_unkept(sheets: &Sheets) -> Sheets {
    let mut kept = sheets.clone();
    for (sheet, fields) in sheets.iter().filter(|(_, fields)| !is_kept(fields)) {
        for field in fields.keys().filter(|field| is_hers(field)) {
            kept.apply(&Entry::new(sheet, field.clone(), None));
        }
    }
    kept
}

/// A project as it is handed on to others: nothing that is hers alone goes along, kept or not.
pub fn handed_on(mut project: Project) -> Project {
    let steps = project.steps.iter_mut().map(|step| &mut step.fields);
    let drafts = project.drafts.values_mut().map(|draft| &mut draft.fields);
    for fields in steps.chain(drafts) {
        fields.retain(|field, _| !is_hers(field) && field != KEEP);
    }
    project
        .drafts
        .retain(|_, draft| !draft.fields.is_empty() || !draft.from.is_empty());
    project
}

#[cfg(test)]
mod tests;
