//! Raising the back neck: "My yoke is worked in the round and the back of the neck is to sit 2.5 cm higher. Where do I
//! turn?"
//!
//! Short rows go to and fro across the back, each pair further than the one before, and each stitch between two turns
//! gets two rows more than the front. So the middle is raised by two rows for every turn at one side, and the raise
//! falls off to nothing at the edges of the back: `turns = height x rows in 1 cm / 2`, to the nearest. Half of the back
//! is shared out between them, `stitches / 2 / turns`, and what is over makes some of the shares one larger. Both sides
//! are alike, so of an odd number of stitches one stays out.
//!
//! A turn takes the stitch behind the last that is worked: wrapped, or as a German short row worked once more and made a
//! double stitch, which brings no row. The sum is arithmetic; even shares are common practice, no source.
//!
//! ```
//! use loopwright::stairs::raise::{Across, Question, answer};
//! use loopwright::units::{Gauge, Length, LengthUnit};
//!
//! let question = Question::about(Across::Stitches(40), Length::of(25, LengthUnit::Mm), Gauge::of(32, Gauge::TEN_CM));
//! let answer = answer(&question).unwrap();
//! // 2.5 cm are 8 rows, so 4 turns at each side.
//! assert_eq!(answer.turns, [5, 10, 15, 20]);
//! assert_eq!(answer.raised, Length::of(25, LengthUnit::Mm));
//! ```

mod follow;

pub use follow::{Doing, plan};

use super::{Name, STITCHES, Side};
use crate::bounds::Bounds;
use crate::check::Check;
use crate::problem::{Kind, Problem};
use crate::row::{Item, Row, Run, Stitch};
use crate::units::rate::Rate;
use crate::units::{Amount, Gauge, Length, LengthUnit};

/// How high a back neck may be raised: 2 mm to 20 cm.
pub const HEIGHT: Bounds<Length> = Bounds::new(Length::from_mm(2), Length::of(20, LengthUnit::Cm));

/// How wide the back may be: 2 cm to 2 m.
pub const WIDTH: Bounds<Length> = Bounds::new(Length::of(2, LengthUnit::Cm), Length::of(2, LengthUnit::M));

/// How many turns there may be at one side.
pub const TURNS: Bounds<u32> = Bounds::new(1, 200);

/// Stitches across the back: two at the least, one at either side of the middle.
pub const ACROSS: Bounds<u32> = Bounds::new(2, STITCHES.most);

/// What is to be raised, and by how much.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// How wide the back is.
    pub across: Across,
    /// How high it is to be raised in the middle, washed, within [`HEIGHT`].
    pub height: Length,
    /// Rows in a span of the washed swatch.
    pub rows: Gauge,
    /// Turns at one side, within [`TURNS`], where she would rather say than have them worked out.
    pub turns: Option<u32>,
    /// How it is turned.
    pub method: Method,
    /// Where the round begins.
    pub begins: Begins,
}

impl Question {
    /// The usual question: the turns worked out, German short rows, the round begun in the middle of the back.
    pub const fn about(across: Across, height: Length, rows: Gauge) -> Self {
        Self {
            across,
            height,
            rows,
            turns: None,
            method: Method::German,
            begins: Begins::Middle,
        }
    }
}

/// How wide the back is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Across {
    /// So many stitches, within [`ACROSS`].
    Stitches(u32),
    /// So wide, at this gauge.
    Width {
        /// Within [`WIDTH`].
        width: Length,
        /// Stitches in a span of the washed swatch.
        gauge: Gauge,
    },
}

/// How a short row is turned.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Method {
    /// One stitch further, turned, and that stitch pulled up into a double one.
    German,
    /// The next stitch wrapped, and turned.
    Wrap,
}

crate::choice!(Method starts German { German = "german", Wrap = "wrap" });

/// Where the round begins.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Begins {
    /// In the middle of the back.
    Middle,
    /// At the edge of the back, whose stitches come first.
    Edge,
}

crate::choice!(Begins starts Middle { Middle = "middle", Edge = "edge" });

/// The short rows.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// Stitches that the short rows go over in the end: an even number, both sides alike.
    pub across: u32,
    /// A stitch of an odd number that stays out.
    pub left_out: bool,
    /// How far from the middle each turn is, in stitches, the nearest first; the same at both sides.
    pub turns: Vec<u32>,
    /// The short rows in the order they are worked.
    pub rows: Vec<ShortRow>,
    /// Stitches from the last turn to where the round begins, its double stitch not counted.
    pub home: u32,
    /// How much higher the middle is in the end.
    pub raised: Length,
    /// By how much that is over what was wanted; negative when it is under.
    pub off: Length,
}

