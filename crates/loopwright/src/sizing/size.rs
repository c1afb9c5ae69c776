//! A size of the pattern as it is listed: a label, a girth or a range of girths, and what else is known of it.
//!
//! ```
//! use loopwright::sizing::Span;
//! use loopwright::units::Length;
//! let medium = Span::new(Length::from_inches(38), Length::from_inches(36));
//! assert_eq!(medium.from, Length::from_inches(36));
//! assert_eq!(medium.off(Length::from_inches(39)), Length::from_inches(-1));
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

    /// How much the range is too large for a girth, or too small; nothing when it lies within.
    pub fn off(self, girth: Length) -> Length {
        let over = self.from.saturating_sub(girth).max(Length::ZERO);
        let under = self.to.saturating_sub(girth).min(Length::ZERO);
        over.saturating_add(under)
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
    /// What it is called; where the list has numbers only, its number as typed.
    pub label: String,
    /// The number or range that is listed, of the body or of the garment.
    pub girth: Span,
    /// Stitches round the bust in this size, without those a seam takes, where known.
    pub stitches: Option<u32>,
}

impl Size {
    /// A size of this label and girth, of which nothing else is known.
    pub fn new(label: impl Into<String>, girth: Span) -> Self {
        Self {
            label: label.into(),
            girth,
            stitches: None,
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
