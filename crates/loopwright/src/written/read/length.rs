//! How long something becomes: `for 2 inches`, `until piece measures 10 (11, 12) in from cast-on edge, ending with a WS row`.
//!
//! The numbers are not stitches: they are read over, whole or not, and stay in the words as they are written.

use super::super::line::Length;
use super::super::token::Kind;
use super::super::vocabulary::{Key, Meaning};
use super::Reader;

/// Units of length. Two primes are the sign for inches, which is a token by itself.
const UNITS: &[&str] = &[
    "in",
    "ins",
    "inch",
    "inches",
    "cm",
    "cms",
    "mm",
    "centimetres",
    "centimeters",
    "centimetre",
    "centimeter",
];

/// A list of numbers has so many tokens at most, and the words around it so many.
const LONGEST_LIST: usize = 100;
const LONGEST_WORDS: usize = 8;

impl Reader<'_> {
    /// A length here, with where it is measured from and on which side it ends.
    pub(super) fn length(&mut self) -> Option<Length> {
        let start = self.at;
        let is_introduced = if self.take(Key::Until) {
            self.measures()?;
            true
        } else {
            self.take(Key::For)
        };
        self.skip(&[Key::The]);
        self.number_with_unit()?;
        // `K2 in next st` is no length.
        (is_introduced || !self.is_key(self.at - 1, Key::In)).then_some(())?;
        // `more`, `from cast-on edge`, `in St st`.
        self.take(Key::More);
        self.attempt(Self::measured_from);
        self.attempt(Self::in_pattern);
        self.attempt(Self::ending_with);
        let place = self.place_from(start);
        let written = place.text(self.text).to_owned();
        Some(Length { place, written })
    }

    /// `piece measures`, `work from beg is`: a few words up to the one that measures.
    fn measures(&mut self) -> Option<()> {
        for _ in 0..LONGEST_WORDS {
            if ["measures", "measure", "is"].iter().any(|word| self.takes_word(word)) {
                return Some(());
            }
            matches!(self.here(), Some(Kind::Word(_))).then(|| self.at += 1)?;
        }
        None
    }

    /// `2½ inches`, `10 (11, 12) cm`, `5"`.
    fn number_with_unit(&mut self) -> Option<()> {
        let is_number = |kind| matches!(kind, Kind::Number(_) | Kind::Odd | Kind::Word(Meaning::Number(_)));
        is_number(self.here()?).then_some(())?;
        for _ in 0..LONGEST_LIST {
            let is_unit = UNITS.iter().any(|unit| self.takes_word(unit));
            if is_unit || self.is_inches_sign() {
                return Some(());
            }
            let is_in_a_list = matches!(
                self.here()?,
                Kind::Open(_) | Kind::Close(_) | Kind::Mark(',' | '/' | '-' | ':' | ';')
            );
            (is_in_a_list || is_number(self.here()?)).then(|| self.at += 1)?;
        }
        None
    }

    /// `"` or `″`, which is taken.
    fn is_inches_sign(&mut self) -> bool {
        let token = self.tokens.get(self.at);
        let is_sign = token.is_some_and(|token| ["\"", "″", "”"].contains(&token.place.text(self.text)));
        self.at += usize::from(is_sign);
        is_sign
    }

    /// `from cast-on edge`, `from beg`, `above marker`.
    fn measured_from(&mut self) -> Option<()> {
        (self.take(Key::From) || self.takes_word("above")).then_some(())?;
        for _ in 0..LONGEST_WORDS {
            match self.here() {
                Some(Kind::Word(_) | Kind::Mark('-')) if !self.is_key(self.at, Key::End) => self.at += 1,
                _ => break,
            }
        }
        Some(())
    }

    /// `, ending with a WS row`, `end on RS row`, `ending after row 4`.
    pub(super) fn ending_with(&mut self) -> Option<()> {
        self.take_mark(',');
        self.take(Key::End).then_some(())?;
        (self.take(Key::On) || ["with", "after"].iter().any(|word| self.takes_word(word))).then_some(())?;
        self.skip(&[Key::The, Key::Right, Key::Wrong, Key::Side]);
        (self.take(Key::Row) || self.take(Key::Round)).then_some(())?;
        if let Some(Kind::Number(_)) = self.here() {
            self.at += 1;
        }
        Some(())
    }
}
