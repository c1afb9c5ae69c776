//! The number at the start of what was typed: whole, with a fraction beside it, or with decimals.
//!
//! Half an inch is written `1/2`, `½`, `0.5`, `0,5` or `.5`, and seven and a half with a space, a dash or nothing
//! before the half. Thousands may be parted by an apostrophe, which nobody uses for anything else, or by a comma or a
//! point where the rest of the number shows that they cannot be decimals (`1,234.5`, `1.234,5`, `1,234,567`). A space
//! parts them where no second number could begin behind it (`1 000`) or decimals follow (`1 234,5`).
//!
//! Three forms stay in doubt and are asked about, never guessed:
//! - a comma and exactly three digits (`1,000`): decimals in half the world, thousands in the other half;
//! - a point and exactly three digits that end in 0 (`1.500`). A point is a decimal point here, as in `2.125`; but who
//!   means decimals hardly ever ends them with a nought, and who means thousands mostly does;
//! - a space and exactly three digits (`88 112`): one number, or two of a list.
//!
//! Digits after the twelfth decimal are not looked at: they are less than a nanometre of a kilometre.
//!
//! ```
//! use loopwright::bounds::Bounds;
//! use loopwright::units::parse::{Unreadable, Wanted, read};
//! use loopwright::units::{Length, LengthUnit};
//!
//! let yarn = Wanted { bounds: Bounds::new(Length::ZERO, Length::MAX), unit: LengthUnit::M };
//! assert_eq!(read("1,234.5", &yarn).map(|read| read.value), Ok(Length::from_mm(1_234_500)));
//! assert_eq!(read("1 000", &yarn).map(|read| read.value), Ok(Length::of(1000, LengthUnit::M)));
//! for doubtful in ["1,000", "1.500", "88 112"] {
//!     assert!(matches!(read(doubtful, &yarn), Err(Unreadable::Ambiguous(_))), "{doubtful}");
//! }
//! ```

use super::fraction::{Found, LIMIT, Ratio, begins, fraction, raised, run, skip, value};
use super::meant::Cause;
use super::parse::Unreadable;

/// Decimals that are looked at.
const DECIMALS: usize = 12;

/// A number as written, with the second reading where there is one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Number {
    /// What it says, a comma or point being for decimals where it could be.
    pub(super) value: Ratio,
    /// What it says if the comma or point parts thousands, where that could be.
    pub(super) thousands: Option<Ratio>,
    /// The two numbers it says if a space parts them, where that could be.
    pub(super) parted: Option<[Ratio; 2]>,
    /// Why it has to be asked which is meant; a comma or a point is in doubt for lengths and weights only.
    pub(super) doubt: Option<Cause>,
    /// Whether a fraction was written with a slash or as one sign.
    pub(super) fraction: bool,
}

impl Number {
    fn plain(value: Ratio) -> Self {
        Self {
            value,
            thousands: None,
            parted: None,
            doubt: None,
            fraction: false,
        }
    }

    fn negated(self) -> Self {
        Self {
            value: self.value.negated(),
            thousands: self.thousands.map(Ratio::negated),
            parted: self.parted.map(|[first, second]| [first.negated(), second]),
            ..self
        }
    }
}

/// Reads the number at the start of cleaned text.
pub(super) fn number(text: &[char]) -> Result<Found<'_, Number>, Unreadable> {
    let (negative, unsigned) = match text {
        [] => return Err(Unreadable::Empty),
        ['-', rest @ ..] => (true, skip(rest, ' ')),
        ['+', rest @ ..] => (false, skip(rest, ' ')),
        rest => (false, rest),
    };
    let (number, rest) = match fraction(unsigned)? {
        Some((value, rest)) => (
            Number {
                fraction: true,
                ..Number::plain(value)
            },
            rest,
        ),
        None => mixed(unsigned)?,
    };
    Ok((if negative { number.negated() } else { number }, rest))
}

/// A numeral, perhaps with a fraction beside it.
fn mixed(text: &[char]) -> Result<Found<'_, Number>, Unreadable> {
    let (number, rest) = numeral(text)?;
    if number.value.bottom != 1 || number.thousands.is_some() {
        return Ok((number, rest));
    }
    let beside = match rest {
        [' ' | '-', beside @ ..] => beside,
        [mark, ..] if begins(*mark) || raised(*mark) => rest,
        _ => return Ok((number, rest)),
    };
    let Some((part, rest)) = fraction(beside)? else {
        return Ok((number, rest));
    };
    if part.top >= part.bottom {
        // `12 16/8`: a whole number beside one or more is two numbers, or a slip.
        return Err(Unreadable::TwoNumbers);
    }
    // A fraction behind thousands is a part of them, as decimals are: `1 234 1/2`.
    let top = number.value.top * part.bottom + part.top;
    Ok((
        Number {
            fraction: true,
            ..Number::plain(Ratio { top, ..part })
        },
        rest,
    ))
}

