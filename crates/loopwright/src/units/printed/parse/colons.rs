//! Which colons part numbers, as commas do, and which stand behind a name.

use crate::units::printed::{Token, TokenKind};

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
