//! Swatch: the function.

use crate::bind;
use loopwright::swatch::{self, Question};
use loopwright::units::Gauge;
use wasm_bindgen::prelude::*;

/// "I hope for 21 stitches in 10 cm. How many do I cast on to measure that properly?"
///
/// # Errors
/// A `TypeError` whose sentence names the field, when the object is no question.
#[wasm_bindgen(unchecked_return_type = "SwatchResult")]
pub fn swatch(
    #[wasm_bindgen(unchecked_param_type = "Asked<SwatchQuestion, 'gauge'>")] question: JsValue,
) -> Result<JsValue, JsValue> {
    let usual = Question::about(Gauge::of(20, Gauge::TEN_CM));
    bind::ask("swatch", &usual, &["gauge"], &question, swatch::answer)
}
