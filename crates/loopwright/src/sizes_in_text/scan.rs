//! The tokens of a text, and what stands at each of them, without taking it.

use crate::units::printed::{Bracket, Token, TokenKind, tokens};
use crate::units::{CountUnit, LengthUnit, Unit};
use std::ops::Range;

/// Before these words, and before no others, `in` is inches: `6 (7, 8) in from the hem`, but `in rib`, `in total`.
const BEHIND_INCHES: [&str; 24] = [
    "from", "long", "wide", "deep", "high", "to", "above", "below", "for", "at", "after", "before", "past", "beyond",
    "or", "and", "then", "ending", "end", "more", "less", "even", "straight", "of",
];

/// Behind these stand numbers that are the same for all sizes: places, not counts.
const PLACES: [&str; 17] = [
    "row", "rows", "rnd", "rnds", "round", "rounds", "page", "pages", "p", "pp", "step", "steps", "chart", "charts",
    "no", "nos", "fig",
];

/// A text cut into tokens.
pub(super) struct Scan<'a> {
    pub(super) text: &'a str,
    pub(super) tokens: Vec<Token>,
    /// For each bracket whether another one belongs to it.
    paired: Vec<bool>,
}

impl<'a> Scan<'a> {
    pub(super) fn of(text: &'a str) -> Self {
        let tokens = tokens(text);
        let paired = paired(&tokens);
        Self { text, tokens, paired }
    }

    pub(super) fn kind(&self, at: usize) -> Option<TokenKind> {
        self.tokens.get(at).map(|token| token.kind)
    }

    pub(super) fn before(&self, at: usize) -> Option<TokenKind> {
        at.checked_sub(1).and_then(|before| self.kind(before))
    }

    pub(super) fn word(&self, at: usize) -> &'a str {
        self.tokens.get(at).map_or("", |token| token.text(self.text))
    }

    pub(super) fn range(&self, at: usize) -> Range<usize> {
        let end = self.text.len();
        self.tokens.get(at).map_or(end..end, |token| token.range.clone())
    }

    pub(super) fn is(&self, at: usize, kind: TokenKind) -> bool {
        self.kind(at) == Some(kind)
    }

    pub(super) fn is_word(&self, at: usize, words: &[&str]) -> bool {
        let here = self.word(at);
        words.iter().any(|word| word.eq_ignore_ascii_case(here))
    }

    /// Whether nothing stands between a token and the next one.
    pub(super) fn touches_next(&self, at: usize) -> bool {
        matches!(self.tokens.get(at..at + 2), Some([one, next]) if one.touches(next))
    }

    /// Whether a word stands before a token with nothing between: the `K` of `K6`.
    pub(super) fn is_behind_letters(&self, at: usize) -> bool {
        let is_word = matches!(self.before(at), Some(TokenKind::Word | TokenKind::Unit(_)));
        is_word && at > 0 && self.touches_next(at - 1) && self.word(at - 1).ends_with(char::is_alphabetic)
    }

    pub(super) fn opens(&self, at: usize) -> Option<Bracket> {
        match self.kind(at) {
            Some(TokenKind::Open(bracket)) => Some(bracket),
            Some(_) | None => None,
        }
    }

    pub(super) fn closes(&self, at: usize) -> Option<Bracket> {
        match self.kind(at) {
            Some(TokenKind::Close(bracket)) => Some(bracket),
            Some(_) | None => None,
        }
    }

    /// Whether the bracket that stands here has another one that belongs to it.
    pub(super) fn is_paired(&self, at: usize) -> bool {
        self.paired.get(at) == Some(&true)
    }

    /// The unit that a token is, where it is one: `M` is the name of a size, and `in total` no inch.
    pub(super) fn unit(&self, at: usize) -> Option<Unit> {
        match self.kind(at) {
            Some(TokenKind::Unit(Unit::Length(LengthUnit::M))) => None,
            Some(TokenKind::Unit(unit)) => {
                let is_before_other = self.is(at + 1, TokenKind::Word) && !self.is_word(at + 1, &BEHIND_INCHES);
                Some(unit).filter(|_| !(self.is_word(at, &["in"]) && is_before_other))
            }
            Some(_) | None => None,
        }
    }

    /// Where a token ends; the full stop behind a unit may end a sentence, and belongs to the text.
    pub(super) fn end(&self, at: usize) -> usize {
        let end = self.range(at).end;
        let has_stop = matches!(self.kind(at), Some(TokenKind::Unit(_))) && self.word(at).ends_with('.');
        end - usize::from(has_stop)
    }

    /// Whether the word before says that numbers are places: `rows 1`, `page 3`.
    pub(super) fn is_behind_place(&self, at: usize) -> bool {
        let Some(before) = at.checked_sub(1) else { return false };
        let is_stop = self.is(before, TokenKind::Stop);
        let word = if is_stop { before.saturating_sub(1) } else { before };
        self.is_word(word, &PLACES) && !self.is_counted(word)
    }

    /// Whether a number stands before a word: `4 rows`.
    fn is_counted(&self, word: usize) -> bool {
        matches!(self.kind(word), Some(TokenKind::Unit(_))) && self.before(word) == Some(TokenKind::Number)
    }

    /// Whether `3 times`, `twice` or the like stands here.
    pub(super) fn is_times(&self, at: usize) -> bool {
        let is_number = self.is(at, TokenKind::Number);
        let times = Some(TokenKind::Unit(Unit::Count(CountUnit::Time)));
        is_number && self.kind(at + 1) == times || self.is_word(at, &["twice", "once"])
    }

    /// The next token, over the end of one line, but not over an empty one or behind a full stop.
    pub(super) fn over_line(&self, at: usize) -> usize {
        let is_line = |at: usize| self.is(at, TokenKind::Line);
        let is_over = at > 0 && self.word(at - 1).ends_with('.');
        if is_line(at) && !is_line(at + 1) && !is_over {
            at + 1
        } else {
            at
        }
    }
}

/// For each bracket whether it has another one. An empty line ends what was left open.
fn paired(tokens: &[Token]) -> Vec<bool> {
    let mut paired = vec![false; tokens.len()];
    let mut open = Vec::new();
    for (at, token) in tokens.iter().enumerate() {
        match token.kind {
            TokenKind::Open(_) => open.push(at),
            TokenKind::Close(_) => {
                if let Some(opened) = open.pop() {
                    paired[opened] = true;
                    paired[at] = true;
                }
            }
            TokenKind::Line if tokens.get(at + 1).is_some_and(|next| next.kind == TokenKind::Line) => open.clear(),
            _ => {}
        }
    }
    paired
}
