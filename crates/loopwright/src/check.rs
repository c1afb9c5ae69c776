//! The figures of a question, held against their bounds one after the other.

use crate::bounds::Bounds;
use crate::problem::{Kind, Problem};
use crate::units::{Gauge, Length};

/// What is wrong so far.
#[derive(Default)]
pub(crate) struct Check {
    /// The problems, in the order the figures were looked at.
    pub(crate) problems: Vec<Problem>,
}

impl Check {
    /// A count must lie within bounds.
    #[inline(never)]
    pub(crate) fn count(&mut self, field: &'static str, value: u32, bounds: Bounds<u32>) {
        self.problems.extend(Problem::of_count(field, value, bounds));
    }

    /// A length must lie within bounds.
    #[inline(never)]
    pub(crate) fn length(&mut self, field: &'static str, value: Length, bounds: Bounds<Length>) {
        self.problems.extend(Problem::of_length(field, value, bounds));
    }

    /// A gauge must have been counted over [`Gauge::SPANS`], and to [`Gauge::COUNTS`].
    #[inline(never)]
    pub(crate) fn gauge(&mut self, field: &'static str, gauge: Gauge) {
        self.length(field, gauge.span(), Gauge::SPANS);
        // A part of a stitch too few or too many is outside as well.
        let least = f64::from(Gauge::COUNTS.least);
        let count = if gauge.count() < least {
            0
        } else {
            gauge.count().ceil() as u32
        };
        self.count(field, count, Gauge::COUNTS);
    }

    /// The same for a gauge that need not be known.
    pub(crate) fn gauge_if_any(&mut self, field: &'static str, gauge: Option<Gauge>) {
        if let Some(gauge) = gauge {
            self.gauge(field, gauge);
        }
    }

    /// A list must have so many counts, each within bounds; the first that is wrong is told.
    #[inline(never)]
    pub(crate) fn counts(&mut self, field: &'static str, counts: &[u32], each: Bounds<u32>, many: Bounds<u32>) {
        let before = self.problems.len();
        self.count(field, u32::try_from(counts.len()).unwrap_or(u32::MAX), many);
        for count in counts {
            if self.problems.len() == before {
                self.count(field, *count, each);
            }
        }
    }

    /// Something else is wrong with a figure.
    #[inline(never)]
    pub(crate) fn wrong(&mut self, field: &'static str, kind: Kind) {
        self.problems.push(Problem { field, kind });
    }

    /// A figure that has to be known is not.
    pub(crate) fn missing(&mut self, field: &'static str) {
        let kind = Kind::Missing;
        self.problems.push(Problem { field, kind });
    }

    /// Everything that is wrong, if anything.
    pub(crate) fn done(self) -> Result<(), Vec<Problem>> {
        if self.problems.is_empty() {
            Ok(())
        } else {
            Err(self.problems)
        }
    }
}
