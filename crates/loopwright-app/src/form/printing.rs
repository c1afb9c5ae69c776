//! Quantities as they stand in sentences, in the unit that is shown.

use super::{Fields, Scale, TAPE};
use crate::words::units::Lengths;
use loopwright::units::print::Step;
use loopwright::units::{Length, Measure};

impl Fields {
    /// A quantity as it stands in a sentence, in the unit that is shown.
    pub fn print<T: Measure>(&self, scale: &Scale<T>, value: T) -> String {
        scale.print(self.settings(), value)
    }

    /// The same, as finely as `step` says.
    pub fn print_to<T: Measure>(&self, scale: &Scale<T>, value: T, step: Step) -> String {
        scale.print_to(self.settings(), value, step)
    }

    /// A length as a tape shows it.
    pub fn tape(&self, length: Length) -> String {
        self.print(&TAPE, length)
    }

    /// How lengths on this scale are written in sentences.
    pub fn lengths(&self, scale: &Scale<Length>) -> Lengths {
        let shown = scale.shown(self.settings());
        Lengths {
            unit: shown.unit,
            step: shown.step,
        }
    }

    /// Whether a scale shows inches and yards.
    pub fn in_inches(&self, scale: &Scale<Length>) -> bool {
        scale.in_inches(self.settings())
    }
}
