//! Ways to cast on, and what the tail has to do in each. Common practice, no source.
//!
//! A long-tail cast-on draws its stitches from the tail; a twisted one (German, or old Norwegian) takes a quarter to
//! three tenths more. Cable, knitted, crochet-chain and backward-loop cast-ons draw them from the ball. A tubular one
//! has half its stitches in waste yarn. With two strands the second one is the tail, and leaves one more end.
//!
//! ```
//! use loopwright::tail::{Method, Strand};
//!
//! let twisted = Method::TwistedGerman.strand();
//! assert_eq!(twisted, Strand::Thumb { least_percent: 125, most_percent: 130 });
//! assert_eq!(Method::Cable.strand(), Strand::EndOnly);
//! ```

use crate::bounds::Bounds;
use crate::units::{Length, LengthUnit};

/// What is left where the tail is not knitted from: 15 to 20 cm. Common practice, no source.
pub const SHORT: Bounds<Length> = Bounds::new(Length::of(15, LengthUnit::Cm), Length::of(20, LengthUnit::Cm));

/// A way to cast on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Method {
    /// Long-tail.
    LongTail,
    /// Twisted, or German twisted, or old Norwegian.
    TwistedGerman,
    /// Cable: the needle goes between two stitches.
    Cable,
    /// Knitted on: the needle goes into the last stitch.
    Knitted,
    /// Backward loop.
    BackwardLoop,
    /// A crochet chain round the needle.
    CrochetChain,
    /// Tubular, begun in waste yarn with half the stitches.
    Tubular,
    /// Long-tail with a strand for the thumb and one for the finger, knotted together.
    TwoStrand,
}

/// What the tail has to do.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Strand {
    /// It is the strand on the thumb, and all stitches are drawn from it.
    Thumb {
        /// Yarn a stitch at the least, in percent of long-tail.
        least_percent: u32,
        /// Yarn a stitch at the most, in percent of long-tail: what the tail is worked out with.
        most_percent: u32,
    },
    /// It is an end to weave in, [`SHORT`].
    EndOnly,
    /// It is an end to weave in; half the stitches, rounded up, are cast on in waste yarn.
    HalfInWaste,
    /// A second strand does its work; each strand leaves an end to weave in.
    Second,
}

impl Method {
    /// What its tail has to do. Common practice, no source.
    pub const fn strand(self) -> Strand {
        match self {
            Self::LongTail => Strand::Thumb {
                least_percent: 100,
                most_percent: 100,
            },
            Self::TwistedGerman => Strand::Thumb {
                least_percent: 125,
                most_percent: 130,
            },
            Self::Cable | Self::Knitted | Self::BackwardLoop | Self::CrochetChain => Strand::EndOnly,
            Self::Tubular => Strand::HalfInWaste,
            Self::TwoStrand => Strand::Second,
        }
    }
}
