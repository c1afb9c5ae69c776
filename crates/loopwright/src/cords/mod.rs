//! Cords: "This yoke grows from 90 stitches to 300. Which circular needles do I need, and when do I change?"
//!
//! A cord goes by what lies on the needle: stitches over the gauge *before washing*. In the round a cord, tips and all,
//! may be no longer than that girth, or the stitches stretch to reach; and it holds at most twice its length, since
//! stitches squeeze to about half. So it serves from its length to twice it, and where two serve is the window in which
//! to change. Back and forth there is no lower limit. For a ruffle the girth is that of its stitches, not of the body.
//! Common practice, no source; so are 80 cm for magic loop, and tips of at most a quarter of a cord of 40 cm or less.
//!
//! The fewest cords: take the smallest girth that no cord serves yet, and of the cords that serve it the one that
//! reaches furthest; again until all is served. Each cord serves one unbroken stretch of girths, so no other choice
//! leaves less to do, and none can need fewer.
//!
//! ```
//! use loopwright::cords::{Around, By, Question, answer};
//! use loopwright::units::{Gauge, Length, LengthUnit};
//!
//! // 90 stitches to 300 in 60 rounds, 20 in 10 cm before washing: 45 cm to 150 cm.
//! let answer = answer(&Question {
//!     unwashed: Some(Gauge::of(20, Gauge::TEN_CM)),
//!     ..Question::about(Around::Even { from: 90, to: 300, rounds: 60 })
//! })
//! .unwrap();
//! // From 45 cm on 40 cm, which holds 80 cm; 80 cm holds the rest.
//! let cords = [40, 80].map(|cm| Length::of(cm, LengthUnit::Cm));
//! assert_eq!(answer.picks, cords);
//! assert_eq!(answer.plan[1].by, By::Cord(cords[1]));
//! assert_eq!((answer.plan[1].earliest, answer.plan[1].latest), (21, 21));
//! ```

mod choices;
mod easier;
mod gap;
mod growth;
mod list;
mod piece;

pub use choices::{Name, Swatch};
pub use easier::Easier;
pub use gap::Gap;
pub use growth::{Step, print_steps, read_steps};
pub use list::read_list;
pub use piece::{By, Cord, Run, Stretch};

use crate::bounds::Bounds;
use crate::check::Check;
use crate::gauge::Called;
use crate::problem::Problem;
use crate::tail::NEEDLE;
use crate::units::rate::Rate;
use crate::units::{Gauge, Length, LengthUnit};
use piece::{OnNeedle, Piece};

/// Stitches on the needle.
pub const STITCHES: Bounds<u32> = Bounds::new(1, 100_000);

/// Rounds of a piece.
pub const ROUNDS: Bounds<u32> = Bounds::new(1, 10_000);

/// A girth that is typed: 1 cm to 20 m.
pub const GIRTH: Bounds<Length> = Bounds::new(Length::from_mm(10), Length::of(20, LengthUnit::M));

/// How long a cord may be, tips and all: 15 cm to 5 m.
pub const CORD: Bounds<Length> = Bounds::new(Length::from_mm(150), Length::of(5, LengthUnit::M));

/// How many cords may be at hand; none for [`USUAL`].
pub const CORDS: Bounds<u32> = Bounds::new(0, 40);

/// How long a tip may be: 1 cm to 40 cm.
pub const TIP: Bounds<Length> = Bounds::new(Length::from_mm(10), Length::from_mm(400));

/// The cords that are taken to be at hand when none are named. Common practice, no source.
pub const USUAL: [Length; 6] = [
    Length::from_mm(400),
    Length::from_mm(600),
    Length::from_mm(800),
    Length::from_mm(1000),
    Length::from_mm(1200),
    Length::from_mm(1500),
];

/// Up to this length the tips decide whether a cord bends into a ring. Common practice, no source.
pub const TIPS_MATTER_TO: Length = Length::from_mm(400);

/// A tip may be one part in so many of such a cord. Common practice, no source.
pub const TIP_PART: i64 = 4;

/// A cord holds so many times its length, since stitches squeeze. Common practice, no source.
pub const SQUEEZE: i64 = 2;

/// The shortest cord for magic loop, tips and all. Common practice, no source.
pub const MAGIC_LOOP: Length = Length::from_mm(800);

/// What magic loop needs beyond the stitches: two tips and the loop. Common practice, no source.
pub const MAGIC_ROOM: Length = Length::from_mm(300);

/// A piece, and the cords there are.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// What goes round the cord.
    pub around: Around,
    /// Stitches in a span of the swatch *before washing*: [`Gauge::COUNTS`] over [`Gauge::SPANS`].
    pub unwashed: Option<Gauge>,
    /// The same after washing: used, for want of a better one, where `unwashed` is not known.
    pub washed: Option<Gauge>,
    /// Knitted back and forth.
    pub flat: bool,
    /// The cords at hand, each with its tips, within [`CORD`], at most as many as [`CORDS`]; none for [`USUAL`].
    pub cords: Vec<Length>,
    /// How long one tip is on cords up to [`TIPS_MATTER_TO`], where known; within [`TIP`].
    pub tip: Option<Length>,
    /// How thick the needles are, where known; within [`NEEDLE`]. All cords have to be of that thickness.
    pub needle: Option<Length>,
}

