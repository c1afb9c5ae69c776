//! The text of a size list cut into numbers, words and marks. What a number is worth is left to the parser of lengths.

use std::ops::Range;

/// One piece of the text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Token {
    pub kind: Kind,
    pub at: Range<usize>,
}

/// What a piece is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Kind {
    /// A number, with its fraction.
    Number,
    /// A word, perhaps with digits, dashes or strokes in it: `2XL`, `X-Small`, `S/M`.
    Word,
    /// The sign for inches.
    InchSign,
    /// A dash between two numbers.
    Dash,
    /// A colon or equals sign.
    Colon,
    /// What parts one size from the next.
    Part,
    /// Anything else.
    Stray,
}

/// Bottoms of the fractions a tape has. `86/91` is no fraction but two sizes.
const BOTTOMS: [u32; 7] = [2, 3, 4, 8, 16, 32, 64];

/// Whether this parts sizes wherever it stands.
pub(super) fn parts(mark: char) -> bool {
    matches!(mark, '(' | ')' | '[' | ']' | '{' | '}' | ';' | '|' | '\n' | '\r' | '\t')
        || matches!(mark, '，' | '、' | '；' | '（' | '）' | '•' | '*' | '&' | '+')
}

pub(super) fn tokens(text: &str) -> Vec<Token> {
    let mut scan = Scan {
        text: text.char_indices().collect(),
        end: text.len(),
        at: 0,
    };
    let mut tokens = Vec::new();
    while let Some(mark) = scan.peek(0) {
        let start = scan.at;
        let kind = scan.next_kind(mark);
        if let Some(kind) = kind {
            tokens.push(Token {
                kind,
                at: scan.byte(start)..scan.byte(scan.at),
            });
        }
    }
    tokens
}

struct Scan {
    text: Vec<(usize, char)>,
    end: usize,
    at: usize,
}

impl Scan {
    /// The mark so far ahead, as the plain one it stands for.
    fn peek(&self, ahead: usize) -> Option<char> {
        self.text.get(self.at + ahead).map(|(_, mark)| plain(*mark))
    }

    fn byte(&self, at: usize) -> usize {
        self.text.get(at).map_or(self.end, |(byte, _)| *byte)
    }

    /// Takes one token, and says what it is; none for what says nothing.
    fn next_kind(&mut self, mark: char) -> Option<Kind> {
        if mark.is_ascii_digit() || vulgar(mark) {
            return Some(self.number_or_label());
        }
        if mark.is_alphabetic() {
            self.word();
            return Some(Kind::Word);
        }
        let starts_line = self.starts_line();
        self.at += 1;
        match mark {
            '"' => Some(Kind::InchSign),
            '\'' if self.peek(0) == Some('\'') => {
                self.at += 1;
                Some(Kind::InchSign)
            }
            // A dash at the start of a line is a bullet.
            '-' if starts_line => Some(Kind::Part),
            '-' => Some(Kind::Dash),
            ':' | '=' => Some(Kind::Colon),
            ',' | '/' => Some(Kind::Part),
            other if parts(other) => Some(Kind::Part),
            // A full stop behind a word, spaces, and what cannot be seen.
            '.' | ' ' | '~' | '±' => None,
            _ => Some(Kind::Stray),
        }
    }

    /// Whether nothing but spaces stands before this on its line, and a space after it.
    fn starts_line(&self) -> bool {
        let before = self.text[..self.at].iter().rev();
        let first = before.map(|(_, mark)| *mark).find(|mark| !matches!(mark, ' ' | '\t'));
        first.is_none_or(|mark| mark == '\n' || mark == '\r') && self.peek(1) == Some(' ')
    }

    /// A number, or a label that begins with one: `2XL`, `10y`.
    fn number_or_label(&mut self) -> Kind {
        let start = self.at;
        self.digits();
        self.decimals(start);
        self.fraction(start);
        let plain_digits = (start..self.at).all(|at| self.text[at].1.is_ascii_digit());
        let name: String = (0..)
            .map_while(|n| self.peek(n))
            .take_while(|m| m.is_alphabetic())
            .collect();
        if name.is_empty() || !plain_digits || is_unit(&name) {
            return Kind::Number;
        }
        self.word();
        Kind::Word
    }

    fn digits(&mut self) -> usize {
        let start = self.at;
        while self.peek(0).is_some_and(|mark| mark.is_ascii_digit()) {
            self.at += 1;
        }
        self.at - start
    }

    /// The number ahead: its value, how many digits it has.
    fn ahead(&self, from: usize) -> (u32, usize) {
        let digits = (from..).map_while(|n| self.peek(n)?.to_digit(10));
        digits.fold((0_u32, 0), |(value, many), digit| {
            (value.saturating_mul(10).saturating_add(digit), many + 1)
        })
    }

