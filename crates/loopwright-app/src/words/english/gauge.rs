//! The words of gauge: its fields, its headline, its notes. Lengths are printed in the unit the knitter uses.

mod findings;
mod picture;
mod steps;

pub use findings::{before, counted, findings};
pub use picture::{Seen, drawing, picture};
pub use steps::{SOURCE, steps};

use super::Title;
use super::intl::{fill_pattern_with, tenths};
use super::needles::{across, called_us, too_thick};
use super::problem::{list, sentence};
use super::units::{Lengths, count_of, gauge, span_of};
use loopwright::gauge::{Answer, Change, Direction, Name, Next, Note, Question};
use loopwright::problem::{Kind, Problem};
use loopwright::units::Length;
use loopwright::units::parse::Unreadable;
use loopwright::units::printed::WhyUnread;

pub const TITLE: Title = Title {
    name: "Gauge",
    asks: "What your swatch says, and which needle to try next.",
};
pub const BAND: &str =
    "“10 cm / 4 in” on a label is read as 10 cm (common practice, no source); 4 in is 1.6\u{a0}% more.";
pub const SPOTS: &str = "Several spots? As 21, 20½, 21.";
pub const WAITING: &str = "Your gauge appears here, and with the pattern’s beside it the needle to try next.";
pub const WHICH_NEEDLE: &str = "Type the needle of the swatch, and the next one is named.";
pub const ROWS_ONLY: &str = "Stitches match and rows do not: knit to the pattern’s lengths, not by its row counts.";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::Stitches => "Stitches in the washed swatch",
        Name::Pattern => "The pattern’s stitches",
        Name::Needle => "The needle of the swatch",
        Name::Rows => "Rows in the washed swatch",
        Name::PatternRows => "The pattern’s rows",
        Name::StitchesUnwashed => "Stitches before washing",
        Name::RowsUnwashed => "Rows before washing",
        Name::Width => "Finished width, washed",
        Name::Length => "Finished length, washed",
    }
}

/// What is wrong with a field. Counts of several spots are parted by commas.
pub fn problem(problem: &Problem, text: &str) -> String {
    if let Kind::UnreadableList(unread) = problem.kind {
        return match unread.why {
            WhyUnread::Number(Unreadable::TwoNumbers) => "Part the counts by commas, as in 21, 20½, 21.".into(),
            // Of one count alone nothing has to be pointed at.
            WhyUnread::Number(_) if unread.piece(text) == text.trim() => sentence(&problem.kind),
            _ => list(unread, text),
        };
    }
    match problem.field.name() {
        Some(Name::Needle) => too_thick(&problem.kind).unwrap_or_else(|| sentence(&problem.kind)),
        _ => sentence(&problem.kind),
    }
}

/// Above the figures of one direction.
pub const fn heading(direction: Direction) -> &'static str {
    match direction {
        Direction::Stitches => "Stitches",
        Direction::Rows => "Rows",
    }
}

/// What is counted in one direction.
const fn several(direction: Direction) -> &'static str {
    match direction {
        Direction::Stitches => "stitches",
        Direction::Rows => "rows",
    }
}

/// One of what is counted in one direction.
const fn one(direction: Direction) -> &'static str {
    match direction {
        Direction::Stitches => "stitch",
        Direction::Rows => "row",
    }
}

/// A piece that becomes larger in one direction.
const fn larger(direction: Direction) -> &'static str {
    match direction {
        Direction::Stitches => "wider",
        Direction::Rows => "longer",
    }
}

/// A piece that becomes smaller in one direction.
const fn smaller(direction: Direction) -> &'static str {
    match direction {
        Direction::Stitches => "narrower",
        Direction::Rows => "shorter",
    }
}

/// So many per cent.
fn percent(permille: u32) -> String {
    format!("{}\u{a0}%", tenths(f64::from(permille) / 10.0))
}

/// Above the answer, and the answer: what to do next, or the gauge.
pub fn headline(answer: &Answer) -> (&'static str, String) {
    let title = if answer.stitches.against.is_some() {
        "For this pattern"
    } else {
        "Your gauge"
    };
    (title, next(answer))
}

