//! In the middle of casting on: "So much tail is left and 40 stitches are still to go. How many does it give, and will it
//! do?"
//!
//! It will when it covers the stitches with the reserve, and the end to weave in. It is tight when it covers them
//! without the reserve only. By how much is said either way.

use super::Estimate;
use crate::units::Length;

/// What is left.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Left {
    /// The tail from the last stitch to its end, within [`super::LEFT`].
    pub tail: Length,
    /// Stitches still to cast on, no more than there are in all.
    pub to_go: u32,
}

/// Whether it will do.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Remaining {
    /// The tail that is left.
    pub tail: Length,
    /// Stitches still to cast on.
    pub to_go: u32,
    /// How many it gives; none where the stitches come from elsewhere.
    pub gives: Option<Gives>,
    /// What the stitches to go need.
    pub needs: Length,
    /// That with the reserve.
    pub with_reserve: Length,
    /// Enough, tight or short.
    pub verdict: Verdict,
    /// What is over when they have their reserve and the end; negative is how much is lacking.
    pub over: Length,
    /// What is over without the reserve; negative is how much is lacking.
    pub over_bare: Length,
}

/// Whether what is left will do.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Verdict {
    /// Enough, with the reserve.
    Enough,
    /// Enough if nothing takes more than it should.
    Tight,
    /// Not enough: begin again, or go on with a second strand.
    Short,
}

/// How many stitches what is left gives, when the end to weave in is kept back.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Gives {
    /// With the reserve on each.
    pub with_reserve: u32,
    /// Without it: if nothing takes more than it should.
    pub bare: u32,
}

impl Remaining {
    /// By the estimate that wins, if any does, with its reserve in percent and the end to weave in.
    pub(super) fn of(left: Left, by: Option<&Estimate>, reserve: u32, end: Length) -> Self {
        let Left { tail, to_go } = left;
        let needs = |reserve| by.map_or(Length::ZERO, |estimate| estimate.over(to_go, reserve));
        let for_stitches = tail.saturating_sub(end);
        let (needs, with_reserve) = (needs(0), needs(reserve));
        Self {
            tail,
            to_go,
            gives: by.map(|estimate| Gives {
                with_reserve: estimate.given_by(for_stitches, reserve),
                bare: estimate.given_by(for_stitches, 0),
            }),
            needs,
            with_reserve,
            verdict: match for_stitches {
                rest if rest >= with_reserve => Verdict::Enough,
                rest if rest >= needs => Verdict::Tight,
                _ => Verdict::Short,
            },
            over: for_stitches.saturating_sub(with_reserve),
            over_bare: for_stitches.saturating_sub(needs),
        }
    }
}
