//! Where the taps and keystrokes of one tool are written: its sheet on the desk. Inside another page some of its fields may
//! be locked; then nothing here writes to them, and no tap that would is drawn.

use super::plain::button;
use crate::desk::Desk;
use crate::frame::Options;
use crate::store::{Entry, Fields, Typed};
use loopwright::problem::FieldPath;
use std::rc::Rc;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

/// A tool's sheet on the desk.
#[derive(Clone, PartialEq)]
pub struct Sheet {
    /// The desk it lies on.
    pub desk: Desk,
    /// The tool's id.
    pub id: &'static str,
    /// How it is shown inside another page, if it is.
    pub frame: Option<Rc<Frame>>,
}

/// A tool inside another page.
#[derive(Debug, PartialEq)]
pub struct Frame {
    /// How it is shown.
    pub options: Options,
    /// What that page filled in.
    pub preset: Fields,
}

impl Sheet {
    /// The sheet of a tool.
    pub fn new(desk: &Desk, id: &'static str, frame: Option<Rc<Frame>>) -> Self {
        let desk = desk.clone();
        Self { desk, id, frame }
    }

    /// Whether a field is shown and not to be changed.
    pub fn locks(&self, field: FieldPath) -> bool {
        self.locks_any(|key| key == field.stored())
    }

    /// Whether some field is.
    pub fn locks_any(&self, is_meant: impl Fn(&str) -> bool) -> bool {
        let frame = self.frame.as_deref();
        frame.is_some_and(|frame| frame.options.locked.iter().any(|key| is_meant(key)))
    }

    /// A button that sets these fields.
    pub fn setting(&self, label: String, fields: Vec<(FieldPath, String)>) -> Html {
        let fields = fields.into_iter().map(|(field, text)| (field, Typed::plain(text)));
        self.putting(label, fields.collect())
    }

    /// A button that sets these fields, each with its unit; none where one of them is locked.
    pub fn putting(&self, label: String, fields: Vec<(FieldPath, Typed)>) -> Html {
        if fields
            .iter()
            .any(|(field, _)| self.locks(*field) || self.locks_member(*field))
        {
            return Html::default();
        }
        let sheet = self.clone();
        let put = Callback::from(move |_| {
            let entry = |(field, typed): &(FieldPath, Typed)| Entry::new(sheet.id, field.stored(), Some(typed.clone()));
            sheet.desk.write_many(fields.iter().map(entry).collect());
        });
        button(label, put)
    }

    /// Whether any field of the same member of a repeated group is locked: a tap on one may take out all of them.
    fn locks_member(&self, field: FieldPath) -> bool {
        let stored = field.stored();
        let member = stored.strip_suffix(field.key()).filter(|member| !member.is_empty());
        member.is_some_and(|member| self.locks_any(|key| key.starts_with(member)))
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
