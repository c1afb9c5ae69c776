//! Shaping over rows: "I have to lose 18 stitches in the next 66 rows, one at each edge. Which rows?"
//!
//! Stitches over stitches a shaping row is the number of shaping rows: 18 / 2 = 9. The first of them comes at once, or
//! after so many plain rows, the last leaves at least so many plain rows before the bind-off or join, and the rows from
//! the first to the last are shared out between the 8 gaps: `rows / gaps`, the remainder making some gaps one longer. On
//! right-side rows only it is the *pairs* of rows that are shared, so every rate is even and two rates differ by two.
//!
//! There is one convention: **plain rows first, then one shaping row**, so many times. "Work 7 rows plain, then a
//! decrease row; 8 times" takes 64 rows, and nothing else is meant by it. That the first shaping row comes at once,
//! that one plain row is left before a bind-off, that right-side rows are preferred, and which way a pair leans are
//! common practice, no source; the rest is arithmetic. Steps at a shoulder or a neck are another sum:
//! [`crate::stairs`]. As the trade says it, counted from the shaping row before, is told by [`Rates`].
//!
//! ```
//! use loopwright::shaping::{Ask, Block, Question, answer};
//!
//! let block = |plain, times| Block { plain, change: 2, times };
//! let exact = answer(&Question::about(Ask::Lose(18), 66)).unwrap();
//! // At once; then 7 rows plain and a decrease row, 8 times: 65 rows are used of the 66.
//! assert_eq!(exact.schedule.blocks, [block(0, 1), block(7, 8)]);
//! assert_eq!((exact.used, exact.schedule.left), (65, 1));
//! // All of them on the right side.
//! assert!(exact.schedule.rows().all(|shaped| shaped.row % 2 == 1));
//! // In 68 rows the last gap is two rows longer.
//! let longer = answer(&Question::about(Ask::Lose(18), 68)).unwrap();
//! assert_eq!(longer.schedule.blocks, [block(0, 1), block(7, 7), block(9, 1)]);
//! ```

mod ask;
mod choices;
mod even;
mod follow;
mod pair;
mod rates;
mod schedule;

pub use choices::{Asked, KnittingKind, LastRow, Name, Pace, ShapedSides};
pub(crate) use even::{Rhythm, Rounds};
pub(crate) use follow::of_schedule;
pub use follow::{Doing, Placed, plan};
pub use pair::{Pair, Slope};
pub(crate) use rates::Growth;
pub use rates::{Drift, Rate, Rates, Track};
pub use schedule::{Block, Rows, Schedule, Shaped, Shared};

use crate::bounds::Bounds;
use crate::check::Check;
use crate::choice::Choice;
use crate::problem::Problem;
pub use crate::spacing::Increase;
pub use crate::terms::Side;
use ask::Wanted;
use schedule::Room;

/// How many stitches may be on the needle.
pub const STITCHES: Bounds<u32> = Bounds::new(1, 100_000);

/// How many rows there may be.
pub const ROWS: Bounds<u32> = Bounds::new(1, 10_000);

/// Stitches lost or gained in one shaping row.
pub const EACH: Bounds<u32> = Bounds::new(1, 1_000);

/// Plain rows that are kept at the beginning or at the end.
pub const PLAIN: Bounds<u32> = Bounds::new(0, 1_000);

/// Plain stitches outside a pair.
pub const EDGE: Bounds<u32> = Bounds::new(0, 100);

/// Stitches one shaping row changes when nothing else is said: a pair.
pub const USUAL_EACH: u32 = 2;

/// Plain rows before the first shaping row when nothing else is said: it comes at once. Common practice, no source.
pub const USUAL_FIRST: u32 = 0;

/// Plain rows after the last shaping row when nothing else is said, before a bind-off or a join. Common practice, no
/// source.
pub const USUAL_LAST: u32 = 1;

/// Plain stitches outside a pair when nothing else is said. Common practice, no source.
pub const USUAL_EDGE: u32 = 1;

/// What is wanted, in how many rows, and how it may be done.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// What is wanted.
    pub ask: Ask,
    /// Rows or rounds there are for it, within [`ROWS`].
    pub rows: u32,
    /// Stitches on the needle now, within [`STITCHES`]; none when only the change matters.
    pub stitches: Option<u32>,
    /// Stitches lost or gained in one shaping row, all edges and lines together; within [`EACH`], usually
    /// [`USUAL_EACH`].
    pub each: u32,
    /// Whether the last shaping row may change fewer than the others, when the change is no multiple of `each`.
    pub rest: bool,
    /// Whether shaping keeps to right-side rows. Nothing in the round, where every round is a right-side one.
    pub right_side: bool,
    /// Flat or in the round, and which row is next.
    pub knitting: Knitting,
    /// Plain rows before the first shaping row, within [`PLAIN`]: 0 shapes at once. None makes the beginning a gap like
    /// the others, as "every 8th row" is often meant.
    pub first: Option<u32>,
    /// Plain rows at least after the last shaping row, within [`PLAIN`]; usually [`USUAL_LAST`].
    pub last: u32,
    /// How gaps of two lengths follow each other.
    pub order: Order,
    /// Plain stitches outside each stitch of a pair, within [`EDGE`]; only for two stitches a shaping row.
    pub edge: u32,
    /// Which way a pair leans.
    pub slope: Slope,
    /// How a pair gains.
    pub increase: Increase,
}

