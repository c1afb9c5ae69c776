//! Strokes side by side, as stitches or rows are drawn.

use super::path::Path;

/// Where a line of strokes begins.
pub const LEFT: f64 = 8.0;
/// How wide it is.
pub const WIDE: f64 = 344.0;

/// More strokes than this make no picture, and are left out.
const MOST: f64 = 180.0;

/// Upright strokes from `from` to the end, one every `pitch`, so tall to both sides of the middle.
pub fn strokes(from: f64, pitch: f64, middle: f64, tall: f64) -> String {
    let mut path = Path::default();
    let mut x = from;
    while pitch * MOST > WIDE && x <= LEFT + WIDE + 0.1 {
        path.line(&[(x, middle - tall), (x, middle + tall)]);
        x += pitch;
    }
    path.written()
}
