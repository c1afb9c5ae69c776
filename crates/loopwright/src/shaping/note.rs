//! What a knitter should know beside the rows, and the sum as steps. Data only: the page makes the sentences.

use super::ask::Wanted;
use super::schedule::{Room, Schedule};
use super::{Order, Pair, Question, Side};
use crate::row::Stitch;

/// One thing to know.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Note {
    /// One plain row more than asked before the first shaping, which would have fallen on a wrong-side row.
    FirstMoved {
        /// Plain rows there are.
        plain: u32,
    },
    /// One plain row more than asked at the end, since the row it would be shaped in is a wrong-side row.
    OneRowLeft {
        /// Plain rows there are.
        left: u32,
    },
    /// So many of the shaping rows are wrong-side rows.
    WrongSideRows {
        /// How many.
        rows: u32,
    },
    /// The last shaping row changes fewer stitches than the others.
    RestInLast {
        /// How many.
        stitches: u32,
    },
    /// There is only one shaping row, so there is no rate.
    OneShapingRow,
    /// Every row that may be shaped is: it cannot be steeper by these means.
    Steepest,
    /// The bar of a kfb comes behind its stitch, so there is one plain stitch more at the end.
    KfbBar,
    /// There are too few stitches for a pair with these edge stitches.
    NoRoomForPair,
}

/// One line of the sum.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Step {
    /// Stitches to change, over stitches a shaping row: the shaping rows.
    ShapingRows {
        /// Stitches to change.
        amount: u32,
        /// Stitches a shaping row.
        each: u32,
        /// Stitches in the last one.
        in_last: u32,
        /// Shaping rows.
        shaping_rows: u32,
    },
    /// Rows shared between gaps.
    Shared {
        /// From this row, 0 when the beginning is a gap like the others,
        from: u32,
        /// to this one, the last that may be shaped;
        to: u32,
        /// so many gaps;
        gaps: u32,
        /// a short one from shaping row to shaping row: "every so many";
        every: u32,
        /// so many that are longer,
        longer: u32,
        /// by so many rows.
        by: u32,
    },
    /// Rows used, of those there are.
    Used {
        /// The row of the last shaping.
        used: u32,
        /// Rows there are.
        rows: u32,
        /// Plain rows left.
        left: u32,
    },
}

pub(super) fn notes(q: &Question, wanted: &Wanted, room: &Room, schedule: &Schedule, pair: Option<Pair>) -> Vec<Note> {
    let mut notes = Vec::new();
    let plain = schedule.blocks.first().map_or(0, |block| block.plain);
    if q.first.is_some_and(|first| plain > first) {
        notes.push(Note::FirstMoved { plain });
    }
    let left = schedule.left;
    if q.order != Order::OneRate && room.share(wanted.shaping_rows).1 > 0 && left > q.last {
        notes.push(Note::OneRowLeft { left });
    }
    let rows = schedule.rows().filter(|shaped| shaped.side == Side::Wrong).count() as u32;
    if rows > 0 {
        notes.push(Note::WrongSideRows { rows });
    }
    if wanted.in_last < q.each {
        let stitches = wanted.in_last;
        notes.push(Note::RestInLast { stitches });
    }
    if wanted.shaping_rows == 1 {
        notes.push(Note::OneShapingRow);
    }
    if wanted.shaping_rows == room.shapeable() {
        notes.push(Note::Steepest);
    }
    match pair {
        Some(pair) if pair.first == Stitch::Kfb => notes.push(Note::KfbBar),
        None if q.each == 2 && wanted.amount > 1 => notes.push(Note::NoRoomForPair),
        _ => {}
    }
    notes
}

pub(super) fn steps(q: &Question, wanted: &Wanted, room: &Room, used: u32) -> Vec<Step> {
    let Wanted {
        amount,
        shaping_rows,
        in_last,
        ..
    } = *wanted;
    let mut steps = vec![Step::ShapingRows {
        amount,
        each: q.each,
        in_last,
        shaping_rows,
    }];
    let (span, gaps) = room.share(shaping_rows);
    if let (Some(every), Some(longer)) = (span.checked_div(gaps), span.checked_rem(gaps)) {
        let to = used;
        steps.push(Step::Shared {
            from: to.saturating_sub(span * room.unit),
            to,
            gaps,
            every: every * room.unit,
            longer,
            by: room.unit,
        });
    }
    let (rows, left) = (q.rows, q.rows.saturating_sub(used));
    steps.push(Step::Used { used, rows, left });
    steps
}
