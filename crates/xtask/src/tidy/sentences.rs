//! No sentence stands outside the words: in the app's other rooms a string may be a name, a class, a path of a drawing or a
//! named state, and nothing that somebody reads.

use super::{
    Finding,
    code::{strings, without_tests},
};

const APP: &str = "crates/loopwright-app/src/";
const WORDS: &str = "crates/loopwright-app/src/words/";

/// Where strings are names of named states, written as links are.
const STATE: &str = "State::new(";

/// Every string that reads like a sentence or a label, outside the words.
pub fn check(path: &str, text: &str) -> Vec<Finding> {
    if !path.starts_with(APP) || path.starts_with(WORDS) {
        return Vec::new();
    }
    let code = without_tests(text);
    let read = strings(&code)
        .into_iter()
        .filter(|string| reads_like_words(&string.written));
    let lines: Vec<&str> = code.lines().collect();
    read.filter(|string| !is_for_the_program(&lines, string.line))
        .map(|string| Finding {
            place: format!("{path}:{}", string.line),
            broken: format!("{} is a sentence or a label; it belongs to the words", string.written),
        })
        .collect()
}

/// Two words with a space between, one of them with three letters at least: a class of several names reads so too, and is
/// told apart by having no large letter and no mark.
fn reads_like_words(written: &str) -> bool {
    let inside = written.trim_matches(['"', 'r', '#']);
    let words: Vec<&str> = inside.split(' ').collect();
    let is_word = |word: &&&str| word.chars().filter(|letter| letter.is_alphabetic()).count() >= 3;
    if words.len() < 2 || words.iter().filter(is_word).count() < 1 || inside.contains('=') {
        return false;
    }
    let is_class = |word: &&str| word.chars().all(|letter| letter.is_ascii_lowercase() || letter == '-');
    !words.iter().all(is_class)
}

/// Whether a line holds what only the program or its maker reads.
fn is_for_the_program(lines: &[&str], line: usize) -> bool {
    let here = lines.get(line.saturating_sub(1)).copied().unwrap_or_default();
    let before = lines.get(line.saturating_sub(2)).copied().unwrap_or_default();
    here.contains(STATE) || before.contains(STATE) || here.contains("assert") || here.contains("#[")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn found(text: &str) -> usize {
        check("crates/loopwright-app/src/part/a.rs", text).len()
    }

    #[test]
    fn a_sentence_outside_the_words_is_found() {
        assert_eq!(found("//! x\nfn f() { says(\"p\", \"Use it now\"); }"), 1);
        assert_eq!(found("//! x\nfn f() { format!(\"{count} stitches, or more\"); }"), 1);
        assert_eq!(
            check(
                "crates/loopwright-app/src/words/english/a.rs",
                "//! x\nconst A: &str = \"Use it\";"
            )
            .len(),
            0
        );
    }

    #[test]
    fn names_classes_paths_and_states_are_let_be() {
        let text = "//! Some words.\nconst A: &[&str] = &[\"marks fewer open\", \"M8 30H44\", \"0 0 104 104\", \"answer\", \"10 cm\"];\n\
            const S: State = State::new(\"two\", \"sizes=81 (86, 91)&bust=96\");\n#[cfg(test)]\nmod t { const A: &str = \"Use it now\"; }";
        assert_eq!(found(text), 0);
    }
}
