//! Pictures, drawn from what the maths said and nothing else. Geometry lives here; no sum of the trade does.

pub mod needle;
mod path;
