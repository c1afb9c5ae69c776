//! A choice of one among few.

use super::plain::list;
use super::{Label, Sheet};
use yew::prelude::*;

/// One thing to choose.
#[derive(Clone, Debug, PartialEq)]
pub struct Choice {
    /// What is stored.
    pub key: &'static str,
    /// What is read.
    pub label: AttrValue,
}

impl Choice {
    /// Choices whose words stand beside their keys.
    pub fn keyed(pairs: &[(&'static str, &'static str)]) -> Vec<Self> {
        pairs
            .iter()
            .map(|(key, label)| Self {
                key,
                label: AttrValue::Static(label),
            })
            .collect()
    }
}

/// A choice of one among few. It stands on `start` before anything is chosen, or on the first.
pub fn select(sheet: &Sheet, field: &'static str, label: Label, choices: Vec<Choice>, start: &str) -> Html {
    chooser(sheet, field, sheet.element(field), label, choices, start)
}

/// The same, for a field that can be chosen at several places of a page, each with an id of its own.
pub(super) fn chooser(
    sheet: &Sheet,
    field: &'static str,
    id: String,
    label: Label,
    choices: Vec<Choice>,
    start: &str,
) -> Html {
    let chosen = sheet.text(field, start);
    let place = |key: &str| choices.iter().position(|choice| choice.key == key);
    let chosen = place(&chosen).or_else(|| place(start)).unwrap_or(0);
    let option = |(place, Choice { key, label }): (usize, Choice)| {
        html! { <option key={key} value={key} selected={place == chosen}>{ label }</option> }
    };
    let label = label.draw(&id);
    let options: Vec<Html> = choices.into_iter().enumerate().map(option).collect();
    list(vec![
        label,
        html! { <select {id} onchange={sheet.choosing(field)}>{ options }</select> },
    ])
}
