//! What a knitter should know beside the number of balls. Data only: the page makes the sentences.

use super::{Ask, Ball, Question, Rest, Section, Shape, Swatch, practice};
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
    /// A section ends with live stitches although nothing goes on from them. A plain bind-off there takes so much more.
    LeftOpen {
        /// The section's place, counted from nought.
        section: u32,
        /// What a plain bind-off takes, with its end. Common practice, no source.
        bind_off: Length,
    },
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
    let mut found = match &question.ask {
        Ask::Piece(piece) => {
            let sections = piece.sections.iter().flat_map(of_section);
            of_swatch(&piece.swatch).into_iter().chain(sections).collect()
        }
        Ask::Balls { ball, .. } => of_balls(question.ball, *ball),
        Ask::Length(_) => Vec::new(),
    };
    found.extend(many_balls.then_some(Note::OneDyeLot));
    // Two sections may say the same.
    let mut notes = Vec::new();
    for note in found {
        if !notes.contains(&note) {
            notes.push(note);
        }
    }
    notes
}

fn of_swatch(swatch: &Swatch) -> Vec<Note> {
    match *swatch {
        Swatch::Weighed { mass, .. } => {
            let is_light = mass < practice::SWATCH_MASS;
            let light = is_light.then_some(Note::WeighMore);
            [Note::Weighed].into_iter().chain(light).collect()
        }
        Swatch::Gauge { fabric, rest, .. } => {
            let fabric = match fabric {
                Fabric::Garter => Some(Note::GarterIsPractice),
                Fabric::Lace => Some(Note::LaceAsStockinette),
                Fabric::Stockinette | Fabric::Rib | Fabric::Cable | Fabric::Stranded => None,
            };
            let rest = match rest {
                Rest::Washed => None,
                Rest::Unwashed => Some(Note::Unwashed),
                Rest::PinnedOut { .. } => Some(Note::PinnedOut),
            };
            [Note::WeighingIsBetter].into_iter().chain(fabric).chain(rest).collect()
        }
    }
}

fn of_section(section: &Section) -> Vec<Note> {
    let has_edges = section.cast_on || section.bind_off.is_some();
    let shape = match section.shape {
        Shape::Trapezoid { stitches, to, .. } => (stitches != to).then_some(Note::SumTheSchedule),
        Shape::Rows(_) | Shape::Measured { .. } => None,
        Shape::Stitches(_) => has_edges.then_some(Note::EdgesNotCounted),
    };
    let both = (section.fabric == Fabric::Stranded).then_some(Note::BothYarns);
    shape.into_iter().chain(both).collect()
}

fn of_balls(own: Ball, theirs: Ball) -> Vec<Note> {
    let tex_of = |ball: Ball| ball.mass.and_then(|mass| tex(mass, ball.length));
    let is_other = match (tex_of(own), tex_of(theirs)) {
        (Some(own), Some(theirs)) => (own / theirs - 1.0).abs() > 0.1,
        // Without both weights nothing is known of how thick they are.
        _ => false,
    };
    is_other.then_some(Note::OtherThickness).into_iter().collect()
}
