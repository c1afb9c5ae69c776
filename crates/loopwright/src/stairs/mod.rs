//! Steps: "27 stitches of a shoulder are to go in 4 steps. How many do I bind off, and when?"
//!
//! Stitches are bound off at the *beginning* of a row, so one edge moves in every second row only: the right edge, as
//! the right side faces you, in right-side rows and the left edge in wrong-side rows. The left and the right shoulder
//! therefore start one row apart. The stitches are shared out between the steps, `stitches / steps`, and the remainder
//! makes some steps one larger: at a neck the first ones, which makes it round, at a shoulder here and there, which keeps
//! it straight. All steps together are exactly the stitches. Where the rows are given, there are as many steps as an edge
//! can move in them.
//!
//! *Short rows* make the same slope with live stitches: at the end of a row so many are left unworked and the work is
//! turned, so the right edge moves in wrong-side rows; the last step is not a turn but a row over all the stitches, which
//! can then be bound off in one. A back neck that is raised in the round is a question of its own: [`raise`]. The sum is arithmetic; where the larger steps go is common practice, no source.
//!
//! ```
//! use loopwright::stairs::{Ask, Edge, Question, answer};
//!
//! let answer = answer(&Question { edge: Edge::Both, ..Question::about(27, Ask::Steps(4)) }).unwrap();
//! let at = |edge| answer.stairs.iter().filter(move |stair| stair.edge == edge).map(|stair| (stair.row, stair.stitches));
//! assert!(at(Edge::Right).eq([(1, 7), (3, 7), (5, 7), (7, 6)]));
//! assert!(at(Edge::Left).eq([(2, 7), (4, 7), (6, 7), (8, 6)]));
//! ```

mod choices;
mod follow;
pub mod raise;

pub use choices::{Asked, Name, Work};
pub use follow::{Doing, plan};

use crate::bounds::Bounds;
use crate::check::Check;
use crate::choice::Choice;
use crate::problem::Problem;
use crate::shaping::Knitting;
pub use crate::shaping::{STITCHES, Side};

/// Rows the steps may take.
pub const ROWS: Bounds<u32> = Bounds::new(1, 1_000);

/// Steps at one edge.
pub const STEPS: Bounds<u32> = Bounds::new(1, 500);

/// What has to go, and where.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// Stitches to go at one edge, within [`STITCHES`].
    pub stitches: u32,
    /// In how many steps or rows.
    pub ask: Ask,
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
    pub const fn about(stitches: u32, ask: Ask) -> Self {
        Self {
            stitches,
            ask,
            edge: Edge::START,
            place: Place::START,
            way: Way::START,
            next: Side::START,
        }
    }
}

/// In how many steps or rows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Ask {
    /// So many steps at each edge, within [`STEPS`] and no more than stitches.
    Steps(u32),
    /// As many steps as there is room for in so many rows, within [`ROWS`].
    Rows(u32),
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
    /// Steps at one edge.
    pub steps: u32,
    /// Stitches of a smaller step: stitches over steps, rounded down.
    pub smaller: u32,
    /// What is over: so many steps are one larger.
    pub over: u32,
    /// The steps of all edges in the order they are worked.
    pub stairs: Vec<Stair>,
    /// Turns at one edge, in short rows: one fewer than steps.
    pub turns: u32,
    /// The row of the last step.
    pub used: u32,
    /// Plain rows left after it, where the rows were given.
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
/// Every [`Problem`] has the field `stitches`, `steps` or `rows`, and the nearest value that can be had.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    let turns = Turns::of(question);
    let steps = steps(question, turns.latest)?;
    let used = turns.latest + 2 * (steps - 1);
    Ok(Answer {
        steps,
        smaller: question.stitches / steps,
        over: question.stitches % steps,
        stairs: stairs(question, turns, steps),
        turns: match question.way {
            Way::BindOff => 0,
            Way::ShortRows => steps - 1,
        },
        used,
        left: match question.ask {
            Ask::Steps(_) => 0,
            Ask::Rows(rows) => rows - used,
        },
    })
}

/// The two edges, which move in turn.
#[derive(Clone, Copy)]
struct Turns {
    /// The edge that moves in row 1.
    first: Edge,
    /// The edge that moves in row 2.
    second: Edge,
    /// The row in which all edges that are asked for have moved once.
    latest: u32,
}

impl Turns {
    fn of(question: &Question) -> Self {
        let (first, second) = match (question.next, question.way) {
            (Side::Right, Way::BindOff) | (Side::Wrong, Way::ShortRows) => (Edge::Right, Edge::Left),
            (Side::Wrong, Way::BindOff) | (Side::Right, Way::ShortRows) => (Edge::Left, Edge::Right),
        };
        let latest = if question.edge == first { 1 } else { 2 };
        Self { first, second, latest }
    }
}

/// How many steps: as many as were asked for, or as there is room for.
fn steps(question: &Question, latest: u32) -> Result<u32, Vec<Problem>> {
    let stitches = question.stitches;
    let mut check = Check::default();
    check.count(Name::Stitches, stitches, STITCHES);
    let steps = match question.ask {
        Ask::Steps(steps) => {
            let most = STEPS.most.min(stitches.max(1));
            check.count(Name::Steps, steps, Bounds::new(1, most));
            steps
        }
        Ask::Rows(rows) => {
            check.count(Name::Rows, rows, Bounds::new(latest, ROWS.most));
            stitches.min(rows.saturating_sub(latest) / 2 + 1)
        }
    };
    check.done()?;
    Ok(steps)
}

/// The steps in the order they are worked.
fn stairs(question: &Question, turns: Turns, steps: u32) -> Vec<Stair> {
    let moves = |edge| question.edge == edge || question.edge == Edge::Both;
    let mut stairs = Vec::new();
    let mut before = 0;
    for step in 1..=steps {
        let gone = gone(question, step, steps);
        for (edge, row) in [(turns.first, 2 * step - 1), (turns.second, 2 * step)] {
            if moves(edge) {
                stairs.push(Stair {
                    row,
                    side: Knitting::Flat { next: question.next }.side(row),
                    edge,
                    stitches: gone - before,
                    gone,
                    last: step == steps,
                });
            }
        }
        before = gone;
    }
    stairs
}

/// Stitches gone at an edge after so many of the steps: the larger ones come first at a neck, and here and there at a
/// shoulder.
fn gone(question: &Question, step: u32, steps: u32) -> u32 {
    let over = question.stitches % steps;
    let larger = match question.place {
        Place::Neck => step.min(over),
        Place::Shoulder => (step * over).div_ceil(steps),
    };
    step * (question.stitches / steps) + larger
}

#[cfg(test)]
mod tests;
