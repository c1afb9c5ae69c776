//! The lines worked on the simulated needle, for one size: stitches before, used and after, and whether each comes out.
//!
//! Lines are worked in the order of a piece of knitting: rows by their numbers, with those that a line such as "even rows:
//! purl" stands for in between. What could not be worked is said, and the next line goes on with what is on the needle
//! then, or with what the pattern says there is; it names the line that it stands on.

mod again;
mod bench;
mod block;
mod course;
mod outcome;
mod row;
mod walk;

pub(super) use bench::Bench;
pub use outcome::{Doubt, Otherwise, Outcome, Start, Worked};

use super::line::Pattern;
use course::Course;

/// So many steps are taken along one row at most: one for each run, and for each round of a bracket that has to be walked.
pub const MOST_STEPS: u64 = 1_000_000;

/// So many steps are taken for all lines together.
pub const MOST_STEPS_IN_ALL: u64 = 20 * MOST_STEPS;

/// A line is worked in so many rows at most.
pub const MOST_ROWS: u64 = 10_000;

/// Works all lines of a pattern for one size, counted from nought. There is one answer for each line.
pub fn work(pattern: &Pattern, start: &Start, size: usize) -> Vec<Worked> {
    let mut course = Course::new(pattern, start, size);
    course.run();
    course.worked
}
