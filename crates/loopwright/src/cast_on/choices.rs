//! The names of the fields by which a cast-on is asked for, and what can be chosen in them.

/// A field of the question, or of the tally beside its answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// In the round or flat.
    Knitting,
    /// How wide, or how far round.
    Width,
    /// Stitches in the washed swatch.
    Gauge,
    /// Stitches of one repeat, and perhaps the plus behind them.
    Multiple,
    /// Stitches beside the repeats.
    Plus,
    /// Edge stitches at each edge that stay to be seen.
    Edge,
    /// Stitches at each edge that the seam takes in.
    Seam,
    /// How the round is joined.
    Extra,
    /// How far apart the markers are.
    Every,
    /// How many stitches are on the needle.
    On,
}

crate::field_names!(Name {
    Knitting = "knitting",
    Width = "width",
    Gauge = "gauge",
    Multiple = "multiple",
    Plus = "plus",
    Edge = "edge",
    Seam = "seam",
    Extra = "extra",
    Every = "every",
    On = "on",
});

/// How a round is joined.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Join {
    /// With the stitches there are.
    Plain,
    /// With one more, that is worked together with the first.
    Extra,
}

crate::choice!(Join starts Plain { Plain = "plain", Extra = "extra" });
