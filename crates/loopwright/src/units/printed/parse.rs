//! From tokens to entries, by recursive descent. The grammar stands in the [module](super)'s own words.

use super::{Bracket, Entry, Reading, Token, TokenKind, tokens};
use colons::parting_colons;

mod colons;
mod figures;
mod look;
mod names;

/// Brackets stand in brackets so deep at most; a pattern prints two or three.
const MOST_NESTED: usize = 16;

/// Reads a list. No text makes it panic.
pub fn read(text: &str) -> Reading {
    let tokens = tokens(text);
    let mut parser = Parser {
        text,
        parting: parting_colons(&tokens),
        tokens: &tokens,
        at: 0,
        depth: 0,
        row: 0,
        unmeasured: 0,
        waits_for_unit: false,
        reading: Reading::default(),
    };
    parser.list();
    parser.reading
}

struct Parser<'a> {
    text: &'a str,
    tokens: &'a [Token],
    /// For each token whether it is a colon that parts numbers.
    parting: Vec<bool>,
    at: usize,
    depth: usize,
    row: usize,
    /// From which entry on numbers wait for a unit behind them.
    unmeasured: usize,
    /// Whether there are any.
    waits_for_unit: bool,
    reading: Reading,
}

impl Parser<'_> {
    /// Entries, to the end of the text or of the bracket.
    fn list(&mut self) {
        while let Some(token) = self.tokens.get(self.at) {
            match token.kind {
                TokenKind::Close(_) if self.depth > 0 => return,
                TokenKind::Close(_) => self.misplaced(),
                TokenKind::Open(bracket) => self.bracket(bracket),
                TokenKind::Line => self.line(),
                TokenKind::Equals => self.colon(),
                TokenKind::Colon if !self.parts(self.at) => self.colon(),
                TokenKind::Colon
                | TokenKind::Comma
                | TokenKind::Semicolon
                | TokenKind::Slash
                | TokenKind::Bar
                | TokenKind::Stop => self.at += 1,
                TokenKind::Word if self.is_word(self.at, "and") => self.at += 1,
                TokenKind::Unit(unit) if self.is_behind_numbers() && self.measures(self.at) => {
                    self.measure(unit);
                    self.at += 1;
                }
                TokenKind::Plus | TokenKind::Times if self.is_number(self.at + 1) => self.misplaced(),
                TokenKind::Number
                | TokenKind::Word
                | TokenKind::Unit(_)
                | TokenKind::Dash
                | TokenKind::Plus
                | TokenKind::Times
                | TokenKind::Other => self.entry(),
            }
        }
    }

    /// What stands in brackets is a list of its own.
    fn bracket(&mut self, bracket: Bracket) {
        if self.depth == MOST_NESTED {
            return self.misplaced();
        }
        self.at += 1;
        self.depth += 1;
        self.list();
        self.depth -= 1;
        match self.kind(self.at) {
            Some(TokenKind::Close(closing)) if closing == bracket => self.at += 1,
            // Another kind of bracket than the one that was opened; at the end of the text it is still being typed.
            Some(_) => self.misplaced(),
            None => {}
        }
    }

    fn line(&mut self) {
        let before = self.at.checked_sub(1).and_then(|before| self.kind(before));
        if before != Some(TokenKind::Comma) {
            self.row += 1;
            self.begin_measures();
        }
        self.at += 1;
    }

    /// What stands before it are names.
    fn colon(&mut self) {
        self.begin_measures();
        self.reading.before_colon.get_or_insert(self.unmeasured);
        self.at += 1;
    }

    /// A mark that has no place here.
    fn misplaced(&mut self) {
        let place = self.tokens.get(self.at).map(|token| token.range.clone());
        self.reading.unplaced.extend(place);
        self.at += 1;
    }

    /// One entry, or as many as there are numbers with dashes between.
    fn entry(&mut self) {
        let start = self.at;
        let mut entry = Entry {
            row: self.row,
            ..Entry::default()
        };
        if let Some(colon) = self.colon_of_name() {
            entry.head = self.words(colon);
            self.at = colon;
            self.colon();
        }
        let words = self.words_end();
        entry.before = self.words(words);
        self.skip_joining_dash();
        let figures = self.figures();
        let mut each = figures.into_iter();
        entry.figures = each.next();
        self.push(entry);
        for figures in each {
            let figures = Some(figures);
            self.push(Entry {
                figures,
                row: self.row,
                ..Entry::default()
            });
        }
        self.words_behind();
        if self.at == start {
            self.misplaced();
        }
    }

    fn push(&mut self, entry: Entry) {
        if entry
            != (Entry {
                row: entry.row,
                ..Entry::default()
            })
        {
            self.waits_for_unit |= entry.figures.is_some();
            self.reading.entries.push(entry);
        }
    }

    /// The words behind a number, unless another number or a colon follows: then they are a name.
    fn words_behind(&mut self) {
        let end = self.words_end();
        let is_name = match self.kind(end) {
            Some(TokenKind::Number | TokenKind::Equals) => true,
            Some(TokenKind::Colon) => !self.parts(end),
            Some(TokenKind::Dash) => self.is_number(end + 1),
            Some(_) | None => false,
        };
        if end == self.at || is_name {
            return;
        }
        let words = self.words(end);
        if let Some(last) = self.reading.entries.last_mut().filter(|last| last.figures.is_some()) {
            last.after = words;
        }
    }
}
