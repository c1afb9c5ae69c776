//! What the app would say: of an answer its lead, what else is good to know, and the working with its source; of a question
//! without one, what to type instead. The sentences are the app's own, taken from its folder of words, which knows the
//! maths only; what each tool leads with stands in `tools`.

mod tools;

use crate::bind::mistake;
use crate::given;
use crate::words::units::{Lengths, quantity};
use loopwright::problem::Problem;
use loopwright::units::print::Step;
use loopwright::units::{Length, LengthUnit};
use serde::Serialize;
use std::cell::Cell;
use wasm_bindgen::prelude::*;

/// A question that can be answered in words.
pub(crate) trait Spoken {
    /// What the app would say to it.
    fn in_words(&self, measures: Measures) -> InWords;
}

/// What is said: of an answer, or of each problem.
#[derive(Serialize)]
#[serde(untagged)]
pub(crate) enum InWords {
    Answer(Told),
    Problems(Vec<Advice>),
}

/// An answer in words.
#[derive(Serialize)]
pub(crate) struct Told {
    title: String,
    line: String,
    outcome: String,
    notes: Vec<String>,
    working: Vec<String>,
    source: String,
}

/// What to type instead, and where.
#[derive(Serialize)]
pub(crate) struct Advice {
    field: String,
    sentence: String,
}

/// In which units lengths are written.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(crate) enum Measures {
    Centimetres,
    Inches,
}

impl Measures {
    /// How a tape is read.
    fn lengths(self) -> Lengths {
        let (unit, step) = match self {
            Self::Centimetres => (LengthUnit::Cm, Step::Tenth),
            Self::Inches => (LengthUnit::Inch, Step::Eighths),
        };
        Lengths { unit, step }
    }

    /// A length as a tape has it.
    fn tape(self, length: Length) -> String {
        let Lengths { unit, step } = self.lengths();
        quantity(length, unit, step)
    }
}

thread_local! {
    static MEASURES: Cell<Measures> = const { Cell::new(Measures::Centimetres) };
}

/// Chooses the units that sentences are written in from here on: centimetres and metres, or inches and yards.
///
/// # Errors
/// A `TypeError` where it is neither.
#[wasm_bindgen(js_name = measureIn)]
pub fn measure_in(
    #[wasm_bindgen(unchecked_param_type = "'centimetres' | 'inches'")] measures: &JsValue,
) -> Result<(), JsValue> {
    let chosen = match measures.as_string().as_deref() {
        Some("centimetres") => Measures::Centimetres,
        Some("inches") => Measures::Inches,
        _ => {
            let given = given::described(measures);
            let sentence = format!("measureIn: \"centimetres\" or \"inches\" is needed, not {given}");
            return Err(mistake(&sentence));
        }
    };
    MEASURES.set(chosen);
    Ok(())
}

/// What the app would say to a question, in the units that were chosen.
pub(crate) fn said(question: &impl Spoken) -> InWords {
    question.in_words(MEASURES.get())
}

/// An answer in words: what stands above its line, the line, and what it comes to.
fn lead(title: &str, line: String, (before, after): (String, String)) -> Told {
    Told {
        title: title.to_owned(),
        line,
        outcome: format!("{before} {after}."),
        notes: Vec::new(),
        working: Vec::new(),
        source: String::new(),
    }
}

impl Told {
    fn noting(self, notes: Vec<String>) -> Self {
        Self { notes, ..self }
    }

    fn working(self, working: Vec<String>, source: &str) -> InWords {
        let source = source.to_owned();
        InWords::Answer(Self {
            working,
            source,
            ..self
        })
    }
}

/// Each problem with what to type instead.
fn advice(problems: &[Problem], sentence: impl Fn(&Problem) -> String) -> InWords {
    let advice = problems.iter().map(|problem| Advice {
        field: problem.field.to_string(),
        sentence: sentence(problem),
    });
    InWords::Problems(advice.collect())
}
