//! The words in the drawing of two pieces and below it: only of what is drawn.

/// The figures of the answer in a drawing, and all of it for those who cannot see it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Drawn {
    /// Above the pieces: the pattern's.
    pub above: String,
    /// Below them: one's own.
    pub below: String,
    /// Beside the edge of the piece if the count of the pattern were kept.
    pub kept: String,
}

/// Something that is drawn and has to be explained.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mark {
    /// The pattern's piece.
    Pattern,
    /// The piece that is wanted.
    Wanted,
    /// One's own.
    Own,
    /// Strokes along both edges, one every ten stitches.
    TenStitches,
    /// Strokes along both sides, one every ten rows.
    TenRows,
    /// Where it would end if the count of the pattern were kept.
    Kept,
}

/// Below the drawing: what its marks are.
pub fn caption(marks: &[Mark]) -> String {
    let sentence = |mark: &Mark| match mark {
        Mark::Pattern => "Dotted: the pattern’s piece.",
        Mark::Wanted => "Dotted: the width you want.",
        Mark::Own => "Solid: yours.",
        Mark::TenStitches => "A stroke every ten stitches, the pattern’s above, yours below.",
        Mark::TenRows => "A stroke every ten rows, the pattern’s on the left, yours on the right.",
        Mark::Kept => "The thin line: how far the pattern’s own count would reach at your gauge.",
    };
    marks.iter().map(sentence).collect::<Vec<&str>>().join(" ")
}
