//! What a size measures at the knitter's own gauge, and what else her gauge moves.
//!
//! Girth = stitches / own gauge, where the size's stitches are known: the pattern has rounded them to whole repeats, and
//! that can be a centimetre or two. Without the stitches it is the listed girth by the two gauges. A range of bodies
//! moves by as much as the garment does, since the ease the designer meant stays the same.
//!
//! Lengths that are knitted *to a measure* hold; lengths that are knitted *by rows* do not. Yarn for a piece of the same
//! measures goes with the square root of stitches times rows to the area (a stitch's yarn goes with one over that root:
//! Munden 1959, as others quote it), so 10 % more of them is 4.9 % more yarn.

use super::{Gauges, Listed, PerMille, Question, Size, Span};
use crate::bounds::Bounds;
use crate::units::rate::Rate;
use crate::units::{Gauge, Length};

/// A usual armhole, to show on it what rows do. Common practice, no source.
pub const ARMHOLE: Length = Length::from_mm(220);

/// What the stitches of a size may make of its listed girth before they are left out. Common practice, no source.
const BELIEVED: Bounds<PerMille> = Bounds::new(PerMille(850), PerMille(1_150));
/// The same where bodies are listed, and the garment may have any ease, or where the gauge is not the pattern's.
const BELIEVED_OF_BODY: Bounds<PerMille> = Bounds::new(PerMille(700), PerMille(1_600));

/// What the knitter's own gauge moves, where both are known.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Moves {
    /// How many stitches more to the length, in thousandths of the pattern's.
    pub stitches: PerMille,
    /// How many rows more to the length; none where a row gauge is missing, and they are taken to change as the
    /// stitches do.
    pub rows: Option<PerMille>,
    /// What an armhole of [`ARMHOLE`] comes to by the pattern's rows; none where a row gauge is missing.
    pub armhole_by_rows: Option<Length>,
    /// Yarn more for a piece of the same measures.
    pub yarn_same_measure: PerMille,
    /// Yarn more than the pattern has for the picked size, its stitches kept and its lengths knitted to measure.
    pub yarn_same_size: PerMille,
}

/// The stitch gauge of two.
pub(super) fn gauge(gauges: Option<Gauges>) -> Option<Gauge> {
    gauges.map(|gauges| gauges.stitches)
}

/// A girth in the pattern's gauge, knitted stitch for stitch at another.
fn regauged(girth: Length, theirs: Option<Gauge>, ours: Option<Gauge>) -> Option<Length> {
    let (theirs, ours) = theirs.zip(ours)?;
    Some(Rate::of(theirs).worked_at(girth, Rate::of(ours)))
}

/// What so many stitches make at a gauge.
fn worked(stitches: Option<u32>, gauge: Option<Gauge>) -> Option<Length> {
    let (stitches, gauge) = stitches.zip(gauge)?;
    Some(Rate::of(gauge).width_of(stitches))
}

/// What the stitches of a size make, if that does not go with its listed girth: they are left out then.
pub(super) fn doubted(question: &Question, size: &Size) -> Option<Length> {
    let theirs = gauge(question.pattern);
    let makes = worked(size.stitches, theirs.or(gauge(question.own)))?;
    let of_garment = question.listed == Some(Listed::Garment) && theirs.is_some();
    let believed = if of_garment { BELIEVED } else { BELIEVED_OF_BODY };
    let girth = i128::from(size.girth.middle().to_nm());
    let part = |share: PerMille| girth * i128::from(share.0);
    let made = i128::from(makes.to_nm()) * 1_000;
    (made < part(believed.least) || made > part(believed.most)).then_some(makes)
}

/// What a size measures at a gauge.
pub(super) struct Measures {
    /// Its girth as the list means it.
    pub(super) girth: Span,
    /// The garment, where known.
    pub(super) garment: Option<Length>,
    /// Whether that comes from its stitches.
    pub(super) from_stitches: bool,
}

/// What a size measures at a gauge, or at the pattern's where there is none.
pub(super) fn measures(question: &Question, size: &Size, own: Option<Gauge>) -> Measures {
    let theirs = gauge(question.pattern);
    let stitches = size.stitches.filter(|_| doubted(question, size).is_none());
    let listed = size.girth.middle();
    let exact = worked(stitches, own);
    let from_stitches = exact.is_some();
    if question.listed == Some(Listed::Garment) {
        let girth = exact.or_else(|| regauged(listed, theirs, own)).unwrap_or(listed);
        return Measures {
            girth: Span::one(girth),
            garment: Some(girth),
            from_stitches,
        };
    }
    // Without the stitches the garment is taken to be about as wide as the body.
    let pattern = worked(stitches, theirs);
    let before = pattern.unwrap_or(listed);
    let after = exact.or_else(|| regauged(before, theirs, own));
    let moved = match after {
        Some(after) if theirs.is_some() => after.saturating_sub(before),
        _ => Length::ZERO,
    };
    Measures {
        girth: size.girth.moved(moved),
        garment: exact.or(pattern),
        from_stitches,
    }
}

/// What her gauge moves.
pub(super) fn moves(question: &Question) -> Option<Moves> {
    Some(Moves::between(question.pattern?, question.own?))
}

impl Moves {
    /// From the pattern's gauges to the knitter's own. Yarn goes with a square root, so that this is reckoned in floats.
    pub fn between(theirs: Gauges, ours: Gauges) -> Self {
        let stitches = ours.stitches.per_cm() / theirs.stitches.per_cm();
        let rows = ours.rows.zip(theirs.rows);
        let rows = rows.map(|(ours, theirs)| ours.per_cm() / theirs.per_cm());
        let taken = rows.unwrap_or(stitches);
        Self {
            stitches: more(stitches),
            rows: rows.map(more),
            armhole_by_rows: regauged(ARMHOLE, theirs.rows, ours.rows),
            yarn_same_measure: more((stitches * taken).sqrt()),
            yarn_same_size: more((taken / stitches).sqrt()),
        }
    }
}

/// How much more than once, in thousandths; a float that is too large becomes the nearest whole number.
fn more(times: f64) -> PerMille {
    PerMille(((times - 1.0) * 1000.0).round() as i32)
}
