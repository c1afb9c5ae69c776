//! From a swatch to the yarn in one stitch, and how far that may be off.

use super::note::Step;
use super::{Ball, PerStitch, practice};
use crate::fabric::{Density, Fabric, Factor, GARTER_PRODUCT, State};
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
    /// A swatch on the scale: better, since it asks no formula.
    Weighed {
        /// What it is knitted in.
        fabric: Fabric,
        /// Stitches across, within [`super::STITCHES`].
        stitches: u32,
        /// Rows, within [`super::ROWS`].
        rows: u32,
        /// What it weighs, within [`super::SWATCH_MASS`].
        mass: Mass,
        /// The smallest step the scale shows, within [`super::SCALE`].
        scale: Mass,
        /// Whether its own cast-on and bind-off were weighed along.
        edges: bool,
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

    /// A stockinette swatch with its edges, on a scale that shows whole grams.
    pub const fn weighed(stitches: u32, rows: u32, mass: Mass) -> Self {
        Self::Weighed {
            fabric: Fabric::Stockinette,
            stitches,
            rows,
            mass,
            scale: Mass::from_grams(1),
            edges: true,
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

/// How the yarn in a stitch was found.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Route {
    /// From a stockinette gauge, by loop geometry.
    Stockinette,
    /// From a garter gauge, by a number that is practice.
    Garter,
    /// From a lace gauge, taken for stockinette.
    Lace,
    /// From a swatch on the scale.
    Weighed,
}

/// The yarn in a stitch, the yarn in the whole swatch, and the working; none when it is too long or too short to hold.
pub(super) fn measure(swatch: &Swatch, ball: Ball, steps: &mut Vec<Step>) -> Option<(PerStitch, Length)> {
    match *swatch {
        Swatch::Gauge {
            fabric,
            stitches,
            rows,
            rest,
        } => by_gauge(fabric, (stitches, rows), rest, steps),
        Swatch::Weighed {
            stitches,
            rows,
            mass,
            scale,
            edges,
            ..
        } => by_weight((stitches, rows, edges), (mass, scale), ball, steps),
    }
}

fn by_gauge(fabric: Fabric, gauge: (Gauge, Gauge), rest: Rest, steps: &mut Vec<Step>) -> Option<(PerStitch, Length)> {
    let measured = Density::of(gauge.0, gauge.1);
    let (state, at_rest) = match rest {
        Rest::Washed => (State::WetRelaxed, measured),
        Rest::Unwashed => (State::DryRelaxed, measured),
        // Let go, it would draw in both ways.
        Rest::PinnedOut { percent } => {
            let stretch = 1.0 + f64::from(percent) / 100.0;
            (State::WetRelaxed, Density(measured.0 * stretch * stretch))
        }
    };
    let constants = state.constants();
    let (route, product, certainty) = match fabric {
        Fabric::Garter => (Route::Garter, GARTER_PRODUCT, Certainty::Practice),
        Fabric::Lace => (Route::Lace, constants.product, Certainty::Practice),
        _ => (Route::Stockinette, constants.product, constants.certainty),
    };
    let length = at_rest.loop_length(product)?;
    steps.push(Step::Loop {
        density: thousandths(at_rest.0),
        product: thousandths(product),
        certainty,
        length,
    });
    if route != Route::Garter {
        let at = |state: State| at_rest.loop_length(state.constants().product);
        steps.push(Step::States {
            dry: at(State::DryRelaxed)?,
            wet: at(State::WetRelaxed)?,
            fully: at(State::FullyRelaxed)?,
        });
    }
    let rough = route != Route::Stockinette || matches!(rest, Rest::PinnedOut { .. });
    let hand = if rough {
        practice::SPREAD_ROUGH
    } else {
        practice::SPREAD_GAUGE
    };
    // Half a stitch and half a row misread; a loop goes with the root of their product.
    let reading = 0.5 * (0.5 / gauge.0.count() + 0.5 / gauge.1.count());
    let spread = spread(hand, reading, steps);
    let side = practice::SWATCH_SIDE.in_unit(LengthUnit::Cm);
    let in_swatch = measured.0 * side * side * length.in_unit(LengthUnit::Cm);
    Some((
        PerStitch {
            length,
            route,
            certainty,
            spread,
        },
        Length::from_f64(in_swatch, LengthUnit::Cm)?,
    ))
}

fn by_weight(
    (stitches, rows, edges): (u32, u32, bool),
    (mass, scale): (Mass, Mass),
    ball: Ball,
    steps: &mut Vec<Step>,
) -> Option<(PerStitch, Length)> {
    let edge = practice::CAST_ON.usual + practice::bind_off(super::BindOff::Plain).usual;
    let rows_and_edges = i128::from(rows) * 1_000 + if edges { i128::from(edge) } else { 0 };
    // Thousandths of a loop.
    let loops = i128::from(stitches) * rows_and_edges;
    let (ng, ball_nm, ball_ng) = (
        i128::from(mass.to_ng()),
        i128::from(ball.length.to_nm()),
        i128::from(ball.mass.to_ng()),
    );
    let in_swatch = i64::try_from(nearest(ng * ball_nm, ball_ng)).ok()?;
    // One rounding: the swatch's length is not used on the way.
    let length = i64::try_from(nearest(ng * ball_nm * 1_000, ball_ng * loops)).ok()?;
    let length = Some(Length::from_nm(length)).filter(|length| *length > Length::ZERO)?;
    steps.push(Step::Weighed {
        mass,
        swatch: Length::from_nm(in_swatch),
        loops: u64::try_from(nearest(loops, 1_000)).ok()?,
        edges,
        length,
    });
    let reading = scale.to_ng() as f64 / mass.to_ng() as f64;
    let spread = spread(practice::SPREAD_WEIGHED, reading, steps);
    Some((
        PerStitch {
            length,
            route: Route::Weighed,
            certainty: Certainty::Computed,
            spread,
        },
        Length::from_nm(in_swatch),
    ))
}

/// How far a loop may be off, in ten-thousandths: the hand and the reading, a tenth at the least.
fn spread(hand: u32, reading: f64, steps: &mut Vec<Step>) -> u32 {
    let reading = (reading * 10_000.0).ceil() as u32;
    let spread = hand
        .saturating_add(reading)
        .clamp(practice::SPREAD_LEAST, practice::SPREAD_MOST);
    steps.push(Step::Spread { hand, reading, spread });
    spread
}

/// What a stitch of a section takes against one of the swatch, in thousandths.
pub(super) fn relative(section: Fabric, swatch: &Swatch) -> Factor {
    let own = section.factor();
    let swatched = match (swatch, swatch.fabric()) {
        // Both yarns were on the scale, and the section wants one.
        (Swatch::Weighed { .. }, Fabric::Stranded { .. }) => Fabric::BOTH_STRANDS,
        (_, fabric) if fabric == section => {
            return Factor {
                least: 1_000,
                usual: 1_000,
                most: 1_000,
                certainty: Certainty::Computed,
            };
        }
        (_, fabric) => fabric.factor(),
    };
    if swatched == Fabric::Stockinette.factor() {
        return own;
    }
    // No factor is nought but that of a yarn which is never knitted, and that one still floats.
    Factor {
        least: own.least * 1_000 / swatched.most,
        usual: (own.usual * 1_000 + swatched.usual / 2) / swatched.usual,
        most: (own.most * 1_000).div_ceil(swatched.least),
        certainty: Certainty::Practice,
    }
}

/// The whole number nearest to a fraction of numbers above zero, halves up.
pub(super) fn nearest(top: i128, bottom: i128) -> i128 {
    (top * 2 + bottom) / (bottom * 2)
}

fn thousandths(value: f64) -> u32 {
    (value * 1_000.0).round() as u32
}
