//! What is written down, and what it adds up to: one [`Entry`] for each keystroke or tap, and the [`Sheets`] they
//! make when read in order. Pure: nothing here knows where the log lives.

use super::sheet_id::{ProjectId, SheetId};
use loopwright_project::knitting::is_knitting;
use loopwright_project::{self as project, Texts};
use std::collections::BTreeMap;
use std::rc::Rc;

pub use loopwright_project::Typed;

/// The shape of an entry as this version writes it. A changed meaning needs a new number; old numbers stay readable.
pub const VERSION: u8 = 1;

/// One change of one field. `typed: None` takes the field away.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Entry {
    /// The version that wrote it.
    pub v: u8,
    /// The sheet, as [`SheetId`] names it: a tool's id, or `settings`, `known`, or a tool's `.before` and `.link` (see
    /// `desk::undo`).
    pub sheet: String,
    /// The field on that sheet.
    pub field: String,
    /// What stands there from now on.
    pub typed: Option<Typed>,
}

impl Entry {
    /// An entry of this version.
    pub fn new(sheet: impl Into<String>, field: impl Into<String>, typed: Option<Typed>) -> Self {
        Self {
            v: VERSION,
            sheet: sheet.into(),
            field: field.into(),
            typed,
        }
    }
}

/// One record of the log as it was found.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Line {
    /// An entry this version can read.
    Known(Entry),
    /// The text of a record from another version, or a damaged one. It is not read, and never thrown away.
    Foreign(String),
}

/// The fields of one sheet, by name.
pub type Fields = Texts;

/// Everything that stands on the desk: sheet, then field, then what was typed.
#[derive(Clone, Debug, Default)]
pub struct Sheets {
    sheets: BTreeMap<String, Lying>,
    /// How many changes were taken in.
    changes: u64,
}

/// A sheet as it lies.
#[derive(Clone, Debug)]
struct Lying {
    fields: Rc<Fields>,
    /// The change that wrote to it last.
    written: u64,
}

impl PartialEq for Sheets {
    /// Desks are equal if the same stands on them, in whatever order it came there.
    fn eq(&self, other: &Self) -> bool {
        self.lying().eq(other.lying())
    }
}

impl Eq for Sheets {}

impl Sheets {
    fn lying(&self) -> impl Iterator<Item = (&String, &Rc<Fields>)> {
        self.sheets.iter().map(|(name, lying)| (name, &lying.fields))
    }

    /// What stands in a field.
    pub fn text(&self, sheet: &str, field: &str) -> Option<&Typed> {
        self.sheet(sheet)?.get(field)
    }

    /// A sheet as it lies; none where nothing was typed.
    pub fn sheet(&self, sheet: &str) -> Option<&Fields> {
        self.sheets.get(sheet).map(|lying| lying.fields.as_ref())
    }

    /// All fields of a sheet; empty where nothing was typed.
    pub fn fields(&self, sheet: &str) -> Fields {
        self.sheet(sheet).cloned().unwrap_or_default()
    }

    /// Every sheet that has a field, by name.
    pub fn iter(&self) -> impl Iterator<Item = (&String, &Fields)> {
        self.lying().map(|(name, fields)| (name, fields.as_ref()))
    }

    /// The sheets of one project, by their names in it. How far she is in her knitting is no part of it, and may be long.
    pub fn of_project(&self, project: ProjectId) -> project::Sheets {
        let sheets = self.iter().filter_map(|(stored, fields)| {
            let id = SheetId::parse(stored);
            let is_part = id.project == Some(project) && !is_knitting(&id.name);
            is_part.then(|| (id.name, fields.clone()))
        });
        sheets.collect()
    }

    /// The names of all sheets of a project as they are stored, how far she is in her knitting among them.
    pub fn names_of_project(&self, project: ProjectId) -> Vec<String> {
        let names = self.sheets.keys();
        let is_its = |stored: &&String| SheetId::parse(stored).project == Some(project);
        names.filter(is_its).cloned().collect()
    }

