//! The names of the fields by which rows and lengths are asked for, and what can be chosen in them.

/// A field of the question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// What is to be known.
    Wanted,
    /// What is known.
    Ask,
    /// How long, where a length is known.
    Length,
    /// How many rows, where those are known.
    Rows,
    /// How many ridges, where those are known.
    Ridges,
    /// How many repeats of a chart, where those are known.
    Repeats,
    /// Rows in the washed swatch.
    Gauge,
    /// In the round or flat.
    Knitting,
    /// Which stitch.
    Fabric,
    /// Rows of one repeat of the chart.
    Repeat,
    /// Rows before the first repeat.
    SetUp,
    /// After which row of the repeat it ends.
    EndAfter,
    /// How many edges are measured along.
    Edges,
    /// Rows done so far.
    TapeRows,
    /// What the tape says about them.
    TapeLength,
    /// Rows in the swatch before washing.
    Unwashed,
}

crate::field_names!(Name {
    Wanted = "wanted",
    Ask = "ask",
    Length = "length",
    Rows = "rows",
    Ridges = "ridges",
    Repeats = "repeats",
    Gauge = "gauge",
    Knitting = "knitting",
    Fabric = "fabric",
    Repeat = "repeat",
    SetUp = "set_up",
    EndAfter = "end_after",
    Edges = "edges",
    TapeRows = "tape_rows",
    TapeLength = "tape_length",
    Unwashed = "unwashed",
});

/// What is to be known of rows and their length.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Wanted {
    /// How many rows, or how long they are.
    Plan,
    /// In mid-knit: ahead or behind, and how many are to go.
    Course,
}

crate::choice!(Wanted starts Plan { Plan = "plan", Course = "course" });

/// What is known, before it is said how much: an [`Ask`](super::Ask) without its number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Asked {
    /// A length to knit.
    Length,
    /// A number of rows.
    Rows,
    /// Ridges of garter.
    Ridges,
    /// Repeats of a chart.
    Repeats,
}

crate::choice!(Asked starts Length {
    Length = "length",
    Rows = "rows",
    Ridges = "ridges",
    Repeats = "repeats",
});

/// Flat or in the round: rows are mostly counted flat, so that this one starts there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Turning {
    /// Back and forth.
    Flat,
    /// In the round.
    Round,
}

crate::choice!(Turning starts Flat { Flat = "flat", Round = "round" });

/// Which stitch it is, as far as rows are counted otherwise in it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fabric {
    /// Any but garter.
    Any,
    /// Garter: two rows a ridge.
    Garter,
}

crate::choice!(Fabric starts Any { Any = "any", Garter = "garter" });
