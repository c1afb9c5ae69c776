//! What there is to say of stitches, or of rows: the gauge, the spots, the pattern's, the range, the washing.

use super::super::intl::{fill_pattern_with, fill_pattern_with_strings};
use super::super::units::{Lengths, count_of, gauge, span_of};
use super::{larger, misses, one, percent, several, smaller};
use loopwright::gauge::{Against, Answer, Direction, Measured, Reading, Wash};
use loopwright::units::{Gauge, Length, print};

/// The gauge of stitches or rows in its own span and in the other; nothing where the headline is just that.
pub fn counted(direction: Direction, answer: &Answer, found: &Measured) -> Option<String> {
    match (direction, answer.next, found.washed) {
        (Direction::Stitches, None, true) => None,
        (Direction::Stitches | Direction::Rows, _, _) => Some(both_spans(found)),
    }
}

fn both_spans(found: &Measured) -> String {
    let pattern = match (found.washed, is_alike(found)) {
        (true, false) => "Washed: @, or @.",
        (false, false) => "Not washed: @, or @.",
        (true, true) => "Washed: @.",
        (false, true) => "Not washed: @.",
    };
    fill_pattern_with_strings(pattern, &[], vec![gauge(found.gauge), gauge(found.converted)])
}

/// Whether the count over the other span is written alike, so that it would say nothing.
pub(super) fn is_alike(found: &Measured) -> bool {
    let quarters = |gauge: Gauge| print::quarters(u64::from(gauge.thousandths()), 1_000).number;
    quarters(found.gauge) == quarters(found.converted)
}

/// The gauge before washing.
pub fn before(unwashed: Gauge) -> String {
    fill_pattern_with("Before washing: @.", &[], &[&gauge(unwashed)])
}

/// What else there is to say. What would say nothing is left out.
pub fn findings(direction: Direction, wanted: Length, found: &Measured, lengths: Lengths) -> Vec<String> {
    let beside = found.against.map(|against| {
        let beside = beside_the_pattern(direction, against);
        match direction {
            Direction::Rows if misses(wanted, found.would_be, lengths) => {
                beside + &by_the_patterns_rows(wanted, found, lengths)
            }
            Direction::Stitches | Direction::Rows => beside,
        }
    });
    let washing = found.wash.map(|wash| washing(direction, wanted, wash, lengths));
    let first = spots(found).into_iter().chain(beside);
    first.chain(range(direction, found, lengths)).chain(washing).collect()
}

/// The spots, where there are several.
fn spots(found: &Measured) -> Option<String> {
    let (fewest, most) = (found.fewest, found.most);
    match found.readings {
        ..=1 => None,
        2 if found.spread_permille == 0 => Some("Both spots say the same.".into()),
        spots if found.spread_permille == 0 => Some(fill_pattern_with("All # spots say the same.", &[spots], &[])),
        spots => {
            let lower = if fewest.span() == most.span() {
                count_of(fewest)
            } else {
                gauge(fewest)
            };
            let ends = vec![lower, gauge(most), percent(found.spread_permille)];
            let pattern = "That is the mean of # spots, from @ to @: they are @ apart.";
            Some(fill_pattern_with_strings(pattern, &[spots], ends))
        }
    }
}

fn beside_the_pattern(direction: Direction, against: Against) -> String {
    let Against { off_permille, matches } = against;
    if off_permille == 0 {
        return fill_pattern_with("As many @ as the pattern.", &[], &[several(direction)]);
    }
    let how = if off_permille < 0 { "fewer" } else { "more" };
    let off = percent(off_permille.unsigned_abs());
    let words = [&*off, how, several(direction), one(direction)];
    if matches {
        let pattern = "@ @ @ than the pattern: no more than half a @ misread.";
        fill_pattern_with(pattern, &[], &words)
    } else {
        fill_pattern_with("@ @ @ than the pattern.", &[], &words)
    }
}

fn by_the_patterns_rows(wanted: Length, found: &Measured, lengths: Lengths) -> String {
    let words = vec![lengths.write(wanted), lengths.write(found.would_be)];
    fill_pattern_with_strings(" By the pattern’s row counts @ would be @.", &[], words)
}

/// How far the length is known, where that shows: as it was counted, and what a longer span would tell.
fn range(direction: Direction, found: &Measured, lengths: Lengths) -> Option<String> {
    let ends = |reading: &Reading| [lengths.write(reading.least), lengths.write(reading.most)];
    let shows = |reading: &&Reading| misses(reading.least, reading.most, lengths);
    let (counted, longer) = found.reading.split_first().filter(|(counted, _)| shows(counted))?;
    let [least, most] = ends(counted);
    let would_be = lengths.write(found.would_be);
    if found.uneven {
        let pattern = "As the spots differ, @ may be anything from @ to @.";
        return Some(fill_pattern_with(pattern, &[], &[&would_be, &least, &most]));
    }
    let pattern = "If half a @ was misread, @ may be anything from @ to @.";
    let as_counted = fill_pattern_with(pattern, &[], &[one(direction), &would_be, &least, &most]);
    let over = |reading: &Reading| {
        let [least, most] = ends(reading);
        fill_pattern_with("over @, @ to @", &[], &[&span_of(reading.span), &least, &most])
    };
    let longer: Vec<String> = longer.iter().filter(shows).map(over).collect();
    match longer.is_empty() {
        true => Some(as_counted),
        false => Some(fill_pattern_with(
            "@ Counted @.",
            &[],
            &[&as_counted, &longer.join("; ")],
        )),
    }
}

fn washing(direction: Direction, wanted: Length, wash: Wash, lengths: Lengths) -> String {
    let becomes = match wash.permille {
        0 => return "Washing does not change it.".into(),
        ..0 => smaller(direction),
        1.. => larger(direction),
    };
    let off = percent(wash.permille.unsigned_abs());
    let words = vec![off, becomes.into(), lengths.write(wanted), lengths.write(wash.knit)];
    fill_pattern_with_strings("Washing makes it @ @: for @ washed, knit @ by the tape.", &[], words)
}
