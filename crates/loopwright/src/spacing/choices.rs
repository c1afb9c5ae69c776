//! The names of the fields by which even spacing is asked for, and what can be chosen in them.

use super::{Decrease, Fabric, Face, Increase, Order};

/// A field of the question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// Stitches on the needle.
    Stitches,
    /// What is wanted.
    Ask,
    /// How many.
    Amount,
    /// Stitches beside the repeats of a multiple.
    Plus,
    /// In the round or flat.
    Knitting,
    /// How to decrease.
    Decrease,
    /// How to increase.
    Increase,
    /// What happens at the marker of a round.
    Marker,
    /// What happens at the two edges of a flat row.
    Edge,
    /// How many plain stitches stand at each edge.
    EdgePlain,
    /// Which side faces the knitter.
    Face,
    /// What the fabric is.
    Fabric,
    /// Which of the written orders is shown.
    Order,
}

crate::field_names!(Name {
    Stitches = "stitches",
    Ask = "ask",
    Amount = "amount",
    Plus = "plus",
    Knitting = "knitting",
    Decrease = "decrease",
    Increase = "increase",
    Marker = "marker",
    Edge = "edge",
    EdgePlain = "edge_plain",
    Face = "face",
    Fabric = "fabric",
    Order = "order",
});

/// What is wanted, before it is said how many: an [`Ask`](super::Ask) without its numbers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Asked {
    /// So many stitches fewer.
    Lose,
    /// So many stitches more.
    Gain,
    /// So many stitches in the end.
    Reach,
    /// A multiple of a number.
    Multiple,
    /// So many decreases.
    Decreases,
    /// So many increases.
    Increases,
}

crate::choice!(Asked starts Lose {
    Lose = "lose",
    Gain = "gain",
    Reach = "reach",
    Multiple = "multiple",
    Decreases = "decreases",
    Increases = "increases",
});

/// What happens at the marker of a round.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Marker {
    /// A run is split there, so that no change stands beside it.
    Split,
    /// The round ends on a change.
    EndOnChange,
}

crate::choice!(Marker starts Split { Split = "split", EndOnChange = "end" });

/// What happens at the two edges of a flat row: an [`Edge`](super::Edge) without its number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum EdgeKind {
    /// Half a run at each end.
    Half,
    /// At least so many plain stitches.
    AtLeast,
    /// The second half is the first in a mirror.
    Mirrored,
}

crate::choice!(EdgeKind starts Half { Half = "half", AtLeast = "least", Mirrored = "mirrored" });

crate::choice!(Decrease starts K2tog {
    K2tog = "k2tog",
    Ssk = "ssk",
    P2tog = "p2tog",
    Sk2p = "sk2p",
    Cdd = "cdd",
});

crate::choice!(Increase starts M1 { M1 = "m1", Yo = "yo", Kfb = "kfb" });

crate::choice!(Face starts Knit { Knit = "knit", Purl = "purl" });

crate::choice!(Fabric starts Stockinette { Stockinette = "stockinette", Garter = "garter", Rib = "rib" });

crate::keys!(Order { TwoBlocks = "two", BlocksInTurn = "turn", MostEven = "even" });
