//! Rows and length: "The body is to be 40 cm long and my washed swatch has 28 rows in 10 cm. How many rows is that, and
//! am I on course?"
//!
//! Length times row gauge is the number that would fit exactly: 40 cm x 28 / 10 cm = 112. Where there is a chart the
//! nearest number that ends it as it should is taken: set-up rows, whole repeats, and perhaps so many rows of one more.
//! Two rows of garter are a ridge, so garter takes an even number; in the round a ridge is a knit round and a purl round.
//! **On course.** Counts come from the *washed* gauge, but a tape held to the needle meets unwashed knitting, so it is
//! compared with the unwashed gauge: 30 rows before washing and 28 after make 50 cm by the tape into 53.6 cm.
//! The sums are arithmetic; one row for an edge, and how far a heavy piece drops, are common practice, no source.
//!
//! ```
//! use loopwright::rows::{Ask, Question, Tape, answer};
//! use loopwright::units::{Gauge, Length};
//!
//! let cm = |cm: i64| Length::from_mm(10 * cm);
//! let question = Question {
//!     unwashed: Some(Gauge::of(30, Gauge::TEN_CM)),
//!     repeat: 12,
//!     set_up: 2,
//!     tape: Some(Tape { rows: 60, length: cm(20) }),
//!     ..Question::about(Ask::Length(cm(40)), Gauge::of(28, Gauge::TEN_CM))
//! };
//! let answer = answer(&question).unwrap();
//! // Nearest to 112: 2 + 9 x 12 = 110, which is 39.3 cm when washed.
//! assert_eq!((answer.pick.rows, answer.pick.repeats), (110, 9));
//! assert_eq!(answer.pick.length, Length::from_nm(392_857_143));
//! // 60 rows at 30 are 20 cm: on course, though 60 at 28 would be 21.4 cm.
//! let course = answer.course.unwrap();
//! assert_eq!((course.should_be, course.to_go), (cm(20), 50));
//! ```

mod chart;
mod course;
mod note;

pub use chart::Count;
pub use course::{Course, Standing};
pub use note::{Note, Step};

use crate::bounds::Bounds;
use crate::cast_on::WIDTH;
use crate::gauge::rate::{self, Rate};
use crate::problem::{Kind, Problem};
use crate::units::{Amount, Gauge, Length};
use chart::Chart;

/// How many rows there may be.
pub const ROWS: Bounds<u32> = Bounds::new(1, 20_000);

/// Rows of one repeat of a chart.
pub const REPEAT: Bounds<u32> = Bounds::new(1, 1_000);

/// Rows of a chart before its first repeat.
pub const SET_UP: Bounds<u32> = Bounds::new(0, 1_000);

/// Edges that are measured along: the cast-on, the bind-off, or both. Each is about as high as one row. Common
/// practice, no source.
pub const EDGES: Bounds<u32> = Bounds::new(0, 2);

/// By how much a long piece drops under its own weight when worn, in percent, in cotton or superwash wool. Common
/// practice, no source.
pub const DROP: Bounds<u32> = Bounds::new(3, 5);

/// From what length on that is said. Common practice, no source.
pub const LONG: Length = Length::from_mm(500);

/// What is wanted, the gauges, and how the rows may end.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// A length, or a number of rows, ridges or repeats.
    pub ask: Ask,
    /// Rows of the *washed* swatch in this very fabric: [`Gauge::COUNTS`] over [`crate::cast_on::SPAN`].
    pub gauge: Gauge,
    /// Rows of the swatch before washing, for the tape in mid-knit.
    pub unwashed: Option<Gauge>,
    /// Garter stitch: two rows a ridge.
    pub garter: bool,
    /// In the round, or back and forth with row 1 on the right side.
    pub round: bool,
    /// Rows of one repeat of the chart, within [`REPEAT`]; 1 when any number will do, 2 to end after a wrong-side row.
    pub repeat: u32,
    /// Rows before the first repeat, within [`SET_UP`].
    pub set_up: u32,
    /// End after this row of the repeat; 0, or as many as the repeat has, for whole repeats.
    pub end_after: u32,
    /// How many edges are measured along, within [`EDGES`].
    pub edges: u32,
    /// What the tape says in mid-knit.
    pub tape: Option<Tape>,
}

impl Question {
    /// Plain rows, back and forth, without a chart.
    pub const fn about(ask: Ask, gauge: Gauge) -> Self {
        Self {
            ask,
            gauge,
            unwashed: None,
            garter: false,
            round: false,
            repeat: 1,
            set_up: 0,
            end_after: 0,
            edges: 0,
            tape: None,
        }
    }

