//! So many stitches that took so much yarn: what was measured, and what every rule comes down to. It is kept as these
//! two and not as yarn a stitch, so that a tail is rounded once, and up.

use crate::units::Length;

/// What a piece used: cast it on by the same method, pull it out, and measure between the two marks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Piece {
    /// Stitches it has, the slip knot not counted, within [`super::STITCHES`].
    pub stitches: u32,
    /// The tail they *used*, not what was left of it, without the slip knot; within [`super::USED`].
    pub used: Length,
}

impl Piece {
    /// Stitches of the piece that a turn is worked out for: pi is no fraction, and is rounded for so many.
    const MANY: u32 = 1_000_000;

    /// One turn a stitch round what is so thick.
    pub(super) fn of_turns(across: Length) -> Self {
        let turns = std::f64::consts::PI * across.to_nm() as f64 * f64::from(Self::MANY);
        Self {
            stitches: Self::MANY,
            used: Length::from_nm(turns.round() as i64),
        }
    }

    /// What so many stitches take, at so many percent of this and with a reserve of so many percent; rounded up to the
    /// nanometre.
    pub(super) fn over(self, stitches: u32, percent: u32, reserve: u32) -> Length {
        let over = self.used_at(percent, reserve) * u128::from(stitches);
        let under = u128::from(self.stitches.max(1)) * 10_000;
        Length::from_nm(i64::try_from(over.div_ceil(under)).unwrap_or(i64::MAX))
    }

    /// How many stitches a length gives: the most of which [`over`](Self::over) is no more than that.
    pub(super) fn given_by(self, length: Length, percent: u32, reserve: u32) -> u32 {
        let over = u128::from(length.max(Length::ZERO).to_nm().unsigned_abs()) * u128::from(self.stitches) * 10_000;
        u32::try_from(over / self.used_at(percent, reserve).max(1)).unwrap_or(u32::MAX)
    }

    /// What the piece used, times the percents of both.
    fn used_at(self, percent: u32, reserve: u32) -> u128 {
        let percents = u64::from(percent) * u64::from(100 + reserve);
        u128::from(self.used.to_nm().unsigned_abs()) * u128::from(percents)
    }
}
