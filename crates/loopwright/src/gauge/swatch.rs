//! The swatch itself: "How many stitches do I cast on to measure 10 cm of it properly, and what then?"
//!
//! Stitches for the span that is measured, about half of it again on each side and never under 3, since the edge
//! stitches are drawn in and are not counted; up to whole repeats. Half the span again in height. Then it is knitted
//! as the piece will be, in the round or flat, since many knit and purl differently, and washed, laid out and fully dry
//! before it is measured. All of it common practice, no source.
//!
//! ```
//! use loopwright::gauge::swatch::{Question, answer};
//! use loopwright::units::{Gauge, Length};
//!
//! let answer = answer(&Question {
//!     rows: Some(Gauge::of(28, Gauge::TEN_CM)),
//!     ..Question::about(Gauge::of(21, Gauge::TEN_CM))
//! }).unwrap();
//! // 21 to measure, and 11 on each side; 15 cm in 42 rows.
//! assert_eq!((answer.cast_on, answer.measured, answer.beside), (43, 21, 22));
//! assert_eq!((answer.rows, answer.height), (Some(42), Length::from_mm(150)));
//! ```

use super::rate::{self, PARTS, Rate, to_length};
use crate::cast_on::{MULTIPLE, Multiple, PLUS};
use crate::problem::Problem;
use crate::units::{Gauge, Length};

/// The fewest stitches on each side that are not measured. Common practice, no source.
pub const LEAST_BESIDE: u32 = 3;

/// What is expected of the swatch.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// The stitches that are hoped for, mostly the pattern's, over the span to be measured.
    pub gauge: Gauge,
    /// The rows that are hoped for, with their own span.
    pub rows: Option<Gauge>,
    /// The repeat of the pattern stitch; its `plus` is not counted in the round.
    pub multiple: Multiple,
    /// Rows of one repeat, within [`MULTIPLE`]; 1 when any number will do.
    pub row_repeat: u32,
    /// Whether the piece is worked in the round.
    pub round: bool,
}

impl Question {
    /// A flat swatch of a plain fabric.
    pub const fn about(gauge: Gauge) -> Self {
        Self {
            gauge,
            rows: None,
            multiple: Multiple { of: 1, plus: 0 },
            row_repeat: 1,
            round: false,
        }
    }
}

/// How to knit it.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// Stitches to cast on.
    pub cast_on: u32,
    /// Stitches in the span that is measured, rounded up.
    pub measured: u32,
    /// Stitches on both sides together that are not.
    pub beside: u32,
    /// Whole repeats that are cast on.
    pub repeats: u32,
    /// How high: half the span again.
    pub height: Length,
    /// Rows for that, up to whole repeats; none when no row gauge is expected.
    pub rows: Option<u32>,
    /// What to do, in this order.
    pub care: &'static [Care],
}

/// One thing to do with a swatch.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Care {
    /// On the very needle of the piece: wood and metal do not knit alike.
    SameNeedle,
    /// As for a round: knit every row from the same side, and carry the strand loosely across the back. A swatch worked
    /// flat can be a stitch or two off.
    StrandAcross,
    /// Count it before it is washed, for the tape in mid-knit.
    CountUnwashed,
    /// Cut the strands of a swatch for the round, so that it lies flat.
    Cut,
    /// Wash it as the piece will be.
    Wash,
    /// Lay it out without pulling.
    LayOut,
    /// Let it dry fully.
    Dry,
    /// Measure in the middle, at several spots.
    Middle,
}

const FLAT: [Care; 6] = [
    Care::SameNeedle,
    Care::CountUnwashed,
    Care::Wash,
    Care::LayOut,
    Care::Dry,
    Care::Middle,
];
const ROUND: [Care; 8] = [
    Care::SameNeedle,
    Care::StrandAcross,
    Care::Cut,
    Care::CountUnwashed,
    Care::Wash,
    Care::LayOut,
    Care::Dry,
    Care::Middle,
];

/// Plans the swatch.
///
/// # Errors
/// Every [`Problem`] has the field `gauge`, `rows`, `multiple`, `plus` or `row_repeat`.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    let Question { gauge, rows, round, .. } = *question;
    let Multiple { of, plus } = question.multiple;
    rate::gather(&[
        rate::check("gauge", gauge),
        rows.and_then(|rows| rate::check("rows", rows)),
        Problem::of_count("multiple", of, MULTIPLE),
        Problem::of_count("plus", plus, PLUS),
        Problem::of_count("row_repeat", question.row_repeat, MULTIPLE),
    ])?;
    let plus = if round { 0 } else { plus };
    let measured = up(Rate::of(gauge).count, PARTS);
    let side = measured.div_ceil(2).max(LEAST_BESIDE);
    let repeats = (measured + 2 * side).saturating_sub(plus).div_ceil(of).max(1);
    let cast_on = repeats * of + plus;
    let height = i128::from(gauge.span().to_nm()) * 3 / 2;
    Ok(Answer {
        cast_on,
        measured,
        beside: cast_on - measured,
        repeats,
        height: to_length(height),
        rows: rows.map(|rows| {
            let rate = Rate::of(rows);
            let least = up(height * rate.count, rate.span * PARTS);
            least.div_ceil(question.row_repeat) * question.row_repeat
        }),
        care: if round { &ROUND } else { &FLAT },
    })
}

/// A fraction up to the whole number; 200,000 at the most (400 in 5 mm, over half as much again as a metre).
fn up(over: i128, under: i128) -> u32 {
    u32::try_from((over + under - 1) / under).unwrap_or(u32::MAX)
}
