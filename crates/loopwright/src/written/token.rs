//! A written line cut into tokens: words, numbers, brackets and the marks between them, each with its place.
//!
//! A word of letters and figures together is looked up whole first (`k2tog`, `w&t`, `C4F`); if nobody knows it, it may be
//! a known word with its count (`k7`, `sl1`) or a count with its word (`3x`, `5th`). Where that is no help either it stays
//! one token, so that a word which is not known is pointed at whole.

use super::place::Place;
use super::vocabulary::{Meaning, Vocabulary};
use crate::units::clean;

/// A piece of a text.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Token {
    pub kind: Kind,
    pub place: Place,
}

/// What a piece is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Kind {
    /// A whole number.
    Number(u32),
    /// A number that no needle could hold, or that is not whole.
    Odd,
    /// A word and what it means.
    Word(Meaning),
    /// A bracket that opens: the one that would close it.
    Open(char),
    /// A bracket that closes.
    Close(char),
    /// So many asterisks in a row.
    Star(u8),
    /// A comma, semicolon, colon, full stop, dash, slash, plus or cross.
    Mark(char),
    /// The end of a line that does not go on.
    Line,
    /// A sign that says nothing in a pattern.
    Strange,
}

/// Cuts a text. No text makes it panic.
pub(super) fn tokens(text: &str, vocabulary: &Vocabulary) -> Vec<Token> {
    let mut cutter = Cutter {
        text,
        vocabulary,
        at: 0,
        tokens: Vec::with_capacity(text.len() / 3),
        open: 0,
    };
    while let Some(sign) = cutter.sign(cutter.at) {
        cutter.step(sign);
    }
    cutter.tokens
}

struct Cutter<'a> {
    text: &'a str,
    vocabulary: &'a Vocabulary,
    at: usize,
    tokens: Vec<Token>,
    /// How many brackets are open: a line that ends within one goes on.
    open: usize,
}

