//! What a knitter should know beside the gauge, and the sum as steps. Data only: the page makes the sentences.

use super::{Against, Counted, MOST_STEPS, Measured, STEP_PERMILLE, Wash};
use crate::units::{Gauge, Length};

/// One thing to know.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Note {
    /// Nothing washed was counted, so the unwashed counts stand in: wash the swatch as the piece will be.
    OnlyUnwashed {
        /// Which way.
        counted: Counted,
    },
    /// Two spots differ by more than the eye misreads: the fabric is uneven, or was measured near an edge.
    Uneven {
        /// Which way.
        counted: Counted,
    },
    /// The pattern's gauge is over another span than the first count; both were brought to one width.
    SpansDiffer {
        /// Which way.
        counted: Counted,
        /// The span of the first count.
        own: Length,
        /// The pattern's.
        pattern: Length,
    },
    /// Stitches match and rows do not: lengths by measure hold; counted rows come out otherwise.
    RowsOnly {
        /// How many more rows than the pattern's, in per mille; negative for fewer.
        off_permille: i32,
    },
    /// Further off than [`MOST_STEPS`] needles are likely to bring: another yarn, or another size at one's own gauge.
    FarOff {
        /// How many more stitches than the pattern's, in per mille; negative for fewer.
        off_permille: i32,
    },
}

/// One line of the sum.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Step {
    /// All counts over all spans.
    Mean {
        /// Which way.
        counted: Counted,
        /// How many counts.
        readings: u32,
        /// Together.
        all: Gauge,
        /// Over the span of the first.
        usual: Gauge,
    },
    /// Half a stitch of it.
    Half {
        /// Which way.
        counted: Counted,
        /// The span of one count.
        span: Length,
        /// In per mille.
        permille: u32,
    },
    /// The pattern's count knitted at one's own gauge.
    Against {
        /// Which way.
        counted: Counted,
        /// One's own, over the span of the first count.
        own: Gauge,
        /// The pattern's.
        pattern: Gauge,
        /// What the wanted length would measure.
        would_be: Length,
    },
    /// Unwashed to washed.
    Wash {
        /// Which way.
        counted: Counted,
        /// Before.
        unwashed: Gauge,
        /// After.
        washed: Gauge,
        /// What to knit by the tape.
        knit: Length,
    },
}

pub(super) fn of(counted: Counted, measured: &Measured, notes: &mut Vec<Note>, steps: &mut Vec<Step>) {
    let (mean, own) = (measured.mean, measured.mean.usual);
    steps.push(Step::Mean {
        counted,
        readings: mean.readings,
        all: mean.all,
        usual: own,
    });
    steps.push(Step::Half {
        counted,
        span: own.span(),
        permille: measured.reading.permille,
    });
    if !measured.washed {
        notes.push(Note::OnlyUnwashed { counted });
    }
    if mean.uneven() {
        notes.push(Note::Uneven { counted });
    }
    if let Some(Against { pattern, would_be, .. }) = measured.against {
        steps.push(Step::Against {
            counted,
            own,
            pattern,
            would_be,
        });
        if pattern.span() != own.span() {
            notes.push(Note::SpansDiffer {
                counted,
                own: own.span(),
                pattern: pattern.span(),
            });
        }
    }
    if let (Some(Wash { knit, .. }), Some(before)) = (measured.wash, measured.unwashed) {
        steps.push(Step::Wash {
            counted,
            unwashed: before.usual,
            washed: own,
            knit,
        });
    }
}

/// What the two directions say together.
pub(super) fn beyond(stitches: Option<Against>, rows: Option<Against>, notes: &mut Vec<Note>) {
    let Some(stitches) = stitches else { return };
    let off_permille = stitches.off_permille;
    if off_permille.unsigned_abs() > STEP_PERMILLE * (2 * MOST_STEPS + 1) / 2 {
        notes.push(Note::FarOff { off_permille });
    }
    match rows {
        Some(rows) if stitches.matches && !rows.matches => notes.push(Note::RowsOnly {
            off_permille: rows.off_permille,
        }),
        _ => {}
    }
}
