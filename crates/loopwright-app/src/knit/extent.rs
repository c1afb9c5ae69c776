//! How much is knitted, as it was when she began: so that the page can say that the figures have changed since.

use loopwright::follow::Plan;
use std::fmt;

/// Rows, and the stitches before the first and after the last of them where known. Kept as `60 96 320`, or `60`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Extent {
    /// How many rows.
    pub rows: u32,
    /// Stitches before and after them.
    pub stitches: Option<(u32, u32)>,
}

impl Extent {
    /// The extent of a plan.
    pub fn of<Doing>(plan: &Plan<Doing>) -> Self {
        Self {
            rows: plan.rows,
            stitches: plan.stitches.zip(plan.stitches_after(plan.rows)),
        }
    }

    /// The extent that a kept text means; none where it means nothing.
    pub fn parse(text: &str) -> Option<Self> {
        let numbers: Option<Vec<u32>> = text.split(' ').map(|number| number.parse().ok()).collect();
        match numbers?[..] {
            [rows] => Some(Self { rows, stitches: None }),
            [rows, before, after] => Some(Self {
                rows,
                stitches: Some((before, after)),
            }),
            _ => None,
        }
    }
}

impl fmt::Display for Extent {
    fn fmt(&self, text: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.stitches {
            Some((before, after)) => write!(text, "{} {before} {after}", self.rows),
            None => self.rows.fmt(text),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn an_extent_comes_back(rows in any::<u32>(), stitches in any::<Option<(u32, u32)>>()) {
            let extent = Extent { rows, stitches };
            prop_assert_eq!(Extent::parse(&extent.to_string()), Some(extent));
        }

        #[test]
        fn reading_is_total(text in ".*|[0-9 ]{0,9}") {
            let _ = Extent::parse(&text);
        }
    }
}
