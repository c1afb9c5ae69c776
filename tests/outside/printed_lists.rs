//! Every printed list of `printed_lists.txt`, typed: what is read, or which piece is pointed at and why.

use crate::marks::{Marked, value};
use loopwright::bounds::Bounds;
use loopwright::cords::read_list;
use loopwright::sizing::{Size, Span, read_counts, read_sizes};
use loopwright::tables::Certainty;
use loopwright::units::print::{Step, print};
use loopwright::units::printed::{Unread, WhyUnread};
use loopwright::units::{Gauge, LengthUnit};

/// How sure each value is that is checked here.
pub const MARKS: &[Marked] = &[value("ways of printing lists", Certainty::Practice)];

const LISTS: &str = include_str!("printed_lists.txt");

/// Counts of stitches as a pattern may have them.
const COUNTS: Bounds<u32> = Bounds::new(1, 100_000);

#[test]
fn every_printed_list_is_read_whole_or_pointed_at() {
    let mut heading = "";
    let (mut rows, mut wrong) = (0, Vec::new());
    for line in LISTS.lines().filter(|line| !line.is_empty() && !line.starts_with('#')) {
        let Some((typed, wanted)) = line.split_once(" => ") else {
            heading = line;
            continue;
        };
        let typed = typed.replace("\\n", "\n");
        let found = match heading {
            "[sizes in centimetres]" => sizes(&typed, LengthUnit::Cm, Step::Tenth),
            "[sizes in millimetres]" => sizes(&typed, LengthUnit::Mm, Step::Whole),
            "[sizes in inches]" => sizes(&typed, LengthUnit::Inch, Step::Eighths),
            "[counts]" => counts(&typed),
            "[cords in centimetres]" => cords(&typed, LengthUnit::Cm, Step::Tenth),
            "[cords in inches]" => cords(&typed, LengthUnit::Inch, Step::Eighths),
            "[gauges over 10 cm]" => gauges(&typed),
            other => panic!("no reader is called {other}"),
        };
        rows += 1;
        if found != wanted.replace("\\n", "\n") {
            wrong.push(format!("{line}\n     read: {found}"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert!(rows >= 120, "the table is shorter than it was");
}

fn sizes(typed: &str, unit: LengthUnit, step: Step) -> String {
    let girth = |Span { from, to }| match (print(from, unit, step), print(to, unit, step)) {
        (from, to) if from == to => from,
        (from, to) => format!("{from}-{to}"),
    };
    match read_sizes(typed, unit) {
        Err(unread) => refused(typed, unread),
        Ok(sizes) => {
            // Without names a size goes by its number.
            let is_number = |size: &Size| {
                read_sizes(&size.label, unit).is_ok_and(|alone| alone.iter().all(|alone| alone.girth == size.girth))
            };
            let written = sizes.iter().map(|size| match girth(size.girth) {
                girth if is_number(size) => girth,
                girth => format!("{} {girth}", size.label),
            });
            written.collect::<Vec<_>>().join(", ")
        }
    }
}

fn counts(typed: &str) -> String {
    match read_counts(typed, COUNTS) {
        Err(unread) => refused(typed, unread),
        Ok(counts) => {
            let written = counts
                .iter()
                .map(|count| count.map_or_else(|| "-".to_owned(), |count| count.to_string()));
            written.collect::<Vec<_>>().join(", ")
        }
    }
}

fn cords(typed: &str, unit: LengthUnit, step: Step) -> String {
    match read_list(typed, unit) {
        Err(unread) => refused(typed, unread),
        Ok(cords) => {
            let written = cords.iter().map(|cord| print(*cord, unit, step));
            written.collect::<Vec<_>>().join(", ")
        }
    }
}

fn gauges(typed: &str) -> String {
    match Gauge::read_list(typed, Gauge::TEN_CM) {
        Err(unread) => refused(typed, unread),
        Ok(gauges) => {
            let written = gauges.iter().map(|gauge| match gauge.span() {
                Gauge::TEN_CM => gauge.count().to_string(),
                span => format!("{} over {}", gauge.count(), print(span, LengthUnit::Cm, Step::Tenth)),
            });
            written.collect::<Vec<_>>().join(", ")
        }
    }
}

/// `refused: Unused, "81" at 1`
fn refused(typed: &str, unread: Unread) -> String {
    let kind = match unread.why {
        WhyUnread::Number(why) => format!("{why:?}"),
        why => format!("{why:?}"),
    };
    let kind = kind
        .split(|mark: char| !mark.is_alphabetic())
        .next()
        .unwrap_or_default();
    let place = typed[..unread.from].chars().count() + 1;
    format!("refused: {kind}, \"{}\" at {place}", unread.piece(typed))
}
