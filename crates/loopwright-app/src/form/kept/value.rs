//! A value of an answer that can be kept as a fact, or carried on to another tool.

use super::Kept;
use crate::form::{Measures, NEEDLE, TAPE, gauge_as_typed};
use crate::store::Typed;
use crate::words::units;
use loopwright::units::print::{self, Step};
use loopwright::units::{Gauge, Length, LengthUnit};

/// A value that an answer offers to be kept or carried on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Value {
    /// A count.
    Count(u32),
    /// A needle, across.
    Needle(Length),
    /// What a tape measures.
    Length(Length),
    /// A gauge.
    Gauge(Gauge),
}

impl Value {
    /// The value as it would be typed into a field; none if no field would take it.
    pub fn as_typed(self) -> Option<Typed> {
        match self {
            Self::Count(count) => Some(Typed::plain(count.to_string())),
            Self::Needle(across) => needle_as_typed(across),
            Self::Length(length) => Some(TAPE.typed(length)),
            Self::Gauge(gauge) => gauge_as_typed(gauge),
        }
    }
}

impl Kept {
    /// A value of an answer as it stands in a sentence: a mean to the quarter, though all of it is kept.
    pub fn print_value(self, measures: Measures, value: Value, typed: &Typed) -> String {
        match value {
            Value::Gauge(gauge) => units::gauge_in_sum(gauge),
            Value::Length(length) if measures == Measures::Inches => {
                units::quantity(length, LengthUnit::Inch, Step::Eighths)
            }
            Value::Count(_) | Value::Needle(_) | Value::Length(_) => self.print_in(measures, typed),
        }
    }
}

/// A needle as its field reads it back; none if it is finer than it would be written.
fn needle_as_typed(across: Length) -> Option<Typed> {
    let typed = Typed::with_unit(print::print(across, LengthUnit::Mm, Step::Thousandth), "mm");
    let read = NEEDLE.as_typed(&typed).ok()?.read_any();
    read.is_ok_and(|read| read.value == across).then_some(typed)
}

/// What an answer offers: under which name, and the value.
pub type Offer = (Kept, Value);

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_needle_is_kept_as_thick_as_it_is_or_not_at_all() {
        let typed = |nm| Value::Needle(Length::from_nm(nm)).as_typed();
        assert_eq!(typed(2_250_000), Some(Typed::with_unit("2.25", "mm")));
        assert_eq!(typed(2_125_000), Some(Typed::with_unit("2.125", "mm")));
        assert_eq!(typed(2_125_400), None);
    }
}
