//! A field for a number, as typed. The text is never rewritten; what is wrong with it stands right below.

use super::Sheet;
use super::advice::{Advice, advice_id, advised};
use super::plain::{self, list, text};
use yew::prelude::*;

/// What a field is called.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Label<'a> {
    /// Beside the field.
    Shown(&'a str),
    /// The sentence around the field says it; the label is for those who cannot see that.
    Unseen(&'a str),
}

impl Label<'_> {
    /// The label of the element with this id.
    pub(crate) fn draw(self, element: &str) -> Html {
        let (label, shown) = match self {
            Self::Shown(label) => (label, 1),
            Self::Unseen(label) => (label, 2),
        };
        let attributes = [("for", element), ("class", "unseen")];
        plain::element("label", &attributes[..shown], vec![text(label.to_owned().into())])
    }
}

/// A field for a whole number.
pub fn field(sheet: &Sheet, field: &'static str, label: Label, start: &str, advice: Option<Advice>) -> Html {
    let value = sheet.text(field, start);
    list(vec![
        label.draw(&sheet.element(field)),
        input(
            sheet,
            field,
            value,
            "numeric",
            sheet.typing(field, None),
            advice.is_some(),
        ),
        advised(sheet, field, advice),
    ])
}

/// The input itself. A decimal keypad has no slash, so that fractions need `keys` to be `text`.
pub(super) fn input(
    sheet: &Sheet,
    field: &str,
    value: String,
    keys: &'static str,
    oninput: Callback<InputEvent>,
    wrong: bool,
) -> Html {
    let id = sheet.element(field);
    let described = wrong.then(|| advice_id(&id));
    html! {
        <input {id} {value} {oninput} type="text" inputmode={keys} autocomplete="off" enterkeyhint="done"
            aria-invalid={wrong.then_some("true")} aria-describedby={described} />
    }
}

/// A field for a number that may be less than nothing: a numeric keypad has no sign.
pub fn signed(sheet: &Sheet, field: &'static str, label: &str, advice: Option<Advice>) -> Html {
    let (value, wrong) = (sheet.text(field, ""), advice.is_some());
    list(vec![
        Label::Shown(label).draw(&sheet.element(field)),
        input(sheet, field, value, "text", sheet.typing(field, None), wrong),
        advised(sheet, field, advice),
    ])
}
