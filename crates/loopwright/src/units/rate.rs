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

    /// The rate if the swatch was read so many halves of a stitch wrong.
    pub fn misread(self, halves: i128) -> Self {
        let thousandths = (self.thousandths + halves * PARTS / 2).max(1);
        Self { thousandths, ..self }
    }
}

/// A length of so many nanometres, or the longest there is.
fn to_length(nm: i128) -> Length {
    Length::from_nm(i64::try_from(nm).unwrap_or(i64::MAX))
}
