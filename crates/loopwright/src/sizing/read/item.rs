//! From tokens to labels and girths, each with its place in the text.

use super::token::{Kind, Token, is_unit, tokens};
use super::{Unread, Why};
use crate::bounds::Bounds;
use crate::sizing::Span;
use crate::units::parse::{Wanted, read};
use crate::units::{Length, LengthUnit, Unit};
use std::ops::Range;

/// One item of the list.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Item {
    /// What a size is called, and whether a colon follows.
    Label { at: Range<usize>, colon: bool },
    /// A girth, and the unit it was written in.
    Girth {
        at: Range<usize>,
        span: Span,
        unit: Option<LengthUnit>,
    },
    /// What could not be read.
    Unread(Unread),
}

/// Words that say what the list is, and name no size.
const PASSED_OVER: [&str; 44] = [
    "to",
    "fit",
    "fits",
    "fitting",
    "bust",
    "chest",
    "girth",
    "circumference",
    "finished",
    "actual",
    "measurement",
    "measurements",
    "measure",
    "measures",
    "body",
    "garment",
    "size",
    "sizes",
    "sz",
    "for",
    "and",
    "or",
    "about",
    "approx",
    "approximately",
    "ca",
    "circa",
    "around",
    "at",
    "underarm",
    "the",
    "of",
    "depth",
    "length",
    "is",
    "are",
    "all",
    "most",
    "with",
    "ease",
    "list",
    "width",
    "up",
    "in",
];

/// Words that make the number before them an age, and so a label.
const AGES: [&str; 12] = [
    "yr", "yrs", "year", "years", "y", "mo", "mos", "mth", "mths", "month", "months", "old",
];

/// Letters that make a small number before them a size: `1 X`, `2 XL`.
const LETTERS: [&str; 4] = ["x", "xl", "xs", "t"];

/// The labels and girths of a text.
pub(super) fn items(text: &str, unit: LengthUnit, bounds: Bounds<Length>) -> Vec<Item> {
    let mut reader = Reader {
        text,
        tokens: tokens(text),
        at: 0,
        unit,
        bounds,
    };
    let mut items = Vec::new();
    while reader.at < reader.tokens.len() {
        items.extend(reader.next());
    }
    items
}

struct Reader<'a> {
    text: &'a str,
    tokens: Vec<Token>,
    at: usize,
    unit: LengthUnit,
    bounds: Bounds<Length>,
}

