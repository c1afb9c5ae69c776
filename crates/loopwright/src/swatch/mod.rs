//! The swatch: "How many stitches do I cast on to measure 10 cm of it properly, and how high do I knit?"
//!
//! Stitches for the span that is measured, 10 cm or 4 in or as far as the gauge goes, about half of it again on each
//! side and never under 3, since the edge stitches are drawn in and are not counted; up to whole repeats. Half the span
//! again in height, up to whole repeats of rows. All of it common practice, no source. It is knitted as the piece will
//! be, in the round or flat, since many knit and purl differently: a swatch worked flat can be a stitch or two off for a
//! round. Where the needle is known, so is the one to try next: a size up or down in the [table](crate::tables::needle)
//! of needles that are sold.
//!
//! ```
//! use loopwright::swatch::{Question, answer};
//! use loopwright::units::{Gauge, Length};
//!
//! let answer = answer(&Question {
//!     rows: Some(Gauge::of(28, Gauge::TEN_CM)),
//!     ..Question::about(Gauge::of(21, Gauge::TEN_CM))
//! }).unwrap();
//! // 21 to measure, and 11 on each side; 15 cm in 42 rows.
//! assert_eq!((answer.cast_on, answer.measured, answer.beside), (43, 21, 22));
//! assert_eq!((answer.rows.unwrap().count, answer.height), (42, Length::from_mm(150)));
//! ```

mod choices;

pub use choices::Name;

use crate::check::Check;
use crate::choice::Choice;
use crate::gauge::{Called, Change, Next};
use crate::problem::Problem;
use crate::tail::NEEDLE;
use crate::terms::{MULTIPLE, Multiple, PLUS, Working};
use crate::units::rate::Rate;
use crate::units::{Gauge, Length};

/// The fewest stitches on each side that are not measured. Common practice, no source.
pub const LEAST_BESIDE: u32 = 3;

/// Rows of one repeat where nothing is said: any number will do.
pub const USUAL_ROW_REPEAT: u32 = 1;

/// What is expected of the swatch.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// The stitches that are hoped for, mostly the pattern's: [`Gauge::COUNTS`] over [`Gauge::SPANS`].
    pub gauge: Gauge,
    /// The rows that are hoped for, with their own span.
    pub rows: Option<Gauge>,
    /// The repeat of the pattern stitch, within [`MULTIPLE`] and [`PLUS`]; its `plus` is not counted in the round.
    pub multiple: Multiple,
    /// Rows of one repeat, within [`MULTIPLE`]; 1 when any number will do.
    pub row_repeat: u32,
    /// How the piece is worked, and so the swatch.
    pub knitting: Working,
    /// The needle it will be knitted on, within [`NEEDLE`]; where it is known those to try next have a name.
    pub needle: Option<Length>,
}

impl Question {
    /// A swatch of a plain fabric.
    pub const fn about(gauge: Gauge) -> Self {
        Self {
            gauge,
            rows: None,
            multiple: Multiple::ANY,
            row_repeat: USUAL_ROW_REPEAT,
            knitting: Working::START,
            needle: None,
        }
    }
}

/// How to knit it.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// Stitches to cast on.
    pub cast_on: u32,
    /// What is measured, in the middle: the span of the gauge, but no less than 10 cm, or 4 in if it was given over whole
    /// or half inches.
    pub span: Length,
    /// The gauge that is hoped for, over that span.
    pub hoped: Gauge,
    /// Stitches in it, rounded up.
    pub measured: u32,
    /// Stitches on both sides together that are not.
    pub beside: u32,
    /// Whole repeats that are cast on.
    pub repeats: u32,
    /// Stitches beside the repeats; none in the round.
    pub plus: u32,
    /// How wide it will be at the gauge that is hoped for.
    pub width: Length,
    /// How high to knit: half the span again, up to whole repeats where a row gauge is hoped for.
    pub height: Length,
    /// Rows for that; none when no row gauge is hoped for.
    pub rows: Option<Rows>,
    /// The needle, and those to try next; none where it is not known.
    pub needles: Option<Needles>,
    /// What else she should know.
    pub notes: Vec<Note>,
}

