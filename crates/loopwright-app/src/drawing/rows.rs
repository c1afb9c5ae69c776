//! Rows as they grow: as a sign on their side, a short stroke a row, a long one at the end of each repeat, and a thick
//! line along what is done; as a picture the piece upright and to scale beside a tape.

mod piece;
mod tape;

pub use piece::piece;

use super::path::Path;
use super::picture::picture;
use super::strokes::{LEFT, WIDE, strokes};
use crate::part::plain;
use yew::prelude::*;

/// The sign: so many rows in all, the rows before the first repeat, those of a repeat, and those that are done.
pub fn strip(rows: u32, set_up: u32, repeat: u32, done: u32) -> Html {
    let row = WIDE / f64::from(rows.max(1));
    let x = |rows: u32| LEFT + row * f64::from(rows);
    let mut thick = Path::default();
    if done > 0 {
        thick.line(&[(LEFT, 30.0), (x(done.min(rows)), 30.0)]);
    }
    let mut content = vec![
        plain::path("line-of-stitches", "M8 30H352"),
        plain::path("line-of-stitches done", &thick.written()),
        plain::path("ticks", &strokes(x(1), row, 30.0, 8.0)),
    ];
    if repeat > 1 {
        let first = x(set_up.saturating_add(repeat));
        let ends = strokes(first, row * f64::from(repeat), 30.0, 24.0);
        content.push(plain::path("marker", &ends));
    }
    picture("comb", (360, 60), "", content)
}
