//! Which numbers of rows end as they should: set-up rows, whole repeats, and perhaps a few rows of one more.

use super::Question;
use crate::gauge::rate::{PARTS, Rate, nearest, to_length};
use crate::units::Length;

/// A number of rows, where it ends and how long it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Count {
    /// All rows or rounds.
    pub rows: u32,
    /// Whole ridges in them, if it is garter.
    pub ridges: u32,
    /// Whole repeats of the chart, after its set-up rows.
    pub repeats: u32,
    /// Rows of the next repeat that are worked; 0 when it ends with a whole one.
    pub row: u32,
    /// Whether the last row is a right-side row, with row 1 on the right side.
    pub ends_right_side: bool,
    /// How long they are after washing, with the edges that are measured along.
    pub length: Length,
    /// By how much that is over what was wanted; negative when it is under.
    pub off: Length,
}

/// The rows that end as they should: `rest`, `rest + of`, `rest + 2 of`, and so on, none of them nothing.
#[derive(Clone, Copy, Debug)]
pub(super) struct Chart {
    repeat: u32,
    set_up: u32,
    pub(super) edges: u32,
    pub(super) of: u32,
    pub(super) rest: u32,
}

impl Chart {
    /// Of a checked question.
    pub(super) fn of(question: &Question) -> Self {
        let Question { repeat, set_up, .. } = *question;
        let (mut of, mut rest) = (repeat, question.beside());
        // A ridge is two rows, so of an odd repeat every second end is one of garter; of an even one all or none.
        if question.garter && of % 2 == 1 {
            rest += of * (rest % 2);
            of *= 2;
        }
        Self {
            repeat,
            set_up,
            edges: question.edges,
            of,
            rest: if rest == 0 { of } else { rest },
        }
    }

    /// The same, measured between the edges.
    pub(super) fn without_edges(self) -> Self {
        Self { edges: 0, ..self }
    }

    /// The rows that come nearest to a length, and the larger where two are equally near.
    pub(super) fn nearest(&self, length: Length, rate: Rate) -> (u32, Option<u32>) {
        // Rows times `under`, less the edges and the fewest rows there can be.
        let under = rate.span * PARTS;
        let fewest = i128::from(self.edges + self.rest) * under;
        let over = rate.count * i128::from(length.to_nm()) - fewest;
        let one = under * i128::from(self.of);
        let (times, left) = (over.div_euclid(one), over.rem_euclid(one));
        if times < 0 {
            return (self.rest, None);
        }
        let to_rows = |times: i128| {
            let rows = i128::from(self.rest) + times * i128::from(self.of);
            u32::try_from(rows).unwrap_or(u32::MAX)
        };
        match (2 * left).cmp(&one) {
            std::cmp::Ordering::Less => (to_rows(times), None),
            std::cmp::Ordering::Equal => (to_rows(times), Some(to_rows(times + 1))),
            std::cmp::Ordering::Greater => (to_rows(times + 1), None),
        }
    }

    /// The next number below that ends as it should.
    pub(super) fn below(&self, rows: u32) -> Option<u32> {
        let past = rows.checked_sub(self.rest + 1)?;
        Some(self.rest + past / self.of * self.of)
    }

    /// The next number above that ends as it should.
    pub(super) fn above(&self, rows: u32) -> Option<u32> {
        let next = match rows.checked_sub(self.rest) {
            Some(past) => self.rest + (past / self.of + 1) * self.of,
            None => self.rest,
        };
        (next <= super::ROWS.most).then_some(next)
    }

    /// How long so many are, with the edges, rounded once.
    pub(super) fn length(&self, rows: u32, rate: Rate) -> Length {
        let all = i128::from(rows) + i128::from(self.edges);
        to_length(nearest(all * PARTS * rate.span, rate.count))
    }

    /// How long they are if the swatch was read so many halves of a row wrong.
    pub(super) fn read_wrong(&self, rows: u32, rate: Rate, halves: i128) -> Length {
        let count = (rate.count + halves * PARTS / 2).max(1);
        self.length(rows, Rate { count, ..rate })
    }

    pub(super) fn count(&self, rows: u32, rate: Rate, wanted: Length) -> Count {
        let length = self.length(rows, rate);
        let past = rows.saturating_sub(self.set_up);
        Count {
            rows,
            ridges: rows / 2,
            repeats: past / self.repeat,
            row: past % self.repeat,
            ends_right_side: rows % 2 == 1,
            length,
            off: length.saturating_sub(wanted),
        }
    }
}
