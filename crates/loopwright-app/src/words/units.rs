//! The words beside a length, a weight and a gauge.

use super::intl::decimal;
use loopwright::units::{Gauge, Length, LengthUnit, MassUnit, print};

/// The label of the unit switch.
pub const UNIT: &str = "Unit";
/// The label of a gauge's span.
pub const SPAN: &str = "Counted over";

/// How lengths are written in a sentence.
#[derive(Clone, Copy, Debug)]
pub struct Lengths {
    /// In which unit.
    pub unit: LengthUnit,
    /// How finely.
    pub step: print::Step,
}

impl Lengths {
    /// A length with its unit, both on one line.
    pub fn write(self, length: Length) -> String {
        print::with_unit(length, self.unit, self.step).replace(' ', "\u{a0}")
    }

    /// The number alone, where the unit stands behind another.
    pub fn write_number(self, length: Length) -> String {
        print::print(length, self.unit, self.step).replace(' ', "\u{a0}")
    }

    /// Whether a length is so small that it is written as nought.
    pub fn is_nought(self, length: Length) -> bool {
        print::is_nought(length, self.unit, self.step)
    }

    /// The same, written as finely as a sum needs.
    pub const fn fine(self) -> Self {
        let step = print::Step::Hundredth;
        Self { step, ..self }
    }
}

/// A unit of length in full.
pub fn length(unit: LengthUnit) -> &'static str {
    match unit {
        LengthUnit::Mm => "millimetres",
        LengthUnit::Cm => "centimetres",
        LengthUnit::M => "metres",
        LengthUnit::Inch => "inches",
        LengthUnit::Yard => "yards",
    }
}

/// A unit of weight in full.
pub fn mass(unit: MassUnit) -> &'static str {
    match unit {
        MassUnit::Gram => "grams",
        MassUnit::Kilogram => "kilograms",
        MassUnit::Ounce => "ounces",
        MassUnit::Pound => "pounds",
    }
}

/// A span that stitches or rows are counted over, by its key.
pub fn span(key: &str) -> String {
    ["over ", key].concat()
}

/// The unit of the numbers of a list.
pub fn list_unit(unit: LengthUnit) -> String {
    ["in ", length(unit)].concat()
}

/// A label that names the unit, so that it is heard as well as seen.
pub fn labelled(label: &str, unit: &str) -> String {
    [label, ", in ", unit].concat()
}

/// A gauge with its span: `21 over 10 cm`.
pub fn gauge(gauge: Gauge) -> String {
    [&decimal(gauge.count()), "\u{a0}over\u{a0}", &span_of(gauge.span())].concat()
}

/// A length in the unit of a gauge, where nothing else says which unit she uses.
pub fn length_beside(gauge: Gauge, length: Length) -> String {
    let (unit, step) = if gauge.over_inches() {
        (LengthUnit::Inch, print::Step::Eighths)
    } else {
        (LengthUnit::Cm, print::Step::Tenth)
    };
    print::with_unit(length, unit, step).replace(' ', "\u{a0}")
}

/// Over what a gauge was counted, in the unit it was counted in.
pub fn span_of(span: Length) -> String {
    length_beside(Gauge::of(1, span), span)
}
