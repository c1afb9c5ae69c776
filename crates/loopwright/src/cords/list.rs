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
    let words = text.split([' ', ',', ';', '\n']);
    let words = words.filter(|word| !word.is_empty() && *word != "and");
    let mut wanted = Wanted { bounds: CORD, unit };
    let (mut cords, mut behind) = (Vec::new(), "");
    // From the end, where the unit is.
    for word in words.rev() {
        if !word.bytes().any(|byte| byte.is_ascii_digit()) {
            behind = word;
            continue;
        }
        let cord = read::<Length>(&format!("{word}{behind}"), &wanted)?;
        if let Some(Unit::Length(written)) = cord.unit {
            wanted.unit = written;
        }
        cords.push(cord.value);
        behind = "";
    }
    if !behind.is_empty() {
        return Err(Unreadable::NotANumber);
    }
    cords.reverse();
    Ok(cords)
}
