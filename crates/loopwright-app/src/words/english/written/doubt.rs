//! What may be meant in two ways, with what comes of both.

use super::super::intl::{fill_pattern_with, stitches};
use super::super::page::quoted;
use super::outcome::what;
use super::{count, line_name, size_name};
use loopwright::written::{Answer, Doubt, LineWorked, Otherwise, Outcome, Worked};

/// What a line was taken to mean, and what comes of it when it is meant in the other way.
pub fn doubt(answer: &Answer, line: &LineWorked, at: usize, size: usize, worked: &Worked, other: &Otherwise) -> String {
    let (usual, unusual) = ways(other.doubt);
    let (taken, left) = if other.is_usual {
        (unusual, usual)
    } else {
        (usual, unusual)
    };
    let name = match size_name(answer, size) {
        Some(size) => fill_pattern_with("@, size @", &[], &[&line_name(line, at), size]),
        None => line_name(line, at),
    };
    let (now, then) = (came(worked.outcome, worked.after), came(other.outcome, other.after));
    fill_pattern_with(
        "@: taken as @, it @. Taken as @, it @.",
        &[],
        &[&name, taken, &now, left, &then],
    )
}

/// The usual way, and the other one.
const fn ways(doubt: Doubt) -> (&'static str, &'static str) {
    match doubt {
        Doubt::Times => ("so many times after the first", "so many times in all"),
        Doubt::BindOff => (
            "counting the stitch that is on the right needle after binding off",
            "not counting the stitch that is on the right needle after binding off",
        ),
        Doubt::CastOn => (
            "not working the new stitches in this row",
            "working the new stitches in this row",
        ),
        Doubt::RowsWithin => (
            "repeating rows with what they repeat themselves",
            "repeating each row once, without what it repeats itself",
        ),
    }
}

fn came(outcome: Outcome, after: u64) -> String {
    match outcome {
        Outcome::ComesOut => fill_pattern_with("comes out with @", &[], &[&stitches(count(after))]),
        other => what(other, "that place"),
    }
}

/// Brackets that might be sizes or a repeat, and what they were taken for: of each kind the first.
pub fn bracket_notes(answer: &Answer, text: &str) -> Vec<String> {
    if answer.sizes.len() < 2 {
        return Vec::new();
    }
    let first = |is_sizes| {
        let found = answer.brackets.iter().find(|bracket| bracket.is_sizes == is_sizes)?;
        Some(quoted(found.place.text(text)))
    };
    let sizes = first(true).map(|bracket| {
        fill_pattern_with(
            "A bracket such as @ was taken for the other sizes, since it has as many numbers.",
            &[],
            &[&bracket],
        )
    });
    let repeat = first(false).map(|bracket| {
        fill_pattern_with(
            "A bracket such as @ was taken for something to repeat.",
            &[],
            &[&bracket],
        )
    });
    sizes.into_iter().chain(repeat).collect()
}
