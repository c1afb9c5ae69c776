//! Cast-on: the function.

use crate::bind;
use loopwright::cast_on::{self, Question};
use loopwright::units::{Gauge, Length, LengthUnit};
use wasm_bindgen::prelude::*;

/// "The hem is to be 100 cm round and my washed swatch has 21 stitches in 10 cm. How many do I cast on?"
///
/// # Errors
/// A `TypeError` whose sentence names the field, when the object is no question.
#[wasm_bindgen(js_name = castOn, unchecked_return_type = "CastOnResult")]
pub fn cast_on(
    #[wasm_bindgen(unchecked_param_type = "Asked<CastOnQuestion, 'width' | 'gauge'>")] question: JsValue,
) -> Result<JsValue, JsValue> {
    let metre = Length::of(1, LengthUnit::M);
    let usual = Question::about(metre, Gauge::of(20, Gauge::TEN_CM));
    let always = ["width", "gauge"];
    bind::ask("castOn", &usual, &always, &question, cast_on::answer)
}
