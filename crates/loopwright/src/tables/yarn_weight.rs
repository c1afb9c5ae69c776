//! Yarn weights: the eight classes printed on ball bands, with the gauge, the needle and the wraps an inch of each.
//!
//! Source of names, stitches and needles: Craft Yarn Council, which calls them guidelines only. Classes 0 to 3 were
//! read in its guide "YDKWYDK: A guide to yarn weights", 4 and 5 are as a copy of its Standard Yarn Weight System has
//! them, 6 and 7 from memory. Wraps an inch are from memory and have no source: the copies have no column for them, and
//! those who add one add other numbers. The ranges are kept as printed, and so they overlap and leave gaps: 23 and 24
//! stitches in 4 in belong to two classes, and 20 1/2 to none ([`place`]). How thick a yarn is follows from wraps an
//! inch:
//! `25.4 mm / wraps`.
//!
//! ```
//! use loopwright::tables::yarn_weight::{Place, Weight, class, place};
//! use loopwright::units::{Gauge, Length};
//!
//! let medium = class(Weight::Medium);
//! assert_eq!((medium.number, medium.wraps.least, medium.wraps.most), (4, Some(9), Some(12)));
//! // The thick end of the class, 25.4 mm / 9: what a tail must not be shorter for.
//! assert_eq!(medium.default_diameter(), Length::from_nm(2_822_223));
//! let both = Place::Within { thicker: Weight::Light, thinner: Weight::Fine };
//! assert_eq!(place(Gauge::of(23, Gauge::FOUR_INCHES)), both);
//! ```

use super::{Source, Taken};
use crate::units::{Gauge, Length};

/// The name of a class, thinnest first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Weight {
    /// 0: lace.
    Lace,
    /// 1: super fine, such as sock yarn.
    SuperFine,
    /// 2: fine, such as sport.
    Fine,
    /// 3: light, such as double knitting.
    Light,
    /// 4: medium, such as worsted.
    Medium,
    /// 5: bulky, or chunky.
    Bulky,
    /// 6: super bulky, or super chunky.
    SuperBulky,
    /// 7: jumbo.
    Jumbo,
}

// The old keys of two words were kept and linked once.
crate::keys!(Weight {
    Lace = "lace",
    SuperFine = "super-fine" | "super fine",
    Fine = "fine",
    Light = "light",
    Medium = "medium",
    Bulky = "bulky",
    SuperBulky = "super-bulky" | "super bulky",
    Jumbo = "jumbo",
});

/// A printed range. An end that is missing is open: `6 and fewer`, `12.75 mm and up`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Range<T> {
    /// The least that belongs, itself included.
    pub least: Option<T>,
    /// The most that belongs, itself included.
    pub most: Option<T>,
}

impl<T> Range<T> {
    const fn between(least: T, most: T) -> Self
    where
        T: Copy,
    {
        Self {
            least: Some(least),
            most: Some(most),
        }
    }
}

/// One row of the table.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Class {
    /// The number in the skein on the band, 0 to 7.
    pub number: u8,
    /// Its name.
    pub weight: Weight,
    /// Stockinette stitches in 4 in.
    pub stitches: Range<u32>,
    /// The needle, across.
    pub needle: Range<Length>,
    /// Wraps in an inch.
    pub wraps: Range<u32>,
    /// How sure stitches, needle and name are.
    pub source: Source,
    /// How sure the wraps are.
    pub wraps_source: Source,
}

impl Class {
    /// How thick such a yarn is taken to be when nobody has wrapped it: the thick end of the class, `25.4 mm / wraps`
    /// with the fewest wraps, rounded up to the nanometre. A tail too long is cut off; one too short is begun again.
    pub const fn default_diameter(&self) -> Length {
        match self.wraps.least {
            Some(wraps) => diameter(wraps),
            None => Length::INCH,
        }
    }
}

