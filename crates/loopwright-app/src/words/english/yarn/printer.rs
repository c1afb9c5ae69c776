//! The quantities in a sentence about yarn, each printed as finely as it is known.

use crate::words::english::units::quantity;
use crate::words::intl::{decimal, fill_pattern_with_strings, tenths};
use loopwright::units::print::{Step, is_same_to};
use loopwright::units::{Length, LengthUnit, Mass};

/// Yarn shorter than this is printed to a tenth.
const FINE: Length = Length::of(10, LengthUnit::M);

/// A value as it stands in a sentence.
#[derive(Clone, Copy)]
pub enum Value {
    /// A word.
    Word(&'static str),
    /// A number: `5.88`, `962.5`.
    Number(f64),
    /// A number to a tenth, with `about` before it where that rounds it.
    About(f64),
    /// Yarn: `307 m`.
    Yarn(Length),
    /// Yarn in a sum that has to add up: `375.6 m`.
    Exact(Length),
    /// What a ball or balls hold: `125 m`, or about so much where that is not all of it.
    Held(Length),
    /// The yarn in a stitch: `1.917 cm`.
    Fine(Length),
    /// What a scale says.
    Mass(Mass),
}

/// Prints values in the units that are shown.
pub struct Printer<'a> {
    /// Prints yarn, as finely as is said.
    pub yarn: &'a dyn Fn(Length, Step) -> String,
    /// Prints a weight.
    pub mass: &'a dyn Fn(Mass) -> String,
    /// The unit that yarn is printed in.
    pub unit: LengthUnit,
}

impl Printer<'_> {
    /// A value.
    pub fn print(&self, value: Value) -> String {
        match value {
            Value::Yarn(length) if length >= FINE => (self.yarn)(length, Step::Whole),
            Value::Yarn(length) | Value::Exact(length) => (self.yarn)(length, Step::Tenth),
            Value::Held(length) => self.held(length),
            Value::Fine(length) => quantity(length, LengthUnit::Cm, Step::Thousandth),
            Value::Mass(mass) => (self.mass)(mass),
            Value::Word(word) => word.into(),
            Value::Number(number) => decimal(number),
            Value::About(number) if tenths(number) == decimal(number) => decimal(number),
            Value::About(number) => format!("about {}", tenths(number)),
        }
    }

    /// A figure that is rounded where others are not says so.
    fn held(&self, length: Length) -> String {
        let held = (self.yarn)(length, Step::Tenth);
        if is_same_to(length, self.unit, Step::Tenth, Step::Thousandth) {
            held
        } else {
            format!("about {held}")
        }
    }

    /// A sentence with these numbers and values in it.
    pub fn sentence(&self, pattern: &str, numbers: &[u32], values: &[Value]) -> String {
        let words = values.iter().map(|value| self.print(*value)).collect();
        fill_pattern_with_strings(pattern, numbers, words)
    }
}
