//! The names of the fields by which a needle is asked for, and what its size can be given in.

use crate::tables::needle::System;

/// A field of the question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// The size, as it stands on the needle.
    Size,
    /// What the size is given in.
    System,
}

crate::field_names!(Name { Size = "size", System = "system" });

/// What a size is given in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GivenIn {
    /// US numbers.
    Us,
    /// Old UK and Canadian numbers.
    Uk,
    /// Japanese numbers.
    Japanese,
    /// Millimetres.
    Millimetres,
    /// Millimetres of the smallest hole of a needle gauge that the needle passes.
    Hole,
}

crate::choice!(GivenIn starts Us {
    Us = "us",
    Uk = "uk",
    Japanese = "jp",
    Millimetres = "mm",
    Hole = "hole",
});

impl GivenIn {
    /// The system that a number alone belongs to.
    pub const fn system(self) -> System {
        match self {
            Self::Us => System::Us,
            Self::Uk => System::Uk,
            Self::Japanese => System::Japanese,
            Self::Millimetres | Self::Hole => System::Metric,
        }
    }
}
