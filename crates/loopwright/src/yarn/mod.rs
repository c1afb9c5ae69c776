//! Yarn needed: "I am knitting this many stitches. How many balls do I buy?"
//!
//! Count the stitches of every section exactly, halves and all. Each takes one loop of yarn, and how long a loop is
//! belongs to the yarn and the needle ([`crate::fabric`]): from the washed *stockinette* gauge, or better from a swatch
//! on the scale. `length = stitches x loop x factor of the fabric`, with a tenth either way at the least; edges, seams,
//! joins and the swatch are lines of their own. Balls are bought for the top of the range and a reserve on it, and the
//! ceiling is taken of whole nanometres, so that 6 x 125 m exactly is 6 balls.
//!
//! Sections of several yarns, such as colours, are told apart, each with its own balls (`apart`).
//!
//! The other way round, a pattern that asks for 7 balls of 125 m asks for anything from 751 to 875 m ([`Ask::Balls`]).
//!
//! Source of the loop: see [`crate::fabric`]. Factors, edges, seams, joins, spread and reserve are common practice, no
//! source ([`practice`]).
//!
//! ```
//! use loopwright::units::{Gauge, Length, LengthUnit};
//! use loopwright::yarn::{Ask, Ball, Question, Section, Shape, Swatch, answer};
//!
//! // A scarf of 40 stitches, 400 rows of garter; the stockinette swatch has 21 stitches and 28 rows in 10 cm.
//! let scarf = Section::garter(Shape::rectangle(40, 400));
//! let swatch = Swatch::stockinette(Gauge::of(21, Gauge::TEN_CM), Gauge::of(28, Gauge::TEN_CM));
//! let scarf = answer(&Question::about(vec![scarf], swatch)).unwrap();
//! // 16,000 loops of 1.917 cm are 307 m; with a tenth more, the edges, the swatch and the reserve it takes 4 balls.
//! assert_eq!(scarf.stitches.unwrap().whole(), 16_000);
//! assert_eq!(scarf.balls, 4);
//!
//! let seven = Ball { length: Length::of(125, LengthUnit::M), ..Ball::USUAL };
//! let theirs = answer(&Question::from_pattern(Ask::Balls { balls: 7, ball: seven })).unwrap();
//! assert_eq!(theirs.length.least, Length::of(751, LengthUnit::M));
//! assert_eq!(theirs.length.most, Length::of(875, LengthUnit::M));
//! ```

mod apart;
mod band;
mod check;
mod choices;
mod line;
mod note;
pub mod practice;
mod section;
mod swatch;

pub use apart::PerYarn;
pub use band::Band;
pub use choices::{Beginning, Counted, Ending, Name, Presence, RestKind, SectionName, ShapeKind, Source, SwatchKind};
pub use line::{Estimate, Line, Part};
pub use note::{Close, Note};
pub use section::{BindOff, Level, Section, Shape, StitchSum};
pub use swatch::{Found, PerStitch, Rest, Swatch};

use crate::bounds::Bounds;
use crate::problem::{Kind, Problem};
use crate::tables::Certainty;
use crate::units::{Amount, Length, LengthUnit, Mass};

