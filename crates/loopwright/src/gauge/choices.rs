//! The names of the fields by which gauge is asked for, and the two directions of a swatch.

/// A field of the question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// Stitches of the washed swatch.
    Stitches,
    /// The pattern's stitches.
    Pattern,
    /// The needle the swatch was knitted on.
    Needle,
    /// Rows of the washed swatch.
    Rows,
    /// The pattern's rows.
    PatternRows,
    /// Stitches before washing.
    StitchesUnwashed,
    /// Rows before washing.
    RowsUnwashed,
    /// How wide the piece is to be.
    Width,
    /// How long the piece is to be.
    Length,
}

crate::field_names!(Name {
    Stitches = "stitches",
    Pattern = "pattern",
    Needle = "needle",
    Rows = "rows",
    PatternRows = "pattern_rows",
    StitchesUnwashed = "stitches_unwashed",
    RowsUnwashed = "rows_unwashed",
    Width = "width",
    Length = "length",
});

/// A direction of the fabric, by what is counted along it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Direction {
    /// Across.
    Stitches,
    /// Upwards.
    Rows,
}
