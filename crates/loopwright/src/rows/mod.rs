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
//! assert_eq!((answer.pick.rows, answer.repeats), (110, 9));
//! assert_eq!(answer.pick.length, Length::from_nm(392_857_143));
//! // 60 rows at 30 are 20 cm: on course, though 60 at 28 would be 21.4 cm.
//! let course = answer.course.unwrap();
//! assert_eq!((course.should_be, course.to_go), (cm(20), 50));
//! ```

mod choices;
mod course;
mod follow;
mod note;

pub use choices::{Asked, Fabric, Name, Turning, Wanted};
pub use course::{Course, Standing};
pub use follow::{ChartRow, Doing, RidgeRow, plan};
pub use note::Note;

use crate::bounds::Bounds;
use crate::cast_on::WIDTH;
use crate::check::Check;
use crate::every::Every;
use crate::problem::{Kind, Problem};
use crate::spacing::Fraction;
use crate::terms::Range;
use crate::units::rate::{Quotient, Rate};
use crate::units::{Amount, Gauge, Length};

/// How many rows there may be.
pub const ROWS: Bounds<u32> = Bounds::new(1, 20_000);

/// Rows of one repeat of a chart.
pub const REPEAT: Bounds<u32> = Bounds::new(1, 1_000);

/// After which row of a repeat it may end; 0 for whole repeats.
pub const END_AFTER: Bounds<u32> = Bounds::new(0, REPEAT.most);

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
    /// Rows of the *washed* swatch in this very fabric: [`Gauge::COUNTS`] over [`Gauge::SPANS`].
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
    /// Plain rows, back and forth, without a chart: the least of everything.
    pub const fn about(ask: Ask, gauge: Gauge) -> Self {
        Self {
            ask,
            gauge,
            unwashed: None,
            garter: false,
            round: false,
            repeat: REPEAT.least,
            set_up: SET_UP.least,
            end_after: END_AFTER.least,
            edges: EDGES.least,
            tape: None,
        }
    }

    /// The rows that end as they should, none of them nothing.
    fn ends(&self) -> Every {
        let ends = Every {
            least: self.rows_outside_repeats(),
            step: self.repeat,
        };
        // A ridge is two rows, so of an odd repeat every second end is one of garter; of an even one all or none.
        let ends = if self.garter { ends.of_parity(0) } else { ends };
        Every {
            least: if ends.least == 0 { ends.step } else { ends.least },
            ..ends
        }
    }

    /// The rows without the edges that make a length.
    fn exact(&self, length: Length, rate: Rate) -> Quotient {
        let Quotient { over, under } = rate.count_over(length);
        let over = over - i128::from(self.edges) * under;
        Quotient { over, under }
    }

    /// How long so many rows are, with the edges.
    fn length(&self, rows: u32, rate: Rate) -> Length {
        rate.width_of(rows.saturating_add(self.edges))
    }

    /// Rows beside the whole repeats.
    const fn rows_outside_repeats(&self) -> u32 {
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
    /// By how much its length is over what was wanted; negative when it is under.
    pub off: Length,
    /// Whole ridges in them, if it is garter.
    pub ridges: u32,
    /// Whole repeats of the chart, after its set-up rows.
    pub repeats: u32,
    /// Rows of the next repeat that are worked; 0 when it ends with a whole one.
    pub row: u32,
    /// The next below that ends as asked.
    pub below: Option<Count>,
    /// The next above.
    pub above: Option<Count>,
    /// Whether `above` is exactly as near as the pick.
    pub as_near: bool,
    /// Whether the pick ends as asked: in the right row of the chart, and in garter on a whole ridge where the chart
    /// ever does.
    pub ends: bool,
    /// How long the pick is if the swatch was read half a row wrong, either way.
    pub range: Range,
    /// The number that would fit exactly, without edges; seldom whole.
    pub ideal: Fraction,
    /// Ahead or behind; none without a tape.
    pub course: Option<Course>,
    /// What else she should know.
    pub notes: Vec<Note>,
}

/// A number of rows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Count {
    /// All rows or rounds.
    pub rows: u32,
    /// How long they are after washing, with the edges that are measured along.
    pub length: Length,
}

impl Count {
    /// Whether the last of them is a right-side row, with row 1 on the right side.
    pub const fn ends_right_side(&self) -> bool {
        self.rows % 2 == 1
    }
}

/// Works out rows and lengths.
///
/// # Errors
/// Every [`Problem`] has a field of [`Name`]. A row to end after without a chart misses the repeat.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    check(question)?;
    let (ends, rate) = (question.ends(), Rate::of(question.gauge));
    let (rows, as_near) = match question.ask {
        Ask::Length(length) => ends.nearest(question.exact(length, rate)),
        Ask::Rows(rows) => (rows, false),
        Ask::Ridges(ridges) => (ridges * 2, false),
        Ask::Repeats(repeats) => (question.rows_outside_repeats() + repeats * question.repeat, false),
    };
    if rows > ROWS.most {
        let most = Amount::Length(question.length(ROWS.most, rate));
        return Err(vec![Problem::new(Name::Length, Kind::TooLarge { most })]);
    }
    let count = |rows: u32| Count {
        rows,
        length: question.length(rows, rate),
    };
    let pick = count(rows);
    let wanted = match question.ask {
        Ask::Length(length) => length,
        Ask::Rows(_) | Ask::Ridges(_) | Ask::Repeats(_) => pick.length,
    };
    let past = rows.saturating_sub(question.set_up);
    let above = ends.above(rows);
    let mut answer = Answer {
        pick,
        off: pick.length.saturating_sub(wanted),
        ridges: rows / 2,
        repeats: past / question.repeat,
        row: past % question.repeat,
        below: ends.below(rows).map(count),
        above: (above <= ROWS.most).then(|| count(above)),
        as_near,
        ends: ends.allows(rows),
        range: Range {
            least: question.length(rows, rate.misread(1)),
            most: question.length(rows, rate.misread(-1)),
        },
        ideal: question.exact(wanted, rate).into(),
        course: question.tape.map(|tape| Course::of(question, tape, rows, wanted)),
        notes: Vec::new(),
    };
    answer.notes = note::notes(question, &answer);
    Ok(answer)
}

fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let mut check = Check::default();
    match question.ask {
        Ask::Length(length) => check.length(Name::Length, length, WIDTH),
        Ask::Rows(rows) => check.count(Name::Rows, rows, ROWS),
        Ask::Ridges(ridges) => check.count(Name::Ridges, ridges, Bounds::new(1, ROWS.most / 2)),
        Ask::Repeats(repeats) => {
            let room = ROWS.most.saturating_sub(question.rows_outside_repeats());
            check.count(Name::Repeats, repeats, Bounds::new(1, room / question.repeat.max(1)));
        }
    }
    check.gauge(Name::Gauge, question.gauge);
    check.gauge_if_any(Name::Unwashed, question.unwashed);
    check.count(Name::Repeat, question.repeat, REPEAT);
    check.count(Name::SetUp, question.set_up, SET_UP);
    // Without a chart there is no row of it to end after.
    match question.repeat {
        1 if question.end_after > 1 => check.missing(Name::Repeat),
        repeat => check.count(Name::EndAfter, question.end_after, Bounds::new(0, repeat)),
    }
    check.count(Name::Edges, question.edges, EDGES);
    if let Some(tape) = question.tape {
        check.count(Name::TapeRows, tape.rows, ROWS);
        check.length(Name::TapeLength, tape.length, WIDTH);
    }
    check.done()
}

#[cfg(test)]
mod tests;
