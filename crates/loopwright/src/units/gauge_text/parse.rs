//! From tokens to counts and a span, by descent. The grammar stands in the [module](super)'s own words.

use super::{Count, count, direction_of, thousandths};
use crate::gauge::Direction;
use crate::units::parse::{Unreadable, Wanted, pieces, read as read_measure};
use crate::units::printed::{Token, TokenKind};
use crate::units::{Dimension, Gauge, Length, LengthUnit, Unit};

/// The ends of a range are at most so many times apart, as the first over the second: 4 to 5 in an inch are. Two numbers
/// further apart are more likely stitches and rows. Common practice, no source.
const WIDEST: (u32, u32) = (5, 4);

/// Words before a span.
const OVER: [&str; 6] = ["over", "per", "to", "on", "equals", "in"];

/// Words between those and the span that say nothing more.
const ARTICLES: [&str; 4] = ["the", "a", "an", "each"];

/// Words behind a gauge that begin what was knitted, and how.
const BEHIND: [&str; 8] = ["in", "over", "on", "of", "with", "after", "before", "worked"];

/// The tokens of a gauge, and how many of them are read.
pub(super) struct Parser<'a> {
    text: &'a str,
    tokens: Vec<Token>,
    at: usize,
}

impl<'a> Parser<'a> {
    /// At the start of a text.
    pub(super) const fn new(text: &'a str, tokens: Vec<Token>) -> Self {
        Self { text, tokens, at: 0 }
    }

    /// The counts, and the span if one is named.
    pub(super) fn gauge(&mut self) -> Result<(Vec<Count>, Option<Length>), Unreadable> {
        if self.is_word(self.at, &["gauge", "tension"]) {
            self.at += 1 + usize::from(self.kind(self.at + 1) == Some(TokenKind::Colon));
        }
        let mut span = self.span_before();
        let mut counts = vec![self.counted()?];
        while let Some(is_cross) = self.join() {
            counts.push(self.counted()?);
            if let ([first, second], true) = (counts.as_mut_slice(), is_cross) {
                first.direction.get_or_insert(Direction::Stitches);
                second.direction.get_or_insert(Direction::Rows);
            }
        }
        if self.over() {
            let behind = self.span()?;
            if span.is_some() {
                return Err(Unreadable::TwoNumbers);
            }
            span = Some(behind);
        }
        self.end()?;
        Ok((counts, span))
    }

    /// A span with `=` behind it, before the counts.
    fn span_before(&mut self) -> Option<Length> {
        let from = self.at;
        if self.kind(from) == Some(TokenKind::Number)
            && let Ok(span) = self.span()
            && matches!(self.kind(self.at), Some(TokenKind::Equals | TokenKind::Colon))
        {
            self.at += 1;
            return Some(span);
        }
        self.at = from;
        None
    }

    /// A number or a range, and what is counted.
    fn counted(&mut self) -> Result<Count, Unreadable> {
        let first = self.number()?;
        let mut ends = (first, first);
        let is_dash = self.kind(self.at) == Some(TokenKind::Dash);
        if is_dash || (self.is_word(self.at, &["to"]) && !self.is_span(self.at + 1)) {
            self.at += 1;
            let second = self.number()?;
            ends = (first.min(second), first.max(second));
            if ends.1 * WIDEST.1 > ends.0 * WIDEST.0 {
                return Err(Unreadable::TwoNumbers);
            }
        }
        let direction = match self.kind(self.at) {
            Some(TokenKind::Unit(unit)) => direction_of(unit),
            Some(_) | None => None,
        };
        self.at += usize::from(direction.is_some());
        Ok(Count {
            low: ends.0,
            high: ends.1,
            direction,
        })
    }

    /// The number here, in thousandths.
    fn number(&mut self) -> Result<u32, Unreadable> {
        let Some(token) = self.tokens.get(self.at) else {
            return Err(Unreadable::Unfinished);
        };
        if token.kind != TokenKind::Number {
            return Err(Unreadable::NotANumber);
        }
        let (number, _) = pieces(token.text(self.text))?;
        if number.parted.is_some() {
            return Err(Unreadable::TwoNumbers);
        }
        self.at += 1;
        count(thousandths(&number))
    }

    /// What joins another count to the one before, and whether it is a cross.
    fn join(&mut self) -> Option<bool> {
        let here = self.kind(self.at)?;
        let is_cross = here == TokenKind::Times || self.is_word(self.at, &["x"]);
        let is_mark = matches!(
            here,
            TokenKind::Comma | TokenKind::Slash | TokenKind::Plus | TokenKind::Semicolon
        ) || self.is_word(self.at, &["and", "by"])
            || self.token_text(self.at) == "&";
        if here == TokenKind::Number {
            return Some(false);
        }
        let goes_on = match self.kind(self.at + 1) {
            Some(TokenKind::Number) => !self.is_span(self.at + 1),
            // The next key is the count.
            None => here != TokenKind::Comma,
            Some(_) => false,
        };
        if !(is_cross || is_mark) || !goes_on {
            return None;
        }
        self.at += 1;
        Some(is_cross)
    }

