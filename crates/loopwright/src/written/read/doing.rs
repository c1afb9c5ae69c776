//! What is done beside stitches: markers, binding off, casting on, joining, turning, holders.

use super::super::fault::FaultKind;
use super::super::line::{Doing, Item, Share};
use super::super::token::Kind;
use super::super::vocabulary::{Key, Meaning};
use super::Reader;

impl Reader<'_> {
    /// What a word that is no stitch begins.
    pub(super) fn keyed(&mut self, key: Key) -> Option<Doing> {
        let start = self.at;
        let doing = match key {
            Key::PlaceMarker | Key::SlipMarker | Key::RemoveMarker => Some(self.marker(key)),
            Key::Put => self.attempt(Self::put),
            Key::Remove => self.attempt(|reader| {
                reader.at += 1;
                reader.skip(&[Key::The]);
                reader.take(Key::Marker).then_some(Doing::RemoveMarker)
            }),
            Key::BindOff | Key::Bind => self.attempt(Self::bind_off),
            Key::CastOn => self.attempt(Self::cast_on),
            Key::Cast if self.is_key(self.at + 1, Key::Off) => self.attempt(Self::bind_off),
            Key::Cast => self.attempt(Self::cast_on),
            Key::Join => Some(self.join()),
            Key::Turn => Some(self.turn()),
            Key::WrapAndTurn => {
                self.at += 1;
                Some(Doing::WrapAndTurn)
            }
            Key::Wrap => self.attempt(Self::wrap),
            Key::Return => self.attempt(Self::back_on_needle),
            // `to last 3 sts, end k3`.
            Key::End if matches!(self.kind(self.at + 1), Some(Kind::Word(Meaning::Stitch(_)))) => {
                self.at += 1;
                self.pass_from(start);
                return None;
            }
            _ => None,
        };
        if doing.is_none() {
            let is_short = matches!(key, Key::BindOff | Key::CastOn | Key::Bind | Key::Cast);
            self.fault_here(if is_short {
                FaultKind::HowMany
            } else {
                FaultKind::OutOfPlace
            });
        }
        doing
    }

    /// `pm`, `sm`, `rm`, and `pm for beg of rnd`.
    fn marker(&mut self, key: Key) -> Doing {
        self.at += 1;
        self.for_what();
        match key {
            Key::PlaceMarker => Doing::PlaceMarker,
            Key::RemoveMarker => Doing::RemoveMarker,
            _ => Doing::SlipMarker,
        }
    }

    /// `for beg of rnd`, behind a marker.
    fn for_what(&mut self) {
        self.skip(&[Key::For, Key::The, Key::Beginning, Key::Of, Key::Round, Key::Row]);
    }

    /// `place marker`, `place next 20 sts on holder`, `place held sts on needle`.
    fn put(&mut self) -> Option<Doing> {
        self.at += 1;
        if let Some(held) = self.attempt(Self::held) {
            return Some(held);
        }
        if self.is_key(self.at, Key::Held) {
            self.at -= 1;
            return self.back_on_needle();
        }
        self.skip(&[Key::The]);
        self.take(Key::Marker).then_some(())?;
        self.for_what();
        Some(Doing::PlaceMarker)
    }

    /// `return held sts to needle`, `place held sts on needle`.
    fn back_on_needle(&mut self) -> Option<Doing> {
        self.at += 1;
        self.skip(&[Key::All, Key::The]);
        (self.take(Key::Held) && self.take(Key::Stitches)).then_some(())?;
        (self.take(Key::To) || self.take(Key::On)).then_some(())?;
        self.skip(&[Key::The]);
        self.take(Key::Needle).then_some(Doing::Return)
    }

    /// `BO 5`, `bind off all sts`, `cast off next 5 sts in patt`, `BO 5 at beg of next 2 rows`.
    fn bind_off(&mut self) -> Option<Doing> {
        let start = self.at;
        self.at += 1;
        self.take(Key::Off);
        self.skip(&[Key::The, Key::Next, Key::First]);
        let share = if self.take(Key::All) || self.take(Key::Rest) {
            self.skip(&[Key::Rest, Key::Stitches]);
            Share::Rest
        } else if self.is_all_that_is_said() {
            Share::Rest
        } else {
            Share::Of(self.amount()?)
        };
        self.skip(&[Key::Stitches]);
        self.attempt(|reader| {
            reader.take(Key::In).then_some(())?;
            let is_pattern = matches!(reader.here(), Some(Kind::Word(Meaning::Stitch(_))));
            is_pattern.then(|| reader.at += 1)
        });
        self.manners();
        Some(self.at_start_of_rows(start, Doing::BindOff(share)))
    }

    /// `BO.`, `bind off loosely knitwise.`: nothing but how, to the end of the line, means all stitches.
    fn is_all_that_is_said(&mut self) -> bool {
        let all = self.attempt(|reader| {
            reader.attempt(Self::in_pattern);
            reader.manners();
            while reader.advice() {
                reader.manners();
            }
            let behind = match reader.here() {
                Some(Kind::Mark('.')) => reader.kind(reader.at + 1),
                other => other,
            };
            behind.is_none().then_some(())
        });
        all.is_some()
    }

    fn manners(&mut self) {
        while matches!(self.here(), Some(Kind::Word(Meaning::Manner(_)))) {
            self.at += 1;
        }
    }

    /// `CO 96 sts`, `cast on 5 sts at beg of next 2 rows`.
    fn cast_on(&mut self) -> Option<Doing> {
        let start = self.at;
        self.at += 1;
        self.take(Key::On);
        let amount = self.amount()?;
        self.skip(&[Key::Stitches]);
        Some(self.at_start_of_rows(start, Doing::CastOn(amount)))
    }

    /// `at beg of next 2 rows`, where it stands behind.
    fn at_start_of_rows(&mut self, start: usize, doing: Doing) -> Doing {
        let item = self.item_from(start, doing);
        let rows = self.attempt(|reader| {
            reader.take(Key::At).then_some(())?;
            reader.skip(&[Key::The]);
            reader.take(Key::Beginning).then_some(())?;
            reader.skip(&[Key::Of, Key::The]);
            reader.take(Key::Next).then_some(())?;
            let amount = reader.amount()?;
            (reader.take(Key::Row) || reader.take(Key::Round)).then_some(amount)
        });
        let Item { doing, place } = item;
        match rows {
            Some(rows) => Doing::AtStartOfRows(Box::new(Item { place, doing }), rows),
            None => doing,
        }
    }

    /// `join`, `join in the round`, `join for working in the round`.
    fn join(&mut self) -> Doing {
        self.at += 1;
        self.attempt(|reader| {
            (reader.take(Key::To) || reader.take(Key::For)).then_some(())?;
            let is_work = matches!(reader.here(), Some(Kind::Word(Meaning::Stitch(_))));
            reader.at += usize::from(is_work);
            (is_work || reader.takes_word("working") || reader.takes_word("knitting")).then_some(())
        });
        self.attempt(|reader| {
            reader.take(Key::In).then_some(())?;
            reader.skip(&[Key::The]);
            reader.take(Key::Round).then_some(())
        });
        Doing::Join
    }

    /// `turn`, `turn, leaving rem sts unworked`.
    fn turn(&mut self) -> Doing {
        self.at += 1;
        self.attempt(|reader| {
            reader.take_mark(',');
            reader.take(Key::Leave).then_some(())?;
            reader.skip(&[Key::The, Key::Rest, Key::Stitches]);
            reader.take(Key::Unworked).then_some(())
        });
        Doing::Turn
    }

    /// `wrap and turn`, `wrap next st and turn`.
    fn wrap(&mut self) -> Option<Doing> {
        self.at += 1;
        self.skip(&[Key::The, Key::Next, Key::Stitches]);
        self.take_mark(',');
        self.take(Key::And);
        self.take(Key::Turn).then_some(Doing::WrapAndTurn)
    }
}
