//! Which colons part numbers, as commas do, and which stand behind a name.

use crate::units::printed::{Token, TokenKind};
use crate::units::{LengthUnit, Unit};

/// For each token whether it is a colon that parts numbers: in brackets, in a row of three numbers or more, or the only
/// one of a text, with nothing between it and its two numbers.
pub(super) fn parting_colons(tokens: &[Token]) -> Vec<bool> {
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
            // Ranges may stand between colons too.
            TokenKind::Number | TokenKind::Unit(_) | TokenKind::Dash if goes_on(tokens, at) => continue,
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
    let before = at.checked_sub(1).and_then(kind);
    let is_measured = before.is_some_and(is_unit) && at.checked_sub(2).and_then(kind) == Some(TokenKind::Number);
    let before = before == Some(TokenKind::Number) || is_measured;
    before && kind(at + 1) == Some(TokenKind::Number)
}

/// Whether a token goes on with the number or the range that a colon has before or behind it.
fn goes_on(tokens: &[Token], at: usize) -> bool {
    let before = at.checked_sub(1).and_then(|before| tokens.get(before));
    let before = before.map(|token| token.kind);
    match tokens.get(at).map(|token| token.kind) {
        Some(TokenKind::Number) => matches!(before, Some(TokenKind::Colon | TokenKind::Dash)),
        Some(kind) if is_unit(kind) => before == Some(TokenKind::Number),
        Some(TokenKind::Dash) => before.is_some_and(|before| before == TokenKind::Number || is_unit(before)),
        Some(_) | None => false,
    }
}

/// Whether a unit of girths can stand behind a number here. An `M` is the name of a size.
fn is_unit(kind: TokenKind) -> bool {
    matches!(kind, TokenKind::Unit(unit) if unit != Unit::Length(LengthUnit::M))
}
