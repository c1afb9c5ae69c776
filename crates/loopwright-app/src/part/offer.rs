//! What holds for all tools, beside a field or an answer: a tap takes the kept value, another keeps the one that stands
//! there. Nothing is taken or kept without a tap.

use super::doubt::doubted;
use super::plain::{button, element, quiet_button, text_element};
use super::{Sheet, View};
use crate::form::kept::{self, Kept, Value};
use crate::form::{Field, Keeping, Kind, Scale, gauge_text};
use crate::store::Typed;
use crate::words::known as words;
use loopwright::units::Measure;
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
    let name = match field.kept {
        _ if view.sheet.frame.is_some() => return Vec::new(),
        Keeping::Nothing => return Vec::new(),
        Keeping::As(name) => name,
        Keeping::By(name) => name(&view.fields),
    };
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
                let label = words::keep(&name.print_in(measures, &here));
                quiet_button(label, writing(&view.sheet, kept::SHEET, name.key().to_owned(), here))
            });
            take.into_iter().chain(keep).collect()
        }
    }
}

/// Whether two texts are the same value: 22 1/2 and 22.5 are.
fn is_same(field: &Field, one: &Typed, other: &Typed) -> bool {
    let gauge = |typed| gauge_text(typed).and_then(|read| read.gauge(field.counts)).ok();
    match field.kind {
        Kind::Gauge | Kind::Gauges => gauge(one).is_some() && gauge(one) == gauge(other),
        Kind::Length(scale, _) => is_same_measure(scale, one, other),
        Kind::Mass(scale, _) => is_same_measure(scale, one, other),
        Kind::Count(_) | Kind::Choice(_) | Kind::List(_) | Kind::Text | Kind::Whole => one == other,
    }
}

fn is_same_measure<T: Measure>(scale: &Scale<T>, one: &Typed, other: &Typed) -> bool {
    let (first, second) = (scale.read_any(one), scale.read_any(other));
    one == other || (first.is_some() && first == second)
}

/// Beside an answer: keeps a value of it, or says that it is the kept one. Nothing where no field would take it, and nothing
/// inside another page.
pub fn keep_offer(view: &View, (name, value): (Kept, Value)) -> Html {
    let typed = value.as_typed().filter(|_| view.sheet.frame.is_none());
    let Some(typed) = typed else {
        return Html::default();
    };
    let text = name.print_value(view.fields.settings().measures(), value, &typed);
    let kept = view.sheet.desk.text(kept::SHEET, name.key());
    let content = if kept.map(|kept| name.renewed(kept)).as_ref() == Some(&typed) {
        text_element("span", "", words::taken(&text))
    } else {
        let write = writing(&view.sheet, kept::SHEET, name.key().to_owned(), typed);
        quiet_button(words::keep(&text), write)
    };
    element("p", "line", vec![content])
}

fn writing(sheet: &Sheet, to: &'static str, field: String, typed: Typed) -> Callback<MouseEvent> {
    let desk = sheet.desk.clone();
    Callback::from(move |_| desk.write(to, &field, Some(typed.clone())))
}
