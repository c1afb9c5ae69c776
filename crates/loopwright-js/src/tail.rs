//! Tail: the function.

use crate::bind;
use loopwright::tail::{self, Question};
use wasm_bindgen::prelude::*;

/// "I cast on 120 stitches long-tail. How much yarn do I leave hanging before the slip knot?"
///
/// # Errors
/// A `TypeError` whose sentence names the field, when the object is no question.
#[wasm_bindgen(unchecked_return_type = "TailResult")]
pub fn tail(
    #[wasm_bindgen(unchecked_param_type = "Asked<TailQuestion, 'stitches'>")] question: JsValue,
) -> Result<JsValue, JsValue> {
    bind::ask("tail", &Question::about(1), &["stitches"], &question, tail::answer)
}
