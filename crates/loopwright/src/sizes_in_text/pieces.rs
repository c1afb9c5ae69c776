//! The text as it is shown: cut into pieces, hers marked and the others to be struck; or hers alone.

use super::decision::{Taken, taken};
use super::{Decision, EntryKind, Found, Hers, List};
use std::ops::Range;

/// A piece of the text.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Piece {
    /// Where it stands.
    pub range: Range<usize>,
    /// What it is.
    pub kind: PieceKind,
    /// The list it belongs to, where it belongs to one.
    pub list: Option<usize>,
}

/// What a piece is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum PieceKind {
    /// For every size.
    Plain,
    /// The number of her size.
    Hers,
    /// The dash of her size: it has no such step.
    NoStep,
    /// The number of another size.
    Anothers,
    /// What sets a list: its brackets, the marks between its numbers, names beside them.
    Marks,
    /// A list that has to be asked about, whole.
    InDoubt,
}

/// The whole text in pieces, in its order, without gap or overlap.
pub fn pieces(text: &str, found: &Found, hers: &Hers, decisions: &[Decision]) -> Vec<Piece> {
    in_pieces(text, found, all_taken(text, found, hers, decisions), cut)
}

/// The same for her size only, in the order in which it is printed: of each list her number, with its unit. What is in
/// doubt stays whole.
pub fn only_hers(text: &str, found: &Found, hers: &Hers, decisions: &[Decision]) -> Vec<Piece> {
    in_pieces(text, found, all_taken(text, found, hers, decisions), her_number)
}

/// How a list is put down of which one number, counted from nought, is hers.
type PutDown = fn(&mut Vec<Piece>, &List, usize, usize);

/// The text in pieces, where a list that is for each size is put down in this way.
fn in_pieces(text: &str, found: &Found, all: Vec<(usize, Taken)>, put_down: PutDown) -> Vec<Piece> {
    let mut pieces = Vec::new();
    let mut end = 0;
    for (at, taken) in all {
        let Some(list) = found.lists.get(at) else { continue };
        push(&mut pieces, end..list.range.start, PieceKind::Plain, None);
        match taken {
            Taken::Plain => push(&mut pieces, list.range.clone(), PieceKind::Plain, Some(at)),
            Taken::InDoubt => push(&mut pieces, list.range.clone(), PieceKind::InDoubt, Some(at)),
            Taken::Entry(entry) => put_down(&mut pieces, list, at, entry),
        }
        end = list.range.end;
    }
    push(&mut pieces, end..text.len(), PieceKind::Plain, None);
    pieces
}

/// The text as it would be printed for her size only.
pub fn plain_text(text: &str, found: &Found, hers: &Hers, decisions: &[Decision]) -> String {
    let pieces = only_hers(text, found, hers, decisions);
    pieces
        .iter()
        .filter_map(|piece| text.get(piece.range.clone()))
        .collect()
}

/// What each list is, in the order of the text.
fn all_taken(text: &str, found: &Found, hers: &Hers, decisions: &[Decision]) -> Vec<(usize, Taken)> {
    let sizes = hers.by_line(text, found);
    let verdicts = found.verdicts(text, decisions);
    let lists = found.lists.iter().zip(&verdicts).enumerate();
    let of_list = |(at, (list, said)): (usize, (&List, &Vec<_>))| {
        let size = sizes.get(list.line).copied().unwrap_or(hers.size);
        let is_size = size < found.sizes;
        (
            at,
            if is_size {
                taken(list, found.sizes, size, said)
            } else {
                Taken::Plain
            },
        )
    };
    lists.map(of_list).collect()
}

/// Cuts a list: one entry is hers.
fn cut(pieces: &mut Vec<Piece>, list: &List, at: usize, hers: usize) {
    let entries = list.entries.iter().enumerate();
    let kind = |place: usize, kind: EntryKind| match (place == hers, kind) {
        (true, EntryKind::NoStep) => PieceKind::NoStep,
        (true, _) => PieceKind::Hers,
        (false, _) => PieceKind::Anothers,
    };
    let mut parts: Vec<(Range<usize>, PieceKind)> = entries
        .map(|(place, entry)| (entry.range.clone(), kind(place, entry.kind)))
        .collect();
    parts.extend(list.unit.iter().map(|unit| (unit.range.clone(), PieceKind::Plain)));
    parts.sort_by_key(|(range, _)| range.start);
    let mut end = list.range.start;
    for (range, kind) in parts {
        push(pieces, end..range.start, PieceKind::Marks, Some(at));
        end = range.end;
        push(pieces, range, kind, Some(at));
    }
    push(pieces, end..list.range.end, PieceKind::Marks, Some(at));
}

/// Her number, and the unit that counts for all where it has none of its own.
fn her_number(pieces: &mut Vec<Piece>, list: &List, at: usize, hers: usize) {
    let Some(entry) = list.entries.get(hers) else { return };
    let kind = match entry.kind {
        EntryKind::NoStep => PieceKind::NoStep,
        _ => PieceKind::Hers,
    };
    push(pieces, entry.range.clone(), kind, Some(at));
    let unit = list.unit.iter().filter(|_| entry.unit.is_none());
    for unit in unit {
        push(pieces, unit.range.clone(), PieceKind::Plain, Some(at));
    }
}

/// Adds a piece that is not empty.
fn push(pieces: &mut Vec<Piece>, range: Range<usize>, kind: PieceKind, list: Option<usize>) {
    if !range.is_empty() {
        pieces.push(Piece { range, kind, list });
    }
}
