//! The words of a row that is drawn.

use super::super::intl::fill_pattern;
use super::count;
use loopwright::written::Drawn;

/// What its signs are, and that it is cut where it is.
pub fn drawn_key(drawn: &Drawn) -> String {
    if !drawn.is_cut {
        return DRAWN_KEY.to_owned();
    }
    let shown = count(drawn.cells.len() as u64);
    [DRAWN_KEY, &fill_pattern(" Only the first # are drawn.", &[shown])].concat()
}

const DRAWN_KEY: &str = "One square for each thing that is worked, in the order in which it is: empty a knit stitch, a dot a purl, a stroke a decrease, a ring an increase, a wave one that crosses or is slipped, a cross one that is bound off, a bar a marker. Brackets stand around each repeat. Dashed: stitches that are left; with a cross in it, the place where it goes no further.";

/// The row for those who cannot see it.
pub fn drawn(drawn: &Drawn) -> String {
    let worked = count(drawn.cells.len() as u64);
    let mut said = fill_pattern("A row, drawn as far as it goes: # {square|squares}", &[worked]);
    if drawn.left > 0 {
        said += &fill_pattern(", then # {stitch|stitches} left", &[count(drawn.left)]);
    }
    if drawn.is_cut {
        said += ", cut there";
    }
    said + "."
}
