//! Tail: "I cast on 120 stitches long-tail. How much yarn do I leave hanging before the slip knot?"
//!
//! Three estimates stand side by side, each for the strand on the thumb. *Wraps*: every stitch is one turn round
//! needle and yarn, `stitches x pi x (needle + yarn)`. *Practice*: three to four times the edge, or so much a stitch by
//! the class of the yarn. *Measured*: "20 stitches used 34 cm". What was measured over 20 stitches or more wins, with
//! 5 % on top; otherwise the largest wins, with 10 %. The reserve is on the stitches only, and the end to weave in is
//! added once. Every rule here is common practice, no source; only the sums are arithmetic. How thick the yarn is comes
//! from wraps or its class and never from its count, which gives the yarn without its air and a tail that runs out.
//!
//! ```
//! use loopwright::tail::{Needle, Question, Thickness, answer};
//! use loopwright::units::{Gauge, Length};
//!
//! let answer = answer(&Question {
//!     yarn: Some(Thickness::Wraps(Gauge::of(9, Length::INCH))),
//!     needle: Some(Needle::One(Length::from_mm(5))),
//!     ..Question::about(120)
//! })
//! .unwrap();
//! // Wraps: 120 x pi x (5 + 25.4 / 9) mm = 2.95 m. Practice: an inch a stitch, 3.05 m. The larger, 10 %, and 20 cm.
//! assert_eq!(answer.estimates[0].needs.most.to_nm() / 10_000_000, 294);
//! assert_eq!(answer.estimates[1].needs.most, Length::from_inches(120));
//! assert_eq!(answer.tail, Length::from_nm(3_552_800_000));
//! ```

mod check;
mod estimate;
mod left;
mod method;
mod note;
mod practice;
mod rate;

pub use estimate::{Estimate, Missing, Way, Why};
pub use left::{Left, Remaining, Verdict};
pub use method::{METHODS, Method, Row, SHORT, Strand};
pub use note::{Note, Step};
pub use practice::{ARM, EDGE_TIMES, per_stitch};

use crate::bounds::Bounds;
use crate::problem::Problem;
use crate::spacing::Fraction;
use crate::tables::yarn_weight::Weight;
use crate::units::{Gauge, Length, LengthUnit};

/// How many stitches may be cast on.
pub const STITCHES: Bounds<u32> = Bounds::new(1, 100_000);

/// How thick one needle may be: 0.5 mm to 50 mm.
pub const NEEDLE: Bounds<Length> = Bounds::new(Length::from_nm(500_000), Length::from_mm(50));

/// How thick yarn may be: 0.1 mm to 50 mm, as wraps show it.
pub const THICKNESS: Bounds<Length> = Bounds::new(Length::from_nm(100_000), Length::from_mm(50));

/// Over what wraps may be counted: 5 mm to 1 m.
pub const SPAN: Bounds<Length> = Bounds::new(Length::from_mm(5), Length::of(1, LengthUnit::M));

/// How long the edge may be: 1 mm to 1 km.
pub const EDGE: Bounds<Length> = Bounds::new(Length::from_mm(1), Length::of(1_000, LengthUnit::M));

/// How much yarn a measured piece may have used: 1 mm to 1 km.
pub const USED: Bounds<Length> = Bounds::new(Length::from_mm(1), Length::of(1_000, LengthUnit::M));

/// How much reserve may be asked for, in percent.
pub const RESERVE: Bounds<u32> = Bounds::new(0, 100);

/// How long the end to weave in may be: up to 5 m, for who sews with it.
pub const END: Bounds<Length> = Bounds::new(Length::ZERO, Length::of(5, LengthUnit::M));

/// How much tail may be left: up to 10 km.
pub const LEFT: Bounds<Length> = Bounds::new(Length::ZERO, Length::of(10_000, LengthUnit::M));

/// The reserve on an estimate, in percent. 5 to 15 is quoted. Common practice, no source.
pub const USUAL_RESERVE: u32 = 10;

/// The reserve on what was measured over [`MEASURED_FROM`] stitches or more, in percent. Common practice, no source.
pub const MEASURED_RESERVE: u32 = 5;

/// From so many stitches up what was measured wins: one stitch miscounted in 10 is 10 %, in 20 it is 5 %. Common
/// practice, no source.
pub const MEASURED_FROM: u32 = 20;

/// The end to weave in. 15 to 20 cm. Common practice, no source.
pub const USUAL_END: Length = Length::of(20, LengthUnit::Cm);

/// Above so many stitches two strands are easier than a guess: one is the tail, the other the yarn. Common practice, no
/// source.
pub const TWO_STRANDS_ABOVE: u32 = 200;

/// What is to be cast on and what is known of needle and yarn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// Stitches to cast on, the extra one of a join included, within [`STITCHES`].
    pub stitches: u32,
    /// How they are cast on.
    pub method: Method,
    /// How thick the yarn is: by wraps or by its class.
    pub yarn: Option<Thickness>,
    /// The needle that is cast on *with*, often a size or two larger than the one that is knitted with.
    pub needle: Option<Needle>,
    /// How long the edge of `stitches` will lie, within [`EDGE`].
    pub width: Option<Length>,
    /// What a piece cast on by this method used.
    pub measured: Option<Measured>,
    /// Reserve on the stitches in percent, within [`RESERVE`]; none for the usual: [`USUAL_RESERVE`], or
    /// [`MEASURED_RESERVE`] where the measured estimate wins.
    pub reserve: Option<u32>,
    /// The end to weave in, added once, within [`END`].
    pub end: Length,
    /// What is left in the middle of casting on, to know whether it will do.
    pub left: Option<Left>,
}