/// Stitches across a section.
pub const STITCHES: Bounds<u32> = Bounds::new(1, 100_000);
/// Stitches at the narrow end of a section: it may taper to nothing.
pub const TAPERED: Bounds<u32> = Bounds::new(0, 100_000);
/// Rows of a section.
pub const ROWS: Bounds<u32> = Bounds::new(1, 100_000);
/// Width or length of a section that is measured.
pub const MEASURED: Bounds<Length> = Bounds::new(Length::of(1, LengthUnit::Cm), Length::of(100, LengthUnit::M));
/// Stitches in all, over every section and every time it is worked.
pub const TOTAL: Bounds<u32> = Bounds::new(1, 50_000_000);
/// How many sections there may be.
pub const SECTIONS: Bounds<u32> = Bounds::new(1, 200);
/// How often a section is worked, such as two sleeves.
pub const TIMES: Bounds<u32> = Bounds::new(1, 100);
/// Which of the yarns of a piece a section is knitted with.
pub const YARNS: Bounds<u32> = Bounds::new(1, 20);
/// The yarn of a section where nothing is said.
pub const USUAL_YARN: u32 = 1;
/// Stitches or rows of a gauge, over 10 cm.
pub const GAUGE: Bounds<u32> = Bounds::new(1, 400);
/// How far a swatch is pinned out each way, in percent.
pub const PINNED: Bounds<u32> = Bounds::new(1, 100);
/// What a swatch on the scale may weigh.
pub const SWATCH_MASS: Bounds<Mass> = Bounds::new(Mass::from_grams(1), Mass::from_grams(1_000));
/// Yarn on one ball.
pub const BALL_LENGTH: Bounds<Length> = Bounds::new(Length::of(1, LengthUnit::M), Length::of(20_000, LengthUnit::M));
/// Weight of one ball.
pub const BALL_MASS: Bounds<Mass> = Bounds::new(Mass::from_grams(1), Mass::from_grams(10_000));
/// Balls a pattern may ask for.
pub const BALLS: Bounds<u32> = Bounds::new(1, 1_000);
/// A length a pattern may ask for.
pub const STATED: Bounds<Length> = Bounds::new(Length::of(1, LengthUnit::M), Length::of(1_000_000, LengthUnit::M));
/// Reserve, in percent of the top of the range.
pub const RESERVE: Bounds<u32> = Bounds::new(0, 100);
/// All the seams together, and any other yarn that is typed as a length.
pub const EXTRA: Bounds<Length> = Bounds::new(Length::ZERO, Length::of(100_000, LengthUnit::M));
/// How far a swatch is pinned out where it is not said, in percent.
pub const USUAL_PINNED: u32 = 25;
/// How often a section is worked where it is not said.
pub const USUAL_TIMES: u32 = 1;

/// What is to be knitted, and from which ball.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// What is asked.
    pub ask: Ask,
    /// The ball that is to be bought.
    pub ball: Ball,
    /// Reserve for mistakes on the top of the range, in percent, within [`RESERVE`].
    pub reserve: u32,
    /// Which yarn each section is knitted with, in their order, such as its colour: within [`YARNS`]. Those beyond are
    /// knitted with [`USUAL_YARN`], so that nothing has to be said where there is one yarn.
    pub yarns: Vec<u32>,
}

impl Question {
    /// The usual question about sections and a swatch: balls of 50 g and 125 m, every extra that is usual, a tenth in
    /// reserve.
    pub const fn about(sections: Vec<Section>, swatch: Swatch) -> Self {
        Self {
            ask: Ask::Piece(Piece {
                sections,
                swatch,
                extras: Extras::USUAL,
            }),
            ball: Ball::USUAL,
            reserve: practice::RESERVE,
            yarns: Vec::new(),
        }
    }

    /// The usual question about a pattern's yarn: the pattern's figure has its reserve in it.
    pub const fn from_pattern(ask: Ask) -> Self {
        Self {
            ask,
            ball: Ball::USUAL,
            reserve: practice::RESERVE_IN_PATTERN,
            yarns: Vec::new(),
        }
    }
}

/// What is asked.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Ask {
    /// Work it out from what is knitted.
    Piece(Piece),
    /// The pattern asks for so many balls of another yarn.
    Balls {
        /// How many, within [`BALLS`].
        balls: u32,
        /// The pattern's ball.
        ball: Ball,
    },
    /// The pattern asks for so long a yarn, within [`STATED`].
    Length(Length),
}

/// What is knitted, and what is known about the yarn on its needle.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Piece {
    /// The sections, as many as [`SECTIONS`] allows.
    pub sections: Vec<Section>,
    /// The swatch.
    pub swatch: Swatch,
    /// What takes yarn beside the knitting.
    pub extras: Extras,
}

/// What takes yarn beside the knitting and its edges.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Extras {
    /// Whether the swatch is knitted from the same balls.
    pub swatch: bool,
    /// Whether ends are left at each change of ball.
    pub joins: bool,
    /// Length of all seams together, within [`EXTRA`].
    pub seams: Length,
    /// Anything else, such as fringe and pompoms, within [`EXTRA`].
    pub other: Length,
}

impl Extras {
    /// A swatch and the joins, and no seams.
    pub const USUAL: Self = Self {
        swatch: true,
        joins: true,
        ..Self::NONE
    };
    /// Nothing but the knitting.
    pub const NONE: Self = Self {
        swatch: false,
        joins: false,
        seams: Length::ZERO,
        other: Length::ZERO,
    };
}

