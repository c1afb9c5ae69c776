//! A list of cords as it is typed: `40, 60 and 80 cm`.

use super::CORD;
use crate::units::parse::{Unreadable, Wanted, read};
use crate::units::{Length, LengthUnit, Unit};

/// Reads cords that are parted by spaces, commas, semicolons or lines, since no cord has a part of a unit. A unit that
/// is written counts for what stands before it too; `unit` is meant where there is none. No text makes it panic.
///
/// ```
/// use loopwright::cords::read_list;
/// use loopwright::units::{Length, LengthUnit};
///
/// let inches = [16, 24].map(Length::from_inches);
/// assert_eq!(read_list("16, 24 in", LengthUnit::Cm).unwrap(), inches);
/// assert_eq!(read_list("16 24", LengthUnit::Inch).unwrap(), inches);
/// ```
///
/// # Errors
/// [`Unreadable`] as for a length within [`CORD`], for the last that is none.
pub fn read_list(text: &str, unit: LengthUnit) -> Result<Vec<Length>, Unreadable> {
    let mut words = vec![String::new()];
    for mark in text.chars() {
        match words.last_mut() {
            Some(word) if !matches!(mark, ' ' | ',' | ';' | '\n') => word.push(mark),
            _ => words.push(String::new()),
        }
    }
    let mut wanted = Wanted { bounds: CORD, unit };
    let (mut cords, mut behind) = (Vec::new(), String::new());
    // From the end, where the unit is.
    while let Some(word) = words.pop() {
        if word.bytes().any(|byte| byte.is_ascii_digit()) {
            let cord = read::<Length>(&(word + &behind), &wanted)?;
            if let Some(Unit::Length(written)) = cord.unit {
                wanted.unit = written;
            }
            cords.insert(0, cord.value);
            behind.clear();
        } else if !word.is_empty() && word != "and" {
            behind = word;
        }
    }
    if behind.is_empty() {
        Ok(cords)
    } else {
        Err(Unreadable::NotANumber)
    }
}
