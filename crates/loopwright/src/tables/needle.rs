//! Needles: how thick each numbered size is, and how long circular ones are sold.
//!
//! Millimetres are the safe key: no ISO or national standard fixes the numbers, makers differ for one number, and some
//! numbers stand for two needles (US 17 is 12 mm or 12.75 mm). Source: Craft Yarn Council, Standard Yarn Weight System,
//! for US 000 and 1, 3, 5, 7, 9, 11, which are the ends of its ranges; all other numbers are from memory. Each number of
//! each row says how sure it is. What a row has is exact, and never rounded: 2.25 mm is not 2.3.
//!
//! ```
//! use loopwright::tables::needle::{Number, System, japanese, sold};
//! use loopwright::units::Length;
//!
//! // 4.5 mm is 7 in both the US and the old UK numbers.
//! let row = sold(Length::from_nm(4_500_000)).unwrap();
//! assert_eq!((row.us, row.uk), (Some(Number::whole(7)), Some(Number::whole(7))));
//! assert_eq!(Number::quarters(42).to_string(), "10 1/2");
//! assert_eq!(Number::noughts(3).to_string(), "000");
//! assert_eq!(japanese(5), Some(Length::from_nm(3_600_000)));
//! ```

mod number;
mod written;

pub use number::Number;
pub use written::{Across, Alone, Bare, Written, no_such_needle, read, read_across, read_across_as};

use super::Certainty;
use crate::bounds::Bounds;
use crate::units::Length;

/// A way to name how thick a needle is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum System {
    /// Millimetres across, as sold.
    Metric,
    /// US numbers: the higher, the thicker.
    Us,
    /// Old UK and Canadian numbers: the higher, the thinner.
    Uk,
    /// Japanese numbers: the higher, the thicker.
    Japanese,
}

impl System {
    /// Every system, in the order a page shows them.
    pub const ALL: [Self; 4] = [Self::Metric, Self::Us, Self::Uk, Self::Japanese];

    /// What stands before its numbers, as in `US 7`; none for millimetres, which stand behind.
    pub const fn prefix(self) -> Option<&'static str> {
        match self {
            Self::Metric => None,
            Self::Us => Some("US"),
            Self::Uk => Some("UK"),
            Self::Japanese => Some("JP"),
        }
    }

    /// The needles of this system that have a number, thinnest first.
    pub fn numbered(self) -> Vec<Numbered> {
        let of_table = |number: fn(&Needle) -> (Option<Number>, Certainty)| {
            let numbered = |needle: &Needle| {
                let (number, certainty) = number(needle);
                Some(Numbered {
                    number: number?,
                    across: needle.across,
                    certainty,
                })
            };
            NEEDLES.iter().filter_map(numbered).collect()
        };
        match self {
            Self::Metric => Vec::new(),
            Self::Us => of_table(|needle| (needle.us, needle.us_certainty)),
            Self::Uk => of_table(|needle| (needle.uk, needle.uk_certainty)),
            Self::Japanese => (JAPANESE.least..=JAPANESE.most)
                .filter_map(Numbered::japanese)
                .collect(),
        }
    }
}

/// A number of a system, and the needle it stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Numbered {
    /// The number.
    pub number: Number,
    /// How thick the needle is.
    pub across: Length,
    /// How sure the number is.
    pub certainty: Certainty,
}

impl Numbered {
    fn japanese(number: u32) -> Option<Self> {
        Some(Self {
            number: Number::whole(i16::try_from(number).ok()?),
            across: japanese(number)?,
            certainty: Certainty::FromMemory,
        })
    }
}

/// One needle that is sold.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Needle {
    /// How thick it is.
    pub across: Length,
    /// Its US number.
    pub us: Option<Number>,
    /// How sure the US number is.
    pub us_certainty: Certainty,
    /// Its old UK and Canadian number.
    pub uk: Option<Number>,
    /// How sure the old UK number is.
    pub uk_certainty: Certainty,
}

/// The table, thinnest first.
pub const NEEDLES: [Needle; 28] = [
    row(150, seen(Number::noughts(3)), NONE),
    row(175, remembered(Number::noughts(2)), remembered(Number::whole(15))),
    row(200, remembered(Number::whole(0)), remembered(Number::whole(14))),
    row(225, seen(Number::whole(1)), remembered(Number::whole(13))),
    row(250, remembered(Number::quarters(6)), NONE),
    row(275, remembered(Number::whole(2)), remembered(Number::whole(12))),
    row(300, remembered(Number::quarters(10)), remembered(Number::whole(11))),
    row(325, seen(Number::whole(3)), remembered(Number::whole(10))),
    row(350, remembered(Number::whole(4)), NONE),
    row(375, seen(Number::whole(5)), remembered(Number::whole(9))),
    row(400, remembered(Number::whole(6)), remembered(Number::whole(8))),
    row(450, seen(Number::whole(7)), remembered(Number::whole(7))),
    row(500, remembered(Number::whole(8)), remembered(Number::whole(6))),
    row(550, seen(Number::whole(9)), remembered(Number::whole(5))),
    row(600, remembered(Number::whole(10)), remembered(Number::whole(4))),
    row(650, remembered(Number::quarters(42)), remembered(Number::whole(3))),
    // Seldom printed.
    row(700, remembered(Number::quarters(43)), remembered(Number::whole(2))),
    row(750, NONE, remembered(Number::whole(1))),
    row(800, seen(Number::whole(11)), remembered(Number::whole(0))),
    row(900, remembered(Number::whole(13)), remembered(Number::noughts(2))),
    row(1000, remembered(Number::whole(15)), remembered(Number::noughts(3))),
    row(1200, remembered(Number::whole(17)), NONE),
    row(1275, remembered(Number::whole(17)), NONE),
    row(1500, remembered(Number::whole(19)), NONE),
    row(1600, remembered(Number::whole(19)), NONE),
    row(1900, remembered(Number::whole(35)), NONE),
    // Also called 35.
    row(2000, remembered(Number::whole(36)), NONE),
    row(2500, remembered(Number::whole(50)), NONE),
];

