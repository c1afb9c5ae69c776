//! Rust text with everything taken out that is not code, so that a rule does not stumble over a word in a comment; and
//! the strings alone, for a rule about those.

use proc_macro2::{Span, TokenStream, TokenTree};
use std::str::FromStr;

/// The text with comments, strings and characters blanked; every line keeps its place. A text that is no Rust stays as it
/// is.
pub fn code_only(text: &str) -> String {
    let Ok(tokens) = TokenStream::from_str(text) else {
        return text.to_owned();
    };
    let blank = |letter: char| {
        if letter == '\n' {
            "\n".to_owned()
        } else {
            " ".repeat(letter.len_utf8())
        }
    };
    let mut code: String = text.chars().map(blank).collect();
    keep(tokens, text, &mut code);
    code
}

/// A string in a source, with the line it stands in.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Text {
    /// The line, counted from 1.
    pub line: usize,
    /// What stands between its quotes, as it is written.
    pub written: String,
}

/// The strings of a source, without those of its comments.
pub fn strings(text: &str) -> Vec<Text> {
    let mut found = Vec::new();
    if let Ok(tokens) = TokenStream::from_str(text) {
        gather(tokens, text, &mut found);
    }
    found
}

/// Puts the tokens back that are code. A comment for the documentation is a token too, but not as it stands in the text.
fn keep(tokens: TokenStream, text: &str, code: &mut String) {
    for token in tokens {
        match token {
            TokenTree::Group(group) => {
                put_back(group.span_open(), text, code);
                put_back(group.span_close(), text, code);
                keep(group.stream(), text, code);
            }
            TokenTree::Ident(ident) if ident == source(ident.span(), text) => {
                put_back(ident.span(), text, code);
            }
            TokenTree::Punct(punct) if source(punct.span(), text) == punct.as_char().to_string() => {
                put_back(punct.span(), text, code);
            }
            TokenTree::Literal(literal) if !is_text(&literal.to_string()) => put_back(literal.span(), text, code),
            TokenTree::Ident(_) | TokenTree::Punct(_) | TokenTree::Literal(_) => {}
        }
    }
}

fn gather(tokens: TokenStream, text: &str, found: &mut Vec<Text>) {
    for token in tokens {
        match token {
            TokenTree::Group(group) => gather(group.stream(), text, found),
            TokenTree::Literal(literal) => {
                let written = literal.to_string();
                // What stands in the documentation was no literal in the text.
                if is_text(&written) && source(literal.span(), text) == written {
                    let line = literal.span().start().line;
                    found.push(Text { line, written });
                }
            }
            TokenTree::Ident(_) | TokenTree::Punct(_) => {}
        }
    }
}

fn is_text(literal: &str) -> bool {
    literal.contains(['"', '\''])
}

fn source(span: Span, text: &str) -> &str {
    text.get(span.byte_range()).unwrap_or_default()
}

fn put_back(span: Span, text: &str, code: &mut String) {
    let range = span.byte_range();
    // The brackets of a comment for the documentation have the place of the comment.
    if range.len() <= 1
        || source(span, text)
            .chars()
            .all(|letter| letter.is_alphanumeric() || "_#.+-".contains(letter))
    {
        code.replace_range(range.clone(), source(span, text));
    }
}

/// The code without the items that are compiled for tests only.
pub fn without_tests(code: &str) -> String {
    let mut kept = code.to_owned();
    while let Some(start) = kept.find("#[cfg(test)]") {
        let body = kept[start..].find(['{', ';']).map(|at| at + start);
        let end = match body {
            Some(at) if kept[at..].starts_with('{') => block_end(&kept, at),
            Some(at) => at + 1,
            None => kept.len(),
        };
        let blank: String = kept[start..end]
            .chars()
            .map(|c| if c == '\n' { '\n' } else { ' ' })
            .collect();
        kept.replace_range(start..end, &blank);
    }
    kept
}

/// Where the block ends whose opening bracket stands at `open`, behind its closing bracket.
pub fn block_end(code: &str, open: usize) -> usize {
    let mut depth = 0_usize;
    for (at, letter) in code[open..].char_indices() {
        match letter {
            '{' | '(' | '[' => depth += 1,
            '}' | ')' | ']' => depth = depth.saturating_sub(1),
            _ => continue,
        }
        if depth == 0 {
            return open + at + letter.len_utf8();
        }
    }
    code.len()
}

/// The line, counted from 1, in which a place stands.
pub fn line_of(text: &str, at: usize) -> usize {
    text[..at].matches('\n').count() + 1
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_code_is_left() {
        let text = "a // x\nb /* x /* x */ x */ c \"x\\\"x\" d r#\"x\"x\"# e 'x' '\\'' '\\u{1F9F6}' f<'z> for";
        let code = code_only(text);
        assert_eq!(code.split_whitespace().collect::<String>(), "abcdef<'z>for");
        assert_eq!(code.matches('\n').count(), 1);
    }

    #[test]
    fn names_that_end_in_r_before_a_string_are_code() {
        assert_eq!(code_only("for \"x\" bar\"y\"").trim_end(), "for     bar");
    }

    #[test]
    fn tests_are_taken_out_and_nothing_else() {
        let code = without_tests("a\n#[cfg(test)]\nmod t { x { } }\nb\n#[cfg(test)]\nuse x;\nc");
        assert_eq!(code.split_whitespace().collect::<String>(), "abc");
    }

    #[test]
    fn lines_are_counted_from_one() {
        assert_eq!((line_of("a\nb", 0), line_of("a\nb", 2)), (1, 2));
    }
}