    /// Takes one change in. A sheet without fields is no sheet, so that equal desks compare equal.
    ///
    /// It takes no longer however many sheets there are: a log that somebody filled has to open as well.
    pub fn apply(&mut self, entry: &Entry) {
        self.changes += 1;
        let Some(lying) = self.sheets.get_mut(&entry.sheet) else {
            return self.begin(entry);
        };
        lying.written = self.changes;
        let fields = Rc::make_mut(&mut lying.fields);
        match &entry.typed {
            Some(typed) => fields.insert(entry.field.clone(), typed.clone()),
            None => fields.remove(&entry.field),
        };
        if fields.is_empty() {
            self.sheets.remove(&entry.sheet);
        }
    }

    /// The first field of a sheet.
    fn begin(&mut self, entry: &Entry) {
        if let Some(typed) = &entry.typed {
            let fields = Rc::new(Fields::from([(entry.field.clone(), typed.clone())]));
            let written = self.changes;
            self.sheets.insert(entry.sheet.clone(), Lying { fields, written });
        }
    }

    /// Every sheet that has a field, the one that was written to last first.
    pub fn last_written(&self) -> impl Iterator<Item = &str> {
        let mut names: Vec<(u64, &str)> = self
            .sheets
            .iter()
            .map(|(name, lying)| (lying.written, &**name))
            .collect();
        names.sort_unstable();
        names.into_iter().rev().map(|(_, name)| name)
    }

    /// The changes that make all of this out of nothing, in the order in which its sheets were last written to.
    pub fn entries(&self) -> Vec<Entry> {
        let mut names: Vec<&str> = self.last_written().collect();
        names.reverse();
        let of_sheet = |sheet: &str| {
            let fields = self.sheet(sheet).into_iter().flatten();
            let entry = |(field, typed): (&String, &Typed)| Entry::new(sheet, field, Some(typed.clone()));
            fields.map(entry).collect::<Vec<Entry>>()
        };
        names.into_iter().flat_map(of_sheet).collect()
    }

    /// Takes many changes in, in order.
    pub fn apply_all<'a>(&mut self, entries: impl IntoIterator<Item = &'a Entry>) {
        entries.into_iter().for_each(|entry| self.apply(entry));
    }
}

/// What a log adds up to. Lines of other versions are passed over.
pub fn fold(log: &[Line]) -> Sheets {
    let mut sheets = Sheets::default();
    sheets.apply_all(log.iter().filter_map(|line| match line {
        Line::Known(entry) => Some(entry),
        Line::Foreign(_) => None,
    }));
    sheets
}

/// The shortest log that folds to the same sheets: the last line of each field, in its old place.
pub fn compact(log: Vec<Line>) -> Vec<Line> {
    let needed = needed(&log);
    let lines = log.into_iter().zip(needed);
    lines
        .filter(|(_, is_needed)| *is_needed)
        .map(|(line, _)| line)
        .collect()
}

/// Which lines of a log are needed, line by line: those of the shortest one.
///
/// Foreign lines stay where they are, because the version that reads them needs their order among ours. For the same
/// reason a removal is dropped only if no foreign line stands before it that might have set the field.
pub fn needed(log: &[Line]) -> Vec<bool> {
    let first_foreign = log.iter().position(|line| matches!(line, Line::Foreign(_)));
    let mut seen = Sheets::default();
    let is_needed = |(place, line): (usize, &Line)| match line {
        Line::Foreign(_) => true,
        Line::Known(entry) => {
            let last = is_first_sight(&mut seen, entry);
            let may_drop = first_foreign.is_none_or(|foreign| place < foreign);
            last && (entry.typed.is_some() || !may_drop)
        }
    };
    let mut needed: Vec<bool> = log.iter().enumerate().rev().map(is_needed).collect();
    needed.reverse();
    needed
}

/// How many lines of a log no version of this page wrote that this one knows.
pub fn foreign_lines(log: &[Line]) -> usize {
    log.iter().filter(|line| matches!(line, Line::Foreign(_))).count()
}

/// Of entries that could not be kept yet, those that still matter: an old one that was too much for the storage must
/// not stand in the way of the shorter one that followed it.
pub fn last_words(mut entries: Vec<Entry>) -> Vec<Entry> {
    let mut seen = Sheets::default();
    entries.reverse();
    entries.retain(|entry| is_first_sight(&mut seen, entry));
    entries.reverse();
    entries
}

