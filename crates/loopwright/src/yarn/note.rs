//! What a knitter should know beside the number of balls. Data only: the page makes the sentences.

use super::{Ask, Ball, Question, Rest, Shape, Swatch, practice};
use crate::fabric::{Fabric, tex};
use crate::units::Length;

/// One thing to know.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Note {
    /// A swatch was weighed: that is better than any formula.
    Weighed,
    /// A formula was used, with constants that were found for machine-knitted wool: a swatch on the scale is better.
    WeighingIsBetter,
    /// The swatch is lighter than [`practice::SWATCH_MASS`], so that the scale's own step counts for much.
    WeighMore,
    /// Only a garter gauge is known, and the number for it is practice.
    GarterIsPractice,
    /// A lace gauge was taken for stockinette: is it pinned out?
    LaceAsStockinette,
    /// The swatch was pinned out, and its gauge was brought back to rest.
    PinnedOut,
    /// The swatch was not washed.
    Unwashed,
    /// A trapezoid is only the middle of what a shaping schedule may come to: sum the schedule where there is one.
    SumTheSchedule,
    /// The edges of a section are not counted, since only its stitches are known.
    EdgesNotCounted,
    /// Two yarns are used: this is for both together.
    BothYarns,
    /// The pattern's yarn is thicker or thinner by more than a tenth.
    OtherThickness,
    /// Buy all of it from one dye lot.
    OneDyeLot,
}

/// What there is to say of the last ball: that it holds reserve only, or that the need lies within a twentieth of a ball
/// of a whole number of balls. Nothing is said of the second where the very ball of the pattern is bought.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Close {
    /// Just enough, and as many are expected to be used: buy one more, or swatch.
    JustUnder {
        /// What the balls hold beyond the need; it may be nothing.
        spare: Length,
    },
    /// The last ball is for a few metres, and not only for the reserve: a slightly shorter piece would do without it.
    JustOver {
        /// What is needed beyond what one ball fewer holds.
        over: Length,
    },
    /// Even the top of the range does without the last balls.
    ReserveOnly {
        /// How many.
        balls: u32,
    },
}

/// What there is to say.
pub(super) fn notes(question: &Question, many_balls: bool) -> Vec<Note> {
    let mut notes = Vec::new();
    let mut tell = |is_so: bool, note: Note| {
        if is_so && !notes.contains(&note) {
            notes.push(note);
        }
    };
    tell_of(&question.ask, question.ball, &mut tell);
    tell(many_balls, Note::OneDyeLot);
    notes
}

fn tell_of(ask: &Ask, ball: Ball, tell: &mut dyn FnMut(bool, Note)) {
    match ask {
        Ask::Piece(piece) => {
            match piece.swatch {
                Swatch::Weighed { mass, .. } => {
                    tell(true, Note::Weighed);
                    tell(mass < practice::SWATCH_MASS, Note::WeighMore);
                }
                Swatch::Gauge { fabric, rest, .. } => {
                    tell(true, Note::WeighingIsBetter);
                    tell(fabric == Fabric::Garter, Note::GarterIsPractice);
                    tell(fabric == Fabric::Lace, Note::LaceAsStockinette);
                    tell(rest == Rest::Unwashed, Note::Unwashed);
                    tell(matches!(rest, Rest::PinnedOut { .. }), Note::PinnedOut);
                }
            }
            for section in &piece.sections {
                let has_edges = section.cast_on || section.bind_off.is_some();
                match section.shape {
                    Shape::Trapezoid { stitches, to, .. } => tell(stitches != to, Note::SumTheSchedule),
                    Shape::Rows(_) | Shape::Measured { .. } => {}
                    Shape::Stitches(_) => tell(has_edges, Note::EdgesNotCounted),
                }
                tell(section.fabric == Fabric::Stranded, Note::BothYarns);
            }
        }
        Ask::Balls { ball: theirs, .. } => {
            let [own, theirs] = [ball, *theirs].map(|ball| tex(ball.mass, ball.length).unwrap_or(1.0));
            tell((own / theirs - 1.0).abs() > 0.1, Note::OtherThickness);
        }
        Ask::Length(_) => {}
    }
}
