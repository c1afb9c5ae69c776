//! Works a written row on a simulated needle, stitch by stitch, and says what is on the needle at the end.
//!
//! This is the oracle of the crate: it knows nothing of how a row was made, only what each stitch uses and gives. It
//! stops with a value, never a panic, where a knitter would stop: when the left needle is empty too soon.

use super::walk::Step;
use super::{Row, Run, Stitch};
use std::fmt::{Display, Formatter};

/// The most stitches that are worked before a row is given up as absurd.
pub const MOST_WORKED: u64 = 1_000_000;

/// The most steps that are taken along a row: one for each stitch, each run, and each bracket entered or begun again.
/// Brackets that make nothing are walked as well, and a text may ask for more of them than anybody can wait for.
pub const MOST_STEPS: u64 = 4 * MOST_WORKED;

/// What a row came to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Worked {
    /// Stitches on the right needle.
    pub on_needle: u64,
    /// Stitches still unworked on the left needle.
    pub left_over: u64,
    /// Whether an increase was made in a gap with no stitch before it: at the very start of the row, or twice in the
    /// same gap (a double yarn over).
    pub crowded_gap: bool,
    /// Whether the row ended on an increase made in a gap, outside the last stitch.
    pub ended_in_gap: bool,
}

/// Why a row could not be worked to its end.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Stuck {
    /// The left needle had fewer stitches than the next stitch needs.
    RanOut {
        /// The stitch that could not be worked.
        at: Stitch,
        /// Stitches that were on the right needle by then.
        made: u64,
        /// Stitches that were left.
        left: u64,
    },
    /// The row went on past [`MOST_WORKED`] stitches or [`MOST_STEPS`] steps.
    Endless,
}

impl Display for Stuck {
    fn fmt(&self, f: &mut Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::RanOut { at, made, left } => {
                write!(f, "{left} stitches left for {at:?}, with {made} on the right needle")
            }
            Self::Endless => write!(f, "more than {MOST_WORKED} stitches or {MOST_STEPS} steps"),
        }
    }
}

impl std::error::Error for Stuck {}

/// Works the row on a needle that holds `stitches`.
///
/// # Errors
/// [`Stuck`] when the row asks for more stitches than there are, or does not come to an end.
pub fn work(row: &Row, stitches: u32) -> Result<Worked, Stuck> {
    let mut needle = Needle {
        left: u64::from(stitches),
        made: 0,
        steps: 0,
        crowded_gap: false,
        // At the start there is no stitch before the first gap, so the start counts as one already filled.
        in_gap: true,
    };
    let mut runs = row.runs();
    loop {
        needle.step()?;
        match runs.step() {
            Step::Run(run) => needle.work(run)?,
            Step::Nothing => {}
            Step::End => return Ok(needle.done()),
        }
    }
}

/// The two needles while the row is worked.
struct Needle {
    left: u64,
    made: u64,
    steps: u64,
    crowded_gap: bool,
    in_gap: bool,
}

impl Needle {
    fn step(&mut self) -> Result<(), Stuck> {
        self.steps += 1;
        if self.steps > MOST_STEPS {
            return Err(Stuck::Endless);
        }
        Ok(())
    }

    fn work(&mut self, run: Run) -> Result<(), Stuck> {
        let uses = u64::from(run.stitch.uses());
        for _ in 0..run.count {
            self.step()?;
            self.left = self.left.checked_sub(uses).ok_or(Stuck::RanOut {
                at: run.stitch,
                made: self.made,
                left: self.left,
            })?;
            self.crowded_gap |= self.in_gap && run.stitch.is_in_gap();
            self.in_gap = run.stitch.is_in_gap();
            self.made += u64::from(run.stitch.gives());
            if self.made > MOST_WORKED {
                return Err(Stuck::Endless);
            }
        }
        Ok(())
    }

    const fn done(&self) -> Worked {
        Worked {
            on_needle: self.made,
            left_over: self.left,
            crowded_gap: self.crowded_gap,
            ended_in_gap: self.made > 0 && self.in_gap,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::row::read;

    fn worked(text: &str, stitches: u32) -> Result<Worked, Stuck> {
        work(&read(text).unwrap(), stitches)
    }

    #[test]
    fn a_row_that_fits_leaves_the_left_needle_empty() {
        let done = worked("(K6, k2tog) 4 times", 32).unwrap();
        assert_eq!((done.on_needle, done.left_over), (28, 0));
    }

    #[test]
    fn a_row_that_asks_for_too_much_stops_at_the_stitch_it_cannot_make() {
        let stuck = worked("(K6, k2tog) 4 times", 31).unwrap_err();
        assert_eq!(
            stuck,
            Stuck::RanOut {
                at: Stitch::K2tog,
                made: 27,
                left: 1
            }
        );
    }

    #[test]
    fn a_bracket_that_uses_nothing_ends() {
        assert_eq!(worked("((yo) 100000 times) 100000 times", 4), Err(Stuck::Endless));
    }

    /// It would come to one stitch in the end, after 256 million empty rounds: the steps are counted, not only the stitches.
    #[test]
    fn brackets_that_make_nothing_end_as_well() {
        assert_eq!(worked("((K0) 16000 times) 16000 times, K1", 1), Err(Stuck::Endless));
        let empty = Row {
            items: vec![super::super::Item::Repeat {
                body: Vec::new(),
                times: u32::MAX,
            }],
        };
        assert_eq!(work(&empty, 0).map(|done| done.on_needle), Ok(0));
        assert_eq!(worked("(K0) 1000 times, K1", 1).map(|done| done.on_needle), Ok(1));
        // The most that is ever worked takes fewer steps than there may be.
        assert!(worked("(K1, k2tog) 500000 times", 1_500_000).is_ok());
    }

    #[test]
    fn increases_in_one_gap_or_at_the_edge_are_seen() {
        assert!(worked("K1, yo twice, K1", 2).unwrap().crowded_gap);
        assert!(worked("M1, K2", 2).unwrap().crowded_gap);
        assert!(worked("K2, M1", 2).unwrap().ended_in_gap);
        let clean = worked("K1, M1, K1", 2).unwrap();
        assert!(!clean.crowded_gap && !clean.ended_in_gap);
    }
}
