//! Tail: "I cast on 120 stitches long-tail. How much yarn do I leave hanging before the slip knot?"
//!
//! Several estimates stand side by side, each for the strand on the thumb. *Wraps*: every stitch is one turn round
//! needle and yarn, `stitches x pi x (needle + yarn)`. *Practice*: three to four times the edge, measured or by the
//! gauge, or so much a stitch by the class of the yarn. *Measured*: "20 stitches used 34 cm". What was measured over 20 stitches or more wins, with
//! 5 % on top; otherwise the largest wins, with 10 %. The reserve is on the stitches only, and the end to weave in is
//! added once. Every rule here is common practice, no source; only the sums are arithmetic. How thick the yarn is comes
//! from wraps or its class and never from its count, which gives the yarn without its air and a tail that runs out.
//!
//! ```
//! use loopwright::tail::{Question, Thickness, answer};
//! use loopwright::units::Length;
//!
//! let answer = answer(&Question {
//!     yarn: Some(Thickness::Wraps(9)),
//!     needle: Some(Length::from_mm(5)),
//!     ..Question::about(120)
//! })
//! .unwrap();
//! // Wraps: 120 x pi x (5 + 25.4 / 9) mm = 2.95 m. Practice: an inch a stitch, 3.05 m. The larger, 10 %, and 20 cm.
//! assert_eq!(answer.estimates[0].needs.most.to_nm() / 10_000_000, 294);
//! assert_eq!(answer.estimates[1].needs.most, Length::from_inches(120));
//! assert_eq!(answer.tail, Length::from_nm(3_552_800_000));
//! ```

mod check;
mod choices;
mod estimate;
mod left;
mod method;
mod piece;
mod practice;

pub use crate::terms::Range;
pub use choices::{Name, Wanted, YarnClass};
pub use estimate::{Estimate, Way, Why};
pub use left::{Gives, Left, Remaining, Verdict};
pub use method::{Method, SHORT, Strand};
pub use piece::Piece;
pub use practice::{ARM, EDGE_TIMES, per_stitch};

use crate::bounds::Bounds;
use crate::problem::Problem;
use crate::spacing::Fraction;
use crate::tables::yarn_weight::{CLASSES, Weight, class, diameter};
use crate::units::{Gauge, Length, LengthUnit};

/// How many stitches may be cast on.
pub const STITCHES: Bounds<u32> = Bounds::new(1, 100_000);

/// How thick one needle may be: 0.5 mm to 50 mm.
pub const NEEDLE: Bounds<Length> = Bounds::new(Length::from_nm(500_000), Length::from_mm(50));

/// How many wraps may lie in an inch.
pub const WRAPS: Bounds<u32> = Bounds::new(1, 200);

/// How long the edge may be: 1 mm to 1 km.
pub const EDGE: Bounds<Length> = Bounds::new(Length::from_mm(1), Length::of(1_000, LengthUnit::M));

/// How much yarn a measured piece may have used: 1 mm to 1 km.
pub const USED: Bounds<Length> = Bounds::new(Length::from_mm(1), Length::of(1_000, LengthUnit::M));

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
    /// The needle that is cast on *with*, often a size or two larger than the one that is knitted with; within
    /// [`NEEDLE`].
    pub needle: Option<Length>,
    /// A second needle held together with it: the yarn goes round both.
    pub second: Option<Length>,
    /// How long the edge of `stitches` will lie, within [`EDGE`].
    pub width: Option<Length>,
    /// The stitches in a span of the swatch: what the edge comes to where it was not measured.
    pub gauge: Option<Gauge>,
    /// What a piece cast on by this method used.
    pub measured: Option<Piece>,
    /// The end to weave in, added once, within [`END`].
    pub end: Length,
    /// What is left in the middle of casting on, to know whether it will do.
    pub left: Option<Left>,
}

impl Question {
    /// The usual question about so many stitches: long-tail, the usual end, and nothing known yet.
    pub const fn about(stitches: u32) -> Self {
        Self {
            stitches,
            method: Method::LongTail,
            yarn: None,
            needle: None,
            second: None,
            width: None,
            gauge: None,
            measured: None,
            end: USUAL_END,
            left: None,
        }
    }
}

