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

mod by_row;
mod check;
mod choices;
mod fit;
mod follow;
mod note;
mod piece;
mod shape;

pub use by_row::plan;
pub use choices::{KnittingKind, Name, Parity, ShapingSide};
pub use follow::Follow;
pub use note::{Note, RowsWait};
pub use piece::Piece;
pub use shape::{Shaped, Shaping};

use crate::bounds::Bounds;
use crate::cast_on::Knitting;
use crate::check::Check;
use crate::problem::Problem;
use crate::sizing::{Gauges, Moves};
use crate::spacing::Fraction;
use crate::terms::{Multiple, Range};
use crate::units::{Gauge, Length, LengthUnit};
use fit::Scale;

/// Stitches of a pattern, and of what they become.
pub const STITCHES: Bounds<u32> = Bounds::new(1, 100_000);

/// Rows of a pattern, and of what they become.
pub const ROWS: Bounds<u32> = crate::shaping::ROWS;

/// How many counts may be converted at once.
pub const COUNTS: Bounds<u32> = Bounds::new(0, 2_000);

/// How wide or long a thing may be: 5 mm to 20 m.
pub const MEASURE: Bounds<Length> = Bounds::new(Length::from_mm(5), Length::of(20, LengthUnit::M));

/// Rows of one repeat of a chart.
pub const REPEAT: Bounds<u32> = Bounds::new(1, 1_000);

/// Rows of one repeat where there is no chart.
pub const NO_REPEAT: u32 = 1;

/// Stitches that one shaping row changes where nothing else is said: one at each of two edges.
pub const USUAL_EACH: u32 = 2;

/// Two gauges, and what is to be brought from the one to the other.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// Stitches in a span, as the pattern has it: washed. [`Gauge::COUNTS`] over [`Gauge::SPANS`].
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
    /// Which places of the pattern's list of stitches are dashes, in order and counted from nought among counts and
    /// dashes: sizes without this step. They are kept so that every count stays beside its size; see [`places`].
    pub count_gaps: Vec<usize>,
    /// Rows in the pattern, each within [`ROWS`].
    pub rows: Vec<u32>,
    /// Which places of the pattern's list of rows are dashes, as with `count_gaps`.
    pub row_gaps: Vec<usize>,
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
            count_gaps: Vec::new(),
            rows: Vec::new(),
            row_gaps: Vec::new(),
            length: None,
            wanted: None,
            shaping: None,
            multiple: Multiple::ANY,
            knitting: Knitting::Round { extra: false },
            parity: false,
            row_repeat: NO_REPEAT,
        }
    }

    /// Edge and seam stitches, both edges together.
    const fn edge_stitches(&self) -> u32 {
        match self.knitting {
            Knitting::Round { .. } => 0,
            Knitting::Flat { edge, seam } => edge.saturating_add(seam).saturating_mul(2),
        }
    }

    /// What stands outside the measure: edge and seam stitches, and the one more of a join.
    const fn outside(&self) -> u32 {
        match self.knitting {
            Knitting::Round { extra } => extra as u32,
            Knitting::Flat { .. } => self.edge_stitches(),
        }
    }

    /// Whether anything is asked that takes row gauges.
    const fn asks_rows(&self) -> bool {
        !self.rows.is_empty() || self.length.is_some() || self.shaping.is_some()
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
    /// What each of the rows becomes, and last the rows of the length where there is one.
    pub rows: Vec<Converted>,
    /// Which of the counts to follow as it is.
    pub follow: Option<Follow>,
    /// What the size to follow measures, or otherwise what the first count becomes, if the own swatch was read half a
    /// stitch wrong, either way; nothing where there is no count.
    pub range: Range,
    /// The shaping, shared out anew.
    pub shaping: Option<Shaped>,
    /// What the own gauge moves besides: rows, and yarn.
    pub moves: Moves,
    /// Which row gauge the rows, the length and the shaping wait for; none where they are here, or not asked for.
    pub rows_wait: Option<RowsWait>,
    /// What else she should know.
    pub notes: Vec<Note>,
}

