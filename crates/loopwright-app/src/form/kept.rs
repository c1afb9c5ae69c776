//! What a project knows: the facts that its tools ask for. It is written only where she types it or taps "keep", and where a
//! tool takes it the field says so.

use crate::form::{Measures, NEEDLE, gauge_as_typed};
use crate::store::Typed;
use crate::words::{known as words, units};
use loopwright::choice::Key;
use loopwright::tables::needle::{self, Written};
use loopwright::tables::yarn_weight::Weight;
use loopwright::units::parse::{self, Wanted};
use loopwright::units::print::{self, Step};
use loopwright::units::{Gauge, Length, LengthUnit, Mass, MassUnit, gauge_text};

/// The sheet it is written on.
pub const SHEET: &str = "known";

/// One fact of a project.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kept {
    /// Round the body at the bust.
    Bust,
    /// Stitches that were cast on.
    CastOn,
    /// The needle, across.
    Needle,
    /// The class on the ball band.
    YarnClass,
    /// Stitches of the washed swatch.
    GaugeStitches,
    /// Rows of the washed swatch.
    GaugeRows,
    /// Stitches of the swatch before it was washed.
    GaugeStitchesUnwashed,
    /// Rows of the swatch before it was washed.
    GaugeRowsUnwashed,
    /// Round the upper arm.
    UpperArm,
    /// Round the head.
    Head,
    /// The sizes as the pattern lists them.
    Sizes,
    /// Stitches of the pattern's gauge.
    PatternStitches,
    /// Rows of the pattern's gauge.
    PatternRows,
    /// The cords that lie in her kit.
    Cords,
    /// How long a tip is.
    Tip,
    /// How much yarn is on a ball.
    BallLength,
    /// What a ball weighs.
    BallMass,
}

loopwright::field_names!(Kept {
    Bust = "bust",
    CastOn = "cast_on",
    Needle = "needle",
    YarnClass = "yarn_class",
    GaugeStitches = "gauge_stitches",
    GaugeRows = "gauge_rows",
    GaugeStitchesUnwashed = "gauge_stitches_unwashed",
    GaugeRowsUnwashed = "gauge_rows_unwashed",
    UpperArm = "upper_arm",
    Head = "head",
    Sizes = "sizes",
    PatternStitches = "pattern_stitches",
    PatternRows = "pattern_rows",
    Cords = "cords",
    Tip = "tip",
    BallLength = "ball_length",
    BallMass = "ball_mass",
});

impl Kept {
    /// What kind of value it is.
    pub const fn dimension(self) -> Dimension {
        match self {
            Self::Bust | Self::UpperArm | Self::Head | Self::Tip | Self::BallLength => Dimension::Length,
            Self::BallMass => Dimension::Mass,
            Self::Sizes | Self::Cords => Dimension::List,
            Self::CastOn => Dimension::Count,
            Self::Needle => Dimension::Needle,
            Self::YarnClass => Dimension::YarnClass,
            Self::GaugeStitches
            | Self::GaugeRows
            | Self::GaugeStitchesUnwashed
            | Self::GaugeRowsUnwashed
            | Self::PatternStitches
            | Self::PatternRows => Dimension::Gauge,
        }
    }

    /// A kept text as it is written now, where it was kept under a key that has changed.
    pub fn renewed(self, typed: Typed) -> Typed {
        match self.dimension() {
            Dimension::YarnClass => match Weight::from_key(&typed.text) {
                Some(weight) => Typed::plain(weight.key()),
                None => typed,
            },
            Dimension::Count
            | Dimension::Length
            | Dimension::Mass
            | Dimension::Needle
            | Dimension::Gauge
            | Dimension::List => typed,
        }
    }

    /// A kept text as it stands in a sentence for whom measures so: in inches a needle is known by its US size.
    pub fn print_in(self, measures: Measures, typed: &Typed) -> String {
        let needle = NEEDLE.as_typed(typed).read_any();
        match (measures, self.dimension(), needle) {
            (Measures::Inches, Dimension::Needle, Ok(needle)) => units::needle(needle.value, true),
            _ => self.print(typed),
        }
    }

    /// A kept text as it stands in a sentence.
    pub fn print(self, typed: &Typed) -> String {
        let (text, unit) = (typed.text.trim(), typed.unit.as_deref());
        match self.dimension() {
            Dimension::Count => words::measured(text, unit),
            // A text that names its own unit, system or span says it once.
            Dimension::Length => words::measured(text, unit.filter(|_| !names_unit(text))),
            Dimension::Mass => words::measured(text, unit.filter(|_| !names_weight(text))),
            // A pattern's list says of itself what it is in.
            Dimension::List => text.to_owned(),
            Dimension::Needle => {
                let unit = unit.filter(|_| !names_needle(text));
                words::measured(text, unit.map(|_| NEEDLE.first.key))
            }
            Dimension::Gauge => words::counted(text, unit.filter(|_| !names_span(text))),
            Dimension::YarnClass => match Weight::from_key(text) {
                Some(weight) => words::class(weight).to_owned(),
                None => text.to_owned(),
            },
        }
    }
}

