//! Whether a text is as the schema of the format says. It knows the words that the schema uses and no other, so that one
//! that is not checked cannot slip in.

use regex::Regex;
use serde_json::{Map, Value};

/// What of a text is not as a schema says, each with its place; nothing where all is.
pub fn faults(schema: &str, text: &str) -> Vec<String> {
    let schema = serde_json::from_str(schema).expect("the schema is JSON");
    match serde_json::from_str(text) {
        Ok(value) => Checker { schema: &schema }.faults(&schema, &value, "file"),
        Err(why) => vec![why.to_string()],
    }
}

struct Checker<'a> {
    schema: &'a Value,
}

impl Checker<'_> {
    /// What of a value is not as a part of the schema says.
    fn faults(&self, part: &Value, value: &Value, at: &str) -> Vec<String> {
        let both = part.get("properties").and(part.get("additionalProperties"));
        assert!(
            both.is_none(),
            "properties beside additional ones are not told apart here"
        );
        let words = object(part).iter();
        words
            .flat_map(|(word, says)| self.of_word(word, says, value, at))
            .collect()
    }

    fn of_word(&self, word: &str, says: &Value, value: &Value, at: &str) -> Vec<String> {
        let below = |name: &str| format!("{at}.{name}");
        match word {
            "$ref" => self.faults(self.part(says), value, at),
            "properties" => {
                let there = object(says)
                    .iter()
                    .filter_map(|(name, part)| Some((name, part, value.get(name)?)));
                there
                    .flat_map(|(name, part, value)| self.faults(part, value, &below(name)))
                    .collect()
            }
            "additionalProperties" => {
                let all = value.as_object().into_iter().flatten();
                all.flat_map(|(name, value)| self.faults(says, value, &below(name)))
                    .collect()
            }
            "propertyNames" => {
                let names = value.as_object().into_iter().flat_map(Map::keys);
                names
                    .flat_map(|name| self.faults(says, &name.as_str().into(), &below(name)))
                    .collect()
            }
            "items" => {
                let items = value.as_array().into_iter().flatten().enumerate();
                items
                    .flat_map(|(place, item)| self.faults(says, item, &format!("{at}[{}]", place + 1)))
                    .collect()
            }
            word if self.holds(word, says, value) => Vec::new(),
            word => vec![format!("{at} is not as {word} says: {says}")],
        }
    }

    /// What a word says of a value as a whole.
    fn holds(&self, word: &str, says: &Value, value: &Value) -> bool {
        let is_so = |part: &Value| self.faults(part, value, "").is_empty();
        match word {
            "$schema" | "$defs" | "title" | "description" => true,
            "type" => is_of_type(says, value),
            "const" => says == value,
            "enum" => list(says).contains(value),
            "not" => !is_so(says),
            "anyOf" => list(says).iter().any(is_so),
            "required" => list(says)
                .iter()
                .all(|name| value.get(name.as_str().expect("a name")).is_some()),
            "minimum" => value.as_f64().is_none_or(|number| Some(number) >= says.as_f64()),
            "maximum" => value.as_f64().is_none_or(|number| Some(number) <= says.as_f64()),
            "maxItems" => value
                .as_array()
                .is_none_or(|items| items.len() as u64 <= says.as_u64().expect("a count")),
            "pattern" => {
                let pattern = Regex::new(says.as_str().expect("a text")).expect("a pattern");
                value.as_str().is_none_or(|text| pattern.is_match(text))
            }
            word => panic!("the schema says {word}, which is not checked"),
        }
    }

    fn part(&self, place: &Value) -> &Value {
        let place = place.as_str().and_then(|place| place.strip_prefix('#'));
        place
            .and_then(|place| self.schema.pointer(place))
            .expect("a part of the schema")
    }
}

fn object(value: &Value) -> &Map<String, Value> {
    value.as_object().expect("an object of the schema")
}

fn list(value: &Value) -> &[Value] {
    value.as_array().expect("a list of the schema")
}

fn is_of_type(says: &Value, value: &Value) -> bool {
    match says.as_str() {
        Some("null") => value.is_null(),
        Some("string") => value.is_string(),
        Some("object") => value.is_object(),
        Some("array") => value.is_array(),
        // A number with a point is none of ours, whatever it comes to.
        Some("integer") => value.is_i64() || value.is_u64(),
        other => panic!("the schema names the type {other:?}, which is not checked"),
    }
}
