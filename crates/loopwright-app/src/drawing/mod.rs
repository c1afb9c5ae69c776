//! Pictures, drawn from what the maths said and nothing else. Geometry lives here; no sum of the trade does.

pub mod balls;
pub mod cast_on;
pub mod girths;
pub mod needle;
mod path;
pub mod tail;
