//! What the project knows, beside a field or an answer. Where the project gives a text to a field it says so; where another
//! one was typed a tap goes back to the project's, and another makes it the project's. Nothing is kept without a tap, and
//! nothing is taken without a mark.

mod answer;
mod taps;
mod unread;

pub use answer::{keep_count, keep_offer, name_sentence};
pub use unread::unread_sentence;

use super::doubt::doubted;
use super::plain::{button, element, quiet_button, text_element};
use super::{Sheet, View};
use crate::desk::Desk;
use crate::form::kept::{self, Called, Kept};
use crate::form::{Field, Kind, Scale, gauge_text};
use crate::store::{Entry, Typed};
use crate::words::known as words;
use loopwright::choice::Key;
use loopwright::problem::FieldPath;
use loopwright::units::Measure;
use loopwright_project::stored::{about_sheet, from_sheet};
use loopwright_project::{GivenText, Reference, StepId};
use yew::prelude::*;

/// Beside a field: how its text was read, where that has to be said; then takes the kept value, or keeps the one that stands
/// there, or says that it is the kept one.
pub fn offered(view: &View, field: &'static Field) -> Html {
    let mut content = doubted(view, field);
    content.extend(kept_beside(view, field));
    if content.is_empty() {
        return Html::default();
    }
    element("div", "known", content)
}

/// What can be kept and taken beside a field: nothing that the field would not take, and nothing inside another page.
fn kept_beside(view: &View, field: &'static Field) -> Vec<Html> {
    if view.sheet.frame.is_some() {
        return Vec::new();
    }
    let path = view.fields.path_of(field);
    if let Some(given) = view.fields.given(path) {
        let mut content = given_beside(view, field, given);
        // Where something was typed, two taps stand there already.
        if !view.fields.is_typed_at(path) {
            content.extend(taps::offered(view, field));
        }
        return content;
    }
    let mut content = gone_beside(view, path);
    content.extend(unread::beside(view, field));
    content.extend(
        field
            .kept_name(&view.fields)
            .map(|name| offered_beside(view, field, name))
            .unwrap_or_default(),
    );
    // They stay as she types, so that nothing moves.
    content.extend(taps::offered(view, field));
    content
}

/// Beside a field to which the project gives a text: that it does; or, where something else was typed, both ways out of
/// the difference.
fn given_beside(view: &View, field: &'static Field, given: &GivenText) -> Vec<Html> {
    let path = view.fields.path_of(field);
    if view.fields.is_given(path) {
        return vec![text_element("span", "given", source(&given.from, &view.sheet.desk))];
    }
    let name = field.kept_name(&view.fields).or_else(|| kept_of(&given.from));
    let measures = view.fields.settings().measures();
    let print = |typed: &Typed| name.map_or_else(|| typed.text.clone(), |name| name.print_in(measures, typed));
    let back = {
        let (sheet, key) = (view.sheet.clone(), path.stored());
        Callback::from(move |_| sheet.desk.write(sheet.id, &key, None))
    };
    let said = match view.fields.is_typed_at(path) {
        true => words::own,
        false => words::left_empty,
    };
    let mut content = vec![
        text_element("span", "own", said(&print(&given.typed))),
        button(words::BACK.into(), back),
    ];
    let here = view.fields.typed_as_read(field).map(|typed| field.keepable(&typed));
    let here = here.filter(|typed| field.takes(typed));
    if let (Reference::Fact(fact), Some(here)) = (&given.from, here) {
        // What the field asks for by itself; or what she took.
        let fact = field.kept_name(&view.fields).map_or(fact.as_str(), |name| name.key());
        content.push(quiet_button(
            words::MAKE_IT.into(),
            making_a_fact(&view.sheet, fact, here, path),
        ));
    }
    content
}

fn kept_of(from: &Reference) -> Option<Kept> {
    match from {
        Reference::Fact(key) => Kept::from_key(key),
        Reference::Step { .. } | Reference::Gone(_) => None,
    }
}

/// Where a given text comes from, in words.
fn source(from: &Reference, desk: &Desk) -> String {
    match from {
        // There may be several counts, and each could stand here.
        Reference::Fact(key) => match Called::of_key(key, &desk.fields(kept::SHEET)) {
            Some(called) => words::from_count(&called.name()),
            None => words::FROM_PROJECT.into(),
        },
        Reference::Step { step, .. } => words::from_step(&step_name(desk, *step)),
        Reference::Gone(name) => words::from_gone(name),
    }
}

