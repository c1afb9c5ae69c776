//! Even spacing: "I have 132 stitches and want to lose 16 evenly in this round. What do I knit?"
//!
//! Take the stitches that the changes use away from those on the needle; what is left is plain. Share the plain
//! stitches out between the changes: `plain / changes`, and the remainder makes some runs one longer. So no two plain
//! runs differ by more than one; what is left to choose is their order, and where the row begins among them.
//! The sum is arithmetic; that no change should stand on the marker, and which way a pair should lean, is common
//! practice, no source.
//!
//! ```
//! use loopwright::spacing::{Ask, Question, answer};
//! let answer = answer(&Question { ask: Ask::Lose(16), ..Question::about(132) }).unwrap();
//! assert_eq!((answer.changes, answer.after), (16, 116));
//! let way = &answer.ways[answer.suggested];
//! assert_eq!(way.row.to_string(), "K3, k2tog, (K7, k2tog) 3 times, (K6, k2tog) 12 times, K4");
//! ```

mod ask;
mod choices;
mod follow;
mod lay;
mod note;
mod order;

pub use crate::terms::{MULTIPLE, Working};
pub use ask::{Multiples, Reached, multiples};
pub use choices::{Asked, EdgeKind, Marker, Name};
pub use follow::{Spaced, plan};
pub use note::{Note, Step};
pub use order::{Fraction, MOST_EVEN, Order};

use crate::bounds::Bounds;
use crate::choice::Choice;
use crate::problem::Problem;
use crate::row::{Row, Stitch};

/// How many stitches may be on the needle.
pub const STITCHES: Bounds<u32> = Bounds::new(1, 100_000);

/// Plain stitches at each edge where so many are asked for and none are said.
pub const USUAL_EDGE: u32 = 2;

/// A text of more terms than this is not one to knit from: the page gives a table beside a shorter order.
pub const LONGEST_TEXT: usize = 60;

/// What is on the needle and what is wanted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// Stitches on the needle, within [`STITCHES`].
    pub stitches: u32,
    /// What is wanted.
    pub ask: Ask,
    /// How to decrease, where the answer is to decrease.
    pub decrease: Decrease,
    /// How to increase, where the answer is to increase.
    pub increase: Increase,
    /// In the round or flat.
    pub knitting: Knitting,
    /// Whether this row is a knit one or a purl one.
    pub face: Face,
    /// What the fabric is.
    pub fabric: Fabric,
}

impl Question {
    /// The usual question about so many stitches: lose one with k2tog, in a knit round of stockinette.
    pub const fn about(stitches: u32) -> Self {
        Self {
            stitches,
            ask: Ask::Lose(1),
            decrease: Decrease::START,
            increase: Increase::START,
            knitting: Knitting::Round { end_on_change: false },
            face: Face::START,
            fabric: Fabric::START,
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
    /// So many decreases, whatever each takes away.
    Decreases(u32),
    /// So many increases.
    Increases(u32),
    /// So many stitches in the end.
    Reach(u32),
    /// A multiple of `of`, plus `plus` when flat; in the round there are no edges to need the `plus`, and it is dropped.
    Multiple {
        /// Stitches of one repeat, within [`MULTIPLE`].
        of: u32,
        /// Stitches beside the repeats, fewer than one repeat.
        plus: u32,
    },
}

/// Ways to lose stitches.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Decrease {
    /// Knit two together.
    K2tog,
    /// Slip, slip, knit.
    Ssk,
    /// Purl two together.
    P2tog,
    /// Slip one, knit two together, pass the slipped stitch over.
    Sk2p,
    /// Centred double decrease.
    Cdd,
}

/// Ways to gain stitches.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Increase {
    /// Make one from the bar between two stitches.
    M1,
    /// Yarn over.
    Yo,
    /// Knit into the front and the back.
    Kfb,
}

impl Decrease {
    /// The stitch on a knit row.
    pub const fn stitch(self) -> Stitch {
        match self {
            Self::K2tog => Stitch::K2tog,
            Self::Ssk => Stitch::Ssk,
            Self::P2tog => Stitch::P2tog,
            Self::Sk2p => Stitch::Sk2p,
            Self::Cdd => Stitch::Cdd,
        }
    }
}

impl Increase {
    /// The stitch on a knit row.
    pub const fn stitch(self) -> Stitch {
        match self {
            Self::M1 => Stitch::M1,
            Self::Yo => Stitch::Yo,
            Self::Kfb => Stitch::Kfb,
        }
    }
}

/// In the round, where the last run meets the first, or flat, where each end is an edge.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Knitting {
    /// In the round.
    Round {
        /// End on the change: shorter to write, but the last change stands beside the marker. Never done for an
        /// increase in a gap, which would be lost there.
        end_on_change: bool,
    },
    /// Back and forth.
    Flat {
        /// What happens at the two edges.
        edge: Edge,
    },
}

/// What happens at the two edges of a flat row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Edge {
    /// Half a run at each end, so that two such pieces sewn together space evenly.
    Half,
    /// At least so many plain stitches at each end.
    AtLeast(u32),
    /// The second half is the first in a mirror, leaning stitches and all.
    Mirrored,
}

