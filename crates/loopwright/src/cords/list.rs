//! A list of cords as it is typed: `40, 60 and 80 cm`.

use super::CORD;
use crate::units::parse::{Unreadable, Wanted, read as read_length};
use crate::units::printed::{Entry, Figure, Figures, Unread, WhyUnread, read};
use crate::units::{Dimension, Length, LengthUnit, Unit};

/// Reads cords in any way that lists are printed. A unit that is written counts for what stands before it too; `unit` is
/// meant where there is none. A comma parts two numbers that are both as long as cords are. No text makes it panic.
///
/// ```
/// use loopwright::cords::read_list;
/// use loopwright::units::{Length, LengthUnit};
///
/// let inches = [16, 24].map(Length::from_inches);
/// assert_eq!(read_list("16, 24 in", LengthUnit::Cm).unwrap(), inches);
/// assert_eq!(read_list("16 24", LengthUnit::Inch).unwrap(), inches);
/// let text = "40, 60 or 80";
/// assert_eq!(read_list(text, LengthUnit::Cm).unwrap_err().piece(text), "or");
/// ```
///
/// # Errors
/// The first piece that is no cord within [`CORD`], or has no place in a list of them.
pub fn read_list(text: &str, unit: LengthUnit) -> Result<Vec<Length>, Unread> {
    let reading = read(text);
    if let Some(place) = reading.unplaced.first() {
        return Err(Unread::at(place, WhyUnread::Misplaced));
    }
    let numbers = reading.entries.iter().filter_map(|entry| number(entry).transpose());
    let numbers: Vec<&Figure> = numbers.collect::<Result<_, _>>()?;
    let mut cords = Vec::new();
    for (number, unit) in numbers.iter().zip(units(&numbers, unit)) {
        cords.extend(measured(text, number, unit)?);
    }
    Ok(cords)
}

/// The one number of an entry, which nothing else may stand beside.
fn number(entry: &Entry) -> Result<Option<&Figure>, Unread> {
    let mut words = [&entry.head, &entry.before, &entry.after].into_iter().flatten();
    match (&entry.figures, words.next()) {
        (Some(_), Some(word)) => Err(Unread::at(word, WhyUnread::Misplaced)),
        (None, Some(word)) => Err(Unread::at(word, WhyUnread::Number(Unreadable::NotANumber))),
        (None, None) => Ok(None),
        (Some(Figures::One(figure)), None) => Ok(Some(figure)),
        (Some(figures), None) => {
            let why = match figures {
                Figures::Range(..) => WhyUnread::Number(Unreadable::TwoNumbers),
                Figures::Open(..) => WhyUnread::Number(Unreadable::Unfinished),
                Figures::Nothing(_) | Figures::One(_) => WhyUnread::Misplaced,
            };
            Err(Unread::at(&figures.range(), why))
        }
    }
}

/// The unit of each number: its own, or the next that is written.
fn units(numbers: &[&Figure], unit: LengthUnit) -> Vec<Unit> {
    let mut written = Unit::Length(unit);
    let from_the_end = numbers.iter().rev().map(|number| {
        written = number.unit.unwrap_or(written);
        written
    });
    let mut units: Vec<Unit> = from_the_end.collect();
    units.reverse();
    units
}

/// The cord of a number as it is printed; of `40,60` two.
fn measured(text: &str, number: &Figure, unit: Unit) -> Result<Vec<Length>, Unread> {
    let printed = text.get(number.range.clone()).unwrap_or_default();
    let one = |printed: &str| match unit {
        Unit::Length(unit) => read_length(printed, &Wanted { bounds: CORD, unit }).map(|read| read.value),
        written @ (Unit::Mass(_) | Unit::Count(_)) => {
            let wanted = Dimension::Length;
            Err(Unreadable::WrongKind { written, wanted })
        }
    };
    let parted: Result<Vec<Length>, Unreadable> = printed.split(',').map(one).collect();
    let cords = parted.or_else(|_| one(printed).map(|cord| vec![cord]));
    cords.map_err(|why| Unread::at(&number.range, WhyUnread::Number(why)))
}
