//! The table of single lines: each was counted by hand, and a newcomer adds a line as she meets it.
//!
//! `line | stitches before | what it comes to`. Behind the stitches may stand `round`, or `m 5 10` for markers after so many;
//! several sizes are parted by a stroke. What it comes to is the count after it, or why it does not come out, and where.

use super::told::{fault, told};
use super::*;

const LINES: &str = include_str!("lines.txt");

/// What is in front of a line, for each size.
fn starts(cell: &str) -> Vec<Start> {
    let mut parts = cell.split_whitespace();
    let counts = parts.next().unwrap_or_default();
    let rest: Vec<&str> = parts.collect();
    let markers: Vec<u32> = rest.iter().filter_map(|word| word.parse().ok()).collect();
    let working = if rest.contains(&"round") {
        Working::Round
    } else {
        Working::Flat
    };
    let start = |count: &str| Start {
        markers: markers.clone(),
        working,
        ..Start::with(count.parse().expect("a count"))
    };
    counts.split('/').map(start).collect()
}

fn comes_to(text: &str, starts: &[Start]) -> String {
    let (pattern, faults) = read(text, starts.len(), &[]);
    if !faults.is_empty() {
        let faults: Vec<String> = faults.iter().map(|one| fault(text, one)).collect();
        return faults.join("; ");
    }
    let each = starts.iter().enumerate().map(|(size, start)| {
        let worked = work(&pattern, start, size);
        told(text, worked.first().expect("one line"))
    });
    each.collect::<Vec<_>>().join(" / ")
}

fn rows() -> impl Iterator<Item = [&'static str; 3]> {
    let is_row = |line: &&str| !line.is_empty() && !line.starts_with('#');
    LINES.lines().filter(is_row).map(|line| {
        let cells: Vec<&str> = line.split('|').map(str::trim).collect();
        cells.try_into().expect("three cells")
    })
}

#[test]
fn every_line_comes_to_what_was_counted_by_hand() {
    let wrong: Vec<String> = rows()
        .filter_map(|[text, before, wanted]| {
            let found = comes_to(text, &starts(before));
            (found != wanted).then(|| format!("{text} | {before} | {wanted}\n    found: {found}"))
        })
        .collect();
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

#[test]
fn the_table_is_long_enough_and_says_enough_of_what_fails() {
    let is_count = |cell: &str| {
        cell.split([';', '/'])
            .all(|part| part.trim().trim_start_matches("or ").parse::<u64>().is_ok())
    };
    let all = rows().count();
    let failing = rows().filter(|[_, _, wanted]| !is_count(wanted)).count();
    assert!(all >= 200 && failing >= 60, "{all} lines, {failing} of them fail");
}
