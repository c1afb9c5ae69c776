//! Raglan: the function.

use crate::bind;
use loopwright::raglan::{self, Question};
use wasm_bindgen::prelude::*;

/// "From a neck of 56 and twice 16 stitches to a body of 200 and sleeves of 68. Which rounds, and how many?"
///
/// # Errors
/// A `TypeError` whose sentence names the field, when the object is no question.
#[wasm_bindgen(unchecked_return_type = "RaglanResult")]
pub fn raglan(
    #[wasm_bindgen(
        unchecked_param_type = "Asked<RaglanQuestion, 'body' | 'sleeve' | 'body_to' | 'sleeve_to' | 'rounds'>"
    )]
    question: JsValue,
) -> Result<JsValue, JsValue> {
    let usual = Question::about([1, 1], [1, 1], 1);
    let needed = ["body", "sleeve", "body_to", "sleeve_to", "rounds"];
    bind::ask("raglan", &usual, &needed, &question, raglan::answer)
}
