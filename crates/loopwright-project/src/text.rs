//! Text as it was typed.

use std::collections::BTreeMap;

/// Text as it was typed, with the unit that stood beside it. Never a result, never rewritten.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Typed {
    /// The very characters.
    pub text: String,
    /// The unit chosen beside the field, where it has one: `cm`, `in`.
    pub unit: Option<String>,
}

impl Typed {
    /// Text without a unit of its own.
    pub fn plain(text: impl Into<String>) -> Self {
        Self {
            text: text.into(),
            unit: None,
        }
    }

    /// Text with the unit that stood beside it.
    pub fn with_unit(text: impl Into<String>, unit: impl Into<String>) -> Self {
        Self {
            text: text.into(),
            unit: Some(unit.into()),
        }
    }
}

/// Texts by the field they stand in.
pub type Texts = BTreeMap<String, Typed>;
