//! What a knitter should know beside the count, and the sum as steps. Data only: the page makes the sentences.

use super::fit::Fit;
use super::{Count, Knitting, Question};
use crate::spacing::Fraction;
use crate::units::{Gauge, Length};

/// One thing to know.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Note {
    /// `plus` stitches were dropped, since a round has no edges.
    PlusDropped {
        /// How many were asked for.
        plus: u32,
    },
    /// Join by working the first and the last stitch together; so many are left.
    JoinTogether {
        /// Stitches in the round from then on.
        after: u32,
    },
    /// The seams take in so many, and they are outside the width. One an edge is common practice, no source.
    SeamsTakeIn {
        /// Stitches, both edges together.
        stitches: u32,
    },
    /// Edge stitches stay to be seen, and make the piece wider than was asked.
    EdgesWiden {
        /// Stitches, both edges together.
        stitches: u32,
    },
    /// Two counts are equally near, and the smaller was picked, since knitting stretches; for drape take the other.
    Tie {
        /// The larger one: stitches to cast on.
        cast_on: u32,
    },
    /// One repeat is wider than what was wanted, so it is the fewest there can be.
    OneRepeatIsWider,
}

/// One line of the sum.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Step {
    /// Width times gauge: the count that would fit exactly.
    Ideal {
        /// The width that is wanted.
        width: Length,
        /// The washed gauge, with its span.
        gauge: Gauge,
        /// The count, exact; seldom whole.
        stitches: Fraction,
    },
    /// The nearest count that is a multiple, plus what is beside it.
    Multiple {
        /// Stitches of one repeat.
        of: u32,
        /// Repeats.
        repeats: u32,
        /// Stitches beside the repeats; none in the round.
        plus: u32,
        /// All of these.
        inside: u32,
    },
    /// That count at that gauge: its real width.
    Width {
        /// Stitches.
        inside: u32,
        /// The washed gauge, with its span.
        gauge: Gauge,
        /// How wide they are.
        width: Length,
    },
    /// What stands outside the width, at both edges.
    Outside {
        /// Stitches inside the width.
        inside: u32,
        /// Edge stitches at each edge.
        edge: u32,
        /// Seam stitches at each edge.
        seam: u32,
        /// All together.
        cast_on: u32,
    },
    /// One more for the join.
    Extra {
        /// Stitches of the round.
        worked: u32,
        /// One more.
        cast_on: u32,
    },
}

pub(super) fn notes(question: &Question, pick: &Count, other: Option<Count>) -> Vec<Note> {
    let mut notes = Vec::new();
    match question.knitting {
        Knitting::Round { extra } => {
            if question.multiple.plus > 0 {
                let plus = question.multiple.plus;
                notes.push(Note::PlusDropped { plus });
            }
            if extra {
                let after = pick.worked;
                notes.push(Note::JoinTogether { after });
            }
        }
        Knitting::Flat { edge, seam } => {
            if seam > 0 {
                let stitches = 2 * seam;
                notes.push(Note::SeamsTakeIn { stitches });
            }
            if edge > 0 {
                let stitches = 2 * edge;
                notes.push(Note::EdgesWiden { stitches });
            }
        }
    }
    if let Some(Count { cast_on, .. }) = other {
        notes.push(Note::Tie { cast_on });
    }
    if pick.repeats == 1 && pick.off > Length::ZERO {
        notes.push(Note::OneRepeatIsWider);
    }
    notes
}

pub(super) fn steps(question: &Question, fit: &Fit, pick: &Count) -> Vec<Step> {
    let (gauge, inside) = (question.gauge, pick.inside);
    let mut steps = vec![
        Step::Ideal {
            width: question.width,
            gauge,
            stitches: fit.ideal(),
        },
        Step::Multiple {
            of: question.multiple.of,
            repeats: pick.repeats,
            plus: inside - pick.repeats * question.multiple.of,
            inside,
        },
        Step::Width {
            inside,
            gauge,
            width: pick.width,
        },
    ];
    let Count { cast_on, worked, .. } = *pick;
    match question.knitting {
        Knitting::Flat { edge, seam } if edge + seam > 0 => steps.push(Step::Outside {
            inside,
            edge,
            seam,
            cast_on,
        }),
        Knitting::Round { extra: true } => steps.push(Step::Extra { worked, cast_on }),
        _ => {}
    }
    steps
}
