//! The figures of a question, held against their bounds one after the other.

use crate::bounds::Bounds;
use crate::problem::Problem;
use crate::units::Length;

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
}
