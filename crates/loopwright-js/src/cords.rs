//! Cords: the function.

use crate::bind;
use loopwright::cords::{self, Question};
use wasm_bindgen::prelude::*;

/// "This yoke grows from 90 stitches to 300. Which circular needles do I need, and when do I change?"
///
/// # Errors
/// A `TypeError` whose sentence names the field, when the object is no question.
#[wasm_bindgen(unchecked_return_type = "CordsResult")]
pub fn cords(
    #[wasm_bindgen(unchecked_param_type = "Asked<CordsQuestion, 'around'>")] question: JsValue,
) -> Result<JsValue, JsValue> {
    let usual = Question::about(cords::Around::Rounds(Vec::new()));
    bind::ask("cords", &usual, &["around"], &question, cords::answer)
}
