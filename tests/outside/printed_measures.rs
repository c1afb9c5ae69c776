//! Every measure of `printed_measures.txt`, typed: what is read, what is asked, or why it is refused.

use crate::marks::{Marked, value};
use loopwright::bounds::Bounds;
use loopwright::gauge::Direction;
use loopwright::tables::Certainty;
use loopwright::tables::needle::read_across;
use loopwright::tail::NEEDLE;
use loopwright::units::gauge_text::{self, Counted, GaugeText};
use loopwright::units::meant::Meant;
use loopwright::units::parse::{Unreadable, Wanted, read};
use loopwright::units::print::{Step, with_unit};
use loopwright::units::{Gauge, Length, LengthUnit, Mass, MassUnit, Measure, count};

/// How sure each value is that is checked here.
pub const MARKS: &[Marked] = &[
    value("ways of printing and typing measures", Certainty::Practice),
    value("needles behind the numbers", Certainty::FromMemory),
];

const MEASURES: &str = include_str!("printed_measures.txt");

#[test]
fn every_measure_is_read_as_it_is_printed() {
    let mut heading = "";
    let (mut rows, mut wrong) = (0, Vec::new());
    for line in MEASURES
        .lines()
        .filter(|line| !line.is_empty() && !line.starts_with('#'))
    {
        let Some((typed, wanted)) = line.split_once(" => ") else {
            heading = line;
            continue;
        };
        let found = read_in(heading, typed).unwrap_or_else(refused);
        rows += 1;
        if found != wanted {
            wrong.push(format!("{heading} {line}\n     read: {found}"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert!(rows >= 100, "the table is shorter than it was: {rows}");
}

fn read_in(heading: &str, typed: &str) -> Result<String, Unreadable> {
    match heading {
        "[gauge over 10 cm]" => gauge_text::read(typed, Gauge::TEN_CM).map(|read| gauge(&read)),
        "[needle in mm]" => read_across(typed, NEEDLE).map(|read| Meant::millimetres(read.across).text()),
        "[count]" => count::read(typed, Bounds::new(1, 100_000)).map(|read| read.value.to_string()),
        "[length in yards]" => measure::<Length>(typed, LengthUnit::Yard),
        "[length in inches]" => measure::<Length>(typed, LengthUnit::Inch),
        "[weight in grams]" => measure::<Mass>(typed, MassUnit::Gram),
        other => panic!("no field is called {other}"),
    }
}

fn measure<T: Measure>(typed: &str, unit: T::Unit) -> Result<String, Unreadable> {
    read(typed, &Wanted::<T>::any(unit)).map(|read| with_unit(read.value, unit, Step::Thousandth))
}

/// `22 sts, 30 rows over 10 cm`
fn gauge(read: &GaugeText) -> String {
    let named = |direction, word| read.named(direction).map(|counted| counts(counted) + word);
    let mut all: Vec<String> = named(Direction::Stitches, " sts").into_iter().collect();
    all.extend(named(Direction::Rows, " rows"));
    if all.is_empty() {
        all.extend(read.of(Direction::Stitches).map(counts));
    }
    let span = match read.span.unwrap_or(Gauge::TEN_CM) {
        span if span == Length::INCH => "1 in".to_owned(),
        span if span == Gauge::FOUR_INCHES => "4 in".to_owned(),
        span => with_unit(span, LengthUnit::Cm, Step::Tenth),
    };
    format!("{} over {span}", all.join(", "))
}

/// `21.5 (21 to 22)`
fn counts(Counted { gauge, range }: Counted) -> String {
    let ends = range.map(|(low, high)| format!(" ({} to {})", low.count(), high.count()));
    format!("{}{}", gauge.count(), ends.unwrap_or_default())
}

/// `asked: 1150 yd, 1.15 yd`; `refused: TwoNumbers`
fn refused(why: Unreadable) -> String {
    if let Unreadable::Ambiguous(readings) = why {
        let ways: Vec<String> = readings.ways().map(Meant::text).collect();
        return format!("asked: {}", ways.join(", "));
    }
    let kind = format!("{why:?}");
    format!(
        "refused: {}",
        kind.split(|mark: char| !mark.is_alphabetic())
            .next()
            .unwrap_or_default()
    )
}
