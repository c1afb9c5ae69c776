//! What stands in a bracket, as a list has it: entries, what is among them and is none, and how the bracket ends.

use super::figure::Pairs;
use super::scan::Scan;
use super::{Doubt, DoubtKind, Entry};
use crate::units::printed::TokenKind;
use std::ops::Range;

/// Brackets stand in brackets so deep at most; a pattern prints two or three.
const MOST_NESTED: usize = 16;

/// A list has so many numbers at most; nobody makes more sizes.
pub(super) const MOST_ENTRIES: usize = 64;

/// And a bracket so many tokens. What goes on longer is cut there, so that a text of nothing but brackets is not read
/// to its end from each of them.
const MOST_TOKENS: usize = 6 * MOST_ENTRIES;

/// What stands in a bracket.
#[derive(Default)]
pub(super) struct Group {
    pub(super) entries: Vec<Entry>,
    /// The tokens of each entry that is none.
    pub(super) odd: Vec<Range<usize>>,
    /// A bracket that is closed wrongly, or never.
    pub(super) flaw: Option<Doubt>,
    /// The token behind it.
    pub(super) end: usize,
    /// Whether commas or the like part its entries, and not slashes or dashes alone.
    pub(super) is_parted: bool,
    /// Whether other brackets stand within it.
    pub(super) is_nested: bool,
}

impl Scan<'_> {
    /// Reads the bracket that opens at a token.
    pub(super) fn group(&self, open: usize, pairs: Pairs) -> Group {
        let group = Group::default();
        let mut reader = Reader {
            scan: self,
            pairs,
            depth: 0,
            limit: open + MOST_TOKENS,
            group,
        };
        reader.group.end = reader.inside(open);
        reader.group
    }

    /// Whether a mark stands here that parts entries.
    pub(super) fn is_parting(&self, at: usize) -> bool {
        let is_mark = matches!(
            self.kind(at),
            Some(TokenKind::Comma | TokenKind::Semicolon | TokenKind::Colon | TokenKind::Slash | TokenKind::Bar)
        );
        is_mark || self.is_word(at, &["and", "or"])
    }

    /// Whether an empty line, or the end of the text, stands here.
    fn is_end(&self, at: usize) -> bool {
        match self.kind(at) {
            None => true,
            Some(TokenKind::Line) => self.over_line(at) == at,
            Some(_) => false,
        }
    }
}

struct Reader<'a> {
    scan: &'a Scan<'a>,
    pairs: Pairs,
    depth: usize,
    /// The token up to which it is read at most.
    limit: usize,
    group: Group,
}

impl Reader<'_> {
    /// From a bracket that opens to the token behind the one that closes it.
    fn inside(&mut self, open: usize) -> usize {
        let mut at = open + 1;
        loop {
            match self.scan.kind(at) {
                _ if self.scan.is_end(at) || self.is_full(at) => {
                    self.note(DoubtKind::NotClosed, open);
                    return at;
                }
                Some(TokenKind::Close(closing)) => {
                    if Some(closing) != self.scan.opens(open) {
                        self.note(DoubtKind::WrongBracket, at);
                    }
                    return at + 1;
                }
                Some(TokenKind::Open(_)) if self.depth < MOST_NESTED => {
                    self.group.is_nested = true;
                    self.depth += 1;
                    at = self.inside(at);
                    self.depth -= 1;
                }
                Some(TokenKind::Line) => at += 1,
                _ if self.scan.is_parting(at) => {
                    self.group.is_parted |= !self.scan.is(at, TokenKind::Slash);
                    at += 1;
                }
                _ => match self.entry(at, open) {
                    Ok(end) => at = end,
                    Err(end) => {
                        self.note(DoubtKind::NotClosed, open);
                        return end;
                    }
                },
            }
        }
    }

    fn is_full(&self, at: usize) -> bool {
        at >= self.limit || self.group.entries.len() > MOST_ENTRIES
    }

    /// One entry and the token behind it. A bracket that is never closed ends where its entries do, as an error.
    fn entry(&mut self, at: usize, open: usize) -> Result<usize, usize> {
        let taken = self.scan.chain_or_dash(at, self.pairs);
        let is_closed = self.scan.is_paired(open);
        match taken {
            Some((entries, end)) if self.is_boundary(end) => {
                self.group.entries.extend(entries);
                Ok(end)
            }
            Some((entries, end)) if !is_closed => {
                self.group.entries.extend(entries);
                Err(end)
            }
            None if !is_closed => Err(at),
            Some(_) | None => {
                let end = self.odd_end(at);
                self.group.odd.push(at..end);
                Ok(end)
            }
        }
    }

    /// Whether an entry may end before a token.
    fn is_boundary(&self, at: usize) -> bool {
        let is_mark = matches!(
            self.scan.kind(at),
            None | Some(
                TokenKind::Open(_) | TokenKind::Close(_) | TokenKind::Line | TokenKind::Number | TokenKind::Dash
            )
        );
        is_mark || self.scan.is_parting(at) || self.scan.chain(at, self.pairs).is_some()
    }

    /// Where an entry ends that is none: before the next mark that parts, or the end of the bracket.
    fn odd_end(&self, at: usize) -> usize {
        let (mut end, mut depth) = (at, 0_usize);
        while !self.scan.is_end(end) && end < self.limit {
            match self.scan.kind(end) {
                Some(TokenKind::Open(_)) => depth += 1,
                Some(TokenKind::Close(_)) if depth == 0 => break,
                Some(TokenKind::Close(_)) => depth -= 1,
                _ if depth == 0 && self.scan.is_parting(end) => break,
                _ => {}
            }
            end += 1;
        }
        end.max(at + 1)
    }

    fn note(&mut self, kind: DoubtKind, token: usize) {
        let at = self.scan.range(token);
        self.group.flaw.get_or_insert(Doubt { kind, at });
    }
}
