//! The names that units go by, and which one was written.
//!
//! One list, read from top to bottom. Capitals do not matter and a full stop may follow (`in.`, `yds.`). Behind the
//! number there may be a unit and nothing else; anything else is named for what it is, a second number or a word that
//! is no unit.
//!
//! ```
//! use loopwright::bounds::Bounds;
//! use loopwright::units::parse::{Unreadable, Wanted, read};
//! use loopwright::units::{Length, LengthUnit};
//!
//! let any = Wanted { bounds: Bounds::new(Length::MIN, Length::MAX), unit: LengthUnit::Cm };
//! assert_eq!(read("100 Yds.", &any).map(|read| read.value), Ok(Length::of(100, LengthUnit::Yard)));
//! assert_eq!(read("7 thumbs", &any), Err(Unreadable::UnknownUnit));
//! assert_eq!(read("7 in x 9 in", &any), Err(Unreadable::TwoNumbers));
//! ```

use super::parse::Unreadable;
use super::{CountUnit, LengthUnit, MassUnit, Unit, fraction};

/// Every name and the unit it means; small letters, without the full stop.
const NAMES: &[(Unit, &[&str])] = &[
    (
        Unit::Length(LengthUnit::Inch),
        &["in", "\"", "inch", "inches", "ins", "''"],
    ),
    (
        Unit::Length(LengthUnit::Cm),
        &[
            "cm",
            "cms",
            "centimetre",
            "centimetres",
            "centimeter",
            "centimeters",
            "㎝",
        ],
    ),
    (
        Unit::Length(LengthUnit::Mm),
        &[
            "mm",
            "mms",
            "millimetre",
            "millimetres",
            "millimeter",
            "millimeters",
            "㎜",
        ],
    ),
    (
        Unit::Length(LengthUnit::M),
        &["m", "metre", "metres", "meter", "meters", "mtr", "mtrs"],
    ),
    (Unit::Length(LengthUnit::Yard), &["yd", "yds", "yard", "yards"]),
    (
        Unit::Mass(MassUnit::Gram),
        &["g", "gr", "gm", "gms", "gram", "grams", "gramme", "grammes"],
    ),
    (
        Unit::Mass(MassUnit::Kilogram),
        &["kg", "kgs", "kilo", "kilos", "kilogram", "kilograms", "㎏"],
    ),
    (Unit::Mass(MassUnit::Ounce), &["oz", "ozs", "ounce", "ounces"]),
    (Unit::Mass(MassUnit::Pound), &["lb", "lbs", "pound", "pounds"]),
    (Unit::Count(CountUnit::Stitch), &["st", "sts", "stitch", "stitches"]),
    (Unit::Count(CountUnit::Row), &["row", "rows"]),
    (Unit::Count(CountUnit::Round), &["rnd", "rnds", "round", "rounds"]),
    (
        Unit::Count(CountUnit::Ball),
        &["ball", "balls", "skein", "skeins", "hank", "hanks"],
    ),
    (Unit::Count(CountUnit::Time), &["time", "times", "x", "×"]),
];

/// Words and marks that stand between two numbers, as in `7 to 8`.
const BETWEEN: &[&str] = &["to", "or", "and", "x", "×", "&", "+"];

/// The unit in what follows the number, if there is one.
pub(super) fn unit(rest: &[char]) -> Result<Option<Unit>, Unreadable> {
    let rest = fraction::skip(rest, ' ');
    match rest {
        [] => return Ok(None),
        ['-' | '/'] => return Err(Unreadable::Unfinished),
        _ => {}
    }
    // `7-inch`, as an adjective.
    let name = if rest.get(1).is_some_and(|next| next.is_alphabetic()) {
        fraction::skip(rest, '-')
    } else {
        rest
    };
    if let Some(unit) = named(name) {
        return Ok(Some(unit));
    }
    let end = rest
        .iter()
        .position(|&mark| fraction::begins(mark))
        .unwrap_or(rest.len());
    Err(if end < rest.len() && between(&rest[..end]) {
        Unreadable::TwoNumbers
    } else {
        Unreadable::UnknownUnit
    })
}

/// The unit of this name.
pub(super) fn named(name: &[char]) -> Option<Unit> {
    let name = match name {
        [name @ .., '.'] => name,
        name => name,
    };
    let found = NAMES
        .iter()
        .find(|(_, names)| names.iter().any(|known| same(known, name)));
    found.map(|(unit, _)| *unit)
}

/// Whether what stands before a further number leaves it a number of its own: punctuation, units, small words.
fn between(text: &[char]) -> bool {
    let word = |mark: &char| mark.is_alphabetic() || *mark == '×';
    let mut words = text.split(|mark| !word(mark)).filter(|part| !part.is_empty());
    words.all(|part| named(part).is_some() || BETWEEN.iter().any(|known| same(known, part)))
}

/// Whether a name is written here, capitals or not.
fn same(known: &str, written: &[char]) -> bool {
    // Most names differ in their first letter, and every word of a text is looked up.
    let first = written.first().map(char::to_ascii_lowercase);
    known.chars().next() == first && known.chars().eq(written.iter().map(char::to_ascii_lowercase))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(rest: &str) -> Result<Option<Unit>, Unreadable> {
        unit(&rest.chars().collect::<Vec<_>>())
    }

    #[test]
    fn every_name_is_read_in_small_and_capital_letters_and_means_one_unit() {
        let mut seen = Vec::new();
        for (unit, names) in NAMES {
            for name in *names {
                assert!(!seen.contains(name), "{name} is listed twice");
                seen.push(name);
                for written in [
                    name.to_string(),
                    name.to_uppercase(),
                    format!(" {name}"),
                    format!("{name}."),
                ] {
                    assert_eq!(read(&written), Ok(Some(*unit)), "{written}");
                }
            }
        }
    }

    #[test]
    fn what_is_printed_can_be_read() {
        for unit in LengthUnit::ALL {
            assert_eq!(read(unit.symbol()), Ok(Some(unit.into())));
        }
        for unit in MassUnit::ALL {
            assert_eq!(read(unit.symbol()), Ok(Some(unit.into())));
        }
    }

    #[test]
    fn second_numbers_are_told_from_strange_words() {
        for rest in [" 8", "-8", " to 8", " in 3", "x9", " (144, 156)", ", 8", " × 9 cm", "½"] {
            assert_eq!(read(rest), Err(Unreadable::TwoNumbers), "{rest}");
        }
        for rest in ["e5", " thumbs", "%", "'", " m²", " in long", " ft 6", "🧶"] {
            assert_eq!(read(rest), Err(Unreadable::UnknownUnit), "{rest}");
        }
        for rest in ["-", " -", "/"] {
            assert_eq!(read(rest), Err(Unreadable::Unfinished), "{rest}");
        }
        assert_eq!(read("-inch"), Ok(Some(LengthUnit::Inch.into())));
    }
}
