//! The entries of a printed list as the names and numbers of sizes, with what the words about them say.

use crate::sizing::Listed;
use crate::units::parse::Unreadable;
use crate::units::printed::{Entry, Figures, Unread, WhyUnread, read};
use crate::units::{LengthUnit, Unit};
use std::ops::Range;

/// Words that say what the list is, and name no size.
const LABELS: [&str; 9] = [
    "fit", "fits", "bust", "chest", "finished", "actual", "size", "sizes", "round",
];

/// Words that say nothing by themselves. Between two numbers they have to stand beside another word: `81, to fit 86`, but
/// not `81 of 86`.
const FILLERS: [&str; 3] = ["to", "in", "of"];

/// Numbers in letters. None of them is dropped as if it said nothing.
const NUMBER_WORDS: [&str; 33] = [
    "zero",
    "nought",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen",
    "fifteen",
    "sixteen",
    "seventeen",
    "eighteen",
    "nineteen",
    "twenty",
    "thirty",
    "forty",
    "fifty",
    "sixty",
    "seventy",
    "eighty",
    "ninety",
    "hundred",
    "thousand",
    "half",
    "dozen",
];

/// What a piece is for.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Role {
    /// It is what a size is called.
    Name,
    /// It is the number of a size.
    Girth,
    /// It belongs to another list of the same text, which is not meant, or to a heading.
    None,
}

/// What a size is called.
pub struct Name {
    /// As typed, without what is passed over.
    pub text: String,
    /// Where in the list it stands.
    pub range: Range<usize>,
    /// What it is for.
    pub role: Role,
    /// What the words before it say that is measured.
    pub kind: Option<Listed>,
    /// Its row.
    pub row: usize,
    /// Whether no number stands beside it.
    pub is_alone: bool,
}

impl Name {
    /// This, and another behind it.
    fn and(mut self, other: Self) -> Self {
        self.text = [self.text, other.text].join(" ");
        self.range.end = self.range.end.max(other.range.end);
        self
    }

    /// Whether it says a number, in figures or in letters, which must not be lost.
    pub fn has_number(&self) -> bool {
        let mut words = self.text.split(|mark: char| !mark.is_alphabetic());
        self.text.chars().any(char::is_numeric) || words.any(|word| is_one_of(&NUMBER_WORDS, word))
    }
}

/// The number of a size.
pub struct Number {
    /// As typed: one number, a range, or a dash where there is none.
    pub figures: Figures,
    /// What it is for.
    pub role: Role,
    /// Its unit, where that is written behind it or behind its list.
    pub unit: Option<LengthUnit>,
    /// What the words before it say that it measures.
    pub kind: Option<Listed>,
    /// Its row.
    pub row: usize,
    /// Whether it stands before the first colon.
    pub before_colon: bool,
}

/// The names and the numbers of a list.
#[derive(Default)]
pub struct Pieces {
    /// What stands before the numbers, or by itself.
    pub names: Vec<Name>,
    /// The numbers.
    pub numbers: Vec<Number>,
    /// The first unit that is written.
    pub unit: Option<LengthUnit>,
    /// The row that is said to be sizes.
    pub sizes: Option<usize>,
    kind: Option<Listed>,
    /// Whether a word for the kind came after the last number.
    kind_is_named: bool,
}

impl Pieces {
    /// Takes a text apart.
    ///
    /// # Errors
    /// What has no place in a list, or words on both sides of a number.
    pub fn of(text: &str) -> Result<Self, Unread> {
        let reading = read(text);
        if let Some(place) = reading.unplaced.first() {
            return Err(Unread::at(place, WhyUnread::Misplaced));
        }
        let mut pieces = Self {
            unit: reading.unit.and_then(tape_unit),
            ..Self::default()
        };
        let before_colon = reading.before_colon.unwrap_or(0);
        for (place, entry) in reading.entries.iter().enumerate() {
            pieces.entry(text, entry, place < before_colon)?;
        }
        Ok(pieces)
    }