/// What else she should know.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Note {
    /// A round has no edges: these stitches beside the repeats are not cast on.
    PlusDropped {
        /// How many.
        plus: u32,
    },
    /// A swatch worked flat can be a stitch or two off for a round.
    FlatDiffers,
}

/// The needle of a swatch, and the ones that come next to it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Needles {
    /// The needle it will be knitted on.
    pub this: Called,
    /// A size down, for too few stitches; none where the table begins.
    pub thinner: Option<Called>,
    /// A size up, for too many; none where the table ends.
    pub thicker: Option<Called>,
}

impl Needles {
    fn beside(needle: Length) -> Self {
        let next = |next| Change::by(next, needle).and_then(|change| change.to);
        Self {
            this: Called::of(needle),
            thinner: next(Next::Down { sizes: 1 }),
            thicker: next(Next::Up { sizes: 1 }),
        }
    }
}

/// How many rows to work.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Rows {
    /// Rows of half the span again.
    pub least: u32,
    /// Whole repeats that reach it.
    pub repeats: u32,
    /// Rows of these.
    pub count: u32,
}

/// Plans the swatch.
///
/// # Errors
/// A [`Problem`] names each field that is out of bounds.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    check(question)?;
    let Multiple { of, plus } = question.multiple;
    let plus = match question.knitting {
        Working::Round => 0,
        Working::Flat => plus,
    };
    let rate = Rate::of(question.gauge);
    let span = question.gauge.span().max(question.gauge.usual_span());
    let measured = count_in(span, rate);
    let side = measured.div_ceil(2).max(LEAST_BESIDE);
    let repeats = (measured + 2 * side).saturating_sub(plus).div_ceil(of).max(1);
    let cast_on = repeats * of + plus;
    let high_enough = Length::from_nm(span.to_nm() * 3 / 2);
    let rows = question.rows.map(|gauge| {
        let rows = Rows::of(high_enough, gauge, question.row_repeat);
        (rows, Rate::of(gauge).width_of(rows.count))
    });
    Ok(Answer {
        cast_on,
        span,
        hoped: rate.gauge_over(span).unwrap_or(question.gauge),
        measured,
        beside: cast_on - measured,
        repeats,
        plus,
        width: rate.width_of(cast_on),
        height: rows.map_or(high_enough, |(_, height)| height),
        rows: rows.map(|(rows, _)| rows),
        needles: question.needle.map(Needles::beside),
        notes: notes(question),
    })
}

fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let mut check = Check::default();
    check.gauge(Name::Gauge, question.gauge);
    check.gauge_if_any(Name::Rows, question.rows);
    check.count(Name::Multiple, question.multiple.of, MULTIPLE);
    check.count(Name::Plus, question.multiple.plus, PLUS);
    check.count(Name::RowRepeat, question.row_repeat, MULTIPLE);
    check.length_if_any(Name::Needle, question.needle, NEEDLE);
    check.done()
}

impl Rows {
    /// As many as reach a height, in whole repeats.
    fn of(height: Length, gauge: Gauge, row_repeat: u32) -> Self {
        let least = count_in(height, Rate::of(gauge));
        let repeats = least.div_ceil(row_repeat);
        Self {
            least,
            repeats,
            count: repeats * row_repeat,
        }
    }
}

/// How many reach a length. It is exact, so a row too many is seen.
fn count_in(length: Length, rate: Rate) -> u32 {
    u32::try_from(rate.count_over(length).ceiling()).unwrap_or(u32::MAX)
}

fn notes(question: &Question) -> Vec<Note> {
    let plus = question.multiple.plus;
    match question.knitting {
        Working::Round if plus > 0 => vec![Note::PlusDropped { plus }, Note::FlatDiffers],
        Working::Round => vec![Note::FlatDiffers],
        Working::Flat => Vec::new(),
    }
}

#[cfg(test)]
mod tests;
