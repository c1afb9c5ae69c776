//! The words of gauge. Lengths are printed by the function `long`, in the unit the knitter uses.

use super::Title;
use super::intl::{decimal, fill_pattern_with, fill_pattern_with_strings, tenths};
use super::problem::sentence;
use super::tell::Long;
use super::units::{gauge, span_of};
use loopwright::gauge::{Against, Answer, Direction, Measured, Name, Next, Note, Question, Reading, Wash};
use loopwright::problem::{Kind, Problem};
use loopwright::units::parse::Unreadable;
use loopwright::units::{Gauge, Length};

pub const TITLE: Title = Title {
    name: "Gauge",
    asks: "What your swatch says, and which needle to try next.",
};
pub const BAND: &str =
    "“10 cm / 4 in” on a label is read as 10 cm (common practice, no source); 4 in is 1.6\u{a0}% more.";
pub const WAITING: &str = "Your gauge appears here, and with the pattern’s beside it the needle to try next.";
pub const ROWS_ONLY: &str = "Stitches match and rows do not. Lengths by measure hold; the pattern’s row counts do not.";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::Stitches => "Stitches in the washed swatch; several spots as 21, 20 1/2, 21",
        Name::Pattern => "The pattern’s stitches",
        Name::Rows => "Rows in the washed swatch",
        Name::PatternRows => "The pattern’s rows",
        Name::StitchesUnwashed => "Stitches before washing",
        Name::RowsUnwashed => "Rows before washing",
        Name::Width => "Finished width, washed",
        Name::Length => "Finished length, washed",
    }
}

/// What is wrong with a field. Counts of several spots are parted by commas.
pub fn problem(problem: &Problem) -> String {
    let several = match problem.field.name() {
        Some(Name::Stitches | Name::Rows | Name::StitchesUnwashed | Name::RowsUnwashed) => true,
        Some(Name::Pattern | Name::PatternRows | Name::Width | Name::Length) | None => false,
    };
    if several && problem.kind == Kind::Unreadable(Unreadable::TwoNumbers) {
        return "Part the counts by commas, as in 21, 20 1/2, 21.".into();
    }
    sentence(&problem.kind)
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

/// A gauge that was converted is said to the tenth.
fn about(gauge: Gauge) -> String {
    format!("{}\u{a0}over\u{a0}{}", tenths(gauge.count()), span_of(gauge.span()))
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
            let words = vec![decimal(own.count()), span_of(own.span())];
            fill_pattern_with_strings("@ stitches over @", &[], words)
        }
        Some(Next::CountAgain) => "Count again, away from the edges".into(),
        Some(Next::CountLonger) => fill_pattern_with("Count over @ or more", &[], &[&span_of(found.longer_span())]),
        Some(Next::Keep) => "Keep this needle".into(),
        Some(Next::Down { sizes }) => {
            fill_pattern_with("Go down # needle {size|sizes} and swatch again", &[sizes], &[])
        }
        Some(Next::Up { sizes }) => fill_pattern_with("Go up # needle {size|sizes} and swatch again", &[sizes], &[]),
        Some(Next::AnotherYarn) => "Take another yarn, or another size at your gauge".into(),
    }
}

/// What it comes to.
pub fn outcome(question: &Question, answer: &Answer, long: Long) -> (String, String) {
    let found = &answer.stitches;
    let would_measure = |pattern| {
        let before = fill_pattern_with(pattern, &[], &[&long(question.width)]);
        (before, long(found.would_be))
    };
    match answer.next {
        None => ("That is".into(), about(found.converted)),
        Some(Next::CountAgain) => ("The spots differ too much; their mean is".into(), gauge(found.gauge)),
        Some(Next::CountLonger) => would_measure("Too short a span to judge. So far, @ would measure"),
        Some(Next::AnotherYarn) => would_measure("Another needle alone will not do: @ would measure"),
        Some(Next::Keep | Next::Down { .. } | Next::Up { .. }) => would_measure("If nothing changed, @ would measure"),
    }
}

/// The gauge of stitches or rows in its own span and in the other.
pub fn counted(found: &Measured) -> String {
    let pattern = if found.washed {
        "Washed: @, or @."
    } else {
        "Not washed: @, or @."
    };
    fill_pattern_with_strings(pattern, &[], vec![gauge(found.gauge), about(found.converted)])
}

/// The gauge before washing.
pub fn before(unwashed: Gauge) -> String {
    fill_pattern_with("Before washing: @.", &[], &[&gauge(unwashed)])
}

/// What else there is to say of stitches, or of rows: the spots, the pattern's, the range, the washing.
pub fn findings(direction: Direction, wanted: Length, found: &Measured, long: Long) -> Vec<String> {
    let spots = (found.readings > 1).then(|| spots(found));
    let beside = found.against.map(|against| {
        let beside = beside_the_pattern(direction, against);
        match direction {
            Direction::Stitches => beside,
            Direction::Rows => beside + &by_the_patterns_rows(wanted, found, long),
        }
    });
    let washing = found.wash.map(|wash| washing(direction, wanted, wash, long));
    let first = spots.into_iter().chain(beside);
    first.chain([range(direction, found, long)]).chain(washing).collect()
}

