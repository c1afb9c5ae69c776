//! Gauge: the function.

use crate::bind;
use loopwright::gauge::{self, Question};
use loopwright::units::Gauge;
use wasm_bindgen::prelude::*;

/// "I counted 21 stitches in 10 cm, and the pattern has 19. Which needle do I try next?"
///
/// # Errors
/// A `TypeError` whose sentence names the field, when the object is no question.
#[wasm_bindgen(unchecked_return_type = "GaugeResult")]
pub fn gauge(
    #[wasm_bindgen(unchecked_param_type = "Asked<GaugeQuestion, 'stitches'>")] question: JsValue,
) -> Result<JsValue, JsValue> {
    let usual = Question::about(Gauge::of(20, Gauge::TEN_CM));
    bind::ask("gauge", &usual, &["stitches"], &question, gauge::answer)
}
