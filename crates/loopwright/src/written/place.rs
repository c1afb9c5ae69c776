//! Where something stands in a text, in bytes.

use std::ops::Range;

/// Where something stands in a text, in bytes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, PartialOrd, Ord)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Place {
    /// Where it begins.
    pub start: usize,
    /// Where it has ended.
    pub end: usize,
}

impl Place {
    /// From here to the end of another place.
    pub const fn to(self, last: Self) -> Self {
        let end = if last.end > self.end { last.end } else { self.end };
        Self { start: self.start, end }
    }

    /// The bytes as a range.
    pub const fn range(self) -> Range<usize> {
        self.start..self.end
    }

    /// What is written there, of the text that was read.
    pub fn text(self, text: &str) -> &str {
        text.get(self.range()).unwrap_or_default()
    }
}
