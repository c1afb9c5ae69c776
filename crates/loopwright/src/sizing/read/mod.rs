//! A size list as it is typed or copied from a pattern: `S 86-91, M 91-97`, `97 (103, 111) cm`, `S (M, L): 34 (36½, 38)"`.
//!
//! Read in three steps: the text is cut into numbers, words and marks ([`token`]); numbers become girths, and words
//! labels ([`item`]); and labels are given to girths in order ([`pair`]). A unit behind a number counts for it and for
//! those before it that have none. Words that only say what the list is (`to fit bust`, `finished`) are passed over.
//! What cannot be read comes back with its place in the text, all of it at once; nothing is guessed silently.
//!
//! ```
//! use loopwright::sizing::{Span, read_sizes};
//! use loopwright::units::{Length, LengthUnit};
//!
//! let sizes = read_sizes("To fit bust: S 32-34, M 36-38, 1X 44-46 in", LengthUnit::Cm).unwrap();
//! assert_eq!(sizes[2].label, "1X");
//! assert_eq!(sizes[2].girth, Span::new(Length::from_inches(44), Length::from_inches(46)));
//! let wrong = read_sizes("S 86-91, M ?", LengthUnit::Cm).unwrap_err();
//! assert_eq!(&"S 86-91, M ?"[wrong[0].start..wrong[0].end], "?");
//! ```

mod item;
mod pair;
mod token;

use super::{GIRTH, SIZES, STITCHES, Size};
use crate::units::parse::Unreadable;
use crate::units::{LengthUnit, count};

/// A piece of the list that could not be read, and where it stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Unread {
    /// Where it begins, in bytes of the text.
    pub start: usize,
    /// Where it ends.
    pub end: usize,
    /// What is wrong with it.
    pub why: Why,
}

/// What is wrong with a piece of the list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Why {
    /// Nothing is written.
    Nothing,
    /// A mark or sign that has no meaning in a list of sizes.
    Stray,
    /// A range with one end only.
    HalfARange,
    /// A label that has no number.
    NoNumber,
    /// A number that cannot be one of these.
    Number(Unreadable),
    /// There are two lists, and they do not say the same in two units.
    TwoLists,
    /// More sizes than a list may have.
    TooMany {
        /// The most.
        most: u32,
    },
    /// Not as many numbers as there are sizes.
    NotAsMany {
        /// How many there are.
        numbers: usize,
        /// How many sizes there are.
        sizes: usize,
    },
}

impl Unread {
    fn new(at: &std::ops::Range<usize>, why: Why) -> Self {
        Self {
            start: at.start,
            end: at.end,
            why,
        }
    }
}

/// Reads a list of sizes; `unit` is meant where the text names none. No text makes it panic.
///
/// # Errors
/// Every piece that could not be read, in the order of the text.
pub fn read_sizes(text: &str, unit: LengthUnit) -> Result<Vec<Size>, Vec<Unread>> {
    if let Some(sizes) = called_by_numbers(text, unit) {
        return Ok(sizes);
    }
    let items = item::items(text, unit, GIRTH);
    let (sizes, mut unread) = pair::pair(text, items);
    let all = 0..text.len();
    if sizes.len() > SIZES.most as usize {
        unread.push(Unread::new(&all, Why::TooMany { most: SIZES.most }));
    } else if sizes.is_empty() && unread.is_empty() {
        unread.push(Unread::new(&all, Why::Nothing));
    }
    unread.sort_by_key(|piece| piece.start);
    if unread.is_empty() { Ok(sizes) } else { Err(unread) }
}

/// Sizes that are called by numbers which could be girths themselves, `8 (10, 12): 32 (34, 36)`: as many numbers before
/// the colon as there are nameless girths behind it.
fn called_by_numbers(text: &str, unit: LengthUnit) -> Option<Vec<Size>> {
    let (names, girths) = text.split_once(':')?;
    let names: Vec<&str> = pieces(names).into_iter().map(|at| &names[at]).collect();
    let numbers = names.iter().all(|name| name.chars().all(|mark| mark.is_ascii_digit()));
    let (mut sizes, unread) = pair::pair(girths, item::items(girths, unit, GIRTH));
    let nameless = unread.is_empty() && sizes.iter().all(|size| size.label.is_empty());
    let few = sizes.len() <= SIZES.most as usize;
    if names.is_empty() || names.len() != sizes.len() || !(numbers && nameless && few) {
        return None;
    }
    for (size, name) in sizes.iter_mut().zip(names) {
        size.label = name.to_owned();
    }
    Some(sizes)
}

/// Gives every size its stitches from a list in the same order: `204 (216, 234)`. An empty list takes them away.
///
/// # Errors
/// Every piece that is no count, or that there are not as many as sizes.
pub fn with_stitches(mut sizes: Vec<Size>, text: &str) -> Result<Vec<Size>, Vec<Unread>> {
    let mut unread = Vec::new();
    let mut counts = Vec::new();
    for at in pieces(text) {
        match count::read(&text[at.clone()], STITCHES) {
            Ok(read) => counts.push(read.value),
            Err(why) => unread.push(Unread::new(&at, Why::Number(why))),
        }
    }
    if unread.is_empty() && !counts.is_empty() && counts.len() != sizes.len() {
        let why = Why::NotAsMany {
            numbers: counts.len(),
            sizes: sizes.len(),
        };
        unread.push(Unread::new(&(0..text.len()), why));
    }
    if !unread.is_empty() {
        return Err(unread);
    }
    for (at, size) in sizes.iter_mut().enumerate() {
        size.stitches = counts.get(at).copied();
    }
    Ok(sizes)
}

/// Gives every size its depth from a list in the same order. An empty list takes them away.
///
/// # Errors
/// Every piece that could not be read, or that there are not as many as sizes.
pub fn with_depths(mut sizes: Vec<Size>, text: &str, unit: LengthUnit) -> Result<Vec<Size>, Vec<Unread>> {
    let depths = match read_sizes(text, unit) {
        Err(unread) if unread.iter().all(|piece| piece.why == Why::Nothing) => Vec::new(),
        Err(unread) => return Err(unread),
        Ok(depths) => depths,
    };
    if !depths.is_empty() && depths.len() != sizes.len() {
        let why = Why::NotAsMany {
            numbers: depths.len(),
            sizes: sizes.len(),
        };
        return Err(vec![Unread::new(&(0..text.len()), why)]);
    }
    for (at, size) in sizes.iter_mut().enumerate() {
        size.depth = depths.get(at).map(|depth| depth.girth.middle());
    }
    Ok(sizes)
}

/// The text cut at everything that parts a list of counts, without words in front (`S 204`, `cast on 204`).
fn pieces(text: &str) -> Vec<std::ops::Range<usize>> {
    let mut pieces = Vec::new();
    let mut start = 0;
    let ends = text
        .char_indices()
        .filter(|(_, mark)| token::parts(*mark) || matches!(mark, ',' | '/'));
    for (at, mark) in ends.chain([(text.len(), ',')]) {
        let word = |mark: char| mark.is_alphabetic() || mark.is_whitespace() || mark == ':';
        let piece = text[start..at].trim_end();
        let bare = piece.trim_start_matches(word);
        if !bare.is_empty() {
            pieces.push(start + piece.len() - bare.len()..start + piece.len());
        }
        start = (at + mark.len_utf8()).min(text.len());
    }
    pieces
}

#[cfg(test)]
mod tests;
