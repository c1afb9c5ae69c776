//! What a tool's form and answer are drawn with: the sheet that taps write to, and the fields as they stand.

use super::Sheet;
use crate::form::{Fields, Scale};
use crate::words::units::Lengths;
use loopwright::units::print::Step;
use loopwright::units::{Length, Measure};

/// The sheet and the fields of one tool at one moment.
#[derive(Clone)]
pub struct View {
    /// Where taps and keystrokes are written.
    pub sheet: Sheet,
    /// The fields as they stand.
    pub fields: Fields,
}

impl View {
    /// The view as one member of the repeated group has it.
    pub fn member(&self, index: usize) -> Self {
        Self {
            sheet: self.sheet.clone(),
            fields: self.fields.member(index),
        }
    }

    /// A quantity as it stands in a sentence, as finely as `step` says.
    pub fn print_to<T: Measure>(&self, scale: &Scale<T>, value: T, step: Step) -> String {
        self.fields.print_to(scale, value, step)
    }

    /// A length as a tape shows it.
    pub fn tape(&self, length: Length) -> String {
        self.fields.tape(length)
    }

    /// How lengths on this scale are written in sentences.
    pub fn lengths(&self, scale: &Scale<Length>) -> Lengths {
        self.fields.lengths(scale)
    }

    /// Whether a scale shows inches and yards.
    pub fn in_inches(&self, scale: &Scale<Length>) -> bool {
        self.fields.in_inches(scale)
    }
}
