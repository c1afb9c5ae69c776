//! How much yarn a stitch takes, as an exact fraction, so that the tail is rounded once, and up.
//!
//! Only pi is not a fraction: a turn round the needle is rounded to the millionth of a nanometre first, which over
//! 100,000 stitches is a tenth of a nanometre.

use crate::units::Length;

/// Nanometres a stitch, as `over / under`; `under` is above zero.
#[derive(Clone, Copy, Debug)]
pub(super) struct Rate {
    over: i128,
    under: i128,
}

impl Rate {
    /// A length for so many stitches; for no stitches as for one.
    pub(super) fn new(length: Length, stitches: u32) -> Self {
        Self {
            over: i128::from(length.to_nm()),
            under: i128::from(stitches.max(1)),
        }
    }

    /// One turn, `pi` times how thick it is, in nanometres.
    pub(super) fn turn(across_nm: f64) -> Self {
        const FINE: f64 = 1e6;
        Self {
            over: (std::f64::consts::PI * across_nm * FINE).round() as i128,
            under: FINE as i128,
        }
    }

    /// So many hundredths of this.
    pub(super) fn percent(self, percent: u32) -> Self {
        Self {
            over: self.over * i128::from(percent),
            under: self.under * 100,
        }
    }

    /// What so many stitches need with a reserve of so many percent, rounded up to the nanometre.
    pub(super) fn over(self, stitches: u32, reserve: u32) -> Length {
        let Self { over, under } = self.with(reserve);
        let total = over * i128::from(stitches);
        let whole = total.div_euclid(under) + i128::from(total.rem_euclid(under) > 0);
        Length::from_nm(i64::try_from(whole).unwrap_or(i64::MAX))
    }

    /// How many stitches a length will do with a reserve of so many percent: the most for which [`Self::over`] is not
    /// longer.
    pub(super) fn reach(self, length: Length, reserve: u32) -> u32 {
        let Self { over, under } = self.with(reserve);
        let length = i128::from(length.to_nm().max(0));
        u32::try_from(length * under / over.max(1)).unwrap_or(u32::MAX)
    }

    fn with(self, reserve: u32) -> Self {
        self.percent(reserve.saturating_add(100))
    }
}
