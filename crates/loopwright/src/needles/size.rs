//! What a needle is called: its millimetres, and the number of each system that is equal or nearest.

use crate::problem::{Kind, Problem};
use crate::tables::Certainty;
use crate::tables::needle::{JAPANESE, NEEDLES, Number, System, hole, japanese};
use crate::units::Length;
use crate::units::parse::{Unreadable, Wanted, read};

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
    Japanese(u32),
    /// No number is left on it: the smallest hole of a needle gauge that it passes wholly.
    Hole {
        /// That hole.
        passes: Length,
        /// The next smaller hole of the same gauge, which stops it; none for the next smaller of the table.
        stops: Option<Length>,
    },
}

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
        let mut text = text.trim();
        let mut system = system;
        for (name, named) in [("us", System::Us), ("uk", System::Uk), ("jp", System::Japanese)] {
            if let Some((start, rest)) = text.split_at_checked(2)
                && start.eq_ignore_ascii_case(name)
            {
                (text, system) = (rest.trim_start(), named);
            }
        }
        let noughts = text.len() > 1 && text.bytes().all(|byte| byte == b'0');
        let typed = read::<Length>(text, &Wanted::any(crate::units::LengthUnit::Mm))?;
        if system == System::Metric || typed.unit.is_some() {
            return Ok(Self::Metric(typed.value));
        }
        // A number is read as if it were millimetres, so that all that is read there is read here.
        let part = if system == System::Japanese { MM } else { MM / 4 };
        let nm = typed.value.to_nm();
        if nm < 0 || nm % part != 0 {
            return Err(Unreadable::NotANumber);
        }
        let count = if noughts { text.len() as i64 } else { nm / part };
        let number = i16::try_from(count).unwrap_or(i16::MAX);
        let number = if noughts {
            Number::noughts(number)
        } else {
            Number::quarters(number)
        };
        Ok(match system {
            System::Us => Self::Us(number),
            System::Uk => Self::Uk(number),
            _ => Self::Japanese(u32::try_from(nm / MM).unwrap_or(u32::MAX)),
        })
    }

    /// The needles it may be, thinnest first.
    pub(super) fn needles(self) -> Result<Vec<Needle>, Problem> {
        let mut found = Vec::new();
        let system = match self {
            Self::Metric(across) => return Ok(vec![Needle::of(across)]),
            Self::Hole { passes, stops } => {
                for system in [System::Metric, System::Japanese] {
                    for named in rows(system) {
                        let before = NEEDLES.iter().rfind(|needle| needle.across < passes);
                        let stops = stops.or(before.map(|needle| needle.across)).unwrap_or(Length::ZERO);
                        let known = found.iter().any(|needle: &Needle| needle.across == named.across);
                        if stops < named.across && named.across <= passes && !known {
                            let at = found.iter().position(|needle| needle.across > named.across);
                            found.insert(at.unwrap_or(found.len()), Needle::of(named.across));
                        }
                    }
                }
                found.is_empty().then(|| found.push(Needle::of(passes)));
                return Ok(found);
            }
            Self::Us(_) => System::Us,
            Self::Uk(_) => System::Uk,
            Self::Japanese(_) => System::Japanese,
        };
        let wanted = match self {
            Self::Us(number) | Self::Uk(number) => i32::from(number.in_quarters()),
            Self::Japanese(number) => i32::try_from(number).map_or(i32::MAX, |number| number.saturating_mul(4)),
            Self::Metric(_) | Self::Hole { .. } => 0,
        };
        let (mut below, mut above) = (None, None);
        for named in rows(system) {
            let number = named.number.map_or(0, |number| i32::from(number.in_quarters()));
            if number == wanted {
                found.push(Needle::of(named.across));
            }
            if number >= 0 && number % 4 == 0 {
                let whole = number.unsigned_abs() / 4;
                if number < wanted && below.is_none_or(|below| below < whole) {
                    below = Some(whole);
                } else if number > wanted && above.is_none_or(|above| above > whole) {
                    above = Some(whole);
                }
            }
        }
        if found.is_empty() {
            let kind = Kind::NoExact { below, above };
            return Err(Problem { field: "size", kind });
        }
        Ok(found)
    }
}

/// Nanometres in a millimetre.
const MM: i64 = 1_000_000;

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
            let from = named.len();
            let (mut thinner, mut thicker) = (false, false);
            for mut row in rows(system) {
                row.off = row.across.saturating_sub(across);
                thinner |= row.off <= Length::ZERO;
                thicker |= row.off >= Length::ZERO;
                let nearest = named
                    .get(from)
                    .map_or(u64::MAX, |best: &Named| best.off.to_nm().unsigned_abs());
                let off = row.off.to_nm().unsigned_abs();
                if off < nearest {
                    named.truncate(from);
                }
                if off <= nearest {
                    named.push(row);
                }
            }
            if !(thinner && thicker) {
                named.truncate(from);
            }
        }
        Self {
            across,
            named,
            hole: hole(across),
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
        })
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
