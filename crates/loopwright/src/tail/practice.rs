//! The rules of practice that stand in for measuring: times the edge, and by the class of the yarn.
//!
//! Each is data. They err on the long side: a tail too long is cut off, and one too short is begun again.

use crate::bounds::Bounds;
use crate::tables::yarn_weight::Weight;
use crate::units::{Length, LengthUnit};

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
