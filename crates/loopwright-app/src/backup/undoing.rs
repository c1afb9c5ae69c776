//! Undoing what a copy changed, as long as the page is open: the last copy first, then the one before. A field that she has
//! changed since stays as she has it.

use super::Brought;
use crate::desk::Desk;
use crate::desk::undo::become_desk;
use crate::store::{Entry, Sheets};
use std::cell::RefCell;

/// A field as it was before a copy, and as the copy made it.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Change {
    was: Entry,
    is: Entry,
}

thread_local! {
    /// What the copies of this visit changed, the last one last.
    static COPIES: RefCell<Vec<Vec<Change>>> = RefCell::default();
}

/// What undoing came to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Undone {
    /// The fields that are as they were.
    pub put_back: u32,
    /// Those that she has changed since, which stay.
    pub stay: u32,
}

/// Remembers what a copy changes.
pub fn note(now: &Sheets, then: &Sheets) {
    let changes = changes(now, then);
    if !changes.is_empty() {
        COPIES.with_borrow_mut(|copies| copies.push(changes));
    }
}

fn changes(now: &Sheets, then: &Sheets) -> Vec<Change> {
    let change = |is: Entry| {
        let was = now.text(&is.sheet, &is.field).cloned();
        let was = Entry::new(&is.sheet, &is.field, was);
        Change { was, is }
    };
    become_desk(now, then).into_iter().map(change).collect()
}

/// Whether the last copy changed something that is still so.
pub fn can_undo(desk: &Desk) -> bool {
    let sheets = desk.newest();
    COPIES.with_borrow(|copies| {
        copies
            .last()
            .is_some_and(|last| last.iter().any(|change| is_still_so(&sheets, change)))
    })
}

/// Puts back what the last copy changed.
pub fn undo(desk: &Desk) -> Undone {
    let last = COPIES.with_borrow_mut(Vec::pop).unwrap_or_default();
    let (entries, undone) = undoing(&desk.newest(), last);
    desk.write_stored(entries);
    undone
}

fn undoing(sheets: &Sheets, changes: Vec<Change>) -> (Vec<Entry>, Undone) {
    let (still, since): (Vec<Change>, Vec<Change>) =
        changes.into_iter().partition(|change| is_still_so(sheets, change));
    let entries: Vec<Entry> = still.into_iter().map(|change| change.was).collect();
    let changed: Vec<Entry> = since.into_iter().map(|change| change.was).collect();
    let undone = Undone {
        put_back: Brought::of(&entries).all(),
        stay: Brought::of(&changed).all(),
    };
    (entries, undone)
}

fn is_still_so(sheets: &Sheets, change: &Change) -> bool {
    sheets.text(&change.is.sheet, &change.is.field) == change.is.typed.as_ref()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::store::Typed;

    fn desk(rows: &[(&str, &str)]) -> Sheets {
        let mut sheets = Sheets::default();
        for (field, text) in rows {
            sheets.apply(&Entry::new("known", *field, Some(Typed::plain(*text))));
        }
        sheets
    }

    #[test]
    fn all_that_a_copy_changed_is_put_back_but_for_what_she_changed_since() {
        let before = desk(&[("bust", "91"), ("gauge", "22"), ("name", "Grey")]);
        let copied = desk(&[("bust", "97"), ("hip", "100"), ("name", "Blue")]);
        let changes = changes(&before, &copied);
        let (entries, undone) = undoing(&copied, changes.clone());
        let mut undone_at_once = copied.clone();
        undone_at_once.apply_all(&entries);
        assert_eq!(undone_at_once, before);
        assert_eq!((undone.put_back, undone.stay), (4, 0));
        let mut since = copied;
        since.apply(&Entry::new("known", "name", Some(Typed::plain("Green"))));
        let (entries, undone) = undoing(&since, changes);
        since.apply_all(&entries);
        assert_eq!(since, desk(&[("bust", "91"), ("gauge", "22"), ("name", "Green")]));
        assert_eq!((undone.put_back, undone.stay), (3, 1));
    }
}
