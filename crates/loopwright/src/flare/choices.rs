//! The names of the fields by which a flare is asked for, and what can be chosen in them.

/// A field of the question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// Stitches at the neck.
    Neck,
    /// How deep.
    Depth,
    /// How wide the hem is to be.
    Hem,
    /// Round the hem.
    Girth,
    /// Stitches at the hem.
    Stitches,
    /// Stitches in the swatch.
    Gauge,
    /// Rows in the swatch.
    RowGauge,
    /// Stitches gained in one increase round.
    Each,
    /// Where the increases stand.
    Lines,
    /// Stitches of one repeat.
    Multiple,
    /// Plain rounds before the first increase.
    First,
    /// Plain rounds at the end.
    Last,
    /// What the increase rounds are shared out for.
    Rhythm,
}

crate::field_names!(Name {
    Neck = "neck",
    Depth = "depth",
    Hem = "hem",
    Girth = "girth",
    Stitches = "stitches",
    Gauge = "gauge",
    RowGauge = "row_gauge",
    Each = "each",
    Lines = "lines",
    Multiple = "multiple",
    First = "first",
    Last = "last",
    Rhythm = "rhythm",
});

/// How wide the hem is to be: a [`Hem`](super::Hem) without its quantity.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HemKind {
    /// As wide as lies flat.
    Flat,
    /// So far round.
    Girth,
    /// So many stitches.
    Stitches,
}

crate::choice!(HemKind starts Flat { Flat = "flat", Girth = "girth", Stitches = "stitches" });

/// Where increases stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Placing {
    /// In lines, one above the other.
    InLines,
    /// Scattered evenly over the round.
    Scattered,
}

crate::choice!(Placing starts InLines { InLines = "lines", Scattered = "scattered" });
