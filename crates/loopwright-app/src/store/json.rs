//! Entries and sheets as text, and copies of them back, by the browser's own JSON: readable by eye, by the recover screen, and
//! by any later version. Reading never fails: what is not ours is `None`, or a line that stays what it was.

use super::{Entry, Fields, Line, Sheets, Typed, record};
use js_sys::{Array, JSON, Object, Reflect};
use wasm_bindgen::{JsCast, JsValue};

/// One record of the log, whatever it is.
pub fn line(record: &JsValue) -> Line {
    // No version ever wrote anything but a text. What is none is looked into all the same, as far as it has a text.
    let text = record.as_string().or_else(|| JSON::stringify(record).ok()?.as_string());
    text.map_or_else(|| Line::Foreign(String::new()), |text| record::line(&text))
}

/// The text of an entry, ready to be stored.
pub fn record(entry: &Entry) -> Option<String> {
    text(&entry_object(entry)?, 0)
}

/// A value as text, indented by some spaces or on one line.
pub fn text(value: &JsValue, indent: u32) -> Option<String> {
    JSON::stringify_with_replacer_and_space(value, &JsValue::NULL, &indent.into())
        .ok()
        .map(String::from)
}

/// A property of an object; `None` where there is no such thing.
pub fn get(object: &JsValue, name: &str) -> Option<JsValue> {
    Reflect::get(object, &name.into())
        .ok()
        .filter(|value| !value.is_undefined() && !value.is_null())
}

/// An object with these properties.
pub fn object(pairs: &[(&str, JsValue)]) -> Option<JsValue> {
    let entries = Array::new();
    for (name, value) in pairs {
        entries.push(&Array::of2(&(*name).into(), value));
    }
    Object::from_entries(&entries).ok().map(JsValue::from)
}

/// All sheets as one object of objects.
pub fn sheets_object(sheets: &Sheets) -> Option<JsValue> {
    let mut pairs = Vec::new();
    for (name, fields) in sheets.iter() {
        pairs.push((name.as_str(), fields_object(fields)?));
    }
    object(&pairs)
}

/// The entries that make all sheets of such an object, or `None` if anything in it is not as we write it.
pub fn sheets_entries(object: &JsValue) -> Option<Vec<Entry>> {
    let mut entries = Vec::new();
    for (sheet, fields) in properties(object)? {
        for (field, value) in properties(&fields)? {
            entries.push(Entry::new(&sheet, field, Some(typed(&value)?)));
        }
    }
    Some(entries)
}

fn typed(object: &JsValue) -> Option<Typed> {
    let text = get(object, "text")?.as_string()?;
    let unit = match get(object, "unit") {
        Some(unit) => Some(unit.as_string()?),
        None => None,
    };
    Some(Typed { text, unit })
}

fn entry_object(entry: &Entry) -> Option<JsValue> {
    let mut pairs = vec![
        ("v", entry.v.into()),
        ("sheet", (&entry.sheet).into()),
        ("field", (&entry.field).into()),
    ];
    if let Some(typed) = &entry.typed {
        pairs.push(("typed", typed_object(typed)?));
    }
    object(&pairs)
}

fn fields_object(fields: &Fields) -> Option<JsValue> {
    let mut pairs = Vec::new();
    for (name, typed) in fields.iter() {
        pairs.push((name.as_str(), typed_object(typed)?));
    }
    object(&pairs)
}

fn typed_object(typed: &Typed) -> Option<JsValue> {
    let mut pairs = vec![("text", (&typed.text).into())];
    if let Some(unit) = &typed.unit {
        pairs.push(("unit", unit.into()));
    }
    object(&pairs)
}

fn properties(object: &JsValue) -> Option<Vec<(String, JsValue)>> {
    if !object.is_object() || Array::is_array(object) {
        return None;
    }
    let mut pairs = Vec::new();
    for pair in Object::entries(object.unchecked_ref()).iter() {
        let pair: Array = pair.unchecked_into();
        pairs.push((pair.get(0).as_string()?, pair.get(1)));
    }
    Some(pairs)
}
