//! Reads a written row back: `K4, (k2tog, K7) 3 times, k2tog, K3`.
//!
//! Letters may be large or small, brackets round or square, spaces where you like. A text that cannot be read gives
//! the place and what was looked for there, never a guess.

use super::{Item, Row, Run, Stitch, Varied};
use std::fmt::{Display, Formatter};

/// How deep brackets may stand within brackets.
const DEEPEST: usize = 8;

/// Where a text stopped making sense.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Misread {
    /// Characters from the start of the text.
    pub at: usize,
    /// What was looked for and not found.
    pub kind: Misreading,
}

/// What was looked for and not found.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Misreading {
    /// A stitch or an opening bracket.
    Stitch,
    /// How often a bracket is worked: `3 times`, `twice`.
    Times,
    /// A number that a needle could hold.
    Number,
    /// The bracket that closes.
    Closing,
    /// Fewer brackets within brackets.
    TooDeep,
    /// A bracket of runs alone, in front of "but": only such a one is told with its exceptions.
    Simple,
    /// One of the times that the bracket is worked, behind the one before: `the 5th, 10th time`.
    Time,
}

impl Display for Misread {
    fn fmt(&self, f: &mut Formatter<'_>) -> std::fmt::Result {
        write!(f, "looked for {:?} after {} characters", self.kind, self.at)
    }
}

impl std::error::Error for Misread {}

/// Reads one row.
///
/// # Errors
/// [`Misread`] with the place and what was looked for.
pub fn read(text: &str) -> Result<Row, Misread> {
    let mut reader = Reader {
        text: text.chars().map(|c| c.to_ascii_lowercase()).collect(),
        at: 0,
    };
    let items = reader.items(0)?;
    if reader.at < reader.text.len() {
        return Err(reader.lost(Misreading::Stitch));
    }
    Ok(Row { items })
}

struct Reader {
    text: Vec<char>,
    at: usize,
}

impl Reader {
    /// Items up to the end of the text or a closing bracket.
    fn items(&mut self, depth: usize) -> Result<Vec<Item>, Misread> {
        let mut items = vec![self.item(depth)?];
        while self.take(',') || self.take(';') {
            items.push(self.item(depth)?);
        }
        self.spaces();
        Ok(items)
    }

    fn item(&mut self, depth: usize) -> Result<Item, Misread> {
        let closing = if self.take('(') {
            ')'
        } else if self.take('[') {
            ']'
        } else {
            return self.run().map(Item::Run);
        };
        if depth == DEEPEST {
            return Err(self.lost(Misreading::TooDeep));
        }
        let body = self.items(depth + 1)?;
        if !self.take(closing) {
            return Err(self.lost(Misreading::Closing));
        }
        let Some(times) = self.times()? else {
            return Err(self.lost(Misreading::Times));
        };
        let end = self.at;
        self.take(',');
        if self.word("but") {
            return self.varied(body, times).map(Item::Varied);
        }
        self.at = end;
        Ok(Item::Repeat { body, times })
    }

    /// What stands behind "but": `K2 the 5th, 10th and 15th time`.
    fn varied(&mut self, body: Vec<Item>, times: u32) -> Result<Varied, Misread> {
        let runs = body.into_iter().map(|item| match item {
            Item::Run(run) => Some(run),
            Item::Repeat { .. } | Item::Varied(_) => None,
        });
        let Some(body) = runs.collect::<Option<Vec<Run>>>() else {
            return Err(self.lost(Misreading::Simple));
        };
        self.spaces();
        let start = self.at;
        let instead = self.run()?;
        if body.iter().all(|run| run.stitch != instead.stitch) {
            self.at = start;
            return Err(self.lost(Misreading::Stitch));
        }
        self.word("the");
        let at = self.ordinals(times)?;
        if self.word("time") || self.word("times") {
            return Ok(Varied {
                body,
                times,
                instead,
                at,
            });
        }
        Err(self.lost(Misreading::Times))
    }

