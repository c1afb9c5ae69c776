//! How small and how large a quantity may be.
//!
//! A limit is data, written once beside the question it belongs to, and read by the field on the page, by the
//! parser, by `answer` and by the documentation alike. Both ends are allowed values.

/// The least and the most a quantity may be, both included.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Bounds<T> {
    /// The smallest value that is accepted.
    pub least: T,
    /// The largest value that is accepted.
    pub most: T,
}

impl<T: PartialOrd + Copy> Bounds<T> {
    /// Bounds from the least to the most, both included.
    pub const fn new(least: T, most: T) -> Self {
        Self { least, most }
    }

    /// Whether a value may be used.
    pub fn allow(&self, value: T) -> bool {
        self.least <= value && value <= self.most
    }
}