impl Question {
    /// The usual question: flat, the next row a right-side one, a pair on right-side rows, the first one at once, one
    /// plain row at the end, the closer rate first, one edge stitch.
    pub const fn about(ask: Ask, rows: u32) -> Self {
        Self {
            ask,
            rows,
            stitches: None,
            each: USUAL_EACH,
            rest: false,
            right_side: true,
            knitting: KnittingKind::START.knitting(),
            first: Some(USUAL_FIRST),
            last: USUAL_LAST,
            order: Order::START,
            edge: USUAL_EDGE,
            slope: Slope::START,
            increase: Increase::START,
        }
    }
}

/// What is wanted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Ask {
    /// So many stitches fewer.
    Lose(u32),
    /// So many stitches more.
    Gain(u32),
    /// So many stitches in the end; the count now has to be known.
    Reach(u32),
}

/// Flat or in the round.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Knitting {
    /// In the round: every row is a right-side one.
    Round,
    /// Back and forth.
    Flat {
        /// The side of the row that is worked next, which is row 1 of the answer.
        next: Side,
    },
}

impl Knitting {
    /// The side of a row, of which 1 is the next.
    pub const fn side(self, row: u32) -> Side {
        match self {
            Self::Round => Side::Right,
            Self::Flat { next } if row % 2 == 1 => next,
            Self::Flat { next: Side::Right } => Side::Wrong,
            Self::Flat { next: Side::Wrong } => Side::Right,
        }
    }
}

/// How gaps of two lengths follow each other.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Order {
    /// The short gaps first: steep, then gentle.
    CloseFirst,
    /// The long gaps first: gentle, then steep.
    WideFirst,
    /// All gaps short, and what is over is left plain at the end: one rate to remember.
    OneRate,
    /// Long and short in turn, each shaping row as near to the straight line as whole rows allow.
    Mixed,
}

/// Which rows to shape in. Steeper than the most is for bind-off steps ([`crate::stairs`]) or for casting on; the
/// gentlest is one shaping row, and no slope.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// The instruction: plain rows, then one shaping row, so many times; with its rows one by one.
    pub schedule: Schedule,
    /// Shaping rows.
    pub shaping_rows: u32,
    /// Stitches lost or gained in all.
    pub change: u32,
    /// How many of them are wrong-side rows.
    pub wrong_side: u32,
    /// What the last shaping row changes: `each`, or what is left over.
    pub in_last: u32,
    /// Stitches in the end, where the count now is known.
    pub after: Option<u32>,
    /// The row of the last shaping: so many rows are used, and `schedule.left` are left.
    pub used: u32,
    /// How the rows are shared out.
    pub shared: Shared,
    /// The most stitches that these rows could take by the same means: every row that may be shaped, and one stitch
    /// stays on the needle.
    pub most: u32,
    /// The fewest rows that this change takes.
    pub fewest_rows: u32,
    /// What to work at the two edges, for two stitches a shaping row where there is room for it at first.
    pub pair: Option<Pair>,
    /// The first row of two stitches that has no room for the pair any more.
    pub cramped: Option<u32>,
}

/// Works out the rows.
///
/// # Errors
/// Every [`Problem`] has the field `amount`, `stitches`, `rows`, `each`, `first`, `last` or `edge`, and the nearest
/// value that can be had. A slope that is too steep has several, of which putting one right is enough.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    check(question)?;
    let wanted = Wanted::of(question).map_err(|problem| vec![problem])?;
    let room = Room::of(question);
    if wanted.shaping_rows > room.shapeable() {
        return Err(wanted.too_steep(question, &room));
    }
    let shared = room.shared(wanted.shaping_rows);
    let schedule = Schedule::of(question, &wanted, &room, &shared);
    let pair = Pair::of(question, &wanted);
    let wrong_side = schedule.rows().filter(|shaped| shaped.side == Side::Wrong).count();
    Ok(Answer {
        shaping_rows: wanted.shaping_rows,
        wrong_side: wrong_side as u32,
        change: wanted.amount,
        in_last: wanted.in_last,
        after: question.stitches.map(|now| wanted.after(now)),
        used: question.rows - schedule.left,
        shared,
        most: wanted.most.min(room.shapeable() * question.each),
        fewest_rows: room.fewest_rows(wanted.shaping_rows),
        pair,
        cramped: pair.and_then(|pair| cramped(pair, &schedule)),
        schedule,
    })
}

/// The first row that loses two stitches and has no room for the pair any more.
fn cramped(pair: Pair, schedule: &Schedule) -> Option<u32> {
    let has_no_room = |shaped: &Shaped| {
        let before = shaped.stitches.map(|after| after + shaped.change);
        shaped.change == 2 && before.is_some_and(|before| before < pair.takes())
    };
    let first = schedule.rows().filter(|_| !schedule.gain).find(has_no_room);
    first.map(|shaped| shaped.row)
}

fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let mut check = Check::default();
    check.count(Name::Rows, question.rows, ROWS);
    check.count(Name::Stitches, question.stitches.unwrap_or(STITCHES.least), STITCHES);
    check.count(Name::Each, question.each, EACH);
    check.count(Name::First, question.first.unwrap_or(0), PLAIN);
    check.count(Name::Last, question.last, PLAIN);
    check.count(Name::Edge, question.edge, EDGE);
    check.done()
}

#[cfg(test)]
mod tests;
