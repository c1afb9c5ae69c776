//! Gauge: "I counted 21 stitches in 10 cm, and 20 1/2 a little further on. What is my gauge, how far can I trust it, and
//! which needle do I try next?"
//!
//! **Mean.** All stitches counted over all the width they were counted in: 21 and 20 1/2 in 10 cm each are 41 1/2 in
//! 20 cm, 20 3/4 in 10 cm. Each count keeps its own span, so that 10 cm, 4 in (1.6 % more) and 5 cm mix as they should.
//! **Trust.** A count is read to the half stitch, so a width `W` comes out between `W / (1 + 0.5 / N)` and
//! `W / (1 - 0.5 / N)`. Counting `N` over a longer span, or `m` counts (the half divided by the square root of `m`),
//! narrows that; a stretched tape stays as it is. **Against the pattern.** Too few stitches in the span: a smaller
//! needle. Too many: a larger one. **Washing.** What is knitted is measured unwashed on the needle and worn washed; the
//! two are counted apart, and the pattern is compared with the washed one.
//! The sums are arithmetic; how much a needle changes is common practice, no source.
//!
//! ```
//! use loopwright::gauge::{Needle, Question, answer};
//! use loopwright::units::{Gauge, Length};
//!
//! // 21 stitches in 10 cm, a metre wanted, and a pattern at 19.
//! let question = Question {
//!     pattern: Some(Gauge::of(19, Gauge::TEN_CM)),
//!     ..Question::about(Gauge::of(21, Gauge::TEN_CM))
//! };
//! let answer = answer(&question).unwrap();
//! let stitches = answer.stitches.unwrap();
//! // Read half a stitch wrong, the metre is 97.7 to 102.4 cm.
//! assert_eq!(stitches.reading.least, Length::from_nm(976_744_186));
//! assert_eq!(stitches.reading.most, Length::from_nm(1_024_390_244));
//! // Too many stitches: go up. If nothing changed, 190 stitches would measure 90.5 cm.
//! assert_eq!(answer.needle, Some(Needle::Up { steps: 2 }));
//! assert_eq!(stitches.against.unwrap().would_be, Length::from_nm(904_761_905));
//! ```

mod measure;
mod note;
pub(crate) mod rate;
pub mod swatch;

pub use measure::{Against, Mean, Measured, Reading, Wash, over};
pub use note::{Note, Step};

use crate::bounds::Bounds;
use crate::cast_on::WIDTH;
use crate::problem::{Kind, Problem};
use crate::tables::yarn_weight::{Place, place};
use crate::units::{Gauge, Length, LengthUnit};

/// How many counts one direction may have.
pub const READINGS: Bounds<u32> = Bounds::new(0, 12);

/// The span of a label that says `10 cm / 4 in`: it is read as 10 cm, and the page says so. Common practice, no source.
pub const LABEL_SPAN: Length = Gauge::TEN_CM;

/// One needle size changes the stitches in a width by about so much, in per mille. Common practice, no source.
pub const STEP_PERMILLE: u32 = 70;

/// The most needle sizes to change before the next swatch. Common practice, no source.
pub const MOST_STEPS: u32 = 2;

/// Counts from the swatch, the pattern's gauge, and what is to be knitted.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// Stitches of the *washed* swatch, one count a spot, each over its own span: [`Gauge::COUNTS`] over
    /// [`crate::cast_on::SPAN`], at most [`READINGS`].
    pub stitches: Vec<Gauge>,
    /// Rows of the washed swatch.
    pub rows: Vec<Gauge>,
    /// Stitches before washing.
    pub stitches_unwashed: Vec<Gauge>,
    /// Rows before washing.
    pub rows_unwashed: Vec<Gauge>,
    /// The pattern's stitches, with their own span.
    pub pattern: Option<Gauge>,
    /// The pattern's rows, with their own span.
    pub pattern_rows: Option<Gauge>,
    /// How wide the washed piece is to be; within [`WIDTH`].
    pub width: Length,
    /// How long it is to be where it is worked by counted rows; within [`WIDTH`].
    pub length: Length,
}

impl Question {
    /// One count of washed stitches, for a piece a metre round and half a metre long.
    pub fn about(stitches: Gauge) -> Self {
        Self {
            stitches: vec![stitches],
            rows: Vec::new(),
            stitches_unwashed: Vec::new(),
            rows_unwashed: Vec::new(),
            pattern: None,
            pattern_rows: None,
            width: Length::of(1, LengthUnit::M),
            length: Length::of(50, LengthUnit::Cm),
        }
    }
}

