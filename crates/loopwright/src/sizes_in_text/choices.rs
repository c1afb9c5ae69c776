//! The names of the fields by which one size is asked for, and the ways to show it.

/// The fields.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// The text of the pattern.
    PatternText,
    /// Where it stays.
    Keep,
    /// The names of the sizes.
    Sizes,
    /// Which of them is hers, counted from one.
    Size,
    /// How the text is shown.
    Show,
    /// What she said about lists that were in doubt.
    Decided,
    /// Another size from a line on.
    OtherSizes,
    /// The size for which the line is still to be chosen from which on it is hers, counted from one.
    Next,
}

crate::field_names!(Name {
    PatternText = "pattern_text",
    Keep = "keep",
    Sizes = "sizes",
    Size = "size",
    Show = "show",
    Decided = "decided",
    OtherSizes = "other_sizes",
    Next = "next",
});

/// How the text is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Show {
    /// Her size large, the others struck.
    Struck,
    /// Her size only.
    Only,
    /// As it is printed.
    All,
}

crate::choice!(Show starts Struck { Struck = "struck", Only = "only", All = "all" });
