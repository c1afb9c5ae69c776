//! How long a thing is: a scarf, a tail, a ball of yarn, the thickness of a needle.
//!
//! A [`Length`] is a whole number of nanometres. One inch is 25.4 mm and one yard 0.9144 m, both exactly by
//! definition (NIST SP 811, appendix B.8; the values are from memory), so inches, their 64ths and yards are exact
//! too. Overflow never crashes: a sum stays at the most, or says `None` if you ask by `checked_`.
//!
//! ```
//! use loopwright::units::{Length, LengthUnit};
//!
//! assert_eq!(Length::from_inches(36), Length::YARD);
//! assert_eq!(Length::of(254, LengthUnit::Cm), Length::from_inches(100));
//! // 10 cm is not 4 in, whatever the label says.
//! assert!(Length::of(10, LengthUnit::Cm) < Length::from_inches(4));
//! ```

use super::exact::exact;
use super::print::Step;
use crate::tables::{Source, Taken};

/// A length, exact, in whole nanometres; negative is allowed (ease can be).
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize), serde(transparent))]
pub struct Length(i64);

impl Length {
    /// One inch: 25.4 mm exactly.
    pub const INCH: Self = Self::of(1, LengthUnit::Inch);
    /// One yard: 0.9144 m exactly, which is 36 inches.
    pub const YARD: Self = Self::of(1, LengthUnit::Yard);
    /// One 64th of an inch: 0.396875 mm exactly.
    pub const SIXTY_FOURTH: Self = Self(Self::INCH.0 / 64);

    /// From nanometres, as they are held.
    pub const fn from_nm(nm: i64) -> Self {
        Self(nm)
    }

    /// From whole millimetres.
    pub const fn from_mm(mm: i64) -> Self {
        Self::of(mm, LengthUnit::Mm)
    }

    /// From whole inches.
    pub const fn from_inches(inches: i64) -> Self {
        Self::of(inches, LengthUnit::Inch)
    }

    /// From 64ths of an inch: 480 of them are 7 1/2 in.
    pub const fn from_sixty_fourths(parts: i64) -> Self {
        Self::SIXTY_FOURTH.saturating_mul(parts)
    }

    /// In nanometres, as it is held.
    pub const fn to_nm(self) -> i64 {
        self.0
    }
}

exact!(Length, LengthUnit);

/// A unit that lengths are written in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum LengthUnit {
    /// Millimetre: needles.
    Mm,
    /// Centimetre: bodies and knitting.
    Cm,
    /// Metre: yarn.
    M,
    /// Inch, 25.4 mm: bodies and knitting.
    Inch,
    /// Yard, 0.9144 m: yarn.
    Yard,
}

impl LengthUnit {
    /// Every unit of length, in the order a menu would show them.
    pub const ALL: [Self; 5] = [Self::Mm, Self::Cm, Self::M, Self::Inch, Self::Yard];

    /// Nanometres in one unit, exact.
    pub const fn base(self) -> i64 {
        match self {
            Self::Mm => 1_000_000,
            Self::Cm => 10_000_000,
            Self::M => 1_000_000_000,
            Self::Inch => 25_400_000,
            Self::Yard => 914_400_000,
        }
    }

    /// How sure that is of what others defined; none for the metre and its parts, which are what is counted in.
    pub const fn source(self) -> Option<Source> {
        match self {
            Self::Mm | Self::Cm | Self::M => None,
            Self::Inch | Self::Yard => Some(Taken::Conversions.from_memory()),
        }
    }

    /// The short sign it is printed with; what is printed can be read again.
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Mm => "mm",
            Self::Cm => "cm",
            Self::M => "m",
            Self::Inch => "in",
            Self::Yard => "yd",
        }
    }

    /// How finely it is usually shown: inches to 1/8, cm to 0.5, metres and yards to 0.1, and mm to 0.01, since mm
    /// are for needles and a 2.25 mm needle must not become 2.3. Common practice, no source.
    pub const fn usual_step(self) -> Step {
        match self {
            Self::Mm => Step::Hundredth,
            Self::Cm => Step::Half,
            Self::M | Self::Yard => Step::Tenth,
            Self::Inch => Step::Eighths,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_64th_of_an_inch_is_whole() {
        assert_eq!(Length::SIXTY_FOURTH.to_nm() * 64, Length::INCH.to_nm());
        assert_eq!(Length::from_sixty_fourths(64 * 36), Length::YARD);
    }

    #[test]
    fn far_too_long_stays_at_the_most() {
        assert_eq!(Length::from_inches(i64::MAX), Length::MAX);
        assert_eq!(Length::from_mm(i64::MIN), Length::MIN);
        assert_eq!(Length::from_sixty_fourths(i64::MIN), Length::MIN);
    }

    #[test]
    fn order_is_the_order_of_tapes() {
        let inches = [
            Length::from_inches(-1),
            Length::ZERO,
            Length::SIXTY_FOURTH,
            Length::INCH,
            Length::YARD,
        ];
        assert!(inches.is_sorted());
        assert!(Length::of(1, LengthUnit::M) > Length::YARD);
    }
}
