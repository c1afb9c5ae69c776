//! What a knitter should know beside needle and cords, and the sums as steps. Data only: the page makes the sentences.

use super::cord::Piece;
use super::{Answer, By, Question, SQUEEZE, Size};
use crate::tables::needle::JAPANESE;
use crate::units::{Gauge, Length};

/// One thing to know.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Note {
    /// Makers differ in what a number measures: the millimetres on the needle count.
    MakersDiffer,
    /// A needle that is not equal makes another gauge: the swatch decides.
    SwatchDecides,
    /// Only the gauge after washing is known, and on the needle the knitting is not washed.
    WashedGauge,
    /// A ruffle or a flare goes by its stitches, not by the body it goes round.
    GirthIsItsStitches,
    /// The tips of this cord should be no longer than so much, or it does not bend into a ring: are they?
    AskTip {
        /// The cord, tips and all.
        cord: Length,
        /// The longest tip.
        most: Length,
    },
    /// The tips of this cord are longer than so much, so it was left out.
    TooStiff {
        /// The cord, tips and all.
        cord: Length,
        /// The longest tip.
        most: Length,
    },
}

/// One line of a sum.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Step {
    /// 2.1 mm and 0.3 mm for each Japanese number above nought.
    Japanese {
        /// The number.
        number: u32,
        /// How thick it is.
        across: Length,
    },
    /// Stitches over the gauge: what lies on the needle, at the smallest and at the largest.
    Girth {
        /// Stitches.
        stitches: u32,
        /// The gauge, with its span.
        gauge: Gauge,
        /// How far round.
        girth: Length,
    },
    /// A cord that was picked: from its own length to twice it, or back and forth from nothing.
    Serves {
        /// The cord, tips and all.
        cord: Length,
        /// The smallest girth; nothing back and forth.
        least: Length,
        /// The largest.
        most: Length,
    },
}

pub(super) fn of_size(question: &Question, answer: &mut Answer) {
    match question.size {
        Some(Size::Japanese(number)) => {
            let across = answer.needles.first().map_or(Length::ZERO, |needle| needle.across);
            answer.steps.push(Step::Japanese {
                number: number.min(JAPANESE.most),
                across,
            });
        }
        Some(Size::Us(_) | Size::Uk(_)) => answer.notes.push(Note::MakersDiffer),
        _ => {}
    }
    let mut named = answer.needles.iter().flat_map(|needle| &needle.named);
    if named.any(|named| named.off != Length::ZERO) {
        answer.notes.push(Note::SwatchDecides);
    }
}

pub(super) fn of_cords(question: &Question, piece: &Piece, answer: &mut Answer) {
    match question.unwashed.or(question.washed) {
        Some(gauge) if !piece.is_girth() => {
            if question.unwashed.is_none() {
                answer.notes.push(Note::WashedGauge);
            }
            let (least, most) = (piece.rounds.iter().min(), piece.rounds.iter().max());
            for count in [least, most.filter(|most| Some(*most) != least)].into_iter().flatten() {
                answer.steps.push(Step::Girth {
                    stitches: u32::try_from(*count).unwrap_or(u32::MAX),
                    gauge,
                    girth: piece.girth(*count),
                });
            }
        }
        _ => answer.notes.push(Note::GirthIsItsStitches),
    }
    for cord in &answer.cords {
        let Some(most) = cord.tip else { continue };
        let cord_length = cord.length;
        if cord.stiff {
            answer.notes.push(Note::TooStiff {
                cord: cord_length,
                most,
            });
        } else if question.tip.is_none() && answer.picks.contains(&cord_length) {
            answer.notes.push(Note::AskTip {
                cord: cord_length,
                most,
            });
        }
    }
    for stretch in &answer.plan {
        let By::Cord(cord) = stretch.by else { continue };
        let least = if question.flat { Length::ZERO } else { cord };
        let step = Step::Serves {
            cord,
            least,
            most: cord.saturating_mul(SQUEEZE),
        };
        if !answer.steps.contains(&step) {
            answer.steps.push(step);
        }
    }
}
