//! Which size is hers, line by line: one, or another one from a line on; and where two of them meet.

use super::{Found, LinePlace};

/// Her size, and where it changes.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Hers {
    /// Her size, counted from nought, from the first line on.
    pub size: usize,
    /// Another one from a line on.
    pub from: Vec<FromLine>,
}

/// From a line on another size is hers.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct FromLine {
    /// The line.
    pub line: LinePlace,
    /// The size, counted from nought.
    pub size: usize,
}

/// A place where two sizes meet.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Join {
    /// The line from which on the other size is hers.
    pub line: usize,
    /// The size before it.
    pub before: usize,
    /// The size from it on.
    pub after: usize,
    /// The lists of the last line before it that has any.
    pub lists_before: Vec<usize>,
    /// The lists of the first line from it on that has any.
    pub lists_after: Vec<usize>,
}

impl Hers {
    /// One size from first to last.
    pub const fn one(size: usize) -> Self {
        Self { size, from: Vec::new() }
    }

    /// The size of each line. A line that is no longer there changes nothing.
    pub fn by_line(&self, text: &str, found: &Found) -> Vec<usize> {
        let lines = found.lines.ranges.len();
        let mut changes = vec![None; lines];
        for from in &self.from {
            let line = found.lines.line(text, &from.line);
            if let Some(change) = line.and_then(|line| changes.get_mut(line)) {
                *change = Some(from.size);
            }
        }
        let mut size = self.size;
        let of_line = |change: Option<usize>| {
            size = change.unwrap_or(size);
            size
        };
        changes.into_iter().map(of_line).collect()
    }

    /// The lines whose change is no longer to be found, because their words changed.
    pub fn lost<'a>(&'a self, text: &'a str, found: &'a Found) -> impl Iterator<Item = &'a FromLine> {
        let is_lost = |from: &&FromLine| found.lines.line(text, &from.line).is_none();
        self.from.iter().filter(is_lost)
    }

    /// Where two sizes meet.
    pub fn joins(&self, text: &str, found: &Found) -> Vec<Join> {
        let sizes = self.by_line(text, found);
        let changes = sizes.windows(2).enumerate().filter(|(_, pair)| pair[0] != pair[1]);
        changes
            .map(|(line, pair)| join(found, line + 1, pair[0], pair[1]))
            .collect()
    }
}

fn join(found: &Found, line: usize, before: usize, after: usize) -> Join {
    let last = found.lists.iter().rfind(|list| list.line < line).map(|list| list.line);
    let first = found.lists.iter().find(|list| list.line >= line).map(|list| list.line);
    let of_line = |wanted: Option<usize>| {
        let lists = found.lists.iter().enumerate();
        let in_line = lists.filter(|(_, list)| Some(list.line) == wanted);
        in_line.map(|(at, _)| at).collect()
    };
    Join {
        line,
        before,
        after,
        lists_before: of_line(last),
        lists_after: of_line(first),
    }
}
