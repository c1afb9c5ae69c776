//! In the middle of casting on: "So much tail is left and 40 stitches are still to go. Will it do?"
//!
//! It will when it covers the stitches with the reserve, and the end to weave in. It is tight when it covers them
//! without the reserve only. By how much is said either way.

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

impl Remaining {
    /// From what the stitches need with the reserve and the end, and with the end alone.
    pub(super) fn of(left: Left, needs: Length, bare: Length) -> Self {
        let Left { tail, to_go } = left;
        Self {
            tail,
            to_go,
            verdict: match tail {
                _ if tail >= needs => Verdict::Enough,
                _ if tail >= bare => Verdict::Tight,
                _ => Verdict::Short,
            },
            over: tail.saturating_sub(needs),
            over_bare: tail.saturating_sub(bare),
        }
    }
}
