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

pub mod pace;
mod place;
mod together;

pub use place::{At, Next};
pub use together::{Meeting, Of, Part, Together, Track, together};

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
    /// The row stitch by stitch, where it is written out.
    pub written: Option<Row>,
    /// What happens.
    pub doing: Doing,
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
    /// what is on the needle after it.
    pub fn worked(&self, rows: u32) -> Option<u64> {
        let rows = rows.min(self.rows);
        let mut stitches = self.stitches?;
        let (mut sum, mut done) = (0u64, 0);
        for event in self.events.iter().take_while(|event| event.row <= rows) {
            let plain = event.row.saturating_sub(done).saturating_sub(1);
            sum += u64::from(stitches) * u64::from(plain);
            stitches = event.change.of(stitches);
            sum += u64::from(stitches);
            done = event.row;
        }
        Some(sum + u64::from(stitches) * u64::from(rows.saturating_sub(done)))
    }
}

impl Plan<Shaped> {
    /// The plan of a schedule over so many rows.
    pub fn of_schedule(schedule: &Schedule, rows: u32) -> Self {
        let event = |shaped: Shaped| Event {
            row: shaped.row,
            change: match schedule.gain {
                true => Change::Gain(shaped.change),
                false => Change::Lose(shaped.change),
            },
            written: None,
            doing: shaped,
        };
        Self {
            knitting: schedule.knitting,
            rows,
            stitches: schedule.stitches,
            events: schedule.rows().map(event).collect(),
        }
    }
}

#[cfg(test)]
mod tests;
