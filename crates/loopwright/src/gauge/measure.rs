//! One direction of a swatch: the mean of its counts, how far it can be trusted, the pattern's beside it, the washing.

use crate::units::{Gauge, Length};

/// One direction: across or upwards.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Measured {
    /// The gauge to knit by and to keep: the mean of the washed counts, or else of the unwashed ones, to the thousandth;
    /// over the span of the counts, so that what reckons with half a stitch of it reckons right; where they differ, over
    /// 4 in if the first was taken over whole or half inches, else over 10 cm.
    pub gauge: Gauge,
    /// The same over 10 cm if the first count was taken over inches, else over 4 in.
    pub converted: Gauge,
    /// Whether that is of the washed swatch.
    pub washed: bool,
    /// The gauge as it lies on the needle, for the tape in mid-knit.
    pub unwashed: Option<Gauge>,
    /// All counts over all spans together.
    pub all: Gauge,
    /// How many counts.
    pub readings: u32,
    /// The count with the fewest in a width, as it was taken.
    pub fewest: Gauge,
    /// The count with the most in a width, as it was taken.
    pub most: Gauge,
    /// How much more the most is than the fewest, in per mille.
    pub spread_permille: u32,
    /// Whether these two differ by more than half a stitch of reading on either side.
    pub uneven: bool,
    /// What the wanted length would measure with the pattern's counts, if nothing changed; without a pattern the wanted
    /// length itself.
    pub would_be: Length,
    /// How far that is known if each count may be half a stitch wrong: as it was counted, and if as many counts had been
    /// taken over each of the longer spans that are usual. Of uneven spots only the first, as wide as the spots.
    pub reading: Vec<Reading>,
    /// Beside the pattern's gauge.
    pub against: Option<Against>,
    /// What washing does; none unless both were counted.
    pub wash: Option<Wash>,
}

/// How far a length is known when each count may be half a stitch wrong.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Reading {
    /// The span of one count; of spans that differ, the mean.
    pub span: Length,
    /// Half a stitch in that span, divided by the square root of the number of counts, in per mille of the count.
    pub permille: u32,
    /// The length at the least: `W / (1 + 0.5 / N)`.
    pub least: Length,
    /// The length at the most: `W / (1 - 0.5 / N)`.
    pub most: Length,
}

/// Beside the pattern's gauge.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Against {
    /// How many more stitches than the pattern's, in per mille; negative for fewer.
    pub off_permille: i32,
    /// Whether the pattern's lies within half a stitch of reading.
    pub matches: bool,
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

/// Counts of one kind, put together.
struct Mean {
    first: Gauge,
    fewest: Gauge,
    most: Gauge,
    /// Whether all were taken over the span of the first.
    one_span: bool,
    /// All stitches, and all nanometres they were counted in.
    count: f64,
    span: f64,
}

impl Mean {
    /// Of checked counts; none when there are none.
    #[inline(never)]
    fn of(counts: &[Gauge]) -> Option<Self> {
        let first = *counts.first()?;
        let mut mean = Self {
            first,
            fewest: first,
            most: first,
            one_span: true,
            count: 0.0,
            span: 0.0,
        };
        for gauge in counts {
            mean.one_span &= gauge.span() == first.span();
            mean.count += gauge.count();
            mean.span += gauge.span().to_nm() as f64;
            if gauge.per_cm() < mean.fewest.per_cm() {
                mean.fewest = *gauge;
            }
            if gauge.per_cm() > mean.most.per_cm() {
                mean.most = *gauge;
            }
        }
        Some(mean)
    }

    fn over(&self, span: Length) -> Gauge {
        counted_over(self.count / self.span, span).unwrap_or(self.first)
    }

    /// Over the span of the counts, or over `usual` where they differ.
    fn kept(&self, usual: Length) -> Gauge {
        self.over(if self.one_span { self.first.span() } else { usual })
    }
}

/// So many in a nanometre, counted over a span, to the thousandth.
pub(super) fn counted_over(rate: f64, span: Length) -> Option<Gauge> {
    let thousandths = (rate * span.to_nm() as f64 * 1_000.0).round();
    Gauge::new((thousandths as u32).max(1), span)
}

/// So many times a length, rounded once.
fn times(length: Length, ratio: f64) -> Length {
    Length::from_nm((length.to_nm() as f64 * ratio).round() as i64)
}

/// By how much a ratio is above one.
fn permille(ratio: f64) -> i32 {
    ((ratio - 1.0) * 1_000.0).round() as i32
}

impl Measured {
    /// Of checked counts; none when there are none.
    #[inline(never)]
    pub(super) fn of(washed: &[Gauge], before: &[Gauge], pattern: Option<Gauge>, wanted: Length) -> Option<Self> {
        let counted = if washed.is_empty() { before } else { washed };
        let mean = Mean::of(counted)?;
        let Mean {
            first,
            fewest,
            most,
            count,
            span,
            ..
        } = mean;
        let own = count / span;
        let before = Mean::of(before);
        // Half a stitch in each of m counts is half the root of m in their sum, as a rule.
        let half = (counted.len() as f64).sqrt() / 2.0;
        let theirs = pattern.map_or(own, |theirs| theirs.count() / theirs.span().to_nm() as f64);
        let would_be = times(wanted, theirs / own);
        let counted_in = times(Length::from_nm(span as i64), 1.0 / counted.len() as f64);
        let uneven =
            (most.count() - 0.5) / most.span().to_nm() as f64 > (fewest.count() + 0.5) / fewest.span().to_nm() as f64;
        let at = |spot: Gauge| times(wanted, theirs * spot.span().to_nm() as f64 / spot.count());
        let usual = first.usual_span();
        let mut readings = Vec::new();
        for over in [counted_in, usual, times(usual, 1.5), times(usual, 2.0)] {
            if !readings.is_empty() && (uneven || over <= counted_in) {
                continue;
            }
            let count = count * (over.to_nm() as f64 / counted_in.to_nm() as f64);
            let known = |half: f64| times(wanted, theirs / own * count / (count + half));
            let mut reading = Reading {
                span: over,
                permille: (1_000.0 * half / count).round() as u32,
                least: known(half),
                most: known(-half),
            };
            if uneven {
                reading.least = reading.least.min(at(most));
                reading.most = reading.most.max(at(fewest));
            }
            readings.push(reading);
        }
        Some(Self {
            gauge: mean.kept(usual),
            converted: mean.over(if first.over_inches() {
                Gauge::TEN_CM
            } else {
                Gauge::FOUR_INCHES
            }),
            washed: !washed.is_empty(),
            unwashed: before.as_ref().map(|before| before.kept(usual)),
            all: mean.over(Length::from_nm(span as i64)),
            readings: counted.len() as u32,
            fewest,
            most,
            spread_permille: permille(most.per_cm() / fewest.per_cm()).unsigned_abs(),
            uneven,
            would_be,
            reading: readings,
            against: pattern.map(|_| Against {
                off_permille: permille(own / theirs),
                // A whole stitch is a thousand thousandths: what lies on the edge is not lost to the last bit.
                matches: (count - theirs * span).abs() <= half + 1e-6,
            }),
            wash: before.filter(|_| !washed.is_empty()).map(|before| {
                let stretch = before.count / before.span / own;
                Wash {
                    permille: permille(stretch),
                    knit: times(wanted, 1.0 / stretch),
                    becomes: times(wanted, stretch),
                }
            }),
        })
    }
}
