//! A list as it stands in the text, before it is judged, and the units in it.

use super::figure::{agree, end_without_unit};
use super::scan::Scan;
use super::{Doubt, DoubtKind, Entry, EntryKind, Style, UnitOnce};
use std::ops::Range;

/// A list as it stands in the text.
pub(super) struct Shape {
    pub(super) style: Style,
    pub(super) entries: Vec<Entry>,
    /// Its tokens.
    pub(super) tokens: Range<usize>,
    /// What is wrong with how it is written.
    pub(super) flaw: Option<Doubt>,
    /// The unit that is printed once.
    pub(super) unit: Option<UnitOnce>,
}

impl Shape {
    pub(super) const fn new(style: Style, entries: Vec<Entry>, tokens: Range<usize>) -> Self {
        Self {
            style,
            entries,
            tokens,
            flaw: None,
            unit: None,
        }
    }

    pub(super) fn with_flaw(mut self, flaw: Option<Doubt>) -> Self {
        self.flaw = self.flaw.or(flaw);
        self
    }

    /// Notes what is wrong, unless something is noted already.
    pub(super) fn note(&mut self, kind: DoubtKind, at: Range<usize>) {
        self.flaw.get_or_insert(Doubt { kind, at });
    }

    /// Takes the unit behind the list, and finds out whether one that is among its numbers counts for all.
    pub(super) fn with_units(mut self, scan: &Scan<'_>) -> Self {
        let tail = self.tail(scan);
        let figures = self.entries.iter().enumerate().filter(|(_, entry)| is_figure(entry));
        let (with, without): (Vec<_>, Vec<_>) = figures.partition(|(_, entry)| entry.unit.is_some());
        let places = |of: &[(usize, &Entry)]| of.iter().map(|(place, _)| *place).collect::<Vec<_>>();
        let (with, without) = (places(&with), places(&without));
        let last = with.iter().chain(&without).copied().max();
        match (with.as_slice(), without.as_slice()) {
            ([], _) | (_, []) => {}
            // `34" (36", 38)"`
            (_, [bare]) if tail.is_some() && Some(*bare) == last && with.len() > 1 => {}
            ([one], _) if tail.is_none() && (*one == 0 || Some(*one) == last) => self.unit_for_all(scan, *one),
            _ => {
                let fewer = if with.len() <= without.len() { &with } else { &without };
                let place = fewer.first().and_then(|place| self.entries.get(*place));
                if let Some(at) = place.map(|entry| entry.range.clone()) {
                    self.note(DoubtKind::UnitAmong, at);
                }
            }
        }
        self.differing(&tail);
        self.unit = self.unit.or(tail);
        self
    }

    /// The unit behind the list; `more` may stand before it.
    fn tail(&mut self, scan: &Scan<'_>) -> Option<UnitOnce> {
        // Behind a number without a bracket the unit was taken with the number.
        let end = self.tokens.end;
        scan.closes(end.checked_sub(1)?)?;
        let at = if scan.is_word(end, &["more"]) { end + 1 } else { end };
        let unit = scan.unit(at)?;
        // `9" (10") round its edge`: where each has its own unit, or another one, the word is none of the list's.
        let mut figures = self.entries.iter().filter(|entry| is_figure(entry));
        let is_needed = self.entries.iter().all(|entry| !is_figure(entry)) || figures.any(|entry| entry.unit.is_none());
        let agrees = self.entries.iter().all(|entry| agree(entry.unit, Some(unit)));
        if !is_needed || !agrees {
            return None;
        }
        self.tokens.end = at + 1;
        let before = scan.range(end.checked_sub(1)?).end;
        let range = before..scan.end(at);
        Some(UnitOnce { unit, range })
    }

    /// The unit of one entry becomes that of all.
    fn unit_for_all(&mut self, scan: &Scan<'_>, place: usize) {
        let Some(entry) = self.entries.get_mut(place) else {
            return;
        };
        let end = end_without_unit(scan, entry);
        if let Some(unit) = entry.unit.take() {
            let range = end..entry.range.end;
            self.unit = Some(UnitOnce { unit, range });
            entry.range.end = end;
        }
    }

    /// Points at a unit that is another one than the first.
    fn differing(&mut self, tail: &Option<UnitOnce>) {
        let first = self.entries.iter().find_map(|entry| entry.unit);
        let first = first.or(tail.as_ref().map(|tail| tail.unit));
        let other = self.entries.iter().find(|entry| !agree(entry.unit, first));
        if let Some(at) = other.map(|entry| entry.range.clone()) {
            self.note(DoubtKind::UnitAmong, at);
        }
    }
}

/// Whether an entry is something that has a unit.
const fn is_figure(entry: &Entry) -> bool {
    matches!(entry.kind, EntryKind::Number | EntryKind::Span)
}