/// A ball as its band has it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Ball {
    /// Yarn on it, within [`BALL_LENGTH`].
    pub length: Length,
    /// Its weight, within [`BALL_MASS`]: a swatch on the scale cannot do without it.
    pub mass: Option<Mass>,
}

impl Ball {
    /// 50 g and 125 m, to start from.
    pub const USUAL: Self = Self {
        length: Length::of(125, LengthUnit::M),
        mass: Some(Mass::from_grams(50)),
    };
}

/// How much yarn, and how many balls.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// Balls to buy: for the top of the range and the reserve.
    pub balls: u32,
    /// Balls that hold what is expected, with the ends of their changes; never more than `balls`.
    pub likely: u32,
    /// Yarn that is used, with every line but the reserve.
    pub length: Estimate,
    /// What is expected of it, as weight, where a ball's is known.
    pub mass: Option<Mass>,
    /// What the balls have to hold: the top of the range, the reserve, and the ends of every change of ball.
    pub need: Length,
    /// Yarn on the balls bought.
    pub bought: Length,
    /// What is left as likely as not: bought less expected, the reserve counted as left. From a pattern's balls, what is
    /// left at the least.
    pub leftover: Length,
    /// What there is to say of the last ball.
    pub close: Option<Close>,
    /// Stitches in all, when they were counted.
    pub stitches: Option<StitchSum>,
    /// Yarn in one stitch of the swatch's fabric, when it was reckoned with.
    pub per_stitch: Option<PerStitch>,
    /// Each yarn by itself, where there are several; `balls` are those of all of them then.
    pub yarns: Vec<PerYarn>,
    /// Where the yarn goes. The expected lengths add up to `length.expected`, the greatest ones to `need`: the sum.
    pub lines: Vec<Line>,
    /// What else she should know.
    pub notes: Vec<Note>,
}

/// Works out the yarn.
///
/// # Errors
/// A [`Problem`] with the field that is wrong, of a section with its place: `sections[2].stitches`. A rib or cable gauge,
/// or rib, cable or colour work with no stockinette gauge, is [`Kind::NeedsSwatch`] on `swatch`.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    check::check(question)?;
    match &question.ask {
        Ask::Piece(piece) => answer_piece(question, piece),
        Ask::Balls { balls, ball } => {
            // They may be anything above one ball fewer, and are bought from the top.
            let mut range = Estimate::exactly(ball.length.saturating_mul(i64::from(*balls)));
            let metre = Length::of(1, LengthUnit::M);
            range.least = range.most.saturating_sub(ball.length).saturating_add(metre);
            Ok(answer_pattern(question, range))
        }
        Ask::Length(length) => Ok(answer_pattern(question, Estimate::exactly(*length))),
    }
}

fn answer_piece(question: &Question, piece: &Piece) -> Result<Answer, Vec<Problem>> {
    let mut answer = match question.yarns_of(piece.sections.len()).as_slice() {
        [] | [_] => answer_yarn(question, piece)?,
        yarns => apart::answer(question, piece, yarns)?,
    };
    let per_stitch = swatch::measure(&piece.swatch, question.ball);
    answer.notes.extend(line::left_open(&piece.sections, &per_stitch));
    Ok(answer)
}

/// What is knitted with one yarn.
fn answer_yarn(question: &Question, piece: &Piece) -> Result<Answer, Vec<Problem>> {
    let per_stitch = swatch::measure(&piece.swatch, question.ball);
    let lines = line::lines(piece, &per_stitch);
    if per_stitch.length == Length::ZERO || line::total(&lines).most > STATED.most {
        let most = Amount::Length(STATED.most);
        return Err(vec![Problem::new(Name::Sections, Kind::TooLarge { most })]);
    }
    let join = if piece.extras.joins {
        practice::JOIN
    } else {
        Length::ZERO
    };
    let halves = piece.sections.iter().map(|section| section.sum().halves).sum();
    let counted = (StitchSum { halves }, per_stitch);
    Ok(line::finish(question, lines, join, Some(counted)))
}

fn answer_pattern(question: &Question, stated: Estimate) -> Answer {
    let mut lines = Vec::new();
    line::push(&mut lines, Part::Pattern, stated, Certainty::Computed);
    line::finish(question, lines, Length::ZERO, None)
}

#[cfg(test)]
mod properties;
#[cfg(test)]
mod tests;
