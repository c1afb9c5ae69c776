//! A size as it is written, and the needles that it may mean.

use super::named::{Needle, numbered, stops};
use super::{GivenIn, Name};
use crate::problem::{Kind, Problem};
use crate::tables::needle::{self as written, Number, System, Written};
use crate::tail::NEEDLE;
use crate::units::parse::Unreadable;
use crate::units::{Length, LengthUnit};

/// A needle, as it is named.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Size {
    /// How thick it is, within [`NEEDLE`](crate::tail::NEEDLE). Never rounded.
    Metric(Length),
    /// Its US number.
    Us(Number),
    /// Its old UK or Canadian number.
    Uk(Number),
    /// Its Japanese number.
    Japanese(Number),
    /// No number is left on it: the smallest hole of a needle gauge that it passes wholly.
    Hole(Length),
}

/// Nanometres in a millimetre.
const MM: i64 = LengthUnit::Mm.base();

impl Size {
    /// Reads a size as it is written: `4,5`, `US 7`, `7 US`, `10 1/2`, `000`, `JP 8`, `4.5 mm`. A number alone is one of
    /// `system`; a unit behind it always makes it a thickness.
    ///
    /// ```
    /// use loopwright::needles::Size;
    /// use loopwright::tables::needle::{Number, System};
    /// use loopwright::units::Length;
    ///
    /// assert_eq!(Size::read("us 10½", System::Metric), Ok(Size::Us(Number::quarters(42))));
    /// assert_eq!(Size::read("000", System::Uk), Ok(Size::Uk(Number::noughts(3))));
    /// assert_eq!(Size::read("2.25mm", System::Us), Ok(Size::Metric(Length::from_nm(2_250_000))));
    /// ```
    ///
    /// # Errors
    /// [`Unreadable`], as for a length; `NotANumber` for a part of one that no needle has, `Ambiguous` for millimetres that
    /// may be a needle's name and for a number of a named system that no needle has.
    pub fn read(text: &str, system: System) -> Result<Self, Unreadable> {
        match written::read(text)? {
            Written::Metric(across) => Ok(Self::Metric(across)),
            // The nearest numbers carry the system with them, whichever one a page has chosen beside the text.
            Written::Numbered(named, number) => match written::no_such_needle(named, number) {
                Some(readings) => Err(Unreadable::Ambiguous(readings)),
                None => Ok(Self::numbered(named, number)),
            },
            Written::Alone(alone) => match system {
                System::Metric => alone.in_millimetres(NEEDLE).map(Self::Metric),
                System::Us | System::Uk | System::Japanese => {
                    let number = alone.number.ok_or(Unreadable::NotANumber)?;
                    Ok(Self::numbered(system, number))
                }
            },
        }
    }

    /// A number of a system; of millimetres, so many of them.
    const fn numbered(system: System, number: Number) -> Self {
        match system {
            System::Metric => Self::Metric(Length::from_nm(MM / 4 * number.in_quarters() as i64)),
            System::Us => Self::Us(number),
            System::Uk => Self::Uk(number),
            System::Japanese => Self::Japanese(number),
        }
    }

    /// The same, where it may also be the hole that the needle passes.
    ///
    /// # Errors
    /// As [`Size::read`].
    pub fn read_given_in(text: &str, given_in: GivenIn) -> Result<Self, Unreadable> {
        let size = Self::read(text, given_in.system())?;
        Ok(match (given_in, size) {
            (GivenIn::Hole, Self::Metric(across)) => Self::Hole(across),
            (GivenIn::Hole | GivenIn::Us | GivenIn::Uk | GivenIn::Japanese | GivenIn::Millimetres, size) => size,
        })
    }

    /// The needles it may be, thinnest first.
    pub(super) fn needles(self) -> Result<Vec<Needle>, Problem> {
        match self {
            Self::Metric(across) => within(across).map(|()| vec![Needle::of(across)]),
            Self::Hole(passes) => within(passes).map(|()| through(passes)),
            Self::Us(number) => with_number(System::Us, number),
            Self::Uk(number) => with_number(System::Uk, number),
            Self::Japanese(number) => with_number(System::Japanese, number),
        }
    }
}

fn within(across: Length) -> Result<(), Problem> {
    Problem::of_length(Name::Size, across, NEEDLE).map_or(Ok(()), Err)
}

/// The needles of a number; where no needle has it, its neighbours are told.
fn with_number(system: System, wanted: Number) -> Result<Vec<Needle>, Problem> {
    let rows = numbered(system);
    let found = rows.iter().filter(|(number, _)| *number == wanted);
    let found: Vec<Needle> = found.map(|(_, named)| Needle::of(named.across)).collect();
    if found.is_empty() {
        let numbers = rows.into_iter().map(|(number, _)| number);
        return Err(Problem::new(Name::Size, neighbours(numbers, wanted)));
    }
    Ok(found)
}

/// The nearest whole numbers; numbers fall as UK needles grow.
fn neighbours(numbers: impl Iterator<Item = Number>, wanted: Number) -> Kind {
    let (mut below, mut above) = (None, None);
    for whole in numbers.filter_map(Number::whole_number) {
        if Number::whole(whole).in_quarters() < wanted.in_quarters() {
            below = below.max(Some(whole));
        } else {
            above = Some(above.map_or(whole, |above: i16| above.min(whole)));
        }
    }
    let count = |number: i16| u32::try_from(number).ok();
    Kind::NoExact {
        below: below.and_then(count),
        above: above.and_then(count),
    }
}

/// The needles that pass a hole and not the next smaller one of the table; the hole itself where none is named.
fn through(passes: Length) -> Vec<Needle> {
    let smaller = stops(passes).unwrap_or(Length::ZERO);
    let between = |across: &Length| smaller < *across && *across < passes;
    let japanese = numbered(System::Japanese).into_iter().map(|(_, named)| named.across);
    japanese.filter(between).chain([passes]).map(Needle::of).collect()
}