    /// Decimals behind a point, or behind a comma where it does not part two sizes.
    fn decimals(&mut self, start: usize) {
        let whole = self.text[start..self.at]
            .iter()
            .filter_map(|(_, mark)| plain(*mark).to_digit(10));
        let whole = whole.fold(0_u32, |value, digit| value.saturating_mul(10).saturating_add(digit));
        let (value, many) = self.ahead(1);
        let decimal = match self.peek(0) {
            Some('.') => many > 0,
            // `96,5` has decimals; `97,103` are two sizes, and so are `86,91` and `30,32`, the second a little larger.
            Some(',') => many == 1 || many == 2 && !(value > whole && value <= whole.saturating_mul(4) / 3),
            _ => false,
        };
        if decimal && self.at > start {
            self.at += 1 + many;
        }
    }

    /// A fraction behind the number, or the number itself as the top of one.
    fn fraction(&mut self, start: usize) {
        let whole = self.at > start;
        let gap = usize::from(whole && matches!(self.peek(0), Some(' ' | '-')));
        if self.peek(gap).is_some_and(vulgar) {
            self.at += gap + 1;
            return;
        }
        if gap == 1 {
            if let Some(length) = self.fraction_ahead(1) {
                self.at += 1 + length;
            }
        } else if self.peek(0) == Some('/') {
            let top = self.at - start;
            self.at = start;
            match self.fraction_ahead(0) {
                Some(length) => self.at += length,
                None => self.at = start + top,
            }
        }
    }

    /// How long the fraction ahead is, if it is one a tape has and not two sizes.
    fn fraction_ahead(&self, from: usize) -> Option<usize> {
        let (top, above) = self.ahead(from);
        let (bottom, below) = self.ahead(from + above + 1);
        let stroke = self.peek(from + above) == Some('/');
        let is_one = above > 0 && stroke && top < bottom && BOTTOMS.contains(&bottom);
        let length = above + 1 + below;
        (is_one && self.peek(from + length) != Some('/')).then_some(length)
    }

    /// Letters and digits, with dashes, strokes and apostrophes between them.
    fn word(&mut self) {
        let inside = |mark: char| mark.is_alphanumeric() && !vulgar(mark);
        while let Some(mark) = self.peek(0) {
            let joins = matches!(mark, '-' | '/' | '\'')
                && self
                    .peek(1)
                    .is_some_and(|next| next.is_alphabetic() || mark != '\'' && self.aged(1));
            if !inside(mark) && !joins {
                break;
            }
            self.at += 1;
        }
    }

    /// Whether a number with letters on it stands ahead, as in `XL-2XL`.
    fn aged(&self, from: usize) -> bool {
        let (_, many) = self.ahead(from);
        many > 0 && self.peek(from + many).is_some_and(char::is_alphabetic)
    }
}

/// Whether a word is a unit of length, weight or count that may stand behind a number. A lone `m` is a size.
pub(super) fn is_unit(word: &str) -> bool {
    const UNITS: [&str; 20] = [
        "cm", "cms", "mm", "in", "ins", "inch", "inches", "metre", "metres", "meter", "meters", "yd", "yds", "yard",
        "yards", "g", "oz", "st", "sts", "stitches",
    ];
    UNITS.iter().any(|unit| unit.eq_ignore_ascii_case(word))
}

/// A half, a quarter and the like in one sign.
fn vulgar(mark: char) -> bool {
    matches!(mark, '¼'..='¾' | '⅐'..='⅞')
}

/// The plain mark that this one stands for.
fn plain(mark: char) -> char {
    match mark {
        '\u{ff10}'..='\u{ff19}' => char::from_digit(mark as u32 - 0xff10, 10).unwrap_or(mark),
        '\u{2010}'..='\u{2015}' | '\u{2212}' | '\u{fe58}' | '\u{fe63}' | '\u{ff0d}' => '-',
        '\u{2044}' | '\u{2215}' => '/',
        '\u{201c}'..='\u{201f}' | '\u{2033}' | '\u{2036}' | '\u{2ba}' => '"',
        '\u{2018}'..='\u{201b}' | '\u{2032}' | '\u{2035}' | '\u{2b9}' | '\u{2bc}' => '\'',
        '：' => ':',
        '\n' | '\r' | '\t' => mark,
        '\u{ad}' | '\u{200b}'..='\u{200f}' | '\u{2060}'..='\u{2069}' | '\u{fe00}'..='\u{fe0f}' | '\u{feff}' => ' ',
        other if other.is_whitespace() => ' ',
        other => other,
    }
}