    /// Rows beside the whole repeats.
    const fn beside(&self) -> u32 {
        let Self { repeat, end_after, .. } = *self;
        let after = if end_after < repeat { end_after } else { 0 };
        self.set_up.saturating_add(after)
    }
}

/// From which side the sum is done.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Ask {
    /// How many rows make this washed length, within [`WIDTH`].
    Length(Length),
    /// How long so many rows are, within [`ROWS`]; where they end need not suit the chart.
    Rows(u32),
    /// How long so many ridges of garter are: two rows each.
    Ridges(u32),
    /// How long so many whole repeats are, with the set-up rows, and the rows after them if there are any.
    Repeats(u32),
}

/// What the tape says in mid-knit, on the needle and unwashed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Tape {
    /// Rows that are done, within [`ROWS`].
    pub rows: u32,
    /// How long they are, without an edge; within [`WIDTH`].
    pub length: Length,
}

/// How many rows, and how long.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// The nearest number that ends as asked, the smaller of two equally near; or the number that was asked about.
    pub pick: Count,
    /// The next below that ends as asked.
    pub below: Option<Count>,
    /// The next above.
    pub above: Option<Count>,
    /// How long the pick may be at the least, if the swatch was read half a row wrong.
    pub least: Length,
    /// And at the most.
    pub most: Length,
    /// Ahead or behind; none without a tape.
    pub course: Option<Course>,
    /// What else she should know.
    pub notes: Vec<Note>,
    /// The sum.
    pub steps: Vec<Step>,
}

/// Works out rows and lengths.
///
/// # Errors
/// Every [`Problem`] has the field `length`, `rows`, `ridges`, `repeats`, `gauge`, `unwashed`, `repeat`, `set_up`, `end_after`,
/// `edges`, `tape_rows` or `tape_length`.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    check(question)?;
    let chart = Chart::of(question);
    let rate = Rate::of(question.gauge);
    let (rows, wanted, tie) = match question.ask {
        Ask::Length(length) => {
            let (rows, tie) = chart.nearest(length, rate);
            (rows, Some(length), tie)
        }
        Ask::Rows(rows) => (rows, None, None),
        Ask::Ridges(ridges) => (ridges * 2, None, None),
        Ask::Repeats(repeats) => (question.beside() + repeats * question.repeat, None, None),
    };
    if rows > ROWS.most {
        let most = chart.length(ROWS.most, rate);
        return Err(vec![Problem {
            field: "length",
            kind: Kind::TooLarge {
                most: Amount::Length(most),
            },
        }]);
    }
    let wanted = wanted.unwrap_or(chart.length(rows, rate));
    let count = |rows: u32| chart.count(rows, rate, wanted);
    let (pick, off) = (count(rows), |halves| chart.read_wrong(rows, rate, halves));
    let course = question
        .tape
        .map(|tape| Course::of(question, &chart, tape, &pick, wanted));
    Ok(Answer {
        below: chart.below(rows).map(count),
        above: chart.above(rows).map(count),
        least: off(1),
        most: off(-1),
        notes: note::notes(question, &chart, &pick, tie.map(count), course.as_ref()),
        steps: note::steps(question, &chart, &pick, wanted, course.as_ref()),
        pick,
        course,
    })
}

fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let ask = match question.ask {
        Ask::Length(length) => Problem::of_length("length", length, WIDTH),
        Ask::Rows(rows) => Problem::of_count("rows", rows, ROWS),
        Ask::Ridges(ridges) => Problem::of_count("ridges", ridges, Bounds::new(1, ROWS.most / 2)),
        Ask::Repeats(repeats) => {
            let most = ROWS.most.saturating_sub(question.beside()) / question.repeat.max(1);
            Problem::of_count("repeats", repeats, Bounds::new(1, most))
        }
    };
    let (tape, ends) = (question.tape, Bounds::new(0, question.repeat));
    rate::gather(&[
        ask,
        rate::check("gauge", question.gauge),
        question.unwashed.and_then(|gauge| rate::check("unwashed", gauge)),
        Problem::of_count("repeat", question.repeat, REPEAT),
        Problem::of_count("set_up", question.set_up, SET_UP),
        Problem::of_count("end_after", question.end_after, ends),
        Problem::of_count("edges", question.edges, EDGES),
        tape.and_then(|tape| Problem::of_count("tape_rows", tape.rows, ROWS)),
        tape.and_then(|tape| Problem::of_length("tape_length", tape.length, WIDTH)),
    ])
}

#[cfg(test)]
mod tests;
