//! A list taken apart into names and numbers, each as typed, with what the words about it say.

use crate::sizing::Listed;
use crate::units::parse::{Unreadable, Wanted, read};
use crate::units::{Length, LengthUnit, Unit};
use std::mem::take;

/// Words that say what the list is, and name no size.
const PASSED_OVER: [&str; 13] = [
    "to", "fit", "fits", "bust", "chest", "finished", "actual", "size", "sizes", "one", "-", "–", "—",
];

/// Numbers on both sides of a slash that are as large as this are two sizes and no fraction.
const NO_FRACTION: u32 = 17;

/// What a piece is for.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Role {
    /// It is what a size is called.
    Name,
    /// It is the number of a size.
    Girth,
    /// It is left out.
    None,
}

/// Words of a list that belong together, and where they stand in it.
#[derive(Clone, Default)]
pub struct Words {
    /// As typed, but for spaces and what is passed over.
    pub text: String,
    /// From where in the list they stand, in bytes.
    pub from: usize,
    /// To where.
    pub to: usize,
}

impl Words {
    /// One word that begins here.
    fn one(from: usize, text: &str) -> Self {
        Self {
            text: text.to_owned(),
            from,
            to: from + text.len(),
        }
    }

    fn is_empty(&self) -> bool {
        self.text.is_empty()
    }

    /// Others behind these, and a space between them.
    fn join(&mut self, others: Self) {
        if self.is_empty() {
            *self = others;
        } else if !others.is_empty() {
            self.text.push(' ');
            self.text.push_str(&others.text);
            self.from = self.from.min(others.from);
            self.to = self.to.max(others.to);
        }
    }
}

/// A name or a number.
pub struct Piece {
    /// What is written.
    pub words: Words,
    /// What it is for.
    pub role: Role,
    /// Its unit, where that is written behind it or behind its list.
    pub unit: Option<LengthUnit>,
    /// What the words before it say that it measures.
    pub kind: Option<Listed>,
    /// Its row.
    pub row: usize,
    /// Whether it is a number before the first colon.
    pub before_colon: bool,
}

/// The names and the numbers of a list.
#[derive(Default)]
pub struct Pieces {
    /// What stands before the numbers, or by itself.
    pub names: Vec<Piece>,
    /// The numbers.
    pub numbers: Vec<Piece>,
    /// The first unit that is written.
    pub unit: Option<LengthUnit>,
    /// The row that is said to be sizes.
    pub sizes: Option<usize>,
    row: usize,
    kind: Option<Listed>,
    /// Whether a word for the kind came after the last number.
    kind_is_named: bool,
    colon: bool,
    /// From where on numbers wait for their unit.
    unmeasured: usize,
    /// Of the size that is being read what stands before its colon, its name, its number with its unit, and the words
    /// behind that.
    head: Words,
    name: Words,
    number: Words,
    own: Option<LengthUnit>,
    tail: Words,
}

impl Pieces {
    /// Takes a text apart.
    pub fn of(text: &str) -> Self {
        let mut pieces = Self::default();
        let (mut word_from, mut last) = (0, ' ');
        for (at, mark) in text.char_indices() {
            let behind = at + mark.len_utf8();
            let word = &text[word_from..at];
            let parts = match mark {
                '(' | ')' | '[' | ']' | '{' | '}' | ';' | '\n' | '|' | '•' => true,
                ',' => !decimal(word, &text[behind..]),
                _ => false,
            };
            let colon = matches!(mark, ':' | '=');
            if !(parts || colon || mark.is_whitespace()) {
                last = mark;
                continue;
            }
            pieces.word(word_from, word);
            word_from = behind;
            if parts {
                pieces.part();
            } else if colon {
                pieces.colon();
            }
            // A row that ends with a comma goes on.
            if mark == '\n' && last != ',' {
                pieces.row += 1;
                pieces.unmeasured = pieces.numbers.len();
            }
            if !mark.is_whitespace() {
                last = mark;
            }
        }
        pieces.word(word_from, &text[word_from..]);
        pieces.part();
        pieces
    }

    /// What looked like a number is a name: `10: 92`.
    fn colon(&mut self) {
        self.head = take(&mut self.name);
        self.head.join(take(&mut self.number));
        self.head.join(take(&mut self.tail));
        self.own = None;
        self.unmeasured = self.numbers.len();
        if !self.colon {
            for number in &mut self.numbers {
                number.before_colon = true;
            }
        }
        self.colon = true;
    }

    fn word(&mut self, from: usize, word: &str) {
        let is = |other: &str| other.eq_ignore_ascii_case(word);
        if is("/") || is("and") {
            return self.part();
        }
        if is_slashed(word) {
            return self.slashed(from, word);
        }
        let number = is_number(word);
        let parted = word.split_once(is_dash).filter(|_| !number && self.number.is_empty());
        if let Some((name, behind)) = parted.filter(|(name, behind)| !name.is_empty() && is_number(behind)) {
            self.word(from, name);
            return self.word(from + word.len() - behind.len(), behind);
        }
        let unit = unit_of(unit_name(word));
        let here = Words::one(from, word);
        if number {
            if !self.goes_on(word) {
                let name = take(&mut self.tail);
                self.part();
                self.name = name;
            }
            self.number.join(here);
            self.measure(unit);
        } else if !self.number.is_empty()
            && self.tail.is_empty()
            && (unit.is_some() || is("to") || word.chars().next().is_some_and(is_dash))
        {
            let text = if is("to") { "-".to_owned() } else { here.text };
            self.number.join(Words { text, ..here });
            self.measure(unit);
        } else if let Some(Unit::Length(_)) = unit {
            self.measure(unit);
        } else if PASSED_OVER.iter().any(|passed| is(passed)) {
            self.note_kind(&is);
        } else if self.number.is_empty() {
            self.name.join(here);
        } else {
            self.tail.join(here);
        }
    }

