//! What a knitter should know beside the rounds, and the sum as steps. Data only: the page makes the sentences.

use super::fit::Fit;
use super::{Hang, Hem, Question, Shape};
use crate::units::{Gauge, Length};

/// One thing to know.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Note {
    /// The hem is so much wider than was asked, narrower when negative: the nearest that lines and repeats allow.
    HemMoved {
        /// By how much.
        by: Length,
    },
    /// The last increase round has fewer increases than the others.
    RestInLast {
        /// How many.
        stitches: u32,
    },
    /// A ruffle: its girth is its stitches, on the needle too, and its depth does not make it reach farther out.
    GirthIsItsStitches {
        /// The stitches over the circle they lie on, in thousandths.
        fullness: u32,
    },
}

/// One line of the sum.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Step {
    /// Depth times row gauge.
    Rounds {
        /// The depth that is wanted.
        depth: Length,
        /// The row gauge, with its span.
        row_gauge: Gauge,
        /// Rounds.
        rounds: u32,
    },
    /// The hem less the neck, in increase rounds.
    Gain {
        /// Stitches at the neck.
        neck: u32,
        /// Stitches at the hem.
        hem: u32,
        /// Stitches gained.
        gain: u32,
        /// In one increase round.
        each: u32,
        /// Increase rounds.
        increase_rounds: u32,
    },
    /// `2 pi h / w`: stitches in a length over rows in it, times 2 pi; times the rounds, rounded once.
    Flat {
        /// The stitch gauge.
        gauge: Gauge,
        /// The row gauge.
        row_gauge: Gauge,
        /// Stitches a round, in thousandths.
        rate: u32,
        /// Stitches in all the rounds.
        gain: u32,
    },
}

pub(super) fn notes(question: &Question, fit: &Fit, hang: Hang, shape: &Shape) -> Vec<Note> {
    let mut notes = Vec::new();
    if let Hem::Girth(girth) = question.hem {
        // Closer than this is the rounding to whole stitches, which every hem has.
        let by = shape.hem_girth.saturating_sub(girth);
        let stitch = question.gauge.width_of(1.0).unwrap_or(Length::ZERO);
        if by.to_nm().saturating_abs() > stitch.to_nm() {
            notes.push(Note::HemMoved { by });
        }
    }
    let stitches = fit.gain % question.each;
    if stitches > 0 {
        notes.push(Note::RestInLast { stitches });
    }
    if hang == Hang::Ruffle {
        let fullness = shape.fullness;
        notes.push(Note::GirthIsItsStitches { fullness });
    }
    notes
}

pub(super) fn steps(question: &Question, fit: &Fit) -> Vec<Step> {
    let Question {
        neck,
        depth,
        gauge,
        row_gauge,
        each,
        ..
    } = *question;
    let Fit {
        rounds,
        hem,
        gain,
        increase_rounds,
        ..
    } = *fit;
    vec![
        Step::Rounds {
            depth,
            row_gauge,
            rounds,
        },
        Step::Gain {
            neck,
            hem,
            gain,
            each,
            increase_rounds,
        },
        Step::Flat {
            gauge,
            row_gauge,
            rate: (fit.flat_rate * 1_000.0).round() as u32,
            gain: fit.flat_gain,
        },
    ]
}
