//! What a flare measures: a frustum while it grows no faster than a flat circle, a ruffle when it does.

use super::Question;
use super::fit::Fit;
use crate::units::{Length, LengthUnit};

/// The finished piece, washed, at rest. Lengths are rounded once.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Shape {
    /// Round the neck along its stitches.
    pub neck_girth: Length,
    /// Round the hem along its stitches, waves and all.
    pub hem_girth: Length,
    /// From the axis to the neck.
    pub neck_radius: Length,
    /// From the axis to the hem, as it hangs or lies. For a ruffle no more than [`Self::flat_radius`].
    pub radius: Length,
    /// From the axis to the hem of a piece that lies flat: neck and slant together.
    pub flat_radius: Length,
    /// From neck to hem along the fabric: the rounds.
    pub slant: Length,
    /// How far the hem hangs below the neck; none where it grows as fast as a flat circle or faster.
    pub drop: Length,
    /// The hem's stitches over the circle they lie on, in thousandths: 1000, and more for a ruffle.
    pub fullness: u32,
}

/// The geometry of circle and cone, in centimetres.
pub(super) fn of(question: &Question, fit: &Fit) -> Shape {
    let round = std::f64::consts::TAU;
    let girth = |stitches: u32| f64::from(stitches) / question.gauge.per_cm();
    let (neck, hem) = (girth(question.neck) / round, girth(fit.hem) / round);
    let slant = f64::from(fit.room.all) / question.row_gauge.per_cm();
    let wider = hem - neck;
    let flat = neck + slant;
    let radius = hem.min(flat);
    let drop = (slant * slant - wider * wider).max(0.0).sqrt();
    let cm = |value: f64| Length::from_f64(value, LengthUnit::Cm).unwrap_or(Length::MAX);
    Shape {
        neck_girth: cm(girth(question.neck)),
        hem_girth: cm(girth(fit.hem)),
        neck_radius: cm(neck),
        radius: cm(radius),
        flat_radius: cm(flat),
        slant: cm(slant),
        drop: cm(drop),
        fullness: super::whole(hem / radius * 1_000.0),
    }
}
