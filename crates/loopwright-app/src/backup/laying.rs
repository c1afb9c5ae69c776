//! A copy laid over what is there. Pure: two desks in, one out, and the changes counted as what they are.
//!
//! A sheet of the copy becomes exactly what it is there; one that the copy does not have stays. What the copy remembers as lying
//! there before gives way to what is remembered here. A project that the copy does not know stays in the list.

use crate::desk::undo::{Laid, become_exactly, has_a_page, is_side_sheet, lay_over, main_sheet, pile};
use crate::store::{Entry, Fields, PROJECTS, SheetId, Sheets};
use loopwright_project::stored::{UNDO, WAS, from_sheet};
use std::collections::{BTreeMap, BTreeSet};

/// What a copy changed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Brought {
    /// The fields that hold what the copy says, and held something else or nothing.
    pub set: u32,
    /// The fields that held something, and nothing in the copy.
    pub taken_away: u32,
}

impl Brought {
    /// What these changes come to for her: a field and where it gets its text from are one, and what is only remembered beside
    /// them is none.
    pub fn of(entries: &[Entry]) -> Self {
        let mut fields: BTreeMap<(&str, &str), bool> = BTreeMap::new();
        for entry in entries.iter().filter(|entry| !is_remembered(&entry.sheet)) {
            let sheet = entry.sheet.strip_suffix(".from").unwrap_or(&entry.sheet);
            let is_set = fields.entry((sheet, &entry.field)).or_default();
            *is_set |= entry.typed.is_some();
        }
        let count = |wanted: bool| fields.values().filter(|is_set| **is_set == wanted).count();
        let [set, taken_away] = [true, false].map(|wanted| u32::try_from(count(wanted)).unwrap_or(u32::MAX));
        Self { set, taken_away }
    }
}

impl Brought {
    /// All fields that changed.
    pub const fn all(self) -> u32 {
        self.set.saturating_add(self.taken_away)
    }
}

fn is_remembered(sheet: &str) -> bool {
    is_side_sheet(sheet) || [UNDO, WAS].contains(&&*SheetId::parse(sheet).name)
}

/// The desk with a copy laid over it.
pub fn laid_over(now: &Sheets, copy: &Sheets) -> Sheets {
    let mut sheets = now.clone();
    let sides = copy.iter().filter(|(name, _)| is_side_sheet(name));
    for (name, fields) in sides.filter(|(name, _)| pile(now, main_sheet(name)).is_empty()) {
        become_sheet(&mut sheets, name, fields);
    }
    for name in mains(copy) {
        lay_main(&mut sheets, copy, name);
    }
    forget_what_cannot_be_undone(now, copy, &mut sheets);
    sheets
}

/// The sheets of a copy, each once: where a field gets its text from goes with its sheet.
fn mains(copy: &Sheets) -> BTreeSet<&str> {
    let names = copy.iter().map(|(name, _)| name.as_str());
    let names = names.filter(|name| !is_side_sheet(name));
    names.map(|name| name.strip_suffix(".from").unwrap_or(name)).collect()
}

fn lay_main(sheets: &mut Sheets, copy: &Sheets, name: &str) {
    let laid = Laid {
        fields: copy.fields(name),
        from: copy.fields(&from_sheet(name)),
    };
    if name == PROJECTS {
        let mut list = sheets.fields(name);
        list.extend(laid.fields);
        become_sheet(sheets, name, &list);
    } else if has_a_page(name) {
        let entries = lay_over(sheets, name, &laid);
        sheets.apply_all(&entries);
    } else {
        become_sheet(sheets, name, &laid.fields);
        become_sheet(sheets, &from_sheet(name), &laid.from);
    }
}

fn become_sheet(sheets: &mut Sheets, name: &str, fields: &Fields) {
    let entries = become_exactly(sheets, name, fields);
    sheets.apply_all(&entries);
}

