//! A gauge as it is printed: `22 sts = 10 cm`, `20 sts and 28 rows`, `22 x 30`, `21-22`, `22 sts and 30 rows to 4 in`.
//!
//! One text may name both directions, and the span. It is cut into the same tokens as a list of sizes and read by this
//! grammar; what has no place in it is never passed over in silence, it makes the text unreadable:
//!
//! ```text
//! gauge   = [ "gauge" ] [ span "=" ] counted { join counted } [ over span ] { word }
//! counted = number [ ( "-" | "to" ) number ] [ "sts" | "rows" ]         a range is read as its middle
//! join    = "x" | "and" | "," | "/" | nothing, where both counts name what they are
//! over    = "=" | "over" | "per" | "in" | "to" | "on" | "/"
//! span    = [ number [ "x" number ] ] unit [ ( "/" | "or" | "(" ) span ")" ]
//! ```
//!
//! Of two numbers with an `x` between, the first are stitches, as labels print them. A span in centimetres and inches at
//! once is the one in centimetres: 4 in is 1.6 % more than the 10 cm beside it. Common practice, no source.
//!
//! ```
//! use loopwright::gauge::Direction;
//! use loopwright::units::Gauge;
//! use loopwright::units::gauge_text::read;
//!
//! let label = read("22 sts and 30 rows to 4 in", Gauge::TEN_CM)?;
//! let over = |count| Gauge::of(count, Gauge::FOUR_INCHES);
//! assert_eq!(label.of(Direction::Stitches).map(|counted| counted.gauge), Some(over(22)));
//! assert_eq!(label.of(Direction::Rows).map(|counted| counted.gauge), Some(over(30)));
//! # Ok::<(), loopwright::units::parse::Unreadable>(())
//! ```

mod parse;
mod several;

pub use several::read_several;

use super::number::Number;
use super::parse::{Unreadable, pieces};
use super::printed::{Token, TokenKind, tokens};
use super::{Amount, CountUnit, Dimension, Gauge, Length, Unit};
use crate::gauge::Direction;
use parse::Parser;

/// No label prints a gauge in more bytes than these.
const LONGEST: usize = 1_000;

/// Thousandths in one.
const PARTS: u32 = 1_000;

/// A gauge that was read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct GaugeText {
    stitches: Option<Counted>,
    rows: Option<Counted>,
    alone: Option<Counted>,
    /// The span, where the text names one.
    pub span: Option<Length>,
}

/// A count over its span, as it is read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Counted {
    /// The count; of a range its middle.
    pub gauge: Gauge,
    /// The ends of the range, the smaller first, where it is one.
    pub range: Option<(Gauge, Gauge)>,
}

impl GaugeText {
    /// What counts in this direction: what is named so, or the only one, which names nothing.
    pub fn of(&self, direction: Direction) -> Option<Counted> {
        self.named(direction).or(self.alone)
    }

    /// What is named as the other direction.
    pub fn other(&self, direction: Direction) -> Option<Counted> {
        self.named(match direction {
            Direction::Stitches => Direction::Rows,
            Direction::Rows => Direction::Stitches,
        })
    }

    /// The only gauge that is named.
    ///
    /// # Errors
    /// `TwoNumbers` where both directions are.
    pub fn only(&self) -> Result<Gauge, Unreadable> {
        let mut named = [self.stitches, self.rows, self.alone].into_iter().flatten();
        match (named.next(), named.next()) {
            (Some(only), None) => Ok(only.gauge),
            (None, _) | (_, Some(_)) => Err(Unreadable::TwoNumbers),
        }
    }

    /// What is named as this direction.
    pub const fn named(&self, direction: Direction) -> Option<Counted> {
        match direction {
            Direction::Stitches => self.stitches,
            Direction::Rows => self.rows,
        }
    }

    /// The gauge in this direction.
    ///
    /// # Errors
    /// `WrongKind` where only the other one is named.
    pub fn gauge(&self, direction: Direction) -> Result<Gauge, Unreadable> {
        let written = match direction {
            Direction::Stitches => CountUnit::Row,
            Direction::Rows => CountUnit::Stitch,
        };
        let wrong = Unreadable::WrongKind {
            written: written.into(),
            wanted: Dimension::Count,
        };
        self.of(direction).map(|counted| counted.gauge).ok_or(wrong)
    }
}

