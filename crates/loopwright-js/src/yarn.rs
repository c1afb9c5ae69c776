//! Yarn needed: the function.

use crate::bind;
use loopwright::units::Length;
use loopwright::yarn::{self, Ask, Question};
use wasm_bindgen::prelude::*;

/// "I am knitting this many stitches. How many balls do I buy?"
///
/// # Errors
/// A `TypeError` whose sentence names the field, when the object is no question.
#[wasm_bindgen(unchecked_return_type = "YarnResult")]
pub fn yarn(
    #[wasm_bindgen(unchecked_param_type = "Asked<YarnQuestion, 'ask' | 'reserve'>")] question: JsValue,
) -> Result<JsValue, JsValue> {
    // The usual reserve differs between a piece and a pattern's figure, so that it has to be said.
    let usual = Question::from_pattern(Ask::Length(Length::ZERO));
    bind::ask("yarn", &usual, &["ask", "reserve"], &question, yarn::answer)
}
