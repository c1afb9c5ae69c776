//! Laying something over a sheet without losing what lay there: a link that is opened, a copy that is brought back.
//! Pure: sheets in, entries out.
//!
//! What lay there goes to the sheet `<sheet>.before`, one deep. `<sheet>.link` remembers what was laid, so that a
//! second link over an untouched first one does not push the knitter's own figures out of `.before`.

use crate::store::{Entry, Fields, ProjectId, SheetId, Sheets};
use loopwright_project::Project;
use loopwright_project::stored::from_sheet;

/// The name of the sheet that holds what was there before.
pub fn before(sheet: &str) -> String {
    format!("{sheet}.before")
}

fn link(sheet: &str) -> String {
    format!("{sheet}.link")
}

/// Whether a sheet's name is one of this file's own.
pub fn is_side_sheet(sheet: &str) -> bool {
    sheet.ends_with(".before") || sheet.ends_with(".link")
}

/// Makes a sheet exactly what a link says. Nothing to do if it is that already.
pub fn lay_over(sheets: &Sheets, sheet: &str, fields: &Fields) -> Vec<Entry> {
    let now = sheets.fields(sheet);
    if now == *fields {
        return Vec::new();
    }
    let own_work = !now.is_empty() && now != sheets.fields(&link(sheet));
    let mut entries = Vec::new();
    if own_work {
        entries.extend(become_exactly(sheets, &before(sheet), &now));
    }
    entries.extend(become_exactly(sheets, &link(sheet), fields));
    entries.extend(become_exactly(sheets, sheet, fields));
    entries
}

/// Brings back what was there, and puts what is there now in its place, so that this too can be undone.
pub fn put_back(sheets: &Sheets, sheet: &str) -> Vec<Entry> {
    let now = sheets.fields(sheet);
    let then = sheets.fields(&before(sheet));
    if then.is_empty() {
        return Vec::new();
    }
    let mut entries = become_exactly(sheets, sheet, &then);
    entries.extend(become_exactly(sheets, &before(sheet), &now));
    entries
}

/// The same for a sheet and the one beside it that says from where others of its fields get their text.
pub fn lay_over_all(sheets: &Sheets, sheet: &str, fields: &Fields, from: &Fields) -> Vec<Entry> {
    let beside = from_sheet(sheet);
    let mut entries = lay_over(sheets, sheet, fields);
    let own_work = entries.iter().any(|entry| entry.sheet == before(sheet));
    if own_work {
        entries.extend(become_exactly(sheets, &before(&beside), &sheets.fields(&beside)));
    }
    entries.extend(become_exactly(sheets, &beside, from));
    entries
}

/// Brings back what was there on both.
pub fn put_back_all(sheets: &Sheets, sheet: &str) -> Vec<Entry> {
    let beside = from_sheet(sheet);
    let [now, then] = [beside.clone(), before(&beside)].map(|name| sheets.fields(&name));
    let mut entries = put_back(sheets, sheet);
    if !entries.is_empty() {
        entries.extend(become_exactly(sheets, &beside, &then));
        entries.extend(become_exactly(sheets, &before(&beside), &now));
    }
    entries
}

/// The changes that make a sheet equal to these fields.
pub fn become_exactly(sheets: &Sheets, sheet: &str, fields: &Fields) -> Vec<Entry> {
    let now = sheets.fields(sheet);
    let mut entries = Vec::new();
    for (field, _) in now.iter() {
        if !fields.contains_key(field) {
            entries.push(Entry::new(sheet, field.clone(), None));
        }
    }
    for (field, typed) in fields.iter() {
        if now.get(field) != Some(typed) {
            entries.push(Entry::new(sheet, field.clone(), Some(typed.clone())));
        }
    }
    entries
}

/// The changes that make the sheets of a project those of this one, as far as it says what lies on them.
pub fn become_project(sheets: &Sheets, id: ProjectId, project: &Project) -> Vec<Entry> {
    let stored = |name: &str| SheetId::within(id, name).to_string();
    let then = project.to_sheets();
    let now = Project::from_sheets(&sheets.of_project(id)).to_sheets();
    let gone = now.into_keys().filter(|name| !then.contains_key(name));
    let mut entries: Vec<Entry> = gone
        .flat_map(|name| become_exactly(sheets, &stored(&name), &Fields::new()))
        .collect();
    let changed = then
        .iter()
        .flat_map(|(name, fields)| become_exactly(sheets, &stored(name), fields));
    entries.extend(changed);
    entries
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::store::Typed;

    fn fields(pairs: &[(&str, &str)]) -> Fields {
        pairs
            .iter()
            .map(|(field, text)| (field.to_string(), Typed::plain(*text)))
            .collect()
    }

    fn desk_with(pairs: &[(&str, &str)]) -> Sheets {
        let mut sheets = Sheets::default();
        let entries = become_exactly(&sheets, "spacing", &fields(pairs));
        sheets.apply_all(&entries);
        sheets
    }

    fn open(sheets: &mut Sheets, pairs: &[(&str, &str)]) {
        let entries = lay_over(sheets, "spacing", &fields(pairs));
        sheets.apply_all(&entries);
    }

    #[test]
    fn a_link_replaces_the_sheet_and_put_back_brings_it_back_and_forth() {
        let own = [("stitches", "132"), ("change", "k2tog")];
        let mut sheets = desk_with(&own);
        open(&mut sheets, &[("stitches", "90")]);
        assert_eq!(sheets.fields("spacing"), fields(&[("stitches", "90")]));
        let entries = put_back(&sheets, "spacing");
        sheets.apply_all(&entries);
        assert_eq!(sheets.fields("spacing"), fields(&own));
        let entries = put_back(&sheets, "spacing");
        sheets.apply_all(&entries);
        assert_eq!(sheets.fields("spacing"), fields(&[("stitches", "90")]));
    }

    #[test]
    fn where_texts_come_from_goes_with_them() {
        let from = fields(&[("amount", "step 3 after")]);
        let mut sheets = desk_with(&[("stitches", "132")]);
        sheets.apply_all(&become_exactly(&Sheets::default(), "spacing.from", &from));
        let entries = lay_over_all(&sheets, "spacing", &fields(&[("stitches", "90")]), &Fields::new());
        sheets.apply_all(&entries);
        assert!(sheets.fields("spacing.from").is_empty());
        let entries = put_back_all(&sheets, "spacing");
        sheets.apply_all(&entries);
        assert_eq!(sheets.fields("spacing.from"), from);
        assert_eq!(sheets.fields("spacing"), fields(&[("stitches", "132")]));
    }

    #[test]
    fn an_empty_or_equal_sheet_leaves_no_before() {
        let mut sheets = Sheets::default();
        open(&mut sheets, &[("stitches", "90")]);
        assert!(put_back(&sheets, "spacing").is_empty());
        assert!(lay_over(&sheets, "spacing", &fields(&[("stitches", "90")])).is_empty());
    }

    #[test]
    fn a_second_link_does_not_push_out_the_knitters_own_figures() {
        let mut sheets = desk_with(&[("stitches", "132")]);
        open(&mut sheets, &[("stitches", "90")]);
        open(&mut sheets, &[("stitches", "80")]);
        assert_eq!(sheets.fields("spacing.before"), fields(&[("stitches", "132")]));
        // Once a link's figures are worked on, they are her own.
        sheets.apply(&Entry::new("spacing", "stitches", Some(Typed::plain("81"))));
        open(&mut sheets, &[("stitches", "70")]);
        assert_eq!(sheets.fields("spacing.before"), fields(&[("stitches", "81")]));
    }
}
