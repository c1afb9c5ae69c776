//! Below a field that another window wrote into while she was typing there: what it wrote, and a tap that takes it; once she
//! is elsewhere and the page shows that, a tap that puts hers back.

use super::plain::element;
use crate::desk::{Desk, Held};
use crate::words::windows as words;
use yew::prelude::*;

/// What another window wrote into this field; nothing where none did while she was typing there.
pub fn other_window(desk: &Desk, sheet: &str, field: &str) -> Html {
    match desk.held(sheet, field) {
        Some(held) if held.is_left => left(desk, held),
        Some(held) => typed_in(desk, &held),
        None => Html::default(),
    }
}

fn typed_in(desk: &Desk, held: &Held) -> Html {
    let desk = desk.clone();
    let take = Callback::from(move |_: MouseEvent| desk.take_theirs());
    // It is no longer there once she left the field: a key of its own, or the tap would come to the button after it.
    let button = html! { <button type="button" key="take" data-takes="" onclick={take}>{ words::TAKE }</button> };
    said(words::wrote(held.ours.as_ref(), held.theirs.as_ref()), button)
}

fn left(desk: &Desk, held: Held) -> Html {
    let sentence = words::wrote_over(held.ours.as_ref());
    let desk = desk.clone();
    let back = Callback::from(move |_: MouseEvent| desk.put_back_held(&held));
    let button = html! { <button type="button" key="back" onclick={back}>{ words::PUT_BACK }</button> };
    said(sentence, button)
}

fn said(sentence: String, button: Html) -> Html {
    let sentence = html! { <span key="said" role="status" class="own">{ sentence }</span> };
    element("div", "known", vec![sentence, button])
}
