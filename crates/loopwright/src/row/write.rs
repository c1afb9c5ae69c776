//! How a row is written in this crate's documentation and tests: `K4, (k2tog, K7) 3 times, k2tog, K3`.
//!
//! A plain run carries its count (`K7`), a change worked more than once in a row says so (`k2tog 3 times`), a bracket
//! says how often it is worked in all, never how often it is repeated after the first.

use super::{Item, Row, Run};
use std::fmt::{Display, Formatter, Result};

impl Display for Row {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        write_items(&self.items, f)
    }
}

impl Display for Item {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        match self {
            Self::Run(run) => run.fmt(f),
            Self::Repeat { body, times } => {
                f.write_str("(")?;
                write_items(body, f)?;
                f.write_str(") ")?;
                write_times(*times, f)
            }
        }
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

fn write_items(items: &[Item], f: &mut Formatter<'_>) -> Result {
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
