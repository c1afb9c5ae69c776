//! Rust text with everything taken out that is not code, so that a rule does not stumble over a word in a comment.

/// The text with comments, strings and characters blanked; every line keeps its place.
pub fn code_only(text: &str) -> String {
    let mut code = String::with_capacity(text.len());
    let mut rest = text;
    while !rest.is_empty() {
        let length = blank_length(rest, &code);
        let (piece, blank) = match length {
            0 => (rest.split_at(rest.chars().next().map_or(1, char::len_utf8)).0, false),
            _ => (&rest[..length], true),
        };
        if blank {
            code.extend(piece.chars().map(|letter| if letter == '\n' { '\n' } else { ' ' }));
        } else {
            code.push_str(piece);
        }
        rest = &rest[piece.len()..];
    }
    code
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

/// How much at the beginning of `rest` is a comment, a string or a character; 0 if it is code.
fn blank_length(rest: &str, before: &str) -> usize {
    let within_word = before.ends_with(|letter: char| letter.is_alphanumeric() || letter == '_');
    if rest.starts_with("//") {
        rest.find('\n').unwrap_or(rest.len())
    } else if rest.starts_with("/*") {
        comment_length(rest)
    } else if rest.starts_with('"') {
        quoted_length(rest)
    } else if !within_word && rest.trim_start_matches(['b', 'c']).starts_with('r') {
        raw_length(rest)
    } else if rest.starts_with('\'') {
        character_length(rest)
    } else {
        0
    }
}

fn comment_length(rest: &str) -> usize {
    let mut depth = 0_usize;
    let mut at = 0;
    while at < rest.len() {
        if rest[at..].starts_with("/*") {
            depth += 1;
            at += 2;
        } else if rest[at..].starts_with("*/") {
            depth -= 1;
            at += 2;
            if depth == 0 {
                return at;
            }
        } else {
            at += rest[at..].chars().next().map_or(1, char::len_utf8);
        }
    }
    rest.len()
}

fn quoted_length(rest: &str) -> usize {
    let mut escaped = false;
    for (at, letter) in rest.char_indices().skip(1) {
        match letter {
            _ if escaped => escaped = false,
            '\\' => escaped = true,
            '"' => return at + 1,
            _ => {}
        }
    }
    rest.len()
}

/// `r"…"`, `r#"…"#` and so on; 0 for a word that only begins with an r.
fn raw_length(rest: &str) -> usize {
    let Some(at) = rest.find('r') else { return 0 };
    let marks = rest[at + 1..].len() - rest[at + 1..].trim_start_matches('#').len();
    let open = at + 1 + marks;
    if !rest[open..].starts_with('"') {
        return 0;
    }
    let close = format!("\"{}", "#".repeat(marks));
    let end = rest[open + 1..].find(&close);
    end.map_or(rest.len(), |end| open + 1 + end + close.len())
}

/// `'x'` or `'\…'`; 0 for a lifetime.
fn character_length(rest: &str) -> usize {
    let mut letters = rest.char_indices().skip(1);
    match letters.next() {
        Some((_, '\\')) => rest[3.min(rest.len())..].find('\'').map_or(0, |at| at + 4),
        Some(_) => letters
            .next()
            .filter(|(_, letter)| *letter == '\'')
            .map_or(0, |(at, _)| at + 1),
        None => 0,
    }
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
