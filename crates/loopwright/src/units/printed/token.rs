//! A printed text cut into tokens: numbers, words, units, brackets and the marks between them, each with its place.
//!
//! A token holds no value. Its text is read where a value is wanted: a number by
//! [`parse::read`](crate::units::parse::read) or [`count::read`](crate::units::count::read). Spaces and what cannot be
//! seen are in no token; everything else is in exactly one. Whether two tokens touch is told by their ranges.
//!
//! ```
//! use loopwright::units::printed::{TokenKind, tokens};
//!
//! let text = "22 sts x 30½ rows";
//! let numbers: Vec<&str> =
//!     tokens(text).iter().filter(|token| token.kind == TokenKind::Number).map(|token| token.text(text)).collect();
//! assert_eq!(numbers, ["22", "30½"]);
//! ```

use super::figure;
use crate::units::count::CountUnit;
use crate::units::{LengthUnit, Unit, clean, names};
use std::ops::Range;

/// A piece of a printed text.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Token {
    /// What it is.
    pub kind: TokenKind,
    /// Where it stands in the text, in bytes.
    pub range: Range<usize>,
}

impl Token {
    /// What is written there, of the text that was cut.
    pub fn text<'a>(&self, text: &'a str) -> &'a str {
        text.get(self.range.clone()).unwrap_or_default()
    }

    /// Whether another follows with nothing between.
    pub const fn touches(&self, next: &Self) -> bool {
        self.range.end == next.range.start
    }
}

/// What a token is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum TokenKind {
    /// A number as it is printed, with its fraction or decimals: `86`, `7 1/2`, `38¾`, `96,5`.
    Number,
    /// Letters, with figures before them where they touch: `XL`, `2X`, `bust`. An `M` is a [`Unit`](Self::Unit).
    Word,
    /// The name or sign of a unit, with the full stop behind it.
    Unit(Unit),
    /// A bracket that opens.
    Open(Bracket),
    /// A bracket that closes.
    Close(Bracket),
    /// `,`, where it does not part decimals or thousands.
    Comma,
    /// `;`
    Semicolon,
    /// `:`
    Colon,
    /// `=`
    Equals,
    /// `/`, where it is not the stroke of a fraction.
    Slash,
    /// A hyphen or a dash of any length.
    Dash,
    /// `+`
    Plus,
    /// `×`, or an `x` between two numbers.
    Times,
    /// `|` or `•`
    Bar,
    /// `.`, where it parts no decimals.
    Stop,
    /// The end of a line.
    Line,
    /// Any other sign.
    Other,
}

/// The kinds of brackets that patterns have.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Bracket {
    /// `( )`
    Round,
    /// `[ ]`
    Square,
    /// `{ }`
    Curly,
}

/// Cuts a text. No text makes it panic.
pub fn tokens(text: &str) -> Vec<Token> {
    let mut scanner = Scanner::of(text);
    while scanner.place < scanner.marks.len() {
        scanner.step();
    }
    scanner.tokens
}

/// The text in plain characters, and where each of them stands.
struct Scanner {
    marks: Vec<char>,
    ranges: Vec<Range<usize>>,
    place: usize,
    tokens: Vec<Token>,
}

impl Scanner {
    fn of(text: &str) -> Self {
        let mut scanner = Self {
            marks: Vec::new(),
            ranges: Vec::new(),
            place: 0,
            tokens: Vec::new(),
        };
        for (at, mark) in text.char_indices().filter(|(_, mark)| !clean::unseen(*mark)) {
            let plain = match mark {
                '\n' | '\u{b}' | '\u{c}' | '\u{85}' | '\u{2028}' | '\u{2029}' => '\n',
                other => clean::plain_form(other),
            };
            if plain != ' ' || scanner.marks.last() != Some(&' ') {
                scanner.marks.push(plain);
                scanner.ranges.push(at..at + mark.len_utf8());
            }
        }
        scanner
    }

    /// The mark at a place; a line's end behind the last.
    fn mark(&self, place: usize) -> char {
        self.marks.get(place).copied().unwrap_or('\n')
    }

    /// Takes the next token.
    fn step(&mut self) {
        let mark = self.mark(self.place);
        if mark == ' ' {
            self.place += 1;
        } else if mark.is_alphabetic() {
            self.word();
        } else if let Some(end) = figure::end(&self.marks, self.place) {
            self.number(end);
        } else if mark == '\'' && self.mark(self.place + 1) == '\'' {
            self.push(TokenKind::Unit(LengthUnit::Inch.into()), self.place + 2);
        } else {
            self.push(kind_of(mark), self.place + 1);
        }
    }

