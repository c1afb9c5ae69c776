//! One direction of a swatch: the mean of its counts, how far it can be trusted, the pattern's beside it, the washing.

use super::rate::{PARTS, Rate, nearest, to_length};
use crate::units::{Gauge, Length};

/// One direction: across or upwards.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Measured {
    /// The gauge to knit by: the washed one, or else the unwashed.
    pub mean: Mean,
    /// Whether that is of the washed swatch.
    pub washed: bool,
    /// The gauge as it lies on the needle, for the tape in mid-knit.
    pub unwashed: Option<Mean>,
    /// How far the wanted length is known if a count may be half a stitch wrong.
    pub reading: Reading,
    /// The same if as many counts had been taken over one and a half times, and over twice, the span.
    pub longer: [Reading; 2],
    /// Beside the pattern's gauge.
    pub against: Option<Against>,
    /// What washing does; none unless both were counted.
    pub wash: Option<Wash>,
}

/// The mean of the counts of one direction in one state.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Mean {
    /// All counts over all spans: the mean, exactly.
    pub all: Gauge,
    /// How many counts.
    pub readings: u32,
    /// The mean over the span of the first count, to the thousandth: the one to keep.
    pub usual: Gauge,
    /// The mean over 10 cm, to the thousandth.
    pub ten_cm: Gauge,
    /// The mean over 4 in, to the thousandth; 1.6 % more than over 10 cm.
    pub four_inches: Gauge,
    /// The count with the fewest in a width, as it was taken.
    pub fewest: Gauge,
    /// The count with the most in a width, as it was taken.
    pub most: Gauge,
    /// How much more the most is than the fewest, in per mille.
    pub spread_permille: u32,
}

/// How far a length is known when each count may be half a stitch wrong.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Reading {
    /// The span of one count.
    pub span: Length,
    /// Half a stitch in that span, divided by the square root of the number of counts, in per mille of the count.
    pub permille: u32,
    /// The wanted length at the least: `W / (1 + 0.5 / N)`.
    pub least: Length,
    /// The wanted length at the most: `W / (1 - 0.5 / N)`.
    pub most: Length,
}

/// Beside the pattern's gauge.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Against {
    /// The pattern's, with its own span.
    pub pattern: Gauge,
    /// How many more stitches than the pattern's, in per mille; negative for fewer.
    pub off_permille: i32,
    /// Whether the pattern's lies within half a stitch of reading.
    pub matches: bool,
    /// What the wanted length would measure with the pattern's counts, if nothing changed.
    pub would_be: Length,
    /// That, if the swatch was read half a stitch wrong: at the least.
    pub least: Length,
    /// And at the most.
    pub most: Length,
}

/// What washing does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Wash {
    /// How much longer a length becomes, in per mille; negative when it shrinks.
    pub permille: i32,
    /// What to knit, by the tape and unwashed, so that the washed length is the wanted one.
    pub knit: Length,
    /// What the wanted length would become if it were knitted by the tape.
    pub becomes: Length,
}

/// The same gauge over another span, to the nearest thousandth: 21 in 10 cm are 21.336 in 4 in. A span not above zero
/// changes nothing.
pub fn over(gauge: Gauge, span: Length) -> Gauge {
    rescaled(Rate::of(gauge), span).unwrap_or(gauge)
}

fn rescaled(rate: Rate, span: Length) -> Option<Gauge> {
    let count = nearest(rate.count * i128::from(span.to_nm().max(0)), rate.span);
    Gauge::new(u32::try_from(count.max(1)).unwrap_or(u32::MAX), span)
}

impl Mean {
    /// Of checked counts; none when there are none.
    fn of(gauges: &[Gauge]) -> Option<(Self, Rate)> {
        let mut first_to_last = gauges.iter().copied();
        let first = first_to_last.next()?;
        let (mut fewest, mut most, mut sum) = (first, first, Rate::of(first));
        for gauge in first_to_last {
            let rate = Rate::of(gauge);
            sum.count += rate.count;
            sum.span += rate.span;
            if gauge.per_cm() < fewest.per_cm() {
                fewest = gauge;
            }
            if gauge.per_cm() > most.per_cm() {
                most = gauge;
            }
        }
        let all = rescaled(sum, to_length(sum.span)).unwrap_or(first);
        let spread = Rate::of(most).permille_over(Rate::of(fewest));
        let mean = Self {
            all,
            readings: u32::try_from(gauges.len()).unwrap_or(u32::MAX),
            usual: over(all, first.span()),
            ten_cm: over(all, Gauge::TEN_CM),
            four_inches: over(all, Gauge::FOUR_INCHES),
            fewest,
            most,
            spread_permille: spread.unsigned_abs(),
        };
        Some((mean, sum))
    }

    /// Whether two counts differ by more than half a stitch of reading on either side.
    pub(super) fn uneven(&self) -> bool {
        let (few, many) = (Rate::of(self.fewest), Rate::of(self.most));
        (many.count - PARTS / 2) * few.span > (few.count + PARTS / 2) * many.span
    }
}

impl Measured {
    /// Of checked counts; none when there are none.
    pub(super) fn of(washed: &[Gauge], before: &[Gauge], pattern: Option<Gauge>, wanted: Length) -> Option<Self> {
        let (after, before) = (Mean::of(washed), Mean::of(before));
        let (mean, rate) = after.or(before)?;
        // Half a stitch in each of m counts is half the root of m in their sum, as a rule.
        let half = (PARTS as f64 / 2.0 * f64::from(mean.readings).sqrt()).round() as i128;
        let reading = |halves: i128| reading(mean.usual.span(), rate, half, halves, wanted);
        Some(Self {
            mean,
            washed: after.is_some(),
            unwashed: before.map(|(mean, _)| mean),
            reading: reading(2),
            longer: [reading(3), reading(4)],
            against: pattern.map(|pattern| Against::of(rate, half, pattern, wanted)),
            wash: after.zip(before).map(|((_, after), (_, before))| Wash {
                permille: before.permille_over(after),
                knit: after.worked_at(wanted, before),
                becomes: before.worked_at(wanted, after),
            }),
        })
    }
}

/// The reading over so many halves of the span.
fn reading(span: Length, rate: Rate, half: i128, halves: i128, wanted: Length) -> Reading {
    let (count, half) = (rate.count * halves, half * 2);
    let nm = i128::from(wanted.to_nm());
    Reading {
        span: to_length(i128::from(span.to_nm()) * halves / 2),
        permille: u32::try_from(nearest(1_000 * half, count)).unwrap_or(u32::MAX),
        least: to_length(nearest(nm * count, count + half)),
        most: to_length(nearest(nm * count, (count - half).max(1))),
    }
}

impl Against {
    fn of(own: Rate, half: i128, pattern: Gauge, wanted: Length) -> Self {
        let theirs = Rate::of(pattern);
        let wrong = |by: i128| {
            let count = (own.count + by).max(1);
            theirs.worked_at(wanted, Rate { count, ..own })
        };
        let apart = own.count * theirs.span - theirs.count * own.span;
        Self {
            pattern,
            off_permille: own.permille_over(theirs),
            matches: apart.abs() <= half * theirs.span,
            would_be: wrong(0),
            least: wrong(half),
            most: wrong(-half),
        }
    }
}
