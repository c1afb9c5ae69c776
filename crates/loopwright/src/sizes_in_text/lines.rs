//! The lines of a text, and a name for each that outlives what is changed in other lines: what is written in it, and
//! which of the lines with the same words it is.

use std::collections::HashMap;
use std::ops::Range;

/// The lines of a text, in order.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Lines {
    /// Where each stands, without its end.
    pub ranges: Vec<Range<usize>>,
    /// How many lines before it have the same words.
    which: Vec<usize>,
}

/// A line, named by its words.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct LinePlace {
    /// What is written in it, without the spaces around.
    pub words: String,
    /// How many lines with the same words stand before it.
    pub which: usize,
}

/// The number of a line as it is said, counted from one.
pub fn line_number(line: usize) -> u32 {
    u32::try_from(line).unwrap_or(u32::MAX).saturating_add(1)
}

impl Lines {
    /// Cuts a text into its lines.
    pub fn of(text: &str) -> Self {
        let mut lines = Self::default();
        let mut seen: HashMap<&str, usize> = HashMap::new();
        let mut start = 0;
        for line in text.split('\n') {
            let before = seen.entry(line.trim()).or_default();
            lines.which.push(*before);
            *before += 1;
            lines.ranges.push(start..start + line.len());
            start += line.len() + 1;
        }
        lines
    }

    /// The line in which a place of the text stands.
    pub fn at(&self, place: usize) -> usize {
        self.ranges
            .partition_point(|line| line.start <= place)
            .saturating_sub(1)
    }

    /// The name of a line, of the text that was cut.
    pub fn place(&self, text: &str, line: usize) -> Option<LinePlace> {
        let words = text.get(self.ranges.get(line)?.clone())?.trim().to_owned();
        let which = *self.which.get(line)?;
        Some(LinePlace { words, which })
    }

    /// Which line is called so, if there still is one.
    pub fn line(&self, text: &str, place: &LinePlace) -> Option<usize> {
        let is_it = |(line, range): &(usize, &Range<usize>)| {
            self.which.get(*line) == Some(&place.which)
                && text.get((*range).clone()).map(str::trim) == Some(place.words.as_str())
        };
        self.ranges.iter().enumerate().find(is_it).map(|(line, _)| line)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_keeps_its_name_when_others_change() {
        let text = "Knit.\nPurl 4 (6).\nKnit.";
        let lines = Lines::of(text);
        let place = lines.place(text, 2).unwrap();
        assert_eq!((place.words.as_str(), place.which), ("Knit.", 1));
        let changed = "Cast on.\nKnit.\n\nPurl 5 (6).\n  Knit.";
        assert_eq!(Lines::of(changed).line(changed, &place), Some(4));
        let gone = "Cast on.\nKnit.";
        assert_eq!(Lines::of(gone).line(gone, &place), None);
    }

    #[test]
    fn every_place_stands_in_a_line() {
        let lines = Lines::of("a\n\nbc");
        let found: Vec<usize> = (0..5).map(|place| lines.at(place)).collect();
        assert_eq!(found, [0, 0, 1, 2, 2]);
    }
}
