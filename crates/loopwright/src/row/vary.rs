//! A bracket that is not the same every time: the ordinary one is named once, and then the times that differ. Where
//! changes stand close together that is the shortest thing to hold in the head: "K1, M1 all the way, but K2 the 5th time".

use super::{Run, Stitch};

/// A bracket worked some times over, in which one run is another some of the times.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Varied {
    /// What stands in the bracket.
    pub body: Vec<Run>,
    /// How often it is worked in all.
    pub times: u32,
    /// What is worked in place of the first run of the same stitch, when it differs.
    pub instead: Run,
    /// Which times differ, counted from one, each larger than the one before.
    pub at: Vec<u32>,
}

impl Varied {
    /// Where in the body the run stands that is another some of the times.
    pub(super) fn place(&self) -> Option<usize> {
        self.body.iter().position(|run| run.stitch == self.instead.stitch)
    }

    /// Sums `each` over the stitches. Saturates, as every sum of a row does.
    pub(super) fn total(&self, each: fn(Stitch) -> u32) -> u64 {
        let sum = |run: &Run| u64::from(each(run.stitch)) * u64::from(run.count);
        let once = self.body.iter().map(sum).fold(0, u64::saturating_add);
        let differing = (self.at.len() as u64).min(u64::from(self.times));
        let usual = self.place().map_or(0, |place| sum(&self.body[place]));
        let ordinary = once.saturating_mul(u64::from(self.times) - differing);
        let other = (once - usual)
            .saturating_add(sum(&self.instead))
            .saturating_mul(differing);
        ordinary.saturating_add(other)
    }

    /// One for each run, one for "so many times", and one for each time that is named.
    pub(super) fn terms(&self) -> usize {
        self.body.len() + 2 + self.at.len()
    }
}