/// How thick the yarn is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Thickness {
    /// So many wraps, side by side, in an inch, within [`WRAPS`].
    Wraps(u32),
    /// The class on the band, which is taken at its thick end.
    Class(Weight),
}

impl Thickness {
    /// How thick that is.
    pub const fn across(self) -> Length {
        match self {
            Self::Wraps(wraps) => diameter(wraps),
            Self::Class(weight) => class(weight).default_diameter(),
        }
    }

    /// The class; from wraps, the thinnest whose thick end is no thinner than the yarn.
    pub fn class(self) -> Weight {
        let across = self.across();
        let holds = CLASSES.iter().find(|class| class.default_diameter() >= across);
        holds.map_or(Weight::Jumbo, |class| class.weight)
    }
}

/// How much to leave.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// How much to leave before the slip knot; of each strand where there are two.
    pub tail: Length,
    /// From the least of the estimates, without reserve, to the largest of them with it; the end is in both.
    pub range: Range,
    /// What the tail is, by the method.
    pub strand: Strand,
    /// The estimates that can be made from what is known: wraps, practice, measured. None where no long tail is needed.
    pub estimates: Vec<Estimate>,
    /// Which of `estimates` the tail rests on.
    pub wins: Option<usize>,
    /// Why that one.
    pub why: Why,
    /// The reserve that was put on the stitches, in percent.
    pub reserve: u32,
    /// What the stitches need by the estimate that wins.
    pub needs: Length,
    /// That with the reserve; the end comes on top of it, once.
    pub with_reserve: Length,
    /// The tail in arm's lengths of [`ARM`], rounded up to a tenth of one.
    pub arms: Fraction,
    /// Whether what is left will do.
    pub left: Option<Remaining>,
    /// Stitches to cast on in waste yarn, where the method begins with half of them: rounded up.
    pub waste: Option<u32>,
    /// Whether two strands would be easier, which they are above [`TWO_STRANDS_ABOVE`].
    pub two_strands: bool,
}

/// Works out the tail.
///
/// # Errors
/// Every [`Problem`] has a field of [`Name`], and the nearest value that can be had. The yarn is missing when nothing
/// is known that a tail could be worked out from.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    check::check(question)?;
    let strand = question.method.strand();
    let is_long = matches!(strand, Strand::Thumb { .. });
    let stitches = question.stitches;
    let estimates = estimate::all(question, strand);
    if is_long && estimates.is_empty() {
        return Err(vec![check::nothing_known()]);
    }
    let decided = estimate::decide(&estimates, question.measured);
    let reserve = decided.why.reserve();
    let by = |place: Option<usize>, stitches: u32, reserve: u32| {
        let estimate = place.and_then(|place| estimates.get(place));
        estimate.map_or(Length::ZERO, |estimate| estimate.over(stitches, reserve))
    };
    let with_end = |needs: Length| needs.saturating_add(question.end);
    let with_reserve = by(decided.wins, stitches, reserve);
    let tail = with_end(with_reserve);
    Ok(Answer {
        tail,
        range: if is_long {
            Range {
                least: with_end(decided.least),
                most: with_end(by(decided.largest, stitches, reserve)),
            }
        } else {
            Range {
                least: question.end.min(SHORT.least),
                most: question.end.max(SHORT.most),
            }
        },
        strand,
        wins: decided.wins,
        why: decided.why,
        reserve,
        needs: by(decided.wins, stitches, 0),
        with_reserve,
        arms: arms(tail),
        left: question.left.map(|left| {
            let estimate = decided.wins.and_then(|place| estimates.get(place));
            Remaining::of(left, estimate, reserve, question.end)
        }),
        waste: (strand == Strand::HalfInWaste).then_some(stitches.div_ceil(2)),
        two_strands: is_long && stitches > TWO_STRANDS_ABOVE,
        estimates,
    })
}

/// A tail in arm's lengths, rounded up to a tenth of one.
fn arms(tail: Length) -> Fraction {
    let nm = |length: Length| length.to_nm().unsigned_abs();
    Fraction::new(nm(tail).div_ceil(nm(ARM) / 10), 10)
}

#[cfg(test)]
mod tests;
