//! How many: stitches, rows, balls, times.
//!
//! A stitch is whole, so `1,000`, `1.000` and `1 000` are all a thousand; `88 112` may be two counts, and is asked about.
//! Half a stitch is answered with the counts on either side. A word behind the number (`132 sts`) is read and kept,
//! whichever it is.
//!
//! ```
//! use loopwright::bounds::Bounds;
//! use loopwright::units::CountUnit;
//! use loopwright::units::count::read;
//! use loopwright::units::parse::{Read, Unreadable};
//!
//! let stitches = Bounds::new(1, 100_000);
//! assert_eq!(read("132", stitches), Ok(Read { value: 132, unit: None }));
//! assert_eq!(read("1,000 sts", stitches), Ok(Read { value: 1000, unit: Some(CountUnit::Stitch.into()) }));
//! assert_eq!(read("7 1/2", stitches), Err(Unreadable::NotWhole { below: 7, above: 8 }));
//! ```

use super::meant::{Cause, Meant, Readings};
use super::number::Number;
use super::parse::{Read, Unreadable, pieces};
use super::{Amount, Dimension, Unit};
use crate::bounds::Bounds;

/// A thing that is counted, by the word behind the number.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum CountUnit {
    /// `st`, `sts`, `stitches`.
    Stitch,
    /// `row`, `rows`.
    Row,
    /// `rnd`, `rnds`, `rounds`.
    Round,
    /// `ball`, `skein`, `hank`.
    Ball,
    /// `time`, `times`, `x`.
    Time,
}

impl From<CountUnit> for Unit {
    fn from(unit: CountUnit) -> Self {
        Self::Count(unit)
    }
}

/// Reads a count as people write it. No text makes it panic.
///
/// A fraction with a slash is never taken for a count, not even `4/2`: it is more likely two counts. Decimals are
/// taken when they are all noughts (`132.0`).
pub fn read(text: &str, bounds: Bounds<u32>) -> Result<Read<u32>, Unreadable> {
    let (number, unit) = pieces(text)?;
    if let Some(written) = unit.filter(|unit| unit.dimension() != Dimension::Count) {
        return Err(Unreadable::WrongKind {
            written,
            wanted: Dimension::Count,
        });
    }
    if number.parted.is_some() {
        return Err(readings(&number, bounds).map_or(Unreadable::TwoNumbers, Unreadable::Ambiguous));
    }
    let Bounds { least, most } = bounds;
    let (below, above) = number.thousands.unwrap_or(number.value).around();
    if above < i128::from(least) {
        return Err(Unreadable::TooSmall {
            least: Amount::Count(least),
        });
    }
    if below > i128::from(most) {
        return Err(Unreadable::TooLarge {
            most: Amount::Count(most),
        });
    }
    // Written as a maximum and a minimum, and not as `clamp`, which panics on bounds that are the wrong way round.
    let accepted = |count: i128| u32::try_from(count.max(0)).unwrap_or(u32::MAX).max(least).min(most);
    if below != above || number.fraction {
        return Err(Unreadable::NotWhole {
            below: accepted(below),
            above: accepted(above),
        });
    }
    Ok(Read {
        value: accepted(below),
        unit,
    })
}

/// What two counts with a space between may mean, of what is accepted: one of them, or both as thousands.
fn readings(number: &Number, bounds: Bounds<u32>) -> Option<Readings> {
    let both = number.parted.into_iter().flatten();
    let counts = both.chain([number.value]).map(|ratio| ratio.around().0);
    let accepted = counts.filter_map(|count| u32::try_from(count).ok().filter(|count| bounds.allow(*count)));
    Readings::of(Cause::Space, accepted.map(Meant::Count))
}

