//! Text to quantity and back: the only way for a length, a weight, a gauge or a typed count into a question.
//!
//! Whatever the text, reading gives a value: `{ value, unit }`, or `{ unreadable }` with what would be right where
//! there is something.

use crate::{bind, given};
use loopwright::bounds::Bounds;
use loopwright::tables::needle::read_across;
use loopwright::tail::NEEDLE;
use loopwright::units::parse::{Unreadable, Wanted, read};
use loopwright::units::print::with_unit;
use loopwright::units::{Gauge, Length, LengthUnit, Mass, MassUnit, Unit, count};
use serde::Serialize;
use serde::de::DeserializeOwned;
use wasm_bindgen::prelude::*;

/// What was read, or why nothing was.
#[derive(Serialize)]
#[serde(untagged)]
enum Reading<T> {
    Read { value: T, unit: Option<Unit> },
    Not { unreadable: Unreadable },
}

impl<T> Reading<T> {
    fn new(read: Result<(T, Option<Unit>), Unreadable>) -> Self {
        match read {
            Ok((value, unit)) => Self::Read { value, unit },
            Err(unreadable) => Self::Not { unreadable },
        }
    }
}

/// Reads a length: `"7 1/2 in"`, `"19,5"`. Without a unit in the text, `unit` is meant.
///
/// # Errors
/// A `TypeError` when `text` is no string or `unit` no unit.
#[wasm_bindgen(js_name = readLength, unchecked_return_type = "Reading<Length>")]
pub fn read_length(
    #[wasm_bindgen(unchecked_param_type = "string")] text: JsValue,
    #[wasm_bindgen(unchecked_param_type = "LengthUnit")] unit: JsValue,
) -> Result<JsValue, JsValue> {
    let text: String = argument("readLength", "text", text)?;
    let unit: LengthUnit = argument("readLength", "unit", unit)?;
    let wanted = Wanted {
        bounds: Bounds::new(Length::from_nm(-MOST), Length::from_nm(MOST)),
        unit,
    };
    bind::plain(&Reading::new(read(&text, &wanted).map(|read| (read.value, read.unit))))
}

/// Reads a weight: `"50 g"`, `"1.75 oz"`. Without a unit in the text, `unit` is meant.
///
/// # Errors
/// A `TypeError` when `text` is no string or `unit` no unit.
#[wasm_bindgen(js_name = readMass, unchecked_return_type = "Reading<Mass>")]
pub fn read_mass(
    #[wasm_bindgen(unchecked_param_type = "string")] text: JsValue,
    #[wasm_bindgen(unchecked_param_type = "MassUnit")] unit: JsValue,
) -> Result<JsValue, JsValue> {
    let text: String = argument("readMass", "text", text)?;
    let unit: MassUnit = argument("readMass", "unit", unit)?;
    let wanted = Wanted {
        bounds: Bounds::new(Mass::ZERO, Mass::from_ng(MOST)),
        unit,
    };
    bind::plain(&Reading::new(read(&text, &wanted).map(|read| (read.value, read.unit))))
}

/// Reads a count: `"132"`, `"1,000 sts"`. Half a stitch is unreadable, with the counts either side.
///
/// # Errors
/// A `TypeError` when `text` is no string.
#[wasm_bindgen(js_name = readCount, unchecked_return_type = "Reading<number>")]
pub fn read_count(#[wasm_bindgen(unchecked_param_type = "string")] text: JsValue) -> Result<JsValue, JsValue> {
    let text: String = argument("readCount", "text", text)?;
    let read = count::read(&text, Bounds::new(0, u32::MAX));
    bind::plain(&Reading::new(read.map(|read| (read.value, read.unit))))
}

/// Reads a gauge in one direction, such as `"21 1/2"` or `"22 sts = 4 in"`, counted over a span, such as `readLength("10 cm", "Cm").value`.
///
/// # Errors
/// A `TypeError` when `text` is no string or `over` no length above zero.
#[wasm_bindgen(js_name = readGauge, unchecked_return_type = "Reading<Gauge>")]
pub fn read_gauge(
    #[wasm_bindgen(unchecked_param_type = "string")] text: JsValue,
    #[wasm_bindgen(unchecked_param_type = "Length")] over: JsValue,
) -> Result<JsValue, JsValue> {
    let text: String = argument("readGauge", "text", text)?;
    let over: Length = argument("readGauge", "over", over)?;
    if over <= Length::ZERO {
        return Err(bind::mistake("readGauge: over: a span is above zero"));
    }
    bind::plain(&Reading::new(Gauge::read(&text, over).map(|gauge| (gauge, None))))
}

/// Reads how thick a needle is: `"4"` and `"4 mm"`, `"US 6"`, `"6 US"`, `"UK 8"`. A number alone is millimetres; where it may
/// be a needle's name, as `"10 1/2"`, it is unreadable, with the needles it may mean.
///
/// # Errors
/// A `TypeError` when `text` is no string.
#[wasm_bindgen(js_name = readNeedle, unchecked_return_type = "Reading<Length>")]
pub fn read_needle(#[wasm_bindgen(unchecked_param_type = "string")] text: JsValue) -> Result<JsValue, JsValue> {
    let text: String = argument("readNeedle", "text", text)?;
    let read = read_across(&text, NEEDLE);
    bind::plain(&Reading::new(read.map(|read| (read.across, None))))
}

/// Writes a length as finely as it is usually shown: `"7 1/2 in"`, `"19 cm"`. For the eye: it is rounded.
///
/// # Errors
/// A `TypeError` when either is not what it should be.
#[wasm_bindgen(js_name = printLength)]
pub fn print_length(
    #[wasm_bindgen(unchecked_param_type = "Length")] length: JsValue,
    #[wasm_bindgen(unchecked_param_type = "LengthUnit")] unit: JsValue,
) -> Result<String, JsValue> {
    let unit: LengthUnit = argument("printLength", "unit", unit)?;
    let length: Length = argument("printLength", "length", length)?;
    Ok(with_unit(length, unit, unit.usual_step()))
}

/// Writes a weight as finely as it is usually shown: `"48.5 g"`, `"1.76 oz"`. For the eye: it is rounded.
///
/// # Errors
/// A `TypeError` when either is not what it should be.
#[wasm_bindgen(js_name = printMass)]
pub fn print_mass(
    #[wasm_bindgen(unchecked_param_type = "Mass")] mass: JsValue,
    #[wasm_bindgen(unchecked_param_type = "MassUnit")] unit: JsValue,
) -> Result<String, JsValue> {
    let unit: MassUnit = argument("printMass", "unit", unit)?;
    let mass: Mass = argument("printMass", "mass", mass)?;
    Ok(with_unit(mass, unit, unit.usual_step()))
}

/// The largest whole number that a JavaScript number holds exactly: some nine thousand kilometres, or nine tonnes.
const MOST: i64 = (1 << 53) - 1;

fn argument<T: DeserializeOwned>(function: &str, name: &str, value: JsValue) -> Result<T, JsValue> {
    given::read(value).map_err(|why| bind::mistake(&format!("{function}: {name}: {why}")))
}
