//! What stands at a token, without taking it.

use super::Parser;
use crate::units::printed::TokenKind;
use crate::units::{LengthUnit, Unit};

/// Before these, `in` behind a number is no inch: `156 in total`.
const NOT_IN_INCHES: [&str; 6] = ["total", "all", "each", "every", "the", "one"];

impl Parser<'_> {
    pub(super) fn kind(&self, at: usize) -> Option<TokenKind> {
        self.tokens.get(at).map(|token| token.kind)
    }

    pub(super) fn parts(&self, at: usize) -> bool {
        self.parting.get(at) == Some(&true)
    }

    pub(super) fn is_number(&self, at: usize) -> bool {
        self.kind(at) == Some(TokenKind::Number)
    }

    /// Whether a number, with its unit or without, stands before a token.
    pub(super) fn is_number_before(&self, at: usize) -> bool {
        let before = at.checked_sub(1).and_then(|before| self.kind(before));
        matches!(before, Some(TokenKind::Number | TokenKind::Unit(_)))
    }

    /// Whether a dash, or `to`, stands here.
    pub(super) fn is_dash(&self, at: usize) -> bool {
        self.kind(at) == Some(TokenKind::Dash) || self.is_word(at, "to") && self.is_number(at + 1)
    }

    pub(super) fn is_words(&self, at: usize) -> bool {
        matches!(
            self.kind(at),
            Some(TokenKind::Word | TokenKind::Other | TokenKind::Unit(_))
        )
    }

    pub(super) fn is_word(&self, at: usize, word: &str) -> bool {
        let token = self.tokens.get(at).filter(|token| token.kind == TokenKind::Word);
        token.is_some_and(|token| token.text(self.text).eq_ignore_ascii_case(word))
    }

    /// Whether what could be a unit is one, and neither the name of a size, `M`, nor a word before others: `in total`.
    pub(super) fn measures(&self, at: usize) -> bool {
        match self.kind(at) {
            Some(TokenKind::Unit(Unit::Length(LengthUnit::M))) => false,
            Some(TokenKind::Unit(_)) => !NOT_IN_INCHES
                .iter()
                .any(|word| self.is_in(at) && self.is_word(at + 1, word)),
            Some(_) | None => false,
        }
    }

    /// Whether `in` stands here, which is a unit behind a number only.
    pub(super) fn is_in(&self, at: usize) -> bool {
        self.tokens
            .get(at)
            .is_some_and(|token| token.text(self.text).eq_ignore_ascii_case("in"))
    }

    /// Whether the bracket around numbers stands before the next token.
    pub(super) fn is_behind_numbers(&self) -> bool {
        let before = self.at.checked_sub(1).and_then(|before| self.kind(before));
        self.waits_for_unit && matches!(before, Some(TokenKind::Close(_)))
    }
}
