//! Needles: how thick each numbered size is, and how long circular ones are sold.
//!
//! Millimetres are the safe key: no ISO or national standard fixes the numbers, makers differ for one number, and some
//! numbers stand for two needles (US 17 is 12 mm or 12.75 mm). Source of the ends of its ranges: Craft Yarn Council. US
//! 000, 1, 3 and 5 were read in its guide "YDKWYDK: A guide to yarn weights"; for light yarn the guide prints 3-5 once
//! more, a misprint. 7, 9 and 11 are as a copy of the council's table has them. All other numbers are from memory. Each
//! number of each row says how sure it is. What a row has is exact, and never rounded: 2.25 mm is not 2.3.
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

use super::{Certainty, Source, Taken};
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
        let of_table = |number: fn(&Needle) -> (Option<Number>, Source)| {
            let numbered = |needle: &Needle| {
                let (number, source) = number(needle);
                Some(Numbered {
                    number: number?,
                    across: needle.across,
                    certainty: source.certainty(),
                })
            };
            NEEDLES.iter().filter_map(numbered).collect()
        };
        match self {
            Self::Metric => Vec::new(),
            Self::Us => of_table(|needle| (needle.us, needle.us_source)),
            Self::Uk => of_table(|needle| (needle.uk, needle.uk_source)),
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
            certainty: JAPANESE_SOURCE.certainty(),
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
    pub us_source: Source,
    /// Its old UK and Canadian number.
    pub uk: Option<Number>,
    /// How sure the old UK number is.
    pub uk_source: Source,
}

/// The table, thinnest first.
pub const NEEDLES: [Needle; 28] = [
    row(150, us_read(Number::noughts(3)), NO_UK),
    row(175, us(Number::noughts(2)), uk(Number::whole(15))),
    row(200, us(Number::whole(0)), uk(Number::whole(14))),
    row(225, us_read(Number::whole(1)), uk(Number::whole(13))),
    row(250, us(Number::quarters(6)), NO_UK),
    row(275, us(Number::whole(2)), uk(Number::whole(12))),
    row(300, us(Number::quarters(10)), uk(Number::whole(11))),
    row(325, us_read(Number::whole(3)), uk(Number::whole(10))),
    row(350, us(Number::whole(4)), NO_UK),
    row(375, us_read(Number::whole(5)), uk(Number::whole(9))),
    row(400, us(Number::whole(6)), uk(Number::whole(8))),
    row(450, us_quoted(Number::whole(7)), uk(Number::whole(7))),
    row(500, us(Number::whole(8)), uk(Number::whole(6))),
    row(550, us_quoted(Number::whole(9)), uk(Number::whole(5))),
    row(600, us(Number::whole(10)), uk(Number::whole(4))),
    row(650, us(Number::quarters(42)), uk(Number::whole(3))),
    // Seldom printed.
    row(700, us(Number::quarters(43)), uk(Number::whole(2))),
    row(750, NO_US, uk(Number::whole(1))),
    row(800, us_quoted(Number::whole(11)), uk(Number::whole(0))),
    row(900, us(Number::whole(13)), uk(Number::noughts(2))),
    row(1000, us(Number::whole(15)), uk(Number::noughts(3))),
    row(1200, us(Number::whole(17)), NO_UK),
    row(1275, us(Number::whole(17)), NO_UK),
    row(1500, us(Number::whole(19)), NO_UK),
    row(1600, us(Number::whole(19)), NO_UK),
    row(1900, us(Number::whole(35)), NO_UK),
    // Also called 35.
    row(2000, us(Number::whole(36)), NO_UK),
    row(2500, us(Number::whole(50)), NO_UK),
];

/// Japanese numbers. Above them, millimetres ("jumbo").
pub const JAPANESE: Bounds<u32> = Bounds::new(0, 15);

/// How sure the Japanese numbers are.
pub const JAPANESE_SOURCE: Source = Taken::JapaneseNumbers.from_memory();

impl Needle {
    /// How sure it is that it is sold: as sure as the surer of its numbers.
    pub const fn certainty(&self) -> Certainty {
        self.us_source.or_more(self.uk_source)
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
/// table. The nearest hole may be too small: a shaft of 3.6 mm is nearest to 3.5 and passes at 3.75. Common practice,
/// no source. None when it passes none.
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
    pub source: Source,
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

/// A number, if there is one, and how sure that is.
type Known = (Option<Number>, Source);

/// The system has no number for it.
const NO_US: Known = (None, Taken::UsNumbers.from_memory());
const NO_UK: Known = (None, Taken::UkNumbers.from_memory());

const fn us_read(number: Number) -> Known {
    (Some(number), Taken::UsNumbers.read())
}

const fn us_quoted(number: Number) -> Known {
    (Some(number), Taken::UsNumbers.quoted())
}

const fn us(number: Number) -> Known {
    (Some(number), Taken::UsNumbers.from_memory())
}

const fn uk(number: Number) -> Known {
    (Some(number), Taken::UkNumbers.from_memory())
}

const fn row(across: i64, us: Known, uk: Known) -> Needle {
    Needle {
        across: hundredths(across),
        us: us.0,
        us_source: us.1,
        uk: uk.0,
        uk_source: uk.1,
    }
}

const fn circular(cm: i64, inches: u8) -> Circular {
    Circular {
        label: Length::from_mm(10 * cm),
        inches,
        source: Taken::Circulars.from_memory(),
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
