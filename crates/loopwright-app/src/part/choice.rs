//! Something to choose, as it is drawn wherever it stands: beside a field, beside the answer, or for the whole page.

use super::fixed::fixed;
use super::plain::{element, list, option};
use super::{Label, View};
use crate::desk::Desk;
use crate::form::{SETTINGS, Scale};
use crate::store::Typed;
use crate::words::Worded;
use loopwright::choice::{Choice, FieldName};
use loopwright::units::Measure;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

/// The list to choose from. What is chosen stands in front of it once more, for the eye only: a list cannot break its
/// words into lines and this can, so that where type is very large the styles show it in place of the list's own words.
pub fn selected<Key: AsRef<str>>(
    id: String,
    options: Vec<(Key, String)>,
    chosen: &str,
    onchange: Callback<Event>,
) -> Html {
    let seen = options.iter().find(|(key, _)| key.as_ref() == chosen);
    let seen = seen.map_or_else(String::new, |(_, words)| words.clone());
    let drawn = |(key, words): (Key, String)| option(key.as_ref(), words, key.as_ref() == chosen);
    let options: Html = options.into_iter().map(drawn).collect();
    html! {
        <span class="choice"><span aria-hidden="true">{ seen }</span><select {id} {onchange}>{ options }</select></span>
    }
}

/// A choice that holds for the whole page.
pub fn settings_choice<C: Choice + Worded>(desk: &Desk, setting: &'static str, label: &'static str) -> Html {
    let id = format!("{SETTINGS}-{setting}");
    let typed = desk.text(SETTINGS, setting);
    let chosen = typed.and_then(|typed| C::from_key(&typed.text)).unwrap_or(C::START);
    let options = C::ALL.iter().map(|choice| (choice.key(), choice.words().into()));
    let desk = desk.clone();
    let onchange = Callback::from(move |event: Event| {
        let key = event.target_unchecked_into::<HtmlSelectElement>().value();
        desk.write(SETTINGS, setting, Some(Typed::plain(key)));
    });
    let label = Label::Shown(label).draw(&id);
    list(vec![label, selected(id, options.collect(), chosen.key(), onchange)])
}

/// The choice of the unit of a scale where it stands in the sentence and not beside a field.
pub fn unit_choice<T: Measure>(view: &View, scale: &'static Scale<T>, label: &'static str) -> Html {
    let shown = scale.shown(view.fields.settings()).key;
    unit_setting(view, scale, format!("{SETTINGS}-{}", scale.setting), label, shown)
}

/// The choice of the unit of a scale, which is one setting wherever it stands.
pub(super) fn unit_setting<T: Measure>(
    view: &View,
    scale: &'static Scale<T>,
    id: String,
    label: &'static str,
    shown: &str,
) -> Html {
    let units = scale.units().map(|unit| (unit.key, (scale.name)(unit.unit).to_owned()));
    let desk = view.sheet.desk.clone();
    let onchange = Callback::from(move |event: Event| {
        let key = event.target_unchecked_into::<HtmlSelectElement>().value();
        desk.write(SETTINGS, scale.setting, Some(Typed::plain(key)));
    });
    selection(id, label, units.collect(), shown, onchange)
}

/// A choice whose label is for those who cannot see what it stands beside.
pub(super) fn selection(
    id: String,
    label: &'static str,
    choices: Vec<(&str, String)>,
    chosen: &str,
    onchange: Callback<Event>,
) -> Html {
    let label = Label::Unseen(label).draw(&id);
    list(vec![label, selected(id, choices, chosen, onchange)])
}

/// A choice of the question that stands beside the answer, since it is made by what the answer says.
pub fn choices<C: Choice + Worded>(view: &View, name: impl FieldName, chosen: C) -> Html {
    let options = C::ALL.iter().map(|option| (option.key(), option.words().into()));
    element(
        "div",
        "line",
        vec![answer_choice(view, name, options.collect(), chosen.key())],
    )
}

/// A choice that stands beside the answer, whose words depend on it.
pub fn answer_choice(view: &View, name: impl FieldName, options: Vec<(&'static str, String)>, chosen: &str) -> Html {
    let path = view.fields.path(name);
    let Some(field) = view.fields.row(path) else {
        return Html::default();
    };
    let id = view.sheet.element(&path.stored());
    let label = Label::Shown(field.label_in(&view.fields)).draw(&id);
    if view.sheet.locks(path) {
        let words = options.into_iter().find(|(key, _)| *key == chosen);
        let words = words.map(|(_, words)| words).unwrap_or_default();
        return list(vec![label, fixed(&id, words)]);
    }
    let onchange = view.sheet.choosing(&path.stored());
    list(vec![label, selected(id, options, chosen, onchange)])
}
