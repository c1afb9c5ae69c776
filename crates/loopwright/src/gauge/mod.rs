//! Gauge: "I counted 21 stitches in 10 cm, and 20 1/2 a little further on. What is my gauge, how far can I trust it, and
//! which needle do I try next?"
//!
//! **Mean.** All stitches counted over all the width they were counted in: 21 and 20 1/2 in 10 cm each are 41 1/2 in
//! 20 cm, 20 3/4 in 10 cm. Each count keeps its own span, so that 10 cm, 4 in (1.6 % more) and 5 cm mix as they should.
//! **Trust.** A count is read to the half stitch, so a width `W` comes out between `W / (1 + 0.5 / N)` and
//! `W / (1 - 0.5 / N)`. Counting `N` over a longer span, or `m` counts (the half divided by the square root of `m`),
//! narrows that; a stretched tape stays as it is. **Against the pattern.** Too few stitches in the span: a smaller
//! needle. Too many: a larger one. Which that is the table of needles says. Less than half a size off, another needle
//! lands further off, so it stays; and a count that could as well be the pattern's says nothing about needles.
//! **Washing.** What is knitted is measured unwashed on the needle and worn washed; the two are counted apart, and the
//! pattern is compared with the washed one.
//! The sums are arithmetic; how much a needle changes is common practice, no source.
//!
//! ```
//! use loopwright::gauge::{Next, Question, answer};
//! use loopwright::units::{Gauge, Length};
//!
//! // 21 stitches in 10 cm, a metre wanted, and a pattern at 19.
//! let question = Question {
//!     pattern: Some(Gauge::of(19, Gauge::TEN_CM)),
//!     ..Question::about(Gauge::of(21, Gauge::TEN_CM))
//! };
//! let answer = answer(&question).unwrap();
//! // Too many stitches: go up. If nothing changed, 190 stitches would measure 90.5 cm,
//! assert_eq!(answer.next, Some(Next::Up { sizes: 2 }));
//! assert_eq!(answer.stitches.would_be, Length::from_nm(904_761_905));
//! // or, if the swatch was read half a stitch wrong, 88.4 to 92.7.
//! let reading = answer.stitches.reading[0];
//! assert_eq!(reading.least, Length::from_nm(883_720_930));
//! assert_eq!(reading.most, Length::from_nm(926_829_268));
//! ```

mod change;
mod choices;
mod measure;

pub use change::{Called, Change};
pub use choices::{Direction, Name};
pub use measure::{Against, Measured, Reading, Wash};

use crate::cast_on::WIDTH;
use crate::check::Check;
use crate::problem::{Kind, Problem};
use crate::tail::NEEDLE;
use crate::units::rate::Rate;
use crate::units::{Gauge, Length, LengthUnit};

/// How wide a piece is where nothing is said.
pub const USUAL_WIDTH: Length = Length::of(1, LengthUnit::M);

/// How long a piece is where nothing is said.
pub const USUAL_LENGTH: Length = Length::of(50, LengthUnit::Cm);

/// The span of a label that says `10 cm / 4 in`: it is read as 10 cm, and the page says so. Common practice, no source.
pub const LABEL_SPAN: Length = Gauge::TEN_CM;

/// One needle size changes the stitches in a width by about so much, in per mille. Common practice, no source.
pub const SIZE_PERMILLE: u32 = 70;

/// The most needle sizes to change before the next swatch. Common practice, no source.
pub const MOST_SIZES: u32 = 2;

/// Counts from the swatch, the pattern's gauge, and what is to be knitted.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// Stitches of the *washed* swatch, one count a spot, each over its own span: [`Gauge::COUNTS`] over
    /// [`Gauge::SPANS`]. They may be left out if unwashed ones are counted.
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
    /// The needle the swatch was knitted on, within [`NEEDLE`]; where it is known the next one has a name.
    pub needle: Option<Length>,
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
            needle: None,
            width: USUAL_WIDTH,
            length: USUAL_LENGTH,
        }
    }

    /// How long the piece is to be in this direction.
    pub const fn wanted(&self, direction: Direction) -> Length {
        match direction {
            Direction::Stitches => self.width,
            Direction::Rows => self.length,
        }
    }

    /// The pattern's gauge in this direction.
    pub const fn pattern_of(&self, direction: Direction) -> Option<Gauge> {
        match direction {
            Direction::Stitches => self.pattern,
            Direction::Rows => self.pattern_rows,
        }
    }
}

/// What the swatch says.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// Across.
    pub stitches: Measured,
    /// Upwards; none when no rows were counted.
    pub rows: Option<Measured>,
    /// What to do next, by stitches alone: a suggestion, and the next swatch decides. None where there is no pattern and
    /// the spots agree.
    pub next: Option<Next>,
    /// From which needle to which, where the needle is known and another is next.
    pub change: Option<Change>,
    /// Stitches match the pattern's and rows do not: lengths by measure hold; counted rows come out otherwise.
    pub rows_only: bool,
    /// What else she should know.
    pub notes: Vec<Note>,
}

impl Answer {
    /// Each direction that was counted.
    pub fn directions(&self) -> impl Iterator<Item = (Direction, &Measured)> {
        let rows = self.rows.iter().map(|rows| (Direction::Rows, rows));
        [(Direction::Stitches, &self.stitches)].into_iter().chain(rows)
    }

