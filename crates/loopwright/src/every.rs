//! Counts that will do: from the least on, one every so many. A multiple of 8 plus 3, whole ridges, the same row of a
//! chart.

use crate::units::rate::Quotient;

/// From the least on, one every `step`; neither is nothing.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Every {
    pub(crate) least: u32,
    pub(crate) step: u32,
}

impl Every {
    /// Any count from one up.
    pub(crate) const ONE: Self = Self { least: 1, step: 1 };

    /// Of these only the odd, or only the even ones, whichever the least is or `sample` is, if steps of `step` ever are.
    pub(crate) fn of_parity(self, sample: u32) -> Self {
        let Self { least, step } = self;
        if step % 2 == 0 {
            return self;
        }
        Self {
            least: least + step * (sample.abs_diff(least) % 2),
            step: 2 * step,
        }
    }

    /// Whether a count will do.
    pub(crate) const fn allows(self, count: u32) -> bool {
        count >= self.least && (count - self.least).is_multiple_of(self.step)
    }

    /// The nearest that will do, the smaller of two equally near; and whether the next larger is exactly as near.
    pub(crate) fn nearest(self, Quotient { over, under }: Quotient) -> (u32, bool) {
        let one = 2 * under * i128::from(self.step);
        let past = 2 * (over - i128::from(self.least) * under);
        let steps = (past + one / 2 - 1).div_euclid(one).max(0);
        let count = u32::try_from(steps).unwrap_or(u32::MAX).saturating_mul(self.step);
        (count.saturating_add(self.least), past == steps * one + one / 2)
    }

    /// The next smaller that will do.
    pub(crate) fn below(self, count: u32) -> Option<u32> {
        let past = count.checked_sub(self.least + 1)?;
        Some(count - 1 - past % self.step)
    }

    /// The next larger that will do.
    pub(crate) fn above(self, count: u32) -> u32 {
        match count.checked_sub(self.least) {
            Some(past) => count + self.step - past % self.step,
            None => self.least,
        }
    }
}
