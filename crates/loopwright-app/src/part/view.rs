//! What a tool's form and answer are drawn with: the sheet that taps write to, and the fields as they stand.

use super::Sheet;
use crate::form::{Fields, Scale, TAPE};
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

    /// A quantity as it stands in a sentence, in the unit that is shown.
    pub fn print<T: Measure>(&self, scale: &Scale<T>, value: T) -> String {
        scale.print(self.fields.settings(), value)
    }

    /// The same, as finely as `step` says.
    pub fn print_to<T: Measure>(&self, scale: &Scale<T>, value: T, step: Step) -> String {
        scale.print_to(self.fields.settings(), value, step)
    }

    /// A length as a tape shows it.
    pub fn tape(&self, length: Length) -> String {
        self.print(&TAPE, length)
    }

    /// How lengths on this scale are written in sentences.
    pub fn lengths(&self, scale: &Scale<Length>) -> Lengths {
        let shown = scale.shown(self.fields.settings());
        Lengths {
            unit: shown.unit,
            step: shown.step,
        }
    }

    /// Whether a scale shows inches and yards.
    pub fn in_inches(&self, scale: &Scale<Length>) -> bool {
        scale.in_inches(self.fields.settings())
    }
}
