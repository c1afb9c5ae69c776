//! Reads what a program handed over, a value of JavaScript, as a question or a part of one.
//!
//! Each kind that a question is made of is checked here where it is asked for, so that what is wrong is said in the words
//! of JavaScript: "a whole number from 0 to 4294967295 is needed, not 132.5".

use js_sys::{Array, JSON, JsString, Number, Object, Reflect};
use serde::de::value::{MapDeserializer, SeqDeserializer};
use serde::de::{self, DeserializeOwned, DeserializeSeed, EnumAccess, IntoDeserializer, VariantAccess, Visitor};
use std::fmt::{self, Display};
use wasm_bindgen::{JsCast, JsValue};

/// Reads a value; what is wrong is said with the path to it, such as `ask.Lose`.
pub fn read<T: DeserializeOwned>(value: JsValue) -> Result<T, String> {
    serde_path_to_error::deserialize(Given(value)).map_err(|error| {
        let path = error.path().to_string();
        let sentence = error.into_inner().0;
        if path == "." {
            sentence
        } else {
            format!("{path}: {sentence}")
        }
    })
}

/// What is wrong, as a sentence.
#[derive(Debug)]
pub struct Mistake(String);

impl Display for Mistake {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl std::error::Error for Mistake {}

impl de::Error for Mistake {
    fn custom<T: Display>(sentence: T) -> Self {
        Self(sentence.to_string())
    }

    fn missing_field(field: &'static str) -> Self {
        Self(format!("{field}: missing"))
    }

    fn unknown_field(field: &str, _: &'static [&'static str]) -> Self {
        Self(format!("{field}: there is no such field"))
    }
}

/// A value that was handed over.
struct Given(JsValue);

impl Given {
    /// That this is not what is needed.
    fn refused<T>(&self, needed: &str) -> Result<T, Mistake> {
        Err(Mistake(format!("{needed} is needed, not {}", described(&self.0))))
    }

    /// A whole number between two bounds that are themselves exact in JavaScript.
    fn whole<T: TryFrom<i64>>(&self, least: f64, most: f64) -> Result<T, Mistake> {
        let number = self.0.as_f64();
        let whole = number.filter(|number| number.fract() == 0.0 && (least..=most).contains(number));
        // Exact: it is whole, and no larger than JavaScript counts without gaps.
        #[allow(clippy::cast_possible_truncation)]
        let whole = whole.and_then(|number| T::try_from(number as i64).ok());
        whole.map_or_else(|| self.refused(&format!("a whole number from {least} to {most}")), Ok)
    }

    /// A plain object; neither an array nor a function.
    fn object(&self) -> Result<Object, Mistake> {
        let object = self.0.dyn_ref::<Object>();
        let plain = object.filter(|object| !Array::is_array(object) && !object.is_function());
        plain.map_or_else(|| self.refused("an object"), |object| Ok(object.clone()))
    }

    /// The fields of an object, those that it inherits of the names asked for among them.
    fn fields(&self, names: &'static [&'static str]) -> Result<Vec<(String, Self)>, Mistake> {
        let object = self.object()?;
        for key in own_keys(&object) {
            if !names.contains(&key.as_str()) {
                return Err(de::Error::unknown_field(&key, names));
            }
        }
        let field = |name: &&'static str| {
            let value = Reflect::get(&object, &JsValue::from_str(name)).unwrap_or(JsValue::UNDEFINED);
            (!value.is_undefined()).then(|| ((*name).to_owned(), Self(value)))
        };
        Ok(names.iter().filter_map(field).collect())
    }
}

/// The names of an object's own fields.
pub fn own_keys(object: &Object) -> Vec<String> {
    let keys = Object::keys(object);
    keys.iter().filter_map(|key| key.as_string()).collect()
}

/// A value as a programmer writes it, shortened where it is long.
pub fn described(value: &JsValue) -> String {
    const LONGEST: u32 = 60;
    if let Some(number) = value.dyn_ref::<Number>() {
        // JSON has no NaN and no infinity, and would call them null.
        return number
            .to_string_with_radix(10)
            .map_or_else(|_| "a number".to_owned(), String::from);
    }
    if value.is_undefined() {
        return "undefined".to_owned();
    }
    if value.is_function() {
        return "a function".to_owned();
    }
    match JSON::stringify(value) {
        Ok(text) if text.length() <= LONGEST => text.into(),
        Ok(text) => format!("{}…", String::from(text.slice(0, LONGEST))),
        Err(_) => String::from(value.js_typeof().unchecked_into::<JsString>()),
    }
}

impl IntoDeserializer<'_, Mistake> for Given {
    type Deserializer = Self;

    fn into_deserializer(self) -> Self {
        self
    }
}

impl<'de> de::Deserializer<'de> for Given {
    type Error = Mistake;

