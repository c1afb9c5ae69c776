//! What else she should know of a pattern at another gauge: what stays out of the measures, what the counts of rows keep,
//! and what waits for a row gauge.

use super::{NO_REPEAT, Question};
use crate::cast_on::Knitting;

/// What else she should know.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Note {
    /// A round has no edges: these stitches beside the repeats are dropped.
    PlusDropped {
        /// How many.
        plus: u32,
    },
    /// Edges and the join are in the counts, not in their measures.
    Outside,
    /// The two gauges were counted over different spans.
    SpansDiffer,
    /// Rows end in the same row of the repeat as the pattern's, where stitches go to whole multiples.
    SameRow {
        /// Rows of one repeat.
        repeat: u32,
    },
    /// Back and forth, rows stay odd or even, so that the last is on the same side.
    SameSide,
    /// Both ends of the shaping are converted, and its rate is not.
    SharedOut,
    /// The first row of the shaping is taken as a right-side row.
    RowOneIsRightSide,
}

/// What the rows, the length and the shaping wait for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum RowsWait {
    /// The pattern's row gauge.
    Pattern,
    /// The knitter's own.
    Own,
    /// Both.
    Both,
}

impl RowsWait {
    pub(super) fn of(question: &Question) -> Option<Self> {
        match (question.pattern_rows, question.own_rows) {
            _ if !question.asks_rows() => None,
            (Some(_), Some(_)) => None,
            (None, Some(_)) => Some(Self::Pattern),
            (Some(_), None) => Some(Self::Own),
            (None, None) => Some(Self::Both),
        }
    }
}

/// The notes on a question that was answered, in the order they are told.
pub(super) fn notes(question: &Question) -> Vec<Note> {
    let Question { knitting, multiple, .. } = question;
    let has_outside = match knitting {
        Knitting::Round { extra } => *extra,
        Knitting::Flat { .. } => question.edge_stitches() > 0,
    };
    let answers_rows = RowsWait::of(question).is_none();
    let has_rows = answers_rows && !question.rows.is_empty();
    let has_shaping = answers_rows && question.shaping.is_some();
    let repeat = question.row_repeat;
    let counts_rows = has_rows || has_shaping;
    let all = [
        (!question.is_flat() && multiple.plus > 0).then_some(Note::PlusDropped { plus: multiple.plus }),
        has_outside.then_some(Note::Outside),
        (question.pattern.span() != question.own.span()).then_some(Note::SpansDiffer),
        (counts_rows && repeat > NO_REPEAT).then_some(Note::SameRow { repeat }),
        (counts_rows && question.is_flat()).then_some(Note::SameSide),
        has_shaping.then_some(Note::SharedOut),
        (has_shaping && question.is_flat()).then_some(Note::RowOneIsRightSide),
    ];
    all.into_iter().flatten().collect()
}