impl Question {
    /// The usual question about so many stitches: long-tail, the usual reserve and end, and nothing known yet.
    pub const fn about(stitches: u32) -> Self {
        Self {
            stitches,
            method: Method::LongTail,
            yarn: None,
            needle: None,
            width: None,
            measured: None,
            reserve: None,
            end: USUAL_END,
            left: None,
        }
    }
}

/// How thick the yarn is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Thickness {
    /// So many wraps, side by side, in a span: 9 in an inch. The thickness is the span over the wraps, within
    /// [`THICKNESS`]; the span within [`SPAN`].
    Wraps(Gauge),
    /// The class on the band, which is taken at its thick end.
    Class(Weight),
}

/// What is cast on with.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Needle {
    /// One needle, this thick, within [`NEEDLE`].
    One(Length),
    /// Two needles held together, each within [`NEEDLE`]: the sum of the two is what the yarn goes round.
    Two(Length, Length),
}

impl Needle {
    /// How thick it is to the yarn.
    pub const fn across(self) -> Length {
        match self {
            Self::One(needle) => needle,
            Self::Two(first, second) => first.saturating_add(second),
        }
    }
}

/// What a piece used: cast it on by the same method, pull it out, and measure between the two marks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Measured {
    /// Stitches it has, the slip knot not counted, within [`STITCHES`].
    pub stitches: u32,
    /// The tail they *used*, not what was left of it, without the slip knot; within [`USED`].
    pub used: Length,
}

/// How much to leave.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// Stitches to cast on.
    pub stitches: u32,
    /// How much to leave before the slip knot; of each strand where there are two.
    pub tail: Length,
    /// From the least of the estimates, without reserve, to the largest of them with it; the end is in both.
    pub range: Range,
    /// What the tail is, by the method.
    pub strand: Strand,
    /// Ends there will be to weave in where the edge begins.
    pub ends: u32,
    /// The estimates that can be made from what is known: wraps, practice, measured. None where no long tail is needed.
    pub estimates: Vec<Estimate>,
    /// What would have to be known for the others.
    pub missing: Vec<Missing>,
    /// Which of `estimates` the tail rests on.
    pub wins: Option<usize>,
    /// Why that one.
    pub why: Why,
    /// The reserve that was put on, in percent.
    pub reserve: u32,
    /// The tail in arm's lengths of [`ARM`].
    pub arms: Fraction,
    /// Whether what is left will do.
    pub left: Option<Remaining>,
    /// What else she should know.
    pub notes: Vec<Note>,
    /// The sum from the winning estimate to the tail; each estimate has its own steps.
    pub steps: Vec<Step>,
}

/// The least and the most.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Range {
    /// The least.
    pub least: Length,
    /// The most.
    pub most: Length,
}

/// Works out the tail.
///
/// # Errors
/// Every [`Problem`] has the field `stitches`, `yarn`, `needle`, `width`, `measured_stitches`, `measured_used`,
/// `reserve`, `end`, `left_tail` or `left_to_go`, and the nearest value that can be had. `yarn` is missing when nothing
/// is known that a tail could be worked out from.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    check::check(question)?;
    match question.method.row().strand {
        Strand::Thumb { .. } => long(question),
        strand => Ok(short(question, strand)),
    }
}

/// The answer for a method that draws its stitches from the tail.
fn long(question: &Question) -> Result<Answer, Vec<Problem>> {
    let made = estimate::all(question);
    let Some((wins, why)) = estimate::decide(&made, question.measured) else {
        return Err(vec![check::nothing_known()]);
    };
    let reserve = question.reserve.unwrap_or(match why {
        Why::MeasuredOnEnough { .. } => MEASURED_RESERVE,
        _ => USUAL_RESERVE,
    });
    let estimates: Vec<Estimate> = made.iter().map(|made| made.estimate.clone()).collect();
    let with = |rate: rate::Rate| rate.over(question.stitches, reserve);
    let smallest = made.iter().map(|made| made.estimate.needs.least).min();
    let largest = made.iter().map(|made| with(made.rate)).max();
    let rate = made[wins].rate;
    let end = |length: Length| length.saturating_add(question.end);
    let tail = end(with(rate));
    Ok(Answer {
        stitches: question.stitches,
        tail,
        range: Range {
            least: end(smallest.unwrap_or_default()),
            most: end(largest.unwrap_or_default()),
        },
        strand: question.method.row().strand,
        ends: 1,
        missing: estimate::missing(question),
        wins: Some(wins),
        why,
        reserve,
        arms: arms(tail),
        left: question
            .left
            .map(|left| Remaining::of(left, Some(rate), reserve, question.end)),
        notes: note::notes(question, &estimates),
        steps: note::steps(&estimates[wins], reserve, with(rate), question.end, tail),
        estimates,
    })
}

/// The answer for a method that needs an end to weave in and no more.
fn short(question: &Question, strand: Strand) -> Answer {
    let Question { stitches, end, .. } = *question;
    Answer {
        stitches,
        tail: end,
        range: Range {
            least: end.min(SHORT.least),
            most: end.max(SHORT.most),
        },
        strand,
        ends: if strand == Strand::Second { 2 } else { 1 },
        estimates: Vec::new(),
        missing: Vec::new(),
        wins: None,
        why: Why::NoLongTail,
        reserve: 0,
        arms: arms(end),
        left: question.left.map(|left| Remaining::of(left, None, 0, end)),
        notes: note::notes(question, &[]),
        steps: vec![Step::OnlyEnd { end }],
    }
}

fn arms(tail: Length) -> Fraction {
    let nm = |length: Length| u64::try_from(length.to_nm()).unwrap_or(0);
    Fraction::new(nm(tail), nm(ARM))
}

#[cfg(test)]
mod tests;
