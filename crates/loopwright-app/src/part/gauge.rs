//! A field for a gauge: a count, and the span it was counted over. The two belong together, since 10 cm and 4 in are
//! 1.6 % apart: choosing another span says that the count was taken over that, and converts nothing. A span that is not
//! among the choices is typed behind the count: `31 in 18 cm`.

use super::advice::{Advice, advised};
use super::belonging::belonging;
use super::field::input;
use super::known::{KNOWN, offered};
use super::plain::{el, list, says};
use super::{Label, Say, Sheet};
use crate::store::Typed;
use crate::words::{intl::decimal, known::TAKEN, units as words};
use loopwright::problem::Kind;
use loopwright::units::parse::Unreadable;
use loopwright::units::{Gauge, Length, LengthUnit};
use yew::prelude::*;

/// The spans people count over, each by the key that is stored as the count's unit.
const SPANS: [(&str, Length); 9] = [
    ("10 cm", Gauge::TEN_CM),
    ("4 in", Gauge::FOUR_INCHES),
    ("15 cm", Length::of(15, LengthUnit::Cm)),
    ("6 in", Length::from_inches(6)),
    ("20 cm", Length::from_mm(200)),
    ("8 in", Length::from_inches(8)),
    ("5 cm", Length::of(5, LengthUnit::Cm)),
    ("2 in", Length::from_inches(2)),
    ("1 in", Length::INCH),
];

fn span(typed: Option<&Typed>) -> (&'static str, Length) {
    let key = typed.and_then(|typed| typed.unit.as_deref());
    let found = SPANS.iter().find(|(name, _)| Some(*name) == key);
    *found.unwrap_or(&SPANS[0])
}

/// The text of a field and the span beside it.
fn text_and_span(sheet: &Sheet, field: &str) -> (String, Length) {
    let typed = sheet.desk.text(sheet.id, field);
    let span = span(typed.as_ref()).1;
    (typed.map_or_else(String::new, |typed| typed.text), span)
}

/// The gauge in a field.
///
/// # Errors
/// Why the text is none.
pub fn read_gauge(sheet: &Sheet, field: &str) -> Result<Gauge, Kind> {
    let (text, span) = text_and_span(sheet, field);
    Gauge::read(&text, span).map_err(Kind::Unreadable)
}

/// All counts in a field; none where it is empty.
///
/// # Errors
/// Why the text is none.
pub fn read_gauges(sheet: &Sheet, field: &str) -> Result<Vec<Gauge>, Kind> {
    let (text, span) = text_and_span(sheet, field);
    match Gauge::read_list(&text, span) {
        Err(Unreadable::Empty) => Ok(Vec::new()),
        other => other.map_err(Kind::Unreadable),
    }
}

/// A gauge as it would be typed: with its span as the unit if that is one of the choices, else behind the count; none if
/// no field would take it.
pub fn gauge_typed(gauge: Gauge) -> Option<Typed> {
    let span = gauge.span();
    let typed = match SPANS.iter().find(|(_, known)| *known == span) {
        Some((key, _)) => Typed::with_unit(decimal(gauge.count()), *key),
        None => Typed::plain(words::gauge(gauge).replace('\u{a0}', " ")),
    };
    Gauge::read(&typed.text, span)
        .is_ok_and(|read| read == gauge)
        .then_some(typed)
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

/// A field for a gauge that a form draws: its name, its label, and what the value is called among those that hold for
/// all tools.
pub type GaugeRow = (&'static str, &'static str, &'static str);

/// Fields for gauges, each with the offer of what is kept.
pub fn gauges(sheet: &Sheet, rows: &[GaugeRow], say: Say) -> Html {
    offering(sheet, rows, say, true)
}

/// The same where an answer is kept, and not what stands in the fields: several counts, or what is only hoped for. What
/// is kept is offered only as long as nothing stands there.
pub fn gauges_taken(sheet: &Sheet, rows: &[GaugeRow], say: Say) -> Html {
    offering(sheet, rows, say, false)
}

#[inline(never)]
fn offering(sheet: &Sheet, rows: &[GaugeRow], say: Say, keeps: bool) -> Html {
    let mut drawn = Vec::new();
    let known = Sheet::new(&sheet.desk, KNOWN);
    for &(name, label, kept) in rows {
        drawn.push(gauge(sheet, name, label, say(name)));
        // A place for each, offered or not: else the field that is typed in would be drawn anew.
        drawn.push(if kept.is_empty() {
            Html::default()
        } else if read_gauge(sheet, name).is_ok_and(|here| read_gauge(&known, kept).is_ok_and(|kept| kept == here)) {
            // The same in other words, 22 1/2 and 22.5, is the same.
            says("p", "known", TAKEN)
        } else if keeps || sheet.text(name, "").trim().is_empty() {
            offered(sheet, name, kept, keeps)
        } else {
            Html::default()
        });
    }
    list(drawn)
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

#[cfg(test)]
mod tests {
    use super::*;

    /// 10 cm are not 4 in: the span that stands beside the count is the one it was counted over.
    #[test]
    fn a_span_is_the_one_that_is_named() {
        for (key, long) in SPANS {
            let typed = Typed {
                text: "21".into(),
                unit: Some(key.into()),
            };
            assert_eq!(span(Some(&typed)), (key, long));
        }
        let inches = SPANS[1].1.to_nm() as f64 / SPANS[0].1.to_nm() as f64;
        assert!((inches - 1.016).abs() < 1e-9);
        assert_eq!(span(None).1, Gauge::TEN_CM);
    }
}
