//! What a step comes to, as plain data, or why it comes to nothing.

use crate::derive::Sheet;
use crate::project::Project;
use crate::reference::Reference;
use crate::text::Texts;

/// What a tool answers to the fields of a step.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Outcome {
    /// The answer in a line, in words.
    pub headline: String,
    /// What it hands on to other steps, as it would be typed there, by its key.
    pub gifts: Texts,
    /// What it adds to the whole.
    pub totals: Totals,
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

/// What all steps of a project come to.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct All {
    /// The most stitches that are on the needle before or after a step.
    pub widest: Option<u32>,
    /// Rows and rounds of all steps that count them, each as often as it is knitted.
    pub rows: u64,
    /// Yarn of all steps that count it, in millimetres.
    pub yarn_mm: u64,
    /// Balls of all steps that count them.
    pub balls: u64,
}

/// What all steps come to together. A step whose amount cannot be read counts once.
pub fn sum(project: &Project, sheet: &Sheet) -> All {
    let mut all = All::default();
    for derived in &sheet.steps {
        let (Some(step), Some(outcome)) = (project.step(derived.id), derived.outcome()) else {
            continue;
        };
        let (totals, times) = (outcome.totals, u64::from(step.times().unwrap_or(1)));
        let widest = [all.widest, totals.before, totals.after];
        all.widest = widest.into_iter().flatten().max();
        all.rows += u64::from(totals.rows.unwrap_or_default()) * times;
        all.yarn_mm = all
            .yarn_mm
            .saturating_add(totals.yarn_mm.unwrap_or_default().saturating_mul(times));
        all.balls += u64::from(totals.balls.unwrap_or_default()) * times;
    }
    all
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
