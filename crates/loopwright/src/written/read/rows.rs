//! Rows that are worked again: `rep rows 1-2 3 times more`, `rep last 2 rows until 96 sts rem`, `as row 2`.

use super::super::line::{Amount, RowsAgain, RowsOften, WhichRows};
use super::super::token::Kind;
use super::super::vocabulary::{Key, Meaning};
use super::Reader;

impl Reader<'_> {
    /// Behind "rep": which rows, and how often; as often as the line names rows where that is not said.
    pub(super) fn rows_again(&mut self) -> Option<RowsAgain> {
        self.take(Key::Repeat).then_some(())?;
        self.skip(&[Key::The]);
        let rows = if self.take(Key::Last) || self.take(Key::These) {
            let many = match self.here() {
                Some(Kind::Number(many)) => {
                    self.at += 1;
                    many
                }
                Some(Kind::Word(Meaning::Number(many))) => {
                    self.at += 1;
                    many
                }
                _ => 1,
            };
            (self.take(Key::Row) || self.take(Key::Round)).then_some(WhichRows::Last(many))?
        } else {
            WhichRows::Numbered(self.numbers_of_rows()?)
        };
        if let Some(length) = self.attempt(Self::length) {
            let often = RowsOften::ToLength(length);
            return Some(RowsAgain { rows, often });
        }
        if self.take(Key::Until) {
            let often = RowsOften::Until(self.wanted()?);
            self.attempt(Self::ending_with);
            return Some(RowsAgain { rows, often });
        }
        let often = match self.attempt(Self::times) {
            Some((times, counted)) => RowsOften::Times(times, counted),
            None => RowsOften::Named,
        };
        Some(RowsAgain { rows, often })
    }

    /// Behind "until": `96 sts rem`, `there are 75 sts`, `you have 75 sts on the needle`.
    fn wanted(&mut self) -> Option<Amount> {
        let is_told = [["there", "are"], ["you", "have"]]
            .iter()
            .any(|words| self.take_words(words));
        let amount = self.amount()?;
        self.take(Key::Stitches).then_some(())?;
        let on_needle = self.attempt(|reader| {
            reader.take(Key::On).then_some(())?;
            reader.skip(&[Key::The]);
            reader.take(Key::Needle).then_some(())
        });
        (self.take(Key::Rest) || is_told || on_needle.is_some()).then_some(amount)
    }

    /// `as row 2`, `same as rows 1-4`, `work as for row 2`.
    pub(super) fn as_rows(&mut self) -> Option<RowsAgain> {
        let is_work = matches!(self.here(), Some(Kind::Word(Meaning::Stitch(stitch))) if stitch.written == "work");
        self.at += usize::from(is_work);
        let is_same = self.take(Key::Same);
        (self.take(Key::As) || is_same).then_some(())?;
        self.skip(&[Key::For]);
        let rows = WhichRows::Numbered(self.numbers_of_rows()?);
        let often = RowsOften::Named;
        Some(RowsAgain { rows, often })
    }

    /// `row 2`, `rows 1-4`, `1st and 2nd rows`.
    fn numbers_of_rows(&mut self) -> Option<Vec<(u32, u32)>> {
        if self.take(Key::Row) || self.take(Key::Round) {
            return self.row_numbers();
        }
        self.ordinal_rows().map(|(_, rows)| rows)
    }

    /// `1`, `1-4`, `1, 3 and 5`, `1 & 2`. A number that says how often is none of them.
    pub(super) fn row_numbers(&mut self) -> Option<Vec<(u32, u32)>> {
        let mut rows = vec![self.row_range()?];
        while let Some(next) = self.attempt(|reader| {
            let comma = reader.take_mark(',') || reader.take_mark('/');
            (reader.take(Key::And) || comma).then_some(())?;
            reader.skip(&[Key::Row, Key::Round]);
            let next = reader.row_range()?;
            (!reader.is_key(reader.at, Key::Times) && !reader.is_key(reader.at, Key::More)).then_some(next)
        }) {
            rows.push(next);
        }
        Some(rows)
    }

    fn row_range(&mut self) -> Option<(u32, u32)> {
        let first = self.row_number()?;
        let last = self.attempt(|reader| {
            (reader.take_mark('-') || reader.take(Key::To)).then_some(())?;
            reader.row_number()
        });
        let last = last.unwrap_or(first);
        (first <= last).then_some((first, last))
    }

    fn row_number(&mut self) -> Option<u32> {
        let Some(Kind::Number(number)) = self.here() else {
            return None;
        };
        self.at += 1;
        Some(number)
    }
}
