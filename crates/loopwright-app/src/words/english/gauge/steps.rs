//! The sum of gauge, with her numbers in it.

use super::super::intl::{fill_pattern_with, fill_pattern_with_strings};
use super::super::units::{Lengths, gauge_in_sum as gauge, span_of};
use super::{misses, one, percent, several};
use loopwright::gauge::{Direction, Measured, Question, Wash};
use loopwright::units::Gauge;

/// The sum of stitches, or of rows.
pub fn steps(direction: Direction, question: &Question, found: &Measured, lengths: Lengths) -> Vec<String> {
    let together = (found.all != found.gauge).then(|| {
        let words = [several(direction), &gauge(found.all), &gauge(found.gauge)];
        fill_pattern_with("All @ together: @, which is @.", &[], &words)
    });
    let wanted = question.wanted(direction);
    let pattern = question
        .pattern_of(direction)
        .filter(|_| misses(wanted, found.would_be, lengths));
    let pattern = pattern.map(|pattern| {
        let words = vec![
            lengths.write(wanted),
            gauge(pattern),
            gauge(found.gauge),
            lengths.write(found.would_be),
        ];
        fill_pattern_with_strings("@ × @ ÷ @ = @.", &[], words)
    });
    let wash = found.wash.filter(|wash| wash.permille != 0).zip(found.unwashed);
    let wash = wash.map(|(wash, unwashed)| washing(direction, question, (wash, unwashed, found.gauge), lengths));
    let steps = [together, half(direction, found), pattern, wash];
    steps.into_iter().flatten().collect()
}

/// What half a stitch misread is of a count.
fn half(direction: Direction, found: &Measured) -> Option<String> {
    let reading = found.reading.first()?;
    let pattern = if found.readings > 1 {
        "Half a @ in @, over the root of # counts: @."
    } else {
        "Half a @ in @: @."
    };
    let words = [one(direction), &span_of(reading.span), &percent(reading.permille)];
    Some(fill_pattern_with(pattern, &[found.readings], &words))
}

/// What washing makes of the wanted length, and what to knit instead.
fn washing(
    direction: Direction,
    question: &Question,
    (wash, unwashed, washed): (Wash, Gauge, Gauge),
    lengths: Lengths,
) -> String {
    let wanted = lengths.write(question.wanted(direction));
    let sum = [
        &*wanted,
        &gauge(unwashed),
        &gauge(washed),
        &lengths.write(wash.becomes),
        &wanted,
        &lengths.write(wash.knit),
    ];
    fill_pattern_with("Washed, @ by the tape × @ ÷ @ = @; for @, knit @.", &[], &sum)
}

pub const SOURCE: &str = "Means, ranges and washing are arithmetic, on exact fractions; what is printed is rounded. Half a stitch misread, 7\u{a0}% a needle size, two sizes at most: common practice, no source. Needle sizes: as the needles tool has them.";
