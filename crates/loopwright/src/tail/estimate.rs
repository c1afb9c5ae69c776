//! The three estimates, and which of them wins.

use super::practice::{EDGE_TIMES, across_nm, per_stitch, weight};
use super::rate::Rate;
use super::{MEASURED_FROM, Measured, Needle, Question, Range, Step, Strand, Thickness};
use crate::bounds::Bounds;
use crate::tables::Certainty;
use crate::tables::yarn_weight::class;
use crate::units::Length;

/// Where an estimate comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Way {
    /// Every stitch is one turn round needle and yarn. Thought out, not published.
    Wraps,
    /// So many times the edge, or so much a stitch. Common practice, no source.
    Practice,
    /// What a piece used.
    Measured,
}

/// What the stitches need, by one way of reckoning: no reserve, no end.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Estimate {
    /// Where it comes from.
    pub way: Way,
    /// What the stitches need. The tail is worked out with the most.
    pub needs: Range,
    /// What one stitch needs at the most.
    pub each: Length,
    /// How sure the rule is.
    pub certainty: Certainty,
    /// The sum.
    pub steps: Vec<Step>,
}

/// What would have to be known for an estimate that is not there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Missing {
    /// Wraps: the needle that is cast on with.
    Needle,
    /// Wraps, and practice by the stitch: wraps an inch or the class of the yarn.
    Yarn,
    /// Practice by the edge: how long it will lie.
    Width,
    /// Measured: a piece of [`MEASURED_FROM`] stitches.
    Piece,
}

/// Why an estimate wins.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Why {
    /// It was measured over enough stitches.
    MeasuredOnEnough {
        /// Over so many.
        stitches: u32,
    },
    /// It is the largest, and what was measured rests on too few stitches to be trusted alone.
    LargestSinceMeasuredOnFew {
        /// Over so many.
        stitches: u32,
        /// So many would have been enough.
        enough: u32,
    },
    /// It is the largest: a tail too long is cut off, and one too short is begun again.
    Largest,
    /// It is the only one.
    Only,
    /// The method needs no long tail.
    NoLongTail,
}

/// An estimate, and the exact rate it was made with.
pub(super) struct Made {
    pub(super) estimate: Estimate,
    pub(super) rate: Rate,
}

/// Every estimate that can be made from what is known, in the order of [`Way`].
pub(super) fn all(question: &Question) -> Vec<Made> {
    [wraps(question), practice(question), measured(question)]
        .into_iter()
        .flatten()
        .collect()
}

/// Which estimate wins, and why; none where there is none.
pub(super) fn decide(made: &[Made], measured: Option<Measured>) -> Option<(usize, Why)> {
    let of = |way: Way| made.iter().position(|made| made.estimate.way == way);
    let largest = (0..made.len()).max_by_key(|index| made[*index].estimate.needs.most)?;
    let measured = of(Way::Measured).zip(measured.map(|measured| measured.stitches));
    Some(match measured {
        Some((index, stitches)) if stitches >= MEASURED_FROM => (index, Why::MeasuredOnEnough { stitches }),
        _ if made.len() == 1 => (largest, Why::Only),
        Some((_, stitches)) => {
            let enough = MEASURED_FROM;
            (largest, Why::LargestSinceMeasuredOnFew { stitches, enough })
        }
        None => (largest, Why::Largest),
    })
}

/// What is not known, in the order of the fields.
pub(super) fn missing(question: &Question) -> Vec<Missing> {
    let missing = [
        (question.yarn.is_none(), Missing::Yarn),
        (question.needle.is_none(), Missing::Needle),
        (question.width.is_none(), Missing::Width),
        (question.measured.is_none(), Missing::Piece),
    ];
    let is_so = missing.into_iter().filter(|(is, _)| *is);
    is_so.map(|(_, missing)| missing).collect()
}

/// The percent of long-tail the method takes.
fn percent(question: &Question) -> (u32, u32) {
    match question.method.row().strand {
        Strand::Thumb {
            least_percent,
            most_percent,
        } => (least_percent, most_percent),
        _ => (100, 100),
    }
}

