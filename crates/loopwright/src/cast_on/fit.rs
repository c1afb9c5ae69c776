//! From a width to the counts that a pattern can be worked on, in whole numbers throughout.
//!
//! The count that would fit is an exact fraction, and the nearest multiple is found on that fraction, so that half a
//! stitch is exactly half a stitch and a tie is a tie.

use super::{Count, Knitting, Question, Range, STITCHES};
use crate::every::Every;
use crate::units::Length;
use crate::units::rate::{Quotient, Rate};

/// A question within its bounds, ready to be fitted.
#[derive(Clone, Copy, Debug)]
pub(super) struct Fit {
    wanted: Length,
    rate: Rate,
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
            wanted: question.width,
            rate: Rate::of(question.gauge),
            of: question.multiple.of,
            plus,
            beside,
            extra,
        }
    }

    /// The count that would fit exactly.
    pub(super) fn ideal(&self) -> Quotient {
        self.rate.count_over(self.wanted)
    }

    /// The repeats whose width is nearest: the fewer of two that are equally near, and at least one. And whether one
    /// more is exactly as near.
    pub(super) fn nearest(&self) -> (u32, bool) {
        let counts = Every {
            least: self.of + self.plus,
            step: self.of,
        };
        let (inside, as_near) = counts.nearest(self.ideal());
        ((inside - self.plus) / self.of, as_near)
    }

    /// The most repeats that can be cast on.
    pub(super) fn most_repeats(&self) -> u32 {
        let beside = self.plus + self.beside + self.extra;
        (STITCHES.most.saturating_sub(beside) / self.of).max(1)
    }

    /// The count of so many repeats, no more than [`Self::most_repeats`].
    pub(super) fn count(&self, repeats: u32) -> Count {
        let inside = repeats * self.of + self.plus;
        let worked = inside + self.beside;
        let width = self.rate.width_of(inside);
        Count {
            cast_on: worked + self.extra,
            worked,
            inside,
            repeats,
            width,
            off: width.saturating_sub(self.wanted),
        }
    }

    /// The width of so many if the swatch had half a stitch more, or half a stitch less.
    pub(super) fn range(&self, inside: u32) -> Range {
        Range {
            least: self.rate.misread(1).width_of(inside),
            most: self.rate.misread(-1).width_of(inside),
        }
    }
}
