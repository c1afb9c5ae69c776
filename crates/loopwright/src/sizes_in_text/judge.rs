//! What a list in a text is: one for the sizes, something else, or in doubt.

use super::scan::Scan;
use super::shape::Shape;
use super::{Doubt, DoubtKind, EntryKind, Style};
use crate::units::{Dimension, Unit};
use std::ops::Range;

/// What a list is.
pub(super) enum Judged {
    /// Numbers that are the same for all sizes, or none that are counted: a date, row numbers.
    Other,
    /// One number for each size, or in doubt.
    List(Option<Doubt>),
}

/// How this pattern prints its lists.
pub(super) struct House {
    /// No whole list has brackets, slashes or the like: commas alone part them.
    is_bare: bool,
    /// Some have brackets.
    has_brackets: bool,
    /// Slashes part more of them than brackets do.
    has_slashes: bool,
}

impl House {
    pub(super) fn of(scan: &Scan<'_>, shapes: &[Shape], sizes: usize) -> Self {
        let is_whole = |shape: &&Shape| shape.entries.len() == sizes && shape.flaw.is_none();
        let is_list = |shape: &&Shape| (sizes > 2 || !is_row(shape.style)) && !shape.has_other_numbers(scan);
        let (mut brackets, mut slashes, mut others) = (0, 0, 0);
        for shape in shapes.iter().filter(is_whole).filter(is_list) {
            match shape.style {
                Style::Brackets | Style::OneBracket => brackets += 1,
                Style::Slashes => slashes += 1,
                Style::Colons | Style::Dashes | Style::Bars | Style::BesideNames => others += 1,
                Style::Names | Style::Bare => {}
            }
        }
        Self {
            is_bare: brackets + slashes + others == 0,
            has_brackets: brackets > 0,
            has_slashes: slashes > brackets,
        }
    }
}

/// Says what a list is.
pub(super) fn judge(scan: &Scan<'_>, shape: &Shape, sizes: usize, house: &House) -> Judged {
    if matches!(shape.style, Style::Names | Style::BesideNames) {
        return Judged::List(None);
    }
    let flaw = shape.flaw.clone();
    if flaw.as_ref().is_some_and(|flaw| is_miswritten(flaw.kind)) {
        return Judged::List(flaw);
    }
    let is_list = match shape.style {
        Style::Brackets | Style::OneBracket => Weight::List,
        Style::Bare => weigh_bare(scan, shape, sizes, house),
        _ => weigh_row(scan, shape, sizes, house),
    };
    let whole = shape.place(scan);
    let doubt = |kind| {
        Some(Doubt {
            kind,
            at: whole.clone(),
        })
    };
    match is_list {
        Weight::Other => Judged::Other,
        Weight::Doubt(kind) => Judged::List(doubt(kind)),
        Weight::List => Judged::List(match shape.entries.len() {
            numbers if numbers < sizes => doubt(DoubtKind::TooFew),
            numbers if numbers > sizes => doubt(DoubtKind::TooMany),
            _ => flaw.or_else(|| shape.count_in_bracket(scan, sizes).and_then(doubt)),
        }),
    }
}

/// What a row of numbers is by its look.
enum Weight {
    Other,
    Doubt(DoubtKind),
    List,
}

/// A row with slashes, colons, dashes or bars.
fn weigh_row(scan: &Scan<'_>, shape: &Shape, sizes: usize, house: &House) -> Weight {
    let numbers = shape.entries.len();
    if shape.has_other_numbers(scan) {
        return Weight::Other;
    }
    match numbers {
        // `2/2 RC` is a cable where lists have brackets.
        2 if sizes == 2 && !house.has_brackets && shape.is_tight(scan) => Weight::Doubt(DoubtKind::MayBeForAll),
        2 if sizes > 2 && house.has_slashes && shape.style == Style::Slashes => Weight::List,
        2 => Weight::Other,
        _ if numbers == sizes && scan.is_behind_place(shape.tokens.start) => Weight::Doubt(DoubtKind::MayBeForAll),
        3 if sizes == 3 && shape.may_be_date(scan) => Weight::Doubt(DoubtKind::MayBeDate),
        _ => Weight::List,
    }
}

/// A row with commas or spaces alone is a list where the pattern has no other ones.
fn weigh_bare(scan: &Scan<'_>, shape: &Shape, sizes: usize, house: &House) -> Weight {
    let numbers = shape.entries.len();
    let is_about_as_many = numbers.abs_diff(sizes) <= 1 && numbers > 2;
    let are_ordinals = shape.entries.iter().all(|entry| entry.kind == EntryKind::Ordinal);
    if scan.is_behind_place(shape.tokens.start) || are_ordinals && numbers != sizes {
        Weight::Other
    } else if numbers == sizes && sizes > 2 && (are_ordinals || shape.counts_each()) {
        Weight::Doubt(DoubtKind::MayBeForAll)
    } else if numbers == sizes {
        match (sizes > 2, house.is_bare) {
            (true, true) => Weight::List,
            (true, false) | (false, true) => Weight::Doubt(DoubtKind::MayBeForAll),
            (false, false) => Weight::Other,
        }
    } else if house.is_bare && is_about_as_many {
        Weight::List
    } else {
        Weight::Other
    }
}

