//! A needle as people write it, and how thick it is: `US 6`, `6 US`, `us10½`, `UK 8`, `4 mm`, `US 7 (4.5 mm)`.
//!
//! The letters of a system stand before the number or behind it. A size may be named more than once, by several systems
//! or with its millimetres, as patterns print it; all of the names have to be of one needle. A number alone is one of the
//! system that the field is in. Where that is millimetres a number may still be a needle's name, and is asked about:
//! nobody writes millimetres as `10 1/2`, and 10.5 mm is no needle that is sold (common practice, no source). Whoever
//! knows needles by their US numbers is asked about every number that is one ([`Bare`]).
//!
//! ```
//! use loopwright::bounds::Bounds;
//! use loopwright::tables::needle::read_across;
//! use loopwright::units::Length;
//! use loopwright::units::parse::Unreadable;
//!
//! let bounds = Bounds::new(Length::from_nm(500_000), Length::from_mm(50));
//! let across = |text| read_across(text, bounds).map(|read| read.across);
//! for text in ["US 6", "6 US", "us6", "UK 8", "4 mm", "4", "US 6 / 4 mm"] {
//!     assert_eq!(across(text), Ok(Length::from_mm(4)), "{text}");
//! }
//! assert!(matches!(across("10½"), Err(Unreadable::Ambiguous(_))));
//! ```

use super::{Number, Numbered, System, sold};
use crate::bounds::Bounds;
use crate::units::clean::clean;
use crate::units::meant::{Cause, Meant, Readings};
use crate::units::parse::{Unreadable, Wanted, read as read_measure};
use crate::units::{Length, LengthUnit, Measure};

/// The words that name a system beside a number; small letters.
const SYSTEMS: [(System, &[&str]); 3] = [
    (System::Us, &["us", "u.s.", "u.s.a.", "usa", "american"]),
    (System::Uk, &["uk", "u.k.", "old uk", "canadian"]),
    (System::Japanese, &["jp", "japanese"]),
];

/// Words and marks beside a number that say nothing more.
const FILLERS: [&str; 6] = ["size", "no.", "no", "needle", "needles", "#"];

/// Marks between two names of one needle; a slash is one where it is no fraction's.
const BETWEEN: [char; 5] = ['(', ')', ';', '=', '/'];

/// One needle has so many names at most: its millimetres, and a number of each system.
const MOST_NAMES: usize = System::ALL.len();

/// A needle, as it is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Written {
    /// How thick it is, with the unit.
    Metric(Length),
    /// Its number in the system that is named.
    Numbered(System, Number),
    /// A number alone.
    Alone(Alone),
}

/// A number without a unit and without a system.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Alone {
    /// How thick the needle is if it means millimetres.
    pub millimetres: Length,
    /// The number of a needle that it may be; none for a part that no needle has.
    pub number: Option<Number>,
    /// Whether it has a fraction with a stroke.
    pub is_fraction: bool,
}

/// What a number alone may mean where a needle is asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Bare {
    /// Millimetres.
    Millimetres,
    /// Millimetres or a US number: one that is a US number is asked about.
    MillimetresOrUs,
}

/// How thick a needle is, and how that was read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Across {
    /// How thick it is.
    pub across: Length,
    /// The number that it was looked up by, if it was.
    pub named: Option<(System, Numbered)>,
    /// What a number alone may mean as well: the table has no needle of so many millimetres, and one with that number.
    pub also: Option<Meant>,
}

/// Reads a needle as it is written, before anybody knows in which system a number alone is.
///
/// # Errors
/// [`Unreadable`], as for a length; `TwoNumbers` where the names are not of one needle.
pub fn read(text: &str) -> Result<Written, Unreadable> {
    let text: String = clean(text).into_iter().collect::<String>().to_ascii_lowercase();
    let pieces = pieces(&text);
    if pieces.len() > MOST_NAMES {
        return Err(Unreadable::TwoNumbers);
    }
    let names: Result<Vec<Written>, Unreadable> = pieces.into_iter().map(read_name).collect();
    match names?.as_slice() {
        [] => Err(Unreadable::Empty),
        [name] => Ok(*name),
        names => agreed(names),
    }
}

