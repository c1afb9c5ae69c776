//! How small and how large a body, a garment and a list may be, and the rules of practice with their numbers.

use super::{PerMille, Span};
use crate::bounds::Bounds;
use crate::units::Length;

/// How large a girth may be, of a body or a garment: from a doll's arm to past every table and wrap.
pub const GIRTH: Bounds<Length> = Bounds::new(Length::from_mm(50), Length::from_mm(5_000));

/// Outside this a bust is mostly typed in another unit than it was measured in. Common practice, no source.
pub const LIKELY: Bounds<Length> = Bounds::new(Length::from_mm(400), Length::from_mm(2_000));

/// How much ease may be wanted as a length.
pub const EASE: Bounds<Length> = Bounds::new(Length::from_mm(-1_000), Length::from_mm(2_000));

/// Stitches of one size.
pub const STITCHES: Bounds<u32> = Bounds::new(1, 10_000);

/// How many sizes a list may have.
pub const SIZES: Bounds<u32> = Bounds::new(1, 100);

/// A garment smaller than the body by more than this, in thousandths of the body, is cautioned about. Common practice,
/// no source.
pub const TOO_TIGHT: PerMille = PerMille(-100);

/// Two sizes that are as good as each other within this are a close call: a tape round a body is no better. Common
/// practice, no source.
pub const CLOSE_CALL: Length = Length::from_mm(10);

/// A body that is off a range by no more than this is in it, for all that a tape can tell: an eighth of an inch, the
/// finest mark that is read on one. 38 in are 96.52 cm, and nobody measures the fifth of a millimetre to 96.5. Common
/// practice, no source.
pub const TAPE_MARK: Length = Length::from_sixty_fourths(8);

/// A full bust this much larger than the high bust is better fitted by the high bust, with room added in front. Common
/// practice, no source.
pub const FULL_OVER_HIGH: Length = Length::from_mm(50);

/// Heads of grown-ups are within this. Common practice, no source.
pub const HEAD: Span = Span {
    from: Length::from_mm(540),
    to: Length::from_mm(600),
};

/// An upper arm in thousandths of the bust, where only the bust is known. Common practice, no source.
pub const ARM_OF_BUST: PerMille = PerMille(300);