/// A count of the pattern, and what it becomes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Converted {
    /// As the pattern has it.
    pub pattern: u32,
    /// What it becomes: everything, with edges, seams and the extra one of the join; the smaller of two equally near.
    pub count: u32,
    /// What would keep the measure exactly, without edges, seams and join; to the thousandth.
    pub ideal: Fraction,
    /// Whether the count of the pattern keeps what has to be kept itself.
    pub kept: bool,
    /// What it measures in the pattern, without edges and seams.
    pub was: Length,
    /// What it will measure.
    pub becomes: Length,
    /// What it would measure if the count of the pattern were kept.
    pub unchanged: Length,
}

/// A list with its dashes in their places again: none for each of them.
///
/// ```
/// use loopwright::regauge::places;
///
/// assert_eq!(places(&[97, 123], &[0]), [None, Some(&97), Some(&123)]);
/// assert_eq!(places(&[97, 123], &[1]), [Some(&97), None, Some(&123)]);
/// ```
pub fn places<'a, T>(found: &'a [T], gaps: &[usize]) -> Vec<Option<&'a T>> {
    let mut gaps = gaps.iter().peekable();
    let mut places = Vec::new();
    for one in found.iter().map(Some).chain([None]) {
        while gaps.next_if(|gap| **gap <= places.len()).is_some() {
            places.push(None);
        }
        places.extend(one.map(Some));
    }
    places
}

/// Brings everything to one's own gauge.
///
/// # Errors
/// Every [`Problem`] has its field and the nearest value that would be right. [`Name::Counts`] is missing when there is
/// nothing to convert, and a row gauge when there are rows and no counts.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    check::check(question)?;
    let mut check = Check::default();
    let answer = converted(question, &mut check);
    // One of many that are too large tells enough.
    check.problems.truncate(1);
    check.done().map(|()| answer)
}

fn converted(question: &Question, check: &mut Check) -> Answer {
    let wide = Scale::of(question.pattern, question.own, STITCHES.most);
    let stitches = stitches(question, wide, check);
    let follow = question
        .wanted
        .and_then(|wanted| follow::follow(question, wide, wanted));
    let mut answer = Answer {
        range: range(question, wide, follow, &stitches),
        stitches,
        rows: Vec::new(),
        follow,
        shaping: None,
        moves: moves(question),
        rows_wait: RowsWait::of(question),
        notes: note::notes(question),
    };
    if let (Some(theirs), Some(ours)) = (question.pattern_rows, question.own_rows) {
        let tall = Scale::of(theirs, ours, ROWS.most);
        answer.rows = rows(question, tall, check);
        let shaping = question.shaping.as_ref();
        answer.shaping = shaping.map(|shaping| Shaped::of(question, shaping, (wide, tall), check));
    }
    answer
}

fn stitches(question: &Question, wide: Scale, check: &mut Check) -> Vec<Converted> {
    let outside = question.outside();
    let convert = |count: &u32| {
        let keep = fit::stitches(question, count.saturating_sub(outside));
        wide.convert(check, (Name::Counts, *count), outside, keep)
    };
    question.counts.iter().map(convert).collect()
}

fn rows(question: &Question, tall: Scale, check: &mut Check) -> Vec<Converted> {
    let convert = |count: &u32| tall.convert(check, (Name::Rows, *count), 0, fit::rows(question, *count));
    let mut rows: Vec<Converted> = question.rows.iter().map(convert).collect();
    rows.extend(question.length.map(|length| tall.measured(check, Name::Length, length)));
    rows
}

/// What the size to follow measures, or else what the first count becomes, if the swatch was misread.
fn range(question: &Question, wide: Scale, follow: Option<Follow>, stitches: &[Converted]) -> Range {
    let size = follow.and_then(|follow| question.counts.get(follow.size).copied());
    let first = stitches.first().map(|first| first.count);
    let count = size.or(first).unwrap_or(0);
    wide.range(count.saturating_sub(question.outside()))
}

fn moves(question: &Question) -> Moves {
    let theirs = Gauges {
        stitches: question.pattern,
        rows: question.pattern_rows,
    };
    let ours = Gauges {
        stitches: question.own,
        rows: question.own_rows,
    };
    Moves::between(theirs, ours)
}

#[cfg(test)]
mod tests;
