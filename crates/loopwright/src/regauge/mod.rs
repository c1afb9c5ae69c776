//! The pattern at one's own gauge: "It has 180 stitches at 20 in 10 cm, and I knit 22. What do I cast on?"
//!
//! A count keeps its measure when it is multiplied by the own gauge and divided by the pattern's: 180 x 22 / 20 = 198.
//! Each gauge carries its span, since 10 cm are not 4 in. The nearest count is taken that keeps what the pattern needs:
//! a multiple (plus a few, which only a flat piece has), odd or even where a stitch stands at the centre, and rows that
//! end on the same side and in the same row of the chart. Edge and seam stitches and the extra one of a join stay as they
//! are. Shaping is not multiplied: "every 6th row" is no rate at another gauge. Both ends and the rows are converted, and
//! what lies between is shared out anew.
//!
//! Or the pattern is followed as it is, in another size: a size measures its stitches over the own gauge, and the one
//! nearest to the wanted measure is followed. Lengths by measure hold then; what is counted in rows does not, and becomes
//! its rows over the own row gauge. Yarn for the same measures goes with the square root of stitches times rows.
//! Arithmetic; which of two equal counts is common practice, no source: the smaller, since knitting stretches.
//!
//! ```
//! use loopwright::cast_on::Multiple;
//! use loopwright::regauge::{Question, answer};
//! use loopwright::units::{Gauge, Length, LengthUnit};
//!
//! let (pattern, own) = (Gauge::of(20, Gauge::TEN_CM), Gauge::of(22, Gauge::TEN_CM));
//! let question = Question {
//!     multiple: Multiple { of: 8, plus: 0 },
//!     wanted: Some(Length::of(91, LengthUnit::Cm)),
//!     ..Question::about(pattern, own, vec![180, 196, 212])
//! };
//! let answer = answer(&question).unwrap();
//! // 198 would keep the 90 cm; 200 is the nearest multiple of 8. As it is, 180 would be 81.8 cm.
//! assert_eq!(answer.stitches[0].count, 200);
//! assert_eq!(answer.stitches[0].unchanged, Length::from_nm(818_181_818));
//! // 196 / 2.2 is 89.1 cm, and 212 / 2.2 is 96.4 cm: follow the second size.
//! assert_eq!(answer.follow.map(|follow| follow.size), Some(1));
//! ```

mod check;
mod fit;
mod follow;
mod note;
mod shape;

pub use follow::Follow;
pub use note::{Note, Step};
pub use shape::{Rate, Shaped, Shaping};

use crate::bounds::Bounds;
use crate::cast_on::{Knitting, Multiple};
use crate::problem::Problem;
use crate::sizing::PerMille;
use crate::spacing::Fraction;
use crate::units::{Gauge, Length, LengthUnit};
use fit::{Keep, Scale};

/// Stitches of a pattern, and of what they become.
pub const STITCHES: Bounds<u32> = Bounds::new(1, 100_000);

/// Rows of a pattern, and of what they become.
pub const ROWS: Bounds<u32> = STITCHES;

/// How many counts may be converted at once.
pub const COUNTS: Bounds<u32> = Bounds::new(0, 2_000);

/// How wide or long a thing may be: 5 mm to 20 m.
pub const MEASURE: Bounds<Length> = Bounds::new(Length::from_mm(5), Length::of(20, LengthUnit::M));

/// Over what a gauge may have been counted: 5 mm to 1 m.
pub const SPAN: Bounds<Length> = Bounds::new(Length::from_mm(5), Length::of(1, LengthUnit::M));

/// Rows of one repeat of a chart, and stitches that one shaping row changes.
pub const REPEAT: Bounds<u32> = Bounds::new(1, 1_000);

/// Two gauges, and what is to be brought from the one to the other.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// Stitches in a span, as the pattern has it: washed. [`Gauge::COUNTS`] over [`SPAN`].
    pub pattern: Gauge,
    /// Stitches in a span of the washed swatch; its span may be another.
    pub own: Gauge,
    /// Rows in a span, as the pattern has it.
    pub pattern_rows: Option<Gauge>,
    /// Rows in a span of the washed swatch.
    pub own_rows: Option<Gauge>,
    /// Stitches in the pattern, each within [`STITCHES`]: one count, all of a piece, or those of its sizes. As cast on:
    /// with edge and seam stitches and with the extra one of the join, where `knitting` has them.
    pub counts: Vec<u32>,
    /// Rows in the pattern, each within [`ROWS`].
    pub rows: Vec<u32>,
    /// A length by measure that is wanted in rows, within [`MEASURE`].
    pub length: Option<Length>,
    /// How wide it is to be, or how far round, without edges and seams, within [`MEASURE`]: which of `counts` to follow.
    pub wanted: Option<Length>,
    /// Shaping in the pattern.
    pub shaping: Option<Shaping>,
    /// What a count has to be; within the bounds of [`cast_on`](crate::cast_on).
    pub multiple: Multiple,
    /// In the round or flat, with what stands outside the width.
    pub knitting: Knitting,
    /// Whether odd stays odd and even stays even, for a stitch at the centre.
    pub parity: bool,
    /// Rows of one repeat of the chart, within [`REPEAT`]: the last row stays the same row of it.
    pub row_repeat: u32,
}

