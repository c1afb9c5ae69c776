//! What a knitter should know beside the tail, and the sums as steps. Data only: the page makes the sentences.

use super::{Estimate, MEASURED_FROM, Measured, Method, Needle, Question, Range, Strand, TWO_STRANDS_ABOVE};
use crate::tables::Certainty;
use crate::tables::yarn_weight::Weight;
use crate::units::{Gauge, Length};

/// Estimates further apart than this, in percent of the smallest, are remarked on.
const APART: i128 = 25;

/// One thing to know.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Note {
    /// The tail is the strand that goes round the thumb.
    ThumbStrand,
    /// The needle is the one that is cast on with, which is not always the one that is knitted with.
    NeedleOfTheCastOn,
    /// Two needles are held together: the yarn goes round both.
    TwoNeedles {
        /// The two together.
        together: Length,
    },
    /// A measured piece counts by the tail it used, not by what was left, and without the slip knot.
    UsedNotLeft,
    /// A piece of so many stitches says little: one stitch miscounted moves it by so much.
    FewMeasured {
        /// Stitches that were measured.
        stitches: u32,
        /// So many would be enough.
        enough: u32,
        /// What one stitch more or less makes, in percent, rounded.
        percent: u32,
    },
    /// The largest estimate is so much above the smallest: measure a piece.
    Apart {
        /// In percent of the smallest, rounded.
        percent: u32,
    },
    /// With so many stitches two strands are easier than a long tail.
    TwoStrandsAreEasier {
        /// Above so many. Common practice, no source.
        above: u32,
    },
    /// The stitches are drawn from the ball; the tail is an end to weave in.
    EndOnly,
    /// Cast on half the stitches in waste yarn, which needs no tail of the yarn itself.
    HalfInWaste {
        /// Stitches in waste yarn.
        stitches: u32,
        /// Whether the count is odd, so that the half was rounded up and the first round gives one fewer than twice it.
        odd: bool,
    },
    /// A second strand, from the other end of the ball or another ball, is the tail; there is an end more to weave in.
    SecondStrand,
}

/// One line of a sum.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Step {
    /// The span over the wraps: how thick the yarn is.
    WrapsDiameter {
        /// Wraps in their span.
        wraps: Gauge,
        /// How thick it is.
        diameter: Length,
    },
    /// How thick a yarn of the class is at the thick end.
    ClassDiameter {
        /// The class.
        weight: Weight,
        /// How thick it is.
        diameter: Length,
        /// How sure the wraps of the class are.
        certainty: Certainty,
    },
    /// Two needles held together are as thick as both.
    TwoNeedles {
        /// One.
        first: Length,
        /// The other.
        second: Length,
        /// Both.
        together: Length,
    },
    /// Pi times needle and yarn: one turn.
    Turn {
        /// How thick the needle is, or both.
        needle: Length,
        /// How thick the yarn is.
        yarn: Length,
        /// One turn.
        each: Length,
    },
    /// Three to four times the edge.
    EdgeRule {
        /// The edge.
        width: Length,
        /// So many times at the least.
        least_times: u32,
        /// So many times at the most.
        most_times: u32,
        /// What that makes.
        needs: Range,
    },
    /// So much a stitch by the class of the yarn.
    StitchRule {
        /// The class.
        weight: Weight,
        /// Stitches.
        stitches: u32,
        /// For one.
        each: Length,
        /// What that makes.
        needs: Length,
    },
    /// What was measured over its stitches.
    Piece {
        /// Stitches that were measured.
        stitches: u32,
        /// What they used.
        used: Length,
        /// One stitch.
        each: Length,
    },
    /// Stitches times what one takes.
    Stitches {
        /// Stitches.
        stitches: u32,
        /// What one takes.
        each: Length,
        /// What all take.
        needs: Range,
    },
    /// The method takes so many percent of long-tail.
    Method {
        /// The method.
        method: Method,
        /// At the least.
        least_percent: u32,
        /// At the most.
        most_percent: u32,
        /// What that makes.
        needs: Range,
    },
    /// The reserve, on the stitches only.
    Reserve {
        /// What the stitches need.
        needs: Length,
        /// Reserve in percent.
        percent: u32,
        /// Both.
        with: Length,
    },
    /// The end to weave in, once.
    End {
        /// Stitches and reserve.
        with: Length,
        /// The end.
        end: Length,
        /// The tail.
        tail: Length,
    },
    /// The tail is the end to weave in, and nothing else.
    OnlyEnd {
        /// The end.
        end: Length,
    },
}

pub(super) fn notes(question: &Question, estimates: &[Estimate]) -> Vec<Note> {
    let stitches = question.stitches;
    match question.method.row().strand {
        Strand::Thumb { .. } => thumb_notes(question, estimates),
        Strand::EndOnly => vec![Note::EndOnly],
        Strand::HalfInWaste => vec![
            Note::EndOnly,
            Note::HalfInWaste {
                stitches: stitches.div_ceil(2),
                odd: stitches % 2 == 1,
            },
        ],
        Strand::Second => vec![Note::SecondStrand],
    }
}

fn thumb_notes(question: &Question, estimates: &[Estimate]) -> Vec<Note> {
    let mut notes = vec![Note::ThumbStrand];
    if let (Some(needle), Some(_)) = (question.needle, question.yarn) {
        notes.push(Note::NeedleOfTheCastOn);
        if let Needle::Two(..) = needle {
            let together = needle.across();
            notes.push(Note::TwoNeedles { together });
        }
    }
    if let Some(Measured { stitches, .. }) = question.measured {
        notes.push(Note::UsedNotLeft);
        if stitches < MEASURED_FROM {
            notes.push(Note::FewMeasured {
                stitches,
                enough: MEASURED_FROM,
                percent: (100 + stitches / 2) / stitches.max(1),
            });
        }
    }
    notes.extend(apart(estimates));
    if question.stitches > TWO_STRANDS_ABOVE {
        let above = TWO_STRANDS_ABOVE;
        notes.push(Note::TwoStrandsAreEasier { above });
    }
    notes
}

/// Whether the estimates are far apart.
fn apart(estimates: &[Estimate]) -> Option<Note> {
    let most = || estimates.iter().map(|estimate| i128::from(estimate.needs.most.to_nm()));
    let (smallest, largest) = (most().min()?.max(1), most().max()?);
    let percent = (200 * (largest - smallest) + smallest) / (2 * smallest);
    let percent = (percent >= APART).then_some(percent)?;
    Some(Note::Apart {
        percent: u32::try_from(percent).unwrap_or(u32::MAX),
    })
}

/// From the winning estimate to the tail.
pub(super) fn steps(wins: &Estimate, percent: u32, with: Length, end: Length, tail: Length) -> Vec<Step> {
    let needs = wins.needs.most;
    vec![Step::Reserve { needs, percent, with }, Step::End { with, end, tail }]
}
