//! In the middle of casting on: "So much tail is left and 40 stitches are still to go. Will it do?"
//!
//! It will when it covers the stitches with the reserve, and the end to weave in. It is tight when it covers them
//! without the reserve only. By how much is said either way, and how many stitches it would do.

use super::rate::Rate;
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
    /// Enough, tight or short.
    pub verdict: Verdict,
    /// What they need with the reserve and the end.
    pub needs: Length,
    /// How much is over; negative is how much is lacking.
    pub over: Length,
    /// What they need with the end and no reserve.
    pub needs_bare: Length,
    /// How much is over that; negative is how much is lacking.
    pub over_bare: Length,
    /// For how many stitches it will do, reserve and end kept. None where the stitches are not drawn from the tail.
    pub reaches: Option<u32>,
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

impl Remaining {
    /// At a rate, with a reserve in percent and an end; no rate where the stitches are not drawn from the tail.
    pub(super) fn of(left: Left, rate: Option<Rate>, reserve: u32, end: Length) -> Self {
        let Left { tail, to_go } = left;
        let needs = |reserve: u32| {
            let stitches = rate.map(|rate| rate.over(to_go, reserve));
            stitches.unwrap_or_default().saturating_add(end)
        };
        let (with, bare) = (needs(reserve), needs(0));
        Self {
            tail,
            to_go,
            verdict: if tail >= with {
                Verdict::Enough
            } else if tail >= bare {
                Verdict::Tight
            } else {
                Verdict::Short
            },
            needs: with,
            over: tail.saturating_sub(with),
            needs_bare: bare,
            over_bare: tail.saturating_sub(bare),
            reaches: rate.map(|rate| rate.reach(tail.saturating_sub(end), reserve)),
        }
    }
}
