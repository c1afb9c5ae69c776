//! A text that may be meant in several ways: each way as what to type instead, so that no doubt is left.
//!
//! `1,150` yards are a thousand or a little more than one, `88 112` is one count or two, and `10 1/2` beside millimetres
//! may be a US number. None of them is guessed: the ways that the field accepts travel with the doubt, and a page lays
//! the one that is tapped into the field.
//!
//! ```
//! use loopwright::bounds::Bounds;
//! use loopwright::units::count::read;
//! use loopwright::units::parse::Unreadable;
//!
//! let Err(Unreadable::Ambiguous(readings)) = read("88 112", Bounds::new(1, 100_000)) else { panic!("it was read") };
//! let ways: Vec<String> = readings.ways().map(|way| way.text()).collect();
//! assert_eq!(ways, ["88", "112", "88112"]);
//! ```

use super::print::{Step, with_unit};
use super::{Length, LengthUnit, Mass, MassUnit};
use crate::tables::needle::{Number, System};

/// One way in which a text may be meant.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Meant {
    /// A count.
    Count(u32),
    /// A length, in the unit it was typed in.
    Length {
        /// How long.
        value: Length,
        /// The unit.
        unit: LengthUnit,
    },
    /// A weight, in the unit it was typed in.
    Mass {
        /// How heavy.
        value: Mass,
        /// The unit.
        unit: MassUnit,
    },
    /// A needle by its number.
    Needle {
        /// Whose number.
        system: System,
        /// The number.
        number: Number,
        /// How thick that needle is.
        across: Length,
    },
}

impl Meant {
    /// So many millimetres.
    pub const fn millimetres(value: Length) -> Self {
        Self::Length {
            value,
            unit: LengthUnit::Mm,
        }
    }

    /// What to type for it, so that it can be read in one way only.
    pub fn text(self) -> String {
        match self {
            Self::Count(count) => count.to_string(),
            Self::Length { value, unit } => with_unit(value, unit, Step::Thousandth),
            Self::Mass { value, unit } => with_unit(value, unit, Step::Thousandth),
            Self::Needle { system, number, .. } => match system.prefix() {
                Some(prefix) => format!("{prefix} {number}"),
                None => number.to_string(),
            },
        }
    }
}

/// Why a text may be meant in several ways.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Cause {
    /// A comma that parts thousands or decimals, as in `1,150`.
    Comma,
    /// A point that parts thousands or decimals, as in `1.500`.
    Point,
    /// A space that parts thousands or two numbers, as in `88 112`.
    Space,
    /// A number that may be millimetres or a needle's name, as in `10 1/2`; beside US needles any that is a US number.
    NeedleSystem,
    /// Two needles are sold under that number, as US 17.
    TwoNeedles,
    /// No needle has that number; the ways are its neighbours.
    NoSuchNeedle,
}

/// Why a text is in doubt, and what it may mean: at most three ways, each of which the field accepts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Readings {
    /// Why.
    pub cause: Cause,
    /// The way that is named first.
    pub first: Meant,
    /// Another one.
    pub second: Option<Meant>,
    /// And another.
    pub third: Option<Meant>,
}

impl Readings {
    /// The first three of these ways; none if there is no way.
    pub fn of(cause: Cause, ways: impl IntoIterator<Item = Meant>) -> Option<Self> {
        let mut ways = ways.into_iter();
        Some(Self {
            cause,
            first: ways.next()?,
            second: ways.next(),
            third: ways.next(),
        })
    }

    /// What it may mean.
    pub fn ways(self) -> impl Iterator<Item = Meant> {
        [Some(self.first), self.second, self.third].into_iter().flatten()
    }
}