/// How thick a yarn is that lies `wraps` times in an inch: `25.4 mm / wraps`, rounded up to the nanometre. No wraps are
/// taken as one.
pub const fn diameter(wraps: u32) -> Length {
    let wraps = if wraps == 0 { 1 } else { wraps as i64 };
    Length::from_nm((Length::INCH.to_nm() + wraps - 1) / wraps)
}

/// The table, thinnest first.
pub const CLASSES: [Class; 8] = [LACE, SUPER_FINE, FINE, LIGHT, MEDIUM, BULKY, SUPER_BULKY, JUMBO];

const READ: Source = Taken::YarnClasses.read();
const QUOTED: Source = Taken::YarnClasses.quoted();
const REMEMBERED: Source = Taken::YarnClasses.from_memory();

const LACE: Class = row(READ, 0, Weight::Lace, (33, 40), (150, 225), (Some(30), None));
const SUPER_FINE: Class = row(READ, 1, Weight::SuperFine, (27, 32), (225, 325), (Some(14), Some(30)));
const FINE: Class = row(READ, 2, Weight::Fine, (23, 26), (325, 375), (Some(12), Some(18)));
const LIGHT: Class = row(READ, 3, Weight::Light, (21, 24), (375, 450), (Some(11), Some(15)));
const MEDIUM: Class = row(QUOTED, 4, Weight::Medium, (16, 20), (450, 550), (Some(9), Some(12)));
const BULKY: Class = row(QUOTED, 5, Weight::Bulky, (12, 15), (550, 800), (Some(6), Some(9)));
/// An older printing has 6 to 11 stitches.
const SUPER_BULKY: Class = row(
    REMEMBERED,
    6,
    Weight::SuperBulky,
    (7, 11),
    (800, 1275),
    (Some(5), Some(6)),
);
/// `6 and fewer` stitches, `12.75 mm and up`.
const JUMBO: Class = Class {
    stitches: Range {
        least: None,
        most: Some(6),
    },
    needle: Range {
        least: Some(hundredths(1275)),
        most: None,
    },
    ..row(REMEMBERED, 7, Weight::Jumbo, (1, 6), (1275, 1275), (Some(1), Some(4)))
};

/// The row of a class.
pub const fn class(weight: Weight) -> &'static Class {
    match weight {
        Weight::Lace => &LACE,
        Weight::SuperFine => &SUPER_FINE,
        Weight::Fine => &FINE,
        Weight::Light => &LIGHT,
        Weight::Medium => &MEDIUM,
        Weight::Bulky => &BULKY,
        Weight::SuperBulky => &SUPER_BULKY,
        Weight::Jumbo => &JUMBO,
    }
}

/// Where a gauge stands among the printed ranges.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Place {
    /// In one class, or in two that overlap; both are the same where it is one.
    Within {
        /// The thicker of the two.
        thicker: Weight,
        /// The thinner of the two.
        thinner: Weight,
    },
    /// In the gap between two classes.
    Between {
        /// The class of fewer stitches.
        thicker: Weight,
        /// The class of more stitches.
        thinner: Weight,
    },
    /// Finer than the finest class.
    Finer,
}

impl Place {
    /// The class to start from; where two offer themselves, the thicker. None when it is finer than all.
    pub const fn thicker(self) -> Option<Weight> {
        match self {
            Self::Within { thicker, .. } | Self::Between { thicker, .. } => Some(thicker),
            Self::Finer => None,
        }
    }
}

/// The class or classes of a stockinette gauge. The table counts over 4 in, so a gauge over 10 cm is brought to 4 in
/// first: 20 stitches in 10 cm are 20.32 in 4 in, which is between two classes.
pub fn place(gauge: Gauge) -> Place {
    let stitches = gauge.count_over(Gauge::FOUR_INCHES);
    let at_least = |class: &&Class| class.stitches.least.is_none_or(|least| stitches >= f64::from(least));
    let at_most = |class: &&Class| class.stitches.most.is_none_or(|most| stitches <= f64::from(most));
    // Thinnest first, so the first that reaches down to the gauge is the thinnest that can hold it, and the last that
    // reaches up to it the thickest.
    let thinner = CLASSES.iter().find(at_least).map(|class| class.weight);
    let thicker = CLASSES.iter().rfind(at_most).map(|class| class.weight);
    match (thinner, thicker) {
        (Some(thinner), Some(thicker)) if thinner <= thicker => Place::Within { thicker, thinner },
        // In a gap the first that reaches down is the thicker side, and the last that reaches up the thinner.
        (Some(thicker), Some(thinner)) => Place::Between { thicker, thinner },
        (_, None) | (None, _) => Place::Finer,
    }
}

