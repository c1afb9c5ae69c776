//! A gauge as an exact fraction, thousandths of stitches over nanometres, so that a length is rounded once.

use crate::bounds::Bounds;
use crate::cast_on::SPAN;
use crate::problem::Problem;
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
    pub(crate) fn of(gauge: Gauge) -> Self {
        Self {
            // Rounding undoes the division that made a number of it, exactly.
            count: ((gauge.count() * PARTS as f64).round() as i128).max(1),
            span: i128::from(gauge.span().to_nm()).max(1),
        }
    }

    /// What so long becomes when its stitches are knitted at another rate.
    pub(crate) fn worked_at(self, length: Length, other: Self) -> Length {
        let over = i128::from(length.to_nm()) * self.count * other.span;
        to_length(nearest(over, self.span * other.count))
    }

    /// How many per mille more stitches there are in a width than at another rate; negative for fewer.
    pub(crate) fn permille_over(self, other: Self) -> i32 {
        let ratio = nearest(1_000 * self.count * other.span, self.span * other.count);
        i32::try_from(ratio - 1_000).unwrap_or(i32::MAX)
    }
}

/// The nearest whole number; halves go up. `under` is above zero.
pub(crate) fn nearest(over: i128, under: i128) -> i128 {
    (2 * over + under).div_euclid(2 * under)
}

pub(crate) fn to_length(nm: i128) -> Length {
    Length::from_nm(i64::try_from(nm).unwrap_or(i64::MAX))
}

/// What is wrong with a gauge that was typed, by its span and then by its count.
pub(crate) fn check(field: &'static str, gauge: Gauge) -> Option<Problem> {
    let Bounds { least, most } = Gauge::COUNTS;
    let count = match gauge.count() {
        count if count < f64::from(least) => 0,
        count if count > f64::from(most) => u32::MAX,
        _ => least,
    };
    Problem::of_length(field, gauge.span(), SPAN).or(Problem::of_count(field, count, Gauge::COUNTS))
}

/// All problems together, or none.
pub(crate) fn gather(checks: &[Option<Problem>]) -> Result<(), Vec<Problem>> {
    let mut problems = Vec::new();
    for problem in checks {
        problems.extend(*problem);
    }
    if problems.is_empty() { Ok(()) } else { Err(problems) }
}
