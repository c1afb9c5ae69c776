//! The rows that are shaped: where they may lie, how they are shared out, and the instruction that comes of it.

use super::ask::Wanted;
use super::{Knitting, Order, Question, Side};

/// Where shaping rows may lie. They are counted in places: place 1 is the first row that may be shaped at all.
#[derive(Clone, Copy, Debug)]
pub(super) struct Room {
    /// Rows from one place to the next: 2 on right-side rows only.
    unit: u32,
    /// Place `p` is row `p * unit - before`.
    before: u32,
    /// The place of the first shaping row; none when the beginning is a gap like the others.
    start: Option<u32>,
    /// The last place that leaves enough plain rows.
    end: u32,
    /// Plain rows that are kept at the end.
    last: u32,
    /// Whether all gaps are to be alike.
    alike: bool,
}

impl Room {
    pub(super) fn of(question: &Question) -> Self {
        let (unit, before) = match question.knitting {
            Knitting::Flat { next } if question.right_side => (2, u32::from(next == Side::Right)),
            _ => (1, 0),
        };
        let place = |row: u32| (row + before) / unit;
        let end = question.rows.checked_sub(question.last).map_or(0, place);
        Self {
            unit,
            before,
            // The first place at or behind the row that follows the plain ones.
            start: question.first.map(|plain| place(plain + unit)),
            end,
            last: question.last,
            alike: question.order == Order::OneRate,
        }
    }

    /// The row of a place; before the first place, row 0.
    fn row(&self, place: u32) -> u32 {
        (place.saturating_mul(self.unit)).saturating_sub(self.before)
    }

    /// How many rows may be shaped.
    pub(super) fn shapeable(&self) -> u32 {
        (self.end + 1).saturating_sub(self.start.unwrap_or(1))
    }

    /// The fewest rows that so many shaping rows take.
    pub(super) fn fewest_rows(&self, shaping_rows: u32) -> u32 {
        let place = self.start.unwrap_or(1) + shaping_rows.saturating_sub(1);
        self.row(place).saturating_add(self.last)
    }

    /// How the rows from the first shaping row to the last are shared out; from the beginning, where that is a gap like
    /// the others.
    pub(super) fn shared(&self, shaping_rows: u32) -> Shared {
        let (mut span, gaps) = match self.start {
            Some(start) if shaping_rows > 1 => (self.end.saturating_sub(start), shaping_rows - 1),
            Some(_) => (0, 0),
            None => (self.end, shaping_rows),
        };
        let mut longer = span.checked_rem(gaps).unwrap_or(0);
        if self.alike {
            (span, longer) = (span - longer, 0);
        }
        Shared {
            rows: span * self.unit,
            gaps,
            every: span.checked_div(gaps).unwrap_or(0) * self.unit,
            longer,
            by: self.unit,
        }
    }
}

/// How the rows are shared out between gaps, each from one shaping row to the next.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Shared {
    /// Rows from the first shaping row to the last; from the beginning, where that is a gap like the others.
    pub rows: u32,
    /// How many gaps; none when there is one shaping row only.
    pub gaps: u32,
    /// The rows of a short gap: "every so many".
    pub every: u32,
    /// How many gaps are longer.
    pub longer: u32,
    /// How many rows a longer gap has more.
    pub by: u32,
}

impl Shared {
    /// How many gaps are short ones.
    pub const fn short_gaps(self) -> u32 {
        self.gaps.saturating_sub(self.longer)
    }

    /// The rows of a longer gap.
    pub const fn every_longer(self) -> u32 {
        self.every.saturating_add(self.by)
    }
}

/// Some rows plain, then one shaping row; so many times.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Block {
    /// Plain rows, which come first.
    pub plain: u32,
    /// Stitches lost or gained in the shaping row behind them.
    pub change: u32,
    /// How often, in all.
    pub times: u32,
}

/// An instruction over rows, as data: the blocks one after the other, then the plain rows that are left.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Schedule {
    /// Flat or in the round, and the side of row 1.
    pub knitting: Knitting,
    /// Stitches before row 1, where known.
    pub stitches: Option<u32>,
    /// Whether stitches are gained; lost otherwise.
    pub gain: bool,
    /// Plain rows, then one shaping row; so many times.
    pub blocks: Vec<Block>,
    /// Plain rows after the last shaping row.
    pub left: u32,
}

