//! The words under an answer from which a knitter goes on to another tool.

use super::page::listed;

pub const TITLE: &str = "Go on with this";
/// A yoke's rounds, each with the count after it.
pub const STEPS: &str = "the count after each shaping round";

/// What is carried.
pub fn carrying(values: &[String]) -> String {
    format!("with {}", listed(values))
}

/// A count of stitches.
pub fn stitches(text: &str) -> String {
    format!("{text} stitches")
}

/// A count of rows or rounds.
pub fn rows(text: &str) -> String {
    format!("{text} rows")
}

/// `21 over 10 cm`, of stitches.
pub fn stitch_gauge(text: &str) -> String {
    format!("your gauge of {text}")
}

/// `28 over 10 cm`, of rows.
pub fn row_gauge(text: &str) -> String {
    format!("{text} in rows")
}