fn wraps(question: &Question) -> Option<Made> {
    let (yarn, needle) = (question.yarn?, question.needle?);
    let mut steps = Vec::new();
    let (across, diameter) = match yarn {
        Thickness::Wraps(wraps) => {
            let exact = across_nm(wraps).to_f64();
            let diameter = Length::from_nm(exact.round() as i64);
            steps.push(Step::WrapsDiameter { wraps, diameter });
            (exact, diameter)
        }
        Thickness::Class(weight) => {
            let diameter = class(weight).default_diameter();
            let certainty = class(weight).wraps_certainty;
            steps.push(Step::ClassDiameter {
                weight,
                diameter,
                certainty,
            });
            (diameter.to_nm() as f64, diameter)
        }
    };
    if let Needle::Two(first, second) = needle {
        let together = needle.across();
        steps.push(Step::TwoNeedles {
            first,
            second,
            together,
        });
    }
    let turn = Rate::turn(needle.across().to_nm() as f64 + across);
    steps.push(Step::Turn {
        needle: needle.across(),
        yarn: diameter,
        each: turn.over(1, 0),
    });
    // One turn a stitch is a thought of ours that the practice rules agree with: no more than practice.
    Some(made(question, Way::Wraps, (turn, turn), Certainty::Practice, steps))
}

/// By the edge and by the stitch; where both are known, the wider range of the two.
fn practice(question: &Question) -> Option<Made> {
    let mut steps = Vec::new();
    let mut rates: Vec<(Rate, Rate)> = Vec::new();
    let stitches = question.stitches;
    if let Some(width) = question.width {
        let Bounds { least, most } = EDGE_TIMES;
        let times = |times: u32| Rate::new(width.saturating_mul(i64::from(times)), stitches);
        let (low, high) = (times(least), times(most));
        steps.push(Step::EdgeRule {
            width,
            least_times: least,
            most_times: most,
            needs: needs(stitches, low, high),
        });
        rates.push((low, high));
    }
    if let Some(weight) = question.yarn.map(weight) {
        let each = per_stitch(weight);
        let rate = Rate::new(each, 1);
        steps.push(Step::StitchRule {
            weight,
            stitches,
            each,
            needs: rate.over(stitches, 0),
        });
        rates.push((rate, rate));
    }
    let each = |rate: &Rate| rate.over(stitches, 0);
    let least = rates.iter().map(|(least, _)| *least).min_by_key(each)?;
    let most = rates.iter().map(|(_, most)| *most).max_by_key(each)?;
    Some(made(question, Way::Practice, (least, most), Certainty::Practice, steps))
}

/// What a piece used. It was cast on by the same method, so the method's factor is in it already.
fn measured(question: &Question) -> Option<Made> {
    let Measured { stitches, used } = question.measured?;
    let rate = Rate::new(used, stitches);
    let each = rate.over(1, 0);
    let needs = needs(question.stitches, rate, rate);
    let steps = vec![
        Step::Piece { stitches, used, each },
        Step::Stitches {
            stitches: question.stitches,
            each,
            needs,
        },
    ];
    let estimate = Estimate {
        way: Way::Measured,
        needs,
        each,
        certainty: Certainty::Computed,
        steps,
    };
    Some(Made { estimate, rate })
}

/// An estimate for long-tail becomes one for the method.
fn made(question: &Question, way: Way, (low, high): (Rate, Rate), certainty: Certainty, mut steps: Vec<Step>) -> Made {
    let stitches = question.stitches;
    let (least_percent, most_percent) = percent(question);
    if way == Way::Wraps {
        steps.push(Step::Stitches {
            stitches,
            each: high.over(1, 0),
            needs: needs(stitches, low, high),
        });
    }
    let (low, high) = (low.percent(least_percent), high.percent(most_percent));
    let needs = needs(stitches, low, high);
    if (least_percent, most_percent) != (100, 100) {
        steps.push(Step::Method {
            method: question.method,
            least_percent,
            most_percent,
            needs,
        });
    }
    let estimate = Estimate {
        way,
        needs,
        each: high.over(1, 0),
        certainty,
        steps,
    };
    Made { estimate, rate: high }
}

fn needs(stitches: u32, least: Rate, most: Rate) -> Range {
    Range {
        least: least.over(stitches, 0),
        most: most.over(stitches, 0),
    }
}