    /// Passes over the words before a span.
    fn over(&mut self) -> bool {
        let is_over = matches!(
            self.kind(self.at),
            Some(TokenKind::Equals | TokenKind::Colon | TokenKind::Slash)
        ) || self.is_word(self.at, &OVER);
        let mut behind = self.at + 1;
        while self.is_word(behind, &ARTICLES) {
            behind += 1;
        }
        // `in stockinette` is no span; behind nothing the next key is one.
        let goes_on = match self.kind(behind) {
            None | Some(TokenKind::Number) => true,
            Some(_) => self.is_span(behind),
        };
        if is_over && goes_on {
            self.at = behind;
        }
        is_over && goes_on
    }

    /// A span, perhaps in both measures.
    fn span(&mut self) -> Result<Length, Unreadable> {
        let first = self.one_span()?;
        let from = self.at;
        let is_beside = matches!(
            self.kind(self.at),
            Some(TokenKind::Slash | TokenKind::Open(_) | TokenKind::Equals)
        ) || self.is_word(self.at, &["or"]);
        if !is_beside || !self.is_span(self.at + 1) {
            return Ok(first.0);
        }
        self.at += 1;
        let second = self.one_span()?;
        if let Some(TokenKind::Close(_)) = self.kind(self.at) {
            self.at += 1;
        }
        match (first.1, second.1) {
            (LengthUnit::Inch, LengthUnit::Cm | LengthUnit::Mm) => Ok(second.0),
            (LengthUnit::Cm | LengthUnit::Mm, LengthUnit::Inch) => Ok(first.0),
            (..) => {
                self.at = from;
                Ok(first.0)
            }
        }
    }

    /// A span in one measure: `10 cm`, `10 x 10 cm`, `inch`.
    fn one_span(&mut self) -> Result<(Length, LengthUnit), Unreadable> {
        let from = self.at;
        let number = (self.kind(from) == Some(TokenKind::Number)).then(|| self.token_text(from));
        self.at += usize::from(number.is_some());
        if self.kind(self.at).is_none() {
            // 15 what? Nobody can tell.
            return Err(if number.is_some() {
                Unreadable::UnknownUnit
            } else {
                Unreadable::Unfinished
            });
        }
        let mut unit = self.length_unit();
        if self.kind(self.at) == Some(TokenKind::Times) && self.kind(self.at + 1) == Some(TokenKind::Number) {
            if number != Some(self.token_text(self.at + 1)) {
                return Err(Unreadable::TwoNumbers);
            }
            self.at += 2;
            unit = self.length_unit().or(unit);
        }
        let unit = unit.ok_or(Unreadable::UnknownUnit)?;
        if self.is_word(self.at, &["square", "sq"]) {
            self.at += 1;
        }
        let wanted = Wanted {
            bounds: Gauge::SPANS,
            unit,
        };
        let span = read_measure(number.unwrap_or("1"), &wanted)?;
        Ok((span.value, unit))
    }

    fn length_unit(&mut self) -> Option<LengthUnit> {
        match self.kind(self.at) {
            Some(TokenKind::Unit(Unit::Length(unit))) => {
                self.at += 1;
                Some(unit)
            }
            Some(_) | None => None,
        }
    }

    /// Whether a span with its number stands here.
    fn is_span(&self, at: usize) -> bool {
        let is_length = |at: usize| matches!(self.kind(at), Some(TokenKind::Unit(Unit::Length(_))));
        let is_number = |at: usize| self.kind(at) == Some(TokenKind::Number);
        // In `31 in 15 cm` the inch is a word.
        let is_plain = is_length(at + 1) && !(self.token_text(at + 1) == "in" && is_number(at + 2));
        let is_square = self.kind(at + 1) == Some(TokenKind::Times) && is_number(at + 2) && is_length(at + 3);
        is_length(at) || (is_number(at) && (is_plain || is_square))
    }

    /// Words may follow, such as what was knitted; a number may not, and would be lost.
    fn end(&self) -> Result<(), Unreadable> {
        let rest = self.tokens.get(self.at..).unwrap_or_default();
        let holds_figures = |token: &Token| token.text(self.text).chars().any(char::is_numeric);
        match rest.first().map(|token| token.kind) {
            None => Ok(()),
            _ if rest.iter().any(holds_figures) => Err(Unreadable::TwoNumbers),
            _ if self.is_word(self.at, &BEHIND) => Ok(()),
            Some(TokenKind::Unit(written)) if written.dimension() != Dimension::Count => Err(Unreadable::WrongKind {
                written,
                wanted: Dimension::Count,
            }),
            Some(TokenKind::Comma | TokenKind::Semicolon | TokenKind::Stop) => Ok(()),
            Some(TokenKind::Dash | TokenKind::Times | TokenKind::Slash | TokenKind::Equals | TokenKind::Plus) => {
                Err(Unreadable::Unfinished)
            }
            Some(_) => Err(Unreadable::UnknownUnit),
        }
    }

    fn kind(&self, at: usize) -> Option<TokenKind> {
        self.tokens.get(at).map(|token| token.kind)
    }

    fn token_text(&self, at: usize) -> &'a str {
        self.tokens.get(at).map_or("", |token| token.text(self.text))
    }

    /// Whether one of these words stands here, capitals or not.
    fn is_word(&self, at: usize, words: &[&str]) -> bool {
        words.iter().any(|word| self.token_text(at).eq_ignore_ascii_case(word))
    }
}
