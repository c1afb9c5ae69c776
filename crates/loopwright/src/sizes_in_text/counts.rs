//! The stitch counts of a text, with their line and what they may be: the cast-on, the neck, the body.
//!
//! A list counts stitches where its unit says so, or where the words before it say that stitches are cast on or picked
//! up. What part they are of is said by the words of the line, or by the last heading before it, which is a line of at most four words
//! without a list. All of it is an offer: she says what they are.

use super::{EntryKind, Found, List};
use crate::bounds::Bounds;
use crate::units::{CountUnit, Unit, count};
use std::ops::Range;

/// What a needle may hold.
const STITCHES: Bounds<u32> = Bounds::new(1, 10_000);

/// A heading has so many words at most.
const HEADING: usize = 4;

/// A list of stitches, and what it may be.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct StitchCount {
    /// Which list.
    pub list: usize,
    /// The line in which it stands, counted from nought.
    pub line: usize,
    /// How many for each size; none where a dash stands, or what is no count.
    pub stitches: Vec<Option<u32>>,
    /// Whether they are cast on.
    pub is_cast_on: bool,
    /// The part of the piece.
    pub part: Option<Part>,
}

/// A part of a piece that has a count of its own.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Part {
    /// The neck.
    Neck,
    /// The body.
    Body,
    /// A sleeve.
    Sleeve,
    /// The underarm.
    Underarm,
}

/// The words by which a part is known.
const PARTS: [(Part, &[&str]); 4] = [
    (Part::Underarm, &["underarm", "underarms"]),
    (Part::Neck, &["neck", "neckband", "neckline", "collar"]),
    (Part::Sleeve, &["sleeve", "sleeves", "cuff", "cuffs"]),
    (Part::Body, &["body", "hem"]),
];

/// The lists that count stitches and are not in doubt.
pub fn counts(text: &str, found: &Found) -> Vec<StitchCount> {
    let (mut counts, mut heading, mut next) = (Vec::new(), None, 0);
    for (line, range) in found.lines.ranges.iter().enumerate() {
        let words = text.get(range.clone()).unwrap_or_default();
        let from = next;
        while found.lists.get(next).is_some_and(|list| list.line == line) {
            next += 1;
        }
        if from == next && words.split_whitespace().count() <= HEADING {
            heading = part(words).or(heading);
        }
        for at in from..next {
            let start = if at == from {
                range.start
            } else {
                found.lists[at - 1].range.end
            };
            counts.extend(found.lists.get(at).and_then(|list| {
                let before = start..list.range.start;
                of_list(text, list, at, before, part(words).or(heading))
            }));
        }
    }
    counts
}

/// A list as a count of stitches, where it is one.
fn of_list(text: &str, list: &List, at: usize, before: Range<usize>, part: Option<Part>) -> Option<StitchCount> {
    let words = words(text.get(before).unwrap_or_default());
    let has = |wanted: &[&str]| words.windows(wanted.len()).any(|words| words == wanted);
    let is_cast_on = has(&["co"]) || has(&["cast", "on"]);
    let is_counted = match list.measured_in() {
        Some(unit) => unit == Unit::Count(CountUnit::Stitch),
        None => is_cast_on || has(&["pick", "up"]),
    };
    let is_doubtful = list.doubt.is_some() || list.entries.iter().any(|entry| entry.kind == EntryKind::Span);
    let is_named = list
        .entries
        .iter()
        .any(|entry| matches!(entry.kind, EntryKind::Name | EntryKind::Ordinal));
    let read = |place: &Range<usize>| count::read(text.get(place.clone()).unwrap_or_default(), STITCHES).ok();
    (is_counted && !is_doubtful && !is_named).then(|| StitchCount {
        list: at,
        line: list.line,
        stitches: list
            .entries
            .iter()
            .map(|entry| read(&entry.number).map(|read| read.value))
            .collect(),
        is_cast_on,
        part,
    })
}

/// The part that the words of a line name first.
fn part(line: &str) -> Option<Part> {
    let words = words(line);
    let known = |word: &String| {
        PARTS
            .iter()
            .find(|(_, names)| names.contains(&word.as_str()))
            .map(|(part, _)| *part)
    };
    // `underarm` says more than the part it lies in.
    let is_underarm = words.iter().filter_map(known).any(|part| part == Part::Underarm);
    if is_underarm {
        Some(Part::Underarm)
    } else {
        words.iter().find_map(known)
    }
}

/// The words of a text in small letters.
fn words(text: &str) -> Vec<String> {
    let words = text.split(|mark: char| !mark.is_alphanumeric());
    words.filter(|word| !word.is_empty()).map(str::to_lowercase).collect()
}
