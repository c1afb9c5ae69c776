//! Needles: the function.

use crate::bind;
use loopwright::needles::{self, Question};
use loopwright::units::Length;
use wasm_bindgen::prelude::*;

/// "The pattern says US 7. Which needle is that, and what is it called elsewhere?"
///
/// # Errors
/// A `TypeError` whose sentence names the field, when the object is no question.
#[wasm_bindgen(unchecked_return_type = "NeedlesResult")]
pub fn needles(
    #[wasm_bindgen(unchecked_param_type = "Asked<NeedlesQuestion, 'size'>")] question: JsValue,
) -> Result<JsValue, JsValue> {
    let size = needles::Size::Metric(Length::from_mm(4));
    bind::ask("needles", &Question { size }, &["size"], &question, needles::answer)
}
