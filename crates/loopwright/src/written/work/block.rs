//! Numbered rows in the order of their numbers, with those in between that another line stands for.
//!
//! `Rows 1 and 3: knit`, `Rows 2 and 4: purl` are worked 1, 2, 3, 4; after `Row 1`, `Row 3`, `Even rows: purl` so are rows 2
//! and 4. A number that was there before begins a new block.

use super::super::line::Line;
use super::course::{Course, is_numbered};
use super::{MOST_ROWS, Outcome};
use crate::terms::Side;
use std::collections::BTreeMap;

impl Course<'_> {
    /// Works the block that begins at a line, and says behind which line it ends.
    pub fn block(&mut self, at: usize) -> usize {
        let (rows, end) = self.gather(at);
        let (Some(first), Some(last)) = (rows.keys().next().copied(), rows.keys().next_back().copied()) else {
            return end;
        };
        // Rows that go on from the ones before keep those that may be repeated, whatever was worked in between.
        if self
            .numbered
            .keys()
            .next_back()
            .is_some_and(|highest| first <= *highest)
        {
            self.numbered.clear();
        }
        let from = if (1..first).contains(&self.last) {
            self.last + 1
        } else {
            first
        };
        self.numbered.extend(rows.iter().map(|(row, line)| (*row, *line)));
        let mut next = from;
        for row in rows.into_keys() {
            self.between(next, row);
            self.numbered_row(row);
            next = row.saturating_add(1);
        }
        self.last = last;
        end
    }

    /// The rows of the block, each with its line, and the line behind it.
    fn gather(&mut self, at: usize) -> (BTreeMap<u32, usize>, usize) {
        let mut rows = BTreeMap::new();
        let mut everys = Vec::new();
        let mut end = at;
        while let Some(line) = self.pattern.lines.get(end) {
            let Some(label) = line.label.as_ref().filter(|label| is_numbered(label)) else {
                break;
            };
            if label.many().is_some_and(|many| many > MOST_ROWS) {
                self.fail(end, Outcome::Endless);
                end += 1;
                continue;
            }
            let named = || label.rows.iter().flat_map(|(first, last)| *first..=*last);
            if named().any(|row| rows.contains_key(&row)) {
                break;
            }
            rows.extend(named().map(|row| (row, end)));
            everys.extend(label.every.map(|every| (every, end)));
            if let (Some(side), Some((row, _))) = (label.side, label.rows.first()) {
                self.right_is_odd = (row % 2 == 1) == (side == Side::Right);
            }
            end += 1;
        }
        if !everys.is_empty() {
            self.everys = everys;
        }
        (rows, end)
    }

    /// Works the rows from one up to another that lines such as "even rows" stand for.
    pub fn between(&mut self, from: u32, to: u32) {
        if self.everys.is_empty() || u64::from(to.saturating_sub(from)) > MOST_ROWS {
            return;
        }
        for row in from..to {
            if self.line_of(row).is_some() {
                self.numbered_row(row);
            }
        }
    }

    /// One row by its number, as its line says, or as that says another one is.
    fn numbered_row(&mut self, row: u32) {
        let Some(at) = self.line_of(row) else { return };
        self.last = row;
        let as_before = self.pattern.lines.get(at).and_then(Line::as_before);
        match as_before {
            Some((again, place)) => self.numbered_as_before(row, at, again, place),
            None => self.row(at),
        }
    }
}
