//! The names of the fields by which the lines of a pattern are asked about.

/// A field of the question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// The lines.
    PatternText,
    /// Where they stay, which are hers alone.
    Keep,
    /// In the round or flat, until a line says otherwise.
    Working,
    /// The sizes: how many, or their names.
    Sizes,
    /// Stitches on the needle before the first line.
    Stitches,
    /// Words of hers, each with what it does.
    OwnStitches,
    /// The one size that is looked at; none for all of them.
    Size,
}

crate::field_names!(Name {
    PatternText = "pattern_text",
    Keep = "keep",
    Working = "working",
    Sizes = "sizes",
    Stitches = "stitches",
    OwnStitches = "own_stitches",
    Size = "size",
});
