//! A form of two short columns: what has to be answered, and under "more" what has a usual start.

use super::plain::{el, list, says};
use super::{Row, Say, Sheet, more, rows};
use crate::words::page::PRACTICE;
use yew::prelude::*;

/// The form, below its first fields. What its usual starts are is common practice.
pub fn plain_form(sheet: &Sheet, first: Html, rest: &[Row], say: Say) -> Html {
    list(vec![
        el("div", "fields", vec![first]),
        more(vec![rows(sheet, rest, say), says("p", "practice", PRACTICE)]),
    ])
}
