//! What a knitter should know beside the number of balls, and the sum as steps. Data only: the page makes the sentences.

use super::{Ask, Ball, Piece, Question, Rest, Route, Shape, StitchSum, Swatch, practice};
use crate::fabric::{Fabric, tex};
use crate::tables::Certainty;
use crate::units::{Length, Mass};

/// One thing to know.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Note {
    /// A swatch was weighed: that is better than any formula.
    Weighed,
    /// A formula was used: a swatch on the scale would be better.
    WeighingIsBetter,
    /// The swatch is so light that the scale's own step counts for much.
    WeighMore {
        /// From this weight on it is worth it.
        least: Mass,
    },
    /// The constants were found for machine-knitted wool.
    ConstantsAreForMachines,
    /// Only a garter gauge is known, and the number for it is practice.
    GarterIsPractice,
    /// A lace gauge was taken for stockinette: is it pinned out?
    LaceAsStockinette,
    /// The swatch was pinned out, and its gauge was brought back to rest.
    PinnedOut {
        /// By how much each way, in percent.
        percent: u32,
        /// By how much in a hundred the yarn would have been overstated.
        overstated: u32,
    },
    /// The swatch was not washed.
    Unwashed,
    /// A trapezoid is only the middle of what a shaping schedule may come to: sum the schedule where there is one.
    SumTheSchedule,
    /// A section was measured with a tape: a quick estimate.
    QuickEstimate,
    /// The edges of a section are not counted, since only its stitches are known.
    EdgesNotCounted,
    /// Two yarns are used: this is for one of them, and the other is asked for by itself.
    OneOfTwoYarns,
    /// The pattern's yarn is of another thickness, in grams for 1000 m.
    OtherThickness {
        /// The pattern's.
        pattern: u32,
        /// The one to be bought.
        own: u32,
    },
    /// Buy all of it from one dye lot.
    OneDyeLot,
}

/// One line of the sum.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Step {
    /// The stitches of a section; the shape is in the question.
    Section {
        /// Which section, from 0.
        index: usize,
        /// Worked once.
        once: StitchSum,
        /// How often.
        times: u32,
        /// Every time together.
        sum: StitchSum,
    },
    /// The stitches of all sections.
    Stitches {
        /// In all.
        sum: StitchSum,
    },
    /// `sqrt(product / density)`.
    Loop {
        /// Stitches in a square centimetre at rest, in thousandths.
        density: u32,
        /// The constant, in thousandths.
        product: u32,
        /// How sure the constant is.
        certainty: Certainty,
        /// The yarn in one stitch.
        length: Length,
    },
    /// The loop in each state of rest: this is what the constants alone may change, and it is less than the range.
    States {
        /// Never washed.
        dry: Length,
        /// Washed.
        wet: Length,
        /// Washed and tumbled.
        fully: Length,
    },
    /// The swatch on the scale: its length by the ball's, shared out between its loops.
    Weighed {
        /// What it weighs.
        mass: Mass,
        /// Yarn in it.
        swatch: Length,
        /// Loops in it, its edges counted as loops.
        loops: u64,
        /// Whether the edges are among them.
        edges: bool,
        /// The yarn in one stitch.
        length: Length,
    },
    /// How far it may be off, in ten-thousandths: hand and reading together, a tenth at the least.
    Spread {
        /// Hand, fibre and constants.
        hand: u32,
        /// Reading the tape or the scale.
        reading: u32,
        /// What the range is made with.
        spread: u32,
    },
    /// The pattern's balls: more than one fewer, up to all of them.
    Pattern {
        /// How many.
        balls: u32,
        /// Of this one.
        ball: Ball,
        /// The least that would have them ask for so many.
        least: Length,
        /// All of them.
        most: Length,
    },
    /// The top of the range, the reserve on it, the ends of every change of ball: what has to be bought.
    Need {
        /// Top of the range, joins left out.
        top: Length,
        /// Reserve.
        reserve: Length,
        /// Ends at the changes.
        joins: Length,
        /// Together.
        need: Length,
    },
    /// What is needed, in balls.
    Balls {
        /// What has to be bought.
        need: Length,
        /// One ball.
        ball: Length,
        /// In thousandths of a ball, rounded up, so that it never reads as fewer than are needed.
        thousandths: u64,
        /// Whole balls.
        balls: u32,
    },
    /// What is bought less what is expected.
    Left {
        /// On the balls.
        bought: Length,
        /// Expected to be used.
        expected: Length,
        /// The rest.
        leftover: Length,
    },
}

/// What there is to say about a piece.
pub(super) fn of_piece(piece: &Piece, route: Route) -> Vec<Note> {
    let mut notes = match route {
        Route::Weighed => vec![Note::Weighed],
        Route::Stockinette => vec![Note::WeighingIsBetter, Note::ConstantsAreForMachines],
        Route::Garter => vec![Note::WeighingIsBetter, Note::GarterIsPractice],
        Route::Lace => vec![Note::WeighingIsBetter, Note::LaceAsStockinette],
    };
    match piece.swatch {
        Swatch::Weighed { mass, .. } if mass < practice::SWATCH_MASS => notes.push(Note::WeighMore {
            least: practice::SWATCH_MASS,
        }),
        Swatch::Gauge {
            rest: Rest::PinnedOut { percent },
            ..
        } => notes.push(Note::PinnedOut {
            percent,
            // The loop goes with the root of the density, and that with the square of the stretch.
            overstated: percent,
        }),
        Swatch::Gauge {
            rest: Rest::Unwashed, ..
        } => notes.push(Note::Unwashed),
        _ => {}
    }
    let any = |is: fn(&super::Section) -> bool| piece.sections.iter().any(is);
    let told = [
        (
            any(|s| matches!(s.shape, Shape::Trapezoid { from, to, .. } if from != to)),
            Note::SumTheSchedule,
        ),
        (any(|s| matches!(s.shape, Shape::Area { .. })), Note::QuickEstimate),
        (
            any(|s| matches!(s.shape, Shape::Stitches(_)) && (s.cast_on || s.bind_off.is_some())),
            Note::EdgesNotCounted,
        ),
        (
            any(|s| matches!(s.fabric, Fabric::Stranded { .. })),
            Note::OneOfTwoYarns,
        ),
    ];
    notes.extend(told.into_iter().filter_map(|(said, note)| said.then_some(note)));
    notes
}

/// What there is to say about a pattern's yarn: whether it is thicker or thinner by more than a tenth.
pub(super) fn of_pattern(question: &Question) -> Vec<Note> {
    let Ask::Balls { ball, .. } = question.ask else {
        return Vec::new();
    };
    let tex_of = |ball: Ball| tex(ball.mass, ball.length);
    match (tex_of(ball), tex_of(question.ball)) {
        (Some(pattern), Some(own)) if (own / pattern - 1.0).abs() > 0.1 => {
            vec![Note::OtherThickness {
                pattern: pattern.round() as u32,
                own: own.round() as u32,
            }]
        }
        _ => Vec::new(),
    }
}
