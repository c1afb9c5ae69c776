//! JSON as it stands in a file: names in their order, and one that is there twice is there twice. A general value would
//! keep the last of them and say nothing.

use serde::de::{Deserialize, Deserializer, MapAccess, SeqAccess, Visitor};
use serde::ser::{Serialize, Serializer};
use serde_json::Number;
use std::fmt;

/// The name that says that a file is a project of ours, and of which version.
pub const MARKER: &str = "loopwright-project";

/// A value.
#[derive(Clone, Debug, PartialEq)]
pub enum Json {
    /// `null`
    Null,
    /// `true`, `false`
    Truth(bool),
    /// A number
    Number(Number),
    /// A string
    Text(String),
    /// A list
    List(Vec<Json>),
    /// An object, with its names in their order
    Object(Vec<(String, Json)>),
}

impl Serialize for Json {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Null => serializer.serialize_unit(),
            Self::Truth(truth) => serializer.serialize_bool(*truth),
            Self::Number(number) => number.serialize(serializer),
            Self::Text(text) => serializer.serialize_str(text),
            Self::List(values) => serializer.collect_seq(values),
            Self::Object(pairs) => serializer.collect_map(pairs.iter().map(|(name, value)| (name, value))),
        }
    }
}

impl<'de> Deserialize<'de> for Json {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(Reader)
    }
}

struct Reader;

impl<'de> Visitor<'de> for Reader {
    type Value = Json;

    fn expecting(&self, text: &mut fmt::Formatter<'_>) -> fmt::Result {
        text.write_str("JSON")
    }

    fn visit_unit<E>(self) -> Result<Json, E> {
        Ok(Json::Null)
    }

    fn visit_bool<E>(self, truth: bool) -> Result<Json, E> {
        Ok(Json::Truth(truth))
    }

    fn visit_u64<E>(self, number: u64) -> Result<Json, E> {
        Ok(Json::Number(number.into()))
    }

    fn visit_i64<E>(self, number: i64) -> Result<Json, E> {
        Ok(Json::Number(number.into()))
    }

    fn visit_f64<E>(self, number: f64) -> Result<Json, E> {
        // A number of JSON is never infinite.
        Ok(Number::from_f64(number).map_or(Json::Null, Json::Number))
    }

    fn visit_str<E>(self, text: &str) -> Result<Json, E> {
        Ok(Json::Text(text.to_owned()))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<Json, A::Error> {
        let mut values = Vec::new();
        while let Some(value) = list.next_element()? {
            values.push(value);
        }
        Ok(Json::List(values))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut object: A) -> Result<Json, A::Error> {
        let mut pairs = Vec::new();
        while let Some(pair) = object.next_entry()? {
            pairs.push(pair);
        }
        Ok(Json::Object(pairs))
    }
}