fn names_unit(text: &str) -> bool {
    let read = parse::read(text, &Wanted::<Length>::any(LengthUnit::Cm));
    read.is_ok_and(|read| read.unit.is_some())
}

fn names_weight(text: &str) -> bool {
    let read = parse::read(text, &Wanted::<Mass>::any(MassUnit::Gram));
    read.is_ok_and(|read| read.unit.is_some())
}

fn names_needle(text: &str) -> bool {
    match needle::read(text) {
        Ok(Written::Metric(_) | Written::Numbered(..)) => true,
        Ok(Written::Alone(_)) | Err(_) => false,
    }
}

fn names_span(text: &str) -> bool {
    gauge_text::read(text, Gauge::TEN_CM).is_ok_and(|read| read.span.is_some())
}

/// What kind of value is kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Dimension {
    /// A count.
    Count,
    /// A length.
    Length,
    /// A weight.
    Mass,
    /// A list, as a pattern or a kit has it.
    List,
    /// A needle, in millimetres.
    Needle,
    /// A gauge.
    Gauge,
    /// A class of yarn.
    YarnClass,
}

/// A value that an answer offers to be kept or carried on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Value {
    /// A count.
    Count(u32),
    /// A needle, across.
    Needle(Length),
    /// A gauge.
    Gauge(Gauge),
}

impl Value {
    /// The value as it would be typed into a field; none if no field would take it.
    pub fn as_typed(self) -> Option<Typed> {
        match self {
            Self::Count(count) => Some(Typed::plain(count.to_string())),
            Self::Needle(across) => needle_as_typed(across),
            Self::Gauge(gauge) => gauge_as_typed(gauge),
        }
    }
}

impl Kept {
    /// A value of an answer as it stands in a sentence: a mean to the quarter, though all of it is kept.
    pub fn print_value(self, measures: Measures, value: Value, typed: &Typed) -> String {
        match value {
            Value::Gauge(gauge) => units::gauge_in_sum(gauge),
            Value::Count(_) | Value::Needle(_) => self.print_in(measures, typed),
        }
    }
}

/// A needle as its field reads it back; none if it is finer than it would be written.
fn needle_as_typed(across: Length) -> Option<Typed> {
    let typed = Typed::with_unit(print::print(across, LengthUnit::Mm, Step::Thousandth), "mm");
    let read = NEEDLE.as_typed(&typed).read_any();
    read.is_ok_and(|read| read.value == across).then_some(typed)
}

/// What an answer offers: under which name, and the value.
pub type Offer = (Kept, Value);

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_kept_value_is_named_as_it_was_typed() {
        let typed = |text, unit| Typed::with_unit(text, unit);
        assert_eq!(Kept::GaugeStitches.print(&typed("21", "10 cm")), "21 over 10 cm");
        assert_eq!(Kept::GaugeRows.print(&Typed::plain("31 over 18 cm")), "31 over 18 cm");
        assert_eq!(Kept::Bust.print(&typed("91 ", "cm")), "91 cm");
        assert_eq!(Kept::Bust.print(&typed("38 1/4 in", "cm")), "38 1/4 in");
        assert_eq!(Kept::CastOn.print(&Typed::plain("132")), "132");
        for (text, printed) in [("US 6", "US 6"), ("6 us", "6 us"), ("4 mm", "4 mm"), ("4", "4 mm")] {
            assert_eq!(Kept::Needle.print(&typed(text, "mm")), printed);
        }
    }

    #[test]
    fn a_kept_needle_is_named_as_she_measures() {
        let needle = typed_needle("4");
        assert_eq!(Kept::Needle.print_in(Measures::Metric, &needle), "4 mm");
        // Typed where US numbers are typed too.
        assert_eq!(Kept::Needle.print(&Typed::with_unit("3.5", "us")), "3.5 mm");
        let named = Kept::Needle.print_in(Measures::Inches, &needle);
        assert_eq!(named.replace('\u{a0}', " "), "US 6 (4 mm)");
        // What is no needle yet is named as it was typed.
        assert_eq!(Kept::Needle.print_in(Measures::Inches, &typed_needle("4x")), "4x mm");
    }

    fn typed_needle(text: &str) -> Typed {
        Typed::with_unit(text, "mm")
    }

    #[test]
    fn a_class_that_was_kept_as_two_words_is_the_same_class() {
        let old = Kept::YarnClass.renewed(Typed::plain("super fine"));
        assert_eq!(old, Typed::plain("super-fine"));
        for key in ["super fine", "super-fine"] {
            assert_eq!(Kept::YarnClass.print(&Typed::plain(key)), "super fine");
        }
        // What is no class is neither lost nor made one.
        let other = Typed::plain("sock");
        assert_eq!(Kept::YarnClass.renewed(other.clone()), other);
        assert_eq!(Kept::YarnClass.print(&other), "sock");
    }

    #[test]
    fn a_needle_is_kept_as_thick_as_it_is_or_not_at_all() {
        let typed = |nm| Value::Needle(Length::from_nm(nm)).as_typed();
        assert_eq!(typed(2_250_000), Some(Typed::with_unit("2.25", "mm")));
        assert_eq!(typed(2_125_000), Some(Typed::with_unit("2.125", "mm")));
        assert_eq!(typed(2_125_400), None);
    }
}