    /// Which of so many times: `5th, 10th and 15th`, each behind the one before.
    fn ordinals(&mut self, times: u32) -> Result<Vec<u32>, Misread> {
        let mut at: Vec<u32> = Vec::new();
        loop {
            self.spaces();
            let start = self.at;
            let before = at.last().copied().unwrap_or(0);
            match self.number()? {
                Some(time) if time > before && time <= times => at.push(time),
                _ => {
                    self.at = start;
                    return Err(self.lost(Misreading::Time));
                }
            }
            let _ending = ["st", "nd", "rd", "th"].into_iter().any(|ending| self.word(ending));
            let comma = self.take(',');
            if !(self.word("and") || comma) {
                return Ok(at);
            }
        }
    }

    fn run(&mut self) -> Result<Run, Misread> {
        let stitch = self.stitch()?;
        if stitch.is_plain() {
            // A bare K is one stitch.
            return Ok(Run::new(stitch, self.number()?.unwrap_or(1)));
        }
        Ok(Run::new(stitch, self.times()?.unwrap_or(1)))
    }

    /// The longest abbreviation that stands here, so that `k2tog` is not read as `K2`.
    fn stitch(&mut self) -> Result<Stitch, Misread> {
        self.spaces();
        let longest = Stitch::ALL
            .into_iter()
            .map(|stitch| (self.matched(stitch.abbreviation().trim_end()), stitch))
            .filter(|(length, stitch)| *length > 0 && self.ends_well(*length, *stitch))
            .max_by_key(|(length, _)| *length);
        match longest {
            Some((length, stitch)) => {
                self.at += length;
                Ok(stitch)
            }
            None => Err(self.lost(Misreading::Stitch)),
        }
    }

    /// A word ends where its letters end; only a plain stitch may be followed at once by its count, and with that the word
    /// has to end: `k2togg` is no `K2`.
    fn ends_well(&self, length: usize, stitch: Stitch) -> bool {
        let rest = self.text.get(self.at + length..).unwrap_or_default();
        let count = rest.iter().take_while(|c| c.is_ascii_digit()).count();
        let is_over = !rest.get(count).is_some_and(|c| c.is_alphanumeric());
        is_over && (count == 0 || stitch.is_plain())
    }

    fn times(&mut self) -> Result<Option<u32>, Misread> {
        for (word, times) in [("once", 1), ("twice", 2)] {
            if self.word(word) {
                return Ok(Some(times));
            }
        }
        let start = self.at;
        let Some(times) = self.number()? else {
            return Ok(None);
        };
        if self.word("times") || self.word("time") {
            return Ok(Some(times));
        }
        self.at = start;
        Err(self.lost(Misreading::Times))
    }

    fn number(&mut self) -> Result<Option<u32>, Misread> {
        self.spaces();
        let mut value: Option<u32> = None;
        while let Some(digit) = self.text.get(self.at).and_then(|c| c.to_digit(10)) {
            let grown = value.unwrap_or(0).checked_mul(10).and_then(|v| v.checked_add(digit));
            value = Some(grown.ok_or_else(|| self.lost(Misreading::Number))?);
            self.at += 1;
        }
        Ok(value)
    }

    fn word(&mut self, word: &str) -> bool {
        self.spaces();
        let length = self.matched(word);
        let whole = length > 0 && !self.text.get(self.at + length).is_some_and(|c| c.is_alphanumeric());
        if whole {
            self.at += length;
        }
        whole
    }

    /// How many characters of `word` stand here: all of them or none.
    fn matched(&self, word: &str) -> usize {
        let rest = self.text.get(self.at..).unwrap_or_default();
        let length = word.chars().count();
        let same = rest.len() >= length && word.chars().zip(rest).all(|(a, b)| a.to_ascii_lowercase() == *b);
        if same { length } else { 0 }
    }

    fn take(&mut self, wanted: char) -> bool {
        self.spaces();
        let here = self.text.get(self.at) == Some(&wanted);
        self.at += usize::from(here);
        here
    }

    fn spaces(&mut self) {
        while self.text.get(self.at).is_some_and(|c| c.is_whitespace()) {
            self.at += 1;
        }
    }

    fn lost(&self, kind: Misreading) -> Misread {
        Misread { at: self.at, kind }
    }
}

#[cfg(test)]
mod tests;