impl Reader<'_> {
    fn kind(&self, ahead: usize) -> Option<Kind> {
        self.tokens.get(self.at + ahead).map(|token| token.kind)
    }

    fn word(&self, ahead: usize) -> &str {
        match self.tokens.get(self.at + ahead) {
            Some(token) if token.kind == Kind::Word => &self.text[token.at.clone()],
            _ => "",
        }
    }

    fn is_word(&self, ahead: usize, words: &[&str]) -> bool {
        words.iter().any(|word| word.eq_ignore_ascii_case(self.word(ahead)))
    }

    /// From a token to another, as a piece of the text.
    fn piece(&self, first: usize, last: usize) -> Range<usize> {
        self.tokens[first].at.start..self.tokens[last].at.end
    }

    fn next(&mut self) -> Option<Item> {
        let start = self.at;
        match self.kind(0)? {
            Kind::Number => Some(self.number()),
            Kind::Word => self.label(),
            kind => {
                self.at += 1;
                // `S - 86`: the dash only parts the label from its number.
                let behind_word = start > 0 && self.tokens[start - 1].kind == Kind::Word;
                let why = match kind {
                    Kind::Part | Kind::Colon | Kind::InchSign => return None,
                    Kind::Dash if behind_word && !is_unit(&self.text[self.tokens[start - 1].at.clone()]) => {
                        return None;
                    }
                    Kind::Dash => Why::HalfARange,
                    _ => Why::Stray,
                };
                Some(Item::Unread(Unread::new(&self.piece(start, start), why)))
            }
        }
    }

    /// Words up to the next mark, without those that name no size.
    fn label(&mut self) -> Option<Item> {
        let sized = self.is_word(0, &["size", "sz"]);
        if self.is_word(0, &PASSED_OVER) || is_unit(self.word(0)) {
            self.at += 1;
            return if sized { self.numbered() } else { None };
        }
        let start = self.at;
        let one_size = self.is_word(0, &["one"]) && self.is_word(1, &["size"]);
        self.at += if one_size { 2 } else { 0 };
        while self.kind(0) == Some(Kind::Word) && !self.is_word(0, &PASSED_OVER) {
            self.at += 1;
        }
        let colon = self.kind(0) == Some(Kind::Colon);
        Some(Item::Label {
            at: self.piece(start, self.at - 1),
            colon,
        })
    }

    /// A number behind the word `size` is a label where a girth or a colon follows.
    fn numbered(&mut self) -> Option<Item> {
        let follows = matches!(self.kind(1), Some(Kind::Number | Kind::Colon));
        if self.kind(0) != Some(Kind::Number) || !follows {
            return None;
        }
        self.at += 1;
        let at = self.piece(self.at - 1, self.at - 1);
        Some(Item::Label {
            at,
            colon: self.kind(0) == Some(Kind::Colon),
        })
    }

    /// A girth or a range of girths; or a label that is made of numbers.
    fn number(&mut self) -> Item {
        let start = self.at;
        let range = self.range();
        let last = start + if range { 2 } else { 0 };
        self.at = last + 1;
        if self.is_word(0, &AGES) {
            while self.is_word(0, &AGES) {
                self.at += 1;
            }
            let colon = self.kind(0) == Some(Kind::Colon);
            return Item::Label {
                at: self.piece(start, self.at - 1),
                colon,
            };
        }
        let small = self.tokens[start].at.len() == 1;
        if !range && small && self.is_word(0, &LETTERS) {
            self.at += 1;
            let colon = self.kind(0) == Some(Kind::Colon);
            return Item::Label {
                at: self.piece(start, last + 1),
                colon,
            };
        }
        if !range && self.kind(0) == Some(Kind::Colon) {
            return Item::Label {
                at: self.piece(start, last),
                colon: true,
            };
        }
        self.girth(start, last)
    }

    /// Whether the number here is the first of a range. The unit may stand behind either (`34 in - 36 in`), and a third
    /// number makes a list of it (`86-91-97`).
    fn range(&mut self) -> bool {
        if self.unit_at(1) && self.joins(2) && self.kind(3) == Some(Kind::Number) {
            self.unit_behind_range();
        }
        let joined = self.joins(1) && self.kind(2) == Some(Kind::Number);
        let third = joined && self.joins(3) && self.kind(4) == Some(Kind::Number);
        if third {
            // Each dash of the chain parts two sizes.
            let mut dash = self.at + 1;
            while self.tokens.get(dash).is_some_and(|t| t.kind == Kind::Dash) {
                self.tokens[dash].kind = Kind::Part;
                dash += 2;
            }
        }
        joined && !third
    }

    /// Moves the unit of the first number behind the second, where it counts for both; it is left out if it stands
    /// there already, and left alone if another does.
    fn unit_behind_range(&mut self) {
        let text = |at: usize| &self.text[self.tokens[at].at.clone()];
        if !self.unit_at(4) {
            self.tokens[self.at + 1..self.at + 4].rotate_left(1);
        } else if text(self.at + 1).eq_ignore_ascii_case(text(self.at + 4)) {
            self.tokens.remove(self.at + 1);
        }
    }

    fn unit_at(&self, ahead: usize) -> bool {
        self.kind(ahead) == Some(Kind::InchSign) || is_unit(self.word(ahead))
    }

    /// Whether a dash or the word "to" stands there.
    fn joins(&self, ahead: usize) -> bool {
        self.kind(ahead) == Some(Kind::Dash) || self.is_word(ahead, &["to"])
    }

    /// One girth or two, with the unit that counts for them.
    fn girth(&mut self, first: usize, last: usize) -> Item {
        let at = self.piece(first, last);
        let written = self.unit_at(0).then_some(self.at);
        let found = written.or_else(|| self.unit_nearby());
        let name = found.map(|unit| self.text[self.tokens[unit].at.clone()].to_owned());
        if written.is_some() {
            self.at += 1;
        }
        let unit = name.as_deref().unwrap_or("");
        let read_one = |token: usize| {
            let text = format!("{} {unit}", &self.text[self.tokens[token].at.clone()]);
            read::<Length>(
                &text,
                &Wanted {
                    bounds: self.bounds,
                    unit: self.unit,
                },
            )
        };
        match (read_one(first), read_one(last)) {
            (Ok(one), Ok(other)) => {
                let unit = match one.unit {
                    Some(Unit::Length(unit)) => Some(unit),
                    _ => None,
                };
                Item::Girth {
                    at,
                    span: Span::new(one.value, other.value),
                    unit,
                }
            }
            (Err(why), _) => Item::Unread(Unread::new(&self.piece(first, first), Why::Number(why))),
            (_, Err(why)) => Item::Unread(Unread::new(&self.piece(last, last), Why::Number(why))),
        }
    }

    /// The unit that counts for a number without one: the next that is written, or else the last before it.
    fn unit_nearby(&self) -> Option<usize> {
        let is_one = |at: &usize| {
            let token = &self.tokens[*at];
            // `97 (103, 111) cm`: the bracket stands between.
            let mut before = self.tokens[..*at].iter().rev();
            let before = before.find(|token| token.kind != Kind::Part);
            match token.kind {
                Kind::InchSign => true,
                Kind::Word => {
                    before.is_some_and(|token| token.kind == Kind::Number) && is_unit(&self.text[token.at.clone()])
                }
                _ => false,
            }
        };
        let after = (self.at..self.tokens.len()).find(is_one);
        after
            .or_else(|| (0..self.at).rev().find(is_one))
            .filter(|at| self.names_length(*at))
    }

    /// Whether a unit that stands elsewhere may count here: only one of length.
    fn names_length(&self, at: usize) -> bool {
        let name = &self.text[self.tokens[at].at.clone()];
        !matches!(
            name.to_ascii_lowercase().as_str(),
            "g" | "oz" | "st" | "sts" | "stitches"
        )
    }
}
