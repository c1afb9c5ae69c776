//! Sentences whose values come as the maths has them: counts, lengths, gauges, rows. They are printed in one place.

use super::intl::{fill_pattern_with, fill_pattern_with_strings};
use super::schedule::rows;
use super::units::{Lengths, gauge_in_sum, part_of};
use loopwright::spacing::Fraction;
use loopwright::units::{Gauge, Length};

/// How a length is printed.
pub type Long<'a> = &'a dyn Fn(Length) -> String;

/// By how much a length misses what was wanted, if it shows.
pub fn off(over: Length, lengths: Lengths) -> String {
    if lengths.is_nought(over) {
        return "what you want".into();
    }
    let under = Length::ZERO.saturating_sub(over);
    if under > Length::ZERO {
        fill_pattern_with("@ less than you want", &[], &[&lengths.write(under)])
    } else {
        fill_pattern_with("@ more than you want", &[], &[&lengths.write(over)])
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
    /// A gauge with its span, in a sum.
    Gauge(Gauge),
    /// What is seldom whole.
    Part(Fraction),
    /// So many rows; or rounds, if that is so.
    Rows(u32, bool),
}

/// A sentence with these in it: a count in the place of the next `#`, all else of the next `@`.
pub fn fill_pattern_with_values(pattern: &str, values: &[Value], long: Long) -> String {
    let (mut numbers, mut words) = (Vec::new(), Vec::new());
    for value in values {
        words.push(match *value {
            Value::Count(count) => {
                numbers.push(count);
                continue;
            }
            Value::Length(length) => long(length),
            Value::Off(off) => long(off.max(Length::ZERO.saturating_sub(off))),
            Value::Gauge(found) => gauge_in_sum(found),
            Value::Part(part) => part_of(part),
            Value::Rows(count, round) => rows(count, round),
        });
    }
    fill_pattern_with_strings(pattern, &numbers, words)
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright::units::LengthUnit;
    use loopwright::units::print::Step;

    #[test]
    fn what_is_off_is_said_only_where_it_shows() {
        let lengths = Lengths {
            unit: LengthUnit::Cm,
            step: Step::Tenth,
        };
        let off = |tenths: i64| off(Length::from_nm(tenths * 100_000), lengths).replace('\u{a0}', " ");
        assert_eq!(off(0), "what you want");
        assert_eq!(off(-4), "what you want");
        assert_eq!(off(-120), "1.2 cm less than you want");
        assert_eq!(off(35), "0.4 cm more than you want");
    }
}
