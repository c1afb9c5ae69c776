//! Where the text speaks to some of the sizes only: `Sizes M and L only: work 4 more rows`, `2nd size`. What is said there
//! may not be for her, though no list says so; which words it covers is hers to see.

use super::Lines;
use super::called::Names;
use super::figure::Pairs;
use super::scan::Scan;
use super::{EntryKind, Found};
use crate::units::printed::TokenKind;
use std::ops::Range;

/// A place where some of the sizes are named.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct ForSome {
    /// The line, counted from nought.
    pub line: usize,
    /// The words that name them.
    pub range: Range<usize>,
    /// Which they are, counted from nought.
    pub sizes: Vec<usize>,
}

/// Every place where some of the sizes are named, and not all of them. None of them lies in a list that was found.
pub fn for_some(text: &str, found: &Found, names: &[impl AsRef<str>]) -> Vec<ForSome> {
    let scan = Scan::of(text);
    let (names, lines) = (Names::all(names), Lines::of(text));
    let mut places: Vec<ForSome> = Vec::new();
    let mut at = 0;
    while at < scan.tokens.len() {
        let Some((mut sizes, end)) = named_here(&scan, &names, at) else {
            at += 1;
            continue;
        };
        sizes.sort_unstable();
        sizes.dedup();
        let range = scan.range(at).start..scan.end(end - 1);
        let next = found.lists.partition_point(|list| list.range.end <= range.start);
        let is_in_list = found.lists.get(next).is_some_and(|list| list.range.start < range.end);
        if !is_in_list && !sizes.is_empty() && sizes.len() < names.len() {
            let line = lines.at(range.start);
            places.push(ForSome { line, range, sizes });
        }
        at = end;
    }
    places
}

/// The sizes that are named from a token on, and the token behind the words that say so.
fn named_here(scan: &Scan<'_>, names: &Names, at: usize) -> Option<(Vec<usize>, usize)> {
    if is_size(scan, at) {
        let (sizes, end) = several(scan, at + 1, |at| names.one(scan, at))?;
        return Some((sizes, end + usize::from(is_only(scan, end))));
    }
    // `2nd and 3rd sizes`
    let by_place = several(scan, at, |at| place_of_size(scan, at, names.len()));
    if let Some((sizes, end)) = by_place.filter(|(_, end)| is_size(scan, *end)) {
        return Some((sizes, end + 1));
    }
    // `M and L only`
    let (sizes, end) = several(scan, at, |at| names.one(scan, at))?;
    is_only(scan, end).then_some((sizes, end + 1))
}

fn is_size(scan: &Scan<'_>, at: usize) -> bool {
    scan.is_word(at, &["size", "sizes"])
}

fn is_only(scan: &Scan<'_>, at: usize) -> bool {
    scan.is_word(at, &["only"])
}

/// Several sizes with marks between; a dash or `to` names those between as well.
fn several(scan: &Scan<'_>, from: usize, one: impl Fn(usize) -> Option<(usize, usize)>) -> Option<(Vec<usize>, usize)> {
    let (first, mut end) = one(from)?;
    let mut sizes = vec![first];
    loop {
        let is_range = scan.is(end, TokenKind::Dash) || scan.is_word(end, &["to"]);
        let mut at = end;
        while scan.is_parting(at) || at == end && is_range || scan.opens(at).is_some() && at < end + 2 {
            at += 1;
        }
        let next = (at > end).then(|| one(at)).flatten();
        let Some((size, behind)) = next else {
            return Some((sizes, end));
        };
        let before = sizes.last().copied().unwrap_or(size);
        sizes.extend(if is_range {
            before.min(size)..size + 1
        } else {
            size..size + 1
        });
        end = behind + usize::from(scan.closes(behind).is_some());
    }
}

/// `2nd`: the second size.
fn place_of_size(scan: &Scan<'_>, at: usize, sizes: usize) -> Option<(usize, usize)> {
    let (entries, end) = scan.chain(at, Pairs::Dashes)?;
    let [entry] = entries.as_slice() else { return None };
    let number = scan.text.get(entry.number.clone())?;
    let is_ordinal = entry.kind == EntryKind::Ordinal;
    let place = (1..=sizes).find(|place| is_ordinal && place.to_string() == number)?;
    Some((place - 1, end))
}
