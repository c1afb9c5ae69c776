//! The pattern's own line of size names: `Sizes: S (M, L, XL)`, `To fit: 1 (2) [3] {4}`, `XS/S/M`.
//!
//! A line that begins with `size` or `sizes` has them, and one that begins with `to fit`; so does a line of nothing but
//! letters that sizes go by. Words before a colon say what is listed. What is found is an offer.

use super::Lines;
use super::scan::Scan;
use crate::units::printed::TokenKind;
use std::ops::Range;

/// Letters and words that sizes go by.
const CODES: [&str; 40] = [
    "xxxs", "xxs", "xs", "s", "m", "l", "xl", "xxl", "xxxl", "xxxxl", "2xs", "3xs", "1xl", "2xl", "3xl", "4xl", "5xl",
    "6xl", "1x", "2x", "3x", "4x", "5x", "6x", "small", "medium", "large", "extra", "x", "petite", "years", "year",
    "yrs", "yr", "months", "month", "mos", "mo", "newborn", "child",
];

/// Words that say what is listed.
const LABELS: [&str; 13] = [
    "fit", "fits", "bust", "chest", "finished", "actual", "approx", "up", "to", "a", "the", "of", "head",
];

/// A line that names the sizes.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct SizesLine {
    /// Which line, counted from nought.
    pub line: usize,
    /// The names, in order.
    pub names: Vec<String>,
    /// Where they stand.
    pub ranges: Vec<Range<usize>>,
    /// How the line says that they are sizes.
    pub says: Says,
}

/// How a line says that its list names the sizes. The first says it best.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Says {
    /// `Sizes: S (M, L)`
    Sizes,
    /// Nothing but letters: `XS/S/M`.
    Letters,
    /// `To fit bust: 81 (86, 91) cm`
    ToFit,
}

/// Every line that names sizes, the one that says it best first.
pub fn named(text: &str) -> Vec<SizesLine> {
    let lines = Lines::of(text);
    let scan = Scan::of(text);
    let mut found = Vec::new();
    let mut at = 0;
    while at < scan.tokens.len() {
        let end = line_end(&scan, at);
        if let Some((says, names)) = of_line(&scan, at, end) {
            found.push(SizesLine {
                line: lines.at(scan.range(at).start),
                names: names.iter().map(|range| tidied(text, range)).collect(),
                ranges: names,
                says,
            });
        }
        at = end + 1;
    }
    found.sort_by_key(|line| line.says);
    found
}

/// A name without line ends and double spaces.
fn tidied(text: &str, range: &Range<usize>) -> String {
    let words = text.get(range.clone()).unwrap_or_default().split_whitespace();
    words.collect::<Vec<_>>().join(" ")
}

/// The end of a line; one within a bracket, or behind a comma, goes on.
fn line_end(scan: &Scan<'_>, from: usize) -> usize {
    let (mut at, mut depth) = (from, 0_usize);
    while let Some(kind) = scan.kind(at) {
        match kind {
            TokenKind::Open(_) if scan.is_paired(at) => depth += 1,
            TokenKind::Close(_) if scan.is_paired(at) => depth = depth.saturating_sub(1),
            TokenKind::Line if depth == 0 && scan.before(at) != Some(TokenKind::Comma) => return at,
            _ => {}
        }
        at += 1;
    }
    at
}

fn of_line(scan: &Scan<'_>, at: usize, end: usize) -> Option<(Says, Vec<Range<usize>>)> {
    let says = if scan.is_word(at, &["size", "sizes"]) {
        Says::Sizes
    } else if scan.is_word(at, &["to"]) && scan.is_word(at + 1, &["fit"]) {
        Says::ToFit
    } else {
        Says::Letters
    };
    let from = match says {
        Says::Letters => at,
        Says::Sizes | Says::ToFit => behind_label(scan, at + 1, end),
    };
    let (names, last) = names(scan, from, end);
    let is_fit = match says {
        Says::Letters => last == end && names.iter().all(|name| is_code(scan, name)),
        Says::Sizes | Says::ToFit => true,
    };
    let ranges: Vec<Range<usize>> = names.iter().map(|name| place(scan, name)).collect();
    (is_fit && ranges.len() > 1).then_some((says, ranges))
}

