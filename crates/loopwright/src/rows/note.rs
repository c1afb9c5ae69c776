//! What a knitter should know beside the rows, and the sum as steps. Data only: the page makes the sentences.

use super::chart::{Chart, Count};
use super::{Ask, Course, LONG, Question};
use crate::gauge::rate::{PARTS, Rate};
use crate::spacing::Fraction;
use crate::units::{Gauge, Length};

/// One thing to know.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Note {
    /// Garter in the round: knit one round, purl one; what is decreased or increased, is so on a knit round.
    KnitOnePurlOne,
    /// The number is odd, so the last ridge of garter is half done.
    HalfRidge,
    /// It does not end where it was to end in the chart: the neighbours do.
    EndsElsewhere,
    /// Two numbers are equally near, and the smaller was picked, since knitting stretches.
    Tie {
        /// The larger.
        rows: u32,
    },
    /// The fewest rows there can be are longer than what was wanted.
    FewestIsLonger,
    /// The tape was compared with the washed gauge, since no other is known: it may say ahead or behind and be wrong.
    UnwashedUnknown,
    /// There are already more rows than the number that would be right.
    Past {
        /// How many too many.
        rows: u32,
    },
    /// So long a piece drops when it is worn, by [`super::DROP`], if it is of cotton or superwash wool.
    MayDrop,
}

/// One line of the sum.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Step {
    /// Length times gauge: the number that would fit exactly, edges included.
    Ideal {
        /// The length that is wanted.
        length: Length,
        /// The washed gauge.
        gauge: Gauge,
        /// The number, exact; seldom whole.
        rows: Fraction,
        /// About so many of them are edges.
        edges: u32,
    },
    /// The nearest that ends as it should.
    Chart {
        /// Rows before the first repeat.
        set_up: u32,
        /// Whole repeats.
        repeats: u32,
        /// Rows of each.
        repeat: u32,
        /// Rows of one more.
        row: u32,
        /// All together.
        rows: u32,
    },
    /// That number at that gauge: its real length.
    Length {
        /// Rows.
        rows: u32,
        /// Edges, as high as a row each.
        edges: u32,
        /// The washed gauge.
        gauge: Gauge,
        /// How long they are.
        length: Length,
    },
    /// What the tape should say of what is done.
    Course {
        /// Rows that are done.
        rows: u32,
        /// The unwashed gauge, or the washed one in its place.
        gauge: Gauge,
        /// How long they should be.
        should_be: Length,
        /// How long they are.
        length: Length,
    },
}

pub(super) fn notes(
    question: &Question,
    chart: &Chart,
    pick: &Count,
    tie: Option<Count>,
    course: Option<&Course>,
) -> Vec<Note> {
    let mut notes = Vec::new();
    let garter = question.garter;
    let past = question.tape.map_or(0, |tape| tape.rows).saturating_sub(pick.rows);
    let ends_so = pick.rows >= chart.rest && (pick.rows - chart.rest).is_multiple_of(chart.of);
    let known = [
        (garter && question.round, Note::KnitOnePurlOne),
        (garter && pick.rows % 2 == 1, Note::HalfRidge),
        (!ends_so && question.repeat > 1, Note::EndsElsewhere),
        (pick.rows == chart.rest && pick.off > Length::ZERO, Note::FewestIsLonger),
        (course.is_some() && question.unwashed.is_none(), Note::UnwashedUnknown),
        (past > 0, Note::Past { rows: past }),
        (pick.length >= LONG, Note::MayDrop),
    ];
    for (holds, note) in known {
        if holds {
            notes.push(note);
        }
    }
    notes.extend(tie.map(|Count { rows, .. }| Note::Tie { rows }));
    notes
}

pub(super) fn steps(
    question: &Question,
    chart: &Chart,
    pick: &Count,
    wanted: Length,
    course: Option<&Course>,
) -> Vec<Step> {
    let (gauge, edges, rows) = (question.gauge, chart.edges, pick.rows);
    let mut steps = Vec::new();
    if let Ask::Length(_) = question.ask {
        let rate = Rate::of(gauge);
        let over = rate.count * i128::from(wanted.to_nm());
        let to_u64 = |value: i128| u64::try_from(value).unwrap_or(u64::MAX);
        steps.push(Step::Ideal {
            length: wanted,
            gauge,
            rows: Fraction::new(to_u64(over), to_u64(rate.span * PARTS)),
            edges,
        });
    }
    if question.repeat > 1 || question.set_up > 0 {
        steps.push(Step::Chart {
            set_up: question.set_up.min(rows),
            repeats: pick.repeats,
            repeat: question.repeat,
            row: pick.row,
            rows,
        });
    }
    let length = pick.length;
    steps.push(Step::Length {
        rows,
        edges,
        gauge,
        length,
    });
    if let (Some(tape), Some(course)) = (question.tape, course) {
        steps.push(Step::Course {
            rows: tape.rows,
            gauge: question.unwashed.unwrap_or(gauge),
            should_be: course.should_be,
            length: tape.length,
        });
    }
    steps
}