    /// Several numbers with slashes between them.
    fn slashed(&mut self, from: usize, word: &str) {
        let mut at = from;
        for piece in word.split('/') {
            if at > from {
                self.part();
            }
            self.word(at, piece);
            at += piece.len() + "/".len();
        }
    }

    /// Whether a number belongs to the one that is being read: `36 1/2`, `86 - 91`, `1 000`.
    fn goes_on(&self, word: &str) -> bool {
        let number = &self.number.text;
        let is_part_of_it = number.is_empty()
            || number.chars().next_back().is_some_and(is_dash)
            || word.chars().any(|mark| matches!(mark, '/' | '\u{2044}' | '\u{2215}'))
            || !word.as_bytes().first().is_some_and(u8::is_ascii_digit)
            || number.len() == 1 && word.len() == 3;
        is_part_of_it && self.tail.is_empty()
    }

    /// What a word says about the numbers behind it.
    fn note_kind(&mut self, is: &dyn Fn(&str) -> bool) {
        let kind = if is("finished") || is("actual") {
            Some(Listed::Garment)
        } else if is("fit") || is("fits") || (is("bust") || is("chest")) && !self.kind_is_named {
            Some(Listed::Body)
        } else if (is("size") || is("sizes")) && !self.kind_is_named {
            self.sizes = Some(self.row);
            None
        } else {
            return;
        };
        if !self.number.is_empty() {
            self.part();
        }
        self.kind_is_named = kind.is_some();
        self.kind = kind;
    }

    /// A unit stands behind the number that is being read, and behind those before it that have none.
    fn measure(&mut self, unit: Option<Unit>) {
        let Some(Unit::Length(unit @ (LengthUnit::Mm | LengthUnit::Cm | LengthUnit::Inch))) = unit else {
            return;
        };
        self.unit = self.unit.or(Some(unit));
        self.own = Some(unit).filter(|_| !self.number.is_empty());
        for number in self.numbers.iter_mut().skip(self.unmeasured) {
            number.unit = number.unit.or(Some(unit));
        }
        self.unmeasured = self.numbers.len();
    }

    /// The end of a size.
    fn part(&mut self) {
        let head = take(&mut self.head);
        if self.name.is_empty() {
            self.name = head;
        }
        let tail = take(&mut self.tail);
        if self.name.is_empty() {
            self.name.join(tail);
        } else {
            self.number.join(tail);
        }
        self.kind_is_named &= self.number.is_empty();
        let (name, number) = (take(&mut self.name), take(&mut self.number));
        let own = self.own.take();
        if !name.is_empty() {
            let name = self.piece(name, Role::Name, None);
            self.names.push(name);
        }
        if !number.is_empty() {
            let number = self.piece(number, Role::Girth, own);
            self.numbers.push(number);
        }
    }

    fn piece(&self, words: Words, role: Role, unit: Option<LengthUnit>) -> Piece {
        Piece {
            words,
            role,
            unit,
            kind: self.kind,
            row: self.row,
            before_colon: false,
        }
    }
}

/// Whether a comma between these has decimals behind it: `96,5` has; `97,103` and `86,91` are two sizes, the second a
/// little larger.
fn decimal(before: &str, behind: &str) -> bool {
    let digits = behind.bytes().take_while(u8::is_ascii_digit).count();
    let worth = |digits: &str| digits.parse().unwrap_or(0_u32);
    let (whole, part) = (worth(before), worth(&behind[..digits]));
    matches!(digits, 1 | 2) && (part <= whole || part * 3 > whole.saturating_mul(4))
}

/// Whether a word is several numbers with slashes between them, and no fraction.
fn is_slashed(word: &str) -> bool {
    let (mut count, mut large) = (0, true);
    for piece in word.split('/') {
        if !is_number(piece) {
            return false;
        }
        let digits = piece.chars().map_while(|mark| mark.to_digit(10));
        let worth = digits.fold(0_u32, |worth, digit| worth.saturating_mul(10).saturating_add(digit));
        large &= worth >= NO_FRACTION;
        count += 1;
    }
    count > 2 || count == 2 && large
}

/// Whether a word is a number, perhaps with its unit.
fn is_number(word: &str) -> bool {
    let digit = |mark: char| mark.is_ascii_digit() || matches!(mark, '¼'..='¾' | '⅛'..='⅞');
    let behind = unit_name(word);
    word.starts_with(digit) && (behind.is_empty() || matches!(unit_of(behind), Some(Unit::Length(_))))
}

/// What of a word may be the name of a unit.
fn unit_name(word: &str) -> &str {
    word.trim_start_matches(|mark: char| !(mark.is_alphabetic() || matches!(mark, '"' | '”' | '″' | '\'')))
}

/// The unit of this name. A lone `m` is a size.
fn unit_of(name: &str) -> Option<Unit> {
    let unit = match read(&["1 ", name].concat(), &Wanted::<Length>::any(LengthUnit::Cm)) {
        Ok(read) => read.unit?,
        Err(Unreadable::WrongKind { written, .. }) => written,
        Err(_) => return None,
    };
    Some(unit).filter(|unit| *unit != Unit::Length(LengthUnit::M))
}

/// Whether a mark stands between the ends of a range.
pub fn is_dash(mark: char) -> bool {
    matches!(mark, '-' | '\u{2010}'..='\u{2015}' | '\u{2212}')
}
