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
];

impl Reader<'_> {
    /// Passes a piece of advice, with the stitches it is about, if one stands here.
    pub(super) fn advice(&mut self) -> bool {
        let Some(words) = ADVICE.iter().find(|words| self.stands_here(words)) else {
            return false;
        };
        let start = self.at;
        self.at += words.len();
        let _stitches = self.attempt(|reader| {
            reader.skip(&[Key::The, Key::These]);
            reader.at += usize::from(reader.stands_here(&["your"]));
            reader.take(Key::Stitches).then_some(())
        });
        self.pass_from(start);
        true
    }

    /// Whether these words stand here, one after the other.
    fn stands_here(&self, words: &[&str]) -> bool {
        let is_word = |at: usize, word: &str| {
            let token = self.tokens.get(at);
            token.is_some_and(|token| {
                matches!(token.kind, Kind::Word(_)) && token.place.text(self.text).eq_ignore_ascii_case(word)
            })
        };
        let mut words = words.iter().zip(self.at..);
        words.all(|(word, at)| is_word(at, word))
    }
}
