//! A size of the pattern as it is listed: a label, a girth or a range of girths, and what else is known of it.
//!
//! ```
//! use loopwright::sizing::Span;
//! use loopwright::units::Length;
//! let medium = Span::new(Length::from_inches(38), Length::from_inches(36));
//! assert_eq!(medium.from, Length::from_inches(36));
//! assert_eq!(medium.away(Length::from_inches(39)), Length::from_inches(1));
//! ```

use crate::tables::body::{Code, Row};
use crate::units::{Length, LengthUnit};

/// From one girth to another, both included; the same twice where one number is listed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Span {
    /// The smaller girth.
    pub from: Length,
    /// The larger girth.
    pub to: Length,
}

impl Span {
    /// Between two girths, whichever is the smaller.
    pub fn new(one: Length, other: Length) -> Self {
        Self {
            from: one.min(other),
            to: one.max(other),
        }
    }

    /// One girth.
    pub const fn one(girth: Length) -> Self {
        Self { from: girth, to: girth }
    }

    /// The girth in the middle.
    pub fn middle(self) -> Length {
        let sum = i128::from(self.from.to_nm()) + i128::from(self.to.to_nm());
        Length::from_nm(i64::try_from(sum.div_euclid(2)).unwrap_or(i64::MAX))
    }

    /// Whether a girth lies within, the ends included.
    pub fn has(self, girth: Length) -> bool {
        self.from <= girth && girth <= self.to
    }

    /// How far a girth lies from the nearer end; nothing when it lies within.
    pub fn away(self, girth: Length) -> Length {
        let under = self.from.saturating_sub(girth);
        let over = girth.saturating_sub(self.to);
        under.max(over).max(Length::ZERO)
    }

    /// The same moved up, or down, by a length.
    pub(super) fn moved(self, by: Length) -> Self {
        Self {
            from: self.from.saturating_add(by),
            to: self.to.saturating_add(by),
        }
    }
}

/// One size as the pattern lists it.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Size {
    /// What it is called, as typed; empty where the list has numbers only.
    pub label: String,
    /// The number or range that is listed, of the body or of the garment.
    pub girth: Span,
    /// Stitches round the bust in this size, without those a seam takes, where known.
    pub stitches: Option<u32>,
    /// From the neck to the lower edge, where known: of a wrap it is shown beside the girth.
    pub depth: Option<Length>,
}

impl Size {
    /// A size of this label and girth, of which nothing else is known.
    pub fn new(label: impl Into<String>, girth: Span) -> Self {
        Self {
            label: label.into(),
            girth,
            stitches: None,
            depth: None,
        }
    }

    /// A row of the trade body's table, in the column of this unit.
    pub fn from_row(row: &Row, unit: LengthUnit) -> Self {
        let (from, to) = match unit {
            LengthUnit::Inch | LengthUnit::Yard => row.inches,
            LengthUnit::Mm | LengthUnit::Cm | LengthUnit::M => row.cm,
        };
        Self::new(row.label, Span::new(from, to))
    }

    /// A letter code of EN 13402-3. Its upper edge belongs to the next size there; here a girth on an edge is in both,
    /// and the answer says that it is a tie.
    pub fn from_code(code: &Code) -> Self {
        Self::new(code.label, Span::new(code.from, code.below))
    }
}

/// Where a girth falls in a list of sizes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Place {
    /// In a size: the first in the list that has it, and how many have it.
    In {
        /// Which size of the list.
        size: usize,
        /// How many sizes have it.
        of: usize,
    },
    /// Between two sizes, in neither.
    Between {
        /// The size that ends below it.
        smaller: usize,
        /// The size that begins above it.
        larger: usize,
    },
    /// Smaller than every size.
    Below {
        /// The nearest size.
        size: usize,
    },
    /// Larger than every size.
    Above {
        /// The nearest size.
        size: usize,
    },
    /// There are no sizes.
    Nowhere,
}

/// Where a girth falls among ranges, in whatever order they stand.
pub fn place(spans: impl Iterator<Item = Span> + Clone, girth: Length) -> Place {
    let mut having = spans.clone().enumerate().filter(|(_, span)| span.has(girth));
    if let Some((size, _)) = having.next() {
        return Place::In {
            size,
            of: 1 + having.count(),
        };
    }
    let all = spans.enumerate();
    let smaller = all
        .clone()
        .filter(|(_, span)| span.to < girth)
        .max_by_key(|(_, span)| span.to);
    let larger = all
        .filter(|(_, span)| span.from > girth)
        .min_by_key(|(_, span)| span.from);
    match (smaller, larger) {
        (Some((smaller, _)), Some((larger, _))) => Place::Between { smaller, larger },
        (Some((size, _)), None) => Place::Above { size },
        (None, Some((size, _))) => Place::Below { size },
        (None, None) => Place::Nowhere,
    }
}
