//! Texts made of other texts: cut, doubled, put together, with a sign in the place of another. The same seed makes the same
//! texts, so that a run of tests is the same on any machine.

/// A text is never longer than this, in signs.
const LONGEST: usize = 2_000;

/// At most so many changes make one text of another.
const MOST_CHANGES: usize = 6;

/// Signs that texts have been misread at, or that end something.
const SIGNS: &str =
    "0123456789½⅞¹²⁄/.,:;-–−+×x*()[]{}<>\"'”″|#&=%_ \t\n\u{a0}\u{202f}\u{200b}\u{feff}\0∞٣é🧶ſKkpPSTcmin\\\u{7f}";

/// Makes texts without an end.
pub struct MadeUp {
    state: u64,
    texts: Vec<Vec<char>>,
    signs: Vec<char>,
}

impl MadeUp {
    /// From these texts, of which there is one at least.
    pub fn of<'a>(texts: impl IntoIterator<Item = &'a str>, seed: u64) -> Self {
        let texts: Vec<Vec<char>> = texts.into_iter().map(|text| text.chars().collect()).collect();
        assert!(!texts.is_empty(), "a text to begin with");
        // A state of nought stays nought.
        Self {
            state: seed | 1,
            texts,
            signs: SIGNS.chars().collect(),
        }
    }

    /// The next text.
    pub fn text(&mut self) -> String {
        let mut text = self.one_of_them();
        for _ in 0..=self.below(MOST_CHANGES) {
            self.change(&mut text);
            text.truncate(LONGEST);
        }
        text.into_iter().collect()
    }

    fn change(&mut self, text: &mut Vec<char>) {
        let (from, to) = self.piece_of(text);
        match self.below(7) {
            0 => drop(text.drain(from..to)),
            1 => {
                let piece = text[from..to].to_vec();
                insert(text, to, &piece);
            }
            2 => {
                let sign = self.sign();
                insert(text, from, &[sign]);
            }
            3 if from < text.len() => text[from] = self.sign(),
            4 => {
                let other = self.one_of_them();
                let (start, end) = self.piece_of(&other);
                insert(text, from, &other[start..end]);
            }
            5 => {
                let piece = text[from..to].repeat(2 + self.below(8));
                insert(text, to, &piece);
            }
            _ => text.truncate(to),
        }
    }

    fn one_of_them(&mut self) -> Vec<char> {
        let place = self.below(self.texts.len());
        self.texts[place].clone()
    }

    fn sign(&mut self) -> char {
        let place = self.below(self.signs.len());
        self.signs[place]
    }

    /// A piece of a text, most often a short one.
    fn piece_of(&mut self, text: &[char]) -> (usize, usize) {
        let from = self.below(text.len() + 1);
        let most = if self.below(4) == 0 { text.len() } else { 6 };
        (from, (from + self.below(most + 1)).min(text.len()))
    }

    /// A number below this one, which is not nought (xorshift).
    fn below(&mut self, limit: usize) -> usize {
        self.state ^= self.state << 13;
        self.state ^= self.state >> 7;
        self.state ^= self.state << 17;
        (self.state >> 11) as usize % limit
    }
}

fn insert(text: &mut Vec<char>, at: usize, piece: &[char]) {
    drop(text.splice(at..at, piece.iter().copied()));
}
