//! Beside a field: that the project has something for it which cannot be read, and the way there.

use crate::form::kept::SHEET;
use crate::form::{Field, written_unit};
use crate::part::View;
use crate::part::plain::{link, list, text, text_element};
use crate::route::{self, Route};
use crate::words::known as words;
use yew::prelude::*;

/// The sentence, and the way to the project.
pub fn beside(view: &View, field: &'static Field) -> Option<Html> {
    let sentence = unread_sentence(view, field)?;
    let to_project = link(route::print(&Route::Project), vec![text(words::TO_PROJECT.into())]);
    Some(list(vec![text_element("span", "own", sentence), to_project]))
}

/// The sentence alone; inside another page there is no project.
pub fn unread_sentence(view: &View, field: &'static Field) -> Option<String> {
    if view.sheet.frame.is_some() {
        return None;
    }
    let (kept, typed) = view.fields.unread_fact(field, &view.sheet.desk.fields(SHEET))?;
    let unit = written_unit(&typed).filter(|_| field.strange_unit(&typed).is_some());
    let stands: Vec<&str> = [typed.text.trim()].into_iter().chain(unit).collect();
    Some(words::unread(kept.label(), &stands.join(" ")))
}
