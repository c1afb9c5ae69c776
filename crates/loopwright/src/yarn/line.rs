//! Where the yarn goes, line by line.
//!
//! All of it in whole nanometres: the bottom of a range is rounded down, the top up, what is expected to the nearest.

use super::swatch::{nearest, relative};
use super::{BindOff, PerStitch, Piece, Route, practice};
use crate::tables::Certainty;
use crate::units::Length;

/// A quantity that is not known exactly.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Estimate<T> {
    /// The bottom of the range.
    pub least: T,
    /// As likely as not.
    pub expected: T,
    /// The top of the range.
    pub most: T,
}

impl<T> Estimate<T> {
    pub(super) fn each<U>(self, change: impl Fn(T) -> U) -> Estimate<U> {
        Estimate {
            least: change(self.least),
            expected: change(self.expected),
            most: change(self.most),
        }
    }
}

impl<T: Copy> Estimate<T> {
    /// Known exactly.
    pub(super) const fn exactly(value: T) -> Self {
        Self {
            least: value,
            expected: value,
            most: value,
        }
    }
}

/// What a line of the list is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Part {
    /// The sections.
    Knitting,
    /// Casting on, ends and all.
    CastOn,
    /// Binding off, ends and all.
    BindOff,
    /// Sewing up.
    Seams,
    /// The swatch.
    Swatch,
    /// The fringe.
    Fringe,
    /// Anything else that was asked for.
    Other,
    /// What the pattern asks for.
    Pattern,
    /// The ends at each change of ball.
    Joins,
    /// The reserve for mistakes: bought, and not expected to be used.
    Reserve,
}

/// Yarn for one purpose.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Line {
    /// What for.
    pub part: Part,
    /// How much.
    pub length: Estimate<Length>,
    /// Where the figure comes from.
    pub certainty: Certainty,
}

/// A sum in nanometres, before it is known to fit.
pub(super) type Wide = Estimate<i128>;

/// Every line but the joins and the reserve; those of nothing are left out.
pub(super) fn lines(piece: &Piece, per_stitch: PerStitch, swatch: Length) -> Vec<(Part, Wide, Certainty)> {
    let spread = |wide: Wide| spread(wide, per_stitch.spread);
    let loops = |wide: Wide| spread(wide.each(|thousandths| thousandths * i128::from(per_stitch.length.to_nm())));
    let (knitting, certainty) = knitting(piece, per_stitch);
    let (mut cast_on, mut bind_off) = (Wide::exactly(0), Wide::exactly(0));
    let mut ends = (0, 0);
    for section in &piece.sections {
        let (on, off) = section.edges();
        let times = |stitches: Option<u64>| {
            if stitches > Some(0) {
                i128::from(section.times)
            } else {
                0
            }
        };
        ends = (ends.0 + times(on), ends.1 + times(off));
        cast_on = add(cast_on, edge(on, practice::CAST_ON));
        bind_off = add(
            bind_off,
            edge(off, practice::bind_off(section.bind_off.unwrap_or(BindOff::Plain))),
        );
    }
    let with_ends = |wide: Wide, ends: i128| loops(wide).each(|nm| nm + ends * i128::from(practice::END.to_nm()));
    let typed = |length: Length| Wide::exactly(i128::from(length.to_nm()));
    let extras = &piece.extras;
    let seams = spread_of(practice::SEAM).each(|part| i128::from(extras.seams.to_nm()) * part / 1_000);
    let strand = extras.strand.saturating_mul(i64::from(extras.strands));
    let swatch = match (extras.swatch, per_stitch.route) {
        (false, _) => Wide::exactly(0),
        // It was weighed; there is nothing to estimate.
        (true, Route::Weighed) => typed(swatch),
        (true, _) => spread(typed(swatch).each(|nm| nm * 1_000)),
    };
    let practice = Certainty::Practice;
    let swatch_certainty = match per_stitch.route {
        Route::Weighed => Certainty::Computed,
        _ => practice,
    };
    let mut lines = vec![
        (Part::Knitting, knitting, certainty),
        (Part::CastOn, with_ends(cast_on, ends.0), practice),
        (Part::BindOff, with_ends(bind_off, ends.1), practice),
        (Part::Seams, seams, practice),
        (Part::Swatch, swatch, swatch_certainty),
        (Part::Fringe, typed(strand), Certainty::Computed),
        (Part::Other, typed(extras.other), Certainty::Computed),
    ];
    lines.retain(|(_, length, _)| length.most > 0);
    lines
}

/// The stitches of all sections, each with its fabric's factor.
fn knitting(piece: &Piece, per_stitch: PerStitch) -> (Wide, Certainty) {
    let mut certainty = per_stitch.certainty;
    // Thousandths of half loops.
    let mut sum = Wide::exactly(0);
    for section in &piece.sections {
        let factor = relative(section.fabric, &piece.swatch);
        if factor.certainty == Certainty::Practice {
            certainty = Certainty::Practice;
        }
        let halves = i128::from(section.sum().halves);
        sum = Wide {
            least: sum.least + halves * i128::from(factor.least),
            expected: sum.expected + halves * i128::from(factor.usual),
            most: sum.most + halves * i128::from(factor.most),
        };
    }
    let length = i128::from(per_stitch.length.to_nm());
    (
        spread_over(sum.each(|part| part * length), per_stitch.spread, 2),
        certainty,
    )
}

/// An edge of so many stitches, in thousandths of a loop.
fn edge(stitches: Option<u64>, rule: practice::Rule) -> Wide {
    spread_of(rule).each(|part| i128::from(stitches.unwrap_or(0)) * part)
}

fn spread_of(rule: practice::Rule) -> Wide {
    Wide {
        least: i128::from(rule.least),
        expected: i128::from(rule.usual),
        most: i128::from(rule.most),
    }
}

/// From thousandths of a nanometre to nanometres, with so many ten-thousandths either way.
fn spread(wide: Wide, spread: u32) -> Wide {
    spread_over(wide, spread, 1)
}

/// The same from thousandths of a `parts`th of a nanometre.
fn spread_over(wide: Wide, spread: u32, parts: i128) -> Wide {
    let (spread, whole) = (i128::from(spread), 10_000);
    let bottom = 1_000 * parts;
    Wide {
        least: wide.least * (whole - spread) / (bottom * whole),
        expected: nearest(wide.expected, bottom),
        most: (wide.most * (whole + spread) + bottom * whole - 1) / (bottom * whole),
    }
}

fn add(a: Wide, b: Wide) -> Wide {
    Wide {
        least: a.least + b.least,
        expected: a.expected + b.expected,
        most: a.most + b.most,
    }
}
