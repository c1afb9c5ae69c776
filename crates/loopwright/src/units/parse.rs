//! What she typed, as a quantity: `7 1/2`, `7½`, `7-1/2 in`, `7,5 cm`, `125 m`, `48 g`.
//!
//! A unit behind the number counts; without one the field's own unit is meant. What cannot be read is named by an
//! [`Unreadable`], which carries what would be right where there is something; no sentence is made here. The text
//! itself is never changed. Counts are read by [`count::read`](super::count::read), from the same pieces.
//!
//! ```
//! use loopwright::bounds::Bounds;
//! use loopwright::units::parse::{Read, Unreadable, Wanted, read};
//! use loopwright::units::{Amount, Length, LengthUnit};
//!
//! let most = Length::of(3, LengthUnit::M);
//! let width = Wanted { bounds: Bounds::new(Length::from_mm(1), most), unit: LengthUnit::Cm };
//! assert_eq!(read("7,5", &width), Ok(Read { value: Length::from_mm(75), unit: None }));
//! let inches = Some(LengthUnit::Inch.into());
//! assert_eq!(read("7-1/2 in", &width), Ok(Read { value: Length::from_sixty_fourths(480), unit: inches }));
//! assert_eq!(read("50 m", &width), Err(Unreadable::TooLarge { most: Amount::Length(most) }));
//! ```

use super::clean::clean;
use super::fraction::Ratio;
use super::meant::Readings;
use super::names;
use super::number::{Number, number};
use super::{Amount, Dimension, Measure, Unit};
use crate::bounds::Bounds;

/// What a field accepts: how little, how much, and the unit that is meant when none is written.
///
/// Bounds also say whether a sign makes sense (`least` below zero) and whether nothing at all does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Wanted<T: Measure> {
    /// The least and the most, both accepted.
    pub bounds: Bounds<T>,
    /// The unit that is meant when none is written.
    pub unit: T::Unit,
}

impl<T: Measure> Wanted<T> {
    /// Anything that can be held, in this unit.
    pub fn any(unit: T::Unit) -> Self {
        Self {
            bounds: Bounds::new(T::from_base(i64::MIN), T::from_base(i64::MAX)),
            unit,
        }
    }
}

/// A quantity that was read, and the unit that was written behind it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Read<T> {
    /// The quantity.
    pub value: T,
    /// The unit as written; none when the field's own was meant.
    pub unit: Option<Unit>,
}

/// Why a text is not the quantity that is wanted, with what would be right where there is something.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Unreadable {
    /// Nothing is written.
    Empty,
    /// It breaks off where more has to follow, such as `7 1/`, `7-` or a sign alone. While she types, a page may wait.
    Unfinished,
    /// It does not begin with a number, or the number is not written in any known way (`1.2.3`).
    NotANumber,
    /// There are two numbers where one is wanted, such as `7-8` or `132 (144)`.
    TwoNumbers,
    /// What stands behind the number is no unit that is known here.
    UnknownUnit,
    /// The unit measures something else, such as grams for a length.
    WrongKind {
        /// The unit that was written.
        written: Unit,
        /// What is measured here.
        wanted: Dimension,
    },
    /// It may be meant in several ways, such as `1,000 m`: it has to be asked which.
    Ambiguous(Readings),
    /// A part of one where only whole ones make sense, such as half a stitch.
    NotWhole {
        /// The nearest count below that is accepted.
        below: u32,
        /// The nearest count above that is accepted.
        above: u32,
    },
    /// Less than is accepted.
    TooSmall {
        /// The least that is accepted.
        least: Amount,
    },
    /// More than is accepted.
    TooLarge {
        /// The most that is accepted.
        most: Amount,
    },
    /// A fraction with nought below the stroke.
    ZeroDenominator,
}

/// Reads a length or a weight as people write them.
///
/// The value is rounded once, to the nearest nanometre or nanogram; for inches down to the 64th, yards to the
/// hundredth and every metric decimal that a tape shows, nothing has to be rounded. No text makes it panic.
pub fn read<T: Measure>(text: &str, wanted: &Wanted<T>) -> Result<Read<T>, Unreadable> {
    let (number, unit) = pieces(text)?;
    let measured_in = match unit {
        None => wanted.unit,
        Some(written) => T::unit_of(written).ok_or(Unreadable::WrongKind {
            written,
            wanted: T::DIMENSION,
        })?,
    };
    if let Some(readings) = readings(&number, wanted.bounds, measured_in) {
        return Err(Unreadable::Ambiguous(readings));
    }
    if number.parted.is_some() {
        return Err(Unreadable::TwoNumbers);
    }
    Ok(Read {
        value: within(number.value, wanted.bounds, measured_in)?,
        unit,
    })
}

/// The ways in which a number in doubt may be meant, of those that are accepted.
fn readings<T: Measure>(number: &Number, bounds: Bounds<T>, unit: T::Unit) -> Option<Readings> {
    let cause = number.doubt?;
    let accepted = |ratio: Ratio| within(ratio, bounds, unit).ok().map(|value| value.meant(unit));
    let ways = match number.parted {
        Some(parted) => [Some(parted[0]), Some(parted[1]), Some(number.value)],
        // The one without the mark comes first: it is what the digits say at a glance.
        None => [number.thousands, Some(number.value), None],
    };
    Readings::of(cause, ways.into_iter().flatten().filter_map(accepted))
}

/// The number in this unit, if it is accepted.
fn within<T: Measure>(number: Ratio, bounds: Bounds<T>, unit: T::Unit) -> Result<T, Unreadable> {
    let Bounds { least, most } = bounds;
    let base = number.times(T::per_unit(unit));
    if base < i128::from(least.base()) {
        return Err(Unreadable::TooSmall { least: least.amount() });
    }
    if base > i128::from(most.base()) {
        return Err(Unreadable::TooLarge { most: most.amount() });
    }
    Ok(T::from_base(saturated(base)))
}

/// The unit that a text names and nothing beside it: `inches`, `in.`, `"`, `Yds`.
///
/// What stands beside a field in a link or a file is read as what is typed behind a number.
///
/// # Errors
/// [`Unreadable::Empty`] where nothing is written, [`Unreadable::UnknownUnit`] where it is no unit that is known.
///
/// ```
/// use loopwright::units::LengthUnit;
/// use loopwright::units::parse::{Unreadable, read_unit};
///
/// for written in ["in", "inches", "Inch", "in.", "\u{201d}"] {
///     assert_eq!(read_unit(written), Ok(LengthUnit::Inch.into()), "{written}");
/// }
/// assert_eq!(read_unit("inchs"), Err(Unreadable::UnknownUnit));
/// assert_eq!(read_unit("4 in"), Err(Unreadable::UnknownUnit));
/// ```
pub fn read_unit(text: &str) -> Result<Unit, Unreadable> {
    match clean(text).as_slice() {
        [] => Err(Unreadable::Empty),
        name => names::named(name).ok_or(Unreadable::UnknownUnit),
    }
}

/// The number in the text and the unit behind it.
pub(super) fn pieces(text: &str) -> Result<(Number, Option<Unit>), Unreadable> {
    let text = clean(text);
    let (number, rest) = number(&text)?;
    Ok((number, names::unit(rest)?))
}

/// The nearest number that can be held.
fn saturated(base: i128) -> i64 {
    i64::try_from(base).unwrap_or(if base < 0 { i64::MIN } else { i64::MAX })
}

#[cfg(test)]
#[path = "parse_tests.rs"]
mod tests;
