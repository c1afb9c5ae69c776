//! From a swatch to the yarn in one stitch, and how far that may be off.

use super::{Ball, BindOff, practice};
use crate::fabric::{Density, Fabric, GARTER_PRODUCT, State};
use crate::tables::Certainty;
use crate::units::{Gauge, Length, LengthUnit, Mass};

/// What is known about the yarn on its needle.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Swatch {
    /// The gauge of a swatch on the same needle.
    Gauge {
        /// What the swatch is knitted in. Stockinette serves for every section; garter and lace for plain ones, more
        /// roughly; the others for none.
        fabric: Fabric,
        /// Its stitches.
        stitches: Gauge,
        /// Its rows.
        rows: Gauge,
        /// How it came to rest.
        rest: Rest,
    },
    /// A swatch on the scale, its cast-on and bind-off with it: better, since it asks no formula.
    Weighed {
        /// What it is knitted in.
        fabric: Fabric,
        /// Stitches across, within [`super::STITCHES`].
        stitches: u32,
        /// Rows, within [`super::ROWS`].
        rows: u32,
        /// What it weighs, within [`super::SWATCH_MASS`].
        mass: Mass,
    },
}

impl Swatch {
    /// A washed stockinette swatch.
    pub const fn stockinette(stitches: Gauge, rows: Gauge) -> Self {
        Self::Gauge {
            fabric: Fabric::Stockinette,
            stitches,
            rows,
            rest: Rest::Washed,
        }
    }

    /// What it is knitted in.
    pub const fn fabric(&self) -> Fabric {
        match *self {
            Self::Gauge { fabric, .. } | Self::Weighed { fabric, .. } => fabric,
        }
    }
}

/// How a swatch came to rest before it was measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Rest {
    /// Washed and dried flat, as the piece will be.
    Washed,
    /// Not washed.
    Unwashed,
    /// Pinned out wider and longer than it lies by itself, as lace is.
    PinnedOut {
        /// By how much each way, in percent, within [`super::PINNED`].
        percent: u32,
    },
}

/// Yarn in one stitch of the swatch's fabric, and how it was found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct PerStitch {
    /// The loop.
    pub length: Length,
    /// Yarn in the swatch.
    pub swatch: Length,
    /// How the loop was found.
    pub found: Found,
    /// How sure the number is that this rests on.
    pub certainty: Certainty,
    /// How far hand and fibre may be off either way, in percent.
    pub hand: f64,
    /// How far reading the tape or the scale may be off, in percent.
    pub reading: f64,
    /// What the range is made with, in percent: both together, a tenth at the least.
    pub spread: f64,
}

/// How the yarn in a stitch was found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Found {
    /// By loop geometry, `sqrt(product / density)` in cm. The constants alone would move it between `dry` and `fully`,
    /// which is less than the range.
    Geometry {
        /// Stitches in a square centimetre at rest.
        density: f64,
        /// The constant.
        product: f64,
        /// The loop of a stockinette of that density that was never washed.
        dry: Length,
        /// Washed.
        wet: Length,
        /// Washed and tumbled.
        fully: Length,
    },
    /// By the scale: the swatch's yarn shared out between its loops.
    Weighing {
        /// Loops in it, its edges counted as loops.
        loops: f64,
    },
}

/// The yarn in one stitch; of no length where there is no yarn like that.
pub(super) fn measure(swatch: &Swatch, ball: Ball) -> PerStitch {
    match *swatch {
        Swatch::Gauge {
            fabric,
            stitches,
            rows,
            rest,
        } => measured(fabric, stitches, rows, rest),
        Swatch::Weighed {
            fabric: _,
            stitches,
            rows,
            mass,
        } => weighed(stitches, rows, mass, ball),
    }
}

/// By loop geometry, from a gauge.
fn measured(fabric: Fabric, stitches: Gauge, rows: Gauge, rest: Rest) -> PerStitch {
    let measured = Density::of(stitches, rows);
    let (state, stretch) = match rest {
        Rest::Washed => (State::WetRelaxed, 1.0),
        Rest::Unwashed => (State::DryRelaxed, 1.0),
        // Let go, it would draw in both ways.
        Rest::PinnedOut { percent } => (State::WetRelaxed, 1.0 + f64::from(percent) / 100.0),
    };
    let density = Density(measured.0 * stretch * stretch);
    let constants = state.constants();
    let (product, certainty) = match fabric {
        Fabric::Stockinette => (constants.product, constants.source.certainty()),
        Fabric::Garter => (GARTER_PRODUCT, Certainty::Practice),
        Fabric::Rib | Fabric::Cable | Fabric::Lace | Fabric::Stranded => (constants.product, Certainty::Practice),
    };
    let is_rough = fabric != Fabric::Stockinette || matches!(rest, Rest::PinnedOut { .. });
    let hand = if is_rough {
        practice::SPREAD_ROUGH
    } else {
        practice::SPREAD_GAUGE
    };
    // Half a stitch and half a row misread; a loop goes with the root of their product.
    let reading = 25.0 / stitches.count() + 25.0 / rows.count();
    let loop_of = |product| density.loop_length(product).unwrap_or(Length::ZERO);
    let at = |state: State| loop_of(state.constants().product);
    let (length, side) = (loop_of(product), practice::SWATCH_SIDE.in_unit(LengthUnit::Cm));
    let in_swatch = measured.0 * side * side * length.to_nm() as f64;
    PerStitch {
        length,
        swatch: Length::from_nm(in_swatch.round() as i64),
        found: Found::Geometry {
            density: density.0,
            product,
            dry: at(State::DryRelaxed),
            wet: at(State::WetRelaxed),
            fully: at(State::FullyRelaxed),
        },
        certainty,
        hand,
        reading,
        spread: spread(hand, reading),
    }
}

/// By the scale, from the weight of so many stitches and rows with their edges.
fn weighed(stitches: u32, rows: u32, mass: Mass, ball: Ball) -> PerStitch {
    let edges = practice::CAST_ON.usual + BindOff::Plain.loops().usual;
    let loops = f64::from(stitches) * (f64::from(rows) + edges);
    let weight = mass.to_ng() as f64;
    // A question whose ball has no weight was refused before.
    let ball_weight = ball.mass.map_or(f64::INFINITY, |mass| mass.to_ng() as f64);
    let nm = weight / ball_weight * ball.length.to_nm() as f64;
    let hand = practice::SPREAD_WEIGHED;
    let reading = practice::SCALE.to_ng() as f64 / weight * 100.0;
    PerStitch {
        length: Length::from_nm((nm / loops).round() as i64),
        swatch: Length::from_nm(nm.round() as i64),
        found: Found::Weighing { loops },
        certainty: Certainty::Computed,
        hand,
        reading,
        spread: spread(hand, reading),
    }
}

/// What the range is made with, in percent.
fn spread(hand: f64, reading: f64) -> f64 {
    (hand + reading).clamp(practice::SPREAD_LEAST, practice::SPREAD_MOST)
}
