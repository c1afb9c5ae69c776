//! Undoing the last change of the steps: what each field was that the change set, kept on a sheet of the project, so that it
//! can be undone after a reload as well. One deep.

use crate::desk::undo::become_exactly;
use crate::store::{Entry, Fields, ProjectId, SheetId, Sheets, Typed};
use loopwright_project::stored::{UNDO, kept_was, read_was};

/// The field that says in words what is undone. No name of a sheet is empty, so no change is kept under it.
const WHAT: &str = " ";

/// A change of a project's sheets, and what it can be undone with.
pub fn undoable(sheets: &Sheets, project: ProjectId, what: &str, mut entries: Vec<Entry>) -> Vec<Entry> {
    entries.retain(|entry| sheets.text(&entry.sheet, &entry.field) != entry.typed.as_ref());
    let mut kept = Fields::from([(WHAT.to_owned(), Typed::plain(what))]);
    for entry in &entries {
        let sheet = SheetId::parse(&entry.sheet).name;
        let was = kept_was(sheets.text(&entry.sheet, &entry.field));
        kept.insert([&sheet, " ", &entry.field].concat(), was);
    }
    entries.extend(become_exactly(sheets, &undo_sheet(project), &kept));
    entries
}

/// What can be undone, in words, if anything can.
pub fn what(sheets: &Sheets, project: ProjectId) -> Option<String> {
    let what = sheets.text(&undo_sheet(project), WHAT)?;
    Some(what.text.clone())
}

/// The changes that undo the last one.
pub fn undo(sheets: &Sheets, project: ProjectId) -> Vec<Entry> {
    let undo = undo_sheet(project);
    let mut entries = Vec::new();
    for (place, typed) in sheets.fields(&undo) {
        if let Some((sheet, field)) = place.split_once(' ').filter(|(sheet, _)| !sheet.is_empty()) {
            let stored = SheetId::within(project, sheet).to_string();
            entries.push(Entry::new(stored, field, read_was(&typed)));
        }
    }
    entries.extend(become_exactly(sheets, &undo, &Fields::new()));
    entries
}

fn undo_sheet(project: ProjectId) -> String {
    SheetId::within(project, UNDO).to_string()
}
