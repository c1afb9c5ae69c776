//! The pattern at one's own gauge: the function.

use crate::bind;
use loopwright::regauge::{self, Question};
use loopwright::units::Gauge;
use wasm_bindgen::prelude::*;

/// "It has 180 stitches at 20 in 10 cm, and I knit 22. What do I cast on?"
///
/// # Errors
/// A `TypeError` whose sentence names the field, when the object is no question.
#[wasm_bindgen(unchecked_return_type = "RegaugeResult")]
pub fn regauge(
    #[wasm_bindgen(unchecked_param_type = "Asked<RegaugeQuestion, 'pattern' | 'own'>")] question: JsValue,
) -> Result<JsValue, JsValue> {
    let gauge = Gauge::of(20, Gauge::TEN_CM);
    let usual = Question::about(gauge, gauge, Vec::new());
    bind::ask("regauge", &usual, &["pattern", "own"], &question, regauge::answer)
}
