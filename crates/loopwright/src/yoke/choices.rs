//! The names of the fields by which a yoke is asked for, and how its growth may be shared.

/// A field of the question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// Stitches at the beginning.
    From,
    /// Stitches at the end.
    To,
    /// Rounds there are.
    Rounds,
    /// In how many of them the count changes.
    ShapingRounds,
    /// How the growth is shared between them.
    Growth,
    /// Stitches of one repeat.
    Multiple,
    /// Plain rounds before the first shaping round.
    First,
    /// Plain rounds at the end.
    Last,
    /// Stitches of each sleeve at the underarm.
    Sleeve,
    /// Stitches cast on at each underarm.
    Underarm,
}

crate::field_names!(Name {
    From = "from",
    To = "to",
    Rounds = "rounds",
    ShapingRounds = "shaping_rounds",
    Growth = "growth",
    Multiple = "multiple",
    First = "first",
    Last = "last",
    Sleeve = "sleeve",
    Underarm = "underarm",
});

/// How the growth of a yoke is shared between its shaping rounds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Growth {
    /// The same number of stitches in each.
    Equal,
    /// As much as a flat circle grows: more where many rounds follow.
    Circle,
}

crate::choice!(Growth starts Equal { Equal = "equal", Circle = "circle" });
