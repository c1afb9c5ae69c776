//! The words beside a length.

use loopwright::units::LengthUnit;

/// The label of the unit switch.
pub const UNIT: &str = "Unit";

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

/// A label that names the unit, so that it is heard as well as seen.
pub fn labelled(label: &str, unit: &str) -> String {
    [label, ", in ", unit].concat()
}