/// One short row.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct ShortRow {
    /// Its number, counted from 1.
    pub row: u32,
    /// The side that faces the knitter.
    pub side: Side,
    /// Whether it begins with the double stitch of the turn before.
    pub double: bool,
    /// What is worked before the turn, the double stitch not counted.
    pub worked: Row,
    /// How far from the middle it is turned, in stitches.
    pub from_middle: u32,
}

/// Works out the short rows.
///
/// # Errors
/// Every [`Problem`] has a field of [`Name`], and the nearest value that can be had.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    let mut check = Check::default();
    check_question(&mut check, question);
    check.done()?;
    let all = across(question.across);
    let turns = turns(question, all / 2)?;
    let gone = |turn: u32| turn * (all / 2 / turns) + (turn * (all / 2 % turns)).div_ceil(turns);
    let places: Vec<u32> = (1..=turns).map(gone).collect();
    let raised = Rate::of(question.rows).width_of(2 * turns);
    let to_the_edge = match question.begins {
        Begins::Middle => 0,
        Begins::Edge => all / 2,
    };
    Ok(Answer {
        across: all / 2 * 2,
        left_out: all % 2 == 1,
        rows: short_rows(question.method, &places, to_the_edge),
        home: all / 2 - to_the_edge,
        turns: places,
        raised,
        off: raised.saturating_sub(question.height),
    })
}

fn check_question(check: &mut Check, question: &Question) {
    match question.across {
        Across::Stitches(stitches) => check.count(Name::Stitches, stitches, ACROSS),
        Across::Width { width, gauge } => {
            check.length(Name::Width, width, WIDTH);
            check.gauge(Name::Gauge, gauge);
        }
    }
    check.length(Name::Height, question.height, HEIGHT);
    check.gauge(Name::RowGauge, question.rows);
    if let Some(turns) = question.turns {
        check.count(Name::Turns, turns, TURNS);
    }
}

/// Stitches across the back; of a width the nearest, and two at the least.
fn across(across: Across) -> u32 {
    match across {
        Across::Stitches(stitches) => stitches,
        Across::Width { width, gauge } => nearest(gauge.count_over(width)).max(ACROSS.least),
    }
}

/// The nearest whole number; no count of a checked question is past what it holds.
fn nearest(count: f64) -> u32 {
    count.round() as u32
}

/// Turns at one side: two rows each, and a stitch at the least between two of them.
fn turns(question: &Question, half: u32) -> Result<u32, Vec<Problem>> {
    let wanted = question.turns.unwrap_or_else(|| {
        let rows = question.rows.count_over(question.height);
        nearest(rows / 2.0).max(1)
    });
    let most = half.min(TURNS.most);
    if wanted <= most {
        return Ok(wanted);
    }
    Err(vec![match question.turns {
        Some(_) => Problem::new(Name::Turns, Kind::TooMany { most }),
        None => {
            let most = Amount::Length(Rate::of(question.rows).width_of(2 * most));
            Problem::new(Name::Height, Kind::TooLarge { most })
        }
    }])
}

/// Stitches that a turn itself takes to be worked: the one that becomes the double stitch.
const fn turning(method: Method) -> u32 {
    match method {
        Method::German => 1,
        Method::Wrap => 0,
    }
}

/// There and back for each place of a turn, with so many stitches before the middle of the round's beginning.
fn short_rows(method: Method, places: &[u32], to_the_middle: u32) -> Vec<ShortRow> {
    let mut rows = Vec::new();
    // How far behind the middle the needle is when a row begins; the first begins with the round.
    let mut behind = to_the_middle;
    for (number, place) in (0..).zip(places) {
        for (side, stitch, row) in [
            (Side::Right, Stitch::Knit, 2 * number + 1),
            (Side::Wrong, Stitch::Purl, 2 * number + 2),
        ] {
            let count = behind + place + turning(method);
            rows.push(ShortRow {
                row,
                side,
                double: method == Method::German && row > 1,
                worked: Row {
                    items: vec![Item::Run(Run::new(stitch, count))],
                },
                from_middle: *place,
            });
            behind = *place;
        }
    }
    rows
}

#[cfg(test)]
mod tests;
