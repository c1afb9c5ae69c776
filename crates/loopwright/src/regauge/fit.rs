//! From a count at one gauge to the nearest at another that keeps what has to be kept, in whole numbers throughout.

use super::{Converted, Question, ROWS};
use crate::problem::{Kind, Problem};
use crate::spacing::Fraction;
use crate::units::{Gauge, Length};

/// Thousandths in one: how finely a gauge is held.
const PARTS: i128 = 1_000;

/// A quotient, exact; what is below the line is above nothing.
pub(super) type Exact = (i128, i128);

/// Two checked gauges of one direction.
#[derive(Clone, Copy, Debug)]
pub(super) struct Scale {
    /// Thousandths, and the nanometres they were counted over.
    theirs: Exact,
    ours: Exact,
}

impl Scale {
    pub(super) fn of(theirs: Gauge, ours: Gauge) -> Self {
        // Rounding undoes the division that made a number of the thousandths, exactly.
        let parts = |gauge: Gauge| {
            let thousandths = (gauge.count() * PARTS as f64).round() as i128;
            (thousandths.max(1), i128::from(gauge.span().to_nm()).max(1))
        };
        Self {
            theirs: parts(theirs),
            ours: parts(ours),
        }
    }

    /// How many times as many there are to a length.
    pub(super) fn times(self) -> f64 {
        let (over, under) = self.ideal(1);
        over as f64 / under as f64
    }

    /// What keeps the measure of so many.
    pub(super) const fn ideal(self, count: u32) -> Exact {
        (count as i128 * self.ours.0 * self.theirs.1, self.theirs.0 * self.ours.1)
    }

    /// What makes a measure at the own gauge.
    pub(super) fn wanted(self, measure: Length) -> Exact {
        (i128::from(measure.to_nm()) * self.ours.0, PARTS * self.ours.1)
    }

    /// How far so many are from a measure at the own gauge, to be compared only.
    pub(super) fn away(self, count: u32, measure: Length) -> i128 {
        let (wanted, one) = self.wanted(measure);
        (i128::from(count) * one - wanted).abs()
    }

    /// What so many measure at the own gauge.
    pub(super) fn ours(self, count: u32) -> Length {
        measure(count, self.ours)
    }

    /// What a count becomes, `outside` of its stitches standing beside the measure; none when that is more than can be
    /// worked with.
    pub(super) fn convert(self, pattern: u32, outside: u32, keep: &Keep) -> Option<Converted> {
        let inside = pattern - outside;
        let was = measure(inside, self.theirs);
        let found = self.found(pattern, outside, self.ideal(inside), keep)?;
        Some(Converted {
            was,
            unchanged: self.ours(inside),
            ..found
        })
    }

    /// The rows of a length at both gauges.
    pub(super) fn measured(self, length: Length) -> Option<Converted> {
        let swapped = Self {
            theirs: self.ours,
            ours: self.theirs,
        };
        let pattern = u32::try_from(Keep::ANY.nearest(swapped.wanted(length)).0).ok()?;
        let found = self.found(pattern, 0, self.wanted(length), &Keep::ANY)?;
        Some(Converted {
            was: length,
            unchanged: self.ours(pattern),
            ..found
        })
    }

    fn found(self, pattern: u32, outside: u32, ideal: Exact, keep: &Keep) -> Option<Converted> {
        let (inside, below, above) = keep.nearest(ideal);
        let inside = u32::try_from(inside).ok()?;
        let count = inside.checked_add(outside).filter(|count| *count <= ROWS.most)?;
        let with = |inside: i128| {
            u32::try_from(inside)
                .ok()
                .and_then(|inside| inside.checked_add(outside))
        };
        let (thousandths, span) = self.ours;
        let wrong = |by: i128| measure(inside, ((thousandths + by).max(1), span));
        Some(Converted {
            pattern,
            count,
            worked: count,
            below: below.and_then(with),
            above: with(above).filter(|above| *above <= ROWS.most),
            ideal: fraction(ideal),
            was: Length::ZERO,
            becomes: self.ours(inside),
            range: (wrong(PARTS / 2), wrong(-PARTS / 2)),
            unchanged: Length::ZERO,
        })
    }

