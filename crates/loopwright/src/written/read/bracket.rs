//! Brackets: what is repeated, what is worked into one stitch, or what the pattern says there is.

use super::super::fault::{Fault, FaultKind};
use super::super::line::{Bracketed, But, Count, Doing, Item, Often, Repeat, Stitches};
use super::super::token::Kind;
use super::super::vocabulary::{Key, Meaning};
use super::{MOST_NESTED, Reader};

impl Reader<'_> {
    /// A bracket and how often it is worked.
    pub(super) fn bracket(&mut self, closing: char) -> Option<Doing> {
        let start = self.at;
        if let Some(doing) = self.attempt(|reader| reader.said_in_bracket(closing)) {
            return Some(doing);
        }
        if self.attempt(|reader| reader.side_in_bracket(closing)).is_some() {
            self.pass_from(start);
            return None;
        }
        if self.depth == MOST_NESTED {
            return self.none_here(FaultKind::TooDeep);
        }
        let is_behind_number = self.is_behind_number(start);
        self.at += 1;
        self.depth += 1;
        let body = self.items();
        self.depth -= 1;
        match self.here() {
            Some(Kind::Close(found)) if found == closing => self.at += 1,
            Some(_) => self.fault_here(FaultKind::Closing),
            None => self.fault_behind(FaultKind::Closing),
        }
        if is_behind_number {
            let place = self.place_from(start);
            self.brackets.push(Bracketed { place, is_sizes: false });
        }
        self.behind_bracket(start, body)
    }

    fn is_behind_number(&self, at: usize) -> bool {
        let before = at.checked_sub(1).and_then(|before| self.kind(before));
        matches!(before, Some(Kind::Number(_)))
    }

    /// What is done with what stands in the bracket.
    fn behind_bracket(&mut self, start: usize, body: Vec<Item>) -> Option<Doing> {
        if body.is_empty() {
            let _often = self.often();
            let place = self.place_from(start);
            let kind = FaultKind::Empty;
            self.faults.push(Fault { place, kind });
            return None;
        }
        if self.attempt(Self::in_one_stitch).is_some() {
            return Some(Doing::IntoOne(body));
        }
        let Some(often) = self.often() else {
            self.fault_behind(FaultKind::HowOften);
            self.pass_from(start);
            return None;
        };
        let but = self.but(&body, &often);
        let stars = None;
        Some(Doing::Repeat(Repeat {
            body,
            often,
            stars,
            but,
        }))
    }

    /// `in next st`, `into same st`, `in one st`.
    fn in_one_stitch(&mut self) -> Option<()> {
        self.take(Key::In).then_some(())?;
        self.skip(&[Key::The]);
        let is_one = self.here() == Some(Kind::Word(Meaning::Number(1)));
        self.at += usize::from(is_one);
        let said = self.take(Key::Next) || self.take(Key::Same) || is_one;
        (said && self.take(Key::Stitches)).then_some(())
    }

    /// `, but K2 the 5th, 10th and 15th time`.
    fn but(&mut self, body: &[Item], often: &Often) -> Option<Box<But>> {
        let start = self.at;
        self.take_mark(',');
        if !self.take(Key::But) {
            self.at = start;
            return None;
        }
        let from = self.at;
        let instead = match self.here() {
            Some(Kind::Word(Meaning::Stitch(_) | Meaning::Own(..) | Meaning::Counted(..))) => self.stitch(),
            _ => None,
        };
        let runs: Vec<&Stitches> = body.iter().filter_map(as_stitches).collect();
        let instead = match instead {
            Some(Doing::Stitches(stitches)) if is_instead(&stitches, &runs) && runs.len() == body.len() => stitches,
            _ => {
                let place = self.place_from(from);
                let kind = FaultKind::Simple;
                self.faults.push(Fault { place, kind });
                self.attempt(Self::past_the_times);
                return None;
            }
        };
        self.skip(&[Key::The]);
        let most = match often {
            Often::Times(amount, _) if amount.figures.len() == 1 => amount.value(0),
            Often::Times(..) | Often::Reach(_) => u64::from(super::super::token::MOST),
        };
        let at = self.attempt(|reader| {
            let at = reader.ordinals(most)?;
            reader.take(Key::Times).then_some(at)
        });
        if at.is_none() {
            self.fault_behind(FaultKind::Time);
            self.attempt(Self::past_the_times);
        }
        at.map(|at| Box::new(But { instead, at }))
    }

    /// Passes `the 5th, 10th time`, where it cannot be meant.
    fn past_the_times(&mut self) -> Option<()> {
        while !self.take(Key::Times) {
            match self.here()? {
                Kind::Number(_) | Kind::Mark(',') => {}
                Kind::Word(Meaning::Says(Key::The | Key::Ordinal | Key::Stitches | Key::And)) => {}
                _ => return None,
            }
            self.at += 1;
        }
        Some(())
    }

    /// `5th, 10th and 15th`, each behind the one before and none past the last.
    fn ordinals(&mut self, most: u64) -> Option<Vec<u32>> {
        let mut at: Vec<u32> = Vec::new();
        loop {
            let before = at.last().copied().unwrap_or(0);
            match self.here()? {
                Kind::Number(time) if time > before && u64::from(time) <= most => at.push(time),
                _ => return None,
            }
            self.at += 1;
            self.skip(&[Key::Ordinal, Key::Stitches]);
            let comma = self.take_mark(',');
            if !(self.take(Key::And) || comma) {
                return Some(at);
            }
        }
    }

    /// `(96 sts)`, `[8 sts inc'd]`.
    fn said_in_bracket(&mut self, closing: char) -> Option<Doing> {
        self.at += 1;
        let said = self.said()?;
        self.take_mark('.');
        (self.here() == Some(Kind::Close(closing))).then(|| self.at += 1)?;
        Some(Doing::Said(said))
    }

    /// `(RS)`, `(right side)`: which side it is changes nothing in the line.
    fn side_in_bracket(&mut self, closing: char) -> Option<()> {
        self.at += 1;
        (self.take(Key::Right) || self.take(Key::Wrong)).then_some(())?;
        self.skip(&[Key::Side, Key::Row, Key::Round]);
        (self.here() == Some(Kind::Close(closing))).then(|| self.at += 1)
    }
}

fn as_stitches(item: &Item) -> Option<&Stitches> {
    match &item.doing {
        Doing::Stitches(stitches) => Some(stitches),
        _ => None,
    }
}

/// Whether this stands in place of one of these runs, and says how many it is.
fn is_instead(instead: &Stitches, runs: &[&Stitches]) -> bool {
    !matches!(instead.count, Count::Reach(_)) && runs.iter().any(|run| run.name == instead.name)
}
