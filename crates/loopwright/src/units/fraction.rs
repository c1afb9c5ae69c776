//! A fraction as it is written, and the exact fraction every number is held as until it is rounded.
//!
//! `7/8` may be typed with a slash, as one sign (`⅞`), or with raised and lowered digits (`⁷⁄₈`). All are the same
//! [`Ratio`], which is rounded once, when it becomes a quantity.
//!
//! ```
//! use loopwright::units::parse::{Wanted, read};
//! use loopwright::units::{Length, LengthUnit};
//!
//! for typed in ["7/8", "⅞", "⁷⁄₈", "7 / 8", "14/16"] {
//!     let read = read::<Length>(typed, &Wanted::any(LengthUnit::Inch))?;
//!     assert_eq!(read.value, Length::from_sixty_fourths(56));
//! }
//! # Ok::<(), loopwright::units::parse::Unreadable>(())
//! ```

use super::parse::Unreadable;

/// Larger than this, a number is past every quantity in every unit (the least is 10^13 mm, which no `Length` holds),
/// and small enough that all sums here fit in an `i128`: 10^13 * 10^13 * 10^12 ng in a kilogram = 10^38.
pub(super) const LIMIT: i128 = 10_000_000_000_000;

/// A number as an exact fraction; the bottom is above zero.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Ratio {
    pub(super) top: i128,
    pub(super) bottom: i128,
}

impl Ratio {
    /// So many times this, rounded once to the nearest whole, halves away from zero. `times` is base per unit.
    pub(super) fn times(self, times: i64) -> i128 {
        let product = self.top.abs() * i128::from(times);
        let (whole, rest) = (product / self.bottom, product % self.bottom);
        let rounded = whole + i128::from(rest * 2 >= self.bottom);
        if self.top < 0 { -rounded } else { rounded }
    }

    /// The whole numbers on either side; the same twice when it is whole.
    pub(super) fn around(self) -> (i128, i128) {
        let below = self.top.div_euclid(self.bottom);
        (below, below + i128::from(self.top.rem_euclid(self.bottom) != 0))
    }

    /// Digits as a whole number, held at the limit.
    pub(super) fn whole(digits: &[char]) -> Self {
        Self {
            top: value(digits).unwrap_or(LIMIT),
            bottom: 1,
        }
    }

    /// The same below zero.
    pub(super) fn negated(self) -> Self {
        Self { top: -self.top, ..self }
    }
}

/// A number and the text that follows it.
pub(super) type Found<'a, T> = (T, &'a [char]);

/// The text without this character at its start, if it is there.
pub(super) fn skip(text: &[char], unwanted: char) -> &[char] {
    match text {
        [first, rest @ ..] if *first == unwanted => rest,
        _ => text,
    }
}

/// Whether a number could begin with this character. Raised digits are left out: behind a unit they are its power.
pub(super) fn begins(mark: char) -> bool {
    mark.is_ascii_digit() || vulgar(mark).is_some() || mark == OVER
}

/// Whether this is a digit as it stands above a fraction stroke.
pub(super) fn raised(mark: char) -> bool {
    RAISED.contains(&mark)
}

/// A fraction, if one stands here: `7/8`, `⅞`, `⁷⁄₈` or `⅟8`.
pub(super) fn fraction(text: &[char]) -> Result<Option<Found<'_, Ratio>>, Unreadable> {
    match text {
        [OVER, rest @ ..] => {
            let (below, rest) = run(rest, |mark| mark.is_ascii_digit());
            return ratio(Some(1), value(below), rest).map(Some);
        }
        [mark, rest @ ..] if vulgar(*mark).is_some() => {
            return Ok(vulgar(*mark).map(|(top, bottom)| (Ratio { top, bottom }, rest)));
        }
        _ => {}
    }
    let (above, rest) = run(text, raised);
    let (above, rest) = if above.is_empty() {
        run(text, |mark| mark.is_ascii_digit())
    } else {
        (above, rest)
    };
    let ['/', below @ ..] = skip(rest, ' ') else {
        return Ok(None);
    };
    if above.is_empty() {
        return Ok(None);
    }
    let below = skip(below, ' ');
    if below.is_empty() {
        return Err(Unreadable::Unfinished);
    }
    let (lowered, rest) = run(below, |mark| LOWERED.contains(&mark));
    let (below, rest) = if lowered.is_empty() {
        run(below, |mark| mark.is_ascii_digit())
    } else {
        (lowered, rest)
    };
    if below.is_empty() {
        return Err(Unreadable::NotANumber);
    }
    ratio(value(above), value(below), rest).map(Some)
}

/// A fraction of these two, if it is one that can be worked with.
fn ratio(top: Option<i128>, bottom: Option<i128>, rest: &[char]) -> Result<Found<'_, Ratio>, Unreadable> {
    match (top, bottom) {
        (_, Some(0)) => Err(Unreadable::ZeroDenominator),
        (Some(top), Some(bottom)) => Ok((Ratio { top, bottom }, rest)),
        // More digits than any fraction of an inch has.
        _ => Err(Unreadable::NotANumber),
    }
}

/// The longest start of the text whose characters all are of one sort, and the rest.
pub(super) fn run(text: &[char], sort: impl Fn(char) -> bool) -> (&[char], &[char]) {
    text.split_at(text.iter().position(|&mark| !sort(mark)).unwrap_or(text.len()))
}

/// What digits of one sort say; nothing when it is past the limit.
pub(super) fn value(digits: &[char]) -> Option<i128> {
    digits.iter().try_fold(0_i128, |sum, &mark| {
        let digit = [RAISED, LOWERED]
            .iter()
            .find_map(|signs| signs.iter().position(|&sign| sign == mark));
        let digit = digit.map_or_else(|| mark.to_digit(10).map(i128::from), |digit| i128::try_from(digit).ok())?;
        Some(sum * 10 + digit).filter(|&sum| sum <= LIMIT)
    })
}

/// Digits as they stand above a fraction stroke, nought to nine.
const RAISED: [char; 10] = ['⁰', '¹', '²', '³', '⁴', '⁵', '⁶', '⁷', '⁸', '⁹'];
/// Digits as they stand below a fraction stroke, nought to nine.
const LOWERED: [char; 10] = ['₀', '₁', '₂', '₃', '₄', '₅', '₆', '₇', '₈', '₉'];
/// One over whatever digits follow.
const OVER: char = '⅟';

/// A fraction that is one sign: all that Unicode has.
fn vulgar(sign: char) -> Option<(i128, i128)> {
    Some(match sign {
        '¼' => (1, 4),
        '½' => (1, 2),
        '¾' => (3, 4),
        '⅐' => (1, 7),
        '⅑' => (1, 9),
        '⅒' => (1, 10),
        '⅓' => (1, 3),
        '⅔' => (2, 3),
        '⅕' => (1, 5),
        '⅖' => (2, 5),
        '⅗' => (3, 5),
        '⅘' => (4, 5),
        '⅙' => (1, 6),
        '⅚' => (5, 6),
        '⅛' => (1, 8),
        '⅜' => (3, 8),
        '⅝' => (5, 8),
        '⅞' => (7, 8),
        '↉' => (0, 3),
        _ => return None,
    })
}