impl Cutter<'_> {
    fn sign(&self, at: usize) -> Option<char> {
        self.text.get(at..)?.chars().next()
    }

    fn step(&mut self, sign: char) {
        let end = self.at + sign.len_utf8();
        match clean::plain_form(sign) {
            _ if is_line_end(sign) => self.line(end),
            ' ' => self.at = end,
            _ if clean::unseen(sign) => self.at = end,
            plain if plain.is_alphanumeric() => self.word(),
            '(' => self.opens(')', end),
            '[' => self.opens(']', end),
            '{' => self.opens('}', end),
            plain @ (')' | ']' | '}') => {
                self.open = self.open.saturating_sub(1);
                self.push(Kind::Close(plain), end);
            }
            '*' => self.stars(),
            plain @ (',' | ';' | ':' | '.' | '-' | '/' | '+' | '|' | '=') => self.push(Kind::Mark(plain), end),
            '×' => self.push(Kind::Mark('×'), end),
            _ => self.push(Kind::Strange, end),
        }
    }

    fn opens(&mut self, closing: char, end: usize) {
        self.open += 1;
        self.push(Kind::Open(closing), end);
    }

    fn push(&mut self, kind: Kind, end: usize) {
        let place = Place { start: self.at, end };
        self.tokens.push(Token { kind, place });
        self.at = end;
    }

    /// A line goes on behind a comma, and within a bracket, unless the next one is empty or names its own row.
    fn line(&mut self, end: usize) {
        let last = self.tokens.last().map(|token| token.kind);
        let next = self
            .text
            .get(end..)
            .unwrap_or_default()
            .trim_start_matches([' ', '\t', '\r']);
        let is_open = self.open > 0 || last == Some(Kind::Mark(','));
        let goes_on = is_open && !next.is_empty() && !next.starts_with('\n') && !names_a_row(next);
        if goes_on || matches!(last, None | Some(Kind::Line)) {
            self.at = end;
        } else {
            self.push(Kind::Line, end);
            self.open = 0;
        }
    }

    fn stars(&mut self) {
        let rest = self.text.get(self.at..).unwrap_or_default();
        let many = rest.chars().take_while(|sign| clean::plain_form(*sign) == '*');
        let (count, bytes) = many.fold((0_u8, 0), |(count, bytes), sign| {
            (count.saturating_add(1), bytes + sign.len_utf8())
        });
        self.push(Kind::Star(count), self.at + bytes);
    }

    /// Letters and figures that touch.
    fn word(&mut self) {
        let rest = self.text.get(self.at..).unwrap_or_default();
        let length: usize = length_of_word(rest);
        let word = &rest[..length];
        let end = self.at + length;
        if let Some(number) = number(word) {
            let is_part = self.sign(end) == Some('.') && self.sign(end + 1).is_some_and(|sign| sign.is_ascii_digit());
            return if is_part {
                self.decimals(end)
            } else {
                self.push(number, end)
            };
        }
        match self.vocabulary.meaning(word) {
            Meaning::Unknown => self.parted(word, end),
            known => self.push(Kind::Word(known), end),
        }
    }

    /// `7.5`: one number, and none that a needle could hold.
    fn decimals(&mut self, point: usize) {
        let rest = self.text.get(point + 1..).unwrap_or_default();
        let digits = rest.bytes().take_while(u8::is_ascii_digit).count();
        self.push(Kind::Odd, point + 1 + digits);
    }

    /// `k7` is a word and its count, `5th` a count and its word; anything else is one unknown word.
    fn parted(&mut self, word: &str, end: usize) {
        let unknown = Kind::Word(Meaning::Unknown);
        let begins_with_digit = word.starts_with(|sign: char| sign.is_ascii_digit());
        let is_other = |sign: char| sign.is_ascii_digit() != begins_with_digit;
        let (first, second) = word.split_at(word.find(is_other).unwrap_or(word.len()));
        let (letters, digits) = if begins_with_digit {
            (second, first)
        } else {
            (first, second)
        };
        let meaning = self.vocabulary.meaning(letters);
        let fits = if begins_with_digit {
            meaning.may_follow_its_count()
        } else {
            meaning.may_touch_its_count()
        };
        let (Some(number), true) = (number(digits), fits) else {
            return self.push(unknown, end);
        };
        let (one, other) = match begins_with_digit {
            true => (number, Kind::Word(meaning)),
            false => (Kind::Word(meaning), number),
        };
        self.push(one, self.at + first.len());
        self.push(other, end);
    }
}

/// Whether a line begins with the name of a row, so that it is not the rest of the one before.
fn names_a_row(line: &str) -> bool {
    let begins = |word: &str| {
        line.get(..word.len())
            .is_some_and(|start| start.eq_ignore_ascii_case(word))
    };
    ["row", "rnd", "round", "next", "rep"].into_iter().any(begins)
}

const fn is_line_end(sign: char) -> bool {
    matches!(sign, '\n' | '\u{b}' | '\u{c}' | '\u{85}' | '\u{2028}' | '\u{2029}')
}

/// Letters and figures, with `&` and an apostrophe between them: `w&t`, `k1f&b`, `inc'd`.
fn length_of_word(rest: &str) -> usize {
    let mut end = 0;
    let mut signs = rest.char_indices().peekable();
    while let Some((at, sign)) = signs.next() {
        let joins = matches!(clean::plain_form(sign), '&' | '\'') && at > 0;
        let next_is_letter = signs.peek().is_some_and(|(_, next)| next.is_alphanumeric());
        if sign.is_alphanumeric() || joins && next_is_letter {
            end = at + sign.len_utf8();
        } else {
            break;
        }
    }
    end.max(rest.chars().next().map_or(0, char::len_utf8))
}

/// Figures alone; with a half or so behind them they are no number of stitches.
fn number(word: &str) -> Option<Kind> {
    let is_digit = |sign: char| sign.is_ascii_digit();
    let is_figure = |sign: char| sign.is_numeric();
    if word.is_empty() || !word.chars().all(is_figure) {
        return None;
    }
    let value = word.parse().ok().filter(|_| word.chars().all(is_digit));
    Some(value.filter(|value| *value <= MOST).map_or(Kind::Odd, Kind::Number))
}

/// No needle holds more, and no row is repeated more often.
pub(super) const MOST: u32 = 1_000_000;
