//! Pictures, drawn from what the maths said and nothing else. Geometry lives here; no sum of the trade does.

pub mod balls;
pub mod cast_on;
pub mod cords;
pub mod flare;
pub mod girths;
pub mod holes;
pub mod needle;
pub mod outline;
mod path;
mod picture;
pub mod place;
pub mod qr;
pub mod raglan;
pub mod raise;
pub mod regauge;
pub mod rounds;
pub mod rows;
pub mod schematic;
pub mod shaping;
pub mod sign;
pub mod stairs;
mod strokes;
pub mod tail;
pub mod within;
pub mod written;
pub mod yoke;
