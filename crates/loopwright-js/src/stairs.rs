//! Steps at a shoulder or a neck: the function.

use crate::bind;
use loopwright::stairs::{self, Ask, Question};
use wasm_bindgen::prelude::*;

/// "27 stitches of a shoulder are to go in 4 steps. How many do I bind off, and when?"
///
/// # Errors
/// A `TypeError` whose sentence names the field, when the object is no question.
#[wasm_bindgen(unchecked_return_type = "StairsResult")]
pub fn stairs(
    #[wasm_bindgen(unchecked_param_type = "Asked<StairsQuestion, 'stitches' | 'ask'>")] question: JsValue,
) -> Result<JsValue, JsValue> {
    let usual = Question::about(1, Ask::Steps(1));
    bind::ask("stairs", &usual, &["stitches", "ask"], &question, stairs::answer)
}
