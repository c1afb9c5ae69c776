//! One tool's fields as a view reads and writes them: text in, typed values out, by the maths crate's own readers.

use crate::desk::Desk;
use crate::store::{Entry, Typed};
use loopwright::bounds::Bounds;
use loopwright::problem::{FieldPath, Kind};
use loopwright::units::count;
use web_sys::{HtmlInputElement, HtmlSelectElement};
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

    /// The text of a field, or what it starts with.
    pub fn text(&self, field: &str, start: &str) -> String {
        self.desk
            .text(self.id, field)
            .map_or_else(|| start.into(), |typed| typed.text)
    }

    /// The value that a choice stands on; the first of the table before anything is chosen.
    pub fn one_of<T: Copy, const N: usize>(&self, field: &str, table: &[(&str, T); N]) -> T {
        let text = self.text(field, "");
        let chosen = table.iter().find(|(key, _)| *key == text);
        chosen.map_or(table[0].1, |(_, value)| *value)
    }

    /// A whole number within bounds. A field that was emptied counts as what it starts with.
    ///
    /// # Errors
    /// Why the text is none.
    pub fn count(&self, field: &str, bounds: Bounds<u32>, start: &str) -> Result<u32, Kind> {
        let text = self.text(field, start);
        let text = if text.trim().is_empty() { start } else { &text };
        count::read(text, bounds)
            .map(|read| read.value)
            .map_err(Kind::Unreadable)
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

    /// A tap that sets these fields.
    pub fn sets(&self, fields: Vec<(&'static str, String)>) -> Callback<MouseEvent> {
        let sheet = self.clone();
        Callback::from(move |_| {
            let entries = fields
                .iter()
                .map(|(field, text)| Entry::new(sheet.id, *field, Some(Typed::plain(text))));
            sheet.desk.write_many(entries.collect());
        })
    }

    /// The id of a field's element.
    pub(super) fn element(&self, field: &str) -> String {
        format!("{}-{field}", self.id)
    }

    /// Keeps what is typed into an input, as typed.
    pub(super) fn typing(&self, field: &str, unit: Option<&'static str>) -> Callback<InputEvent> {
        let (sheet, field) = (self.clone(), field.to_owned());
        Callback::from(move |event: InputEvent| {
            let text = event.target_unchecked_into::<HtmlInputElement>().value();
            let typed = Typed {
                text,
                unit: unit.map(Into::into),
            };
            sheet.desk.write(sheet.id, &field, Some(typed));
        })
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
