//! Short rows that raise the back of a neck: the function, and the answer with each row as text beside its data.

use crate::bind;
use loopwright::row::Row;
use loopwright::shaping::Side;
use loopwright::stairs::raise::{self, Across, Question};
use loopwright::units::{Gauge, Length};
use serde::Serialize;
use wasm_bindgen::prelude::*;

/// "My yoke is worked in the round and the back of the neck is to sit 2.5 cm higher. Where do I turn?"
///
/// # Errors
/// A `TypeError` whose sentence names the field, when the object is no question.
#[wasm_bindgen(unchecked_return_type = "RaiseResult")]
pub fn raise(
    #[wasm_bindgen(unchecked_param_type = "Asked<RaiseQuestion, 'across' | 'height' | 'rows'>")] question: JsValue,
) -> Result<JsValue, JsValue> {
    let usual = Question::about(Across::Stitches(2), Length::INCH, Gauge::of(28, Gauge::TEN_CM));
    bind::ask("raise", &usual, &["across", "height", "rows"], &question, |q| {
        raise::answer(q).map(Answer::from)
    })
}

/// The short rows.
#[derive(Serialize)]
struct Answer {
    /// Stitches that the short rows go over in the end: an even number, both sides alike.
    across: u32,
    /// A stitch of an odd number that stays out.
    left_out: bool,
    /// How far from the middle each turn is, in stitches, the nearest first; the same at both sides.
    turns: Vec<u32>,
    /// The short rows in the order they are worked.
    rows: Vec<ShortRow>,
    /// Stitches from the last turn to where the round begins, its double stitch not counted.
    home: u32,
    /// How much higher the middle is in the end.
    raised: Length,
    /// By how much that is over what was wanted; negative when it is under.
    off: Length,
}

/// One short row.
#[derive(Serialize)]
struct ShortRow {
    /// Its number, counted from 1.
    row: u32,
    /// The side that faces the knitter.
    side: Side,
    /// Whether it begins with the double stitch of the turn before.
    double: bool,
    /// What is worked before the turn, the double stitch not counted: `K6`.
    text: String,
    /// The same as data.
    worked: Row,
    /// How far from the middle it is turned, in stitches.
    from_middle: u32,
}

// Taken apart field by field, so that one that is added to the arithmetic and not here does not compile.
impl From<raise::Answer> for Answer {
    fn from(answer: raise::Answer) -> Self {
        let raise::Answer {
            across,
            left_out,
            turns,
            rows,
            home,
            raised,
            off,
        } = answer;
        Self {
            across,
            left_out,
            turns,
            rows: rows.into_iter().map(ShortRow::from).collect(),
            home,
            raised,
            off,
        }
    }
}

impl From<raise::ShortRow> for ShortRow {
    fn from(row: raise::ShortRow) -> Self {
        let raise::ShortRow {
            row,
            side,
            double,
            worked,
            from_middle,
        } = row;
        Self {
            row,
            side,
            double,
            text: worked.to_string(),
            worked,
            from_middle,
        }
    }
}
