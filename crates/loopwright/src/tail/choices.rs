//! The names of the fields by which a tail is asked for, and what can be chosen in them.

use super::Method;
use crate::choice::{Choice, Key};
use crate::tables::yarn_weight::Weight;

/// A field of the question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// What is to be known.
    Wanted,
    /// Stitches to cast on.
    Stitches,
    /// How they are cast on.
    Method,
    /// The class of the yarn; and what is wrong with its thickness, however that is known.
    Yarn,
    /// The needle that is cast on with.
    Needle,
    /// A second needle held together with it.
    Second,
    /// Wraps of the yarn in an inch.
    Wraps,
    /// How long the edge will lie.
    Width,
    /// The gauge that says how long it will lie.
    Gauge,
    /// Stitches of a piece that was measured.
    MeasuredStitches,
    /// What they used.
    MeasuredUsed,
    /// The end to weave in.
    End,
    /// The tail that is left in the middle of casting on.
    LeftTail,
    /// Stitches still to cast on.
    LeftToGo,
}

crate::field_names!(Name {
    Wanted = "wanted",
    Stitches = "stitches",
    Method = "method",
    Yarn = "yarn",
    Needle = "needle",
    Second = "second",
    Wraps = "wraps",
    Width = "width",
    Gauge = "gauge",
    MeasuredStitches = "measured_stitches",
    MeasuredUsed = "measured_used",
    End = "end",
    LeftTail = "left_tail",
    LeftToGo = "left_to_go",
});

/// What is to be known of a tail.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Wanted {
    /// How long to leave it.
    Tail,
    /// In the middle of casting on: how many stitches what is left gives.
    Left,
}

crate::choice!(Wanted starts Tail { Tail = "tail", Left = "left" });

// The old keys of two words were kept and linked once.
crate::choice!(Method starts LongTail {
    LongTail = "long-tail",
    TwistedGerman = "twisted",
    Cable = "cable",
    Knitted = "knitted",
    BackwardLoop = "backward-loop" | "backward loop",
    CrochetChain = "crochet-chain" | "crochet chain",
    Tubular = "tubular",
    TwoStrand = "two-strands" | "two strands",
});

/// The class on the ball band, where it is said.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum YarnClass {
    /// It is not said.
    NotSaid,
    /// It is this one.
    Of(Weight),
}

impl YarnClass {
    /// The class, if it is said.
    pub const fn weight(self) -> Option<Weight> {
        match self {
            Self::NotSaid => None,
            Self::Of(weight) => Some(weight),
        }
    }
}

impl Key for YarnClass {
    const ALL: &'static [Self] = &[
        Self::NotSaid,
        Self::Of(Weight::Lace),
        Self::Of(Weight::SuperFine),
        Self::Of(Weight::Fine),
        Self::Of(Weight::Light),
        Self::Of(Weight::Medium),
        Self::Of(Weight::Bulky),
        Self::Of(Weight::SuperBulky),
        Self::Of(Weight::Jumbo),
    ];

    fn key(self) -> &'static str {
        match self {
            Self::NotSaid => "",
            Self::Of(weight) => weight.key(),
        }
    }

    fn old_keys(self) -> &'static [&'static str] {
        match self {
            Self::NotSaid => &[],
            Self::Of(weight) => weight.old_keys(),
        }
    }
}

impl Choice for YarnClass {
    const START: Self = Self::NotSaid;
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_class_can_be_chosen_or_none() {
        let classes: Vec<Weight> = YarnClass::ALL.iter().filter_map(|class| class.weight()).collect();
        assert_eq!(classes, Weight::ALL);
        for class in YarnClass::ALL {
            assert_eq!(YarnClass::from_key(class.key()), Some(*class));
        }
    }

    #[test]
    fn what_was_linked_as_two_words_is_still_read() {
        for (old, method) in [
            ("backward loop", Method::BackwardLoop),
            ("crochet chain", Method::CrochetChain),
            ("two strands", Method::TwoStrand),
        ] {
            assert_eq!(Method::from_key(old), Some(method));
            assert_eq!(method.key(), old.replace(' ', "-"));
        }
        assert_eq!(
            YarnClass::from_key("super bulky"),
            Some(YarnClass::Of(Weight::SuperBulky))
        );
    }
}