impl Question {
    /// The usual question about a piece: in the round, with the usual cords; its gauge is still to be said.
    pub const fn about(around: Around) -> Self {
        Self {
            around,
            unwashed: None,
            washed: None,
            flat: false,
            cords: Vec::new(),
            tip: None,
            needle: None,
        }
    }

    /// The gauge that is reckoned with: the unwashed one, or for want of it the washed.
    pub fn gauge(&self) -> Option<Gauge> {
        self.unwashed.or(self.washed)
    }
}

/// What goes round the cord.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Around {
    /// One girth, measured on the needle before washing and not stretched; within [`GIRTH`].
    Girth(Length),
    /// Stitches that grow or shrink evenly; the same at both ends for a tube.
    Even {
        /// Stitches in the first round, within [`STITCHES`].
        from: u32,
        /// Stitches in the last round, within [`STITCHES`].
        to: u32,
        /// Rounds, the first and the last included; within [`ROUNDS`], and two at the least where the stitches change.
        rounds: u32,
    },
    /// Stitches that change in steps, as a yoke has them.
    Steps {
        /// Stitches in the first round, within [`STITCHES`].
        from: u32,
        /// The steps, each in a later round than the one before; one at the least.
        steps: Vec<Step>,
        /// Rounds, the first and the last included: no fewer than the steps take; within [`ROUNDS`].
        rounds: u32,
    },
    /// Stitches of each round, each within [`STITCHES`], as many as [`ROUNDS`]: from a schedule.
    Rounds(Vec<u32>),
}

/// Which cords serve, and when.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// What lies on the needle in the first round and in the last, before washing.
    pub girths: [Length; 2],
    /// Every cord at hand, and when it serves.
    pub cords: Vec<Cord>,
    /// The fewest cords that serve all that can be served, shortest first.
    pub picks: Vec<Length>,
    /// Which of them when, in the order of the rounds, with as few changes as there can be.
    pub plan: Vec<Stretch>,
    /// What one cord more would give, where a change of the plan can fall on a single round only.
    pub easier: Option<Easier>,
    /// The needle that all of them have to be, where it is known: another thickness would change the gauge.
    pub needle: Option<Called>,
}

/// Lays the cords along the piece.
///
/// # Errors
/// Every [`Problem`] has the field `around`, `from`, `to`, `rounds`, `steps`, `gauge`, `cords`, `tip` or `needle`, and the nearest value
/// that would be right. `gauge` is missing when stitches have none.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    let piece = check(question)?;
    let picks = piece.picks();
    let end = |count: Option<&i64>| piece.girth(count.copied().unwrap_or(0));
    let plan = piece.plan(&picks);
    Ok(Answer {
        girths: [end(piece.rounds.first()), end(piece.rounds.last())],
        easier: easier::easier(&piece, &plan),
        plan,
        cords: piece.cords,
        picks,
        needle: question.needle.map(Called::of),
    })
}

/// The piece of a question that is within its bounds.
fn check(question: &Question) -> Result<Piece, Vec<Problem>> {
    let mut check = Check::default();
    match &question.around {
        Around::Girth(girth) => check.length(Name::Around, *girth, GIRTH),
        Around::Even { from, to, rounds } => {
            check.count(Name::From, *from, STITCHES);
            check.count(Name::To, *to, STITCHES);
            check.count(Name::Rounds, *rounds, rounds_between(*from, *to));
        }
        Around::Steps { from, steps, rounds } => growth::check(&mut check, *from, steps, *rounds),
        Around::Rounds(counts) => check.counts(Name::Around, counts, STITCHES, ROUNDS),
    }
    let unit = match (&question.around, question.gauge()) {
        (Around::Girth(_), _) => Some(OnNeedle::Nanometres),
        (Around::Even { .. } | Around::Steps { .. } | Around::Rounds(_), Some(gauge)) => {
            check.gauge(Name::Gauge, gauge);
            Some(OnNeedle::Stitches(Rate::of(gauge)))
        }
        (Around::Even { .. } | Around::Steps { .. } | Around::Rounds(_), None) => {
            check.missing(Name::Gauge);
            None
        }
    };
    let many = u32::try_from(question.cords.len()).unwrap_or(u32::MAX);
    check.count(Name::Cords, many, CORDS);
    for cord in &question.cords {
        check.length(Name::Cords, *cord, CORD);
    }
    if let Some(tip) = question.tip {
        check.length(Name::Tip, tip, TIP);
    }
    check.length_if_any(Name::Needle, question.needle, NEEDLE);
    match unit {
        Some(unit) if check.problems.is_empty() => Ok(Piece::of(question, unit)),
        _ => Err(check.problems),
    }
}

/// How many rounds an even piece may have: stitches that change need two.
pub const fn rounds_between(from: u32, to: u32) -> Bounds<u32> {
    let least = if from == to { ROUNDS.least } else { ROUNDS.least + 1 };
    Bounds::new(least, ROUNDS.most)
}

#[cfg(test)]
mod tests;
