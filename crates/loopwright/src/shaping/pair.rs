//! What to work at the two edges, so that one half is the mirror of the other.
//!
//! k2tog leans right and ssk left, so a pair needs one of each. *Along* the edge the stitch leans as the edge does: for a
//! loss ssk at the beginning of a right-side row and k2tog at its end; for a gain M1R and M1L. *Across* is the other way
//! round. A wrong-side row begins at the other edge of the piece, so there the pair changes places and is worked
//! purlwise. The bar of a kfb comes behind its stitch, so its mirror has one plain stitch more behind it. Common
//! practice, no source.
//!
//! ```
//! use loopwright::shaping::{Ask, Question, Side, answer};
//!
//! let pair = answer(&Question::about(Ask::Lose(18), 68)).unwrap().pair.unwrap();
//! assert_eq!(pair.row(Side::Right, 40).unwrap().to_string(), "K1, ssk, K34, k2tog, K1");
//! assert_eq!(pair.row(Side::Wrong, 40).unwrap().to_string(), "P1, p2tog, P34, ssp, P1");
//! ```

use super::ask::Wanted;
use super::{Question, Side};
use crate::row::{Item, Row, Run, Stitch};
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
    /// The pair of a question about two stitches a shaping row, if there is room for it when stitches are fewest.
    pub(super) fn of(question: &Question, wanted: &Wanted) -> Option<Self> {
        if question.each != 2 || wanted.amount < 2 {
            return None;
        }
        let along = match (wanted.gain, question.increase) {
            (false, _) => Stitch::Ssk,
            (true, Increase::M1) => Stitch::M1R,
            (true, other) => other.stitch(),
        };
        let first = match question.slope {
            Slope::Along => along,
            Slope::Across => along.mirror(),
        };
        // What is made in a gap needs a stitch on either side of it.
        let before = question.edge.max(u32::from(first.is_in_gap()));
        let pair = Self {
            before,
            first,
            last: first.mirror(),
            after: before + u32::from(first == Stitch::Kfb),
        };
        let fewest = match (wanted.gain, question.stitches) {
            (_, None) => return Some(pair),
            (true, Some(stitches)) => stitches,
            // Before the last row that has a pair.
            (false, Some(stitches)) => stitches - wanted.amount / 2 * 2 + 2,
        };
        pair.row(Side::Right, fewest).is_some().then_some(pair)
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

    /// A whole shaping row over so many stitches; none when they are too few.
    pub fn row(self, side: Side, stitches: u32) -> Option<Row> {
        let Self {
            before,
            first,
            last,
            after,
        } = self.on(side);
        let taken = before.checked_add(after)?.checked_add(first.uses() + last.uses())?;
        let middle = stitches.checked_sub(taken)?;
        if middle == 0 && first.is_in_gap() {
            // Both would stand in the same gap.
            return None;
        }
        let plain = match side {
            Side::Right => Stitch::Knit,
            Side::Wrong => Stitch::Purl,
        };
        let mut row = Row::default();
        for (stitch, count) in [(plain, before), (first, 1), (plain, middle), (last, 1), (plain, after)] {
            if count > 0 {
                row.items.push(Item::Run(Run::new(stitch, count)));
            }
        }
        Some(row)
    }
}
