//! What is wrong with a question, as data.
//!
//! A [`Problem`] names the field and says what would be right: a limit, the nearest counts that can be had. It
//! holds no sentence, so that every language can make its own.

use crate::bounds::Bounds;
use crate::units::parse::Unreadable;
use crate::units::{Amount, Length};

/// One thing that has to change before there is an answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Problem {
    /// The field of the question, by the name it has in the tool's `Question`.
    pub field: &'static str,
    /// What is wrong, with the nearest thing that would be right.
    pub kind: Kind,
}

/// What is wrong, with the nearest thing that would be right.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Kind {
    /// The text is not a quantity.
    Unreadable(Unreadable),
    /// The number is smaller than can be worked with.
    TooFew {
        /// The smallest that works.
        least: u32,
    },
    /// The number is larger than can be worked with.
    TooMany {
        /// The largest that works.
        most: u32,
    },
    /// The quantity is smaller than can be worked with.
    TooSmall {
        /// The smallest that works.
        least: Amount,
    },
    /// The quantity is larger than can be worked with.
    TooLarge {
        /// The largest that works.
        most: Amount,
    },
    /// This has to be answered before the rest means anything.
    Missing,
    /// The gauge that is known cannot tell the yarn in a stitch: a stockinette gauge can, or a swatch on the scale.
    NeedsSwatch,
    /// That number cannot be had exactly; these are the nearest that can.
    NoExact {
        /// The nearest below.
        below: Option<u32>,
        /// The nearest above.
        above: Option<u32>,
    },
    /// It is so already; there is nothing to change.
    Already,
    /// It is such a multiple already; these are the next ones.
    AlreadyMultiple {
        /// The next below that can be had.
        below: Option<u32>,
        /// The next above that can be had.
        above: Option<u32>,
    },
}

impl Problem {
    /// What is wrong with a count that must lie within bounds; nothing if it does.
    pub fn of_count(field: &'static str, value: u32, bounds: Bounds<u32>) -> Option<Self> {
        let Bounds { least, most } = bounds;
        let kind = match value {
            _ if value < least => Kind::TooFew { least },
            _ if value > most => Kind::TooMany { most },
            _ => return None,
        };
        Some(Self { field, kind })
    }

    /// What is wrong with a length that must lie within bounds; nothing if it does.
    pub fn of_length(field: &'static str, value: Length, bounds: Bounds<Length>) -> Option<Self> {
        let (least, most) = (Amount::Length(bounds.least), Amount::Length(bounds.most));
        let kind = match value {
            _ if value < bounds.least => Kind::TooSmall { least },
            _ if value > bounds.most => Kind::TooLarge { most },
            _ => return None,
        };
        Some(Self { field, kind })
    }
}

impl Kind {
    /// The numbers that would be right, nearest first, for a field to offer.
    pub fn nearest(&self) -> Vec<u32> {
        match *self {
            Self::TooFew { least } => vec![least],
            Self::TooMany { most } => vec![most],
            Self::NoExact { below, above } | Self::AlreadyMultiple { below, above } => {
                below.into_iter().chain(above).collect()
            }
            Self::Unreadable(Unreadable::NotWhole { below, above }) => vec![below, above],
            Self::Unreadable(_)
            | Self::Already
            | Self::TooSmall { .. }
            | Self::TooLarge { .. }
            | Self::Missing
            | Self::NeedsSwatch => Vec::new(),
        }
    }
}