    /// The rows, where they were counted and the pattern's are known.
    pub fn compared_rows(&self) -> Option<&Measured> {
        self.rows.as_ref().filter(|rows| rows.against.is_some())
    }
}

/// What else she should know.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Note {
    /// What a needle size changes is a suggestion; the next swatch decides.
    NeedleIsATry,
    /// Counts from before washing stand in for washed ones.
    NotWashed,
    /// Long and heavy pieces drop further than a swatch.
    Drops,
}

/// What to do next.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Next {
    /// The spots are further apart than the eye misreads: count again, away from the edges.
    CountAgain,
    /// The counts miss the pattern by half a needle size or more, and yet could be the pattern's, half a stitch misread:
    /// count over a longer span.
    CountLonger,
    /// The same needle: the pattern is missed by less than half a size, so that another lands further off.
    Keep,
    /// Too few stitches: a smaller needle.
    Down {
        /// How many sizes, at most [`MOST_SIZES`].
        sizes: u32,
    },
    /// Too many stitches: a larger needle.
    Up {
        /// How many sizes, at most [`MOST_SIZES`].
        sizes: u32,
    },
    /// Further off than [`MOST_SIZES`] needles are likely to bring: another yarn, or another size at one's own gauge.
    AnotherYarn,
}

impl Next {
    fn by(found: &Measured) -> Option<Self> {
        if found.uneven {
            return Some(Self::CountAgain);
        }
        let against = found.against?;
        let off = against.off_permille.unsigned_abs();
        let sizes = (off + SIZE_PERMILLE / 2) / SIZE_PERMILLE;
        Some(match sizes {
            0 => Self::Keep,
            _ if against.matches => Self::CountLonger,
            _ if off > SIZE_PERMILLE * (2 * MOST_SIZES + 1) / 2 => Self::AnotherYarn,
            _ if against.off_permille < 0 => Self::Down {
                sizes: sizes.min(MOST_SIZES),
            },
            _ => Self::Up {
                sizes: sizes.min(MOST_SIZES),
            },
        })
    }
}

/// Works out the gauge, how far it can be trusted, and what to do about it.
///
/// # Errors
/// Every [`Problem`] has the [`Name`] of a field: no stitches were counted ([`Name::Stitches`]), a count, a span or a
/// length is out of bounds.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    check(question)?;
    let measured = |direction| {
        let (washed, unwashed) = match direction {
            Direction::Stitches => (&question.stitches, &question.stitches_unwashed),
            Direction::Rows => (&question.rows, &question.rows_unwashed),
        };
        let (pattern, wanted) = (question.pattern_of(direction), question.wanted(direction));
        Measured::of(washed, unwashed, pattern, wanted)
    };
    let Some(stitches) = measured(Direction::Stitches) else {
        return Err(vec![Problem::new(Name::Stitches, Kind::Missing)]);
    };
    let rows = measured(Direction::Rows);
    let next = Next::by(&stitches);
    Ok(Answer {
        rows_only: rows_only(next, &stitches, rows.as_ref()),
        notes: notes(next, &stitches, rows.as_ref()),
        change: next
            .zip(question.needle)
            .and_then(|(next, needle)| Change::by(next, needle)),
        next,
        stitches,
        rows,
    })
}

fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let mut check = Check::default();
    let lists = [
        (Name::Stitches, &question.stitches),
        (Name::Rows, &question.rows),
        (Name::StitchesUnwashed, &question.stitches_unwashed),
        (Name::RowsUnwashed, &question.rows_unwashed),
    ];
    for (name, counts) in lists {
        for gauge in counts {
            check.gauge(name, *gauge);
        }
    }
    check.gauge_if_any(Name::Pattern, question.pattern);
    check.gauge_if_any(Name::PatternRows, question.pattern_rows);
    check.length_if_any(Name::Needle, question.needle, NEEDLE);
    check.length(Name::Width, question.width, WIDTH);
    check.length(Name::Length, question.length, WIDTH);
    check.done()
}

fn rows_only(next: Option<Next>, stitches: &Measured, rows: Option<&Measured>) -> bool {
    let stitches_match = stitches.against.is_some_and(|against| against.matches);
    let rows_miss = rows
        .and_then(|rows| rows.against)
        .is_some_and(|against| !against.matches);
    next == Some(Next::Keep) && stitches_match && rows_miss
}

fn notes(next: Option<Next>, stitches: &Measured, rows: Option<&Measured>) -> Vec<Note> {
    let tries = matches!(next, Some(Next::Down { .. } | Next::Up { .. }));
    let all = [
        tries.then_some(Note::NeedleIsATry),
        (!stitches.washed).then_some(Note::NotWashed),
        rows.map(|_| Note::Drops),
    ];
    all.into_iter().flatten().collect()
}

/// The same gauge over another span, to the nearest thousandth: 21 in 10 cm are 21.336 in 4 in. A span not above zero
/// changes nothing.
pub fn over(gauge: Gauge, span: Length) -> Gauge {
    Rate::of(gauge).gauge_over(span).unwrap_or(gauge)
}

#[cfg(test)]
mod tests;
