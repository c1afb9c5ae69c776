//! Flare: the function.

use crate::bind;
use loopwright::flare::{self, Hem, Question};
use loopwright::units::{Gauge, Length};
use wasm_bindgen::prelude::*;

/// "From 96 stitches at the neck to a hem of 3 m, in a depth of 30 cm. When do I increase, and how will it hang?"
///
/// # Errors
/// A `TypeError` whose sentence names the field, when the object is no question.
#[wasm_bindgen(unchecked_return_type = "FlareResult")]
pub fn flare(
    #[wasm_bindgen(unchecked_param_type = "Asked<FlareQuestion, 'neck' | 'depth' | 'gauge' | 'row_gauge'>")]
    question: JsValue,
) -> Result<JsValue, JsValue> {
    let gauge = Gauge::of(1, Gauge::TEN_CM);
    let usual = Question::about(1, Hem::Flat, Length::ZERO, gauge, gauge);
    bind::ask(
        "flare",
        &usual,
        &["neck", "depth", "gauge", "row_gauge"],
        &question,
        flare::answer,
    )
}
