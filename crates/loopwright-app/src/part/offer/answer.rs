//! Beside an answer: keeps a value of it for the project, or says that it is the kept one. A count can be kept under any name
//! that a count has, and under one of her own. Nothing is kept inside another page, nor what no field would take.

use super::{keep_label, writing};
use crate::desk::Desk;
use crate::form::kept::{Called, NameTrouble, NamedCount, Offer, SHEET, Value, name_trouble, named_counts};
use crate::part::plain::{button, element, folded, quiet_button, text_element};
use crate::part::{Label, Place, View, typed_text};
use crate::store::Typed;
use crate::words::{facts, known as words};
use loopwright_project::{OwnCount, own_counts};
use yew::prelude::*;

/// One tap that keeps a value under the name that is most often meant.
pub fn keep_offer(view: &View, (name, value): Offer) -> Html {
    let typed = value.as_typed().filter(|_| view.sheet.frame.is_none());
    let Some(typed) = typed else {
        return Html::default();
    };
    let text = name.print_value(view.fields.settings().measures(), value, &typed);
    let kept = view.sheet.desk.text(SHEET, name.key());
    let content = if kept.map(|kept| name.renewed(kept)).as_ref() == Some(&typed) {
        let said = match name.called() {
            Some(called) => words::taken_as(&text, &words::the(called)),
            None => words::taken(&text),
        };
        text_element("span", "", said)
    } else {
        let write = writing(&view.sheet, SHEET, name.key().to_owned(), typed);
        quiet_button(keep_label(name, &text), write)
    };
    element("p", "line", vec![content])
}

/// A fold in which a count is kept under any other name.
pub fn keep_count(view: &View, count: u32) -> Html {
    let typed = Value::Count(count).as_typed().filter(|_| view.sheet.frame.is_none());
    let Some(typed) = typed else {
        return Html::default();
    };
    let known = view.sheet.desk.fields(SHEET);
    let (here, others): (Vec<NamedCount>, Vec<NamedCount>) =
        named_counts(&known).into_iter().partition(|other| other.typed == typed);
    let said = here.iter().filter(|count| matches!(count.called, Called::Kept(_)));
    let said = said.map(|here| text_element("p", "", words::taken_as(&typed.text, &here.called.in_sentence())));
    let taps = others.iter().map(|other| tap(view, other, &typed));
    let mut content: Vec<Html> = said.collect();
    content.push(element(
        "div",
        "taken",
        taps.chain([own(&view.sheet.desk, &typed)]).collect(),
    ));
    let own = own_counts(&known)
        .into_iter()
        .filter(|own| here.iter().any(|here| here.key == own.key()));
    content.extend(own.map(|own| naming(&view.sheet.desk, own)));
    folded("keep-count", words::KEEP_COUNT, content)
}

/// Keeps the count under a name that there is; where that has another number, it says which.
fn tap(view: &View, other: &NamedCount, typed: &Typed) -> Html {
    let name = other.called.in_sentence();
    let label = match other.typed.text.trim() {
        "" => words::keep_as(&typed.text, &name),
        was => words::keep_instead(&typed.text, &name, was),
    };
    button(label, writing(&view.sheet, SHEET, other.key.clone(), typed.clone()))
}

/// Keeps the count, and the field for its name appears.
fn own(desk: &Desk, typed: &Typed) -> Html {
    let (label, desk, typed) = (words::keep_own(&typed.text), desk.clone(), typed.clone());
    let keep = move |_| desk.write(SHEET, &desk.project().next_own_count().key(), Some(typed.clone()));
    button(label, Callback::from(keep))
}

/// What she calls a count of her own that is kept: typed letter by letter, and kept so.
fn naming(desk: &Desk, own: OwnCount) -> Html {
    let place = Place {
        sheet: SHEET.into(),
        field: own.name_key(),
        stays: true,
    };
    let mut content = vec![
        Label::Shown(words::NAME_IT).draw(&place.id()),
        typed_text(desk, &place, facts::OWN_NAME_EXAMPLE),
    ];
    let trouble = name_trouble(own, &desk.fields(SHEET)).map(name_sentence);
    content.push(text_element("p", "advice", trouble.unwrap_or_default()));
    element("div", "quantity", content)
}

/// What to do about a name.
pub const fn name_sentence(trouble: NameTrouble) -> &'static str {
    match trouble {
        NameTrouble::Missing => facts::NO_NAME,
        NameTrouble::Same => facts::SAME_NAME,
    }
}