/// Reads a gauge as it is printed, over `span` where it names none.
///
/// # Errors
/// [`Unreadable`], with the limits of [`Gauge::COUNTS`] and of [`Gauge::SPANS`]; `TwoNumbers` where one has no place.
pub fn read(text: &str, span: Length) -> Result<GaugeText, Unreadable> {
    let text = text.trim();
    if text.len() > LONGEST {
        return Err(Unreadable::NotANumber);
    }
    let tokens = tokens(text);
    if let Some(alone) = read_alone(text, &tokens, span) {
        return alone;
    }
    let (counts, named) = Parser::new(text, tokens).gauge()?;
    gather(&counts, named.unwrap_or(span), named)
}

/// One number with nothing but what is counted behind it, however its fraction is written; none where it is more.
fn read_alone(text: &str, tokens: &[Token], span: Length) -> Option<Result<GaugeText, Unreadable>> {
    let (number, unit) = match pieces(text) {
        Ok(read) => read,
        Err(Unreadable::Empty) => return Some(Err(Unreadable::Empty)),
        Err(Unreadable::Unfinished) => return Some(Err(Unreadable::Unfinished)),
        Err(_) => return None,
    };
    // `21/20` is nobody's count: two of them with a slash between.
    let has_whole = tokens.get(1).is_none_or(|token| token.kind != TokenKind::Slash);
    let direction = match unit {
        None => None,
        Some(unit) => Some(direction_of(unit)?),
    };
    if !has_whole || number.parted.is_some() {
        return None;
    }
    Some(count(thousandths(&number)).and_then(|thousandths| {
        let counts = [Count {
            low: thousandths,
            high: thousandths,
            direction,
        }];
        gather(&counts, span, None)
    }))
}

/// What is counted, if stitches or rows are.
const fn direction_of(unit: Unit) -> Option<Direction> {
    match unit {
        Unit::Count(CountUnit::Stitch) => Some(Direction::Stitches),
        Unit::Count(CountUnit::Row | CountUnit::Round) => Some(Direction::Rows),
        Unit::Count(CountUnit::Ball | CountUnit::Time) | Unit::Length(_) | Unit::Mass(_) => None,
    }
}

/// A number in thousandths.
fn thousandths(number: &Number) -> i128 {
    number.value.times(i64::from(PARTS))
}

/// Thousandths within what is accepted.
fn count(thousandths: i128) -> Result<u32, Unreadable> {
    let bound = |count: u32| i128::from(count) * i128::from(PARTS);
    let (least, most) = (Gauge::COUNTS.least, Gauge::COUNTS.most);
    if thousandths < bound(least) {
        return Err(Unreadable::TooSmall {
            least: Amount::Count(least),
        });
    }
    if thousandths > bound(most) {
        return Err(Unreadable::TooLarge {
            most: Amount::Count(most),
        });
    }
    u32::try_from(thousandths).map_err(|_| Unreadable::NotANumber)
}

/// A count as it was read: the same twice where it is no range.
#[derive(Clone, Copy)]
struct Count {
    low: u32,
    high: u32,
    direction: Option<Direction>,
}

impl Count {
    fn over(self, span: Length) -> Option<Counted> {
        let (low, high) = (Gauge::new(self.low, span)?, Gauge::new(self.high, span)?);
        Some(Counted {
            gauge: Gauge::new(self.low.midpoint(self.high), span)?,
            range: (self.low < self.high).then_some((low, high)),
        })
    }
}

/// The counts by what they are.
fn gather(counts: &[Count], span: Length, named: Option<Length>) -> Result<GaugeText, Unreadable> {
    let mut gauge = GaugeText {
        stitches: None,
        rows: None,
        alone: None,
        span: named,
    };
    for count in counts {
        let place = match count.direction {
            Some(Direction::Stitches) => &mut gauge.stitches,
            Some(Direction::Rows) => &mut gauge.rows,
            None => &mut gauge.alone,
        };
        if place.is_some() {
            return Err(Unreadable::TwoNumbers);
        }
        *place = count.over(span);
    }
    match gauge.alone {
        // Beside a count that names what it is, nobody can tell what the other one is.
        Some(_) if counts.len() > 1 => Err(Unreadable::TwoNumbers),
        Some(_) | None => Ok(gauge),
    }
}

#[cfg(test)]
mod tests;
