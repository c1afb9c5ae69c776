//! Needles and cords: "The pattern says US 7. Which is that here, and which cords do I need for this yoke?"
//!
//! A needle is known by its millimetres; numbers are looked up in a [table](crate::tables::needle), and where a system
//! has no equal the nearest is said, with how far off it is. The right hole of a needle gauge is the smallest that the
//! shaft passes wholly.
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
//! use loopwright::needles::{Around, By, Question, Size, answer};
//! use loopwright::tables::needle::{Number, System};
//! use loopwright::units::{Gauge, Length, LengthUnit};
//!
//! let question = Question {
//!     size: Some(Size::Us(Number::whole(7))),
//!     // 90 stitches to 300 in 60 rounds, 20 in 10 cm before washing: 45 cm to 150 cm.
//!     around: Some(Around::Even { from: 90, to: 300, rounds: 60 }),
//!     unwashed: Some(Gauge::of(20, Gauge::TEN_CM)),
//!     ..Question::default()
//! };
//! let answer = answer(&question).unwrap();
//! assert_eq!(answer.needles[0].across, Length::from_nm(4_500_000));
//! // From 45 cm on 40 cm, which holds 80 cm; 80 cm holds the rest.
//! let cords = [40, 80].map(|cm| Length::of(cm, LengthUnit::Cm));
//! assert_eq!(answer.picks, cords);
//! assert_eq!(answer.plan[1].by, By::Cord(cords[1]));
//! assert_eq!((answer.plan[1].earliest, answer.plan[1].latest), (21, 21));
//! ```

pub(crate) mod check;
mod cord;
mod note;
mod size;

pub use cord::{By, Cord, Gap, Run, Stretch};
pub use note::{Note, Step};
pub use size::{Named, Needle, Size};

use crate::bounds::Bounds;
use crate::problem::Problem;
use crate::units::{Gauge, Length, LengthUnit};

/// Stitches on the needle.
pub const STITCHES: Bounds<u32> = Bounds::new(1, 100_000);

/// Rounds of a piece.
pub const ROUNDS: Bounds<u32> = Bounds::new(1, 10_000);

/// A girth that is typed: 1 cm to 20 m.
pub const GIRTH: Bounds<Length> = Bounds::new(Length::from_mm(10), Length::of(20, LengthUnit::M));

/// Over what a gauge may have been counted: 5 mm to 1 m.
pub const SPAN: Bounds<Length> = Bounds::new(Length::from_mm(5), Length::of(1, LengthUnit::M));

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

/// A needle, or a piece, or both.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// The needle, as it is named.
    pub size: Option<Size>,
    /// What goes round the cord.
    pub around: Option<Around>,
    /// Stitches in a span of the swatch *before washing*: [`Gauge::COUNTS`] over [`SPAN`].
    pub unwashed: Option<Gauge>,
    /// The same after washing: used, with a caution, where `unwashed` is not known.
    pub washed: Option<Gauge>,
    /// Knitted back and forth.
    pub flat: bool,
    /// The cords at hand, each with its tips, within [`CORD`], at most as many as [`CORDS`]; none for [`USUAL`].
    pub cords: Vec<Length>,
    /// How long one tip is on cords up to [`TIPS_MATTER_TO`], where known; within [`TIP`].
    pub tip: Option<Length>,
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
    /// Stitches of each round, each within [`STITCHES`], as many as [`ROUNDS`]: from a schedule.
    Rounds(Vec<u32>),
}

/// What the needle is called, and which cords serve.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// The needle, or each that it may be: a number can stand for two. None when no size was asked for.
    pub needles: Vec<Needle>,
    /// Every cord at hand, and when it serves. None when no piece was asked for.
    pub cords: Vec<Cord>,
    /// The fewest cords that serve all that can be served, shortest first.
    pub picks: Vec<Length>,
    /// Which of them when, in the order of the rounds, with as few changes as there can be.
    pub plan: Vec<Stretch>,
    /// What else she should know.
    pub notes: Vec<Note>,
    /// The sum.
    pub steps: Vec<Step>,
}

/// Looks the needle up, and lays the cords along the piece.
///
/// # Errors
/// Every [`Problem`] has the field `size`, `around`, `from`, `to`, `rounds`, `gauge`, `cords` or `tip`, and the nearest
/// value that would be right. `size` is missing when nothing is asked; `gauge` when stitches have none. A number that no
/// needle has is `NoExact`, with the whole numbers on either side.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    let needles = check::check(question)?;
    let mut answer = Answer {
        needles,
        cords: Vec::new(),
        picks: Vec::new(),
        plan: Vec::new(),
        notes: Vec::new(),
        steps: Vec::new(),
    };
    note::of_size(question, &mut answer);
    if let Some(around) = &question.around {
        let piece = cord::Piece::of(question, around);
        answer.cords = piece.cords();
        answer.picks = piece.picks();
        answer.plan = piece.plan(&answer.picks);
        note::of_cords(question, &piece, &mut answer);
    }
    Ok(answer)
}

#[cfg(test)]
mod tests;
