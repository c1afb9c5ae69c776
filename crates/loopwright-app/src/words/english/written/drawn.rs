//! The words of a row that is drawn.

use super::super::intl::fill_pattern;
use super::count;
use loopwright::written::{CellKind, Drawn};

/// What the signs mean that are in it, and that it is cut where it is.
pub fn drawn_key(drawn: &Drawn) -> String {
    let shows = |kinds: &[CellKind]| drawn.cells.iter().any(|cell| kinds.contains(&cell.worked));
    let signs = SIGNS.iter().filter(|(kinds, _)| shows(kinds)).map(|(_, words)| *words);
    let brackets = drawn.cells.iter().any(|cell| cell.opens > 0);
    let mut key: Vec<String> = signs.map(str::to_owned).collect();
    key.extend(brackets.then(|| "Brackets: one repeat.".to_owned()));
    if drawn.left > 0 {
        key.push("Dashed, from the cross on: left on the needle.".to_owned());
    } else if drawn.is_halted {
        key.push("Dashed, with a cross: it goes no further.".to_owned());
    }
    if drawn.is_cut {
        let shown = count(drawn.cells.len() as u64);
        key.push(fill_pattern("Only the first # are drawn.", &[shown]));
    }
    key.join(" ")
}

/// What each sign means.
const SIGNS: [(&[CellKind], &str); 10] = [
    (&[CellKind::Knit], "Empty: knit, or plain."),
    (&[CellKind::Purl], "Dot: purl."),
    (&[CellKind::Decrease], "Stroke: decrease."),
    (&[CellKind::Increase], "Ring: increase."),
    (&[CellKind::CastOn], "Ring: cast on."),
    (&[CellKind::Slipped], "Wave: slipped."),
    (&[CellKind::Crossed], "Wave: crossed."),
    (
        &[CellKind::BoundOff, CellKind::Held],
        "Diagonal cross: bound off, or on a holder.",
    ),
    (&[CellKind::Marker], "Bar: marker."),
    (&[CellKind::Turn], "Arrows: turn."),
];

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
