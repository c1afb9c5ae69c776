//! Numbers: one, or one for each size as patterns print them.
//!
//! `6 (7, 8)`, `6[7:8]`, `6 (7) [8] {9}`, `6/7/8`, `6-7-8`, `- (4, 6)`. A bracket of numbers behind a number holds the other
//! sizes; whether it has as many as there are is what decides, and nothing is guessed where it has not.

use super::super::fault::{Fault, FaultKind};
use super::super::line::{Amount, Bracketed, Figure};
use super::super::place::Place;
use super::super::token::Kind;
use super::super::vocabulary::Meaning;
use super::Reader;

/// A bracket of sizes has so many tokens at most.
const LONGEST_LIST: usize = 200;

impl Reader<'_> {
    /// A number, or a list with as many as there are sizes.
    pub(super) fn amount(&mut self) -> Option<Amount> {
        let start = self.at;
        let mut figures = vec![self.first_figure()?];
        if self.is_list_bracket(self.at) {
            while self.is_list_bracket(self.at) {
                let opening = self.at;
                self.list(&mut figures);
                let place = self.place_from(opening);
                self.brackets.push(Bracketed { place, is_sizes: true });
            }
        } else {
            self.chain(&mut figures);
        }
        let place = self.place_from(start);
        self.check(place, figures.len());
        Some(Amount { place, figures })
    }

    fn check(&mut self, place: Place, found: usize) {
        let wanted = self.sizes;
        if found > 1 && found != wanted {
            let kind = FaultKind::Sizes { found, wanted };
            self.faults.push(Fault { place, kind });
        }
    }

    /// The number here; a dash only where the numbers of other sizes follow.
    fn first_figure(&mut self) -> Option<Figure> {
        match self.here()? {
            Kind::Mark('-') if self.is_list_bracket(self.at + 1) => Some(self.figure(None)),
            Kind::Number(value) | Kind::Word(Meaning::Number(value)) => Some(self.figure(Some(value))),
            Kind::Odd => {
                self.fault_here(FaultKind::Number);
                let place = self.place_from(self.at - 1);
                Some(Figure { place, value: None })
            }
            _ => None,
        }
    }

    /// The token here as a number, or as none for this size.
    fn figure(&mut self, value: Option<u32>) -> Figure {
        self.at += 1;
        Figure {
            place: self.place_from(self.at - 1),
            value,
        }
    }

    /// Whether a bracket of nothing but numbers opens at a token.
    fn is_list_bracket(&self, at: usize) -> bool {
        let Some(Kind::Open(_)) = self.kind(at) else {
            return false;
        };
        let (mut depth, mut numbers) = (0_usize, 0);
        for at in at..at + LONGEST_LIST {
            match self.kind(at) {
                Some(Kind::Open(_)) => depth += 1,
                Some(Kind::Close(_)) => depth -= 1,
                Some(Kind::Number(_) | Kind::Odd) => numbers += 1,
                Some(Kind::Mark(',' | ';' | ':' | '/' | '|' | '-')) => {}
                _ => return false,
            }
            if depth == 0 {
                return numbers > 0;
            }
        }
        false
    }

    /// The numbers of a bracket, and of brackets within it.
    fn list(&mut self, figures: &mut Vec<Figure>) {
        let mut depth = 0_usize;
        loop {
            match self.here() {
                Some(Kind::Open(_)) => depth += 1,
                Some(Kind::Close(_)) => depth -= 1,
                Some(Kind::Number(value)) => {
                    figures.push(self.figure(Some(value)));
                    continue;
                }
                Some(Kind::Odd) => {
                    self.fault_here(FaultKind::Number);
                    continue;
                }
                Some(Kind::Mark('-')) => {
                    figures.push(self.figure(None));
                    continue;
                }
                Some(_) => {}
                None => return,
            }
            self.at += 1;
            if depth == 0 {
                return;
            }
        }
    }

    /// `6/7/8`, `6-7-8`: numbers that a stroke or a dash joins without a space.
    fn chain(&mut self, figures: &mut Vec<Figure>) {
        let most = LONGEST_LIST / 2;
        while let (Some(Kind::Mark('/' | '-')), Some(Kind::Number(value))) = (self.here(), self.kind(self.at + 1)) {
            if !self.touches(self.at - 1) || !self.touches(self.at) || figures.len() == most {
                return;
            }
            self.at += 1;
            figures.push(self.figure(Some(value)));
        }
    }

    /// Whether a token touches the next.
    pub(super) fn touches(&self, at: usize) -> bool {
        match self.tokens.get(at..at + 2) {
            Some([one, next]) => one.place.end == next.place.start,
            _ => false,
        }
    }
}
