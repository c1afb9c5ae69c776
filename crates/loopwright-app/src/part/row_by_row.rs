//! The rows of an instruction one by one, on paper each with a box to tick.

use super::plain::{element, folded, items};
use crate::words::schedule::ROW_BY_ROW;
use yew::prelude::*;

/// The rows; folded away where the instruction tells them, or where they are very many.
pub fn row_by_row(rows: Vec<String>, fold: bool) -> Html {
    one_by_one(ROW_BY_ROW, rows, fold)
}

/// The same under another title: rounds are no rows.
pub fn one_by_one(title: &'static str, rows: Vec<String>, fold: bool) -> Html {
    let rows = element("div", "ticked", vec![items("ul", rows)]);
    match fold {
        true => folded("places", title, vec![rows]),
        false => rows,
    }
}
