//! Lists in brackets: the first number before them, `96 (108, 120)`, `1 (2) [3] {4}`, or all of them within, `(96, 108)`.

use super::figure::{Pairs, agree};
use super::group::{Group, MOST_ENTRIES};
use super::scan::Scan;
use super::shape::Shape;
use super::{Doubt, DoubtKind, Entry, EntryKind, Style};
use crate::units::printed::TokenKind;

impl Scan<'_> {
    /// The list whose first number, or the dash in its place, stands at a token.
    pub(super) fn bracketed(&self, at: usize, sizes: usize) -> Option<Shape> {
        // `10/12 (14/16, 18/20)` are pairs where there is one for each size.
        let is_pair = self.is(at + 1, TokenKind::Slash) || self.is(at + 2, TokenKind::Slash);
        let pairs = || self.bracketed_by(at, sizes, Pairs::SlashesToo);
        let of_pairs = is_pair.then(pairs).flatten();
        of_pairs
            .filter(|shape| shape.entries.len() == sizes && shape.flaw.is_none())
            .or_else(|| self.bracketed_by(at, sizes, Pairs::Dashes))
    }

    fn bracketed_by(&self, at: usize, sizes: usize, pairs: Pairs) -> Option<Shape> {
        let (head, behind) = self.head(at, pairs)?;
        let first = self.over_line(behind);
        self.opens(first)?;
        let group = self.group(first, pairs);
        if group.entries.is_empty() {
            return self.with_letters(at, vec![head], &group, sizes);
        }
        let mut shape = Shape::new(Style::Brackets, vec![head], at..behind);
        let mut before_bare = None;
        while self.takes_bracket(&mut shape, sizes, pairs) {
            let bare = self.number(shape.tokens.end).filter(|_| shape.entries.len() < sizes);
            if let Some((entry, behind)) = bare {
                before_bare.get_or_insert((shape.entries.len(), shape.tokens.end));
                shape.entries.push(entry);
                shape.tokens.end = behind;
            }
        }
        // `21 (22) 23 (24) 25` is one list only where that makes one number for each size.
        if let Some((numbers, behind)) = before_bare.filter(|_| shape.entries.len() != sizes) {
            shape.entries.truncate(numbers);
            shape.tokens.end = behind;
        }
        if shape.entries.len() < 2 {
            return None;
        }
        self.with_ranges(shape, at, behind, sizes)
    }

    /// Takes the bracket that stands behind a list into it, where there is one that belongs to it.
    fn takes_bracket(&self, shape: &mut Shape, sizes: usize, pairs: Pairs) -> bool {
        let open = self.over_line(shape.tokens.end);
        if self.opens(open).is_none() || shape.entries.len() >= MOST_ENTRIES {
            return false;
        }
        let group = self.group(open, pairs);
        let strange = self.strange(&shape.entries, &group, sizes);
        let is_clean = group.odd.is_empty() || strange.is_some();
        if !is_clean || !goes_on(&shape.entries, &group, sizes) {
            return false;
        }
        shape.flaw = shape.flaw.take().or(strange).or(group.flaw);
        shape.entries.extend(group.entries);
        shape.tokens.end = group.end;
        true
    }

    /// What stands before the first bracket.
    fn head(&self, at: usize, pairs: Pairs) -> Option<(Entry, usize)> {
        if self.is(at, TokenKind::Dash) {
            let is_apart = at == 0 || !self.touches_next(at - 1);
            return (is_apart && self.opens(at + 1).is_some()).then(|| (self.no_step(at), at + 1));
        }
        let (mut entries, end) = self.chain(at, pairs)?;
        (entries.len() == 1).then(|| entries.pop().map(|head| (head, end)))?
    }

    /// Settles what the first is where it is a range and the others are none, or the other way round.
    fn with_ranges(&self, mut shape: Shape, at: usize, behind: usize, sizes: usize) -> Option<Shape> {
        let is_span = |entry: &Entry| entry.kind == EntryKind::Span;
        let (head, others) = shape.entries.split_first()?;
        if head.kind == EntryKind::NoStep && shape.entries.len() != sizes {
            return None;
        }
        let are_spans = others.iter().filter(|entry| is_span(entry)).count();
        let figures = others.iter().filter(|entry| entry.kind != EntryKind::NoStep).count();
        if is_span(head) && are_spans == 0 {
            // The list begins with the last number of `rows 1-4 (6, 8)` and of `from 4 to 6 (8, 10)`.
            let is_tight = (at..behind.saturating_sub(1)).all(|token| self.touches_next(token));
            if !is_tight || self.is_behind_place(at) {
                return None;
            }
        }
        let is_head_other = head.kind != EntryKind::NoStep && is_span(head) != (are_spans > 0);
        if is_head_other || are_spans > 0 && are_spans < figures {
            let at = head.range.clone();
            shape.note(DoubtKind::SomeRanges, at);
        }
        Some(shape)
    }

    /// `K6 (K7, K8)`: the letters before the first number stand before each of them.
    fn with_letters(&self, at: usize, mut entries: Vec<Entry>, group: &Group, sizes: usize) -> Option<Shape> {
        let letters = at.checked_sub(1).filter(|_| self.is_behind_letters(at))?;
        if group.odd.len() + 1 != sizes || self.is_times(group.end) {
            return None;
        }
        for tokens in &group.odd {
            let is_same = self.word(tokens.start).eq_ignore_ascii_case(self.word(letters));
            let (number, end) = self.number(tokens.start + 1)?;
            if !is_same || end != tokens.end {
                return None;
            }
            entries.push(number);
        }
        let kind = DoubtKind::MayBeRepeat;
        let at_brackets = self.range(group.end.checked_sub(1)?).end;
        let flaw = Doubt {
            kind,
            at: self.range(letters).start..at_brackets,
        };
        Some(Shape::new(Style::Brackets, entries, at..group.end).with_flaw(Some(flaw)))
    }

    /// Something that is no number where all that is missing is as many: `96 (1O8, 120)`.
    fn strange(&self, entries: &[Entry], group: &Group, sizes: usize) -> Option<Doubt> {
        let first = group.odd.first()?;
        let is_short = |tokens: &std::ops::Range<usize>| tokens.len() <= 3;
        let is_as_many = entries.len() + group.entries.len() + group.odd.len() == sizes;
        let at = self.range(first.start).start..self.range(first.end.checked_sub(1)?).end;
        let kind = DoubtKind::Strange;
        (is_as_many && group.odd.iter().all(is_short)).then_some(Doubt { kind, at })
    }

    /// All numbers in one bracket, and no other bracket within: `(96, 108, 120) sts`. A unit inside the bracket leaves the bracket to the text.
    pub(super) fn one_bracket(&self, open: usize, sizes: usize) -> Option<Shape> {
        self.chain_or_dash(open + 1, Pairs::Dashes)?;
        let group = self.group(open, Pairs::Dashes);
        let has_unit = group.entries.iter().any(|entry| entry.unit.is_some());
        if !group.odd.is_empty() || group.entries.len() < 2 || !group.is_parted || group.is_nested {
            return None;
        }
        // What is never closed, and has not as many numbers either, is none.
        if group.flaw.is_some() && group.entries.len() != sizes {
            return None;
        }
        let inner = open + 1..group.end.saturating_sub(1);
        let is_inner = has_unit && group.flaw.is_none();
        let tokens = if is_inner { inner } else { open..group.end };
        let mut shape = Shape::new(Style::OneBracket, group.entries, tokens).with_flaw(group.flaw);
        if self.is_times(group.end) {
            let at = self.range(open).start..self.range(group.end).end;
            shape.note(DoubtKind::MayBeRepeat, at);
        }
        Some(shape)
    }
}

/// Whether a further bracket belongs to the list: not where the list is whole and the bracket is one by itself, nor
/// where it measures in another unit.
fn goes_on(entries: &[Entry], group: &Group, sizes: usize) -> bool {
    let is_another = entries.len() >= sizes && group.entries.len() >= sizes;
    let unit = entries.iter().find_map(|entry| entry.unit);
    let agrees = group.entries.iter().all(|entry| agree(entry.unit, unit));
    agrees && !is_another
}
