//! The figures of a question, held against their bounds one after the other.

use crate::bounds::Bounds;
use crate::problem::{FieldPath, Kind, Problem};
use crate::units::{Gauge, Length, Mass};

/// What is wrong so far.
#[derive(Default)]
pub(crate) struct Check {
    /// The problems, in the order the figures were looked at.
    pub(crate) problems: Vec<Problem>,
}

impl Check {
    /// A count must lie within bounds.
    pub(crate) fn count(&mut self, field: impl Into<FieldPath>, value: u32, bounds: Bounds<u32>) {
        self.note(field.into(), Kind::of_count(value, bounds));
    }

    /// A length must lie within bounds.
    pub(crate) fn length(&mut self, field: impl Into<FieldPath>, value: Length, bounds: Bounds<Length>) {
        self.note(field.into(), Kind::of_measure(value, bounds));
    }

    /// A weight must lie within bounds.
    pub(crate) fn mass(&mut self, field: impl Into<FieldPath>, value: Mass, bounds: Bounds<Mass>) {
        self.note(field.into(), Kind::of_measure(value, bounds));
    }

    /// The same for a length that need not be known.
    pub(crate) fn length_if_any(&mut self, field: impl Into<FieldPath>, value: Option<Length>, bounds: Bounds<Length>) {
        if let Some(value) = value {
            self.length(field, value, bounds);
        }
    }

    /// A gauge must have been counted over [`Gauge::SPANS`], and to [`Gauge::COUNTS`].
    pub(crate) fn gauge(&mut self, field: impl Into<FieldPath>, gauge: Gauge) {
        self.gauge_at(field.into(), gauge);
    }

    /// The same for a gauge that need not be known.
    pub(crate) fn gauge_if_any(&mut self, field: impl Into<FieldPath>, gauge: Option<Gauge>) {
        if let Some(gauge) = gauge {
            self.gauge(field, gauge);
        }
    }

    fn gauge_at(&mut self, field: FieldPath, gauge: Gauge) {
        self.note(field, Kind::of_measure(gauge.span(), Gauge::SPANS));
        // A part of a stitch too few or too many is outside as well.
        let least = f64::from(Gauge::COUNTS.least);
        let count = if gauge.count() < least {
            0
        } else {
            gauge.count().ceil() as u32
        };
        self.note(field, Kind::of_count(count, Gauge::COUNTS));
    }

    fn note(&mut self, field: FieldPath, wrong: Option<Kind>) {
        self.problems.extend(wrong.map(|kind| Problem { field, kind }));
    }

    /// A list must have so many counts, each within bounds; the first that is wrong is told.
    pub(crate) fn counts(&mut self, field: impl Into<FieldPath>, counts: &[u32], each: Bounds<u32>, many: Bounds<u32>) {
        let (field, before) = (field.into(), self.problems.len());
        self.count(field, u32::try_from(counts.len()).unwrap_or(u32::MAX), many);
        for count in counts {
            if self.problems.len() == before {
                self.count(field, *count, each);
            }
        }
    }

    /// Something else is wrong with a figure.
    pub(crate) fn wrong(&mut self, field: impl Into<FieldPath>, kind: Kind) {
        self.problems.push(Problem::new(field, kind));
    }

    /// A figure that has to be known is not.
    pub(crate) fn missing(&mut self, field: impl Into<FieldPath>) {
        self.wrong(field, Kind::Missing);
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
