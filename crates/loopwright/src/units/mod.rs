//! Lengths, weights and counts: what a knitter types becomes a quantity here, and nowhere else.
//!
//! A tape is read to the eighth of an inch, a ball band says 125 m, a scale says 48 g. Inside, a length is a whole
//! number of nanometres ([`Length`]) and a weight a whole number of nanograms ([`Mass`]). The inch, its 64th, the
//! yard, the ounce and the pound all are whole numbers of these, so nothing is lost by changing units, equal means
//! equal, and six balls of 125 m are exactly enough for 750 m.
//!
//! | question | room |
//! |---|---|
//! | what is a length, a weight | [`length`], [`mass`] |
//! | how many lie in a span | [`Gauge`] |
//! | how many, as written | [`count`] |
//! | what did she type | [`parse`] |
//! | what does a printed list hold | [`printed`] |
//! | how is it written on the page | [`print`](mod@print) |
//! | how is a gauge printed on a label | [`gauge_text`] |
//! | in which ways may a text be meant | [`meant`] |
//! | what else may be meant by what was taken | [`doubt`] |
//! | what stands in the field when the unit is switched | [`switch`] |
//!
//! ```
//! use loopwright::bounds::Bounds;
//! use loopwright::units::parse::{Wanted, read};
//! use loopwright::units::print::{Step, print};
//! use loopwright::units::{Length, LengthUnit};
//!
//! let wanted = Wanted { bounds: Bounds::new(Length::ZERO, Length::from_mm(3_000)), unit: LengthUnit::Inch };
//! let width = read("7½", &wanted)?.value;
//! assert_eq!(width, Length::from_sixty_fourths(480));
//! assert_eq!(print(width, LengthUnit::Cm, Step::Half), "19");
//! # Ok::<(), loopwright::units::parse::Unreadable>(())
//! ```

pub(crate) mod clean;
pub mod count;
pub mod doubt;
mod exact;
mod fraction;
mod gauge;
pub mod gauge_text;
pub mod length;
pub mod mass;
pub mod meant;
mod names;
mod number;
pub mod parse;
pub mod print;
pub mod printed;
pub mod rate;
pub mod switch;

pub use count::CountUnit;
pub use gauge::Gauge;
pub use length::{Length, LengthUnit};
pub use mass::{Mass, MassUnit};

use meant::Meant;

/// Any unit that can be written behind a number.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Unit {
    /// A unit of length, as in `7 in`.
    Length(LengthUnit),
    /// A unit of weight, as in `50 g`.
    Mass(MassUnit),
    /// A thing that is counted, as in `132 sts`.
    Count(CountUnit),
}

/// What is being measured, whatever the unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Dimension {
    /// How long.
    Length,
    /// How heavy.
    Mass,
    /// How many.
    Count,
}

/// A quantity of any kind: how a limit or a reading travels in an error.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Amount {
    /// A length; nanometres when it is written out as data.
    Length(Length),
    /// A weight; nanograms when it is written out as data.
    Mass(Mass),
    /// A count.
    Count(u32),
}

impl Unit {
    /// What this unit measures.
    pub const fn dimension(self) -> Dimension {
        match self {
            Self::Length(_) => Dimension::Length,
            Self::Mass(_) => Dimension::Mass,
            Self::Count(_) => Dimension::Count,
        }
    }
}

/// What [`Length`] and [`Mass`] have in common, so that reading, printing and switching are written once.
///
/// It is for these two only and cannot be implemented elsewhere. The *base* is the whole number a value is held as:
/// nanometres for a length, nanograms for a weight.
pub trait Measure: Copy + Ord + core::fmt::Debug + sealed::Sealed {
    /// The units this quantity is written in.
    type Unit: Copy + Eq + core::fmt::Debug + Into<Unit>;
    /// What is being measured.
    const DIMENSION: Dimension;
    /// The quantity that is held as this whole number.
    fn from_base(base: i64) -> Self;
    /// The whole number this quantity is held as.
    fn base(self) -> i64;
    /// How many of the base there are in one unit: exact, and always above zero.
    fn per_unit(unit: Self::Unit) -> i64;
    /// The unit, if it is one of this quantity's.
    fn unit_of(unit: Unit) -> Option<Self::Unit>;
    /// The short sign the unit is printed with, such as `in`.
    fn symbol(unit: Self::Unit) -> &'static str;
    /// The quantity as it travels in an error.
    fn amount(self) -> Amount;
    /// The quantity as one way in which a text may be meant.
    fn meant(self, unit: Self::Unit) -> Meant;
}

/// Keeps [`Measure`] to the types of this module.
mod sealed {
    pub trait Sealed {}
    impl Sealed for super::Length {}
    impl Sealed for super::Mass {}
}
