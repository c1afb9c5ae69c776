//! How a row is written: `K4, (k2tog, K7) 3 times, k2tog, K3`.
//!
//! A plain run carries its count (`K7`), a change worked more than once in a row says so (`k2tog 3 times`), a bracket
//! says how often it is worked in all, never how often it is repeated after the first.

use super::{Item, Row, Run};
use std::fmt::{Display, Formatter, Result};

impl Display for Row {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        let mut text = String::new();
        write_items(&self.items, &mut text);
        f.write_str(&text)
    }
}

impl Display for Item {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        f.write_str(&self.text())
    }
}

impl Display for Run {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        Item::Run(*self).fmt(f)
    }
}

impl Item {
    /// The term as it is written. A page that never calls on [`std::fmt`] need not carry it.
    pub fn text(&self) -> String {
        let mut text = String::new();
        write_item(self, &mut text);
        text
    }
}

fn write_items(items: &[Item], text: &mut String) {
    for (place, item) in items.iter().enumerate() {
        if place > 0 {
            text.push_str(", ");
        }
        write_item(item, text);
    }
}

fn write_item(item: &Item, text: &mut String) {
    match item {
        Item::Run(run) => {
            text.push_str(run.stitch.abbreviation());
            if run.stitch.is_plain() {
                text.push_str(&run.count.to_string());
            } else if run.count != 1 {
                text.push(' ');
                write_times(run.count, text);
            }
        }
        Item::Repeat { body, times } => {
            text.push('(');
            write_items(body, text);
            text.push_str(") ");
            write_times(*times, text);
        }
    }
}

fn write_times(times: u32, text: &mut String) {
    match times {
        1 => text.push_str("once"),
        2 => text.push_str("twice"),
        _ => text.push_str(&[&times.to_string(), " times"].concat()),
    }
}
