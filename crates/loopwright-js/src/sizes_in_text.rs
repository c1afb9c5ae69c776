//! Sizes in a text: the function.

use crate::bind;
use loopwright::sizes_in_text::{self, Question};
use wasm_bindgen::prelude::*;

/// "My pattern is written for five sizes. Which of its numbers are mine?" A decision or a line is named by the words of its
/// line, so that it outlives what is changed elsewhere in the text. Places are bytes of the text in UTF-8.
///
/// # Errors
/// A `TypeError` whose sentence names the field, when the object is no question.
#[wasm_bindgen(js_name = sizesInText, unchecked_return_type = "SizesInTextResult")]
pub fn sizes_in_text(
    #[wasm_bindgen(unchecked_param_type = "Asked<SizesInTextQuestion, 'text'>")] question: JsValue,
) -> Result<JsValue, JsValue> {
    let usual = Question::about(String::new());
    bind::ask("sizesInText", &usual, &["text"], &question, sizes_in_text::answer)
}
