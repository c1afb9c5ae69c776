//! A field for a gauge: a count, and the span it was counted over. The two belong together, since 10 cm and 4 in are
//! 1.6 % apart: choosing another span says that the count was taken over that, and converts nothing.

use super::advice::{Advice, advised};
use super::belonging::belonging;
use super::field::input;
use super::plain::el;
use super::{Label, Sheet};
use crate::store::Typed;
use crate::words::units as words;
use loopwright::problem::Kind;
use loopwright::units::parse::Unreadable;
use loopwright::units::{Gauge, Length, LengthUnit};
use yew::prelude::*;

/// The spans people count over, each by the key that is stored as the count's unit.
const SPANS: [(&str, Length); 5] = [
    ("10 cm", Gauge::TEN_CM),
    ("4 in", Gauge::FOUR_INCHES),
    ("5 cm", Length::of(5, LengthUnit::Cm)),
    ("2 in", Length::from_inches(2)),
    ("1 in", Length::INCH),
];

fn span(typed: Option<&Typed>) -> (&'static str, Length) {
    let key = typed.and_then(|typed| typed.unit.as_deref());
    let found = SPANS.iter().find(|(name, _)| Some(*name) == key);
    *found.unwrap_or(&SPANS[0])
}

/// The gauge in a field.
///
/// # Errors
/// Why the text is none.
pub fn read_gauge(sheet: &Sheet, field: &str) -> Result<Gauge, Kind> {
    let typed = sheet.desk.text(sheet.id, field);
    let span = span(typed.as_ref()).1;
    let text = typed.map_or_else(String::new, |typed| typed.text);
    Gauge::read(&text, span).map_err(Kind::Unreadable)
}

/// The gauge in a field that may stay empty.
///
/// # Errors
/// Why the text is none.
pub fn read_gauge_if_any(sheet: &Sheet, field: &str) -> Result<Option<Gauge>, Kind> {
    match read_gauge(sheet, field) {
        Err(Kind::Unreadable(Unreadable::Empty)) => Ok(None),
        other => other.map(Some),
    }
}

/// The field, with its span beside it.
pub fn gauge(sheet: &Sheet, field: &'static str, label: &str, advice: Option<Advice>) -> Html {
    let typed = sheet.desk.text(sheet.id, field);
    let (key, _) = span(typed.as_ref());
    let value = typed.map_or_else(String::new, |typed| typed.text);
    let id = sheet.element(field);
    let oninput = sheet.typing(field, Some(key));
    let wrong = advice.is_some();
    let content = vec![
        Label::Shown(label).draw(&id),
        input(sheet, field, value.clone(), "text", oninput, wrong),
        spans(sheet, field, key, value),
        advised(sheet, field, advice),
    ];
    el("div", "quantity", content)
}

/// The choice of span keeps the same count.
fn spans(sheet: &Sheet, field: &'static str, key: &str, text: String) -> Html {
    let keys = SPANS.iter().map(|(name, _)| (*name, words::span(name)));
    belonging(sheet, field, words::SPAN, keys.collect(), key, text)
}
