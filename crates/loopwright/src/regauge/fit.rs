//! From a count at one gauge to the nearest at another that keeps what has to be kept, in whole numbers throughout.

use super::{Converted, Name, Question};
use crate::check::Check;
use crate::every::Every;
use crate::problem::Kind;
use crate::spacing::Fraction;
use crate::terms::Range;
use crate::units::rate::{PARTS, Quotient, Rate};
use crate::units::{Amount, Gauge, Length};

/// Two checked gauges of one direction.
#[derive(Clone, Copy, Debug)]
pub(super) struct Scale {
    pub(super) theirs: Rate,
    pub(super) ours: Rate,
    /// The most that can be worked with.
    most: u32,
}

impl Scale {
    pub(super) fn of(theirs: Gauge, ours: Gauge, most: u32) -> Self {
        let (theirs, ours) = (Rate::of(theirs), Rate::of(ours));
        Self { theirs, ours, most }
    }

    /// What keeps the measure of so many.
    pub(super) const fn ideal(self, count: u32) -> Quotient {
        let Self { theirs, ours, .. } = self;
        Quotient {
            over: count as i128 * ours.thousandths() * theirs.span(),
            under: theirs.thousandths() * ours.span(),
        }
    }

    /// What makes a measure at the own gauge.
    pub(super) fn wanted(self, measure: Length) -> Quotient {
        self.ours.count_over(measure)
    }

    /// What so many measure if the own swatch was read half of one wrong, either way.
    pub(super) fn range(self, count: u32) -> Range {
        Range {
            least: self.ours.misread(1).width_of(count),
            most: self.ours.misread(-1).width_of(count),
        }
    }

    /// How far so many are from a measure at the own gauge, to be compared only.
    pub(super) fn away(self, count: u32, measure: Length) -> i128 {
        let Quotient { over, under } = self.wanted(measure);
        (i128::from(count) * under - over).abs()
    }

    /// What a count becomes, `outside` of its stitches standing beside the measure; where that is more than can be
    /// worked with, the largest that is not is told.
    pub(super) fn convert(
        self,
        check: &mut Check,
        (name, pattern): (Name, u32),
        outside: u32,
        keep: Every,
    ) -> Converted {
        let ideal = self.ideal(pattern.saturating_sub(outside));
        let found = self.nearest(pattern, outside, ideal, keep);
        if found.count > self.most {
            let Quotient { over, under } = self.ideal(1);
            let most = i128::from(self.most.saturating_sub(outside)) * under / over;
            let most = u32::try_from(most).unwrap_or(u32::MAX).saturating_add(outside).max(1);
            check.wrong(name, Kind::TooMany { most });
        }
        found
    }

    /// The rows of a length at both gauges; where they are more than can be worked with, the greatest length is told.
    pub(super) fn measured(self, check: &mut Check, name: Name, length: Length) -> Converted {
        let theirs = Self {
            ours: self.theirs,
            ..self
        };
        let pattern = Every::ONE.nearest(theirs.wanted(length)).0;
        let found = self.nearest(pattern, 0, self.wanted(length), Every::ONE);
        if found.count > self.most {
            let most = Amount::Length(self.ours.width_of(self.most));
            check.wrong(name, Kind::TooLarge { most });
        }
        Converted { was: length, ..found }
    }

    fn nearest(self, pattern: u32, outside: u32, ideal: Quotient, keep: Every) -> Converted {
        let inside = pattern.saturating_sub(outside);
        let becomes = keep.nearest(ideal).0;
        let thousandths = Quotient {
            over: ideal.over * PARTS,
            under: ideal.under,
        }
        .nearest();
        Converted {
            pattern,
            count: becomes.saturating_add(outside),
            ideal: Fraction::new(thousandths as u64, PARTS as u64),
            kept: keep.allows(inside),
            was: self.theirs.width_of(inside),
            becomes: self.ours.width_of(becomes),
            unchanged: self.ours.width_of(inside),
        }
    }
}

/// What a count of stitches has to be, of which `inside` were in the pattern without edges and join.
pub(super) fn stitches(question: &Question, inside: u32) -> Every {
    let of = question.multiple.of;
    let plus = if question.is_flat() { question.multiple.plus } else { 0 };
    let counts = Every {
        least: plus + of,
        step: of,
    };
    if question.parity {
        counts.of_parity(inside)
    } else {
        counts
    }
}

/// What an end of shaping has to be: as any count where the pattern's is such a multiple, and otherwise only odd or even
/// as it is, where that is kept or every shaping row keeps it.
pub(super) fn end(question: &Question, inside: u32, each: u32) -> Every {
    let counts = stitches(question, inside);
    if counts.allows(inside) {
        counts
    } else if question.parity || each.is_multiple_of(2) {
        Every::ONE.of_parity(inside)
    } else {
        Every::ONE
    }
}

/// What a count of rows has to be: the same row of the chart, and back and forth the same side.
pub(super) fn rows(question: &Question, rows: u32) -> Every {
    let step = question.row_repeat;
    let row = rows % step;
    let counts = Every {
        least: if row == 0 { step } else { row },
        step,
    };
    if question.is_flat() {
        counts.of_parity(rows)
    } else {
        counts
    }
}
