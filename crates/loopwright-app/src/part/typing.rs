//! A text of the project itself, such as its name, in a field: kept as typed, letter by letter.

use super::plain::list;
use super::windows::other_window;
use crate::desk::Desk;
use crate::store::Typed;
use crate::words::page;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// Where a text is kept.
#[derive(Clone)]
pub struct Place {
    /// The sheet.
    pub sheet: String,
    /// The field.
    pub field: String,
    /// Whether it is there still when it is emptied: what was added by a tap is taken away by a tap alone.
    pub stays: bool,
}

impl Place {
    /// The id of the element that it is typed into.
    pub fn id(&self) -> String {
        [&self.sheet.replace('.', "-"), "-", &self.field].concat()
    }

    /// What stands there.
    pub fn text(&self, desk: &Desk) -> String {
        desk.text(&self.sheet, &self.field)
            .map_or_else(String::new, |typed| typed.text)
    }
}

/// The field; as long as it is empty an example stands in it.
pub fn typed_text(desk: &Desk, place: &Place, example: &str) -> Html {
    let value = place.text(desk);
    let oninput = {
        let (desk, place) = (desk.clone(), place.clone());
        move |event: InputEvent| {
            let text = event.target_unchecked_into::<HtmlInputElement>().value();
            let typed = (place.stays || !text.is_empty()).then(|| Typed::plain(text));
            desk.write(&place.sheet, &place.field, typed);
        }
    };
    let placeholder = (!example.is_empty()).then(|| page::example(example));
    let kept_as = desk.kept_as(&place.sheet, &place.field);
    let input = html! {
        <input id={place.id()} type="text" {value} {oninput} {placeholder} autocomplete="off" enterkeyhint="done"
            data-kept={kept_as} />
    };
    list(vec![input, other_window(desk, &place.sheet, &place.field)])
}
