//! The names of the fields by which a swatch is asked for.

/// A field of the question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// The stitches that are hoped for.
    Gauge,
    /// In the round or flat.
    Knitting,
    /// The rows that are hoped for.
    Rows,
    /// Stitches of one repeat.
    Multiple,
    /// Stitches beside the repeats.
    Plus,
    /// Rows of one repeat.
    RowRepeat,
    /// The needle.
    Needle,
}

crate::field_names!(Name {
    Gauge = "gauge",
    Knitting = "knitting",
    Rows = "rows",
    Multiple = "multiple",
    Plus = "plus",
    RowRepeat = "row_repeat",
    Needle = "needle",
});
