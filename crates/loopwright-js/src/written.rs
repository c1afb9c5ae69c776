//! The lines of a pattern: the function.

use crate::bind;
use loopwright::written::{self, Question};
use wasm_bindgen::prelude::*;

/// "Does every line of this pattern come out, in every size? And where one does not, what would?"
///
/// # Errors
/// A `TypeError` whose sentence names the field, when the object is no question.
#[wasm_bindgen(unchecked_return_type = "WrittenResult")]
pub fn written(
    #[wasm_bindgen(unchecked_param_type = "Asked<WrittenQuestion, 'text'>")] question: JsValue,
) -> Result<JsValue, JsValue> {
    let usual = Question::about("");
    bind::ask("written", &usual, &["text"], &question, written::answer)
}
