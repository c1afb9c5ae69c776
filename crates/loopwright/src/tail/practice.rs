//! The rules of practice that stand in for measuring: times the edge, and by the class of the yarn.
//!
//! Each is data. They err on the long side: a tail too long is cut off, and one too short is begun again.

use super::Thickness;
use crate::bounds::Bounds;
use crate::spacing::Fraction;
use crate::tables::yarn_weight::{CLASSES, Weight, class};
use crate::units::{Gauge, Length, LengthUnit};

/// From the nose to the fingertips of an outstretched arm: what yarn is measured against without a tape. About 90 cm.
/// Common practice, no source.
pub const ARM: Length = Length::of(90, LengthUnit::Cm);

/// A long tail is so many times the edge: three and up. Common practice, no source. The most is what it is worked out
/// with.
pub const EDGE_TIMES: Bounds<u32> = Bounds::new(3, 4);

/// What one stitch takes by the class of its yarn, common practice, no source: an inch for worsted, and for the others
/// that inch scaled by the middle of the needles of their class, rounded up to 1/8 in.
///
/// ```
/// use loopwright::tables::yarn_weight::Weight;
/// use loopwright::tail::per_stitch;
/// use loopwright::units::Length;
///
/// assert_eq!(per_stitch(Weight::Medium), Length::INCH);
/// assert_eq!(per_stitch(Weight::SuperFine), Length::from_sixty_fourths(40));
/// ```
pub const fn per_stitch(weight: Weight) -> Length {
    let eighths = match weight {
        Weight::Lace => 3,
        Weight::SuperFine => 5,
        Weight::Fine => 6,
        Weight::Light => 7,
        Weight::Medium => 8,
        Weight::Bulky => 11,
        Weight::SuperBulky => 17,
        // The needles of this class have no upper end; this is from the lower one.
        Weight::Jumbo => 21,
    };
    Length::from_sixty_fourths(8 * eighths)
}

/// How thick yarn is by its wraps, in nanometres, exact: the span over the wraps.
pub(super) fn across_nm(wraps: Gauge) -> Fraction {
    // A gauge is held in thousandths; rounding undoes the division that made a number of it, exactly.
    let thousandths = (wraps.count() * 1_000.0).round() as u64;
    let span = u64::try_from(wraps.span().to_nm()).unwrap_or(0);
    Fraction::new(span.saturating_mul(1_000), thousandths)
}

/// The class of the yarn; from wraps, the thinnest whose thick end is no thinner than the yarn.
pub(super) fn weight(yarn: Thickness) -> Weight {
    match yarn {
        Thickness::Class(weight) => weight,
        Thickness::Wraps(wraps) => {
            let across = Length::from_nm(across_nm(wraps).to_f64().round() as i64);
            let holds = |weight: &Weight| class(*weight).default_diameter() >= across;
            let mut weights = CLASSES.iter().map(|class| class.weight);
            weights.find(holds).unwrap_or(Weight::Jumbo)
        }
    }
}
