//! What to work at the two edges, so that one half is the mirror of the other.
//!
//! k2tog leans right and ssk left, so a pair needs one of each. *Along* the edge the stitch leans as the edge does: for a
//! loss ssk at the beginning of a right-side row and k2tog at its end; for a gain M1R and M1L. *Across* is the other way
//! round. A wrong-side row begins at the other edge of the piece, so there the pair changes places and is worked
//! purlwise. The bar of a kfb comes behind its stitch, so its mirror has one plain stitch more behind it. Common
//! practice, no source.
//!
//! ```
//! use loopwright::row::Stitch;
//! use loopwright::shaping::{Ask, Pair, Question, Side, answer};
//!
//! let pair = answer(&Question::about(Ask::Lose(18), 68)).unwrap().pair.unwrap();
//! // K1, ssk, knit to the last 3 stitches, k2tog, K1.
//! assert_eq!(pair, Pair { before: 1, first: Stitch::Ssk, last: Stitch::K2tog, after: 1 });
//! assert_eq!(pair.at_end(), 3);
//! // From the wrong side: P1, p2tog, purl to the last 3 stitches, ssp, P1.
//! assert_eq!(pair.on(Side::Wrong), Pair { first: Stitch::P2tog, last: Stitch::Ssp, ..pair });
//! ```

use super::ask::Wanted;
use super::{Question, Side};
use crate::row::Stitch;
use crate::spacing::Increase;

/// Which way a pair leans.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Slope {
    /// As the edge does: smooth.
    Along,
    /// Against it: a line that shows.
    Across,
}

/// One change at each edge, in the order they are worked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Pair {
    /// Plain stitches before the first.
    pub before: u32,
    /// The change at the beginning of a right-side row.
    pub first: Stitch,
    /// The change at its end: the mirror.
    pub last: Stitch,
    /// Plain stitches after it.
    pub after: u32,
}

impl Pair {
    /// The pair of a question about two stitches a shaping row, if the first of them has room for it.
    pub(super) fn of(question: &Question, wanted: &Wanted) -> Option<Self> {
        if question.each != 2 || wanted.amount < 2 {
            return None;
        }
        let along = match (wanted.gain, question.increase) {
            (false, _) => Stitch::Ssk,
            (true, Increase::M1) => Stitch::M1R,
            (true, other @ (Increase::Yo | Increase::Kfb)) => other.stitch(),
        };
        let first = match question.slope {
            Slope::Along => along,
            Slope::Across => along.mirror(),
        };
        // What is made in a gap needs a stitch on either side of it, and two of them a stitch between.
        let in_gap = u32::from(first.is_in_gap());
        let before = question.edge.max(in_gap);
        let pair = Self {
            before,
            first,
            last: first.mirror(),
            after: before + u32::from(first == Stitch::Kfb),
        };
        (pair.takes() <= question.stitches.unwrap_or(u32::MAX)).then_some(pair)
    }

    /// Stitches of a row that has room for it.
    pub(super) fn takes(self) -> u32 {
        self.before + self.first.uses() + u32::from(self.first.is_in_gap()) + self.at_end()
    }

    /// The pair as a row of this side begins and ends with it.
    pub const fn on(self, side: Side) -> Self {
        match side {
            Side::Right => self,
            Side::Wrong => Self {
                first: self.last.on_purl_side(),
                last: self.first.on_purl_side(),
                ..self
            },
        }
    }

    /// Stitches that the end of the row takes: work to the last so many.
    pub const fn at_end(self) -> u32 {
        self.last.uses() + self.after
    }
}
