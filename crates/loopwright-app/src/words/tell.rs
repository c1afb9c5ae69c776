//! Sentences whose values come as the maths has them: counts, lengths, gauges, rows. They are printed in one place.

use super::intl::{decimal, say_made};
use super::schedule::rows;
use super::units::gauge;
use loopwright::spacing::Fraction;
use loopwright::units::{Gauge, Length};

/// How a length is printed.
pub type Long<'a> = &'a dyn Fn(Length) -> String;

/// A value in a sentence.
#[derive(Clone, Copy)]
pub enum Value {
    /// A number, for the next `#`.
    Count(u32),
    /// A length, for the next `@`, as all that follow.
    Length(Length),
    /// A length whichever way it is off.
    Off(Length),
    /// A gauge with its span.
    Gauge(Gauge),
    /// What is seldom whole.
    Part(Fraction),
    /// So many rows; or rounds, if that is so.
    Rows(u32, bool),
}

/// A sentence with these in it: a count in the place of the next `#`, all else of the next `@`.
pub fn tell(pattern: &str, values: &[Value], long: Long) -> String {
    let (mut numbers, mut words) = (Vec::new(), Vec::new());
    for value in values {
        words.push(match *value {
            Value::Count(count) => {
                numbers.push(count);
                continue;
            }
            Value::Length(length) => long(length),
            Value::Off(off) => long(off.max(Length::ZERO.saturating_sub(off))),
            Value::Gauge(found) => gauge(found),
            Value::Part(part) => decimal(part.to_f64()),
            Value::Rows(count, round) => rows(count, round),
        });
    }
    say_made(pattern, &numbers, words)
}
