//! How often, and how far: `3 times`, `twice more`, `to end`, `to last 4 sts`, `to 2 sts before m`.

use super::super::line::{Amount, Counted, Figure, Often, Reach};
use super::super::token::Kind;
use super::super::vocabulary::{Key, Meaning};
use super::Reader;

impl Reader<'_> {
    /// How often a bracket is worked.
    pub(super) fn often(&mut self) -> Option<Often> {
        if let Some((times, counted)) = self.attempt(Self::times) {
            return Some(Often::Times(times, counted));
        }
        self.attempt(Self::reach).map(Often::Reach)
    }

    /// `3 times`, `3 more times`, `twice`, `once more`, `x 3`, `3 times in all`.
    pub(super) fn times(&mut self) -> Option<(Amount, Counted)> {
        let start = self.at;
        let said = [(Key::Once, 1), (Key::Twice, 2), (Key::Thrice, 3)];
        let said = said.into_iter().find(|(key, _)| self.take(*key));
        let (mut counted, amount) = match said {
            Some((_, value)) => (Counted::Unsaid, self.alone(start, value)),
            None => self.numbered_times()?,
        };
        if self.take(Key::More) {
            counted = Counted::More;
        }
        let in_all = self.attempt(|reader| {
            reader.take(Key::In).then_some(())?;
            (reader.take(Key::All) || reader.take(Key::Total)).then_some(())
        });
        Some((amount, if in_all.is_some() { Counted::All } else { counted }))
    }

    fn numbered_times(&mut self) -> Option<(Counted, Amount)> {
        let is_cross =
            |kind: Option<Kind>| matches!(kind, Some(Kind::Mark('×') | Kind::Word(Meaning::Says(Key::Times))));
        if is_cross(self.here()) {
            self.at += 1;
            return self.amount().map(|amount| (Counted::Unsaid, amount));
        }
        let amount = self.amount()?;
        let more = self.take(Key::More);
        is_cross(self.here()).then_some(())?;
        self.at += 1;
        Some((if more { Counted::More } else { Counted::Unsaid }, amount))
    }

    /// A number that stands as a word, from a token to here.
    pub(super) fn alone(&self, start: usize, value: u32) -> Amount {
        let place = self.place_from(start);
        let figures = vec![Figure {
            place,
            value: Some(value),
        }];
        Amount { place, figures }
    }

    /// How far: `to end`, `to last 4 sts`, `to m`, `across`, `all sts`, `all`, `rem sts`, `until 4 sts remain`.
    pub(super) fn reach(&mut self) -> Option<Reach> {
        if self.take(Key::Across) {
            self.row_behind();
            return Some(Reach::End);
        }
        if self.take(Key::All) || self.take(Key::Every) || self.take(Key::Rest) {
            self.skip(&[Key::Of, Key::The]);
            let is_last = matches!(self.here(), None | Some(Kind::Mark('.' | ',' | ';')));
            return (self.take(Key::Stitches) || is_last).then_some(Reach::End);
        }
        if self.take(Key::Until) {
            let amount = self.amount()?;
            self.skip(&[Key::Stitches]);
            return self.take(Key::Rest).then_some(Reach::Last(amount));
        }
        self.take(Key::To).then_some(())?;
        self.skip(&[Key::The]);
        if self.take(Key::End) {
            self.row_behind();
            return Some(Reach::End);
        }
        self.last_so_many().or_else(|| self.attempt(Self::up_to_marker))
    }

    /// `last 4 sts`, `last st`.
    fn last_so_many(&mut self) -> Option<Reach> {
        self.attempt(|reader| {
            reader.take(Key::Last).then_some(())?;
            let start = reader.at;
            let amount = reader.amount();
            let stitches = reader.take(Key::Stitches);
            match amount {
                Some(amount) => Some(Reach::Last(amount)),
                None => stitches.then(|| Reach::Last(reader.alone(start, 1))),
            }
        })
    }

    /// `m`, `next marker`, `2 sts before m`, `BOR`.
    fn up_to_marker(&mut self) -> Option<Reach> {
        let amount = self.amount();
        self.skip(&[Key::Stitches]);
        if amount.is_some() {
            self.take(Key::Before).then_some(())?;
        }
        self.skip(&[Key::The, Key::Next]);
        let is_named = self.take(Key::Beginning);
        let is_marker = self.take(Key::Marker);
        (is_marker || is_named).then_some(Reach::Marker(amount))
    }

    /// `of row`, `of the rnd`, `row`.
    fn row_behind(&mut self) {
        self.attempt(|reader| {
            reader.skip(&[Key::Of, Key::The]);
            (reader.take(Key::Row) || reader.take(Key::Round)).then_some(())
        });
    }
}
