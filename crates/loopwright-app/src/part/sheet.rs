//! Where the taps and keystrokes of one tool are written: its sheet on the desk.

use crate::desk::Desk;
use crate::store::{Entry, Typed};
use loopwright::problem::FieldPath;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

/// A tool's sheet on the desk.
#[derive(Clone, PartialEq)]
pub struct Sheet {
    /// The desk it lies on.
    pub desk: Desk,
    /// The tool's id.
    pub id: &'static str,
}

impl Sheet {
    /// The sheet of a tool.
    pub fn new(desk: &Desk, id: &'static str) -> Self {
        Self { desk: desk.clone(), id }
    }

    /// A tap that sets these fields.
    pub fn setting(&self, fields: Vec<(FieldPath, String)>) -> Callback<MouseEvent> {
        let sheet = self.clone();
        Callback::from(move |_| {
            let entries = fields
                .iter()
                .map(|(field, text)| Entry::new(sheet.id, field.stored(), Some(Typed::plain(text))));
            sheet.desk.write_many(entries.collect());
        })
    }

    /// A tap that sets these fields, each with its unit.
    pub fn putting(&self, fields: Vec<(FieldPath, Typed)>) -> Callback<MouseEvent> {
        let sheet = self.clone();
        Callback::from(move |_| {
            let entry = |(field, typed): &(FieldPath, Typed)| Entry::new(sheet.id, field.stored(), Some(typed.clone()));
            sheet.desk.write_many(fields.iter().map(entry).collect());
        })
    }

    /// The id of a field's element.
    pub(super) fn element(&self, field: &str) -> String {
        format!("{}-{field}", self.id)
    }

    /// Keeps what is chosen.
    pub(super) fn choosing(&self, field: &str) -> Callback<Event> {
        let (sheet, field) = (self.clone(), field.to_owned());
        Callback::from(move |event: Event| {
            let key = event.target_unchecked_into::<HtmlSelectElement>().value();
            sheet.desk.write(sheet.id, &field, Some(Typed::plain(key)));
        })
    }
}
