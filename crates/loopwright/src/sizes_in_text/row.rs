//! Lists without brackets: numbers in a row with the same mark between.

use super::figure::{Pairs, agree};
use super::group::MOST_ENTRIES;
use super::scan::Scan;
use super::shape::Shape;
use super::{Doubt, DoubtKind, Entry, EntryKind, Style};
use crate::units::printed::TokenKind;

impl Scan<'_> {
    /// The numbers in a row that begin at a token, two at least.
    pub(super) fn row(&self, at: usize) -> Option<Shape> {
        let (mut entries, behind) = self.chain_or_dash(at, Pairs::Dashes)?;
        if entries.len() > 2 {
            return Some(Shape::new(Style::Dashes, entries, at..behind));
        }
        let style = self.style_of_row(at, behind, entries.first()?)?;
        let mut starts = vec![at];
        let mut end = behind;
        while entries.len() < MOST_ENTRIES {
            let Some(next) = self.behind_mark(end, style) else {
                break;
            };
            let Some((mut more, behind)) = self.chain_or_dash(next, Pairs::Dashes) else {
                break;
            };
            let unit = entries.iter().find_map(|entry| entry.unit);
            let Some(entry) = more.pop().filter(|entry| more.is_empty() && agree(entry.unit, unit)) else {
                break;
            };
            entries.push(entry);
            starts.push(next);
            end = behind;
        }
        self.without_head(style, entries, starts, end)
    }

    /// The row, without a last number that begins a list in brackets.
    fn without_head(&self, style: Style, mut entries: Vec<Entry>, starts: Vec<usize>, mut end: usize) -> Option<Shape> {
        let is_open = matches!(style, Style::Bare | Style::Colons) && self.opens(self.over_line(end)).is_some();
        if is_open && !self.group(self.over_line(end), Pairs::Dashes).entries.is_empty() {
            entries.pop();
            end = *starts.last()?;
        }
        if entries.len() < 2 {
            return None;
        }
        let from = *starts.first()?;
        let flaw = self.not_opened(style, end);
        Some(Shape::new(style, entries, from..end).with_flaw(flaw))
    }

    /// The mark behind the first number says which kind of row it is.
    fn style_of_row(&self, at: usize, behind: usize, first: &Entry) -> Option<Style> {
        let is_number = first.kind != EntryKind::NoStep;
        match self.kind(behind)? {
            TokenKind::Slash => Some(Style::Slashes),
            TokenKind::Bar => Some(Style::Bars),
            TokenKind::Colon if is_number => Some(Style::Colons),
            // `K2, 3` is no row.
            _ if !is_number || self.is_behind_letters(at) => None,
            TokenKind::Comma | TokenKind::Semicolon | TokenKind::Number => Some(Style::Bare),
            _ if self.is_word(behind, &["and"]) => Some(Style::Bare),
            _ => None,
        }
    }

    /// The token behind the mark that parts a row of this style.
    fn behind_mark(&self, at: usize, style: Style) -> Option<usize> {
        let is_mark = match style {
            Style::Slashes => self.is(at, TokenKind::Slash),
            Style::Bars => self.is(at, TokenKind::Bar),
            Style::Colons => self.is(at, TokenKind::Colon),
            _ => return self.behind_bare_mark(at),
        };
        is_mark.then_some(at + 1)
    }

    /// Commas, `and`, both, or nothing but space.
    fn behind_bare_mark(&self, at: usize) -> Option<usize> {
        let is_and = |at: usize| self.is_word(at, &["and"]);
        match self.kind(at)? {
            TokenKind::Comma | TokenKind::Semicolon if is_and(at + 1) => Some(at + 2),
            TokenKind::Comma | TokenKind::Semicolon => Some(at + 1),
            TokenKind::Number => Some(at),
            _ if is_and(at) => Some(at + 1),
            _ => None,
        }
    }

    /// Points at a bracket that closes a row and was never opened: `96 108, 120)`.
    fn not_opened(&self, style: Style, end: usize) -> Option<Doubt> {
        let is_lone = self.closes(end).is_some() && !self.is_paired(end);
        let kind = DoubtKind::NotOpened;
        (style == Style::Bare && is_lone).then(|| Doubt {
            kind,
            at: self.range(end),
        })
    }
}
