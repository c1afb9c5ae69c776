//! Several plans knitted at the same time: "at the same time as the armhole, from its row 21, shape the neck".
//!
//! One plan is the first, and its stitches are those on the needle. Each other one is a [`Track`]: it begins in a row of the
//! first and adds what its own rows change. So the stitches on the needle after a row are those that the first began with,
//! and the sum of all changes in all tracks up to that row. What a track counts by itself is not asked: both count the same
//! needle. In which order the tracks are named makes no difference.
//!
//! Tracks that shape the same stitches from several edges may come to an end of them: they *meet*. What counts as meeting is
//! only what is certainly not to be knitted, whatever the technique ([`Meeting`]): a row that takes away more stitches than
//! are on the needle before it, and a row that leaves none while rows are still to come. A decrease works two stitches to
//! leave one, but a bind-off takes away the last one too, and a plan does not say which of them it means: so a row may take
//! away all. Stitches that are added in a row are not there yet for its decreases. The sums are additions, no source is
//! needed.
//!
//! ```
//! use loopwright::follow::{Plan, Track, together};
//! use loopwright::shaping::{Ask, Question, answer};
//!
//! let plan = |lose, rows, stitches| {
//!     let question = Question { stitches, ..Question::about(Ask::Lose(lose), rows) };
//!     Plan::of_schedule(&answer(&question).unwrap().schedule, rows)
//! };
//! let armhole = plan(12, 60, Some(50));
//! let neck = Track { from: 31, plan: plan(10, 20, None) };
//! let both = together(&armhole, &[neck]);
//! assert_eq!(both.plan.rows, 60);
//! assert_eq!(both.plan.stitches_after(60), Some(50 - 12 - 10));
//! assert_eq!(both.meeting, None);
//! ```

use super::{Change, Event, Plan};
use crate::row::Row;
use crate::shaping::Knitting;
use std::collections::BTreeMap;

/// A plan that begins in a row of another one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Track<Doing> {
    /// The row of the first plan that is row 1 of this one.
    pub from: u32,
    /// What is knitted.
    pub plan: Plan<Doing>,
}

/// What one of several plans does in a row.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Part<Doing> {
    /// Which of them: the first, or a track by its place.
    pub of: Of,
    /// What it changes.
    pub change: Change,
    /// The row stitch by stitch, where it is written out; it counts the stitches that its own plan knows.
    pub written: Option<Row>,
    /// Stitches that are worked in it, where it is a short row.
    pub worked: Option<u32>,
    /// What happens.
    pub doing: Doing,
}

/// One of several plans.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Of {
    /// The first.
    First,
    /// The track in this place, the first being 0.
    Track(usize),
}

/// Several plans as one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Together<Doing> {
    /// All rows, each with what every plan does in it. From the row in which they meet its counts mean nothing.
    pub plan: Plan<Vec<Part<Doing>>>,
    /// The first row that cannot be knitted; none where there is none, or the stitches are not known.
    pub meeting: Option<Meeting>,
    /// The tracks whose first row faces the other side than the row in which they begin, where both are knitted flat.
    pub turned: Vec<usize>,
}

/// The first row that cannot be knitted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Meeting {
    /// Its number.
    pub row: u32,
    /// Stitches on the needle before it.
    pub before: u32,
    /// Stitches that all plans take away in it.
    pub takes: u32,
}

/// Several plans as one: the first, and what is knitted at the same time.
pub fn together<Doing: Clone>(first: &Plan<Doing>, tracks: &[Track<Doing>]) -> Together<Doing> {
    let mut rows: BTreeMap<u32, Vec<Part<Doing>>> = BTreeMap::new();
    let all = std::iter::once((Of::First, 1, first));
    let others = tracks.iter().enumerate();
    let others = others.map(|(place, track)| (Of::Track(place), track.from, &track.plan));
    for (of, from, plan) in all.chain(others) {
        for event in &plan.events {
            let row = row_of_first(from, event.row);
            rows.entry(row).or_default().push(part(of, event));
        }
    }
    let ends = tracks.iter().map(|track| row_of_first(track.from, track.plan.rows));
    let plan = Plan {
        knitting: first.knitting,
        rows: ends.fold(first.rows, u32::max),
        stitches: first.stitches,
        events: rows.into_iter().map(|(row, parts)| as_one(row, parts)).collect(),
    };
    let turned = tracks
        .iter()
        .enumerate()
        .filter(|(_, track)| is_turned(first.knitting, track));
    Together {
        meeting: meeting(&plan),
        turned: turned.map(|(place, _)| place).collect(),
        plan,
    }
}

/// Whether both are knitted back and forth and a track begins on the other side. In the round there is one side.
fn is_turned<Doing>(first: Knitting, track: &Track<Doing>) -> bool {
    match (first, track.plan.knitting) {
        (Knitting::Flat { .. }, Knitting::Flat { next }) => first.side(track.from) != next,
        (Knitting::Round, _) | (_, Knitting::Round) => false,
    }
}

/// The row of the first plan in which a track that begins in row `from` works its row `row`.
const fn row_of_first(from: u32, row: u32) -> u32 {
    from.saturating_sub(1).saturating_add(row)
}

fn part<Doing: Clone>(of: Of, event: &Event<Doing>) -> Part<Doing> {
    Part {
        of,
        change: event.change,
        written: event.written.clone(),
        worked: event.worked,
        doing: event.doing.clone(),
    }
}

/// A row in which several plans do something. It is written out by each of them and not as a whole.
fn as_one<Doing>(row: u32, parts: Vec<Part<Doing>>) -> Event<Vec<Part<Doing>>> {
    // A short row that one of them works alone is as short as it says; where others work in it too, all that is on the needle is
    // counted.
    let worked = match &*parts {
        [alone] => alone.worked,
        _ => None,
    };
    Event {
        worked,
        ..Event::new(row, Change::between(takes(&parts), gives(&parts)), parts)
    }
}

fn takes<Doing>(parts: &[Part<Doing>]) -> u32 {
    parts.iter().fold(0, |sum, part| match part.change {
        Change::Lose(fewer) => sum.saturating_add(fewer),
        Change::Gain(_) | Change::None => sum,
    })
}

fn gives<Doing>(parts: &[Part<Doing>]) -> u32 {
    parts.iter().fold(0, |sum, part| match part.change {
        Change::Gain(more) => sum.saturating_add(more),
        Change::Lose(_) | Change::None => sum,
    })
}

fn meeting<Doing>(plan: &Plan<Vec<Part<Doing>>>) -> Option<Meeting> {
    let mut before = plan.stitches?;
    for event in &plan.events {
        let takes = takes(&event.doing);
        let after = event.change.of(before);
        let is_over_too_soon = takes > 0 && after == 0 && event.row < plan.rows;
        if takes > before || is_over_too_soon {
            let row = event.row;
            return Some(Meeting { row, before, takes });
        }
        before = after;
    }
    None
}

#[cfg(test)]
mod tests;
