//! What a step comes to, as plain data, or why it comes to nothing.

use crate::reference::Reference;
use crate::text::Texts;
use std::collections::BTreeMap;

/// What a tool answers to the fields of a step.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Outcome {
    /// The answer in a line, in words.
    pub headline: String,
    /// What it hands on to other steps, as it would be typed there, by its key.
    pub gifts: Texts,
    /// What it adds to the whole.
    pub totals: Totals,
    /// The cords it asks for, in nanometres, each as it is called.
    pub cords: BTreeMap<u64, String>,
}

/// What a step counts, as far as its tool knows.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Totals {
    /// Stitches on the needle before it.
    pub before: Option<u32>,
    /// Stitches on the needle after it.
    pub after: Option<u32>,
    /// Rows or rounds that are knitted in it.
    pub rows: Option<u32>,
    /// Yarn, in millimetres.
    pub yarn_mm: Option<u64>,
    /// Balls to buy.
    pub balls: Option<u32>,
}

/// What a tool says to the fields of a step.
pub type Answered = Result<Outcome, Vec<Trouble>>;

/// Why a step has no answer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Trouble {
    /// No tool of this name is known.
    NoSuchTool,
    /// A field stands on something that is not there: a fact that is not known, a step that is none or has no answer.
    Missing {
        /// The field.
        field: String,
        /// What it stands on.
        reference: Reference,
    },
    /// A field stands on the step's own answer, by way of others.
    Circle {
        /// The field.
        field: String,
    },
    /// What is wrong in a field, in the tool's own words.
    Field {
        /// The field.
        field: String,
        /// The sentence.
        sentence: String,
    },
}
