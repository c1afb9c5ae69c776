//! What a needle is called: its millimetres, and the number of each system that is equal or nearest.

use crate::check::Check;
use crate::problem::Kind;
use crate::tables::Certainty;
use crate::tables::needle::{JAPANESE, NEEDLES, Number, System, hole, japanese};
use crate::units::parse::{Unreadable, Wanted, read};
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

/// What may stand before a number.
const PREFIXES: [(&str, System); 3] = [("us", System::Us), ("uk", System::Uk), ("jp", System::Japanese)];

/// Nanometres in a millimetre.
const MM: i64 = LengthUnit::Mm.base();

impl Size {
    /// Reads a size as it is written: `4,5`, `US 7`, `10 1/2`, `000`, `JP 8`, `4.5 mm`. A number alone is one of
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
    /// [`Unreadable`], as for a length; `NotANumber` for a part of one that no needle has.
    pub fn read(text: &str, system: System) -> Result<Self, Unreadable> {
        let lower = text.to_ascii_lowercase();
        let (mut text, mut system) = (lower.trim(), system);
        for (prefix, named) in PREFIXES {
            if let Some(number) = text.strip_prefix(prefix) {
                (text, system) = (number.trim(), named);
            }
        }
        // A number is read as if it were millimetres, so that all that is read there is read here.
        let typed = read::<Length>(text, &Wanted::any(LengthUnit::Mm))?;
        if typed.unit.is_some() {
            return Ok(Self::Metric(typed.value));
        }
        let quarters = typed.value.to_nm() / (MM / 4);
        let number = if text.len() > 1 && text.bytes().all(|byte| byte == b'0') {
            Number::noughts(i16::try_from(text.len()).unwrap_or(i16::MAX))
        } else {
            Number::quarters(i16::try_from(quarters).unwrap_or(i16::MAX))
        };
        let size = match system {
            System::Metric => return Ok(Self::Metric(typed.value)),
            System::Us => Self::Us(number),
            System::Uk => Self::Uk(number),
            System::Japanese => Self::Japanese(number),
        };
        let is_number = quarters >= 0 && typed.value.to_nm() % (MM / 4) == 0;
        is_number.then_some(size).ok_or(Unreadable::NotANumber)
    }

    /// The needles it may be, thinnest first; where no needle has the number, its neighbours are told.
    pub(super) fn needles(self, check: &mut Check) -> Vec<Needle> {
        let (system, wanted) = match self {
            Self::Metric(across) => return vec![Needle::of(across)],
            Self::Hole(passes) => return through(passes),
            Self::Us(number) => (System::Us, number),
            Self::Uk(number) => (System::Uk, number),
            Self::Japanese(number) => (System::Japanese, number),
        };
        let wanted = wanted.in_quarters();
        let mut found = Vec::new();
        // The nearest whole numbers; numbers fall as UK needles grow.
        let (mut below, mut above) = (-1, i16::MAX);
        for named in rows(system) {
            let number = named.number.map_or(0, Number::in_quarters);
            if number == wanted {
                found.push(Needle::of(named.across));
            } else if number >= 0 && number % 4 == 0 {
                if number < wanted {
                    below = number.max(below);
                } else {
                    above = number.min(above);
                }
            }
        }
        if found.is_empty() {
            let whole = |quarters: i16| u32::try_from(quarters).ok().map(|quarters| quarters / 4);
            let kind = Kind::NoExact {
                below: whole(below),
                above: whole(above).filter(|_| above < i16::MAX),
            };
            check.wrong("size", kind);
        }
        found
    }
}

/// The needles that pass a hole and not the next smaller one of the table; the hole itself where none is named.
fn through(passes: Length) -> Vec<Needle> {
    let smaller = stops(passes).unwrap_or(Length::ZERO);
    let mut found = Vec::new();
    for named in rows(System::Japanese) {
        if smaller < named.across && named.across < passes {
            found.push(Needle::of(named.across));
        }
    }
    found.push(Needle::of(passes));
    found
}

/// The next hole of a needle gauge that stops a shaft; none where all let it pass.
fn stops(across: Length) -> Option<Length> {
    let smaller = NEEDLES.iter().rfind(|needle| needle.across < across);
    smaller.map(|needle| needle.across)
}

/// One needle and its names.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Needle {
    /// How thick it is, exactly as named.
    pub across: Length,
    /// The equal or nearest of each system, in the order of [`System::ALL`]; two where both are as near, thinner first,
    /// and none where the system has none so thin or so thick.
    pub named: Vec<Named>,
    /// The smallest hole of a needle gauge that it passes wholly; none when it is thicker than all.
    pub hole: Option<Length>,
    /// The next smaller hole, which stops it; none when it is thinner than all.
    pub stops: Option<Length>,
}

/// A needle by a system.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Named {
    /// The system.
    pub system: System,
    /// Its number; none for millimetres.
    pub number: Option<Number>,
    /// How thick that needle is.
    pub across: Length,
    /// How much thicker that is than the needle in question: nothing when they are equal.
    pub off: Length,
    /// How sure the number is.
    pub certainty: Certainty,
}

impl Needle {
    fn of(across: Length) -> Self {
        let mut named = Vec::new();
        for system in System::ALL {
            let before = named.len();
            let mut nearest = u64::MAX;
            let (mut thinner, mut thicker) = (false, false);
            for mut row in rows(system) {
                row.off = row.across.saturating_sub(across);
                thinner |= row.across <= across;
                thicker |= row.across >= across;
                let off = row.off.to_nm().unsigned_abs();
                if off < nearest {
                    nearest = off;
                    named.truncate(before);
                }
                if off == nearest {
                    named.push(row);
                }
            }
            if !(thinner && thicker) {
                named.truncate(before);
            }
        }
        Self {
            across,
            named,
            hole: hole(across),
            stops: stops(across),
        }
    }
}

/// The needles of a system, thinnest first.
fn rows(system: System) -> Vec<Named> {
    let mut rows = Vec::new();
    let mut push = |number, across, certainty| {
        rows.push(Named {
            system,
            number,
            across,
            off: Length::ZERO,
            certainty,
        });
    };
    if system == System::Japanese {
        for number in JAPANESE.least..=JAPANESE.most {
            if let Some(across) = japanese(number) {
                push(Some(Number::whole(number as i16)), across, Certainty::FromMemory);
            }
        }
        return rows;
    }
    for needle in &NEEDLES {
        match system {
            System::Us if needle.us.is_some() => push(needle.us, needle.across, needle.us_certainty),
            System::Uk if needle.uk.is_some() => push(needle.uk, needle.across, needle.uk_certainty),
            System::Metric => push(None, needle.across, needle.certainty()),
            _ => {}
        }
    }
    rows
}
