//! Several counts of one gauge in one text, as they were counted in several spots.

use super::read;
use crate::gauge::Direction;
use crate::units::parse::Unreadable;
use crate::units::printed::{Token, TokenKind, Unread, WhyUnread, tokens};
use crate::units::{Gauge, Length};
use std::ops::Range;

/// Reads several counts in one direction: `21, 20 1/2, 21`, parted by commas, semicolons, lines, spaces or `and`. A text
/// that is one gauge as it is printed is one. A comma without a space behind it parts decimals where 5, 25, 50 or 75
/// follows, as in `20,5`; otherwise counts.
///
/// # Errors
/// The first piece that is no count, and why, as [`read`] says; all of the text where nothing is written.
pub fn read_several(text: &str, span: Length, direction: Direction) -> Result<Vec<Gauge>, Unread> {
    let pieces = pieces(text);
    if let (Ok(label), 2..) = (read(text, span), pieces.len())
        && label.other(direction).is_some()
    {
        let gauge = label.gauge(direction);
        let gauge = gauge.map_err(|why| Unread::whole(text, WhyUnread::Number(why)))?;
        return Ok(vec![gauge]);
    }
    if pieces.is_empty() {
        return Err(Unread::whole(text, WhyUnread::Number(Unreadable::Empty)));
    }
    let one = |piece: &Range<usize>| {
        let read = read(text.get(piece.clone()).unwrap_or_default(), span);
        let gauge = read.and_then(|read| read.gauge(direction));
        gauge.map_err(|why| Unread::at(piece, WhyUnread::Number(why)))
    };
    pieces.iter().map(one).collect()
}

/// Where the counts stand: between the marks that part them, and each by itself where there are but numbers between two.
fn pieces(text: &str) -> Vec<Range<usize>> {
    let tokens: Vec<Token> = tokens(text).into_iter().flat_map(|token| counts(text, token)).collect();
    let mut pieces = Vec::new();
    for piece in tokens.split(|token| parts(text, token)) {
        if piece.iter().all(|token| token.kind == TokenKind::Number) {
            pieces.extend(piece.iter().map(|token| token.range.clone()));
        } else if let (Some(first), Some(last)) = (piece.first(), piece.last()) {
            pieces.push(first.range.start..last.range.end);
        }
    }
    pieces
}

/// Whether counts are parted by this.
fn parts(text: &str, token: &Token) -> bool {
    let is_mark = matches!(token.kind, TokenKind::Comma | TokenKind::Semicolon | TokenKind::Line);
    is_mark || token.kind == TokenKind::Word && token.text(text).eq_ignore_ascii_case("and")
}

/// A number that has other decimals behind its comma than counts have, as several; anything else as it is.
fn counts(text: &str, token: Token) -> Vec<Token> {
    let (mut parted, mut from) = (Vec::new(), token.range.start);
    let piece = |kind, range| Token { kind, range };
    if token.kind == TokenKind::Number {
        for (at, _) in token.text(text).match_indices(',') {
            let at = token.range.start + at;
            if !parts_decimals(text.get(at + 1..token.range.end).unwrap_or_default()) {
                parted.extend([piece(TokenKind::Number, from..at), piece(TokenKind::Comma, at..at + 1)]);
                from = at + 1;
            }
        }
    }
    parted.push(piece(token.kind, from..token.range.end));
    parted
}

/// Whether the comma before this parts decimals: a half or a quarter follows, as gauges are counted.
fn parts_decimals(behind: &str) -> bool {
    let digits = behind.bytes().take_while(u8::is_ascii_digit).count();
    matches!(behind.get(..digits), Some("5" | "25" | "50" | "75"))
}
