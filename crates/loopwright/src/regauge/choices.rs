//! The names of the fields by which another gauge is asked for, and what can be chosen in them.

/// A field of the question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// The pattern's stitch gauge.
    Pattern,
    /// The knitter's own stitch gauge.
    Own,
    /// Stitches in the pattern.
    Counts,
    /// The measure that is wanted.
    Wanted,
    /// Stitches of one repeat.
    Multiple,
    /// Stitches beside the repeats.
    Plus,
    /// In the round or flat.
    Knitting,
    /// Edge stitches at each edge of a flat piece.
    Edge,
    /// Seam stitches at each edge; the page asks for them together with the edge stitches.
    Seam,
    /// Whether odd stays odd and even stays even.
    Parity,
    /// The pattern's row gauge.
    PatternRows,
    /// The knitter's own row gauge.
    OwnRows,
    /// Rows in the pattern.
    Rows,
    /// A length that is worked by rows.
    Length,
    /// Rows of one repeat.
    RowRepeat,
    /// Stitches before the shaping.
    From,
    /// Stitches after it.
    To,
    /// Rows of the shaping.
    ShapingRows,
    /// Stitches that one shaping row changes.
    Each,
    /// In which rows shaping may be.
    Sides,
}

crate::field_names!(Name {
    Pattern = "pattern",
    Own = "own",
    Counts = "counts",
    Wanted = "wanted",
    Multiple = "multiple",
    Plus = "plus",
    Knitting = "knitting",
    Edge = "edge",
    Seam = "seam",
    Parity = "parity",
    PatternRows = "pattern_rows",
    OwnRows = "own_rows",
    Rows = "rows",
    Length = "length",
    RowRepeat = "row_repeat",
    From = "from",
    To = "to",
    ShapingRows = "shaping_rows",
    Each = "each",
    Sides = "sides",
});

/// In the round or flat: a [`Knitting`](crate::cast_on::Knitting) without its numbers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum KnittingKind {
    /// In the round.
    Round,
    /// In the round, with one stitch more for the join.
    Extra,
    /// Back and forth.
    Flat,
}

crate::choice!(KnittingKind starts Round { Round = "round", Extra = "extra", Flat = "flat" });

/// Whether odd stays odd and even stays even.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Parity {
    /// It need not.
    Any,
    /// It does, for a stitch at the centre.
    Kept,
}

crate::choice!(Parity starts Any { Any = "any", Kept = "kept" });

/// In which rows shaping may be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ShapingSide {
    /// In right-side rows only.
    Right,
    /// In any row.
    Any,
}

crate::choice!(ShapingSide starts Right { Right = "right", Any = "any" });
