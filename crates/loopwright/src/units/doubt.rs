//! What else may be meant by a text that was taken: another span of a gauge, or the other unit of a tape.
//!
//! A tape lies there in both units, and the choice beside a field is easily left as it was. So where what was taken is
//! seldom knitted and the other reading is usual, the other one is offered; nothing is changed. All bounds here are
//! common practice, no source.
//!
//! ```
//! use loopwright::units::{Gauge, Length};
//! use loopwright::units::doubt::other_span;
//!
//! // 5 stitches in 10 cm are knitted with needles as thick as a broom; 5 in an inch are a sweater.
//! assert_eq!(other_span(Gauge::of(5, Gauge::TEN_CM)), Some(Length::INCH));
//! assert_eq!(other_span(Gauge::of(22, Gauge::TEN_CM)), None);
//! assert_eq!(other_span(Gauge::of(22, Length::INCH)), Some(Gauge::FOUR_INCHES));
//! ```

use super::parse::{Wanted, pieces, read};
use super::{Gauge, Length, LengthUnit, MassUnit, Measure, Unit};
use crate::bounds::Bounds;

/// Stitches or rows in 10 cm that are seldom knitted: fewer than these. Common practice, no source.
pub const SPARSE: u32 = 9;

/// Stitches or rows in 10 cm that are usual: lace to bulky. Common practice, no source.
pub const USUAL: Bounds<u32> = Bounds::new(12, 60);

/// Round the body at the bust of those who wear what is knitted, from a child of six on. Common practice, no source.
pub const BUST: Bounds<Length> = Bounds::new(Length::from_mm(560), Length::from_mm(1_700));

/// Over what a gauge may have been counted instead, where over its own span it is seldom knitted and over that it is
/// usual; none where nothing is in doubt.
pub fn other_span(gauge: Gauge) -> Option<Length> {
    let in_ten_cm = |gauge: Gauge| gauge.count_over(Gauge::TEN_CM);
    let other = match in_ten_cm(gauge) {
        few if few < f64::from(SPARSE) => Length::INCH,
        many if many > f64::from(USUAL.most) => gauge.usual_span(),
        _ => return None,
    };
    let instead = in_ten_cm(Gauge::new(gauge.thousandths(), other)?);
    let is_usual = f64::from(USUAL.least) <= instead && instead <= f64::from(USUAL.most);
    is_usual.then_some(other)
}

/// Whether a quantity that names no unit may be in the other one of its field, and is accepted there: because it is not
/// usual and would be in the other, or because it is written with a fraction, which metric tapes and scales do not have.
pub fn is_other_unit<T: Measure>(text: &str, wanted: &Wanted<T>, other: T::Unit, usual: Option<Bounds<T>>) -> bool {
    let in_other = Wanted { unit: other, ..*wanted };
    let (Ok(here), Ok(there), Ok((number, None))) = (read(text, wanted), read(text, &in_other), pieces(text)) else {
        return false;
    };
    let is_unusual = usual.is_some_and(|usual| !usual.allow(here.value) && usual.allow(there.value));
    let is_doubted = usual.is_none_or(|usual| usual.allow(there.value));
    is_unusual || (number.fraction && has_tenths(wanted.unit.into()) && is_doubted)
}

/// Whether what is marked in this unit is marked in tenths, and never in eighths.
const fn has_tenths(unit: Unit) -> bool {
    match unit {
        Unit::Length(LengthUnit::Mm | LengthUnit::Cm | LengthUnit::M) => true,
        Unit::Mass(MassUnit::Gram | MassUnit::Kilogram) => true,
        Unit::Length(LengthUnit::Inch | LengthUnit::Yard) => false,
        Unit::Mass(MassUnit::Ounce | MassUnit::Pound) => false,
        Unit::Count(_) => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_gauge_that_nobody_knits_may_be_over_another_span() {
        let over = |thousandths, span| Gauge::new(thousandths, span).and_then(other_span);
        assert_eq!(over(5_500, Gauge::TEN_CM), Some(Length::INCH));
        assert_eq!(over(8_000, Gauge::FOUR_INCHES), Some(Length::INCH));
        assert_eq!(over(32_000, Length::INCH), Some(Gauge::FOUR_INCHES));
        assert_eq!(over(45_000, Length::of(5, LengthUnit::Cm)), Some(Gauge::TEN_CM));
        // Bulky wool, fine rows, and what is as strange over any span.
        for (thousandths, span) in [
            (9_000, Gauge::TEN_CM),
            (60_000, Gauge::TEN_CM),
            (2_000, Gauge::TEN_CM),
            (400_000, Length::INCH),
        ] {
            assert_eq!(over(thousandths, span), None, "{thousandths}");
        }
    }

    #[test]
    fn a_bust_may_be_in_the_other_unit() {
        let bounds = Bounds::new(Length::from_mm(300), Length::from_mm(3_000));
        let is_other = |text, unit, other| is_other_unit(text, &Wanted { bounds, unit }, other, Some(BUST));
        for text in ["38 1/4", "38¼", "38", "40.5"] {
            assert!(is_other(text, LengthUnit::Cm, LengthUnit::Inch), "{text}");
        }
        assert!(is_other("96.5", LengthUnit::Inch, LengthUnit::Cm));
        for (text, unit, other) in [
            ("96.5", LengthUnit::Cm, LengthUnit::Inch),
            ("38 1/4 cm", LengthUnit::Cm, LengthUnit::Inch),
            ("38 1/4", LengthUnit::Inch, LengthUnit::Cm),
            ("96 1/2", LengthUnit::Cm, LengthUnit::Inch),
            ("", LengthUnit::Cm, LengthUnit::Inch),
        ] {
            assert!(!is_other(text, unit, other), "{text}");
        }
    }

    #[test]
    fn a_fraction_is_no_metric_measure() {
        let wanted = |unit| Wanted::<Length>::any(unit);
        assert!(is_other_unit("7 1/2", &wanted(LengthUnit::Cm), LengthUnit::Inch, None));
        assert!(!is_other_unit("7.5", &wanted(LengthUnit::Cm), LengthUnit::Inch, None));
        assert!(!is_other_unit("7 1/2", &wanted(LengthUnit::Inch), LengthUnit::Cm, None));
        let ball = Wanted::<crate::units::Mass>::any(MassUnit::Gram);
        assert!(is_other_unit("1 3/4", &ball, MassUnit::Ounce, None));
    }
}
