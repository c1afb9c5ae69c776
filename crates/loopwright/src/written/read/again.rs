//! Asterisks and what is repeated from them: `*k2, p2; rep from * to end`, `*k2, p2* 3 times`, `rep from * to * twice more`.

use super::super::fault::{Fault, FaultKind};
use super::super::line::{Counted, Doing, Item, Often, Reach, Repeat};
use super::super::place::Place;
use super::super::token::Kind;
use super::super::vocabulary::Key;
use super::Reader;

/// An asterisk that nothing was repeated from yet.
pub(super) struct OpenStar {
    /// How many asterisks it is.
    many: u8,
    /// Before which item it stands.
    before: usize,
    /// Where it is written.
    pub place: Place,
}

impl Reader<'_> {
    /// An asterisk opens what is repeated, or closes it.
    pub(super) fn star(&mut self, many: u8, stars: &mut Vec<OpenStar>, items: &mut Vec<Item>) {
        self.at += 1;
        let place = self.place_from(self.at - 1);
        let Some(open) = stars.iter().rposition(|star| star.many == many) else {
            let before = items.len();
            return stars.push(OpenStar { many, before, place });
        };
        // `*k2, p2*; rep from * to * 3 times` says the same as `*k2, p2* 3 times`, but for what the times count.
        let reading = self.attempt(|reader| {
            while reader.take_mark(',') || reader.take_mark(';') {}
            reader.take(Key::Repeat).then_some(())?;
            reader.named_stars();
            reader.often()
        });
        let often = match reading {
            Some(often) => Some(often),
            None => self.often().map(in_all),
        };
        self.close(stars.remove(open), place, often, items);
    }

    /// Skips `from *`, `from * to *`, and says how many asterisks there are.
    fn named_stars(&mut self) -> Option<u8> {
        self.take(Key::From);
        let Some(Kind::Star(many)) = self.here() else {
            return None;
        };
        self.at += 1;
        self.attempt(|reader| {
            reader.take(Key::To).then_some(())?;
            matches!(reader.here(), Some(Kind::Star(_))).then(|| reader.at += 1)
        });
        Some(many)
    }

    /// `rep from * ...`, `rep rows 1-4 ...`, `rep to end`.
    pub(super) fn repeat(&mut self, stars: &mut Vec<OpenStar>, items: &mut Vec<Item>) {
        let start = self.at;
        if let Some(again) = self.attempt(Self::rows_again) {
            return items.push(self.item_from(start, Doing::RowsAgain(again)));
        }
        self.at += 1;
        if matches!(self.here(), Some(Kind::Open(_))) {
            return self.pass_from(start);
        }
        let many = self.named_stars();
        let open = match many {
            Some(many) => stars.iter().rposition(|star| star.many == many),
            None => stars.len().checked_sub(1),
        };
        let often = self.often().or_else(|| self.to_the_end_if_last());
        match open {
            Some(open) => {
                let place = self.place_from(start);
                self.close(stars.remove(open), place, often, items);
            }
            None => {
                let place = self.place_from(start);
                let kind = FaultKind::Star;
                self.faults.push(Fault { place, kind });
            }
        }
    }

    /// `rep from *` and no more: to the end, where nothing follows.
    fn to_the_end_if_last(&self) -> Option<Often> {
        let next = match self.here() {
            Some(Kind::Mark('.')) => self.kind(self.at + 1),
            other => other,
        };
        next.is_none().then_some(Often::Reach(Reach::End))
    }

    /// Makes a repeat of the items behind an asterisk; `end` is what says so.
    fn close(&mut self, star: OpenStar, end: Place, often: Option<Often>, items: &mut Vec<Item>) {
        let body = items.split_off(star.before.min(items.len()));
        if body.is_empty() {
            let place = star.place.to(self.place_behind());
            let kind = FaultKind::Empty;
            return self.faults.push(Fault { place, kind });
        }
        let Some(often) = often else {
            let (place, kind) = (end, FaultKind::HowOften);
            self.faults.push(Fault { place, kind });
            self.passed.push(star.place);
            return items.extend(body);
        };
        let place = star.place.to(self.place_behind());
        let repeat = Repeat {
            body,
            often,
            stars: Some(star.many),
            but: None,
        };
        items.push(Item {
            place,
            doing: Doing::Repeat(repeat),
        });
    }
}

/// What is between two asterisks is worked so many times in all, as a bracket is.
fn in_all(often: Often) -> Often {
    match often {
        Often::Times(amount, Counted::Unsaid) => Often::Times(amount, Counted::All),
        other => other,
    }
}