fn next(answer: &Answer) -> String {
    let found = &answer.stitches;
    match answer.next {
        None => {
            let own = found.gauge;
            let words = [&*count_of(own), &span_of(own.span())];
            fill_pattern_with("@ stitches over @", &[], &words)
        }
        Some(Next::CountAgain) => "Count again, away from the edges".into(),
        Some(Next::CountLonger) => fill_pattern_with("Count over @ or more", &[], &[&span_of(found.longer_span())]),
        Some(Next::Keep) => "Keep this needle".into(),
        Some(Next::Down { sizes }) => another("Go down # needle {size|sizes}", sizes, answer.change.as_ref()),
        Some(Next::Up { sizes }) => another("Go up # needle {size|sizes}", sizes, answer.change.as_ref()),
        Some(Next::AnotherYarn) => "Take another yarn, or another size at your gauge".into(),
    }
}

/// Another needle, by its name where that is known.
fn another(pattern: &str, sizes: u32, change: Option<&Change>) -> String {
    let sizes = fill_pattern_with(pattern, &[sizes], &[]);
    match change.and_then(|change| change.to.map(|to| (change.from, to))) {
        Some((from, to)) => {
            let needles = [&*sizes, &called_us(from.across, from.us), &called_us(to.across, to.us)];
            fill_pattern_with("@, from @ to @, and swatch again", &[], &needles)
        }
        None => sizes + " and swatch again",
    }
}

/// Below the headline: what to type so that the next needle is named, or that none is; nothing where it is.
pub fn needle(answer: &Answer) -> Option<String> {
    match (answer.next, answer.change) {
        (Some(Next::Down { .. } | Next::Up { .. }), None) => Some(WHICH_NEEDLE.into()),
        (_, Some(Change { from, to: None })) => {
            let from = across(from.across);
            Some(fill_pattern_with(
                "The table of needles ends before that: yours is @.",
                &[],
                &[&from],
            ))
        }
        (_, Some(Change { to: Some(_), .. }) | None) => None,
    }
}

/// What it comes to.
pub fn outcome(question: &Question, answer: &Answer, lengths: Lengths) -> (String, String) {
    let found = &answer.stitches;
    let would_measure = |pattern| {
        let before = fill_pattern_with(pattern, &[], &[&lengths.write(question.width)]);
        (before, lengths.write(found.would_be))
    };
    match answer.next {
        None if findings::is_alike(found) => {
            let span = span_of(found.converted.span());
            (
                fill_pattern_with("Over @ that is", &[], &[&span]),
                "about the same".into(),
            )
        }
        None => ("That is".into(), gauge(found.converted)),
        Some(Next::CountAgain) => ("The spots differ too much; their mean is".into(), gauge(found.gauge)),
        Some(Next::CountLonger) => would_measure("Too short a span to judge. So far, @ would measure"),
        Some(Next::AnotherYarn) => would_measure("Another needle alone will not do: @ would measure"),
        Some(Next::Keep) if !misses(question.width, found.would_be, lengths) => {
            ("Your stitches are".into(), "the pattern’s".into())
        }
        Some(Next::Keep) => would_measure("On it @ would measure"),
        Some(Next::Down { .. } | Next::Up { .. }) => would_measure("If nothing changed, @ would measure"),
    }
}

/// Whether a length misses the one that was wanted by as much as is printed.
fn misses(wanted: Length, would_be: Length, lengths: Lengths) -> bool {
    !lengths.is_nought(would_be.saturating_sub(wanted))
}

/// One note.
pub const fn note(note: Note) -> &'static str {
    match note {
        Note::NeedleIsATry => {
            "One needle size changes about 7\u{a0}% (common practice, no source). It is a suggestion; the next swatch decides."
        }
        Note::NotWashed => "Counts from before washing stand in here. Wash the swatch and count again.",
        Note::Drops => {
            "Long, heavy pieces drop further, 3 to 5\u{a0}% in cotton and superwash wool (common practice, no source)."
        }
    }
}

#[cfg(test)]
mod tests;
