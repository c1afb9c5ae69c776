//! Size from bust plus ease: the function.

use crate::bind;
use loopwright::sizing::{self, Question};
use loopwright::units::Length;
use wasm_bindgen::prelude::*;

/// "My bust is 91 cm. Which size do I knit, and how will it sit?"
///
/// # Errors
/// A `TypeError` whose sentence names the field, when the object is no question.
#[wasm_bindgen(unchecked_return_type = "SizingResult")]
pub fn sizing(
    #[wasm_bindgen(unchecked_param_type = "Asked<SizingQuestion, 'bust' | 'sizes' | 'listed'>")] question: JsValue,
) -> Result<JsValue, JsValue> {
    let usual = Question::about(Length::ZERO, Vec::new());
    let always = ["bust", "sizes", "listed"];
    bind::ask("sizing", &usual, &always, &question, sizing::answer)
}
