//! Choices of a form that are drawn and read row by row. What is chosen is a place in the row's table, so that one
//! function reads all of them.

use super::plain::list;
use super::{Choice, Label, Sheet, select};
use yew::prelude::*;

/// A choice: its field, its label, and of each thing to choose the key that is stored and its words.
pub type ChoiceRow = (&'static str, &'static str, &'static [(&'static str, &'static str)]);

/// The choice in a sentence, which says what it is about.
#[inline(never)]
pub fn choice(sheet: &Sheet, (field, label, words): &ChoiceRow) -> Html {
    select(sheet, field, Label::Unseen(label), Choice::keyed(words), "")
}

/// Choices below each other, with their labels.
#[inline(never)]
pub fn choices(sheet: &Sheet, rows: &[&ChoiceRow]) -> Html {
    let mut drawn = Vec::new();
    for (field, label, words) in rows {
        drawn.push(select(sheet, field, Label::Shown(label), Choice::keyed(words), ""));
    }
    list(drawn)
}

/// The place of what is chosen, the first before anything is.
#[inline(never)]
pub fn chosen(sheet: &Sheet, (field, _, words): &ChoiceRow) -> usize {
    let text = sheet.text(field, "");
    words.iter().position(|(key, _)| *key == text).unwrap_or(0)
}