/// One shaping row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Shaped {
    /// Its number; the next row to be worked is row 1.
    pub row: u32,
    /// The side that faces the knitter.
    pub side: Side,
    /// Stitches lost or gained in this row.
    pub change: u32,
    /// Stitches lost or gained up to and with this row.
    pub changed: u32,
    /// Stitches after this row, where known.
    pub stitches: Option<u32>,
}

impl Schedule {
    /// Nothing yet: `rows` plain rows.
    pub(crate) fn plain(knitting: Knitting, stitches: Option<u32>, gain: bool, rows: u32) -> Self {
        Self {
            knitting,
            stitches,
            gain,
            blocks: Vec::new(),
            left: rows,
        }
    }

    /// Makes a shaping row of one of the rows that are left, behind so many plain ones.
    pub(crate) fn push(&mut self, plain: u32, change: u32) {
        self.left = self.left.saturating_sub(plain + 1);
        match self.blocks.last_mut() {
            Some(last) if last.plain == plain && last.change == change => last.times += 1,
            _ => self.blocks.push(Block {
                plain,
                change,
                times: 1,
            }),
        }
    }

    pub(super) fn of(question: &Question, wanted: &Wanted, room: &Room, shared: &Shared) -> Self {
        let mut schedule = Self::plain(question.knitting, question.stitches, wanted.gain, question.rows);
        let Shared {
            gaps,
            every,
            longer,
            by,
            ..
        } = *shared;
        let mut row = 0;
        for count in 1..=wanted.shaping_rows {
            // Gaps before this row, and how many of them are longer.
            let done = count - u32::from(room.start.is_some());
            let long = match question.order {
                Order::CloseFirst | Order::OneRate => (done + longer).saturating_sub(gaps),
                Order::WideFirst => done.min(longer),
                // As many as bring it next to the straight line.
                Order::Mixed => (done * longer).checked_div(gaps).unwrap_or(0),
            };
            let from = room.start.unwrap_or(0) * room.unit;
            let next = (from + done * every + long * by).saturating_sub(room.before);
            let is_last = count == wanted.shaping_rows;
            let change = if is_last { wanted.in_last } else { question.each };
            schedule.push((next - row).saturating_sub(1), change);
            row = next;
        }
        schedule
    }

    /// The shaping rows with their numbers and sides, one by one, in constant memory.
    pub fn rows(&self) -> Rows<'_> {
        Rows {
            schedule: self,
            block: 0,
            times: 0,
            row: 0,
            changed: 0,
        }
    }

    /// How many shaping rows there are.
    pub fn shaping_rows(&self) -> u32 {
        let times = self.blocks.iter().map(|block| block.times);
        times.fold(0, u32::saturating_add)
    }

    /// The numbers of the rows that are not shaped.
    pub fn plain_rows(&self) -> Vec<u32> {
        let (mut plain, mut next) = (Vec::new(), 1);
        for shaped in self.rows() {
            plain.extend(next..shaped.row);
            next = shaped.row.saturating_add(1);
        }
        plain.extend(next..next.saturating_add(self.left));
        plain
    }

    /// Stitches lost or gained when so many rows are done. Two shapings at once are two schedules: the count on the
    /// needle is changed by the sum of both.
    pub fn changed_by(&self, row: u32) -> u32 {
        let done = self.rows().take_while(|shaped| shaped.row <= row);
        done.last().map_or(0, |shaped| shaped.changed)
    }
}

/// The shaping rows of a [`Schedule`].
#[derive(Clone, Debug)]
pub struct Rows<'a> {
    schedule: &'a Schedule,
    block: usize,
    times: u32,
    row: u32,
    changed: u32,
}

impl Iterator for Rows<'_> {
    type Item = Shaped;

    fn next(&mut self) -> Option<Shaped> {
        let Schedule { knitting, gain, .. } = *self.schedule;
        let mut block = self.schedule.blocks.get(self.block)?;
        while self.times >= block.times {
            (self.block, self.times) = (self.block + 1, 0);
            block = self.schedule.blocks.get(self.block)?;
        }
        self.times += 1;
        // A schedule of our own never comes near these limits; one that somebody made up must not crash.
        self.row = self.row.saturating_add(block.plain).saturating_add(1);
        self.changed = self.changed.saturating_add(block.change);
        let changed = self.changed;
        let after = |stitches: u32| match gain {
            true => stitches.saturating_add(changed),
            false => stitches.saturating_sub(changed),
        };
        Some(Shaped {
            row: self.row,
            side: knitting.side(self.row),
            change: block.change,
            changed,
            stitches: self.schedule.stitches.map(after),
        })
    }
}
