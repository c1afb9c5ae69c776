//! The lines worked on the simulated needle, for one size: stitches before, used and after, and whether each comes out.
//!
//! Lines are worked in the order of a piece of knitting: rows by their numbers, with those that a line such as "even rows:
//! purl" stands for in between. What could not be worked is said, and the next line goes on with what is on the needle
//! then, or with what the pattern says there is; it names the line that it stands on.

mod again;
mod as_before;
mod bench;
mod block;
mod course;
mod once_more;
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

#[cfg(test)]
mod tests {
    use super::super::read;
    use super::*;

    /// The steps that are taken go by the text and not by its stitches, however long the text is.
    #[test]
    fn a_line_of_a_megabyte_takes_few_steps() {
        let pieces = [
            "k1, ",
            "(k1, p1) 300 times, ",
            "*k1, p1; rep from * 3 times, ",
            "((((k1) 2000 times) 2000 times) 20 times) 2 times, ",
            "yo, ",
            "k5, pm, ",
        ];
        for piece in pieces {
            let text = piece.repeat(1_000_000 / piece.len());
            let (pattern, _) = read(&text, 1, &[]);
            let mut course = Course::new(&pattern, &Start::with(1_000_000), 0);
            course.run();
            assert!(course.steps <= 2 * text.len() as u64, "{piece}: {} steps", course.steps);
        }
    }
}