fn spots(found: &Measured) -> String {
    let pattern = "The mean of # spots, @ to @: @ apart.";
    let ends = vec![gauge(found.fewest), gauge(found.most), percent(found.spread_permille)];
    fill_pattern_with_strings(pattern, &[found.readings], ends)
}

fn beside_the_pattern(direction: Direction, against: Against) -> String {
    let Against { off_permille, matches } = against;
    if off_permille == 0 {
        return "As the pattern.".into();
    }
    let how = if off_permille < 0 { "fewer" } else { "more" };
    let off = percent(off_permille.unsigned_abs());
    let words = [&*off, how, several(direction), one(direction)];
    if matches {
        let pattern = "@ @ @ than the pattern, no more than half a @ misread.";
        fill_pattern_with(pattern, &[], &words)
    } else {
        fill_pattern_with("@ @ @ than the pattern.", &[], &words)
    }
}

fn by_the_patterns_rows(wanted: Length, found: &Measured, long: Long) -> String {
    let words = vec![long(wanted), long(found.would_be)];
    fill_pattern_with_strings(" By the pattern’s row counts @ would be @.", &[], words)
}

fn range(direction: Direction, found: &Measured, long: Long) -> String {
    let over = |reading: &Reading| {
        let words = vec![span_of(reading.span), long(reading.least), long(reading.most)];
        fill_pattern_with_strings("over @, @ to @", &[], words)
    };
    let ranges: Vec<String> = found.reading.iter().map(over).collect();
    let (would_be, ranges) = (long(found.would_be), ranges.join("; "));
    if found.uneven {
        let pattern = "As the spots differ, @ may come out so: counted @.";
        fill_pattern_with(pattern, &[], &[&would_be, &ranges])
    } else {
        let pattern = "If half a @ is misread, @ may come out so: counted @.";
        fill_pattern_with(pattern, &[], &[one(direction), &would_be, &ranges])
    }
}

fn washing(direction: Direction, wanted: Length, wash: Wash, long: Long) -> String {
    let becomes = match wash.permille {
        0 => return "Washing does not change it.".into(),
        ..0 => smaller(direction),
        1.. => larger(direction),
    };
    let off = percent(wash.permille.unsigned_abs());
    let words = vec![off, becomes.into(), long(wanted), long(wash.knit)];
    fill_pattern_with_strings("Washing makes it @ @: for @ washed, knit @ by the tape.", &[], words)
}

/// Below the drawing, and instead of it: the widths, and the lengths where rows were compared.
pub fn drawing(question: &Question, answer: &Answer, long: Long) -> String {
    let (wanted, would_be) = (long(question.width), long(answer.stitches.would_be));
    match answer.compared_rows() {
        Some(rows) => {
            let words = vec![wanted, long(question.length), would_be, long(rows.would_be)];
            let pattern =
                "Dotted, what you want: @ by @. Solid, what it would be: @ by @. The bands: how far that is known.";
            fill_pattern_with_strings(pattern, &[], words)
        }
        None => {
            let pattern =
                "Dotted, what you want: @ wide. Solid, what it would be: @ wide. The band: how far that is known.";
            fill_pattern_with_strings(pattern, &[], vec![wanted, would_be])
        }
    }
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

/// The sum of stitches, or of rows.
pub fn steps(direction: Direction, question: &Question, found: &Measured, long: Long) -> Vec<String> {
    let together = (found.all != found.gauge).then(|| {
        let words = vec![several(direction).into(), gauge(found.all), gauge(found.gauge)];
        fill_pattern_with_strings("All @ together: @, which is @.", &[], words)
    });
    let half = half_step(direction, found);
    let wanted = question.wanted(direction);
    let pattern = question.pattern_of(direction).map(|pattern| {
        let words = vec![long(wanted), gauge(pattern), gauge(found.gauge), long(found.would_be)];
        fill_pattern_with_strings("@ × @ ÷ @ = @.", &[], words)
    });
    let wash = found.wash.zip(found.unwashed).map(|(wash, unwashed)| {
        let sum = vec![
            long(wanted),
            gauge(unwashed),
            gauge(found.gauge),
            long(wash.becomes),
            long(wanted),
            long(wash.knit),
        ];
        fill_pattern_with_strings("Washed, @ by the tape × @ ÷ @ = @; for @, knit @.", &[], sum)
    });
    [together, half, pattern, wash].into_iter().flatten().collect()
}

/// What half a stitch misread is of a count.
fn half_step(direction: Direction, found: &Measured) -> Option<String> {
    let reading = found.reading.first()?;
    let pattern = if found.readings > 1 {
        "Half a @ in @, over the root of # counts: @."
    } else {
        "Half a @ in @: @."
    };
    let words = vec![
        one(direction).to_owned(),
        span_of(reading.span),
        percent(reading.permille),
    ];
    Some(fill_pattern_with_strings(pattern, &[found.readings], words))
}

pub const SOURCE: &str = "Means, ranges and washing are arithmetic. Half a stitch misread, 7\u{a0}% a needle size, two sizes at most: common practice, no source.";

#[cfg(test)]
mod tests;
