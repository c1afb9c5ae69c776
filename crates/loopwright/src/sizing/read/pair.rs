//! Which label belongs to which girth, and two lists that say the same in two units.

use super::item::Item;
use super::{Unread, Why};
use crate::sizing::{Size, Span};
use crate::units::LengthUnit;
use crate::units::parse::Unreadable;
use std::ops::Range;

/// Two lists are the same in two units if no pair is further apart than this part (one in so many): patterns round
/// inches to the quarter and centimetres to the half or the whole.
const SAME: i64 = 33;

#[derive(Clone)]
struct Label {
    at: Range<usize>,
    colon: bool,
    /// How many girths stand before it.
    before: usize,
}

#[derive(Clone)]
struct Girth {
    at: Range<usize>,
    span: Span,
    unit: Option<LengthUnit>,
}

/// The sizes, and what could not be read.
pub(super) fn pair(text: &str, items: Vec<Item>) -> (Vec<Size>, Vec<Unread>) {
    let (mut labels, mut girths, mut unread) = (Vec::new(), Vec::new(), Vec::new());
    for item in items {
        match item {
            Item::Label { at, colon } => labels.push(Label {
                at,
                colon,
                before: girths.len(),
            }),
            Item::Girth { at, span, unit } => girths.push(Girth { at, span, unit }),
            Item::Unread(piece) => unread.push(piece),
        }
    }
    if labels.is_empty() && numbered(&unread, &girths) {
        let label = |piece: Unread| Label {
            at: piece.start..piece.end,
            colon: false,
            before: 0,
        };
        labels = unread.drain(..).map(label).collect();
    }
    if !unread.is_empty() {
        return (Vec::new(), unread);
    }
    if let Err(piece) = one_unit(&mut girths, &mut labels) {
        return (Vec::new(), vec![piece]);
    }
    let names = names(text, &labels, girths.len());
    let sizes = |names: Vec<String>| {
        names
            .into_iter()
            .zip(&girths)
            .map(|(name, girth)| Size::new(name, girth.span))
            .collect()
    };
    match names {
        Ok(names) => (sizes(names), Vec::new()),
        Err(unread) => (Vec::new(), unread),
    }
}

/// Whether what is too small for a girth are the numbers of the sizes: `1 (2, 3): 97 (103, 111)`.
fn numbered(unread: &[Unread], girths: &[Girth]) -> bool {
    let small = |piece: &Unread| matches!(piece.why, Why::Number(Unreadable::TooSmall { .. }));
    let first = girths.first().map_or(0, |girth| girth.at.start);
    unread.len() == girths.len() && unread.iter().all(|piece| small(piece) && piece.end <= first)
}

/// Leaves the first of two lists that say the same in two units.
fn one_unit(girths: &mut Vec<Girth>, labels: &mut [Label]) -> Result<(), Unread> {
    let Some(first) = girths.first().map(|girth| girth.unit) else {
        return Ok(());
    };
    let (kept, other): (Vec<Girth>, Vec<Girth>) = girths.iter().cloned().partition(|girth| girth.unit == first);
    let Some(strange) = other.first() else {
        return Ok(());
    };
    let same = kept.len() == other.len() && kept.iter().zip(&other).all(|(one, two)| same(one.span, two.span));
    if !same && kept.len() == other.len() || other.iter().any(|girth| girth.unit.is_none()) {
        return Err(Unread::new(&strange.at, Why::TwoLists));
    }
    if !same {
        // Some sizes in one unit and some in another, none of them twice: allowed.
        return Ok(());
    }
    for label in labels {
        let kept_before = girths[..label.before].iter().filter(|girth| girth.unit == first);
        label.before = kept_before.count();
    }
    *girths = kept;
    Ok(())
}

fn same(one: Span, two: Span) -> bool {
    let near = |a: crate::units::Length, b: crate::units::Length| a.saturating_sub(b).to_nm().abs() <= a.to_nm() / SAME;
    near(one.from, two.from) && near(one.to, two.to)
}

/// A name for each girth, empty where it has none.
fn names(text: &str, labels: &[Label], girths: usize) -> Result<Vec<String>, Vec<Unread>> {
    let named = |label: &Label| text[label.at.clone()].trim().to_owned();
    if let [label] = labels {
        // `S/M/L 86/91/97`
        let parts: Vec<String> = named(label).split('/').map(|part| part.trim().to_owned()).collect();
        if parts.len() == girths && girths > 1 {
            return Ok(parts);
        }
    }
    let heading = labels.first().is_some_and(|first| {
        let more = labels.get(1).map_or(girths, |second| second.before);
        first.colon && first.before == 0 && more != 1
    });
    let labels = if heading && labels.len() != girths {
        &labels[1..]
    } else {
        labels
    };
    if labels.len() == girths {
        return Ok(labels.iter().map(named).collect());
    }
    let mut names = vec![String::new(); girths];
    let mut unread = Vec::new();
    for (at, label) in labels.iter().enumerate() {
        let next = labels.get(at + 1).map_or(girths, |next| next.before);
        match names.get_mut(label.before) {
            Some(name) if next > label.before => *name = named(label),
            _ => unread.push(Unread::new(&label.at, Why::NoNumber)),
        }
    }
    if unread.is_empty() { Ok(names) } else { Err(unread) }
}
