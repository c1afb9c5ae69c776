//! What stands for a stitch in a line: a known name, a decrease of so many, a cable, or a word of her own.

use super::technique::{Sort, Technique};

/// A word of hers, and what it does: named once, it holds for this pattern.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct OwnStitch {
    /// The word as it stands in the pattern; large and small letters are the same.
    pub word: String,
    /// Stitches it takes from the left needle.
    pub uses: u32,
    /// Stitches it puts on the right one.
    pub gives: u32,
}

/// What stands for a stitch.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum StitchName {
    /// One of [`TECHNIQUES`](super::TECHNIQUES).
    Known(&'static Technique),
    /// A word with its number inside: `k4tog`, `C4F`.
    Counted {
        /// What kind it is.
        family: Family,
        /// The number.
        over: u32,
    },
    /// A cable by how many cross how many: `2/2 RC`, `2/1/2 LC`.
    Cable {
        /// Stitches of each part, nought where there is none.
        parts: [u32; 3],
        /// Which way, and whether some are purled.
        crossing: Crossing,
    },
    /// A word of her own.
    Own(OwnStitch),
}

impl StitchName {
    /// Stitches taken from the left needle by one.
    pub const fn uses(&self) -> u64 {
        (match self {
            Self::Known(technique) => technique.uses,
            Self::Counted { over, .. } => *over,
            Self::Cable {
                parts: [one, two, three],
                ..
            } => one.saturating_add(*two).saturating_add(*three),
            Self::Own(own) => own.uses,
        }) as u64
    }

    /// Stitches put on the right needle by one.
    pub const fn gives(&self) -> u64 {
        match self {
            Self::Known(technique) => technique.gives as u64,
            Self::Counted { family, .. } if family.is_together() => 1,
            Self::Counted { .. } | Self::Cable { .. } => self.uses(),
            Self::Own(own) => own.gives as u64,
        }
    }

    /// Stitches passed over on the right needle by one.
    pub const fn lifts(&self) -> u64 {
        match self {
            Self::Known(technique) => technique.lifts as u64,
            Self::Counted { .. } | Self::Cable { .. } | Self::Own(_) => 0,
        }
    }

    /// What a number behind it counts.
    pub const fn sort(&self) -> Sort {
        match self {
            Self::Known(technique) => technique.sort,
            Self::Counted { .. } | Self::Cable { .. } => Sort::Change,
            Self::Own(own) if own.uses == 1 && own.gives == 1 => Sort::Plain,
            Self::Own(_) => Sort::Change,
        }
    }
}

/// Words with a number inside.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Family {
    /// `k4tog`
    KnitTogether,
    /// `p4tog`
    PurlTogether,
    /// `C4F`
    CableFront,
    /// `C4B`
    CableBack,
    /// `C4L`
    CableLeft,
    /// `C4R`
    CableRight,
    /// `T3F`
    TwistFront,
    /// `T3B`
    TwistBack,
}

impl Family {
    pub(super) const ALL: [Self; 8] = [
        Self::KnitTogether,
        Self::PurlTogether,
        Self::CableFront,
        Self::CableBack,
        Self::CableLeft,
        Self::CableRight,
        Self::TwistFront,
        Self::TwistBack,
    ];

    /// What stands before the number and what behind it, in small letters.
    pub(super) const fn around(self) -> (&'static str, &'static str) {
        match self {
            Self::KnitTogether => ("k", "tog"),
            Self::PurlTogether => ("p", "tog"),
            Self::CableFront => ("c", "f"),
            Self::CableBack => ("c", "b"),
            Self::CableLeft => ("c", "l"),
            Self::CableRight => ("c", "r"),
            Self::TwistFront => ("t", "f"),
            Self::TwistBack => ("t", "b"),
        }
    }

    const fn is_together(self) -> bool {
        matches!(self, Self::KnitTogether | Self::PurlTogether)
    }
}

/// Which way a cable crosses.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Crossing {
    /// `RC`
    Right,
    /// `LC`
    Left,
    /// `RPC`: some of them purled.
    RightPurled,
    /// `LPC`: some of them purled.
    LeftPurled,
}

impl Crossing {
    pub(super) const ALL: [Self; 4] = [Self::Right, Self::Left, Self::RightPurled, Self::LeftPurled];

    /// In small letters.
    pub(super) const fn small(self) -> &'static str {
        match self {
            Self::Right => "rc",
            Self::Left => "lc",
            Self::RightPurled => "rpc",
            Self::LeftPurled => "lpc",
        }
    }
}

/// How a stitch is made; it changes nothing in the count.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Manner {
    /// `tbl`
    ThroughBack,
    /// `wyif`
    YarnInFront,
    /// `wyib`
    YarnInBack,
    /// `pwise`
    Purlwise,
    /// `kwise`
    Knitwise,
}
