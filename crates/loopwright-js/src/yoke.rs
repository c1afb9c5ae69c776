//! Yoke: the function.

use crate::bind;
use loopwright::yoke::{self, Question};
use wasm_bindgen::prelude::*;

/// "320 stitches at the underarm, 96 at the neck, 60 rounds, shaped in 4 of them. How many in each?"
///
/// # Errors
/// A `TypeError` whose sentence names the field, when the object is no question.
#[wasm_bindgen(unchecked_return_type = "YokeResult")]
pub fn yoke(
    #[wasm_bindgen(unchecked_param_type = "Asked<YokeQuestion, 'from' | 'to' | 'rounds'>")] question: JsValue,
) -> Result<JsValue, JsValue> {
    let usual = Question::about(1, 1, 1);
    bind::ask("yoke", &usual, &["from", "to", "rounds"], &question, yoke::answer)
}
