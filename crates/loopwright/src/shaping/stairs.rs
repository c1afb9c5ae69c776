//! Steps: "24 stitches of a shoulder are to go in 6 rows. How many do I bind off, and when?"
//!
//! Stitches are bound off at the *beginning* of a row, so one edge moves in every second row only: the right edge, as
//! the right side faces you, in right-side rows and the left edge in wrong-side rows. The left and the right shoulder
//! therefore start one row apart. So many such rows there are, so many steps; the stitches are shared out between
//! them, `stitches / steps`, and the remainder makes some steps one larger: at a neck the first ones, which makes it
//! round, at a shoulder here and there, which keeps it straight. All steps together are exactly the stitches.
//!
//! *Short rows* make the same slope with live stitches: at the end of a row so many are left unworked and the work is
//! turned, so the right edge moves in wrong-side rows; the last step is not a turn but a row over all the stitches, which
//! can then be bound off in one. The sum is arithmetic; where the larger steps go is common practice, no source.
//!
//! ```
//! use loopwright::shaping::stairs::{Edge, Question, answer};
//!
//! let answer = answer(&Question { edge: Edge::Both, ..Question::about(25, 6) }).unwrap();
//! let at = |edge| answer.stairs.iter().filter(move |stair| stair.edge == edge).map(|stair| (stair.row, stair.stitches));
//! assert!(at(Edge::Right).eq([(1, 8), (3, 8), (5, 9)]));
//! assert!(at(Edge::Left).eq([(2, 8), (4, 8), (6, 9)]));
//! ```

use super::{Knitting, STITCHES, Side};
use crate::bounds::Bounds;
use crate::problem::Problem;

/// Rows the steps may take.
pub const ROWS: Bounds<u32> = Bounds::new(1, 1_000);

/// What has to go, and where.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// Stitches to go at one edge, within [`STITCHES`].
    pub stitches: u32,
    /// Rows there are for it, within [`ROWS`].
    pub rows: u32,
    /// At which edge.
    pub edge: Edge,
    /// Shoulder or neck.
    pub place: Place,
    /// Bound off or left on the needle.
    pub way: Way,
    /// The side of the next row, which is row 1 of the answer.
    pub next: Side,
}

impl Question {
    /// The usual question: a shoulder at the right edge, bound off, a right-side row next.
    pub const fn about(stitches: u32, rows: u32) -> Self {
        Self {
            stitches,
            rows,
            edge: Edge::Right,
            place: Place::Shoulder,
            way: Way::BindOff,
            next: Side::Right,
        }
    }
}

/// An edge of the piece, as its right side faces you: not the wearer's right and left.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Edge {
    /// The right one.
    Right,
    /// The left one.
    Left,
    /// Both, so many stitches at each.
    Both,
}

/// What is shaped.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Place {
    /// A straight slope.
    Shoulder,
    /// A curve: the larger steps first.
    Neck,
}

/// How stitches go.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Way {
    /// Bound off at the beginning of a row.
    BindOff,
    /// Left unworked at the end of a row.
    ShortRows,
}

/// The steps.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// The steps of all edges in the order they are worked.
    pub stairs: Vec<Stair>,
    /// Steps at one edge.
    pub steps: u32,
    /// Stitches of the smaller steps.
    pub smaller: u32,
    /// How many steps are one larger.
    pub larger: u32,
    /// The row of the last step.
    pub used: u32,
    /// Plain rows left after it.
    pub left: u32,
}

/// One step at one edge.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Stair {
    /// The row it is worked in.
    pub row: u32,
    /// The side that faces the knitter in this row.
    pub side: Side,
    /// [`Edge::Right`] or [`Edge::Left`].
    pub edge: Edge,
    /// Stitches bound off at the beginning of this row, or left unworked at its end beside those left before.
    pub stitches: u32,
    /// Stitches gone at this edge up to and with this step. In short rows, work to the last so many and turn.
    pub gone: u32,
    /// The last step of this edge. In short rows it is no turn: work over all the stitches.
    pub last: bool,
}

/// Works out the steps.
///
/// # Errors
/// Every [`Problem`] has the field `stitches` or `rows`, and the nearest value that can be had.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    let edges = match question.edge {
        Edge::Both => [Some(Edge::Right), Some(Edge::Left)],
        one => [Some(one), None],
    };
    let knitting = Knitting::Flat { next: question.next };
    // The first row in which an edge can move.
    let begins = |edge: Edge| {
        let side = match (edge, question.way) {
            (Edge::Left, Way::BindOff) | (Edge::Right | Edge::Both, Way::ShortRows) => Side::Wrong,
            _ => Side::Right,
        };
        1 + u32::from(knitting.side(1) != side)
    };
    let latest = edges.into_iter().flatten().map(begins).max().unwrap_or(1);
    let mut problems = Vec::new();
    problems.extend(Problem::of_count("stitches", question.stitches, STITCHES));
    let rows = Bounds::new(latest, ROWS.most);
    problems.extend(Problem::of_count("rows", question.rows, rows));
    if !problems.is_empty() {
        return Err(problems);
    }
    let steps = question.stitches.min((question.rows - latest) / 2 + 1);
    let (smaller, larger) = (question.stitches / steps, question.stitches % steps);
    // Stitches gone after so many steps.
    let gone = |step: u32| match question.place {
        Place::Neck => step * smaller + step.min(larger),
        Place::Shoulder => (u64::from(step) * u64::from(question.stitches) / u64::from(steps)) as u32,
    };
    let mut stairs = Vec::new();
    for row in 1..=question.rows {
        for edge in edges.into_iter().flatten() {
            let first = begins(edge);
            let step = row.saturating_sub(first) / 2 + 1;
            if row < first || (row - first) % 2 == 1 || step > steps {
                continue;
            }
            stairs.push(Stair {
                row,
                side: knitting.side(row),
                edge,
                stitches: gone(step) - gone(step - 1),
                gone: gone(step),
                last: step == steps,
            });
        }
    }
    let used = stairs.last().map_or(0, |stair| stair.row);
    Ok(Answer {
        stairs,
        steps,
        smaller,
        larger,
        used,
        left: question.rows - used,
    })
}

#[cfg(test)]
mod tests;