impl Question {
    /// The usual question about counts: any count, in the round, no rows.
    pub const fn about(pattern: Gauge, own: Gauge, counts: Vec<u32>) -> Self {
        Self {
            pattern,
            own,
            pattern_rows: None,
            own_rows: None,
            counts,
            rows: Vec::new(),
            length: None,
            wanted: None,
            shaping: None,
            multiple: Multiple { of: 1, plus: 0 },
            knitting: Knitting::Round { extra: false },
            parity: false,
            row_repeat: 1,
        }
    }

    /// Edge and seam stitches, both edges together.
    const fn beside(&self) -> u32 {
        match self.knitting {
            Knitting::Round { .. } => 0,
            Knitting::Flat { edge, seam } => edge.saturating_add(seam).saturating_mul(2),
        }
    }

    /// The one more of the join.
    const fn extra(&self) -> u32 {
        matches!(self.knitting, Knitting::Round { extra: true }) as u32
    }

    const fn is_flat(&self) -> bool {
        matches!(self.knitting, Knitting::Flat { .. })
    }
}

/// Everything at one's own gauge.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// What each of the counts becomes.
    pub stitches: Vec<Converted>,
    /// What each of the rows becomes.
    pub rows: Vec<Converted>,
    /// The rows of the length, in the pattern and at one's own gauge.
    pub length: Option<Converted>,
    /// Which of the counts to follow as it is.
    pub follow: Option<Follow>,
    /// The shaping, shared out anew.
    pub shaping: Option<Shaped>,
    /// Stitches more to the length than in the pattern.
    pub more_stitches: PerMille,
    /// Rows more to the length than in the pattern; none where a row gauge is missing.
    pub more_rows: Option<PerMille>,
    /// Yarn more for the same measures; none where a row gauge is missing.
    pub more_yarn: Option<PerMille>,
    /// What else she should know.
    pub notes: Vec<Note>,
    /// The sum.
    pub steps: Vec<Step>,
}

/// A count of the pattern, and what it becomes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Converted {
    /// As the pattern has it.
    pub pattern: u32,
    /// What it becomes: everything, with edges, seams and the extra one of the join; the smaller of two equally near.
    pub count: u32,
    /// The same from the first round on: one fewer where one was extra for the join.
    pub worked: u32,
    /// The next smaller that keeps what has to be kept.
    pub below: Option<u32>,
    /// The next larger.
    pub above: Option<u32>,
    /// What would keep the measure exactly, without edges, seams and join.
    pub ideal: Fraction,
    /// What it measures in the pattern, without edges and seams.
    pub was: Length,
    /// What it will measure.
    pub becomes: Length,
    /// What that may be if the own swatch was read half a stitch wrong: the least and the most.
    pub range: (Length, Length),
    /// What it would measure if the count of the pattern were kept.
    pub unchanged: Length,
}

/// Brings everything to one's own gauge.
///
/// # Errors
/// Every [`Problem`] has the field `pattern`, `own`, `pattern_rows`, `own_rows`, `counts`, `rows`, `length`, `wanted`,
/// `from`, `to`, `shaping_rows`, `each`, `multiple`, `plus`, `edge`, `seam` or `row_repeat`, and the nearest value that
/// would be right. `counts` is missing when there is nothing to convert, and a row gauge when there are rows.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    check::check(question)?;
    let wide = Scale::of(question.pattern, question.own);
    let tall = question
        .pattern_rows
        .zip(question.own_rows)
        .map(|(theirs, ours)| Scale::of(theirs, ours));
    let mut stitches = Vec::new();
    let mut rows = Vec::new();
    let mut problems = Vec::new();
    for count in &question.counts {
        let outside = question.beside() + question.extra();
        let keep = Keep::stitches(question, count - outside);
        match wide.convert(*count, outside, &keep) {
            Some(found) => stitches.push(Converted {
                worked: found.count - question.extra(),
                ..found
            }),
            None => problems.push(wide.too_many("counts", outside)),
        }
    }
    for (count, scale) in question.rows.iter().zip(tall.iter().cycle()) {
        match scale.convert(*count, 0, &Keep::rows(question, *count)) {
            Some(found) => rows.push(found),
            None => problems.push(scale.too_many("rows", 0)),
        }
    }
    let length = question
        .length
        .zip(tall)
        .and_then(|(length, scale)| scale.measured(length));
    let shaping = match &question.shaping {
        Some(shaping) => Shaped::of(question, shaping, wide, tall),
        None => Ok(None),
    };
    let shaping = shaping.unwrap_or_else(|problem| {
        problems.push(problem);
        None
    });
    if !problems.is_empty() {
        problems.truncate(1);
        return Err(problems);
    }
    let mut answer = Answer {
        follow: question
            .wanted
            .and_then(|wanted| follow::follow(question, wide, wanted)),
        stitches,
        rows,
        length,
        shaping,
        more_stitches: more(wide.times()),
        more_rows: tall.map(|tall| more(tall.times())),
        more_yarn: tall.map(|tall| more((wide.times() * tall.times()).sqrt())),
        notes: Vec::new(),
        steps: Vec::new(),
    };
    note::explain(question, &mut answer);
    Ok(answer)
}

/// How much more than once, in thousandths; a float that is too large becomes the most.
fn more(times: f64) -> PerMille {
    PerMille(((times - 1.0) * 1000.0).round() as i32)
}

#[cfg(test)]
mod tests;