/// Reads how thick a needle is, where a number alone means millimetres.
///
/// # Errors
/// As [`read`]; `Ambiguous` where a number may be another needle's, stands for two needles or for none.
pub fn read_across(text: &str, bounds: Bounds<Length>) -> Result<Across, Unreadable> {
    read_across_as(text, bounds, Bare::Millimetres)
}

/// Reads how thick a needle is, where a number alone means what `bare` says.
///
/// # Errors
/// As [`read_across`].
pub fn read_across_as(text: &str, bounds: Bounds<Length>, bare: Bare) -> Result<Across, Unreadable> {
    let read = match read(text)? {
        Written::Metric(across) => Across {
            across,
            named: None,
            also: None,
        },
        Written::Numbered(system, number) => {
            let numbered = looked_up(system, number)?;
            Across {
                across: numbered.across,
                named: Some((system, numbered)),
                also: None,
            }
        }
        Written::Alone(alone) => Across {
            across: match bare {
                Bare::Millimetres => alone.in_millimetres(bounds)?,
                Bare::MillimetresOrUs => alone.unless_us(bounds)?,
            },
            named: None,
            also: alone.also(),
        },
    };
    let Bounds { least, most } = bounds;
    match read.across {
        across if across < least => Err(Unreadable::TooSmall { least: least.amount() }),
        across if across > most => Err(Unreadable::TooLarge { most: most.amount() }),
        _ => Ok(read),
    }
}

impl Alone {
    /// The thickness, where millimetres are meant and nothing else can be.
    ///
    /// # Errors
    /// `Ambiguous` where it may be a needle's name as well.
    pub fn in_millimetres(self, bounds: Bounds<Length>) -> Result<Length, Unreadable> {
        let Some(number) = self.number else {
            return Ok(self.millimetres);
        };
        let is_part = number.whole_number().is_none();
        let is_no_thickness = self.millimetres <= Length::ZERO;
        let is_sold = sold(self.millimetres).is_some() && !self.is_fraction;
        if !is_no_thickness && (!is_part || is_sold) {
            return Ok(self.millimetres);
        }
        let named: Vec<Meant> = [System::Us, System::Uk]
            .into_iter()
            .flat_map(|system| meant(system, number))
            .collect();
        if named.is_empty() {
            return Ok(self.millimetres);
        }
        let metric = bounds
            .allow(self.millimetres)
            .then(|| Meant::millimetres(self.millimetres));
        let readings = Readings::of(Cause::NeedleSystem, metric.into_iter().chain(named));
        readings.map_or(Ok(self.millimetres), |readings| Err(Unreadable::Ambiguous(readings)))
    }

    /// The thickness, where the number is no US needle's.
    ///
    /// # Errors
    /// `Ambiguous` where it is one, or as [`Alone::in_millimetres`].
    fn unless_us(self, bounds: Bounds<Length>) -> Result<Length, Unreadable> {
        let named = self.number.map_or_else(Vec::new, |number| meant(System::Us, number));
        let (cause, needles) = match named.as_slice() {
            [] => return self.in_millimetres(bounds),
            [_] => (Cause::NeedleSystem, named),
            // The number would have to be asked about again.
            several => (Cause::TwoNeedles, several.iter().copied().map(in_millimetres).collect()),
        };
        let metric = bounds
            .allow(self.millimetres)
            .then(|| Meant::millimetres(self.millimetres));
        let readings = Readings::of(cause, needles.into_iter().chain(metric));
        readings.map_or(Ok(self.millimetres), |readings| Err(Unreadable::Ambiguous(readings)))
    }

    /// The needle with this number, where the table has none of so many millimetres.
    fn also(self) -> Option<Meant> {
        if sold(self.millimetres).is_some() {
            return None;
        }
        match meant(System::Us, self.number?).as_slice() {
            [only] => Some(*only),
            _ => None,
        }
    }
}

