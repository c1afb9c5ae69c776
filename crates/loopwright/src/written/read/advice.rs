//! Words that say how and not how many: "being careful not to twist", "loosely". They are passed, and the count is the same
//! without them. Common practice, no source.

use super::super::token::Kind;
use super::super::vocabulary::Key;
use super::Reader;

/// Each begins with a word that is not known by itself.
const ADVICE: &[&[&str]] = &[
    &["being", "careful", "not", "to", "twist"],
    &["be", "careful", "not", "to", "twist"],
    &["taking", "care", "not", "to", "twist"],
    &["take", "care", "not", "to", "twist"],
    &["do", "not", "twist"],
    &["making", "sure", "not", "to", "twist"],
    &["without", "twisting"],
    &["loosely"],
    &["firmly"],
    &["carefully"],
    &["slipping", "markers", "as", "you", "come", "to", "them"],
    &["slipping", "markers", "as", "you", "go"],
    &["slipping", "all", "markers"],
    &["slipping", "markers"],
    &["slipping", "marker"],
    &["with", "rs", "facing"],
    &["with", "ws", "facing"],
    &["with", "right", "side", "facing"],
    &["with", "wrong", "side", "facing"],
];

/// What it is worked with begins with one of these, and ends with one of those, so many words on at most.
const WITH: &[&str] = &["using", "with"];
const TOOLS: &[&str] = &["method", "needle", "needles", "yarn", "mc", "cc"];
const LONGEST: usize = 10;

impl Reader<'_> {
    /// Passes a piece of advice, with the stitches it is about, if one stands here.
    pub(super) fn advice(&mut self) -> bool {
        let start = self.at;
        if self.attempt(Self::worked_with).is_some() {
            self.pass_from(start);
            return true;
        }
        let Some(words) = ADVICE.iter().find(|words| self.stands_here(words)) else {
            return false;
        };
        self.at += words.len();
        let _stitches = self.attempt(|reader| {
            reader.skip(&[Key::The, Key::These]);
            reader.at += usize::from(reader.stands_here(&["your"]));
            reader.take(Key::Stitches).then_some(())
        });
        self.pass_from(start);
        true
    }

    /// `using the long-tail method`, `with US 6 needles`, `with MC`; but not `with yarn in front`, which is a manner.
    fn worked_with(&mut self) -> Option<()> {
        WITH.iter().any(|word| self.takes_word(word)).then_some(())?;
        for _ in 0..LONGEST {
            let is_tool = TOOLS.iter().any(|word| self.is_word(self.at, word));
            match self.here()? {
                Kind::Word(_) | Kind::Number(_) | Kind::Odd | Kind::Mark('-' | '/') => self.at += 1,
                _ => return None,
            }
            if is_tool {
                return (!self.is_key(self.at, Key::In)).then_some(());
            }
        }
        None
    }

    /// Whether these words stand here, one after the other.
    pub(super) fn stands_here(&self, words: &[&str]) -> bool {
        let mut words = words.iter().zip(self.at..);
        words.all(|(word, at)| self.is_word(at, word))
    }

    /// Whether a token is this word, whatever it means.
    pub(super) fn is_word(&self, at: usize, word: &str) -> bool {
        let token = self.tokens.get(at);
        token.is_some_and(|token| {
            matches!(token.kind, Kind::Word(_)) && token.place.text(self.text).eq_ignore_ascii_case(word)
        })
    }

    /// Takes these words if they stand here.
    pub(super) fn take_words(&mut self, words: &[&str]) -> bool {
        let are_here = self.stands_here(words);
        self.at += if are_here { words.len() } else { 0 };
        are_here
    }

    /// Takes this word if it stands here, whatever it means.
    pub(super) fn takes_word(&mut self, word: &str) -> bool {
        let is_here = self.is_word(self.at, word);
        self.at += usize::from(is_here);
        is_here
    }
}
