//! Which needle comes next: a size up or down is a row up or down in the [table](crate::tables::needle) of needles that are
//! sold. A needle that is not in it, such as a Japanese 5 of 3.6 mm, counts as the one that is nearest, of two the thinner.

use super::Next;
use crate::tables::needle::{NEEDLES, Number, sold};
use crate::units::Length;

/// From one needle to the next to try.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Change {
    /// The needle the swatch was knitted on.
    pub from: Called,
    /// The one to try; none where the table ends before it.
    pub to: Option<Called>,
}

/// A needle and its US number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Called {
    /// How thick it is, exactly.
    pub across: Length,
    /// Its number, if there is a US needle of just this thickness.
    pub us: Option<Number>,
}

impl Change {
    /// The change of needle that is suggested; none where another needle is not what comes next.
    pub(crate) fn by(next: Next, needle: Length) -> Option<Self> {
        let at = place(needle);
        let to = match next {
            Next::Down { sizes } => at.checked_sub(sizes as usize),
            Next::Up { sizes } => at.checked_add(sizes as usize),
            Next::CountAgain | Next::CountLonger | Next::Keep | Next::AnotherYarn => return None,
        };
        let row = to.and_then(|place| NEEDLES.get(place));
        Some(Self {
            from: Called::of(needle),
            to: row.map(|row| Called::of(row.across)),
        })
    }
}

impl Called {
    pub(crate) fn of(across: Length) -> Self {
        let us = sold(across).and_then(|row| row.us);
        Self { across, us }
    }
}

/// Where in the table a needle stands, or the one that is nearest to it.
fn place(needle: Length) -> usize {
    let off = |row: &crate::tables::needle::Needle| row.across.saturating_sub(needle).to_nm().unsigned_abs();
    let nearest = NEEDLES.iter().enumerate().min_by_key(|(place, row)| (off(row), *place));
    nearest.map_or(0, |(place, _)| place)
}