/// Over the words that say what is listed: up to a colon, where only words stand before it.
fn behind_label(scan: &Scan<'_>, from: usize, end: usize) -> usize {
    let mut at = from;
    while at < end
        && matches!(
            scan.kind(at),
            Some(TokenKind::Word | TokenKind::Unit(_) | TokenKind::Slash)
        )
    {
        at += 1;
    }
    if matches!(scan.kind(at), Some(TokenKind::Colon | TokenKind::Equals)) {
        return at + 1;
    }
    let mut at = from;
    while at < end && scan.is_word(at, &LABELS) {
        at += 1;
    }
    at
}

/// The names that begin at a token, each as its tokens, and the token behind them.
fn names(scan: &Scan<'_>, from: usize, end: usize) -> (Vec<Range<usize>>, usize) {
    let mut names = Vec::new();
    let (mut at, mut depth, mut has_bracket) = (from, 0_usize, false);
    while at < end {
        match scan.kind(at) {
            Some(TokenKind::Open(_)) => (depth, has_bracket) = (depth + 1, true),
            Some(TokenKind::Close(_)) => depth = depth.saturating_sub(1),
            Some(TokenKind::Line) => {}
            _ if scan.is_parting(at) => {}
            // The list ends with its last bracket.
            _ if has_bracket && depth == 0 => break,
            _ => match name_end(scan, at, end) {
                Some(behind) => {
                    names.push(at..behind);
                    at = behind;
                    continue;
                }
                None => break,
            },
        }
        at += 1;
    }
    if let [one] = names.as_slice() {
        names = parted(scan, one);
    }
    (names, at)
}

/// Where a name ends: words and numbers that sizes go by, with the slashes and dashes that join them.
fn name_end(scan: &Scan<'_>, at: usize, end: usize) -> Option<usize> {
    let mut behind = at;
    while behind < end {
        let goes_on = match scan.kind(behind) {
            Some(TokenKind::Number) => true,
            Some(TokenKind::Word | TokenKind::Unit(_)) => is_named(scan, behind),
            Some(TokenKind::Slash) => behind > at && scan.touches_next(behind - 1) && scan.touches_next(behind),
            Some(TokenKind::Dash) => {
                behind > at && (is_named(scan, behind + 1) || scan.is(behind + 1, TokenKind::Number))
            }
            _ => false,
        };
        if !goes_on {
            break;
        }
        behind += 1;
    }
    (behind > at).then_some(behind)
}

/// One word for all names, `XS/S/M` or `S M L`, parted.
fn parted(scan: &Scan<'_>, one: &Range<usize>) -> Vec<Range<usize>> {
    let has = |kind| one.clone().any(|at| scan.is(at, kind));
    let mark = if has(TokenKind::Slash) {
        Some(TokenKind::Slash)
    } else {
        Some(TokenKind::Dash).filter(|dash| has(*dash))
    };
    let Some(mark) = mark else {
        return one.clone().map(|at| at..at + 1).collect();
    };
    let mut names = Vec::new();
    let mut from = one.start;
    for at in one.clone().chain([one.end]) {
        if at == one.end || scan.is(at, mark) {
            names.push(from..at);
            from = at + 1;
        }
    }
    names.retain(|name| !name.is_empty());
    names
}

/// Whether a word is one that sizes go by.
fn is_named(scan: &Scan<'_>, at: usize) -> bool {
    let word = scan.word(at);
    scan.is_word(at, &CODES) || word.len() == 1 && word.chars().all(char::is_uppercase)
}

fn is_code(scan: &Scan<'_>, name: &Range<usize>) -> bool {
    name.clone().any(|at| scan.word(at).contains(char::is_alphabetic))
}

fn place(scan: &Scan<'_>, name: &Range<usize>) -> Range<usize> {
    scan.range(name.start).start..scan.range(name.end.saturating_sub(1)).end
}
