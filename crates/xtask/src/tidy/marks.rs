//! No value is without its mark: whoever names a source says whether it was read.
//!
//! That a row of a table has one is held by the compiler, since a `Source` is made by `Taken` alone. Here is what it cannot
//! hold: that no mark of a published value is made past it, and that comments and sentences which name a source say how
//! sure they are.

use super::{
    Finding,
    code::{code_only, line_of, strings, without_tests},
};

const MATHS: &str = "crates/loopwright/src/";
const WORDS: &str = "crates/loopwright-app/src/words/";

/// Where a mark may be named: the marks themselves, and the sources that have them.
const MAKERS: [&str; 2] = [
    "crates/loopwright/src/tables/mod.rs",
    "crates/loopwright/src/tables/source.rs",
];

/// Marks of what was taken from outside.
const MADE: [&str; 5] = [
    "Certainty::Read",
    "Certainty::Quoted",
    "Certainty::FromMemory",
    "Certainty::{",
    "Certainty::*",
];

/// Published works, by what they are called in a sentence.
const WORKS: [&str; 10] = [
    "Munden",
    "Spencer",
    "Peirce",
    "Bresenham",
    "Toussaint",
    "Craft Yarn Council",
    "EN 13402",
    "NIST",
    "ISO 1144",
    "Texcoms",
];

/// Ways to say how sure a value is.
const MARKS: [&str; 9] = [
    "was read",
    "were read",
    "was not read",
    "as others",
    "as a copy",
    "from memory",
    "no source",
    "arithmetic",
    "geometry",
];

/// What is taken from outside and does not say how sure it is.
pub fn check(path: &str, text: &str, for_tests: bool) -> Vec<Finding> {
    if for_tests || !path.ends_with(".rs") {
        return Vec::new();
    }
    if path.starts_with(WORDS) {
        return sentences(path, text);
    }
    if path.starts_with(MATHS) {
        let mut findings = comments(path, text);
        if !MAKERS.contains(&path) {
            findings.extend(made(path, text));
        }
        return findings;
    }
    Vec::new()
}

/// Marks that are made past `Taken`.
fn made(path: &str, text: &str) -> Vec<Finding> {
    let code = without_tests(&code_only(text));
    let found = MADE.iter().flat_map(|mark| code.match_indices(mark));
    found
        .map(|(at, mark)| Finding {
            place: format!("{path}:{}", line_of(&code, at)),
            broken: format!("`{mark}` beside its source: make it by `Taken`, which lists it"),
        })
        .collect()
}

/// Paragraphs of comments that name a source without a mark.
fn comments(path: &str, text: &str) -> Vec<Finding> {
    let mut findings = Vec::new();
    let (mut paragraph, mut begins) = (String::new(), 1);
    for (at, line) in text.lines().chain([""]).enumerate() {
        let comment = line.trim_start();
        let said = comment.strip_prefix("//!").or_else(|| comment.strip_prefix("///"));
        match said.map(str::trim).filter(|said| !said.is_empty()) {
            Some(said) => {
                if paragraph.is_empty() {
                    begins = at + 1;
                }
                paragraph.push_str(said);
                paragraph.push(' ');
            }
            None => {
                let names = paragraph.contains("Source:") || paragraph.contains("Source of");
                if names && !has_mark(&paragraph) && !paragraph.contains("see [`") {
                    findings.push(Finding {
                        place: format!("{path}:{begins}"),
                        broken: "a source is named, and not whether it was read".to_owned(),
                    });
                }
                paragraph.clear();
            }
        }
    }
    findings
}

/// Sentences of the page that name a published work without a mark. A name alone, as on a button, has its mark beside it.
fn sentences(path: &str, text: &str) -> Vec<Finding> {
    let said = strings(&without_tests(text)).into_iter().filter(|string| {
        let written = &string.written;
        let is_sentence = written.trim_end_matches('"').ends_with('.');
        is_sentence && WORKS.iter().any(|work| written.contains(work)) && !has_mark(written)
    });
    said.map(|string| Finding {
        place: format!("{path}:{}", string.line),
        broken: format!("{} names a source and does not say whether it was read", string.written),
    })
    .collect()
}

fn has_mark(text: &str) -> bool {
    let text = text.to_lowercase();
    MARKS.iter().any(|mark| text.contains(mark))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn found(path: &str, text: &str) -> usize {
        check(path, text, false).len()
    }

    #[test]
    fn a_mark_that_is_made_past_its_source_is_found() {
        let text = "//! x\nconst A: Row = Row { certainty: Certainty::Read };";
        assert_eq!(found("crates/loopwright/src/tables/body.rs", text), 1);
        assert_eq!(
            found("crates/loopwright/src/yarn/a.rs", "//! x\nuse Certainty::{Read};"),
            1
        );
        assert_eq!(found("crates/loopwright/src/tables/source.rs", text), 0);
        let let_be = "//! Certainty::Read\nfn f() { Certainty::Practice }\n#[cfg(test)]\nmod t { const A: C = Certainty::Read; }";
        assert_eq!(found("crates/loopwright/src/tables/body.rs", let_be), 0);
    }

    #[test]
    fn a_comment_that_names_a_source_without_a_mark_is_found() {
        let path = "crates/loopwright/src/a.rs";
        assert_eq!(
            found(path, "//! What it is.\n//!\n//! Source: somebody,\n//! in 1959.\n"),
            1
        );
        assert_eq!(found(path, "//! Source: somebody,\n//! as others quote it.\n"), 0);
        assert_eq!(
            found(
                path,
                "//! x\n/// Source: somebody.\nfn f() {}\n\n/// From memory.\nfn g() {}\n"
            ),
            1
        );
    }

    #[test]
    fn a_sentence_that_names_a_work_without_a_mark_is_found() {
        let path = "crates/loopwright-app/src/words/english/a.rs";
        assert_eq!(found(path, "//! x\nconst A: &str = \"After Munden.\";"), 1);
        assert_eq!(found(path, "//! x\nconst A: &str = \"After Munden, from memory.\";"), 0);
        assert_eq!(found(path, "//! x\nconst A: &str = \"Women, EN 13402-3\";"), 0);
    }
}
