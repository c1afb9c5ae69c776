//! Cast-on: "The hem is to be 100 cm round and my washed swatch has 21 stitches in 10 cm. How many do I cast on?"
//!
//! Width times gauge is the count that would fit exactly: 100 cm x 21 / 10 cm = 210. The pattern takes a *multiple of
//! so many, plus a few*, so the nearest such count is cast on, and its own real width is said beside its neighbours'.
//! The plus is for the two edges of a flat piece, and a round has none, so there it is dropped. Edge and seam stitches
//! stand outside the width. Who joins a round by working the first and the last stitch together casts on one more.
//! The sum is arithmetic; one seam stitch an edge, and what is outside the width, are common practice, no source.
//!
//! ```
//! use loopwright::cast_on::{Multiple, Question, answer};
//! use loopwright::units::{Gauge, Length, LengthUnit};
//!
//! let metre = Length::of(1, LengthUnit::M);
//! let question = Question {
//!     multiple: Multiple { of: 8, plus: 3 },
//!     ..Question::about(metre, Gauge::of(21, Gauge::TEN_CM))
//! };
//! let answer = answer(&question).unwrap();
//! // 210 is no multiple of 8; 208 is nearer than 216, and 208 / 2.1 is 99 cm.
//! assert_eq!(answer.pick.cast_on, 208);
//! assert_eq!(answer.above.map(|count| count.cast_on), Some(216));
//! assert_eq!(answer.pick.width, Length::from_nm(990_476_190));
//! ```

mod choices;
mod fit;
mod follow;
mod markers;
mod note;

pub use crate::terms::{MULTIPLE, Multiple, PLUS, Range, Working};
pub use choices::{Join, Name};
pub use follow::{Doing, plan};
pub use markers::{Distance, MarkerPlan};
pub use note::Note;

use crate::bounds::Bounds;
use crate::check::Check;
use crate::choice::Key;
use crate::problem::{Kind, Problem};
use crate::spacing::Fraction;
use crate::units::{Amount, Gauge, Length, LengthUnit};
use fit::Fit;

/// How many stitches may be cast on.
pub const STITCHES: Bounds<u32> = Bounds::new(1, 100_000);

/// How wide the knitting may be: 5 mm to 20 m.
pub const WIDTH: Bounds<Length> = Bounds::new(Length::from_mm(5), Length::of(20, LengthUnit::M));

/// Edge or seam stitches at one edge.
pub const EDGE: Bounds<u32> = Bounds::new(0, 100);

/// Edge stitches that stay to be seen when nothing else is said.
pub const USUAL_EDGE: u32 = 0;

/// Seam stitches at one edge of a flat piece when nothing else is said: mattress stitch takes in one. Common practice,
/// no source.
pub const USUAL_SEAM: u32 = 1;

/// What is wanted, and the swatch.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// How wide the washed piece is to be, or how far round; without edge and seam stitches. Within [`WIDTH`].
    pub width: Length,
    /// Stitches in a span of the *washed* swatch: [`Gauge::COUNTS`] over [`Gauge::SPANS`].
    pub gauge: Gauge,
    /// What the pattern asks the count to be.
    pub multiple: Multiple,
    /// In the round or flat.
    pub knitting: Knitting,
}

impl Question {
    /// The usual question about a width: any count, in the round, joined without an extra stitch.
    pub const fn about(width: Length, gauge: Gauge) -> Self {
        Self {
            width,
            gauge,
            multiple: Multiple::ANY,
            knitting: Knitting::Round { extra: false },
        }
    }
}

/// In the round or flat, with what each adds outside the width.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Knitting {
    /// In the round.
    Round {
        /// Cast on one more and join by working the first and the last stitch together.
        extra: bool,
    },
    /// Back and forth.
    Flat {
        /// Edge stitches at each edge that stay to be seen, outside the width; within [`EDGE`].
        edge: u32,
        /// Stitches at each edge that the seam takes in; within [`EDGE`], usually [`USUAL_SEAM`], 0 for no seam.
        seam: u32,
    },
}

impl Knitting {
    /// A flat piece that will be sewn.
    pub const SEWN: Self = Self::Flat {
        edge: USUAL_EDGE,
        seam: USUAL_SEAM,
    };
}

/// How many to cast on.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// The nearest count that the pattern can be worked on; the smaller of two that are equally near.
    pub pick: Count,
    /// One repeat fewer, unless there is none.
    pub below: Option<Count>,
    /// One repeat more, unless that is more than [`STITCHES`].
    pub above: Option<Count>,
    /// Whether `above` is exactly as near as the pick.
    pub as_near: bool,
    /// How wide the pick is if the swatch was read half a stitch wrong, either way.
    pub range: Range,
    /// The count that would fit exactly: width times gauge, seldom whole.
    pub ideal: Fraction,
    /// Stitches beside the repeats that are counted: none in the round.
    pub plus: u32,
    /// Where to set markers while casting on, at each [`Distance`].
    pub markers: Vec<MarkerPlan>,
    /// What else she should know.
    pub notes: Vec<Note>,
}

/// A count that the pattern can be worked on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Count {
    /// Stitches to cast on: everything, the extra one of the join included.
    pub cast_on: u32,
    /// Stitches there are from the first row or round on: one fewer than cast on where one was extra for the join.
    pub worked: u32,
    /// Stitches that make the width: without edges, seams and the extra one.
    pub inside: u32,
    /// Whole repeats in them.
    pub repeats: u32,
    /// How wide those are, or how far round, after washing.
    pub width: Length,
    /// By how much `width` is over what was wanted; negative when it is under.
    pub off: Length,
}

/// Works out the count.
///
/// # Errors
/// Every [`Problem`] has a field of [`Name`], from the width to the seam, and the nearest value that can be had.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    check(question)?;
    let fit = Fit::of(question);
    let ((repeats, as_near), most) = (fit.nearest(), fit.most_repeats());
    if repeats > most {
        let most = Amount::Length(fit.count(most).width);
        return Err(vec![Problem::new(Name::Width, Kind::TooLarge { most })]);
    }
    let pick = fit.count(repeats);
    Ok(Answer {
        pick,
        below: (repeats > 1).then(|| fit.count(repeats - 1)),
        above: (repeats < most).then(|| fit.count(repeats + 1)),
        as_near: repeats < most && as_near,
        range: fit.range(pick.inside),
        ideal: fit.ideal().into(),
        plus: fit.plus,
        markers: Distance::ALL
            .iter()
            .map(|distance| MarkerPlan::of(pick.cast_on, distance.stitches()))
            .collect(),
        notes: note::notes(question, &pick),
    })
}

impl Answer {
    /// The count that would fit exactly, to the nearest quarter of a stitch: finer than that nobody counts.
    pub fn ideal_in_quarters(&self) -> f64 {
        (4.0 * self.ideal.to_f64()).round() / 4.0
    }

    /// The markers at one distance.
    pub const fn markers_at(&self, distance: Distance) -> MarkerPlan {
        MarkerPlan::of(self.pick.cast_on, distance.stitches())
    }
}

fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let mut check = Check::default();
    check.length(Name::Width, question.width, WIDTH);
    check.gauge(Name::Gauge, question.gauge);
    check.count(Name::Multiple, question.multiple.of, MULTIPLE);
    check.count(Name::Plus, question.multiple.plus, PLUS);
    if let Knitting::Flat { edge, seam } = question.knitting {
        check.count(Name::Edge, edge, EDGE);
        check.count(Name::Seam, seam, EDGE);
    }
    check.done()
}

#[cfg(test)]
mod tests;
