//! From a width to the counts that a pattern can be worked on, in whole numbers throughout.
//!
//! The count that would fit is an exact fraction: thousandths of stitches times nanometres, over a thousand spans. The
//! nearest multiple is found on that fraction, so that half a stitch is exactly half a stitch and a tie is a tie.

use super::{Count, Knitting, Question, Range, STITCHES};
use crate::spacing::Fraction;
use crate::units::{Gauge, Length};

/// Thousandths in one stitch: how finely a gauge is held.
const PARTS: i128 = 1_000;

/// A checked question, ready to be fitted.
#[derive(Clone, Copy, Debug)]
pub(super) struct Fit {
    width: Length,
    gauge: Gauge,
    of: u32,
    /// None in the round.
    plus: u32,
    /// Edge stitches to be seen, both edges together.
    edges: u32,
    /// Seam stitches, both edges together.
    seams: u32,
    /// The one more of the join.
    extra: u32,
}

impl Fit {
    /// The parts of a question that [`super::check`] has passed.
    pub(super) fn of(question: &Question) -> Self {
        let (plus, edges, seams, extra) = match question.knitting {
            Knitting::Round { extra } => (0, 0, 0, u32::from(extra)),
            Knitting::Flat { edge, seam } => (question.multiple.plus, 2 * edge, 2 * seam, 0),
        };
        Self {
            width: question.width,
            gauge: question.gauge,
            of: question.multiple.of,
            plus,
            edges,
            seams,
            extra,
        }
    }

    /// The count that would fit exactly.
    pub(super) fn ideal(&self) -> Fraction {
        let (over, under) = self.ideal_parts();
        Fraction::new(to_u64(over), to_u64(under))
    }

    /// The repeats whose width is nearest, and the other ones where two are equally near.
    pub(super) fn nearest(&self) -> (u32, Option<u32>) {
        let (over, under) = self.ideal_parts();
        let one = under * i128::from(self.of);
        let pattern = over - under * i128::from(self.plus);
        let (below, rest) = (pattern.div_euclid(one), pattern.rem_euclid(one));
        let to_repeats = |count: i128| u32::try_from(count.max(1)).unwrap_or(u32::MAX);
        if below < 1 {
            return (1, None);
        }
        match (2 * rest).cmp(&one) {
            std::cmp::Ordering::Less => (to_repeats(below), None),
            std::cmp::Ordering::Equal => (to_repeats(below), Some(to_repeats(below + 1))),
            std::cmp::Ordering::Greater => (to_repeats(below + 1), None),
        }
    }

    /// The most repeats that can be cast on.
    pub(super) fn most_repeats(&self) -> u32 {
        let beside = self.plus + self.edges + self.seams + self.extra;
        (STITCHES.most.saturating_sub(beside) / self.of).max(1)
    }

    /// The count of so many repeats, no more than [`Self::most_repeats`].
    pub(super) fn count(&self, repeats: u32) -> Count {
        let inside = repeats * self.of + self.plus;
        let worked = inside + self.edges + self.seams;
        let width = self.width_of(inside, 0);
        Count {
            cast_on: worked + self.extra,
            worked,
            inside,
            repeats,
            width,
            with_edges: self.width_of(inside + self.edges, 0),
            off: width.saturating_sub(self.width),
        }
    }

    /// The width of so many if the swatch had half a stitch more, or half a stitch less.
    pub(super) fn range(&self, inside: u32) -> Range {
        Range {
            least: self.width_of(inside, PARTS / 2),
            most: self.width_of(inside, -PARTS / 2),
        }
    }

    fn ideal_parts(&self) -> (i128, i128) {
        (
            thousandths(self.gauge) * i128::from(self.width.to_nm()),
            PARTS * i128::from(self.gauge.span().to_nm()),
        )
    }

    /// How wide so many are, rounded once; with the swatch read so many thousandths wrong.
    fn width_of(&self, stitches: u32, wrong: i128) -> Length {
        let over = i128::from(stitches) * PARTS * i128::from(self.gauge.span().to_nm());
        let under = (thousandths(self.gauge) + wrong).max(1);
        let nearest = (2 * over + under) / (2 * under);
        Length::from_nm(i64::try_from(nearest).unwrap_or(i64::MAX))
    }
}

/// The count of a gauge as it is held. Rounding undoes the division that made a number of it, exactly.
fn thousandths(gauge: Gauge) -> i128 {
    (gauge.count() * PARTS as f64).round() as i128
}

fn to_u64(value: i128) -> u64 {
    u64::try_from(value).unwrap_or(u64::MAX)
}