fn is_first_sight(seen: &mut Sheets, entry: &Entry) -> bool {
    let first = seen.text(&entry.sheet, &entry.field).is_none();
    if first {
        let mark = Some(Typed::plain(""));
        seen.apply(&Entry::new(&entry.sheet, &entry.field, mark));
    }
    first
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn set(sheet: &str, field: &str, text: &str) -> Line {
        Line::Known(Entry::new(sheet, field, Some(Typed::plain(text))))
    }

    fn gone(sheet: &str, field: &str) -> Line {
        Line::Known(Entry::new(sheet, field, None))
    }

    #[test]
    fn the_last_word_stands() {
        let log = [
            set("spacing", "stitches", "1"),
            set("spacing", "stitches", "13"),
            set("spacing", "change", "k2tog"),
            gone("spacing", "change"),
        ];
        let sheets = fold(&log);
        assert_eq!(sheets.text("spacing", "stitches"), Some(&Typed::plain("13")));
        assert_eq!(sheets.text("spacing", "change"), None);
        assert_eq!(compact(log.to_vec()), vec![log[1].clone()]);
    }

    #[test]
    fn an_emptied_desk_is_a_new_desk() {
        assert_eq!(
            fold(&[set("spacing", "a", "1"), gone("spacing", "a")]),
            Sheets::default()
        );
    }

    #[test]
    fn the_sheet_that_was_written_to_last_comes_first() {
        let log = [
            set("tail", "stitches", "120"),
            set("spacing", "stitches", "132"),
            set("gauge", "stitches", "21"),
            set("tail", "stitches", "121"),
            gone("gauge", "stitches"),
        ];
        let last = |log: &[Line]| fold(log).last_written().map(str::to_owned).collect::<Vec<_>>();
        assert_eq!(last(&log), ["tail", "spacing"]);
        assert_eq!(last(&compact(log.to_vec())), ["tail", "spacing"]);
    }

    #[test]
    fn another_version_is_passed_over_and_kept_in_its_place() {
        let foreign = Line::Foreign(r#"{"v":2,"sheet":"spacing"}"#.into());
        let log = vec![
            set("spacing", "a", "1"),
            foreign.clone(),
            gone("spacing", "a"),
            set("spacing", "b", "2"),
        ];
        let short = compact(log.clone());
        assert_eq!(short, vec![foreign, gone("spacing", "a"), set("spacing", "b", "2")]);
        assert_eq!(fold(&short), fold(&log));
    }

    fn any_line() -> impl Strategy<Value = Line> {
        let typed = proptest::option::of((".{0,4}", proptest::option::of("(cm|in)")))
            .prop_map(|typed| typed.map(|(text, unit)| Typed { text, unit }));
        prop_oneof![
            6 => ("[ab]", "[xyz]", typed).prop_map(|(s, f, t)| Line::Known(Entry::new(s, f, t))),
            1 => ".{0,6}".prop_map(Line::Foreign),
        ]
    }

    fn foreign(log: &[Line]) -> Vec<&Line> {
        log.iter().filter(|line| matches!(line, Line::Foreign(_))).collect()
    }

    proptest! {
        #[test]
        fn compacting_changes_nothing_that_can_be_read(log in proptest::collection::vec(any_line(), 0..40)) {
            let short = compact(log.clone());
            prop_assert!(short.len() <= log.len());
            prop_assert_eq!(fold(&short), fold(&log));
            prop_assert_eq!(foreign(&short), foreign(&log));
            prop_assert_eq!(compact(short.clone()), short);
        }

        #[test]
        fn the_last_words_say_all(log in proptest::collection::vec(any_line(), 0..40)) {
            let entries: Vec<Entry> = log.iter().filter_map(|line| match line {
                Line::Known(entry) => Some(entry.clone()),
                Line::Foreign(_) => None,
            }).collect();
            let (mut all, mut last) = (fold(&[set("a", "x", "0")]), fold(&[set("a", "x", "0")]));
            all.apply_all(&entries);
            last.apply_all(&last_words(entries));
            prop_assert_eq!(all, last);
        }
    }
}
