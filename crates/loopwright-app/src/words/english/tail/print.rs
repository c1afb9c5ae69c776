//! How the lengths of a tail are printed. What is made of yarn is printed no shorter than it is, and yards and metres
//! never stand in one answer.

use crate::words::english::units::{quantity, quantity_or_more};
use loopwright::units::print::Step;
use loopwright::units::{Length, LengthUnit};

/// How lengths are printed: in one family of units, yards with inches or metres with centimetres.
#[derive(Clone, Copy)]
pub struct Print {
    /// Whether in yards and inches.
    pub yards: bool,
}

impl Print {
    /// As it is measured off, and no less.
    pub(in crate::words::english) fn up(self, length: Length) -> String {
        self.print(length, false, quantity_or_more)
    }

    /// As it is measured off, the nearest.
    pub(in crate::words::english) fn nearest(self, length: Length) -> String {
        self.print(length, false, quantity)
    }

    /// As finely as a sum needs it, and no less.
    pub(super) fn fine_up(self, length: Length) -> String {
        self.print(length, true, quantity_or_more)
    }

    /// As it was typed.
    pub(super) fn fine(self, length: Length) -> String {
        self.print(length, true, quantity)
    }

    /// In its unit, to the step that yarn is measured off to or finer: below a yard or a metre with a tape.
    fn print(self, length: Length, fine: bool, printed: fn(Length, LengthUnit, Step) -> String) -> String {
        let [long, short] = if self.yards {
            [(LengthUnit::Yard, Step::Tenth), (LengthUnit::Inch, Step::Quarters)]
        } else {
            [(LengthUnit::M, Step::Tenth), (LengthUnit::Cm, Step::Half)]
        };
        let (unit, step) = if length < Length::of(1, long.0) { short } else { long };
        printed(length, unit, if fine { Step::Hundredth } else { step })
    }
}

/// A needle, or how thick yarn is.
pub(super) fn across(length: Length) -> String {
    quantity(length, LengthUnit::Mm, Step::Hundredth)
}
