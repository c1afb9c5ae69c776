//! Shaping: the function.

use crate::bind;
use loopwright::shaping::{self, Ask, Question};
use wasm_bindgen::prelude::*;

/// "I have to lose 18 stitches in the next 66 rows, one at each edge. Which rows?"
///
/// # Errors
/// A `TypeError` whose sentence names the field, when the object is no question.
#[wasm_bindgen(unchecked_return_type = "ShapingResult")]
pub fn shaping(
    #[wasm_bindgen(unchecked_param_type = "Asked<ShapingQuestion, 'ask' | 'rows'>")] question: JsValue,
) -> Result<JsValue, JsValue> {
    let usual = Question::about(Ask::Lose(2), 1);
    bind::ask("shaping", &usual, &["ask", "rows"], &question, shaping::answer)
}