/// Japanese numbers. Above them, millimetres ("jumbo").
pub const JAPANESE: Bounds<u32> = Bounds::new(0, 15);

impl Needle {
    /// How sure it is that it is sold: as sure as the surer of its numbers.
    pub const fn certainty(&self) -> Certainty {
        if matches!(self.us_certainty, Certainty::Seen) || matches!(self.uk_certainty, Certainty::Seen) {
            Certainty::Seen
        } else {
            Certainty::FromMemory
        }
    }
}

/// How thick a Japanese number is: 2.1 mm and 0.3 mm for each number above nought, 0 to 15. From memory;
/// none outside [`JAPANESE`].
pub const fn japanese(number: u32) -> Option<Length> {
    if number > JAPANESE.most {
        return None;
    }
    Some(hundredths(210 + 30 * number as i64))
}

/// The row that is exactly so thick.
pub fn sold(across: Length) -> Option<&'static Needle> {
    NEEDLES.iter().find(|needle| needle.across == across)
}

/// The hole of a needle gauge that names a shaft: the smallest that the shaft passes wholly, one for each row of the
/// table. The nearest hole may be too small: a shaft of 3.6 mm is nearest to 3.5 and passes at 3.75. Common practice, no
/// source. None when it passes none.
pub fn hole(across: Length) -> Option<Length> {
    NEEDLES.iter().map(|needle| needle.across).find(|hole| *hole >= across)
}

/// A length in which circular needles are sold, tip to tip.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Circular {
    /// As labelled in centimetres: what sums are done with.
    pub label: Length,
    /// As labelled in whole inches, which is up to 2.5 % more or less.
    pub inches: u8,
    /// How sure the two are.
    pub certainty: Certainty,
}

/// Circular needles, shortest first. Labels are nominal.
pub const CIRCULARS: [Circular; 11] = [
    circular(23, 9),
    circular(30, 12),
    circular(40, 16),
    circular(50, 20),
    circular(60, 24),
    circular(74, 29),
    circular(80, 32),
    circular(90, 36),
    circular(100, 40),
    circular(120, 47),
    circular(150, 60),
];

/// A number and how sure it is.
struct Known {
    number: Option<Number>,
    certainty: Certainty,
}

/// The system has no number for it.
const NONE: Known = Known {
    number: None,
    certainty: Certainty::FromMemory,
};

const fn seen(number: Number) -> Known {
    Known {
        number: Some(number),
        certainty: Certainty::Seen,
    }
}

const fn remembered(number: Number) -> Known {
    Known {
        number: Some(number),
        certainty: Certainty::FromMemory,
    }
}

const fn row(across: i64, us: Known, uk: Known) -> Needle {
    Needle {
        across: hundredths(across),
        us: us.number,
        us_certainty: us.certainty,
        uk: uk.number,
        uk_certainty: uk.certainty,
    }
}

const fn circular(cm: i64, inches: u8) -> Circular {
    Circular {
        label: Length::from_mm(10 * cm),
        inches,
        certainty: Certainty::FromMemory,
    }
}

/// Hundredths of a millimetre.
const fn hundredths(count: i64) -> Length {
    Length::from_nm(count * 10_000)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::LengthUnit;

    #[test]
    fn thicker_needles_have_higher_us_and_lower_uk_numbers() {
        assert!(NEEDLES.is_sorted_by(|a, b| a.across < b.across));
        let us = NEEDLES.iter().filter_map(|row| row.us).map(Number::in_quarters);
        assert!(us.is_sorted());
        let uk = NEEDLES.iter().filter_map(|row| row.uk).map(Number::in_quarters);
        assert!(uk.rev().is_sorted());
        assert!(CIRCULARS.is_sorted_by(|a, b| a.label < b.label));
    }

    #[test]
    fn labels_in_inches_are_near_the_labels_in_centimetres() {
        for row in CIRCULARS {
            let exact = Length::from_inches(i64::from(row.inches));
            let off = exact.saturating_sub(row.label).in_unit(LengthUnit::Cm).abs();
            assert!(off / row.label.in_unit(LengthUnit::Cm) < 0.025, "{row:?}");
        }
    }

    #[test]
    fn the_hole_is_the_smallest_that_the_shaft_passes() {
        let mm = |hundredths: i64| Length::from_nm(hundredths * 10_000);
        // The obvious hole is the nearest one, 3.5 mm, which stops a shaft of 3.6 mm.
        assert_eq!(hole(mm(360)), Some(mm(375)));
        for row in NEEDLES {
            assert_eq!(hole(row.across), Some(row.across));
        }
        assert_eq!(hole(mm(3_501)), None);
        assert_eq!(japanese(16), None);
    }
}
