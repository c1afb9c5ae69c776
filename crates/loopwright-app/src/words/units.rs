//! The words beside a length, a weight and a gauge.

use loopwright::units::{LengthUnit, MassUnit};

/// The label of the unit switch.
pub const UNIT: &str = "Unit";
/// The label of a gauge's span.
pub const SPAN: &str = "Counted over";

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
    ["in ", key].concat()
}

/// A label that names the unit, so that it is heard as well as seen.
pub fn labelled(label: &str, unit: &str) -> String {
    [label, ", in ", unit].concat()
}
