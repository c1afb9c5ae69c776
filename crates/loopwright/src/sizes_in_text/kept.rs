//! Her words as they are kept: a text of a line each, `list 0 0 Cast on 96 (108) sts`. What a later version wrote is passed
//! over when it is read, and stays where it is when something is added.
//!
//! ```text
//! decision  = verdict nth which words     verdict = "list" | "all" | size "=" entry, counted from one
//! from line = size which words            the size counted from one
//! ```

use super::{Decision, FromLine, LinePlace, ListPlace, Verdict};
use crate::bounds::Bounds;
use crate::units::count;

/// More lines than any text has.
const PLACES: Bounds<u32> = Bounds::new(0, 1_000_000);

/// What she said about lists, of a kept text.
pub fn read_decisions(kept: &str) -> Vec<Decision> {
    kept.lines().filter_map(read_decision).collect()
}

/// The kept text with one more of her words; about the same list a new one takes the place of the old.
pub fn with_decision(kept: &str, decision: &Decision) -> String {
    let Decision { list, verdict } = decision;
    let verdict = match verdict {
        Verdict::List => "list".to_owned(),
        Verdict::ForAll => "all".to_owned(),
        Verdict::Number { size, entry } => format!("{}={}", size + 1, entry + 1),
    };
    let ListPlace { line, nth } = list;
    let said = format!("{verdict} {nth} {} {}", line.which, line.words);
    let is_replaced = |old: &Decision| {
        let are_numbers = |old| matches!((old, decision.verdict), (Verdict::Number { size: one, .. }, Verdict::Number { size: other, .. }) if one != other);
        old.list == decision.list && !are_numbers(old.verdict)
    };
    with(kept, &said, |line| {
        read_decision(line).as_ref().is_some_and(is_replaced)
    })
}

/// The kept text without her word about a list.
pub fn without_decision(kept: &str, list: &ListPlace) -> String {
    without(kept, |line| read_decision(line).is_some_and(|old| old.list == *list))
}

/// The lines from which on another size is hers, of a kept text.
pub fn read_from_lines(kept: &str) -> Vec<FromLine> {
    kept.lines().filter_map(read_from_line).collect()
}

/// The kept text with one more; of the same line a new one takes the place of the old.
pub fn with_from_line(kept: &str, from: &FromLine) -> String {
    let said = format!("{} {} {}", from.size + 1, from.line.which, from.line.words);
    with(kept, &said, |line| {
        read_from_line(line).is_some_and(|old| old.line == from.line)
    })
}

/// The kept text without what was said of a line.
pub fn without_from_line(kept: &str, place: &LinePlace) -> String {
    without(kept, |line| read_from_line(line).is_some_and(|old| old.line == *place))
}

/// The size that is chosen, of its number as it is kept.
pub fn read_size(kept: &str) -> Option<usize> {
    place(kept)?.checked_sub(1)
}

/// A size as it is kept: its number, counted from one.
pub fn print_size(size: usize) -> String {
    size.saturating_add(1).to_string()
}

fn with(kept: &str, said: &str, is_replaced: impl Fn(&str) -> bool) -> String {
    let rest = without(kept, is_replaced);
    if rest.is_empty() {
        said.to_owned()
    } else {
        [&rest, "\n", said].concat()
    }
}

fn without(kept: &str, is_meant: impl Fn(&str) -> bool) -> String {
    let rest: Vec<&str> = kept.lines().filter(|line| !is_meant(line)).collect();
    rest.join("\n")
}

fn read_decision(line: &str) -> Option<Decision> {
    let mut parts = line.splitn(4, ' ');
    let verdict = match parts.next()? {
        "list" => Verdict::List,
        "all" => Verdict::ForAll,
        number => {
            let (size, entry) = number.split_once('=')?;
            let (size, entry) = (place(size)?.checked_sub(1)?, place(entry)?.checked_sub(1)?);
            Verdict::Number { size, entry }
        }
    };
    let nth = place(parts.next()?)?;
    let line = line_place(parts.next()?, parts.next().unwrap_or_default())?;
    let list = ListPlace { line, nth };
    Some(Decision { list, verdict })
}

fn read_from_line(line: &str) -> Option<FromLine> {
    let mut parts = line.splitn(3, ' ');
    let size = read_size(parts.next()?)?;
    let line = line_place(parts.next()?, parts.next().unwrap_or_default())?;
    Some(FromLine { line, size })
}

fn line_place(which: &str, words: &str) -> Option<LinePlace> {
    let which = place(which)?;
    let words = words.to_owned();
    Some(LinePlace { words, which })
}

fn place(text: &str) -> Option<usize> {
    count::read(text, PLACES).ok().map(|read| read.value as usize)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn line(words: &str, which: usize) -> LinePlace {
        LinePlace {
            words: words.into(),
            which,
        }
    }

    #[test]
    fn her_words_are_read_as_they_were_kept() {
        let list = ListPlace {
            line: line("Cast on 96 (108) sts", 2),
            nth: 1,
        };
        let said = |verdict| Decision {
            list: list.clone(),
            verdict,
        };
        let number = |size| said(Verdict::Number { size, entry: 1 });
        let kept = with_decision("", &said(Verdict::List));
        assert_eq!(kept, "list 1 2 Cast on 96 (108) sts");
        let kept = with_decision(&kept, &said(Verdict::ForAll));
        assert_eq!(read_decisions(&kept), [said(Verdict::ForAll)]);
        // A number of one size says nothing of another one's.
        let kept = with_decision(&with_decision(&kept, &number(0)), &number(1));
        assert_eq!(read_decisions(&kept), [number(0), number(1)]);
        assert_eq!(without_decision(&kept, &list), "");
    }

    #[test]
    fn what_is_not_understood_is_passed_over_and_stays() {
        let kept = "maybe 0 0 Cast on\n2 0 Body";
        assert_eq!(read_decisions(kept), []);
        let from = |words: &str, size| FromLine {
            line: line(words, 0),
            size,
        };
        assert_eq!(read_from_lines(kept), [from("Body", 1)]);
        assert_eq!(with_from_line(kept, &from("Body", 0)), "maybe 0 0 Cast on\n1 0 Body");
        assert_eq!(without_from_line(kept, &line("Body", 0)), "maybe 0 0 Cast on");
        assert_eq!(read_from_lines("0 0 Body\n-1 0 Body\n\n3"), []);
    }

    proptest! {
        #[test]
        fn any_line_comes_back(words in "[^\r\n]{0,20}", which in 0_usize..9, size in 0_usize..64) {
            let from = FromLine { line: line(words.trim(), which), size };
            prop_assert_eq!(read_from_lines(&with_from_line("", &from)), [from]);
        }

        #[test]
        fn any_text_is_read(kept in ".{0,60}") {
            let _ = (read_decisions(&kept), read_from_lines(&kept));
        }
    }
}