    fn entry(&mut self, text: &str, entry: &Entry, before_colon: bool) -> Result<(), Unread> {
        let heading = self.name(text, &entry.head, entry.row);
        let mut name = self.name(text, &entry.before, entry.row);
        // `Sweater: S 86` has a heading before its name; one with a number in it is part of the name.
        if let Some(heading) = heading {
            name = Some(match name {
                None => heading,
                Some(name) if heading.has_number() => heading.and(name),
                Some(name) => name,
            });
        }
        if let Some(figures) = &entry.figures {
            if let Figures::Open(..) = figures {
                return Err(Unread::at(&figures.range(), WhyUnread::Number(Unreadable::Unfinished)));
            }
            self.numbers.push(Number {
                figures: figures.clone(),
                role: Role::Girth,
                unit: figures.each().next().and_then(|figure| figure.unit).and_then(tape_unit),
                kind: self.kind,
                row: entry.row,
                before_colon,
            });
            self.kind_is_named = false;
            let behind = self.name(text, &entry.after, entry.row);
            if let (Some(_), Some(behind)) = (&name, &behind) {
                let place = figures.range().start..behind.range.end;
                return Err(Unread::at(&place, WhyUnread::Number(Unreadable::UnknownUnit)));
            }
            name = name.or(behind);
        }
        self.names.extend(name.map(|name| Name {
            is_alone: entry.figures.is_none(),
            ..name
        }));
        Ok(())
    }

    /// What of these words is a name, if anything.
    fn name(&mut self, text: &str, words: &[Range<usize>], row: usize) -> Option<Name> {
        let mut name: Option<Name> = None;
        let text_of = |range: &Range<usize>| text.get(range.clone()).unwrap_or_default();
        let says_nothing = words.iter().all(|range| is_one_of(&FILLERS, text_of(range)));
        let is_between = says_nothing && !self.numbers.is_empty();
        for (place, range) in words.iter().enumerate() {
            let word = text_of(range);
            // `one size`
            let is_size_next = || {
                words
                    .get(place + 1)
                    .is_some_and(|next| is_one_of(&["size"], text_of(next)))
            };
            let is_filler = is_one_of(&FILLERS, word) && !is_between || is_one_of(&["one"], word) && is_size_next();
            if is_filler || is_one_of(&LABELS, word) {
                self.note_kind(word, row);
                continue;
            }
            let word = Name {
                text: word.to_owned(),
                range: range.clone(),
                role: Role::Name,
                kind: None,
                row,
                is_alone: true,
            };
            name = Some(match name {
                None => word,
                Some(name) => name.and(word),
            });
        }
        // The words before a name may say what is measured.
        name.map(|name| Name {
            kind: self.kind,
            ..name
        })
    }

    /// What a word says about the numbers behind it.
    fn note_kind(&mut self, word: &str, row: usize) {
        let is = |other: &str| other.eq_ignore_ascii_case(word);
        let kind = if is("finished") || is("actual") {
            Some(Listed::Garment)
        } else if is("fit") || is("fits") || (is("bust") || is("chest")) && !self.kind_is_named {
            Some(Listed::Body)
        } else if (is("size") || is("sizes")) && !self.kind_is_named {
            self.sizes = Some(row);
            None
        } else {
            return;
        };
        self.kind_is_named = kind.is_some();
        self.kind = kind;
    }
}

/// Whether a word is among these, in small letters or large.
fn is_one_of(words: &[&str], word: &str) -> bool {
    words.iter().any(|other| other.eq_ignore_ascii_case(word))
}

/// The unit, if tapes have it.
fn tape_unit(unit: Unit) -> Option<LengthUnit> {
    match unit {
        Unit::Length(unit @ (LengthUnit::Mm | LengthUnit::Cm | LengthUnit::Inch)) => Some(unit),
        Unit::Length(LengthUnit::M | LengthUnit::Yard) | Unit::Mass(_) | Unit::Count(_) => None,
    }
}