fn step_name(desk: &Desk, step: StepId) -> String {
    let name = desk.text(&about_sheet(step), "name");
    name.map_or_else(String::new, |name| name.text)
}

/// Beside a field whose text came from what is gone, a step or a fact that was taken away: that it did.
fn gone_beside(view: &View, path: FieldPath) -> Vec<Html> {
    let from = view.sheet.desk.text(&from_sheet(view.sheet.id), &path.stored());
    match from.and_then(|typed| Reference::parse(&typed.text)) {
        Some(gone @ Reference::Gone(_)) => vec![text_element("span", "own", source(&gone, &view.sheet.desk))],
        Some(Reference::Fact(_)) if !view.fields.is_typed_at(path) => {
            vec![text_element("span", "own", words::NO_LONGER_KNOWN)]
        }
        Some(Reference::Fact(_) | Reference::Step { .. }) | None => Vec::new(),
    }
}

/// Beside a field that stands for a fact which the project does not give to it: takes the fact, or makes what stands
/// there the fact.
fn offered_beside(view: &View, field: &'static Field, name: Kept) -> Vec<Html> {
    let measures = view.fields.settings().measures();
    let path = view.fields.path_of(field);
    let here = view.fields.typed_as_read(field);
    let is_empty = here.is_none();
    let here = here.map(|typed| field.keepable(&name.renewed(typed)));
    let here = here.filter(|typed| field.takes(typed));
    let kept = view.sheet.desk.text(kept::SHEET, name.key());
    let kept = kept.map(|typed| name.renewed(typed)).filter(|typed| field.takes(typed));
    match (here, kept) {
        (None, None) => Vec::new(),
        (Some(here), Some(kept)) if is_same(field, &here, &kept) => vec![text_element("span", "", words::TAKEN)],
        // As long as something of her own stands there, what is only to be taken is not offered.
        (_, _) if field.take_only && !is_empty => Vec::new(),
        (here, kept) => {
            let take = kept.map(|kept| {
                let label = words::take(&name.print_in(measures, &kept));
                button(label, writing(&view.sheet, view.sheet.id, path.stored(), kept))
            });
            let keep = here.map(|here| {
                let label = keep_label(name, &name.print_in(measures, &here));
                quiet_button(label, making_a_fact(&view.sheet, name.key(), here, path))
            });
            take.into_iter().chain(keep).collect()
        }
    }
}

/// What a tap says that keeps a value: under which name, where the number alone could be taken for another one.
fn keep_label(name: Kept, value: &str) -> String {
    match name.called() {
        Some(called) => words::keep_as(value, &words::the(called)),
        None => words::keep(value),
    }
}

/// Makes a text the project's, and has the field follow it from then on.
fn making_a_fact(sheet: &Sheet, fact: &str, typed: Typed, path: FieldPath) -> Callback<MouseEvent> {
    let (sheet, fact) = (sheet.clone(), fact.to_owned());
    Callback::from(move |_| {
        sheet.desk.write_many(vec![
            Entry::new(kept::SHEET, fact.clone(), Some(typed.clone())),
            Entry::new(sheet.id, path.stored(), None),
        ]);
    })
}

/// Whether two texts are the same value: 22 1/2 and 22.5 are.
fn is_same(field: &Field, one: &Typed, other: &Typed) -> bool {
    let gauge = |typed| gauge_text(typed).and_then(|read| read.gauge(field.counts)).ok();
    match field.kind {
        Kind::Gauge | Kind::Gauges => gauge(one).is_some() && gauge(one) == gauge(other),
        Kind::Length(scale, _) => is_same_measure(scale, one, other),
        Kind::Mass(scale, _) => is_same_measure(scale, one, other),
        Kind::Count(_) | Kind::Choice(_) | Kind::List(_) | Kind::Text | Kind::Pattern | Kind::Whole => one == other,
    }
}

fn is_same_measure<T: Measure>(scale: &Scale<T>, one: &Typed, other: &Typed) -> bool {
    let (first, second) = (scale.read_any(one), scale.read_any(other));
    one == other || (first.is_some() && first == second)
}

fn writing(sheet: &Sheet, to: &'static str, field: String, typed: Typed) -> Callback<MouseEvent> {
    let desk = sheet.desk.clone();
    Callback::from(move |_| desk.write(to, &field, Some(typed.clone())))
}