const fn row(
    source: Source,
    number: u8,
    weight: Weight,
    stitches: (u32, u32),
    needle: (i64, i64),
    wraps: (Option<u32>, Option<u32>),
) -> Class {
    Class {
        number,
        weight,
        stitches: Range::between(stitches.0, stitches.1),
        needle: Range::between(hundredths(needle.0), hundredths(needle.1)),
        wraps: Range {
            least: wraps.0,
            most: wraps.1,
        },
        source,
        wraps_source: Taken::Wraps.from_memory(),
    }
}

/// Hundredths of a millimetre.
const fn hundredths(count: i64) -> Length {
    Length::from_nm(count * 10_000)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::choice::Key;
    use proptest::prelude::*;

    fn four_inches(thousandths: u32) -> Place {
        place(Gauge::new(thousandths, Gauge::FOUR_INCHES).unwrap())
    }

    #[test]
    fn rows_stand_where_their_names_say() {
        for (index, row) in CLASSES.iter().enumerate() {
            assert_eq!(usize::from(row.number), index);
            assert_eq!(class(row.weight), row);
        }
        assert!(CLASSES.is_sorted_by_key(|row| row.weight));
    }

    #[test]
    fn what_was_kept_as_two_words_is_still_read() {
        for (old, weight) in [("super fine", Weight::SuperFine), ("super bulky", Weight::SuperBulky)] {
            assert_eq!(Weight::from_key(old), Some(weight));
            assert_eq!(weight.key(), old.replace(' ', "-"));
        }
    }

    #[test]
    fn overlaps_give_both_and_gaps_give_the_neighbours() {
        let (thicker, thinner) = (Weight::Light, Weight::Fine);
        assert_eq!(four_inches(23_000), Place::Within { thicker, thinner });
        assert_eq!(four_inches(24_000), Place::Within { thicker, thinner });
        let (thicker, thinner) = (Weight::Medium, Weight::Light);
        assert_eq!(four_inches(20_500), Place::Between { thicker, thinner });
        assert_eq!(place(Gauge::of(20, Gauge::TEN_CM)), Place::Between { thicker, thinner });
        assert_eq!(four_inches(40_001), Place::Finer);
        let jumbo = Weight::Jumbo;
        assert_eq!(
            four_inches(1),
            Place::Within {
                thicker: jumbo,
                thinner: jumbo
            }
        );
    }

    #[test]
    fn thicker_classes_have_thicker_yarn() {
        for pair in CLASSES.windows(2) {
            assert!(pair[0].default_diameter() < pair[1].default_diameter());
        }
        assert_eq!(diameter(0), Length::INCH);
    }

    proptest! {
        #[test]
        fn a_class_holds_the_gauge_it_is_given(thousandths in 1..60_000_u32) {
            let stitches = f64::from(thousandths) / 1_000.0;
            let holds = |weight: Weight| {
                let range = class(weight).stitches;
                range.least.is_none_or(|l| f64::from(l) <= stitches) && range.most.is_none_or(|m| stitches <= f64::from(m))
            };
            match four_inches(thousandths) {
                Place::Within { thicker, thinner } => prop_assert!(holds(thicker) && holds(thinner)),
                Place::Between { thicker, thinner } => {
                    prop_assert_eq!(class(thicker).number, class(thinner).number + 1);
                    prop_assert!(!CLASSES.iter().any(|class| holds(class.weight)));
                }
                Place::Finer => prop_assert!(stitches > 40.0),
            }
        }
    }
}
