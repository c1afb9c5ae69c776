//! Goes through a text once and takes every list in it; what each of them is says [`judge`](super::judge).

use super::called::Names;
use super::judge::{House, Judged, judge};
use super::scan::Scan;
use super::shape::Shape;
use super::{Found, Lines, List, order};
use crate::units::printed::TokenKind;

/// Finds every list that has a number for each size. The names of the sizes are those that the pattern gives them
/// ([`named`](super::named)); where it has none, their numbers. No text makes it panic.
pub fn find(text: &str, names: &[impl AsRef<str>]) -> Found {
    let mut found = Found {
        sizes: names.len(),
        lists: Vec::new(),
        lines: Lines::of(text),
    };
    if names.len() < 2 {
        return found;
    }
    let scan = Scan::of(text);
    let shapes = shapes(&scan, &Names::of(names), names.len());
    let house = House::of(&scan, &shapes, names.len());
    for shape in shapes {
        if let Judged::List(doubt) = judge(&scan, &shape, names.len(), &house) {
            let range = scan.range(shape.tokens.start).start..scan.end(shape.tokens.end.saturating_sub(1));
            let line = found.lines.at(range.start);
            let before = found.lists.last().filter(|before| before.line == line);
            found.lists.push(List {
                nth: before.map_or(0, |before| before.nth + 1),
                range,
                line,
                style: shape.style,
                entries: shape.entries,
                unit: shape.unit,
                doubt,
            });
        }
    }
    order::check(text, &mut found.lists);
    found
}

/// All that is built as a list is, in the order of the text.
fn shapes(scan: &Scan<'_>, names: &Names, sizes: usize) -> Vec<Shape> {
    let mut shapes = Vec::new();
    let mut at = 0;
    while at < scan.tokens.len() {
        match shape(scan, names, at, sizes).filter(|shape| !shape.is_said_in_passing(scan, sizes)) {
            Some(shape) => {
                let shape = shape.with_units(scan);
                at = shape.tokens.end.max(at + 1);
                shapes.push(shape);
            }
            None => at += 1,
        }
    }
    shapes
}

/// What begins at a token and is built as a list is.
fn shape(scan: &Scan<'_>, names: &Names, at: usize, sizes: usize) -> Option<Shape> {
    let numbers = || scan.bracketed(at, sizes).or_else(|| scan.row(at));
    match scan.kind(at)? {
        // `6th (8th, 10th)`
        TokenKind::Word if scan.word(at).starts_with(|mark: char| mark.is_ascii_digit()) => {
            names.list(scan, at).or_else(numbers)
        }
        TokenKind::Word | TokenKind::Unit(_) => names.list(scan, at),
        TokenKind::Number | TokenKind::Dash => numbers(),
        TokenKind::Open(_) => scan.one_bracket(at, sizes),
        _ => None,
    }
}