    /// A number, and what touches it: a unit, or letters that make it a word.
    fn number(&mut self, end: usize) {
        let letters = self.letters_end(end);
        if letters == end {
            return self.push(TokenKind::Number, end);
        }
        let is_cross = self.is_cross(end, letters) && figure::end(&self.marks, letters).is_some();
        if is_cross || self.unit(end, letters).is_some() {
            return self.push(TokenKind::Number, end);
        }
        // `21,2X`: a number and the name of the next size.
        let comma = self
            .marks
            .get(self.place..end)
            .and_then(|marks| marks.iter().rposition(|mark| *mark == ','));
        match comma {
            Some(comma) => self.push(TokenKind::Number, self.place + comma),
            None => self.push(TokenKind::Word, letters),
        }
    }

    /// Letters: a unit, the cross between two numbers, or a word.
    fn word(&mut self) {
        let end = self.letters_end(self.place);
        if self.is_cross(self.place, end) && self.stands_between_numbers(end) {
            return self.push(TokenKind::Times, end);
        }
        match self.unit(self.place, end) {
            Some(unit) => {
                let has_stop = self.mark(end) == '.' && !self.mark(end + 1).is_ascii_digit();
                self.push(TokenKind::Unit(unit), end + usize::from(has_stop));
            }
            None => self.push(TokenKind::Word, end),
        }
    }

    /// Where the letters that begin here end; an apostrophe may stand among them.
    fn letters_end(&self, from: usize) -> usize {
        let mut end = from;
        while self.mark(end).is_alphabetic()
            || end > from && self.mark(end) == '\'' && self.mark(end + 1).is_alphabetic()
        {
            end += 1;
        }
        end
    }

    /// The unit of this name. An `x` alone is none here, though it counts times elsewhere.
    fn unit(&self, from: usize, to: usize) -> Option<Unit> {
        let unit = names::named(self.marks.get(from..to)?)?;
        let is_times = unit == Unit::Count(CountUnit::Time) && self.is_cross(from, to);
        Some(unit).filter(|_| !is_times)
    }

    fn is_cross(&self, from: usize, to: usize) -> bool {
        matches!(self.marks.get(from..to), Some(['x' | 'X']))
    }

    /// Whether a number, or a unit behind one, stands before and a number behind.
    fn stands_between_numbers(&self, end: usize) -> bool {
        let next = end + usize::from(self.mark(end) == ' ');
        let before = self.tokens.last().map(|token| token.kind);
        matches!(before, Some(TokenKind::Number | TokenKind::Unit(_))) && figure::end(&self.marks, next).is_some()
    }

    /// Notes a token that goes on to here.
    fn push(&mut self, kind: TokenKind, end: usize) {
        let end = end.min(self.marks.len());
        if let (Some(first), Some(last)) = (self.ranges.get(self.place), self.ranges.get(end.saturating_sub(1))) {
            let range = first.start..last.end;
            self.tokens.push(Token { kind, range });
        }
        self.place = end.max(self.place + 1);
    }
}

/// What a mark is by itself.
fn kind_of(mark: char) -> TokenKind {
    match mark {
        '(' => TokenKind::Open(Bracket::Round),
        '[' => TokenKind::Open(Bracket::Square),
        '{' => TokenKind::Open(Bracket::Curly),
        ')' => TokenKind::Close(Bracket::Round),
        ']' => TokenKind::Close(Bracket::Square),
        '}' => TokenKind::Close(Bracket::Curly),
        ',' => TokenKind::Comma,
        ';' => TokenKind::Semicolon,
        ':' => TokenKind::Colon,
        '=' => TokenKind::Equals,
        '/' => TokenKind::Slash,
        '-' => TokenKind::Dash,
        '+' => TokenKind::Plus,
        '×' => TokenKind::Times,
        '|' | '•' => TokenKind::Bar,
        '.' => TokenKind::Stop,
        '"' => TokenKind::Unit(Unit::Length(LengthUnit::Inch)),
        '\n' => TokenKind::Line,
        other => names::named(&[other]).map_or(TokenKind::Other, TokenKind::Unit),
    }
}
