//! The words of an entry: what stands before its colon, before its number and behind it, and which dashes and slashes
//! belong to them.

use super::Parser;
use crate::units::Unit;
use crate::units::printed::TokenKind;
use std::ops::Range;

/// The name of a size has so many tokens at most.
const LONGEST_NAME: usize = 16;

impl Parser<'_> {
    /// Where the colon is whose name begins here: words, and one number at most.
    pub(super) fn colon_of_name(&self) -> Option<usize> {
        let (mut at, mut numbers) = (self.at, 0);
        while at < self.at + LONGEST_NAME {
            match self.kind(at)? {
                TokenKind::Colon if self.parts(at) => return None,
                TokenKind::Colon | TokenKind::Equals => return (at > self.at).then_some(at),
                TokenKind::Number => {
                    let before = at.checked_sub(1).and_then(|before| self.kind(before));
                    let is_second = at > self.at && matches!(before, Some(TokenKind::Dash | TokenKind::Slash));
                    numbers += usize::from(!is_second);
                    if numbers > 1 {
                        return None;
                    }
                }
                TokenKind::Word if self.is_word(at, "and") => return None,
                TokenKind::Dash | TokenKind::Word | TokenKind::Unit(_) | TokenKind::Stop | TokenKind::Other => {}
                TokenKind::Slash if self.joins(at) => {}
                TokenKind::Slash
                | TokenKind::Open(_)
                | TokenKind::Close(_)
                | TokenKind::Comma
                | TokenKind::Semicolon
                | TokenKind::Plus
                | TokenKind::Times
                | TokenKind::Bar
                | TokenKind::Line => return None,
            }
            at += 1;
        }
        None
    }

    /// Where the words that begin here end.
    pub(super) fn words_end(&self) -> usize {
        let mut at = self.at;
        while let Some(kind) = self.kind(at) {
            let goes_on = match kind {
                TokenKind::Word => !self.is_word(at, "and"),
                TokenKind::Unit(_) | TokenKind::Other | TokenKind::Stop => true,
                TokenKind::Slash => self.joins(at) && at > self.at && !self.is_number(at + 1),
                TokenKind::Dash => self.is_mark_among_words(at),
                TokenKind::Plus | TokenKind::Times => !self.is_number(at + 1),
                TokenKind::Number
                | TokenKind::Open(_)
                | TokenKind::Close(_)
                | TokenKind::Comma
                | TokenKind::Semicolon
                | TokenKind::Colon
                | TokenKind::Equals
                | TokenKind::Bar
                | TokenKind::Line => false,
            };
            if !goes_on {
                break;
            }
            at += 1;
        }
        at
    }

    /// Whether a dash says nothing by itself: within `X-Small`, or before an entry as a bullet.
    pub(super) fn is_mark_among_words(&self, at: usize) -> bool {
        match self.kind(at + 1) {
            Some(TokenKind::Word | TokenKind::Unit(_) | TokenKind::Other) => true,
            Some(TokenKind::Number) => at == self.at && !self.touches(at) && !self.is_number_before(at),
            Some(_) | None => false,
        }
    }

    /// Takes the words up to a token: those that a dash or a slash joins are one.
    pub(super) fn words(&mut self, end: usize) -> Vec<Range<usize>> {
        let mut words: Vec<Range<usize>> = Vec::new();
        for at in self.at..end {
            let Some(token) = self.tokens.get(at) else { break };
            let is_strange = token.kind == TokenKind::Other && token.text(self.text).chars().any(char::is_numeric);
            if is_strange {
                self.reading.unplaced.push(token.range.clone());
            }
            let is_mark = matches!(token.kind, TokenKind::Dash | TokenKind::Stop | TokenKind::Slash);
            let is_other_end =
                token.kind == TokenKind::Number && at > self.at + 1 && self.kind(at - 1) == Some(TokenKind::Dash);
            match (words.last_mut(), token.kind) {
                (Some(last), _) if self.is_joined(at) && last.end == token.range.start => last.end = token.range.end,
                // `6 - 8 years`
                (Some(last), _) if is_other_end => last.end = token.range.end,
                (_, TokenKind::Unit(unit @ Unit::Length(_))) if self.measures(at) && !self.is_in(at) => {
                    self.reading.unit.get_or_insert(unit);
                }
                (_, _) if is_mark => {}
                (_, _) => words.push(token.range.clone()),
            }
        }
        self.at = end.max(self.at);
        words
    }

    /// Whether a token is one word with what stands before it: `X-Small`, `M/L`, `6-8`.
    pub(super) fn is_joined(&self, at: usize) -> bool {
        let is_joint = |at: usize| matches!(self.kind(at), Some(TokenKind::Dash | TokenKind::Slash)) && self.joins(at);
        is_joint(at) || at > self.at && is_joint(at - 1)
    }

    /// Whether a token touches what stands before and behind it.
    pub(super) fn joins(&self, at: usize) -> bool {
        at > self.at && self.touches(at - 1) && self.touches(at)
    }

    pub(super) fn touches(&self, at: usize) -> bool {
        match self.tokens.get(at..at + 2) {
            Some([one, next]) => one.touches(next),
            _ => false,
        }
    }

    /// The dash of `S - 86` or `S–86`.
    pub(super) fn skip_joining_dash(&mut self) {
        let is_behind_words = self.at.checked_sub(1).is_some_and(|before| self.is_words(before));
        if is_behind_words && self.kind(self.at) == Some(TokenKind::Dash) && self.is_number(self.at + 1) {
            self.at += 1;
        }
    }
}
