//! The names of the fields by which cords are asked for, and what can be chosen in them.

/// A field of the question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// Stitches in the first round.
    From,
    /// Stitches in the last round.
    To,
    /// Over how many rounds.
    Rounds,
    /// Growth in steps instead of even growth.
    Steps,
    /// Whether the swatch is washed.
    Swatch,
    /// Stitches in the swatch.
    Gauge,
    /// In the round or flat.
    Knitting,
    /// The cords at hand.
    Cords,
    /// The tip of the short ones.
    Tip,
    /// How thick the needles are.
    Needle,
    /// What goes round the cord, where it is no even piece: one girth, or the stitches of each round.
    Around,
}

crate::field_names!(Name {
    From = "from",
    To = "to",
    Rounds = "rounds",
    Steps = "steps",
    Swatch = "swatch",
    Gauge = "gauge",
    Knitting = "knitting",
    Cords = "cords",
    Tip = "tip",
    Needle = "needle",
    Around = "around",
});

/// Whether the gauge was counted before washing, as it lies on the needle.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Swatch {
    /// Counted before washing.
    Unwashed,
    /// Washed, and not counted before.
    Washed,
}

crate::choice!(Swatch starts Unwashed { Unwashed = "", Washed = "washed" });