/// Reads a count, and another behind a plus if there is one, as a pattern writes its multiple: `8 + 3`. No text
/// makes it panic.
///
/// ```
/// use loopwright::bounds::Bounds;
/// use loopwright::units::count::read_plus;
///
/// let any = Bounds::new(0, 1_000);
/// assert_eq!(read_plus("8+3", any, any), Ok((8, Some(3))));
/// assert_eq!(read_plus("8", any, any), Ok((8, None)));
/// ```
pub fn read_plus(text: &str, first: Bounds<u32>, other: Bounds<u32>) -> Result<(u32, Option<u32>), Unreadable> {
    // A plus in front is the sign of the one number.
    let parts = text.split_once('+').filter(|parts| !parts.0.trim().is_empty());
    let Some((before, behind)) = parts else {
        return read(text, first).map(|read| (read.value, None));
    };
    let first = read(before, first)?.value;
    if behind.trim().is_empty() {
        return Err(Unreadable::Unfinished);
    }
    Ok((first, Some(read(behind, other)?.value)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::MassUnit;
    use proptest::prelude::*;

    const STITCHES: Bounds<u32> = Bounds::new(1, 100_000);

    fn value(text: &str) -> Result<u32, Unreadable> {
        read(text, STITCHES).map(|read| read.value)
    }

    #[test]
    fn a_thousand_in_every_way_of_writing() {
        for text in [
            "1000",
            "1,000",
            "1.000",
            "1 000",
            "1\u{202f}000",
            "1'000",
            "1’000 sts",
            "１０００",
            "1000.0",
            "+1000",
        ] {
            assert_eq!(value(text), Ok(1000), "{text}");
        }
        assert_eq!(value("100,000"), Ok(100_000));
        assert_eq!(value("12.345"), Ok(12_345));
    }

    #[test]
    fn half_a_stitch_is_answered_with_its_neighbours() {
        for text in ["7.5", "7,5", "7½", "7 1/2 sts", "7.0001", "7,25"] {
            assert_eq!(value(text), Err(Unreadable::NotWhole { below: 7, above: 8 }), "{text}");
        }
        assert_eq!(value("4/2"), Err(Unreadable::NotWhole { below: 2, above: 2 }));
        assert_eq!(value("1/2"), Err(Unreadable::NotWhole { below: 1, above: 1 }));
        assert_eq!(
            value("100 000,5"),
            Err(Unreadable::NotWhole {
                below: 100_000,
                above: 100_000
            })
        );
    }

    #[test]
    fn limits_and_units_are_named() {
        assert_eq!(
            value("0"),
            Err(Unreadable::TooSmall {
                least: Amount::Count(1)
            })
        );
        assert_eq!(
            value("-4"),
            Err(Unreadable::TooSmall {
                least: Amount::Count(1)
            })
        );
        assert_eq!(
            value("100 001"),
            Err(Unreadable::TooLarge {
                most: Amount::Count(100_000)
            })
        );
        assert_eq!(
            value(&"9".repeat(500)),
            Err(Unreadable::TooLarge {
                most: Amount::Count(100_000)
            })
        );
        let written = Unit::Mass(MassUnit::Gram);
        assert_eq!(
            value("12 g"),
            Err(Unreadable::WrongKind {
                written,
                wanted: Dimension::Count
            })
        );
        assert_eq!(value("132 (144, 156)"), Err(Unreadable::TwoNumbers));
        assert_eq!(value("12-14"), Err(Unreadable::TwoNumbers));
        assert_eq!(value("K7"), Err(Unreadable::NotANumber));
        assert_eq!(
            read("3 rows", STITCHES).map(|read| read.unit),
            Ok(Some(CountUnit::Row.into()))
        );
    }

    #[test]
    fn a_multiple_is_read_with_its_plus() {
        let plus = |text| read_plus(text, STITCHES, Bounds::new(0, 1_000));
        for text in ["8+3", " 8 + 3 ", "8 sts + 3 sts", "8 +3"] {
            assert_eq!(plus(text), Ok((8, Some(3))), "{text}");
        }
        assert_eq!((plus("8"), plus("+8")), (Ok((8, None)), Ok((8, None))));
        assert_eq!(plus("8 + 0"), Ok((8, Some(0))));
        assert_eq!(plus("8 + "), Err(Unreadable::Unfinished));
        assert_eq!(
            (plus(""), plus("8 3")),
            (Err(Unreadable::Empty), Err(Unreadable::TwoNumbers))
        );
        assert!(plus("8+3+1").is_err() && plus("0+3").is_err() && plus("8+1001").is_err() && plus("8 + x").is_err());
    }

    #[test]
    fn bounds_the_wrong_way_round_do_no_harm() {
        for text in ["1", "5", "9", "5.5"] {
            assert!(read(text, Bounds::new(9, 1)).is_err(), "{text}");
        }
    }

    proptest! {
        #[test]
        fn no_multiple_makes_it_panic(text in "[-0-9+st ./½]{0,12}", any: String) {
            for text in [text, any] {
                let _ = read_plus(&text, STITCHES, STITCHES);
            }
        }

        #[test]
        fn every_count_reads_as_itself(count: u32) {
            prop_assert_eq!(read(&count.to_string(), Bounds::new(0, u32::MAX)).map(|read| read.value), Ok(count));
        }
    }
}