/// Digits, with the marks that part thousands or decimals.
fn numeral(text: &[char]) -> Result<Found<'_, Number>, Unreadable> {
    let (first, mut rest) = run(text, |mark| mark.is_ascii_digit());
    let mut groups: Vec<(char, &[char])> = Vec::new();
    while let Some((mark, group, after)) = group(first, &groups, rest) {
        groups.push((mark, group));
        rest = after;
    }
    if first.is_empty() && groups.is_empty() {
        return Err(if matches!(text, [] | ['.' | ',']) {
            Unreadable::Unfinished
        } else {
            Unreadable::NotANumber
        });
    }
    // A point or comma with nothing behind it yet, as in `7.`; the next key may be a digit.
    if groups.is_empty() && matches!(rest, ['.' | ',', ..]) {
        rest = &rest[1..];
    }
    Ok((weigh(first, &groups)?, rest))
}

/// The next mark and the digits behind it, if they belong to the number.
fn group<'a>(first: &[char], before: &[(char, &[char])], rest: &'a [char]) -> Option<(char, &'a [char], &'a [char])> {
    let (&mark, after) = rest.split_first()?;
    let (digits, after) = run(after, |mark| mark.is_ascii_digit());
    let belongs = match mark {
        '.' | ',' => !digits.is_empty(),
        // `1 000` is a thousand; `7 1/2`, `7 100/200` and `1000 132` are none.
        ' ' | '\'' => {
            digits.len() == 3
                && starts_thousands(first)
                && before.last().is_none_or(|(earlier, _)| *earlier == mark)
                && skip(after, ' ').first() != Some(&'/')
        }
        _ => false,
    };
    belongs.then_some((mark, digits, after))
}

/// What the groups say together.
fn weigh(first: &[char], groups: &[(char, &[char])]) -> Result<Number, Unreadable> {
    let Some(((last_mark, last), others)) = groups.split_last() else {
        return Ok(Number::plain(Ratio::whole(first)));
    };
    let parted = |groups: &[(char, &[char])]| {
        starts_thousands(first)
            && groups
                .iter()
                .all(|(mark, group)| *mark == groups[0].0 && group.len() == 3)
    };
    let joined = |groups: &[(char, &[char])]| {
        first
            .iter()
            .chain(groups.iter().flat_map(|(_, group)| *group))
            .copied()
            .collect::<Vec<char>>()
    };
    let thousands = parted(groups).then(|| Ratio::whole(&joined(groups)));
    let decimal_mark = matches!(last_mark, '.' | ',');
    if let Some(value) = thousands.filter(|_| !decimal_mark || !others.is_empty()) {
        return spaced(first, groups, Number::plain(value));
    }
    let one_mark_each = others.iter().all(|(mark, _)| mark != last_mark) && (others.is_empty() || parted(others));
    if !decimal_mark || !one_mark_each {
        return Err(Unreadable::NotANumber);
    }
    let value = with_decimals(&joined(others), last);
    let doubt = match last_mark {
        _ if thousands.is_none() => None,
        ',' => Some(Cause::Comma),
        _ => (last.last() == Some(&'0')).then_some(Cause::Point),
    };
    Ok(Number {
        thousands,
        doubt,
        ..Number::plain(value)
    })
}

/// Thousands, in doubt where spaces part them and a number of its own could begin behind each: nobody begins one with a
/// nought. Of three numbers or more none is the one that is wanted.
fn spaced(first: &[char], groups: &[(char, &[char])], thousands: Number) -> Result<Number, Unreadable> {
    let begins_a_number = |(mark, digits): &(char, &[char])| *mark == ' ' && digits.first() != Some(&'0');
    match groups {
        _ if !groups.iter().all(begins_a_number) => Ok(thousands),
        [(_, second)] => Ok(Number {
            parted: Some([first, second].map(Ratio::whole)),
            doubt: Some(Cause::Space),
            ..thousands
        }),
        _ => Err(Unreadable::TwoNumbers),
    }
}

/// Whether these could be the digits before the first mark that parts thousands.
fn starts_thousands(first: &[char]) -> bool {
    (1..=3).contains(&first.len()) && first[0] != '0'
}

/// A whole part and its decimals.
fn with_decimals(whole: &[char], decimals: &[char]) -> Ratio {
    let decimals = &decimals[..decimals.len().min(DECIMALS)];
    let bottom = decimals.iter().fold(1, |power, _| power * 10);
    let top = value(whole).unwrap_or(LIMIT) * bottom + value(decimals).unwrap_or(0);
    Ratio { top, bottom }
}
