//! A fact as it stands in a sentence: "22 over 10 cm", "4 mm", "light".

use super::{Dimension, Kept};
use crate::form::{Measures, NEEDLE};
use crate::store::Typed;
use crate::words::{known as words, units};
use loopwright::choice::Key;
use loopwright::tables::needle::{self, Written};
use loopwright::tables::yarn_weight::Weight;
use loopwright::units::parse::{self, Wanted};
use loopwright::units::{Gauge, Length, LengthUnit, Mass, MassUnit, gauge_text};

impl Kept {
    /// A kept text as it stands in a sentence for whom measures so: in inches a needle is known by its US size.
    pub fn print_in(self, measures: Measures, typed: &Typed) -> String {
        let needle = NEEDLE.as_typed(typed).and_then(|typed| typed.read_any());
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
            Dimension::List | Dimension::Multiple | Dimension::Text => text.to_owned(),
            Dimension::Needle => {
                let is_millimetres = NEEDLE.unit_beside(typed) == Ok(NEEDLE.first.unit);
                let unit = unit.map(|unit| if is_millimetres { NEEDLE.first.key } else { unit });
                words::measured(text, unit.filter(|_| !names_needle(text)))
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
        assert_eq!(Kept::Needle.print(&typed("1/4", "in")), "1/4 in");
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
}
