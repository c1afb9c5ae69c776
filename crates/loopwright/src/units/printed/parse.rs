//! From tokens to entries, by recursive descent. The grammar stands in the [module](super)'s own words.

use super::{Bracket, Entry, Figure, Figures, Reading, Token, TokenKind, tokens};
use crate::units::{LengthUnit, Unit};
use std::ops::Range;

/// Brackets stand in brackets so deep at most; a pattern prints two or three.
const MOST_NESTED: usize = 16;

/// The name of a size has so many tokens at most.
const LONGEST_NAME: usize = 32;

/// Before these, `in` behind a number is no inch: `156 in total`.
const NOT_IN_INCHES: [&str; 6] = ["total", "all", "each", "every", "the", "one"];

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

    /// The words behind a number, unless another number follows: then they are its name.
    fn words_behind(&mut self) {
        let end = self.words_end();
        if end == self.at || self.is_number(end) || self.kind(end) == Some(TokenKind::Dash) && self.is_number(end + 1) {
            return;
        }
        let words = self.words(end);
        if let Some(last) = self.reading.entries.last_mut().filter(|last| last.figures.is_some()) {
            last.after = words;
        }
    }

    /// Where the colon is whose name begins here: words, and one number at most.
    fn colon_of_name(&self) -> Option<usize> {
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
    fn words_end(&self) -> usize {
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
    fn is_mark_among_words(&self, at: usize) -> bool {
        match self.kind(at + 1) {
            Some(TokenKind::Word | TokenKind::Unit(_) | TokenKind::Other) => true,
            Some(TokenKind::Number) => at == self.at && !self.touches(at) && !self.is_number_before(at),
            Some(_) | None => false,
        }
    }

    /// Takes the words up to a token: those that a dash or a slash joins are one.
    fn words(&mut self, end: usize) -> Vec<Range<usize>> {
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
    fn is_joined(&self, at: usize) -> bool {
        let is_joint = |at: usize| matches!(self.kind(at), Some(TokenKind::Dash | TokenKind::Slash)) && self.joins(at);
        is_joint(at) || at > self.at && is_joint(at - 1)
    }

    /// Whether a token touches what stands before and behind it.
    fn joins(&self, at: usize) -> bool {
        at > self.at && self.touches(at - 1) && self.touches(at)
    }

    fn touches(&self, at: usize) -> bool {
        match self.tokens.get(at..at + 2) {
            Some([one, next]) => one.touches(next),
            _ => false,
        }
    }

    /// The dash of `S - 86` or `S–86`.
    fn skip_joining_dash(&mut self) {
        let is_behind_words = self.at.checked_sub(1).is_some_and(|before| self.is_words(before));
        if is_behind_words && self.kind(self.at) == Some(TokenKind::Dash) && self.is_number(self.at + 1) {
            self.at += 1;
        }
    }

    /// A number, a range, or a dash in place of one; several where dashes part three numbers or more.
    fn figures(&mut self) -> Vec<Figures> {
        if self.kind(self.at) == Some(TokenKind::Dash) && !self.is_number(self.at + 1) {
            return self.nothing().into_iter().collect();
        }
        let mut chain = Vec::new();
        let mut dash = None;
        while let Some(figure) = self.figure() {
            chain.push(figure);
            dash = self.tokens.get(self.at).filter(|_| self.is_dash(self.at));
            if dash.is_none() || !self.is_number(self.at + 1) {
                break;
            }
            self.at += 1;
        }
        // `86-`, but neither `86 - S` nor `86 to fit`.
        let open = dash.filter(|dash| dash.kind == TokenKind::Dash && !self.is_words(self.at + 1));
        match (chain.as_slice(), open) {
            ([from, to], None) => vec![range(from.clone(), to.clone())],
            (_, None) => chain.into_iter().map(Figures::One).collect(),
            (_, Some(dash)) => {
                self.at += 1;
                let last = chain.pop().map(|last| Figures::Open(last, dash.range.clone()));
                chain.into_iter().map(Figures::One).chain(last).collect()
            }
        }
    }

    /// A dash where a number would be.
    fn nothing(&mut self) -> Option<Figures> {
        let dash = self.tokens.get(self.at)?.range.clone();
        self.at += 1;
        Some(Figures::Nothing(dash))
    }

    /// A number with the unit behind it.
    fn figure(&mut self) -> Option<Figure> {
        let number = self
            .tokens
            .get(self.at)
            .filter(|token| token.kind == TokenKind::Number)?;
        self.at += 1;
        let unit = match self.kind(self.at) {
            Some(TokenKind::Unit(unit)) if self.measures(self.at) => Some(unit),
            _ => None,
        };
        if let Some(unit) = unit {
            self.at += 1;
            self.measure(unit);
        }
        Some(Figure {
            range: number.range.clone(),
            unit,
        })
    }

    /// A unit counts for the numbers before it that have none.
    fn measure(&mut self, unit: Unit) {
        self.reading.unit.get_or_insert(unit);
        for entry in self.reading.entries.iter_mut().skip(self.unmeasured) {
            if let Some(figures) = &mut entry.figures {
                figures.measure(unit);
            }
        }
        self.begin_measures();
    }

    /// Units that follow count for what follows.
    fn begin_measures(&mut self) {
        self.unmeasured = self.reading.entries.len();
        self.waits_for_unit = false;
    }

    fn kind(&self, at: usize) -> Option<TokenKind> {
        self.tokens.get(at).map(|token| token.kind)
    }

    fn parts(&self, at: usize) -> bool {
        self.parting.get(at) == Some(&true)
    }

    fn is_number(&self, at: usize) -> bool {
        self.kind(at) == Some(TokenKind::Number)
    }

    /// Whether a number, with its unit or without, stands before a token.
    fn is_number_before(&self, at: usize) -> bool {
        let before = at.checked_sub(1).and_then(|before| self.kind(before));
        matches!(before, Some(TokenKind::Number | TokenKind::Unit(_)))
    }

    /// Whether a dash, or `to`, stands here.
    fn is_dash(&self, at: usize) -> bool {
        self.kind(at) == Some(TokenKind::Dash) || self.is_word(at, "to") && self.is_number(at + 1)
    }

    fn is_words(&self, at: usize) -> bool {
        matches!(
            self.kind(at),
            Some(TokenKind::Word | TokenKind::Other | TokenKind::Unit(_))
        )
    }

    fn is_word(&self, at: usize, word: &str) -> bool {
        let token = self.tokens.get(at).filter(|token| token.kind == TokenKind::Word);
        token.is_some_and(|token| token.text(self.text).eq_ignore_ascii_case(word))
    }

    /// Whether what could be a unit is one, and neither the name of a size, `M`, nor a word before others: `in total`.
    fn measures(&self, at: usize) -> bool {
        match self.kind(at) {
            Some(TokenKind::Unit(Unit::Length(LengthUnit::M))) => false,
            Some(TokenKind::Unit(_)) => !NOT_IN_INCHES
                .iter()
                .any(|word| self.is_in(at) && self.is_word(at + 1, word)),
            Some(_) | None => false,
        }
    }

    /// Whether `in` stands here, which is a unit behind a number only.
    fn is_in(&self, at: usize) -> bool {
        self.tokens
            .get(at)
            .is_some_and(|token| token.text(self.text).eq_ignore_ascii_case("in"))
    }

    /// Whether the bracket around numbers stands before the next token.
    fn is_behind_numbers(&self) -> bool {
        let before = self.at.checked_sub(1).and_then(|before| self.kind(before));
        self.waits_for_unit && matches!(before, Some(TokenKind::Close(_)))
    }
}

/// A range of two numbers; where one has a unit it counts for both.
fn range(mut from: Figure, mut to: Figure) -> Figures {
    from.unit = from.unit.or(to.unit);
    to.unit = to.unit.or(from.unit);
    Figures::Range(from, to)
}

/// For each token whether it is a colon that parts numbers: in brackets, in a row of three numbers or more, or the only
/// one of a text, with nothing between it and its two numbers.
fn parting_colons(tokens: &[Token]) -> Vec<bool> {
    let mut parting = vec![false; tokens.len()];
    let (mut depth, mut run, mut colons) = (0_usize, Vec::new(), 0);
    for (at, token) in tokens.iter().enumerate() {
        match token.kind {
            TokenKind::Open(_) => depth += 1,
            TokenKind::Close(_) => depth = depth.saturating_sub(1),
            TokenKind::Colon => {
                colons += 1;
                if !stands_between_numbers(tokens, at) {
                    continue;
                }
                if depth > 0 {
                    parting[at] = true;
                }
                run.push(at);
                continue;
            }
            TokenKind::Number | TokenKind::Unit(_) if follows_colon(tokens, at) => continue,
            _ => {}
        }
        settle(&mut run, &mut parting);
    }
    settle(&mut run, &mut parting);
    let mut touching = tokens.windows(3).enumerate().filter(|(_, three)| {
        three[0].kind == TokenKind::Number
            && three[1].kind == TokenKind::Colon
            && three[2].kind == TokenKind::Number
            && three[0].touches(&three[1])
            && three[1].touches(&three[2])
    });
    if let (1, Some((before, _))) = (colons, touching.next()) {
        parting[before + 1] = true;
    }
    parting
}

/// Two colons or more of one row part its numbers.
fn settle(run: &mut Vec<usize>, parting: &mut [bool]) {
    if run.len() > 1 {
        for at in run.iter() {
            parting[*at] = true;
        }
    }
    run.clear();
}

/// Whether a colon has a number before it, with its unit or without, and one behind it.
fn stands_between_numbers(tokens: &[Token], at: usize) -> bool {
    let kind = |at: usize| tokens.get(at).map(|token| token.kind);
    let before = match (at.checked_sub(1).and_then(kind), at.checked_sub(2).and_then(kind)) {
        (Some(TokenKind::Number), _) | (Some(TokenKind::Unit(_)), Some(TokenKind::Number)) => true,
        (Some(_) | None, _) => false,
    };
    before && kind(at + 1) == Some(TokenKind::Number)
}

/// Whether a number, or the unit behind it, comes behind a colon.
fn follows_colon(tokens: &[Token], at: usize) -> bool {
    let is_colon = |at: Option<usize>| {
        at.and_then(|at| tokens.get(at))
            .is_some_and(|token| token.kind == TokenKind::Colon)
    };
    is_colon(at.checked_sub(1)) || is_colon(at.checked_sub(2))
}
