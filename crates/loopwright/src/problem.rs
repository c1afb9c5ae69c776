//! What is wrong with a question, as data.
//!
//! A [`Problem`] names the [`FieldPath`] in the question and says what would be right: a limit, the nearest counts that can
//! be had. It holds no sentence, so that every language can make its own.

use crate::bounds::Bounds;
use crate::choice::{FieldName, GroupName};
use crate::units::parse::Unreadable;
use crate::units::printed::Unread;
use crate::units::{Amount, Length, Measure};
use std::fmt;

/// Where in a question something is: a field, or a field of one member of a repeated group.
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub struct FieldPath {
    key: &'static str,
    member: Option<(&'static GroupName, usize)>,
}

impl FieldPath {
    /// A field of one member of a repeated group, counted from nought.
    pub const fn in_group(group: &'static GroupName, index: usize, key: &'static str) -> Self {
        Self {
            key,
            member: Some((group, index)),
        }
    }

    /// A field that belongs to no group.
    pub const fn alone(key: &'static str) -> Self {
        Self { key, member: None }
    }

    /// The key of the field, the same in every member of a group.
    pub const fn key(self) -> &'static str {
        self.key
    }

    /// The group that the field belongs to.
    pub fn group(self) -> Option<&'static GroupName> {
        self.member.map(|(group, _)| group)
    }

    /// Which member of its group the field belongs to, counted from nought.
    pub fn index(self) -> Option<usize> {
        self.member.map(|(_, index)| index)
    }

    /// The name of the field among these, if it is one of them.
    pub fn name<N: FieldName>(self) -> Option<N> {
        N::from_key(self.key).filter(|_| N::GROUP == self.group())
    }

    /// What the field is stored and linked under: `stitches`, and of the third section `s3_stitches`.
    pub fn stored(self) -> String {
        match self.member {
            None => self.key.to_owned(),
            Some((group, index)) => format!("{}{}_{}", group.stored, index + 1, self.key),
        }
    }
}

impl<N: FieldName> From<N> for FieldPath {
    fn from(name: N) -> Self {
        Self::alone(name.key())
    }
}

/// The path in the question: `stitches`, `sections[2].stitches`.
impl fmt::Display for FieldPath {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.member {
            None => formatter.write_str(self.key),
            Some((group, index)) => write!(formatter, "{}[{index}].{}", group.name, self.key),
        }
    }
}

impl fmt::Debug for FieldPath {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(self, formatter)
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for FieldPath {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

/// One thing that has to change before there is an answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Problem {
    /// Where in the question.
    pub field: FieldPath,
    /// What is wrong, with the nearest thing that would be right.
    pub kind: Kind,
}

/// What is wrong, with the nearest thing that would be right.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Kind {
    /// The text is not a quantity.
    Unreadable(Unreadable),
    /// The text is not such a list.
    UnreadableList(Unread),
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
    /// It is none of the things to choose from: no question holds such a choice, and a link may name one.
    NotOffered,
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
    /// Another field says another count for the same thing.
    Differs {
        /// What the other field says.
        other: u32,
    },
    /// It is such a multiple already; these are the next ones.
    AlreadyMultiple {
        /// The next below that can be had.
        below: Option<u32>,
        /// The next above that can be had.
        above: Option<u32>,
    },
}

impl Problem {
    /// What is wrong, and where.
    pub fn new(field: impl Into<FieldPath>, kind: Kind) -> Self {
        let field = field.into();
        Self { field, kind }
    }

    /// What is wrong with a count that must lie within bounds; nothing if it does.
    pub fn of_count(field: impl Into<FieldPath>, value: u32, bounds: Bounds<u32>) -> Option<Self> {
        Kind::of_count(value, bounds).map(|kind| Self::new(field, kind))
    }

    /// What is wrong with a length that must lie within bounds; nothing if it does.
    pub fn of_length(field: impl Into<FieldPath>, value: Length, bounds: Bounds<Length>) -> Option<Self> {
        Kind::of_measure(value, bounds).map(|kind| Self::new(field, kind))
    }
}

impl Kind {
    /// What is wrong with a count that must lie within bounds; nothing if it does.
    pub const fn of_count(value: u32, bounds: Bounds<u32>) -> Option<Self> {
        let Bounds { least, most } = bounds;
        match value {
            _ if value < least => Some(Self::TooFew { least }),
            _ if value > most => Some(Self::TooMany { most }),
            _ => None,
        }
    }

    /// What is wrong with a length or a weight that must lie within bounds; nothing if it does.
    pub fn of_measure<T: Measure>(value: T, bounds: Bounds<T>) -> Option<Self> {
        let (least, most) = (bounds.least.amount(), bounds.most.amount());
        match value {
            _ if value < bounds.least => Some(Self::TooSmall { least }),
            _ if value > bounds.most => Some(Self::TooLarge { most }),
            _ => None,
        }
    }
}

impl Kind {
    /// The numbers that would be right, nearest first, for a field to offer.
    pub fn nearest(&self) -> Vec<u32> {
        match *self {
            Self::TooFew { least } => vec![least],
            Self::TooMany { most } => vec![most],
            Self::Differs { other } => vec![other],
            Self::NoExact { below, above } | Self::AlreadyMultiple { below, above } => {
                below.into_iter().chain(above).collect()
            }
            Self::Unreadable(Unreadable::NotWhole { below, above }) => vec![below, above],
            Self::Unreadable(_)
            | Self::UnreadableList(_)
            | Self::Already
            | Self::TooSmall { .. }
            | Self::TooLarge { .. }
            | Self::Missing
            | Self::NotOffered
            | Self::NeedsSwatch => Vec::new(),
        }
    }
}
