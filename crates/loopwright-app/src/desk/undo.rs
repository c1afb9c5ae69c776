//! Laying something over a sheet without losing what lay there: a link that is opened, a copy that is brought back.
//! Pure: sheets in, entries out.
//!
//! What lay there goes to the sheet `<sheet>.before`, one deep. `<sheet>.link` remembers what was laid, so that a
//! second link over an untouched first one does not push the knitter's own figures out of `.before`.

use crate::store::{Entry, Fields, Sheets};

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