/// Whether a list is written wrongly, so that its numbers need not be counted.
const fn is_miswritten(kind: DoubtKind) -> bool {
    matches!(
        kind,
        DoubtKind::WrongBracket | DoubtKind::NotClosed | DoubtKind::NotOpened | DoubtKind::Strange
    )
}

const fn is_row(style: Style) -> bool {
    matches!(style, Style::Slashes | Style::Colons | Style::Dashes | Style::Bars)
}

impl Shape {
    fn place(&self, scan: &Scan<'_>) -> Range<usize> {
        scan.range(self.tokens.start).start..scan.end(self.tokens.end.saturating_sub(1))
    }

    /// Whether it is one number and something said in passing: `12 (4 sts)`, `4" (10 cm)`, `Row 12 (96 sts)`.
    pub(super) fn is_said_in_passing(&self, scan: &Scan<'_>, sizes: usize) -> bool {
        let (Style::Brackets, [head, inner]) = (self.style, self.entries.as_slice()) else {
            return false;
        };
        let is_miswritten = self.flaw.as_ref().is_some_and(|flaw| is_miswritten(flaw.kind));
        let has_unit = head.unit.is_some() || inner.unit.is_some();
        if sizes > 2 || !has_unit {
            return has_unit && !is_miswritten;
        }
        // Of two sizes it may be the second.
        let is_length = inner.unit.is_some_and(|unit| unit.dimension() != Dimension::Count);
        head.unit.is_none() && (is_length || scan.is_behind_place(self.tokens.start))
    }

    /// Of two sizes, a count that may be said in passing: `dec 4 sts (92)`.
    fn count_in_bracket(&self, scan: &Scan<'_>, sizes: usize) -> Option<DoubtKind> {
        let once = self
            .unit
            .as_ref()
            .filter(|_| sizes == 2 && self.style == Style::Brackets)?;
        let is_count = matches!(once.unit, Unit::Count(_));
        let last = self.tokens.end.checked_sub(1)?;
        // A unit behind the bracket counts for both.
        (is_count && scan.closes(last).is_some()).then_some(DoubtKind::MayBeCount)
    }

    /// Whether each number says what it counts: `2 rows, 4 rows, 6 rows`.
    fn counts_each(&self) -> bool {
        self.entries
            .iter()
            .all(|entry| matches!(entry.unit, Some(Unit::Count(_))))
    }

    /// Whether nothing stands between its tokens.
    fn is_tight(&self, scan: &Scan<'_>) -> bool {
        let last = self.tokens.end.saturating_sub(1 + usize::from(self.unit.is_some()));
        (self.tokens.start..last).all(|token| scan.touches_next(token))
    }

    fn numbers<'a>(&'a self, scan: &Scan<'a>) -> impl Iterator<Item = &'a str> {
        let figures = self.entries.iter().filter(|entry| entry.kind == EntryKind::Number);
        let text = scan.text;
        figures.map(move |entry| text.get(entry.number.clone()).unwrap_or_default())
    }

    /// Whether its numbers are those of a date with its year, a telephone or a book: `12/05/2024`, `978-3-16`.
    fn has_other_numbers(&self, scan: &Scan<'_>) -> bool {
        let is_nought_before = |number: &str| {
            number.len() > 1 && number.bytes().all(|mark| mark.is_ascii_digit()) && number.starts_with('0')
        };
        let are_far = |number: &str| number.len() > 4 && number.bytes().all(|mark| mark.is_ascii_digit());
        let is_other = |number: &str| is_nought_before(number) || are_far(number);
        is_row(self.style) && (self.numbers(scan).any(is_other) || self.has_year(scan))
    }

    /// Whether it is a day, a month and a year of four digits.
    fn has_year(&self, scan: &Scan<'_>) -> bool {
        let is_year = |number: &str| number.len() == 4 && (number.starts_with("19") || number.starts_with("20"));
        let years = self.numbers(scan).filter(|number| is_year(number)).count();
        let short = self.numbers(scan).filter(|number| number.len() <= 2).count();
        self.entries.len() == 3 && years == 1 && short == 2
    }

    /// Whether it may be a day, a month and the last digits of a year: `3/4/24`.
    fn may_be_date(&self, scan: &Scan<'_>) -> bool {
        let numbers: Vec<&str> = self.numbers(scan).collect();
        let is_year = |number: &str| number.len() == 2 && (number.starts_with('2') || number.starts_with('3'));
        let is_month = |number: &str| {
            matches!(
                number,
                "1" | "2" | "3" | "4" | "5" | "6" | "7" | "8" | "9" | "10" | "11" | "12"
            )
        };
        let are_short = numbers.iter().all(|number| number.len() <= 2);
        let is_dated =
            matches!(numbers.as_slice(), [one, two, year] if is_year(year) && (is_month(one) || is_month(two)));
        self.style == Style::Slashes && self.unit.is_none() && are_short && is_dated
    }
}
