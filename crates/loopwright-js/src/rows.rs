//! Rows and length: the function.

use crate::bind;
use loopwright::rows::{self, Ask, Question};
use loopwright::units::Gauge;
use wasm_bindgen::prelude::*;

/// "The body is to be 40 cm long and my washed swatch has 28 rows in 10 cm. How many rows is that, and am I on course?"
///
/// # Errors
/// A `TypeError` whose sentence names the field, when the object is no question.
#[wasm_bindgen(unchecked_return_type = "RowsResult")]
pub fn rows(
    #[wasm_bindgen(unchecked_param_type = "Asked<RowsQuestion, 'ask' | 'gauge'>")] question: JsValue,
) -> Result<JsValue, JsValue> {
    let usual = Question::about(Ask::Rows(1), Gauge::of(28, Gauge::TEN_CM));
    bind::ask("rows", &usual, &["ask", "gauge"], &question, rows::answer)
}
