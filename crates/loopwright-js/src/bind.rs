//! From a plain object to a question, and from an answer or its problems to a plain object: the same for every tool.
//!
//! What was left out is taken from the tool's usual question; what is not known there is refused by name, so that a
//! misspelt field is not passed over in silence. A field counts wherever the object has it from: its own, one that a
//! class gives it, or one that is worked out when it is read.

use crate::given::{own_keys, read};
#[cfg(feature = "words")]
use crate::told::{self, Spoken};
use js_sys::{Array, Object, Reflect, TypeError};
use loopwright::problem::Problem;
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_wasm_bindgen::Serializer;
use wasm_bindgen::{JsCast, JsValue};

/// What comes out: `{ answer }` or `{ problems }`.
#[derive(Serialize)]
#[serde(rename_all = "lowercase")]
enum Outcome<A> {
    Answer(A),
    Problems(Vec<Problem>),
}

/// Asks one tool. `usual` is its question where nothing is said, `always` the fields that have to be said.
pub(crate) fn ask<Q: Serialize + DeserializeOwned + Spoken, A: Serialize>(
    tool: &str,
    usual: &Q,
    always: &[&str],
    given: &JsValue,
    answer: impl FnOnce(&Q) -> Result<A, Vec<Problem>>,
) -> Result<JsValue, JsValue> {
    let refuse = |why: &str| mistake(&format!("{tool}: {why}"));
    let question = read(completed(usual, always, given, refuse)?).map_err(|why| refuse(&why))?;
    let outcome = match answer(&question) {
        Ok(answer) => Outcome::Answer(answer),
        Err(problems) => Outcome::Problems(problems),
    };
    with_words(plain(&outcome)?, &question)
}

/// What comes out with what the app would say beside it.
#[cfg(feature = "words")]
fn with_words(outcome: JsValue, question: &impl Spoken) -> Result<JsValue, JsValue> {
    Reflect::set(&outcome, &JsValue::from_str("words"), &plain(&told::said(question))?)?;
    Ok(outcome)
}

#[cfg(not(feature = "words"))]
fn with_words<Q: Spoken>(outcome: JsValue, _: &Q) -> Result<JsValue, JsValue> {
    Ok(outcome)
}

/// Without words there is nothing that a question has to have for them.
#[cfg(not(feature = "words"))]
pub(crate) trait Spoken {}

#[cfg(not(feature = "words"))]
impl<Q> Spoken for Q {}

/// As a plain object: no `Map`, and `null` for what is not there.
pub(crate) fn plain(value: &impl Serialize) -> Result<JsValue, JsValue> {
    // A whole number past 2^53 is no JavaScript number; nothing within the limits of a tool comes near it.
    value
        .serialize(&Serializer::json_compatible())
        .map_err(|error| mistake(&error.to_string()))
}

/// The error of a program that did not ask a question.
pub(crate) fn mistake(sentence: &str) -> JsValue {
    TypeError::new(sentence).into()
}

/// The given fields, and the usual ones for those that were left out. A getter that throws has its own error.
fn completed(
    usual: &impl Serialize,
    always: &[&str],
    given: &JsValue,
    refuse: impl Fn(&str) -> JsValue,
) -> Result<JsValue, JsValue> {
    let given = given.dyn_ref::<Object>().filter(|given| !Array::is_array(given));
    let given = given.ok_or_else(|| refuse("a question is an object"))?;
    let question: Object = plain(usual)?.unchecked_into();
    let known = own_keys(&question);
    if let Some(unknown) = own_keys(given).iter().find(|key| !known.contains(key)) {
        return Err(refuse(&format!("{unknown}: there is no such field")));
    }
    for field in &known {
        let key = JsValue::from_str(field);
        let value = Reflect::get(given, &key)?;
        if !value.is_undefined() {
            Reflect::set(&question, &key, &value)?;
        } else if always.contains(&field.as_str()) {
            return Err(refuse(&format!("{field}: missing")));
        }
    }
    Ok(question.into())
}