    fn deserialize_bool<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        match self.0.as_bool() {
            Some(yes) => visitor.visit_bool(yes),
            None => self.refused("true or false"),
        }
    }

    fn deserialize_u8<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        visitor.visit_u8(self.whole(0.0, f64::from(u8::MAX))?)
    }

    fn deserialize_u16<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        visitor.visit_u16(self.whole(0.0, f64::from(u16::MAX))?)
    }

    fn deserialize_u32<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        visitor.visit_u32(self.whole(0.0, f64::from(u32::MAX))?)
    }

    fn deserialize_u64<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        visitor.visit_u64(self.whole(0.0, Number::MAX_SAFE_INTEGER)?)
    }

    fn deserialize_i16<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        visitor.visit_i16(self.whole(f64::from(i16::MIN), f64::from(i16::MAX))?)
    }

    fn deserialize_i32<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        visitor.visit_i32(self.whole(f64::from(i32::MIN), f64::from(i32::MAX))?)
    }

    fn deserialize_i64<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        visitor.visit_i64(self.whole(Number::MIN_SAFE_INTEGER, Number::MAX_SAFE_INTEGER)?)
    }

    fn deserialize_str<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        match self.0.as_string() {
            Some(text) => visitor.visit_string(text),
            None => self.refused("a string"),
        }
    }

    fn deserialize_string<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        self.deserialize_str(visitor)
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        if self.0.is_null() || self.0.is_undefined() {
            visitor.visit_none()
        } else {
            visitor.visit_some(self)
        }
    }

    fn deserialize_newtype_struct<V: Visitor<'de>>(self, _: &'static str, visitor: V) -> Result<V::Value, Mistake> {
        visitor.visit_newtype_struct(self)
    }

    fn deserialize_seq<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        match self.0.dyn_ref::<Array>() {
            Some(array) => visitor.visit_seq(SeqDeserializer::new(array.iter().map(Given))),
            None => self.refused("an array"),
        }
    }

    fn deserialize_tuple<V: Visitor<'de>>(self, _: usize, visitor: V) -> Result<V::Value, Mistake> {
        self.deserialize_seq(visitor)
    }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        fields: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Mistake> {
        visitor.visit_map(MapDeserializer::new(self.fields(fields)?.into_iter()))
    }

    /// A choice is its name, or an object with its name as the only key.
    fn deserialize_enum<V: Visitor<'de>>(
        self,
        _: &'static str,
        variants: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Mistake> {
        let choice = Choice::of(&self).filter(|choice| variants.contains(&choice.name.as_str()));
        match choice {
            Some(choice) => visitor.visit_enum(choice),
            None => self.refused(&one_of(variants)),
        }
    }

    fn deserialize_identifier<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        self.deserialize_str(visitor)
    }

    /// What no question is made of is read by nobody.
    fn deserialize_any<V: Visitor<'de>>(self, _: V) -> Result<V::Value, Mistake> {
        self.refused("a part of a question")
    }

    serde::forward_to_deserialize_any! {
        i8 i128 u128 f32 f64 char bytes byte_buf unit unit_struct tuple_struct map ignored_any
    }
}

/// The names of a choice, in a sentence.
fn one_of(variants: &[&str]) -> String {
    let quoted: Vec<String> = variants.iter().map(|name| format!("{name:?}")).collect();
    match quoted.split_last() {
        Some((last, [])) => last.clone(),
        Some((last, before)) => format!("{} or {last}", before.join(", ")),
        None => "nothing".to_owned(),
    }
}

/// What was chosen: the name, and what comes with it.
struct Choice {
    name: String,
    content: Option<JsValue>,
}

impl Choice {
    fn of(given: &Given) -> Option<Self> {
        if let Some(name) = given.0.as_string() {
            return Some(Self { name, content: None });
        }
        let object = given.object().ok()?;
        let [name] = <[String; 1]>::try_from(own_keys(&object)).ok()?;
        let content = Reflect::get(&object, &JsValue::from_str(&name)).ok();
        Some(Self { name, content })
    }
}

impl<'de> EnumAccess<'de> for Choice {
    type Error = Mistake;
    type Variant = Content;

    fn variant_seed<S: DeserializeSeed<'de>>(self, seed: S) -> Result<(S::Value, Content), Mistake> {
        let name: de::value::StringDeserializer<Mistake> = self.name.into_deserializer();
        Ok((seed.deserialize(name)?, Content(self.content)))
    }
}

/// What comes with the name of a choice, if anything.
struct Content(Option<JsValue>);

impl Content {
    /// What comes with the name; a name alone has nothing.
    fn given(self) -> Given {
        Given(self.0.unwrap_or(JsValue::UNDEFINED))
    }
}

impl<'de> VariantAccess<'de> for Content {
    type Error = Mistake;

    fn unit_variant(self) -> Result<(), Mistake> {
        match self.0 {
            None => Ok(()),
            Some(value) => Given(value).refused("the name alone"),
        }
    }

    fn newtype_variant_seed<S: DeserializeSeed<'de>>(self, seed: S) -> Result<S::Value, Mistake> {
        seed.deserialize(self.given())
    }

    fn tuple_variant<V: Visitor<'de>>(self, _: usize, visitor: V) -> Result<V::Value, Mistake> {
        de::Deserializer::deserialize_seq(self.given(), visitor)
    }

    fn struct_variant<V: Visitor<'de>>(self, fields: &'static [&'static str], visitor: V) -> Result<V::Value, Mistake> {
        let fields = self.given().fields(fields)?;
        visitor.visit_map(MapDeserializer::new(fields.into_iter()))
    }
}