/// What to ask about a number that no needle of the system has: its neighbours. None where there is such a needle.
pub fn no_such_needle(system: System, number: Number) -> Option<Readings> {
    let rows = system.numbered();
    if rows.iter().any(|row| row.number == number) {
        return None;
    }
    Readings::of(Cause::NoSuchNeedle, neighbours(system, number, &rows))
}

/// The one needle of a number.
fn looked_up(system: System, number: Number) -> Result<Numbered, Unreadable> {
    let rows = system.numbered().into_iter();
    let found: Vec<Numbered> = rows.filter(|row| row.number == number).collect();
    let readings = match found.as_slice() {
        [only] => return Ok(*only),
        [] => no_such_needle(system, number),
        several => {
            let ways = several.iter().map(|row| Meant::millimetres(row.across));
            Readings::of(Cause::TwoNeedles, ways)
        }
    };
    Err(readings.map_or(Unreadable::NotANumber, Unreadable::Ambiguous))
}

/// The needles of the next smaller and the next larger number.
fn neighbours(system: System, wanted: Number, rows: &[Numbered]) -> Vec<Meant> {
    let quarters = |row: &&Numbered| row.number.in_quarters();
    let below = rows
        .iter()
        .filter(|row| quarters(row) < wanted.in_quarters())
        .max_by_key(quarters);
    let above = rows
        .iter()
        .filter(|row| quarters(row) > wanted.in_quarters())
        .min_by_key(quarters);
    below.into_iter().chain(above).map(|row| named(system, row)).collect()
}

/// The needles that a number of a system may mean.
fn meant(system: System, number: Number) -> Vec<Meant> {
    let rows = system.numbered();
    rows.iter()
        .filter(|row| row.number == number)
        .map(|row| named(system, row))
        .collect()
}

/// A needle as its thickness.
const fn in_millimetres(meant: Meant) -> Meant {
    match meant {
        Meant::Needle { across, .. } => Meant::millimetres(across),
        Meant::Count(_) | Meant::Length { .. } | Meant::Mass { .. } => meant,
    }
}

const fn named(system: System, row: &Numbered) -> Meant {
    Meant::Needle {
        system,
        number: row.number,
        across: row.across,
    }
}

/// One needle by several names, if it is one: its thickness where that is among them, else the first number.
fn agreed(names: &[Written]) -> Result<Written, Unreadable> {
    let metric = names.iter().find(|name| matches!(name, Written::Metric(_)));
    let chosen = *metric
        .or_else(|| names.iter().find(|name| matches!(name, Written::Numbered(..))))
        .unwrap_or(&names[0]);
    let may_be = needles_of(chosen);
    let agrees = |name: &Written| needles_of(*name).iter().any(|across| may_be.contains(across));
    if names.iter().all(agrees) {
        Ok(chosen)
    } else {
        Err(Unreadable::TwoNumbers)
    }
}

/// How thick a needle of this name may be.
fn needles_of(name: Written) -> Vec<Length> {
    let numbered = |system: System, number: Number| {
        let rows = system.numbered().into_iter().filter(move |row| row.number == number);
        rows.map(|row| row.across)
    };
    match name {
        Written::Metric(across) => vec![across],
        Written::Numbered(system, number) => numbered(system, number).collect(),
        // Beside another name a number alone is the one of some system.
        Written::Alone(Alone {
            number: Some(number), ..
        }) => System::ALL
            .into_iter()
            .flat_map(|system| numbered(system, number))
            .collect(),
        Written::Alone(Alone { number: None, .. }) => Vec::new(),
    }
}