/// The last change of a project's steps cannot be undone any more where a copy has changed the project under it.
fn forget_what_cannot_be_undone(now: &Sheets, copy: &Sheets, sheets: &mut Sheets) {
    let changed = mains(copy)
        .into_iter()
        .filter(|name| now.sheet(name) != copy.sheet(name));
    let projects: BTreeSet<_> = changed.filter_map(|name| SheetId::parse(name).project).collect();
    for project in projects {
        let undo = SheetId::within(project, UNDO).to_string();
        if copy.sheet(&undo).is_none() {
            become_sheet(sheets, &undo, &Fields::new());
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::desk::undo::{become_desk, put_back};
    use crate::store::Typed;

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

    fn brought(sheets: &Sheets, copy: &[(&str, &str)]) -> Sheets {
        laid_over(sheets, &desk(copy))
    }

    fn put_back_on(sheets: &mut Sheets, sheet: &str) -> Fields {
        let entries = put_back(sheets, sheet);
        sheets.apply_all(&entries);
        sheets.fields(sheet)
    }

    #[test]
    fn a_new_machine_gets_everything() {
        let sheets = brought(
            &desk(&[]),
            &[("spacing", "132"), ("tail.before", "7"), ("tail.before.2", "8")],
        );
        assert_eq!(sheets.fields("spacing"), fields("132"));
        assert_eq!(sheets.fields("tail.before"), fields("7"));
        assert_eq!(sheets.fields("tail.before.2"), fields("8"));
    }

    #[test]
    fn what_was_there_can_be_put_back_and_other_sheets_stay() {
        let here = desk(&[("spacing", "90"), ("tail", "5")]);
        let mut sheets = brought(&here, &[("spacing", "132"), ("spacing.before", "1")]);
        assert_eq!(sheets.fields("spacing"), fields("132"));
        assert_eq!(sheets.fields("tail"), fields("5"));
        assert_eq!(put_back_on(&mut sheets, "spacing"), fields("90"));
    }

    #[test]
    fn what_was_there_can_be_put_back_after_a_second_copy_over_a_first() {
        let mut sheets = desk(&[("spacing", "90")]);
        for copy in ["132", "96"] {
            sheets = brought(&sheets, &[("spacing", copy)]);
        }
        assert_eq!(put_back_on(&mut sheets, "spacing"), fields("132"));
        assert_eq!(put_back_on(&mut sheets, "spacing"), fields("90"));
    }

    #[test]
    fn the_same_copy_again_changes_nothing() {
        let sheets = brought(&desk(&[("spacing", "90")]), &[("spacing", "132")]);
        assert_eq!(brought(&sheets, &[("spacing", "132")]), sheets);
    }

    #[test]
    fn a_project_that_the_copy_does_not_know_stays_in_the_list() {
        let mut here = desk(&[("p2/known", "90"), ("p3/known", "80")]);
        let mut copy = desk(&[("p2/known", "91")]);
        let stands = |number: &str| Entry::new(PROJECTS, number, Some(Typed::plain("here")));
        here.apply_all(&[stands("2"), stands("3")]);
        copy.apply(&stands("2"));
        let sheets = laid_over(&here, &copy);
        assert!(sheets.text(PROJECTS, "3").is_some());
        assert_eq!(sheets.fields("p3/known"), fields("80"));
    }

    #[test]
    fn what_is_taken_away_is_not_counted_as_brought_back() {
        let mut here = desk(&[("spacing", "90"), ("tail", "80")]);
        here.apply(&Entry::new("spacing", "amount", Some(Typed::plain("9"))));
        let count = |copy: &[(&str, &str)]| Brought::of(&become_desk(&here, &brought(&here, copy)));
        let expected = |set, taken_away| Brought { set, taken_away };
        assert_eq!(count(&[("spacing", "132")]), expected(1, 1));
        assert_eq!(count(&[("spacing", "90")]), expected(0, 1));
        assert_eq!(count(&[("tail", "81"), ("yoke", "5")]), expected(2, 0));
        assert_eq!(count(&[("tail", "80")]), expected(0, 0));
    }

    #[test]
    fn a_change_of_steps_cannot_be_undone_over_a_copy() {
        let here = desk(&[("step.3", "90"), ("undo", "x"), ("p2/undo", "y")]);
        let sheets = brought(&here, &[("step.3", "80")]);
        assert_eq!(sheets.sheet("undo"), None);
        assert_eq!(sheets.fields("p2/undo"), fields("y"), "another project");
        assert_eq!(brought(&here, &[("step.3", "90")]), here, "nothing has changed");
    }
}
