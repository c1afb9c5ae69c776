//! What is set in a fold, said beside it while it is closed: a value that counts is seen, and one tap clears it.

use super::View;
use super::plain::{button, element, text};
use crate::form::Field;
use crate::store::Entry;
use crate::words::page as words;
use yew::prelude::*;

/// What is set in these fields; nothing where each holds what it starts with. With it stands what has to change before
/// there is an answer, if that is one of them, set or not: beside the field itself the fold hides it.
pub fn set_in(view: &View, fields: &[&'static Field], advice: Option<String>) -> Html {
    let set = fields.iter().filter_map(|field| {
        let value = view.fields.set(field)?;
        Some(words::value(field.label_in(&view.fields), &value))
    });
    let set: Vec<String> = set.collect();
    if set.is_empty() && advice.is_none() {
        return Html::default();
    }
    let mut content = Vec::new();
    if !set.is_empty() {
        content.push(text(words::set(&set).into()));
    }
    content.extend(advice.map(|advice| element("strong", "", vec![text(advice.into())])));
    let is_locked = |field: &&'static Field| view.sheet.locks(view.fields.path_of(field));
    if !set.is_empty() && !fields.iter().any(is_locked) {
        content.push(button(words::CLEAR_THESE.into(), clearing(view, fields)));
    }
    element("div", "set", content)
}

/// A tap that takes away what was typed into these fields.
fn clearing(view: &View, fields: &[&'static Field]) -> Callback<MouseEvent> {
    let sheet = view.sheet.clone();
    let keys: Vec<String> = fields.iter().map(|field| view.fields.path_of(field).stored()).collect();
    Callback::from(move |_| {
        let entries = keys.iter().map(|key| Entry::new(sheet.id, key.clone(), None));
        sheet.desk.write_many(entries.collect());
    })
}
