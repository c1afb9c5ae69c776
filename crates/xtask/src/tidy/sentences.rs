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
pub fn check(path: &str, text: &str, for_tests: bool) -> Vec<Finding> {
    if for_tests || !path.starts_with(APP) || path.starts_with(WORDS) {
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

/// A value of SVG's that reads like two words and is none of ours.
const NO_WORDS: [&str; 1] = ["xMidYMid slice"];

/// A word of three letters at least, and something else beside it. A class of several names reads so too, and is told
/// apart by having no large letter and no mark.
fn reads_like_words(written: &str) -> bool {
    let inside = written.trim_matches(['"', 'r', '#']);
    if NO_WORDS.contains(&inside) || inside.contains('=') {
        return false;
    }
    let said = without_places(inside);
    let words: Vec<&str> = said.split_whitespace().collect();
    let is_word = |word: &&&str| {
        let letters = word.trim_matches(|mark: char| mark.is_ascii_punctuation());
        letters.chars().count() >= 3 && letters.chars().all(char::is_alphabetic)
    };
    let is_class = |word: &&str| word.chars().all(|letter| letter.is_ascii_lowercase() || letter == '-');
    let beside = words.len() > 1 || inside.contains('{') && said.contains(' ');
    beside && words.iter().any(|word| is_word(&word)) && !words.iter().all(is_class)
}

/// The text without the places for values.
fn without_places(text: &str) -> String {
    let (mut left, mut depth) = (String::new(), 0_u32);
    for letter in text.chars() {
        match letter {
            '{' => depth += 1,
            '}' => depth = depth.saturating_sub(1),
            _ if depth == 0 => left.push(letter),
            _ => {}
        }
    }
    left
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
        check("crates/loopwright-app/src/part/a.rs", text, false).len()
    }

    #[test]
    fn a_sentence_outside_the_words_is_found() {
        assert_eq!(found("//! x\nfn f() { says(\"p\", \"Use it now\"); }"), 1);
        assert_eq!(found("//! x\nfn f() { format!(\"{count} stitches, or more\"); }"), 1);
        assert_eq!(
            check(
                "crates/loopwright-app/src/words/english/a.rs",
                "//! x\nconst A: &str = \"Use it\";",
                false
            )
            .len(),
            0
        );
    }

    #[test]
    fn names_classes_paths_and_states_are_let_be() {
        let text = "//! Some words.\nconst A: &[&str] = &[\"marks fewer open\", \"M8 30H44\", \"M60 216V160H84V112\", \"0 0 {wide} {high}\", \"{tool}: {state}\", \"0 0 104 104\", \"answer\", \"10 cm\"];\n\
            const S: State = State::new(\"two\", \"sizes=81 (86, 91)&bust=96\");\n#[cfg(test)]\nmod t { const A: &str = \"Use it now\"; }";
        assert_eq!(found(text), 0);
    }
}
