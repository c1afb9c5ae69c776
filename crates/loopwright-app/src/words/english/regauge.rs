//! The words of a pattern at another gauge: its fields and the heads of its tables. What is said of an answer is in
//! [`Sentences`].

mod note;
mod picture;
mod sentences;

pub use note::note;
pub use picture::{Drawn, Mark, caption};
pub use sentences::{Lead, Sentences};

use super::intl::fill_pattern_with;
use super::{Title, Worded};
use loopwright::problem::{Kind, Problem};
use loopwright::regauge::{KnittingKind, Name, Parity, ShapingSide};

pub const TITLE: Title = Title {
    name: "Pattern at my gauge",
    asks: "What a pattern’s numbers become at your own gauge.",
};
pub const ABOUT_COUNTS: &str = "What the counts must keep";
pub const ABOUT_ROWS: &str = "Rows and lengths";
pub const ABOUT_SHAPING: &str = "Shaping in the pattern";
pub const EXAMPLE_COUNTS: &str = "such as 132 (144, 156)";
pub const EXAMPLE_ROWS: &str = "such as 40 (42, 46)";
pub const WAITING: &str = "The pattern’s numbers at your gauge appear here.";
pub const STITCHES: &str = "Stitches";
pub const ROWS: &str = "Rows";
/// In place of a count that a size has not.
pub const NO_COUNT: &str = "–";
pub const SHAPING: &str = "The shaping, shared out anew";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::Pattern => "The pattern’s stitches",
        Name::Own => "Your stitches, washed",
        Name::Counts => "Stitches in the pattern, one or many",
        Name::Wanted => "Width I want: which size to follow?",
        Name::Multiple => "The pattern takes a multiple of",
        Name::Plus => "plus, for its two edges",
        Name::Knitting => "In the round or flat",
        Name::Edge | Name::Seam => "Flat: edge and seam stitches at each edge",
        Name::Parity => "Odd or even",
        Name::PatternRows => "The pattern’s rows",
        Name::OwnRows => "Your rows, washed",
        Name::Rows => "Rows in the pattern, one or many",
        Name::Length => "A length that is worked by rows",
        Name::RowRepeat => "Rows of one repeat",
        Name::From => "From so many stitches",
        Name::To => "to so many",
        Name::ShapingRows => "in so many rows, plain ones too",
        Name::Each => "Stitches changed in a shaping row",
        Name::Sides => "Shaping rows may be",
    }
}

impl Worded for KnittingKind {
    fn words(self) -> &'static str {
        match self {
            Self::Round => "in the round",
            Self::Extra => "in the round, one more to join",
            Self::Flat => "flat, back and forth",
        }
    }
}

impl Worded for Parity {
    fn words(self) -> &'static str {
        match self {
            Self::Any => "may change",
            Self::Kept => "stays as it is: one stitch is the centre",
        }
    }
}

impl Worded for ShapingSide {
    fn words(self) -> &'static str {
        match self {
            Self::Right => "right-side rows only",
            Self::Any => "any rows",
        }
    }
}

/// A column of the tables.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Column {
    /// What the pattern has.
    Pattern,
    /// What that becomes.
    Own,
    /// What it would measure if it were kept.
    Kept,
}

impl Column {
    /// From left to right.
    pub const ALL: [Self; 3] = [Self::Pattern, Self::Own, Self::Kept];

    /// What stands above it.
    pub const fn heading(self) -> &'static str {
        match self {
            Self::Pattern => "In the pattern",
            Self::Own => "At your gauge",
            Self::Kept => "Kept as it is",
        }
    }
}

pub const SOURCE: &str = "Arithmetic. Of two equally near the smaller: common practice, no source. Yarn goes with the square root of stitches times rows: Munden 1959, as others quote it; the source itself was not read.";

/// What to type instead, for a problem with a field in which `text` stands.
pub fn problem(problem: &Problem, text: &str) -> String {
    match (problem.kind, problem.field.name()) {
        (Kind::Missing, Some(Name::Counts)) => "Type the stitches of the sizes here.".into(),
        (Kind::Missing, Some(Name::PatternRows | Name::OwnRows)) => {
            "Rows take both row gauges: type this one too.".into()
        }
        (Kind::UnreadableList(unread), _) => super::problem::list(unread, text),
        (Kind::Missing, _) => "Type this too, or empty the field that goes with it.".into(),
        (kind, _) => super::problem::sentence(&kind),
    }
}

/// Which fields are to be filled before the shaping is answered; nothing where it is whole, or not begun.
pub fn shaping_waits(missing: &[Name]) -> Option<String> {
    let fields: Vec<String> = missing.iter().map(|name| format!("“{}”", label(*name))).collect();
    let pattern = "The shaping is still to come: under “@” fill in @.";
    (!fields.is_empty()).then(|| fill_pattern_with(pattern, &[], &[ABOUT_SHAPING, &fields.join(" and ")]))
}

#[cfg(test)]
mod tests;
