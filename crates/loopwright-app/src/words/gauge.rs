//! The words of gauge. Lengths come in printed, in the unit the knitter uses, by the function `long`.

use super::Title;
use super::intl::{decimal, say_made, say_with, tenths};
use super::problem::sentence;
use super::units::{gauge, span_of};
use loopwright::gauge::{Answer, Measured, Next, Question};
use loopwright::problem::{Kind, Problem};
use loopwright::units::parse::Unreadable;
use loopwright::units::{Gauge, Length};

/// What it is called.
pub const TITLE: Title = Title {
    name: "Gauge",
    asks: "What your swatch says, and which needle to try next.",
};
/// The label of the counts.
pub const LABEL_STITCHES: &str = "Stitches in the washed swatch; several spots as 21, 20 1/2, 21";
/// The label of the pattern's stitches.
pub const LABEL_PATTERN: &str = "The pattern’s stitches";
/// Below it.
pub const BAND: &str =
    "“10 cm / 4 in” on a label is read as 10 cm (common practice, no source); 4 in is 1.6\u{a0}% more.";
/// The label of the rows.
pub const LABEL_ROWS: &str = "Rows in the washed swatch";
/// The label of the pattern's rows.
pub const LABEL_PATTERN_ROWS: &str = "The pattern’s rows";
/// The label of the stitches before washing.
pub const LABEL_UNWASHED: &str = "Stitches before washing";
/// The label of the rows before washing.
pub const LABEL_ROWS_UNWASHED: &str = "Rows before washing";
/// The label of the width.
pub const LABEL_WIDTH: &str = "Finished width, washed";
/// The label of the length.
pub const LABEL_LENGTH: &str = "Finished length, washed";
/// Where the answer will be.
pub const WAITING: &str = "Your gauge appears here, and with the pattern’s beside it the needle to try next.";
/// Stitches match and rows do not.
pub const ROWS_ONLY: &str = "Stitches match and rows do not. Lengths by measure hold; the pattern’s row counts do not.";

/// What is wrong with a field. Counts of several spots are parted by commas.
pub fn problem(wrong: &Problem) -> String {
    match wrong.kind {
        Kind::Unreadable(Unreadable::TwoNumbers) if !wrong.field.key().starts_with("pattern") => {
            "Part the counts by commas, as in 21, 20 1/2, 21.".into()
        }
        _ => sentence(&wrong.kind),
    }
}

/// How a length is printed.
pub type Long<'a> = &'a dyn Fn(Length) -> String;

/// Of stitches, and of rows: its name, one of them, and what washing makes of a piece that way.
const WAYS: [[&str; 4]; 2] = [
    ["stitches", "stitch", "wider", "narrower"],
    ["rows", "row", "longer", "shorter"],
];

/// Above the figures of stitches, and of rows.
pub const HEADINGS: [&str; 2] = ["Stitches", "Rows"];

/// So many per cent, however they are signed.
fn percent(permille: u32) -> String {
    tenths(f64::from(permille) / 10.0) + "\u{a0}%"
}

/// A gauge that was converted is said to the tenth.
fn about(gauge: Gauge) -> String {
    let tenths = tenths(gauge.count());
    [&tenths, "\u{a0}over\u{a0}", &span_of(gauge.span())].concat()
}

/// Above the answer, and the answer: what to do next, or the gauge.
pub fn headline(answer: &Answer) -> (&'static str, String) {
    let found = &answer.stitches;
    let own = found.gauge;
    let mut span = own.span();
    if let (Some(Next::CountLonger), Some(longer)) = (answer.next, found.reading.get(1)) {
        span = longer.span;
    }
    let (pattern, sizes) = match answer.next {
        None => ("@ stitches over @", 0),
        Some(Next::CountAgain) => ("Count again, away from the edges", 0),
        Some(Next::CountLonger) => ("Count over @ or more", 0),
        Some(Next::Keep) => ("Keep this needle", 0),
        Some(Next::Down { sizes }) => ("Go down # needle {size|sizes} and swatch again", sizes),
        Some(Next::Up { sizes }) => ("Go up # needle {size|sizes} and swatch again", sizes),
        Some(Next::AnotherYarn) => ("Take another yarn, or another size at your gauge", 0),
    };
    let mut words = vec![span_of(span)];
    if answer.next.is_none() {
        words.insert(0, decimal(own.count()));
    }
    let title = if found.against.is_some() {
        "For this pattern"
    } else {
        "Your gauge"
    };
    (title, say_made(pattern, &[sizes], words))
}

/// What it comes to.
pub fn outcome(question: &Question, answer: &Answer, long: Long) -> (String, String) {
    let found = &answer.stitches;
    let before = match answer.next {
        None => "That is",
        Some(Next::CountAgain) => "The spots differ too much; their mean is",
        Some(Next::CountLonger) => "Too short a span to judge. So far, @ would measure",
        Some(Next::AnotherYarn) => "Another needle alone will not do: @ would measure",
        _ => "If nothing changed, @ would measure",
    };
    let after = match answer.next {
        None => about(found.converted),
        Some(Next::CountAgain) => gauge(found.gauge),
        _ => long(found.would_be),
    };
    (say_with(before, &[], &[&long(question.width)]), after)
}

/// The gauge of stitches or rows in its own span and in the other.
pub fn counted(found: &Measured) -> String {
    let pattern = if found.washed {
        "Washed: @, or @."
    } else {
        "Not washed: @, or @."
    };
    say_made(pattern, &[], vec![gauge(found.gauge), about(found.converted)])
}

/// The gauge before washing.
pub fn before(unwashed: Gauge) -> String {
    say_with("Before washing: @.", &[], &[&gauge(unwashed)])
}

