//! The choice of what a text was counted over or is written in, where that belongs to the text: it is stored as the
//! text's unit, and another choice keeps the same text and converts nothing.

use super::plain::{element, list, text};
use super::{Label, Sheet};
use crate::store::Typed;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

/// The choice, beside the field that holds `typed`; of each choice the key that is stored and the words.
pub(super) fn belonging(
    sheet: &Sheet,
    field: &'static str,
    label: &'static str,
    choices: Vec<(&'static str, String)>,
    chosen: &str,
    typed: String,
) -> Html {
    let id = [&sheet.element(field), "-unit"].concat();
    let label = Label::Unseen(label).draw(&id);
    let option = |(key, words): (&'static str, String)| {
        let attributes = [("value", key), ("selected", "")];
        let shown = if key == chosen { 2 } else { 1 };
        element("option", &attributes[..shown], vec![text(words.into())])
    };
    let options: Vec<Html> = choices.into_iter().map(option).collect();
    let sheet = sheet.clone();
    let onchange = move |event: Event| {
        let key = event.target_unchecked_into::<HtmlSelectElement>().value();
        let typed = Typed::with_unit(typed.clone(), key);
        sheet.desk.write(sheet.id, field, Some(typed));
    };
    list(vec![label, html! { <select {id} {onchange}>{ options }</select> }])
}
