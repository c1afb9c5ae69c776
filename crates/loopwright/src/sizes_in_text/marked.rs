//! The text as it is shown, line by line: its pieces, what is to be asked about it, and where another size begins.

use super::decision::{Taken, taken};
use super::{Decision, DoubtKind, ForSome, Found, Hers, Piece, PieceKind, Verdict, only_hers, pieces};

/// One line of the text.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct MarkedLine {
    /// All of it, in its order.
    pub pieces: Vec<Piece>,
    /// The same for her size only.
    pub only: Vec<Piece>,
    /// The lists in it that were in doubt.
    pub asked: Vec<Asked>,
    /// Where it speaks to some sizes only.
    pub for_some: Vec<ForSome>,
    /// The size that is hers in it, counted from nought; none where she has not chosen one.
    pub size: Option<usize>,
    /// The size that is hers from this line on, where she said so of this line.
    pub begins: Option<usize>,
}

/// A list that was in doubt, and her word about it.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Asked {
    /// Which list.
    pub list: usize,
    /// What was in doubt.
    pub kind: DoubtKind,
    /// What she said last that settles it for the size that is hers there.
    pub said: Option<Verdict>,
    /// Whether it has as many numbers as there are sizes.
    pub is_whole: bool,
    /// Where it stands.
    pub range: std::ops::Range<usize>,
    /// Its numbers.
    pub entries: Vec<std::ops::Range<usize>>,
}

impl Asked {
    /// Whether it is still to be asked about.
    pub const fn is_open(&self) -> bool {
        self.said.is_none()
    }
}

impl MarkedLine {
    /// How many numbers in it are hers.
    pub fn marked(&self) -> usize {
        let is_hers = |piece: &&Piece| matches!(piece.kind, PieceKind::Hers | PieceKind::NoStep);
        self.pieces.iter().filter(is_hers).count()
    }
}

/// The lines of a text.
pub fn marked(text: &str, found: &Found, hers: &Hers, decisions: &[Decision], for_some: &[ForSome]) -> Vec<MarkedLine> {
    let sizes = hers.by_line(text, found);
    let size = |at: usize| sizes.get(at).copied().filter(|size| *size < found.sizes);
    let mut lines: Vec<MarkedLine> = (0..found.lines.ranges.len())
        .map(|at| MarkedLine {
            size: size(at),
            ..MarkedLine::default()
        })
        .collect();
    for piece in pieces(text, found, hers, decisions) {
        cut(found, piece, |line, piece| {
            put(&mut lines, line, |line| line.pieces.push(piece))
        });
    }
    for piece in only_hers(text, found, hers, decisions) {
        cut(found, piece, |line, piece| {
            put(&mut lines, line, |line| line.only.push(piece))
        });
    }
    for asked in asked(text, found, &sizes, decisions) {
        let line = found.lists[asked.list].line;
        put(&mut lines, line, |line| line.asked.push(asked));
    }
    for place in for_some {
        put(&mut lines, place.line, |line| line.for_some.push(place.clone()));
    }
    for from in &hers.from {
        let line = found.lines.line(text, &from.line);
        put(&mut lines, line.unwrap_or(usize::MAX), |line| {
            line.begins = Some(from.size)
        });
    }
    lines
}

fn put(lines: &mut [MarkedLine], at: usize, does: impl FnOnce(&mut MarkedLine)) {
    if let Some(line) = lines.get_mut(at) {
        does(line);
    }
}

/// Hands on a piece line by line, without the ends of the lines.
fn cut(found: &Found, piece: Piece, mut hand_on: impl FnMut(usize, Piece)) {
    let mut line = found.lines.at(piece.range.start);
    while let Some(range) = found.lines.ranges.get(line) {
        let part = piece.range.start.max(range.start)..piece.range.end.min(range.end);
        if part.start < part.end {
            let kind = piece.kind;
            let list = piece.list;
            hand_on(
                line,
                Piece {
                    range: part,
                    kind,
                    list,
                },
            );
        }
        if piece.range.end <= range.end {
            return;
        }
        line += 1;
    }
}

/// The lists that were in doubt, with her word about each.
fn asked(text: &str, found: &Found, sizes: &[usize], decisions: &[Decision]) -> Vec<Asked> {
    let verdicts = found.verdicts(text, decisions);
    let of_list = |(at, list): (usize, &super::List)| {
        let doubt = list.doubt.as_ref()?;
        let said: &[Verdict] = verdicts.get(at).map_or(&[], Vec::as_slice);
        // As long as she has not chosen one, a list is settled if it is for the first.
        let size = sizes
            .get(list.line)
            .copied()
            .filter(|size| *size < found.sizes)
            .unwrap_or_default();
        let is_settled = taken(list, found.sizes, size, said) != Taken::InDoubt;
        let settles = |verdict: &&Verdict| !matches!(**verdict, Verdict::Number { size: of, .. } if of != size);
        Some(Asked {
            list: at,
            kind: doubt.kind,
            said: said.iter().rev().find(settles).copied().filter(|_| is_settled),
            is_whole: list.entries.len() == found.sizes,
            range: list.range.clone(),
            entries: list.entries.iter().map(|entry| entry.range.clone()).collect(),
        })
    };
    found.lists.iter().enumerate().filter_map(of_list).collect()
}
