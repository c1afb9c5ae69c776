//! The names of the fields by which a size is asked for, and what can be chosen in them.

use super::{Cloth, Listed};

/// A field of the question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// The body round the bust.
    Bust,
    /// The pattern's list.
    Sizes,
    /// What the list measures.
    Listed,
    /// How it should sit.
    Fit,
    /// How much ease is wanted, or how much room in a wrap.
    Ease,
    /// How many per cent wider than the body.
    Percent,
    /// What is knitted.
    Garment,
    /// Round the chest above the bust.
    HighBust,
    /// Round bust and both arms.
    Round,
    /// Round one upper arm.
    UpperArm,
    /// The neck opening.
    Neck,
    /// Round the head.
    Head,
    /// Which way to go between two sizes.
    Cloth,
    /// The pattern's stitch gauge.
    PatternStitches,
    /// The pattern's row gauge.
    PatternRows,
    /// The knitter's own stitch gauge.
    OwnStitches,
    /// The knitter's own row gauge.
    OwnRows,
    /// Stitches of each size.
    Stitches,
}

crate::field_names!(Name {
    Bust = "bust",
    Sizes = "sizes",
    Listed = "listed",
    Fit = "fit",
    Ease = "ease",
    Percent = "percent",
    Garment = "garment",
    HighBust = "high_bust",
    Round = "round",
    UpperArm = "upper_arm",
    Neck = "neck",
    Head = "head",
    Cloth = "cloth",
    PatternStitches = "pattern_stitches",
    PatternRows = "pattern_rows",
    OwnStitches = "own_stitches",
    OwnRows = "own_rows",
    Stitches = "stitches",
});

/// What the list is said to measure: a [`Listed`], or nothing yet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Measured {
    /// It is not said yet.
    NotSaid,
    /// Bodies.
    Body,
    /// Garments.
    Garment,
}

crate::choice!(Measured starts NotSaid { NotSaid = "", Body = "body", Garment = "garment" });

impl Measured {
    /// What it means for the question.
    pub const fn listed(self) -> Option<Listed> {
        match self {
            Self::NotSaid => None,
            Self::Body => Some(Listed::Body),
            Self::Garment => Some(Listed::Garment),
        }
    }
}

/// How a sweater should sit: an [`Ask`](super::Ask) without its numbers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Wanted {
    /// Some ease.
    Standard,
    /// Smaller than the body.
    VeryClose,
    /// As the body, or a little more.
    Close,
    /// Roomy.
    Loose,
    /// Meant to be large.
    Oversized,
    /// So much ease.
    Ease,
    /// So many per cent of the body.
    Percent,
}

crate::choice!(Wanted starts Standard {
    Standard = "standard",
    VeryClose = "very-close",
    Close = "close",
    Loose = "loose",
    Oversized = "oversized",
    Ease = "ease",
    Percent = "more",
});

/// How a wrap should sit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Room {
    /// So that nothing binds.
    Free,
    /// With so much room past bust and arms.
    Ease,
}

crate::choice!(Room starts Free { Free = "free", Ease = "ease" });

/// What is knitted: a [`Garment`](super::Garment) without its measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GarmentKind {
    /// Worn round the body.
    Sweater,
    /// Worn over the arms.
    Wrap,
}

crate::choice!(GarmentKind starts Sweater { Sweater = "sweater", Wrap = "wrap" });

crate::choice!(Cloth starts Stretches { Stretches = "stretches", Drapes = "drapes" });