    /// The largest count of the pattern that becomes no more than can be worked with.
    pub(super) fn too_many(self, field: &'static str, outside: u32) -> Problem {
        let (over, under) = self.ideal(1);
        let most = i128::from(ROWS.most - outside) * under / over;
        let most = u32::try_from(most).unwrap_or(u32::MAX).saturating_add(outside).max(1);
        Problem {
            field,
            kind: Kind::TooMany { most },
        }
    }
}

/// The counts that will do: from the least on, one every so many.
#[derive(Clone, Copy, Debug)]
pub(super) struct Keep {
    least: u32,
    step: u32,
}

impl Keep {
    /// Any count from one up.
    pub(super) const ANY: Self = Self { least: 1, step: 1 };

    /// What a count of stitches has to be, of which `inside` were in the pattern without edges and join.
    pub(super) fn stitches(question: &Question, inside: u32) -> Self {
        let plus = if question.is_flat() { question.multiple.plus } else { 0 };
        Self::of(
            question.multiple.of,
            plus + question.multiple.of,
            question.parity.then_some(inside),
        )
    }

    /// What an end of shaping has to be: as any count where the pattern's is such a multiple, and otherwise only odd or
    /// even as it is, where that is kept or every shaping row keeps it.
    pub(super) fn end(question: &Question, inside: u32, each: u32) -> Self {
        let keep = Self::stitches(question, inside);
        if keep.allows(inside) {
            return keep;
        }
        let like = question.parity || each.is_multiple_of(2);
        Self::of(1, 1, like.then_some(inside))
    }

    /// What a count of rows has to be: the same row of the chart, and back and forth the same side.
    pub(super) fn rows(question: &Question, rows: u32) -> Self {
        let row = rows % question.row_repeat;
        let least = if row == 0 { question.row_repeat } else { row };
        Self::of(question.row_repeat, least, question.is_flat().then_some(rows))
    }

    /// Every `step` from `least` on, and odd or even as `like` is, if steps of `step` ever are.
    fn of(step: u32, least: u32, like: Option<u32>) -> Self {
        let differs = like.is_some_and(|like| like % 2 != least % 2);
        match like {
            Some(_) if !step.is_multiple_of(2) => Self {
                least: least + if differs { step } else { 0 },
                step: 2 * step,
            },
            _ => Self { least, step },
        }
    }

    /// Whether a count will do.
    pub(super) const fn allows(&self, count: u32) -> bool {
        count >= self.least && (count - self.least).is_multiple_of(self.step)
    }

    /// The nearest that will do, the smaller of two equally near; the next smaller, and the next larger.
    pub(super) fn nearest(&self, (over, under): Exact) -> (i128, Option<i128>, i128) {
        let (least, step) = (i128::from(self.least), i128::from(self.step));
        let (past, one) = ((over - least * under).max(0), step * under);
        let steps = past / one + i128::from(2 * (past % one) > one);
        let nearest = least + steps * step;
        (nearest, (steps > 0).then_some(nearest - step), nearest + step)
    }
}

/// How much room so many take, rounded once.
fn measure(count: u32, (thousandths, span): Exact) -> Length {
    let over = i128::from(count) * PARTS * span;
    let nearest = (2 * over + thousandths) / (2 * thousandths);
    Length::from_nm(i64::try_from(nearest).unwrap_or(i64::MAX))
}

/// In lowest terms, so that it can be held.
fn fraction((over, under): Exact) -> Fraction {
    let (mut a, mut b) = (over, under);
    while b != 0 {
        (a, b) = (b, a % b);
    }
    let held = |part: i128| u64::try_from(part / a.max(1)).unwrap_or(u64::MAX);
    Fraction::new(held(over), held(under))
}
