//! Sentences whose values come as the maths has them: counts, lengths, gauges, rows. They are printed in one place.

use super::intl::{decimal, say_made, say_with};
use super::schedule::rows;
use super::units::gauge;
use loopwright::spacing::Fraction;
use loopwright::units::print::{self, Step};
use loopwright::units::{Gauge, Length, LengthUnit};

/// How a length is printed.
pub type Long<'a> = &'a dyn Fn(Length) -> String;

/// In which unit lengths are printed, and how finely.
#[derive(Clone, Copy)]
pub struct Tape {
    /// The unit.
    pub unit: LengthUnit,
    /// How finely.
    pub step: Step,
}

impl Tape {
    /// A length with its unit, which stay on one line.
    pub fn print(self, length: Length) -> String {
        print::with_unit(length, self.unit, self.step).replace(' ', "\u{a0}")
    }

    /// By how much a length misses what was wanted, if the tape shows it.
    pub fn off(self, over: Length) -> String {
        if print::is_nothing(over, self.unit, self.step) {
            return "what you want".into();
        }
        let under = Length::ZERO.saturating_sub(over);
        if under > Length::ZERO {
            say_with("@ less than you want", &[], &[&self.print(under)])
        } else {
            say_with("@ more than you want", &[], &[&self.print(over)])
        }
    }
}

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
#[inline(never)]
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_off_is_said_only_where_it_shows() {
        let tape = Tape {
            unit: LengthUnit::Cm,
            step: Step::Tenth,
        };
        let off = |tenths: i64| tape.off(Length::from_nm(tenths * 100_000)).replace('\u{a0}', " ");
        assert_eq!(off(0), "what you want");
        assert_eq!(off(-4), "what you want");
        assert_eq!(off(-120), "1.2 cm less than you want");
        assert_eq!(off(35), "0.4 cm more than you want");
    }
}
