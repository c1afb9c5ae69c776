//! How heavy a thing is: a ball, what is left of it, a finished shawl.
//!
//! A [`Mass`] is a whole number of nanograms. One ounce (avoirdupois) is 28.349523125 g and a pound 16 of them, both
//! exactly (NIST SP 811, appendix B.8, and NIST Handbook 44, appendix C; the values are as others quote the
//! handbook). Overflow never crashes: a sum stays at the most, or says `None` if you ask by `checked_`.
//!
//! ```
//! use loopwright::units::{Mass, MassUnit};
//!
//! assert_eq!(Mass::from_ounces(16), Mass::of(1, MassUnit::Pound));
//! // A "50 g / 1.75 oz" ball holds a little more than 1.75 oz.
//! assert!(Mass::from_grams(200) > Mass::from_ounces(7));
//! ```

use super::exact::exact;
use super::print::Step;
use crate::tables::{Source, Taken};

/// A weight, exact, in whole nanograms.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize), serde(transparent))]
pub struct Mass(i64);

impl Mass {
    /// One ounce: 28.349523125 g exactly.
    pub const OUNCE: Self = Self::of(1, MassUnit::Ounce);

    /// From nanograms, as they are held.
    pub const fn from_ng(ng: i64) -> Self {
        Self(ng)
    }

    /// From whole grams.
    pub const fn from_grams(grams: i64) -> Self {
        Self::of(grams, MassUnit::Gram)
    }

    /// From whole ounces.
    pub const fn from_ounces(ounces: i64) -> Self {
        Self::of(ounces, MassUnit::Ounce)
    }

    /// In nanograms, as it is held.
    pub const fn to_ng(self) -> i64 {
        self.0
    }
}

exact!(Mass, MassUnit);

/// A unit that weights are written in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum MassUnit {
    /// Gram: balls.
    Gram,
    /// Kilogram: cones and lots.
    Kilogram,
    /// Ounce avoirdupois, 28.349523125 g: balls.
    Ounce,
    /// Pound avoirdupois, 16 ounces: cones and lots.
    Pound,
}

impl MassUnit {
    /// Every unit of weight, in the order a menu would show them.
    pub const ALL: [Self; 4] = [Self::Gram, Self::Kilogram, Self::Ounce, Self::Pound];

    /// Nanograms in one unit, exact.
    pub const fn base(self) -> i64 {
        match self {
            Self::Gram => 1_000_000_000,
            Self::Kilogram => 1_000_000_000_000,
            Self::Ounce => 28_349_523_125,
            Self::Pound => 453_592_370_000,
        }
    }

    /// How sure that is of what others defined; none for the gram and the kilogram, which are what is counted in.
    pub const fn source(self) -> Option<Source> {
        match self {
            Self::Gram | Self::Kilogram => None,
            Self::Ounce | Self::Pound => Some(Taken::Conversions.quoted()),
        }
    }

    /// The short sign it is printed with; what is printed can be read again.
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Gram => "g",
            Self::Kilogram => "kg",
            Self::Ounce => "oz",
            Self::Pound => "lb",
        }
    }

    /// How finely it is usually shown: grams to 0.1, ounces and pounds to 0.01, kilograms to the gram. Common
    /// practice, no source.
    pub const fn usual_step(self) -> Step {
        match self {
            Self::Gram => Step::Tenth,
            Self::Kilogram => Step::Thousandth,
            Self::Ounce | Self::Pound => Step::Hundredth,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sixteen_ounces_are_a_pound() {
        assert_eq!(Mass::OUNCE.saturating_mul(16), Mass::of(1, MassUnit::Pound));
        assert_eq!(Mass::of(1, MassUnit::Kilogram), Mass::from_grams(1000));
    }

    #[test]
    fn far_too_heavy_stays_at_the_most() {
        assert_eq!(Mass::from_ounces(i64::MAX), Mass::MAX);
        assert_eq!(Mass::of(i64::MIN, MassUnit::Pound), Mass::MIN);
    }
}