/// The side that faces the knitter as she works this row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Face {
    /// A knit row or round.
    Knit,
    /// A purl row or round.
    Purl,
}

/// The fabric the row belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Fabric {
    /// Stockinette.
    Stockinette,
    /// Garter.
    Garter,
    /// Rib.
    Rib,
}

/// The row to work, written in up to three orders.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// Stitches before.
    pub before: u32,
    /// Stitches after.
    pub after: u32,
    /// The change, as it is worked on this side of the fabric.
    pub change: Stitch,
    /// How many of them.
    pub changes: u32,
    /// The ways to write it: easiest first, most even last.
    pub ways: Vec<Way>,
    /// Which of `ways` to offer first: the shortest to say of those that stray too little to be seen.
    pub suggested: usize,
    /// The counts either side, when a multiple was asked for.
    pub multiples: Option<Multiples>,
    /// What else she should know.
    pub notes: Vec<Note>,
    /// The sum.
    pub steps: Vec<Step>,
}

/// One order of the runs, written.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Way {
    /// The order of the long and the short runs.
    pub order: Order,
    /// The row.
    pub row: Row,
    /// How far the changes stray from dead even, in stitches.
    pub drift: Fraction,
    /// Whether the text is short enough to knit from ([`LONGEST_TEXT`]); where it is not, the row is there for its changes.
    pub readable: bool,
}

/// Works out the row.
///
/// # Errors
/// Every [`Problem`] has the field `stitches`, `amount`, `plus` or `edge_plain`, and the nearest value that can be had.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    check(question)?;
    let plan = ask::plan(question).map_err(|problem| vec![problem])?;
    let spread = Spread::of(question, &plan);
    let ways = lay::ways(&spread);
    let suggested = suggest(&spread, &ways);
    Ok(Answer {
        before: question.stitches,
        after: plan.after(question.stitches),
        change: spread.change,
        changes: plan.changes,
        notes: note::notes(question, &spread, &ways[suggested]),
        steps: note::steps(question.stitches, &spread, &ways),
        multiples: plan.multiples,
        suggested,
        ways,
    })
}

/// The row that is suggested, without the other ways to write it: the whole of [`answer`] where it has to be looked for
/// among them.
///
/// # Errors
/// As [`answer`].
pub(crate) fn suggested_row(question: &Question) -> Result<Row, Vec<Problem>> {
    check(question)?;
    let spread = Spread::of(question, &ask::plan(question).map_err(|problem| vec![problem])?);
    let is_plain_round = question.knitting == Knitting::Round { end_on_change: false };
    let row = is_plain_round.then(|| lay::suggested_ring(&spread)).flatten();
    match row {
        Some(row) => Ok(row),
        None => answer(question).map(|mut answer| answer.ways.swap_remove(answer.suggested).row),
    }
}

/// What is to be shared out: so many plain stitches between so many changes.
#[derive(Clone, Copy, Debug)]
struct Spread {
    plain: u32,
    changes: u32,
    change: Stitch,
    knitting: Knitting,
    face: Face,
    fabric: Fabric,
}

impl Spread {
    fn of(question: &Question, plan: &ask::Plan) -> Self {
        Self {
            plain: question.stitches - plan.changes * plan.change.uses(),
            changes: plan.changes,
            change: plan.change,
            knitting: question.knitting,
            face: question.face,
            fabric: question.fabric,
        }
    }

    /// The plain stitch of this side of the fabric.
    fn plain_stitch(&self) -> Stitch {
        match (self.fabric, self.face) {
            (Fabric::Rib, _) => Stitch::Rib,
            (_, Face::Knit) => Stitch::Knit,
            (_, Face::Purl) => Stitch::Purl,
        }
    }
}

fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let mut problems = Vec::new();
    problems.extend(Problem::of_count(Name::Stitches, question.stitches, STITCHES));
    if let Ask::Multiple { of, plus } = question.ask {
        let wrong = Problem::of_count(Name::Amount, of, MULTIPLE);
        let wrong = wrong.or_else(|| Problem::of_count(Name::Plus, plus, Bounds::new(0, of - 1)));
        problems.extend(wrong);
    }
    if problems.is_empty() { Ok(()) } else { Err(problems) }
}

/// The shortest to say of the ways that stray so little that nobody sees it; of equally short ones the most even. Where
/// none is short enough to knit from, the one that strays least of those that are.
fn suggest(spread: &Spread, ways: &[Way]) -> usize {
    let most = order::unseen(spread.plain, spread.changes);
    let readable = || ways.iter().enumerate().filter(|(_, way)| way.readable);
    let unseen = readable().filter(|(_, way)| way.drift <= most);
    let suggested = unseen.min_by_key(|(_, way)| (way.row.terms(), way.drift));
    let suggested = suggested.or_else(|| readable().min_by_key(|(_, way)| way.drift));
    suggested.map_or(0, |(place, _)| place)
}

#[cfg(test)]
mod tests;
