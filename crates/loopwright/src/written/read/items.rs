//! The items of a line or a bracket, one after the other.

use super::super::fault::FaultKind;
use super::super::line::{Doing, Item};
use super::super::token::Kind;
use super::super::vocabulary::{Key, Meaning};
use super::Reader;
use super::again::OpenStar;

impl Reader<'_> {
    /// Items, to the end of the line or of the bracket.
    pub(super) fn items(&mut self) -> Vec<Item> {
        let mut items = Vec::new();
        let mut stars: Vec<OpenStar> = Vec::new();
        while let Some(kind) = self.here() {
            match kind {
                Kind::Close(_) if self.depth > 0 => break,
                Kind::Close(_) => self.fault_here(FaultKind::Opening),
                Kind::Mark(',' | ';' | '.' | '-' | '=') => self.at += 1,
                Kind::Word(Meaning::Says(Key::And | Key::Then)) => {
                    self.at += 1;
                    self.pass_from(self.at - 1);
                }
                Kind::Star(many) => self.star(many, &mut stars, &mut items),
                Kind::Word(Meaning::Says(Key::Repeat)) => self.repeat(&mut stars, &mut items),
                Kind::Word(Meaning::Unknown) if self.advice() => {}
                _ => self.item(&mut items),
            }
        }
        for star in stars {
            let place = star.place;
            self.faults.push(super::Fault {
                place,
                kind: FaultKind::Repeat,
            });
        }
        items
    }

    /// One item, or a fault.
    fn item(&mut self, items: &mut Vec<Item>) {
        let start = self.at;
        let Some(kind) = self.here() else { return };
        if let Some(again) = self.attempt(Self::as_rows) {
            return items.push(self.item_from(start, Doing::RowsAgain(again)));
        }
        let doing = match kind {
            Kind::Open(closing) => self.bracket(closing),
            Kind::Number(_) | Kind::Word(Meaning::Number(_)) => self.numbered(),
            Kind::Odd => self.none_here(FaultKind::Number),
            Kind::Word(Meaning::Says(key)) => self.keyed(key),
            Kind::Word(Meaning::Unknown) => self.unknown(FaultKind::UnknownWord),
            Kind::Word(Meaning::Twofold) => self.unknown(FaultKind::Twofold),
            Kind::Word(Meaning::Stitch(_) | Meaning::Own(..) | Meaning::Counted(..)) => self.stitch(),
            Kind::Word(Meaning::Crossing(_) | Meaning::Manner(_))
            | Kind::Mark(_)
            | Kind::Strange
            | Kind::Close(_)
            | Kind::Star(_)
            | Kind::Line => self.none_here(FaultKind::OutOfPlace),
        };
        if let Some(doing) = doing {
            items.push(self.item_from(start, doing));
        }
    }

    pub(super) fn none_here(&mut self, kind: FaultKind) -> Option<Doing> {
        self.fault_here(kind);
        None
    }

    /// A word that is not known, pointed at whole; its number is passed with it.
    fn unknown(&mut self, kind: FaultKind) -> Option<Doing> {
        self.fault_here(kind);
        let start = self.at;
        let counted = self.attempt(|reader| reader.times().map(|_| ()));
        if counted
            .or_else(|| self.attempt(|reader| reader.amount().map(|_| ())))
            .is_some()
        {
            self.pass_from(start);
        }
        None
    }

    /// A cable, or what the pattern says there is.
    fn numbered(&mut self) -> Option<Doing> {
        if let Some(doing) = self.attempt(Self::cable) {
            return Some(doing);
        }
        if let Some(said) = self.attempt(Self::said) {
            return Some(Doing::Said(said));
        }
        // All of a list is pointed at, not its numbers one by one.
        let start = self.at;
        self.attempt(|reader| reader.amount().map(|_| ()));
        let place = self.place_from(start);
        let kind = FaultKind::OutOfPlace;
        self.faults.push(super::Fault { place, kind });
        None
    }
}
