//! The room below a field, or below those that stand beside each other in a line: what to type instead, or what can be kept
//! and taken there. The room is there before anything stands in it, so that nothing moves when something does.

use super::View;
use super::advice::{Advice, advised};
use super::offer::offered;
use super::plain::{element, list};
use crate::form::{Field, Keeping, Kind};
use yew::prelude::*;

/// The room below these fields. What is wrong is said first: a text that is no value is not offered to be kept.
pub fn room(view: &View, fields: &[&'static Field], advice: &dyn Fn(&'static Field) -> Option<Advice>) -> Html {
    let content = fields.iter().map(|field| match advice(field) {
        Some(advice) => advised(&view.sheet, view.fields.path_of(field), advice),
        None => offered(view, field),
    });
    let content: Vec<Html> = content.collect();
    match kept_for(fields) {
        Some(class) => element("div", class, content),
        None => list(content),
    }
}

/// How much room is kept: for a sentence below what is typed, for a button where something can be kept, none below what
/// is chosen from a list, since nothing is typed there.
fn kept_for(fields: &[&'static Field]) -> Option<&'static str> {
    let has_offer = |field: &&&'static Field| match field.kept {
        Keeping::Nothing => false,
        Keeping::As(_) | Keeping::By(_) => true,
    };
    let is_typed = |field: &&&'static Field| match field.kind {
        Kind::Count(_)
        | Kind::Length(..)
        | Kind::Mass(..)
        | Kind::Gauge
        | Kind::Gauges
        | Kind::List(_)
        | Kind::Text => true,
        Kind::Choice(_) | Kind::Whole => false,
    };
    if fields.iter().any(|field| has_offer(&field)) {
        Some("room offers")
    } else if fields.iter().any(|field| is_typed(&field)) {
        Some("room")
    } else {
        None
    }
}
