//! A gauge as an exact fraction, thousandths of stitches over nanometres, so that a length is rounded once.

use crate::units::{Gauge, Length};

/// Thousandths in one stitch: how finely a gauge is held.
pub(crate) const PARTS: i128 = 1_000;

/// So many thousandths of a stitch in so many nanometres; neither is below one.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Rate {
    pub(crate) count: i128,
    pub(crate) span: i128,
}

impl Rate {
    #[inline(never)]
    pub(crate) fn of(gauge: Gauge) -> Self {
        Self {
            // Rounding undoes the division that made a number of it, exactly.
            count: ((gauge.count() * PARTS as f64).round() as i128).max(1),
            span: i128::from(gauge.span().to_nm()).max(1),
        }
    }

    /// What so long becomes when its stitches are knitted at another rate.
    #[inline(never)]
    pub(crate) fn worked_at(self, length: Length, other: Self) -> Length {
        let over = i128::from(length.to_nm()) * self.count * other.span;
        to_length(nearest(over, self.span * other.count))
    }

    /// How long so many are, rounded once.
    #[inline(never)]
    pub(crate) fn long(self, count: u32) -> Length {
        to_length(nearest(i128::from(count) * PARTS * self.span, self.count))
    }

    /// The rate if the swatch was read so many halves of a stitch wrong.
    pub(crate) fn misread(self, halves: i128) -> Self {
        let count = (self.count + halves * PARTS / 2).max(1);
        Self { count, ..self }
    }
}

/// The nearest whole number; halves go up. `under` is above zero.
pub(crate) fn nearest(over: i128, under: i128) -> i128 {
    (2 * over + under).div_euclid(2 * under)
}

pub(crate) fn to_length(nm: i128) -> Length {
    Length::from_nm(i64::try_from(nm).unwrap_or(i64::MAX))
}
