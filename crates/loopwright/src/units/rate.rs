//! A gauge in whole numbers: thousandths of a stitch over nanometres, so that a sum is exact until it is rounded, once.
//!
//! ```
//! use loopwright::units::rate::Rate;
//! use loopwright::units::{Gauge, Length};
//!
//! let rate = Rate::of(Gauge::of(21, Gauge::TEN_CM));
//! assert_eq!(rate.count_over(Length::from_mm(1_000)).nearest(), 210);
//! assert_eq!(rate.width_of(210), Length::from_mm(1_000));
//! // Half a stitch more in the swatch makes the same piece smaller.
//! assert!(rate.misread(1).width_of(210) < Length::from_mm(1_000));
//! ```

use super::{Gauge, Length};

/// Thousandths in one stitch: how finely a gauge is held.
pub const PARTS: i128 = 1_000;

/// So many thousandths of a stitch in so many nanometres; neither is below one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rate {
    thousandths: i128,
    span: i128,
}

/// A quotient of whole numbers that is not rounded yet. What is below the line is above nothing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Quotient {
    /// Above the line.
    pub over: i128,
    /// Below the line.
    pub under: i128,
}

impl Quotient {
    /// The nearest whole number; halves go up.
    pub const fn nearest(self) -> i128 {
        (2 * self.over + self.under).div_euclid(2 * self.under)
    }

    /// The next whole number that is not below it.
    pub const fn ceiling(self) -> i128 {
        -(-self.over).div_euclid(self.under)
    }
}

impl Rate {
    /// The rate of a gauge.
    pub fn of(gauge: Gauge) -> Self {
        Self {
            thousandths: i128::from(gauge.thousandths()).max(1),
            span: i128::from(gauge.span().to_nm()).max(1),
        }
    }

    /// The rate of so many that were measured together.
    pub fn of_measured(count: u32, length: Length) -> Self {
        Self {
            thousandths: (i128::from(count) * PARTS).max(1),
            span: i128::from(length.to_nm()).max(1),
        }
    }

    /// The mean of several counts, each over its own span: all stitches over all the width they were counted in. None
    /// where there is no count.
    pub fn of_all(gauges: &[Gauge]) -> Option<Self> {
        let rates = gauges.iter().map(|gauge| Self::of(*gauge));
        rates.reduce(|all, next| Self {
            thousandths: all.thousandths + next.thousandths,
            span: all.span + next.span,
        })
    }

    /// Thousandths of a stitch in [`Self::span`].
    pub const fn thousandths(self) -> i128 {
        self.thousandths
    }

    /// The span in nanometres.
    pub const fn span(self) -> i128 {
        self.span
    }

    /// How many lie in a length, not rounded.
    pub fn count_over(self, length: Length) -> Quotient {
        Quotient {
            over: i128::from(length.to_nm()) * self.thousandths,
            under: self.span * PARTS,
        }
    }

    /// How much room so many take, rounded once to the nanometre.
    pub fn width_of(self, count: u32) -> Length {
        let over = i128::from(count) * PARTS * self.span;
        let under = self.thousandths;
        to_length(Quotient { over, under }.nearest())
    }

    /// What so long becomes when its stitches are knitted at another rate.
    pub fn worked_at(self, length: Length, other: Self) -> Length {
        let over = i128::from(length.to_nm()) * self.thousandths * other.span;
        let under = self.span * other.thousandths;
        to_length(Quotient { over, under }.nearest())
    }

    /// The same over a span of that length, to the nearest thousandth of a stitch; none if that is no span.
    pub fn gauge_over(self, span: Length) -> Option<Gauge> {
        let over = i128::from(span.to_nm()) * self.thousandths;
        let under = self.span;
        let thousandths = Quotient { over, under }.nearest().max(1);
        Gauge::new(u32::try_from(thousandths).unwrap_or(u32::MAX), span)
    }

    /// Whether more lie in a length than of the other.
    pub const fn exceeds(self, other: Self) -> bool {
        self.thousandths * other.span > other.thousandths * self.span
    }

    /// How many more lie in a length than of the other, in per mille of the other; negative for fewer.
    pub fn permille_above(self, other: Self) -> i32 {
        let apart = self.thousandths * other.span - other.thousandths * self.span;
        let over = 1_000 * apart.abs();
        let under = other.thousandths * self.span;
        let permille = i32::try_from(Quotient { over, under }.nearest()).unwrap_or(i32::MAX);
        if apart < 0 { -permille } else { permille }
    }

    /// The rate if the swatch was read so many halves of a stitch wrong.
    pub fn misread(self, halves: i128) -> Self {
        let thousandths = (self.thousandths + halves * PARTS / 2).max(1);
        Self { thousandths, ..self }
    }
}

/// A length of so many nanometres, or the longest there is.
pub(crate) fn to_length(nm: i128) -> Length {
    Length::from_nm(i64::try_from(nm).unwrap_or(i64::MAX))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::LengthUnit;

    fn rate(count: u32, span: Length) -> Rate {
        Rate::of(Gauge::of(count, span))
    }

    #[test]
    fn counts_are_put_together_each_over_its_own_span() {
        let five_cm = Length::of(5, LengthUnit::Cm);
        let counts = [Gauge::of(21, Gauge::TEN_CM), Gauge::of(10, five_cm)];
        let mean = Rate::of_all(&counts).and_then(|mean| mean.gauge_over(Gauge::TEN_CM));
        // The mean of the bare numbers is 15.5.
        assert_eq!(mean, Gauge::new(20_667, Gauge::TEN_CM));
        assert_eq!(Rate::of_all(&[]), None);
    }

    #[test]
    fn the_same_count_over_a_longer_span_is_less() {
        let (metric, inches) = (rate(21, Gauge::TEN_CM), rate(21, Gauge::FOUR_INCHES));
        assert!(metric.exceeds(inches) && !inches.exceeds(metric) && !metric.exceeds(metric));
        assert_eq!(
            (metric.permille_above(inches), inches.permille_above(metric)),
            (16, -16)
        );
    }

    #[test]
    fn quotients_are_rounded_both_ways_as_asked() {
        let quotient = |over| Quotient { over, under: 4 };
        assert_eq!([1, 2, 4, 5].map(|over| quotient(over).nearest()), [0, 1, 1, 1]);
        assert_eq!([0, 1, 4, 5, -1].map(|over| quotient(over).ceiling()), [0, 1, 1, 2, 0]);
    }
}
