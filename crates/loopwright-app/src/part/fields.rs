//! A part of a form from the rows of a table, whatever each of its fields holds.

use super::plain::{el, folded, list, says};
use super::{ChoiceRow, GaugeRow, Row, Say, Sheet, choices, counts_field, gauges, rows};
use crate::words::page::PRACTICE;
use yew::prelude::*;

/// One field of a form.
pub enum Field {
    /// A count or a length.
    Figure(Row),
    /// A gauge.
    Gauge(GaugeRow),
    /// A list of counts: its name, its label, an example.
    Counts(&'static str, (&'static str, &'static str)),
    /// One of a few.
    Choice(&'static ChoiceRow),
    /// No field: the mark that what stands above is practice.
    Practice,
}

/// These fields, one below the other.
#[inline(never)]
pub fn fields(sheet: &Sheet, fields: &[Field], say: Say) -> Html {
    let mut drawn = Vec::new();
    for field in fields {
        drawn.push(match field {
            Field::Figure(row) => rows(sheet, &[*row], say),
            Field::Gauge(row) => gauges(sheet, &[*row], say),
            Field::Counts(name, labels) => counts_field(sheet, name, *labels, say(name)),
            Field::Choice(row) => choices(sheet, &[row]),
            Field::Practice => says("p", "practice", PRACTICE),
        });
    }
    list(drawn)
}

/// The same, folded below a title.
#[inline(never)]
pub fn folded_fields(sheet: &Sheet, title: &'static str, of: &[Field], say: Say) -> Html {
    folded("more", title, vec![el("div", "fields", vec![fields(sheet, of, say)])])
}
