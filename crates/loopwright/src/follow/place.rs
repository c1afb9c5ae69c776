//! One row of a plan, with what stands before and behind it.

use super::{Event, Plan};
use crate::terms::Side;

/// A row of a plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct At<'a, Doing> {
    /// Its number; the first row is row 1.
    pub row: u32,
    /// The side that faces the knitter.
    pub side: Side,
    /// Stitches on the needle before it, where known.
    pub before: Option<u32>,
    /// Stitches on the needle after it, where known.
    pub after: Option<u32>,
    /// What happens in it; nothing in a plain row.
    pub event: Option<&'a Event<Doing>>,
    /// The next row behind it in which something happens.
    pub next: Option<Next<'a, Doing>>,
}

/// The next row in which something happens.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Next<'a, Doing> {
    /// What happens there.
    pub event: &'a Event<Doing>,
    /// How many plain rows come before it, this one not counted.
    pub rows_between: u32,
}

impl<Doing> Plan<Doing> {
    /// A row of the plan. Behind the last row there is nothing to do, and that is what is answered there.
    pub fn at(&self, row: u32) -> At<'_, Doing> {
        let behind = self.events.partition_point(|event| event.row <= row);
        let next = self.events.get(behind).map(|event| Next {
            event,
            rows_between: event.row.saturating_sub(row).saturating_sub(1),
        });
        At {
            row,
            side: self.knitting.side(row),
            before: self.stitches_after(row.saturating_sub(1)),
            after: self.stitches_after(row),
            event: self.event_in(row),
            next,
        }
    }

    /// What happens in a row; nothing in a plain one.
    pub fn event_in(&self, row: u32) -> Option<&Event<Doing>> {
        let place = self.events.binary_search_by_key(&row, |event| event.row).ok()?;
        self.events.get(place)
    }

    /// Whether all rows are done when so many are.
    pub const fn is_done(&self, rows: u32) -> bool {
        rows >= self.rows
    }
}
