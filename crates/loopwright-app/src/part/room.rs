//! The room below a field, or below those that stand beside each other in a line: what to type instead, or what can be kept
//! and taken there. The room is there before anything stands in it, so that nothing moves when something does.

use super::View;
use super::advice::{Advice, advised};
use super::offer::offered;
use super::plain::{element, list};
use super::windows::other_window;
use crate::form::{Field, Kind};
use loopwright::problem::FieldPath;
use yew::prelude::*;

/// What is wrong with a field.
pub struct Wrong {
    /// Which one.
    pub path: FieldPath,
    /// What to type instead.
    pub advice: Advice,
}

/// The room below these fields. What is wrong is said alone: a text that is no value is not offered to be kept.
pub fn room(view: &View, fields: &[&'static Field], wrong: Option<Wrong>) -> Html {
    let is_open = |field: &&'static Field| !view.sheet.locks(view.fields.path_of(field));
    let open: Vec<&'static Field> = fields.iter().copied().filter(is_open).collect();
    let mut content = match wrong {
        Some(Wrong { path, advice }) => vec![advised(&view.sheet, path, advice)],
        None => open.iter().map(|field| offered(view, field)).collect(),
    };
    content.extend(open.iter().map(|field| written_elsewhere(view, field)));
    match is_kept(&open) {
        true => element("div", "room", content),
        false => list(content),
    }
}

/// What another window wrote there while she was typing.
fn written_elsewhere(view: &View, field: &'static Field) -> Html {
    let path = view.fields.path_of(field);
    other_window(&view.sheet.desk, view.sheet.id, &path.stored())
}

/// Whether room is kept before there is anything in it: not below what is chosen from a list, since nothing is typed there.
fn is_kept(fields: &[&'static Field]) -> bool {
    fields.iter().any(|field| match field.kind {
        Kind::Count(_)
        | Kind::Length(..)
        | Kind::Mass(..)
        | Kind::Gauge
        | Kind::Gauges
        | Kind::List(_)
        | Kind::Text
        | Kind::Pattern => true,
        Kind::Choice(_) | Kind::Whole => false,
    })
}
