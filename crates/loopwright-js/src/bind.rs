//! From a plain object to a question, and from an answer or its problems to a plain object: the same for every tool.
//!
//! What was left out is taken from the tool's usual question; what is not known there is refused by name, so that a
//! misspelt field is not passed over in silence.

use js_sys::{Array, JsString, Object, Reflect, TypeError};
use loopwright::problem::Problem;
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_wasm_bindgen::{Deserializer, Serializer};
use wasm_bindgen::{JsCast, JsValue};

/// What comes out: `{ answer }` or `{ problems }`.
#[derive(Serialize)]
#[serde(rename_all = "lowercase")]
enum Outcome<A> {
    Answer(A),
    Problems(Vec<Problem>),
}

/// Asks one tool. `usual` is its question where nothing is said, `always` the fields that have to be said.
pub(crate) fn ask<Q: Serialize + DeserializeOwned, A: Serialize>(
    tool: &str,
    usual: &Q,
    always: &[&str],
    given: &JsValue,
    answer: impl FnOnce(&Q) -> Result<A, Vec<Problem>>,
) -> Result<JsValue, JsValue> {
    let question = completed(usual, always, given).and_then(read);
    let question = question.map_err(|why| mistake(&format!("{tool}: {why}")))?;
    let outcome = match answer(&question) {
        Ok(answer) => Outcome::Answer(answer),
        Err(problems) => Outcome::Problems(problems),
    };
    plain(&outcome)
}

/// As a plain object: no `Map`, and `null` for what is not there.
pub(crate) fn plain(value: &impl Serialize) -> Result<JsValue, JsValue> {
    // A whole number past 2^53 is no JavaScript number; nothing within the limits of a tool comes near it.
    value
        .serialize(&Serializer::json_compatible())
        .map_err(|error| mistake(&error.to_string()))
}

/// Reads a value; what is wrong is said with the path to it, such as `ask.Lose`.
pub(crate) fn read<T: DeserializeOwned>(value: JsValue) -> Result<T, String> {
    serde_path_to_error::deserialize(Deserializer::from(value)).map_err(|error| {
        let (path, inner) = (error.path().to_string(), error.inner().to_string());
        let inner = inner.strip_prefix("Error: ").unwrap_or(&inner).to_owned();
        if path == "." { inner } else { format!("{path}: {inner}") }
    })
}

/// The error of a program that did not ask a question.
pub(crate) fn mistake(sentence: &str) -> JsValue {
    TypeError::new(sentence).into()
}

/// The given fields, and the usual ones for those that were left out.
fn completed(usual: &impl Serialize, always: &[&str], given: &JsValue) -> Result<JsValue, String> {
    let given = given
        .dyn_ref::<Object>()
        .filter(|given| !Array::is_array(given))
        .ok_or("a question is an object")?;
    let usual = plain(usual).map_err(|_| "no usual question")?;
    let usual: Object = usual.unchecked_into();
    for field in always {
        if get(given, field).is_undefined() {
            return Err(format!("{field}: missing"));
        }
    }
    let known = Object::keys(&usual);
    for key in Object::keys(given).iter() {
        if !known.includes(&key, 0) {
            let key: JsString = key.unchecked_into();
            return Err(format!("{key}: there is no such field"));
        }
        let value = Reflect::get(given, &key).unwrap_or(JsValue::UNDEFINED);
        if !value.is_undefined() {
            Reflect::set(&usual, &key, &value).map_err(|_| "the question cannot be read")?;
        }
    }
    Ok(usual.into())
}

fn get(object: &Object, field: &str) -> JsValue {
    Reflect::get(object, &JsValue::from_str(field)).unwrap_or(JsValue::UNDEFINED)
}
