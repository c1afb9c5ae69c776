//! The estimates, and which of them wins.

use super::practice::{EDGE_TIMES, per_stitch};
use super::{MEASURED_FROM, MEASURED_RESERVE, Piece, Question, Range, Strand, USUAL_RESERVE};
use crate::tables::yarn_weight::Weight;
use crate::units::rate::Rate;
use crate::units::{Gauge, Length};

/// Where an estimate comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Way {
    /// Every stitch is one turn round needle and yarn. Thought out, not published: common practice, no source.
    Wraps {
        /// How thick the needle is, or both.
        needle: Length,
        /// How thick the yarn is.
        yarn: Length,
    },
    /// [`EDGE_TIMES`] the edge. Common practice, no source.
    Edge {
        /// How long it will lie.
        width: Length,
    },
    /// The same by the gauge, where the edge was not measured. Common practice, no source.
    Gauge {
        /// The gauge.
        gauge: Gauge,
        /// How long the edge will lie by it.
        width: Length,
    },
    /// So much a stitch by the class of the yarn. Common practice, no source.
    Class {
        /// The class.
        weight: Weight,
        /// What one stitch takes of long-tail.
        each: Length,
    },
    /// What a piece used.
    Measured(Piece),
}

/// What the stitches need, by one way of reckoning: no reserve, no end.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Estimate {
    /// Where it comes from.
    pub way: Way,
    /// What some stitches take, before it is made more by the percents.
    pub piece: Piece,
    /// Percent of that at the least, by the rule and by the method.
    pub least_percent: u32,
    /// Percent of that at the most.
    pub most_percent: u32,
    /// What all stitches need. The tail is worked out with the most.
    pub needs: Range,
}

impl Estimate {
    /// What so many stitches need at the most, with a reserve of so many percent.
    pub(super) fn over(&self, stitches: u32, reserve: u32) -> Length {
        self.piece.over(stitches, self.most_percent, reserve)
    }

    /// How many stitches a length gives, each with a reserve of so many percent.
    pub(super) fn given_by(&self, length: Length, reserve: u32) -> u32 {
        self.piece.given_by(length, self.most_percent, reserve)
    }
}

/// Why an estimate wins.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Why {
    /// It was measured over [`MEASURED_FROM`] stitches or more.
    Measured,
    /// It is the largest, and what was measured rests on too few stitches to be trusted alone.
    FewMeasured,
    /// It is the largest: a tail too long is cut off, and one too short is begun again.
    Largest,
    /// The method needs no long tail.
    NoLongTail,
}

impl Why {
    /// The reserve on the stitches, in percent.
    pub(super) const fn reserve(self) -> u32 {
        match self {
            Self::Measured => MEASURED_RESERVE,
            Self::FewMeasured | Self::Largest => USUAL_RESERVE,
            Self::NoLongTail => 0,
        }
    }
}

/// Every estimate that can be made from what is known; none for a method that needs no long tail.
pub(super) fn all(question: &Question, strand: Strand) -> Vec<Estimate> {
    let mut all = Vec::new();
    let Strand::Thumb {
        least_percent: least,
        most_percent: most,
    } = strand
    else {
        return all;
    };
    let stitches = question.stitches;
    let mut add = |way: Way, piece: Piece, least: u32, most: u32| {
        all.push(Estimate {
            way,
            piece,
            least_percent: least,
            most_percent: most,
            needs: Range {
                least: piece.over(stitches, least, 0),
                most: piece.over(stitches, most, 0),
            },
        });
    };
    if let (Some(yarn), Some(needle)) = (question.yarn, question.needle) {
        let needle = needle.saturating_add(question.second.unwrap_or_default());
        let yarn = yarn.across();
        let turns = Piece::of_turns(needle.saturating_add(yarn));
        add(Way::Wraps { needle, yarn }, turns, least, most);
    }
    let mut by_edge = |way: Way, used: Length| {
        let [least, most] = [EDGE_TIMES.least * least, EDGE_TIMES.most * most];
        add(way, Piece { stitches, used }, least, most);
    };
    if let Some(width) = question.width {
        by_edge(Way::Edge { width }, width);
    }
    if let Some(gauge) = question.gauge {
        let width = Rate::of(gauge).width_of(stitches);
        by_edge(Way::Gauge { gauge, width }, width);
    }
    if let Some(yarn) = question.yarn {
        let weight = yarn.class();
        let each = per_stitch(weight);
        let (stitches, used) = (1, each);
        add(Way::Class { weight, each }, Piece { stitches, used }, least, most);
    }
    if let Some(piece) = question.measured {
        // It was cast on by the same method, so what the method takes is in it already.
        add(Way::Measured(piece), piece, 100, 100);
    }
    all
}

/// Which estimate wins.
pub(super) struct Decided {
    pub(super) wins: Option<usize>,
    pub(super) why: Why,
    /// The least that any says.
    pub(super) least: Length,
    /// The one that says the most.
    pub(super) largest: Option<usize>,
}

/// Which estimate wins, and why.
pub(super) fn decide(estimates: &[Estimate], measured: Option<Piece>) -> Decided {
    let largest = largest(estimates);
    let (wins, why) = match measured {
        _ if estimates.is_empty() => (None, Why::NoLongTail),
        Some(piece) if piece.stitches >= MEASURED_FROM => {
            let is_measured = |estimate: &Estimate| matches!(estimate.way, Way::Measured(_));
            (estimates.iter().position(is_measured), Why::Measured)
        }
        Some(_) => (largest, Why::FewMeasured),
        None => (largest, Why::Largest),
    };
    let least = estimates.iter().map(|estimate| estimate.needs.least).min();
    Decided {
        wins,
        why,
        least: least.unwrap_or(Length::ZERO),
        largest,
    }
}

/// The estimate that says the most; the first of several that say as much.
fn largest(estimates: &[Estimate]) -> Option<usize> {
    let all = estimates.iter().enumerate().rev();
    all.max_by_key(|(_, estimate)| estimate.needs.most)
        .map(|(place, _)| place)
}
