//! What a knitter should know beside the counts, and the sums as steps. Data only: the page makes the sentences.

use super::fit::Keep;
use super::{Answer, Converted, Question};
use crate::sizing::PerMille;
use crate::spacing::Fraction;
use crate::units::{Gauge, Length};

/// One thing to know.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Note {
    /// The gauges are the same: everything stays.
    SameGauge,
    /// The two gauges were counted over different spans, and both were kept: 10 cm are not 4 in.
    SpansDiffer,
    /// `plus` stitches were dropped, since a round has no edges.
    PlusDropped {
        /// How many were asked for.
        plus: u32,
    },
    /// This count of the pattern is not the multiple that was asked for.
    NotTheMultiple {
        /// The count, as the pattern has it.
        count: u32,
    },
    /// Lengths by measure hold; what the pattern counts in rows does not when it is followed as it is.
    RowsMove {
        /// Rows more to the length than in the pattern.
        more: PerMille,
    },
    /// A row gauge is missing: rows and yarn were not looked at.
    RowsUnknown,
    /// There is no room for the shaping: it needs so many rows, or more stitches in each shaping row.
    TooSteep {
        /// Rows there are.
        rows: u32,
        /// Rows it needs.
        needs: u32,
    },
}

/// One line of the sum.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Step {
    /// A count, times the own gauge, over the pattern's; then the nearest that keeps what has to be kept.
    Convert {
        /// Whether these are rows.
        rows: bool,
        /// What there is in the pattern, without edges, seams and join.
        inside: u32,
        /// The pattern's gauge.
        pattern: Gauge,
        /// The own gauge.
        own: Gauge,
        /// What would keep the measure exactly.
        ideal: Fraction,
        /// What it becomes, with edges, seams and join.
        count: u32,
    },
    /// A length, times the own gauge: its rows.
    Length {
        /// The length.
        length: Length,
        /// The own gauge.
        own: Gauge,
        /// What would fit exactly.
        ideal: Fraction,
        /// Rows.
        rows: u32,
    },
    /// A size over the own gauge.
    Follow {
        /// Its stitches, without edges, seams and join.
        inside: u32,
        /// The own gauge.
        own: Gauge,
        /// What it measures.
        measures: Length,
    },
    /// From one end to the other, over what one shaping row changes.
    Shape {
        /// Stitches before.
        from: u32,
        /// Stitches after.
        to: u32,
        /// Stitches that one shaping row changes.
        each: u32,
        /// Shaping rows.
        times: u32,
    },
}

pub(super) fn explain(question: &Question, answer: &mut Answer) {
    let notes = &mut answer.notes;
    let rows = question.pattern_rows.zip(question.own_rows);
    let outside = question.beside() + question.extra();
    let same = answer.more_stitches.0 == 0 && answer.more_rows.is_none_or(|more| more.0 == 0);
    if same {
        notes.push(Note::SameGauge);
    }
    let spans = |(theirs, ours): (Gauge, Gauge)| theirs.span() != ours.span();
    if spans((question.pattern, question.own)) || rows.is_some_and(spans) {
        notes.push(Note::SpansDiffer);
    }
    let plus = question.multiple.plus;
    if plus > 0 && !question.is_flat() {
        notes.push(Note::PlusDropped { plus });
    }
    for count in &question.counts {
        let inside = count - outside;
        if !Keep::stitches(question, inside).allows(inside) {
            notes.push(Note::NotTheMultiple { count: *count });
        }
    }
    match answer.more_rows {
        Some(more) if more.0 != 0 => notes.push(Note::RowsMove { more }),
        Some(_) => {}
        None => notes.push(Note::RowsUnknown),
    }
    if let Some(shaped) = answer.shaping.filter(|shaped| shaped.needs > shaped.rows) {
        let (rows, needs) = (shaped.rows, shaped.needs);
        notes.push(Note::TooSteep { rows, needs });
    }
    let steps = &mut answer.steps;
    let convert = |rows: bool, found: &Converted, outside: u32, pattern: Gauge, own: Gauge| Step::Convert {
        rows,
        inside: found.pattern - outside,
        pattern,
        own,
        ideal: found.ideal,
        count: found.count,
    };
    if let Some(first) = answer.stitches.first() {
        steps.push(convert(false, first, outside, question.pattern, question.own));
    }
    if let Some((pattern, own)) = rows {
        steps.extend(answer.rows.first().map(|first| convert(true, first, 0, pattern, own)));
        steps.extend(answer.length.map(|found| Step::Length {
            length: found.was,
            own,
            ideal: found.ideal,
            rows: found.count,
        }));
    }
    if let Some(follow) = answer.follow {
        let inside = question.counts.get(follow.size).map_or(0, |count| count - outside);
        steps.push(Step::Follow {
            inside,
            own: question.own,
            measures: follow.measures,
        });
    }
    if let Some(shaped) = answer.shaping {
        let (from, to, each, times) = (shaped.from, shaped.to, shaped.each, shaped.times);
        steps.push(Step::Shape { from, to, each, times });
    }
}