/// Which way something was counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Counted {
    /// Across.
    Stitches,
    /// Upwards.
    Rows,
}

/// What the swatch says.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// Across; none when no stitches were counted.
    pub stitches: Option<Measured>,
    /// Upwards; none when no rows were counted.
    pub rows: Option<Measured>,
    /// The needle to try next, by stitches alone: a suggestion, and the next swatch decides. None without a pattern.
    pub needle: Option<Needle>,
    /// Where the stitch gauge to be had (the pattern's, or else one's own) stands among the published classes, if the
    /// fabric is stockinette; each class has its needles in [`crate::tables::yarn_weight`].
    pub published: Option<Place>,
    /// What else she should know.
    pub notes: Vec<Note>,
    /// The sum.
    pub steps: Vec<Step>,
}

/// Which needle to try next.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Needle {
    /// The same: the gauge is the pattern's, as near as the counts can tell.
    Keep,
    /// Too few stitches: a smaller needle.
    Down {
        /// How many sizes, at most [`MOST_STEPS`].
        steps: u32,
    },
    /// Too many stitches: a larger needle.
    Up {
        /// How many sizes, at most [`MOST_STEPS`].
        steps: u32,
    },
}

impl Needle {
    fn by(against: &Against) -> Self {
        let off = against.off_permille;
        let sizes = (off.unsigned_abs() + STEP_PERMILLE / 2) / STEP_PERMILLE;
        let steps = sizes.clamp(1, MOST_STEPS);
        match off {
            0 => Self::Keep,
            _ if against.matches => Self::Keep,
            ..0 => Self::Down { steps },
            _ => Self::Up { steps },
        }
    }
}

/// Works out the gauge, how far it can be trusted, and what to do about it.
///
/// # Errors
/// Every [`Problem`] has the name of a field of [`Question`]: nothing was counted (`stitches`), there are too many
/// counts, a count, a span or a length is out of bounds.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    check(question)?;
    let Question {
        stitches,
        stitches_unwashed,
        rows,
        rows_unwashed,
        ..
    } = question;
    let stitches = Measured::of(stitches, stitches_unwashed, question.pattern, question.width);
    let rows = Measured::of(rows, rows_unwashed, question.pattern_rows, question.length);
    let (mut notes, mut steps) = (Vec::new(), Vec::new());
    for (counted, measured) in [(Counted::Stitches, &stitches), (Counted::Rows, &rows)] {
        if let Some(measured) = measured {
            note::of(counted, measured, &mut notes, &mut steps);
        }
    }
    let against = stitches.as_ref().and_then(|measured| measured.against);
    let rows_against = rows.as_ref().and_then(|measured| measured.against);
    note::beyond(against, rows_against, &mut notes);
    Ok(Answer {
        needle: against.map(|against| Needle::by(&against)),
        published: question.pattern.or(stitches.map(|own| own.mean.all)).map(place),
        stitches,
        rows,
        notes,
        steps,
    })
}

fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let [stitches, rows, stitches_unwashed, rows_unwashed] = [
        question.stitches.as_slice(),
        &question.rows,
        &question.stitches_unwashed,
        &question.rows_unwashed,
    ];
    let nothing = stitches.len() + rows.len() + stitches_unwashed.len() + rows_unwashed.len() == 0;
    let (field, kind) = ("stitches", Kind::Missing);
    rate::gather(&[
        nothing.then_some(Problem { field, kind }),
        check_counts("stitches", stitches),
        check_counts("rows", rows),
        check_counts("stitches_unwashed", stitches_unwashed),
        check_counts("rows_unwashed", rows_unwashed),
        check_counts("pattern", question.pattern.as_slice()),
        check_counts("pattern_rows", question.pattern_rows.as_slice()),
        Problem::of_length("width", question.width, WIDTH),
        Problem::of_length("length", question.length, WIDTH),
    ])
}

fn check_counts(field: &'static str, counts: &[Gauge]) -> Option<Problem> {
    let many = u32::try_from(counts.len()).unwrap_or(u32::MAX);
    let wrong = Problem::of_count(field, many, READINGS);
    wrong.or_else(|| counts.iter().find_map(|gauge| rate::check(field, *gauge)))
}

#[cfg(test)]
mod tests;
