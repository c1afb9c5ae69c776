//! A pattern in five sizes that comes out, and faults sown into it, each of which is pointed at in its line.

use super::told::{fault, told};
use super::*;

const SLEEVE: &str = include_str!("worked.txt");
const SOWN: &str = include_str!("sown.txt");

/// Where the first fault of a text is and what is said of it: a word that cannot be read, or a line that does not come out.
fn pointed_at(text: &str) -> Option<String> {
    let answer = answer(&Question::about(text)).unwrap();
    let line_at = |place: Place| answer.lines.iter().find(|line| line.place.end >= place.start);
    let called = |line: &LineWorked| {
        let first = line.place.text(text).split(' ').next().unwrap_or_default();
        line.called.clone().unwrap_or_else(|| first.to_owned())
    };
    for unread in &answer.faults {
        let line = line_at(unread.place)?;
        // A sentence that is no row is left where it stands.
        if line.kind == LineKind::Unread {
            return Some(format!("{}: {}", called(line), fault(text, unread)));
        }
    }
    let first = answer.failures.first()?;
    let (line, size) = (&answer.lines[first.line], &answer.sizes[first.size]);
    Some(format!("{}, size {size}: {}", called(line), told(text, &first.worked)))
}

#[test]
fn the_clean_pattern_raises_nothing() {
    let answer = answer(&Question::about(SLEEVE)).unwrap();
    assert_eq!(answer.sizes, ["XS", "S", "M", "L", "XL"]);
    assert_eq!((answer.worked, answer.failing, answer.unread), (20, 0, 0));
    assert_eq!(pointed_at(SLEEVE), None);
    let after = |line: usize| {
        answer.lines[line]
            .sizes
            .iter()
            .map(|worked| worked.after)
            .collect::<Vec<_>>()
    };
    let bound_off = answer.lines.len() - 1;
    assert_eq!(after(bound_off), [0; 5]);
    assert_eq!(after(bound_off - 1), [12, 16, 16, 20, 20]);
}

#[test]
fn every_fault_that_is_sown_is_pointed_at() {
    let lines = SOWN.lines().filter(|line| !line.is_empty() && !line.starts_with('#'));
    let (kinds, faults): (Vec<&str>, Vec<&str>) = lines.partition(|line| !line.contains(" => "));
    assert_eq!((kinds.len(), faults.len()), (10, 30));
    let mut wrong = Vec::new();
    for line in faults {
        let [clean, spoiled, expected] = line.split(" => ").collect::<Vec<_>>()[..] else {
            panic!("not three parts: {line}");
        };
        assert_eq!(SLEEVE.matches(clean).count(), 1, "{clean}");
        let pointed = pointed_at(&SLEEVE.replace(clean, spoiled));
        if pointed.as_deref() != Some(expected) {
            wrong.push(format!("{clean} => {spoiled} => {}", pointed.unwrap_or_default()));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}
