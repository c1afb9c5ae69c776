//! From a width to the counts that a pattern can be worked on, in whole numbers throughout.
//!
//! The count that would fit is an exact fraction: thousandths of stitches times nanometres, over a thousand spans. The
//! nearest multiple is found on that fraction, so that half a stitch is exactly half a stitch and a tie is a tie.

use super::{Count, Knitting, Question, Range, STITCHES};
use crate::spacing::Fraction;
use crate::units::Length;

/// Thousandths in one stitch: how finely a gauge is held.
const PARTS: u64 = 1_000;

/// A question within its bounds, ready to be fitted. All sums stay far below the most that 64 bits hold.
#[derive(Clone, Copy, Debug)]
pub(super) struct Fit {
    /// How wide it is to be, in nanometres.
    width: u64,
    /// Thousandths of stitches in the span.
    thousandths: u64,
    /// The span, in nanometres.
    span: u64,
    of: u32,
    /// None in the round.
    pub(super) plus: u32,
    /// Edge and seam stitches, both edges together.
    beside: u32,
    /// The one more of the join.
    extra: u32,
}

impl Fit {
    /// The parts of a question that [`super::check`] has passed.
    pub(super) fn of(question: &Question) -> Self {
        let (plus, beside, extra) = match question.knitting {
            Knitting::Round { extra } => (0, 0, u32::from(extra)),
            Knitting::Flat { edge, seam } => (question.multiple.plus, 2 * (edge + seam), 0),
        };
        Self {
            width: question.width.to_nm().unsigned_abs(),
            // Rounding undoes the division that made a number of the gauge, exactly.
            thousandths: (question.gauge.count() * PARTS as f64).round() as u64,
            span: question.gauge.span().to_nm().unsigned_abs(),
            of: question.multiple.of,
            plus,
            beside,
            extra,
        }
    }

    /// The count that would fit exactly.
    pub(super) fn ideal(&self) -> Fraction {
        Fraction::new(self.thousandths * self.width, PARTS * self.span)
    }

    /// The repeats whose width is nearest: the fewer of two that are equally near, and at least one.
    pub(super) fn nearest(&self) -> u32 {
        let Fraction { over, under } = self.ideal();
        let one = under * u64::from(self.of);
        let pattern = over.saturating_sub(under * u64::from(self.plus));
        let repeats = (2 * pattern + one - 1) / (2 * one);
        u32::try_from(repeats).unwrap_or(u32::MAX).max(1)
    }

    /// Whether what would fit lies exactly midway between so many repeats and one more.
    pub(super) fn is_midway(&self, repeats: u32) -> bool {
        let Fraction { over, under } = self.ideal();
        let (inside, one) = (repeats * self.of + self.plus, u64::from(self.of));
        2 * over == under * (2 * u64::from(inside) + one)
    }

    /// The most repeats that can be cast on.
    pub(super) fn most_repeats(&self) -> u32 {
        let beside = self.plus + self.beside + self.extra;
        (STITCHES.most.saturating_sub(beside) / self.of).max(1)
    }

    /// The count of so many repeats, no more than [`Self::most_repeats`].
    #[inline(never)]
    pub(super) fn count(&self, repeats: u32) -> Count {
        let inside = repeats * self.of + self.plus;
        let worked = inside + self.beside;
        let width = self.width_of(inside, self.thousandths);
        Count {
            cast_on: worked + self.extra,
            worked,
            inside,
            repeats,
            width,
            off: Length::from_nm(width.to_nm() - self.width as i64),
        }
    }

    /// The width of so many if the swatch had half a stitch more, or half a stitch less.
    pub(super) fn range(&self, inside: u32) -> Range {
        Range {
            least: self.width_of(inside, self.thousandths + PARTS / 2),
            most: self.width_of(inside, self.thousandths - PARTS / 2),
        }
    }

    /// How wide so many are at so many thousandths in the span, rounded once.
    #[inline(never)]
    fn width_of(&self, stitches: u32, thousandths: u64) -> Length {
        let over = u64::from(stitches) * PARTS * self.span;
        let nearest = (2 * over + thousandths) / (2 * thousandths);
        Length::from_nm(nearest as i64)
    }
}
