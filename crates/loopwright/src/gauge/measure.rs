//! One direction of a swatch: the mean of its counts, how far it can be trusted, the pattern's beside it, the washing.

use crate::terms::Range;
use crate::units::rate::{PARTS, Quotient, Rate, to_length};
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

impl Measured {
    /// Of checked counts, those of the washed swatch and those from before; none when there are none.
    pub(super) fn of(washed: &[Gauge], before: &[Gauge], pattern: Option<Gauge>, wanted: Length) -> Option<Self> {
        let is_washed = !washed.is_empty();
        let counted = if is_washed { washed } else { before };
        let mean = Mean::of(counted)?;
        let before = Mean::of(before);
        let theirs = pattern.map_or(mean.rate, Rate::of);
        let usual = mean.first.usual_span();
        Some(Self {
            gauge: mean.kept(usual),
            converted: mean.over(mean.other_span()),
            washed: is_washed,
            unwashed: before.as_ref().map(|before| before.kept(usual)),
            all: mean.over(to_length(mean.rate.span())),
            readings: mean.count,
            fewest: mean.fewest,
            most: mean.most,
            spread_permille: Rate::of(mean.most).permille_above(Rate::of(mean.fewest)).unsigned_abs(),
            uneven: mean.is_uneven(),
            would_be: theirs.worked_at(wanted, mean.rate),
            reading: readings(&mean, theirs, wanted),
            against: pattern.map(|_| Against {
                off_permille: mean.rate.permille_above(theirs),
                matches: mean.may_be(theirs),
            }),
            wash: before
                .filter(|_| is_washed)
                .map(|before| Wash::between(before.rate, mean.rate, wanted)),
        })
    }

    /// The gauge from before washing, where the washed one is known as well.
    pub fn before_washing(&self) -> Option<Gauge> {
        self.unwashed.filter(|_| self.washed)
    }

    /// How far the length is known by the counts as they were taken.
    pub fn known(&self) -> Option<Range> {
        self.reading.first().map(|reading| Range {
            least: reading.least,
            most: reading.most,
        })
    }

    /// The span to count over where the counts tell too little: the next longer one that is usual.
    pub fn longer_span(&self) -> Length {
        let longer = self.reading.get(1);
        longer.map_or(self.gauge.span(), |reading| reading.span)
    }
}

impl Wash {
    fn between(unwashed: Rate, washed: Rate, wanted: Length) -> Self {
        Self {
            permille: unwashed.permille_above(washed),
            knit: washed.worked_at(wanted, unwashed),
            becomes: unwashed.worked_at(wanted, washed),
        }
    }
}

/// Counts of one kind, put together.
struct Mean {
    rate: Rate,
    count: u32,
    first: Gauge,
    fewest: Gauge,
    most: Gauge,
    /// Whether all were taken over the span of the first.
    one_span: bool,
}

impl Mean {
    /// Of checked counts; none when there are none.
    fn of(counts: &[Gauge]) -> Option<Self> {
        let first = *counts.first()?;
        let denser = |one: Gauge, other: Gauge| Rate::of(one).exceeds(Rate::of(other));
        let all = counts.iter().copied();
        Some(Self {
            rate: Rate::of_all(counts)?,
            count: u32::try_from(counts.len()).unwrap_or(u32::MAX),
            first,
            fewest: all
                .clone()
                .fold(first, |least, gauge| if denser(least, gauge) { gauge } else { least }),
            most: all
                .clone()
                .fold(first, |most, gauge| if denser(gauge, most) { gauge } else { most }),
            one_span: all.into_iter().all(|gauge| gauge.span() == first.span()),
        })
    }

    fn over(&self, span: Length) -> Gauge {
        self.rate.gauge_over(span).unwrap_or(self.first)
    }

    /// Over the span of the counts, or over `usual` where they differ.
    fn kept(&self, usual: Length) -> Gauge {
        self.over(if self.one_span { self.first.span() } else { usual })
    }

    /// The usual span of the measure that it was not counted in.
    const fn other_span(&self) -> Length {
        if self.first.over_inches() {
            Gauge::TEN_CM
        } else {
            Gauge::FOUR_INCHES
        }
    }

    /// The mean span of one count.
    fn span_of_one(&self) -> Length {
        let (over, under) = (self.rate.span(), i128::from(self.count));
        to_length(Quotient { over, under }.nearest())
    }

    /// Whether the fewest and the most are further apart than half a stitch misread on either side.
    fn is_uneven(&self) -> bool {
        Rate::of(self.most)
            .misread(-1)
            .exceeds(Rate::of(self.fewest).misread(1))
    }

    /// Whether the counts could be those of another rate, each half a stitch misread: half the root of their number in
    /// their sum, as a rule.
    fn may_be(&self, other: Rate) -> bool {
        let apart = self.rate.thousandths() * other.span() - other.thousandths() * self.rate.span();
        let half = PARTS * other.span();
        2.0 * apart.abs() as f64 <= half as f64 * f64::from(self.count).sqrt()
    }
}

/// How far the length that `wanted` becomes with the pattern's counts is known: as it was counted, and over each of the
/// longer spans that are usual. Of uneven spots only the first, as wide as the spots.
fn readings(mean: &Mean, theirs: Rate, wanted: Length) -> Vec<Reading> {
    let counted_in = mean.span_of_one();
    let doubt = Doubt::about(mean, theirs, wanted);
    let as_counted = doubt.over(counted_in);
    if mean.is_uneven() {
        let at = |spot: Gauge| theirs.worked_at(wanted, Rate::of(spot));
        return vec![Reading {
            least: as_counted.least.min(at(mean.most)),
            most: as_counted.most.max(at(mean.fewest)),
            ..as_counted
        }];
    }
    let usual = mean.first.usual_span();
    let half_more = Length::from_nm(usual.to_nm() * 3 / 2);
    let longer = [usual, half_more, usual.saturating_mul(2)].into_iter();
    let longer = longer.filter(|span| *span > counted_in).map(|span| doubt.over(span));
    [as_counted].into_iter().chain(longer).collect()
}

/// A length that is in doubt because each count may be half a stitch wrong. The half is divided by the root of the number
/// of counts, which is no fraction: so here, and only here, a sum is done in floating point and rounded once.
struct Doubt {
    /// The length, in nanometres.
    length: f64,
    /// Stitches in all counts together.
    stitches: f64,
    /// The span of one count, in nanometres.
    span: f64,
    /// Half a stitch, as far as it is left in all counts together.
    half: f64,
}

impl Doubt {
    fn about(mean: &Mean, theirs: Rate, wanted: Length) -> Self {
        let per_nm = |rate: Rate| rate.thousandths() as f64 / rate.span() as f64;
        Self {
            length: wanted.to_nm() as f64 * (per_nm(theirs) / per_nm(mean.rate)),
            stitches: mean.rate.thousandths() as f64 / PARTS as f64,
            span: mean.span_of_one().to_nm() as f64,
            half: f64::from(mean.count).sqrt() / 2.0,
        }
    }

    /// What is known if each count is taken over this span.
    fn over(&self, span: Length) -> Reading {
        let stitches = self.stitches * (span.to_nm() as f64 / self.span);
        let length = |misread: f64| Length::from_nm((self.length * stitches / (stitches + misread)).round() as i64);
        Reading {
            span,
            permille: (1_000.0 * self.half / stitches).round() as u32,
            least: length(self.half),
            most: length(-self.half),
        }
    }
}
