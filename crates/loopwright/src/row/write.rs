//! How a row is written in this crate's documentation and tests: `K4, (k2tog, K7) 3 times, k2tog, K3`.
//!
//! A plain run carries its count (`K7`), a change worked more than once in a row says so (`k2tog 3 times`), a bracket
//! says how often it is worked in all, never how often it is repeated after the first; and where it is not the same every
//! time, which times differ.

use super::{Item, Row, Run, Varied};
use std::fmt::{Display, Formatter, Result};

impl Display for Row {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        write_all(&self.items, f)
    }
}

impl Display for Item {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        match self {
            Self::Run(run) => run.fmt(f),
            Self::Repeat { body, times } => {
                f.write_str("(")?;
                write_all(body, f)?;
                f.write_str(") ")?;
                write_times(*times, f)
            }
            Self::Varied(varied) => varied.fmt(f),
        }
    }
}

/// `(K1, M1) 40 times, but K2 the 5th, 10th and 15th time`.
impl Display for Varied {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        f.write_str("(")?;
        write_all(&self.body, f)?;
        f.write_str(") ")?;
        write_times(self.times, f)?;
        write!(f, ", but {} the ", self.instead)?;
        for (place, time) in self.at.iter().enumerate() {
            f.write_str(match self.at.len() - place {
                _ if place == 0 => "",
                1 => " and ",
                _ => ", ",
            })?;
            write!(f, "{time}{}", ordinal_ending(*time))?;
        }
        f.write_str(" time")
    }
}

/// What stands behind a number that names a place: 1st, 2nd, 3rd, 11th.
const fn ordinal_ending(number: u32) -> &'static str {
    match (number % 10, number % 100) {
        (_, 11..=13) => "th",
        (1, _) => "st",
        (2, _) => "nd",
        (3, _) => "rd",
        _ => "th",
    }
}

impl Display for Run {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        f.write_str(self.stitch.abbreviation())?;
        match self.count {
            count if self.stitch.is_plain() => write!(f, "{count}"),
            1 => Ok(()),
            count => {
                f.write_str(" ")?;
                write_times(count, f)
            }
        }
    }
}

fn write_all<T: Display>(items: &[T], f: &mut Formatter<'_>) -> Result {
    for (place, item) in items.iter().enumerate() {
        if place > 0 {
            f.write_str(", ")?;
        }
        item.fmt(f)?;
    }
    Ok(())
}

fn write_times(times: u32, f: &mut Formatter<'_>) -> Result {
    match times {
        1 => f.write_str("once"),
        2 => f.write_str("twice"),
        _ => write!(f, "{times} times"),
    }
}
