//! Beside a field: how its text was read, where the text alone does not show that, and what else may be meant, a tap away.

use super::plain::{button, text_element};
use super::{Sheet, View};
use crate::form::doubt::{Beside, Tap, beside};
use crate::form::{Field, pair};
use crate::store::{Entry, Typed};
use yew::prelude::*;

/// All that is said and offered about how a field was read, piece by piece.
pub(super) fn doubted(view: &View, field: &'static Field) -> Vec<Html> {
    let all = beside(&view.fields, field).into_iter();
    all.flat_map(|one| drawn(&view.sheet, one)).collect()
}

fn drawn(sheet: &Sheet, Beside { sentence, mark, tap }: Beside) -> Vec<Html> {
    let mut content = Vec::new();
    if !sentence.is_empty() {
        content.push(text_element("span", "", sentence));
    }
    if !mark.is_empty() {
        content.push(text_element("small", "practice", mark));
    }
    let tap = tap.filter(|tap| !sheet.locks(tap.field));
    content.extend(tap.map(|tap| tapped(sheet, tap)));
    content
}

fn tapped(sheet: &Sheet, tap: Tap) -> Html {
    let Tap {
        label,
        field,
        typed,
        chosen,
    } = tap;
    let sheet = sheet.clone();
    let entries: Vec<Entry> = [Entry::new(sheet.id, field.stored(), typed)]
        .into_iter()
        .chain(chosen)
        .collect();
    let put = move |_| sheet.desk.write_many(entries.clone());
    button(label, Callback::from(put))
}

/// Writes what is typed into a field, and into the field beside it what the text names for that.
pub(super) fn typing(view: &View, field: &'static Field) -> impl Fn(Typed) + 'static {
    let sheet = view.sheet.clone();
    let here = view.fields.path_of(field).stored();
    let other = pair::other_field(&view.fields, field).map(|other| view.fields.path_of(other));
    let other = other.filter(|other| !sheet.locks(*other)).map(|other| other.stored());
    move |typed| {
        let standing = |key: &str| sheet.desk.text(sheet.id, key);
        let mut entries = Vec::new();
        if let Some(other) = &other {
            let filled = pair::following(field, standing(&here).as_ref(), &typed, standing(other).as_ref());
            entries.extend(filled.map(|filled| Entry::new(sheet.id, other.clone(), filled)));
        }
        entries.push(Entry::new(sheet.id, here.clone(), Some(typed)));
        sheet.desk.write_many(entries);
    }
}