/// One name: a number, with a system or a unit beside it or neither.
fn read_name(piece: &str) -> Result<Written, Unreadable> {
    let (system, rest) = system_of(piece);
    if rest.is_empty() {
        return Err(if system.is_some() {
            Unreadable::Unfinished
        } else {
            Unreadable::Empty
        });
    }
    // A number is read as if it were millimetres, so that all that is read there is read here.
    let typed = read_measure::<Length>(&rest, &Wanted::any(LengthUnit::Mm))?;
    let number = number_of(&rest, typed.value);
    match (system, typed.unit) {
        (None, Some(_)) => Ok(Written::Metric(typed.value)),
        (Some(_), Some(_)) => Err(Unreadable::TwoNumbers),
        (Some(system), None) => number
            .map(|number| Written::Numbered(system, number))
            .ok_or(Unreadable::NotANumber),
        (None, None) => Ok(Written::Alone(Alone {
            millimetres: typed.value,
            number,
            is_fraction: rest.contains('/') || !rest.is_ascii(),
        })),
    }
}

/// The number of a needle: in quarters, or so many noughts.
fn number_of(text: &str, value: Length) -> Option<Number> {
    if text.len() > 1 && text.bytes().all(|byte| byte == b'0') {
        return i16::try_from(text.len()).ok().map(Number::noughts);
    }
    let quarter = LengthUnit::Mm.base() / 4;
    let quarters = i16::try_from(value.to_nm() / quarter).ok()?;
    (quarters >= 0 && value.to_nm() % quarter == 0).then_some(Number::quarters(quarters))
}

/// The system that is named before or behind the number, and the text without its name.
fn system_of(piece: &str) -> (Option<System>, String) {
    let rest = FILLERS
        .iter()
        .fold(piece.trim(), |rest, filler| without(rest, filler).unwrap_or(rest));
    for (system, names) in SYSTEMS {
        // Of two names that begin alike the longer one is written.
        let stripped = names.iter().filter_map(|name| without(rest, name));
        if let Some(stripped) = stripped.min_by_key(|stripped| stripped.len()) {
            let rest = FILLERS
                .iter()
                .fold(stripped, |rest, filler| without(rest, filler).unwrap_or(rest));
            return (Some(system), rest.to_owned());
        }
    }
    (None, rest.to_owned())
}

/// The text without a word before or behind it, if it stands there and is no piece of a longer word.
fn without<'a>(text: &'a str, word: &str) -> Option<&'a str> {
    let before = text
        .strip_prefix(word)
        .filter(|rest| !rest.starts_with(char::is_alphabetic));
    let behind = || {
        text.strip_suffix(word)
            .filter(|rest| !rest.ends_with(char::is_alphabetic))
    };
    before.or_else(behind).map(str::trim)
}

/// The names of one needle, parted by brackets and by slashes that are no fraction's.
fn pieces(text: &str) -> Vec<&str> {
    let mut from = 0;
    let mut pieces = Vec::new();
    for (place, mark) in text.char_indices() {
        if BETWEEN.contains(&mark) && !(mark == '/' && is_stroke(&text[..place], &text[place + 1..])) {
            pieces.push(&text[from..place]);
            from = place + mark.len_utf8();
        }
    }
    pieces.push(&text[from..]);
    pieces.retain(|piece| !piece.trim().is_empty());
    pieces
}

/// Whether a slash is the stroke of a fraction: less than one, and no decimals below it, as in `10 1/2`. In `US 8/5 mm`
/// and `US 7/4.5 mm` it is none.
fn is_stroke(before: &str, behind: &str) -> bool {
    let is_digit = |mark: char| mark.is_ascii_digit();
    let (before, behind) = (before.trim_end(), behind.trim_start());
    let top = &before[before.trim_end_matches(is_digit).len()..];
    let rest = behind.trim_start_matches(is_digit);
    let bottom = &behind[..behind.len() - rest.len()];
    let is_less = (top.len(), top) < (bottom.len(), bottom);
    // Nothing is there yet: the next key may be the bottom.
    bottom.is_empty() && rest.is_empty() && !top.is_empty()
        || is_less && !top.is_empty() && !rest.starts_with(['.', ','])
}

#[cfg(test)]
mod tests;
