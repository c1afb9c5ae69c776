//! An answer told row by row: "round 20 of 60, an increase round: 96 stitches before it, 152 after; 9 plain rounds to the
//! next."
//!
//! Every answer that has rows makes a [`Plan`] of itself. A plan names the rows in which something happens
//! ([`Event`]) and counts the rows between them, which are plain. What happens is a value of the tool that answered
//! (`Doing`): a pair at the edges, a raglan round, a written row; whoever shows it finds the words, with [`Plan::told`].
//! Row 1 is the next row to be worked. The sums are additions, no source is needed.
//!
//! ```
//! use loopwright::follow::Plan;
//! use loopwright::shaping::{Ask, Question, answer};
//!
//! let question = Question { stitches: Some(84), ..Question::about(Ask::Lose(18), 66) };
//! let plan = Plan::of_schedule(&answer(&question).unwrap().schedule, 66);
//! let now = plan.at(9);
//! assert_eq!((now.before, now.after), (Some(82), Some(80)));
//! assert_eq!(now.next.map(|next| (next.rows_between, next.event.row)), Some((7, 17)));
//! ```

pub mod learnt;
mod left;
pub mod pace;
mod place;
mod together;
mod within;

pub use place::{At, Next};
pub use together::{Meeting, Of, Part, Together, Track, together};
pub use within::{Differing, Group, Stretch, repeats, stretches};

use crate::row::Row;
use crate::shaping::{Knitting, Schedule, Shaped};

/// All rows of an answer, and what happens in some of them.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Plan<Doing> {
    /// Flat or in the round, and the side of row 1.
    pub knitting: Knitting,
    /// How many rows there are, plain ones and others.
    pub rows: u32,
    /// Stitches on the needle before row 1, where known.
    pub stitches: Option<u32>,
    /// The rows in which something happens, in their order, each once.
    pub events: Vec<Event<Doing>>,
}

/// A row in which something happens.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Event<Doing> {
    /// Its number.
    pub row: u32,
    /// What it does to the stitches on the needle.
    pub change: Change,
    /// Stitches that are worked in it, where those are not all that are on the needle after it: a short row.
    pub worked: Option<u32>,
    /// The row stitch by stitch, where it is written out.
    pub written: Option<Row>,
    /// What happens.
    pub doing: Doing,
}

impl<Doing> Event<Doing> {
    /// A row that is not written out, and worked to its end.
    pub const fn new(row: u32, change: Change, doing: Doing) -> Self {
        Self {
            row,
            change,
            worked: None,
            written: None,
            doing,
        }
    }
}

/// What a row does to the stitches on the needle.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Change {
    /// So many more.
    Gain(u32),
    /// So many fewer.
    Lose(u32),
    /// As many as before.
    None,
}

impl Change {
    /// The change from one count to another.
    pub const fn between(before: u32, after: u32) -> Self {
        if after > before {
            Self::Gain(after - before)
        } else if after < before {
            Self::Lose(before - after)
        } else {
            Self::None
        }
    }

    /// So many more where stitches are gained; so many fewer otherwise.
    pub const fn of_shaping(gain: bool, stitches: u32) -> Self {
        match gain {
            true => Self::Gain(stitches),
            false => Self::Lose(stitches),
        }
    }

    /// The stitches after it. There are never fewer than none.
    pub const fn of(self, stitches: u32) -> u32 {
        match self {
            Self::Gain(more) => stitches.saturating_add(more),
            Self::Lose(fewer) => stitches.saturating_sub(fewer),
            Self::None => stitches,
        }
    }
}

impl<Doing> Plan<Doing> {
    /// So many plain rows.
    pub const fn plain(knitting: Knitting, rows: u32, stitches: Option<u32>) -> Self {
        Self {
            knitting,
            rows,
            stitches,
            events: Vec::new(),
        }
    }

    /// The same plan, where what happens is told: in words, or by a type that several plans share.
    pub fn told<Told>(&self, tell: impl Fn(&Event<Doing>) -> Told) -> Plan<Told> {
        let event = |event: &Event<Doing>| Event {
            row: event.row,
            change: event.change,
            worked: event.worked,
            written: event.written.clone(),
            doing: tell(event),
        };
        Plan {
            knitting: self.knitting,
            rows: self.rows,
            stitches: self.stitches,
            events: self.events.iter().map(event).collect(),
        }
    }

    /// Stitches on the needle when so many rows are done, where known.
    pub fn stitches_after(&self, rows: u32) -> Option<u32> {
        let done = self.events.iter().take_while(|event| event.row <= rows);
        let stitches = self.stitches?;
        Some(done.fold(stitches, |stitches, event| event.change.of(stitches)))
    }

    /// Stitches that are worked in the first so many rows, where known: the truest measure of how far she is. A row counts
    /// what is on the needle after it, a short row what is worked in it.
    pub fn worked(&self, rows: u32) -> Option<u64> {
        let rows = rows.min(self.rows);
        let (mut sum, mut done, mut stitches) = (0, 0, self.stitches);
        for event in self.events.iter().take_while(|event| event.row <= rows) {
            let plain = event.row.saturating_sub(done).saturating_sub(1);
            sum += in_rows(stitches, plain)?;
            stitches = stitches.map(|stitches| event.change.of(stitches));
            sum += in_rows(event.worked.or(stitches), 1)?;
            done = event.row;
        }
        Some(sum + in_rows(stitches, rows.saturating_sub(done))?)
    }
}

/// Stitches of so many rows, where known; of no row there are none.
fn in_rows(stitches: Option<u32>, rows: u32) -> Option<u64> {
    match rows {
        0 => Some(0),
        _ => Some(u64::from(stitches?) * u64::from(rows)),
    }
}

impl Plan<Shaped> {
    /// The plan of a schedule over so many rows.
    pub fn of_schedule(schedule: &Schedule, rows: u32) -> Self {
        let event = |shaped: Shaped| Event::new(shaped.row, Change::of_shaping(schedule.gain, shaped.change), shaped);
        Self {
            knitting: schedule.knitting,
            rows,
            stitches: schedule.stitches,
            events: schedule.rows().map(event).collect(),
        }
    }
}

#[cfg(test)]
pub mod tests;
