//! A field for a list as it stands in a pattern: several lines if need be, and beside it the unit its numbers are in.
//! That unit belongs to the list, as the span belongs to a gauge: choosing another says what the numbers are, and
//! converts nothing.

use super::advice::{Advice, advice_id, advised};
use super::belonging::belonging;
use super::measure::TAPE;
use super::plain::el;
use super::{Label, Sheet};
use crate::words::units as words;
use loopwright::units::LengthUnit;
use yew::prelude::*;

const UNITS: [(&str, LengthUnit); 2] = [("cm", LengthUnit::Cm), ("in", LengthUnit::Inch)];

/// The unit of a list that names none: the one that was shown when it was typed.
pub fn list_unit(sheet: &Sheet, field: &str) -> LengthUnit {
    unit(sheet, field).1
}

fn unit(sheet: &Sheet, field: &str) -> (&'static str, LengthUnit) {
    let key = match sheet.desk.text(sheet.id, field) {
        Some(typed) => typed.unit.unwrap_or_default(),
        None => TAPE.shown(&sheet.desk).0.to_owned(),
    };
    let found = UNITS.iter().find(|(name, _)| *name == key);
    *found.unwrap_or(&UNITS[0])
}

/// What stands above a list, and in it as long as it is empty.
pub type Labels = (&'static str, &'static str);

/// A list of lengths.
pub fn lengths_field(sheet: &Sheet, field: &'static str, labels: Labels, advice: Option<Advice>) -> Html {
    let key = unit(sheet, field).0;
    drawn(sheet, field, labels, Some(key), advice)
}

/// A list of counts.
pub fn counts_field(sheet: &Sheet, field: &'static str, labels: Labels, advice: Option<Advice>) -> Html {
    drawn(sheet, field, labels, None, advice)
}

fn drawn(
    sheet: &Sheet,
    field: &'static str,
    (label, example): Labels,
    key: Option<&'static str>,
    advice: Option<Advice>,
) -> Html {
    let value = sheet.text(field, "");
    let id = sheet.element(field);
    let wrong = advice.is_some();
    let described = wrong.then(|| advice_id(&id));
    let oninput = sheet.typing(field, key);
    // A number that would be right is one of the list, and never put in place of all.
    let advice = advice.map(|Advice { sentence, .. }| Advice {
        sentence,
        nearest: Vec::new(),
    });
    let mut content = vec![
        Label::Shown(label).draw(&id),
        html! {
            <textarea {id} value={value.clone()} {oninput} rows="2" autocomplete="off" spellcheck="false" placeholder={example}
                aria-invalid={wrong.then_some("true")} aria-describedby={described} />
        },
    ];
    if let Some(key) = key {
        let units = UNITS.map(|(name, unit)| (name, words::list_unit(unit)));
        content.push(belonging(sheet, field, words::UNIT, units.into(), key, value));
    }
    content.push(advised(sheet, field, advice));
    el("div", "wide", content)
}
