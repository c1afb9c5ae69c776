//! The arithmetic of hand knitting.
pub mod bounds;
pub mod problem;
pub mod row;
pub mod spacing;
pub mod units;