/// What else there is to say of stitches, and of rows: the spots, the pattern's, the range, the washing.
pub fn said(way: usize, wanted: Length, found: &Measured, long: Long) -> Vec<String> {
    let [name, one, more, less] = WAYS[way & 1];
    let mut said = Vec::new();
    if found.readings > 1 {
        let pattern = "The mean of # spots, @ to @: @ apart.";
        let ends = vec![gauge(found.fewest), gauge(found.most), percent(found.spread_permille)];
        said.push(say_made(pattern, &[found.readings], ends));
    }
    if let Some(against) = found.against {
        let off = against.off_permille;
        let how = if off < 0 { "fewer" } else { "more" };
        let pattern = match (off, against.matches) {
            (0, _) => "As the pattern.",
            (_, true) => "@ @ @ than the pattern, no more than half a @ misread.",
            (_, false) => "@ @ @ than the pattern.",
        };
        let words = [&*percent(off.unsigned_abs()), how, name, one];
        let mut line = say_with(pattern, &[], &words);
        if way > 0 {
            let words = vec![long(wanted), long(found.would_be)];
            line += &say_made(" By the pattern’s row counts @ would be @.", &[], words);
        }
        said.push(line);
    }
    let pattern = if found.uneven {
        "As the spots differ, @ may come out so: counted"
    } else {
        "If half a @ is misread, @ may come out so: counted"
    };
    let would_be = long(found.would_be);
    let words: &[&str] = if found.uneven { &[&would_be] } else { &[one, &would_be] };
    let mut line = say_with(pattern, &[], words);
    for reading in &found.reading {
        let words = vec![span_of(reading.span), long(reading.least), long(reading.most)];
        line += &say_made(" over @, @ to @;", &[], words);
    }
    line.pop();
    line.push('.');
    said.push(line);
    if let Some(wash) = found.wash {
        let (how, pattern) = match wash.permille {
            0 => (more, "Washing does not change it."),
            ..0 => (less, WASHING),
            _ => (more, WASHING),
        };
        let off = percent(wash.permille.unsigned_abs());
        said.push(say_made(
            pattern,
            &[],
            vec![off, how.into(), long(wanted), long(wash.knit)],
        ));
    }
    said
}

/// What washing does.
const WASHING: &str = "Washing makes it @ @: for @ washed, knit @ by the tape.";

/// Below the drawing, and instead of it: the widths, and the lengths where rows were compared.
pub fn drawing(question: &Question, answer: &Answer, long: Long) -> String {
    let rows = answer.rows.as_ref().filter(|rows| rows.against.is_some());
    let (pattern, length) = match rows {
        Some(rows) => (
            "Dotted, what you want: @ by @. Solid, what it would be: @ by @. The bands: how far that is known.",
            rows.would_be,
        ),
        None => (
            "Dotted, what you want: @ wide. Solid, what it would be: @ wide. The band: how far that is known.",
            Length::ZERO,
        ),
    };
    let mut words = vec![long(question.width), long(answer.stitches.would_be)];
    if rows.is_some() {
        words.insert(1, long(question.length));
        words.push(long(length));
    }
    say_made(pattern, &[], words)
}

/// What may be good to know: another needle is tried; nothing was washed; how rows drop.
const NOTES: [&str; 3] = [
    "One needle size changes about 7\u{a0}% (common practice, no source). It is a suggestion; the next swatch decides.",
    "Counts from before washing stand in here. Wash the swatch and count again.",
    "Long, heavy pieces drop further, 3 to 5\u{a0}% in cotton and superwash wool (common practice, no source).",
];

/// What is good to know.
pub fn notes(answer: &Answer) -> Vec<String> {
    let tries = matches!(answer.next, Some(Next::Down { .. } | Next::Up { .. }));
    let holds = [tries, !answer.stitches.washed, answer.rows.is_some()];
    let mut notes = Vec::new();
    for (note, holds) in NOTES.iter().zip(holds) {
        if holds {
            notes.push((*note).into());
        }
    }
    notes
}

/// The sum of stitches, and of rows.
pub fn steps(way: usize, question: &Question, found: &Measured, long: Long, steps: &mut Vec<String>) {
    let [name, one, ..] = WAYS[way & 1];
    let own = gauge(found.gauge);
    let (wanted, pattern) = match way {
        0 => (question.width, question.pattern),
        _ => (question.length, question.pattern_rows),
    };
    if found.all != found.gauge {
        let words = vec![name.to_owned(), gauge(found.all), own.clone()];
        steps.push(say_made("All @ together: @, which is @.", &[], words));
    }
    let half = if found.readings > 1 {
        "Half a @ in @, over the root of # counts: @."
    } else {
        "Half a @ in @: @."
    };
    if let [reading, ..] = found.reading[..] {
        let words = vec![one.to_owned(), span_of(reading.span), percent(reading.permille)];
        steps.push(say_made(half, &[found.readings], words));
    }
    if let Some(pattern) = pattern {
        let words = vec![long(wanted), gauge(pattern), own.clone(), long(found.would_be)];
        steps.push(say_made("@ × @ ÷ @ = @.", &[], words));
    }
    if let (Some(wash), Some(unwashed)) = (found.wash, found.unwashed) {
        let words = vec![
            long(wanted),
            gauge(unwashed),
            own,
            long(wash.becomes),
            long(wanted),
            long(wash.knit),
        ];
        steps.push(say_made(
            "Washed, @ by the tape × @ ÷ @ = @; for @, knit @.",
            &[],
            words,
        ));
    }
}

/// Where the rules come from.
pub const SOURCE: &str = "Means, ranges and washing are arithmetic. Half a stitch misread, 7\u{a0}% a needle size, two sizes at most: common practice, no source.";

#[cfg(test)]
mod tests;
