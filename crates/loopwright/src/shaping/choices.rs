//! The names of the fields by which shaping over rows is asked for, and what can be chosen in them.

use super::{Knitting, Order, Side, Slope};

/// A field of the question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// What is wanted.
    Ask,
    /// How many stitches.
    Amount,
    /// Rows or rounds there are for it.
    Rows,
    /// Flat or in the round, and which row is next.
    Knitting,
    /// Stitches on the needle now.
    Stitches,
    /// Stitches lost or gained in one shaping row.
    Each,
    /// Plain rows before the first shaping row.
    First,
    /// Plain rows after the last one.
    Last,
    /// Plain stitches outside a pair.
    Edge,
    /// Whether the last shaping row may differ.
    Rest,
    /// How gaps of two lengths follow each other.
    Order,
    /// Which rows may be shaped.
    Sides,
    /// Which way a pair leans.
    Slope,
    /// How a pair gains.
    Increase,
}

crate::field_names!(Name {
    Ask = "ask",
    Amount = "amount",
    Rows = "rows",
    Knitting = "knitting",
    Stitches = "stitches",
    Each = "each",
    First = "first",
    Last = "last",
    Edge = "edge",
    Rest = "rest",
    Order = "order",
    Sides = "sides",
    Slope = "slope",
    Increase = "increase",
});

/// What is wanted, before it is said how many: an [`Ask`](super::Ask) without its number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Asked {
    /// So many stitches fewer.
    Lose,
    /// So many stitches more.
    Gain,
    /// So many stitches in the end.
    Reach,
}

crate::choice!(Asked starts Lose { Lose = "lose", Gain = "gain", Reach = "reach" });

/// Flat or in the round, and which row is next: a [`Knitting`] as one choice.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum KnittingKind {
    /// Back and forth, a right-side row next.
    FlatFromRight,
    /// Back and forth, a wrong-side row next.
    FlatFromWrong,
    /// In the round.
    Round,
}

crate::choice!(KnittingKind starts FlatFromRight {
    FlatFromRight = "right",
    FlatFromWrong = "wrong",
    Round = "round",
});

impl KnittingKind {
    /// What the question holds for it.
    pub const fn knitting(self) -> Knitting {
        match self {
            Self::FlatFromRight => Knitting::Flat { next: Side::Right },
            Self::FlatFromWrong => Knitting::Flat { next: Side::Wrong },
            Self::Round => Knitting::Round,
        }
    }
}

/// What the last shaping row may do, when the change is no multiple of what one row changes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LastRow {
    /// It changes as many as the others.
    LikeTheOthers,
    /// It may change fewer.
    MayChangeFewer,
}

crate::choice!(LastRow starts LikeTheOthers { LikeTheOthers = "like", MayChangeFewer = "fewer" });

/// Which rows of flat knitting may be shaped.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ShapedSides {
    /// Right-side rows only.
    RightOnly,
    /// Any row.
    Any,
}

crate::choice!(ShapedSides starts RightOnly { RightOnly = "right", Any = "any" });

crate::choice!(Order starts CloseFirst {
    CloseFirst = "close",
    WideFirst = "wide",
    OneRate = "one",
    Mixed = "mixed",
});

crate::choice!(Slope starts Along { Along = "along", Across = "across" });

/// What shaping rounds are shared out for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Pace {
    /// To be held in the head: at most two rates.
    Easiest,
    /// To lie as near to the straight line as whole rounds allow.
    MostEven,
}

crate::choice!(Pace starts Easiest { Easiest = "easiest", MostEven = "most-even" });
