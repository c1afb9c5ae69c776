//! A row of a pattern as far as it goes: a square for each thing that is worked, in bands that a phone shows whole, brackets
//! around each repeat, and the place where it goes no further.

use super::picture::picture;
use super::sign;
use crate::part::plain;
use loopwright::written::{CellKind, Drawn};
use std::fmt::Write;
use yew::prelude::*;

/// Squares of one band.
const BAND: usize = 25;
/// How large a square is, and how far a band lies below the one before.
const SQUARE: u32 = 13;
const DEEP: u32 = 24;
const EDGE: u32 = 8;
/// More stitches than this that are left are not drawn one by one.
const MOST_LEFT: usize = 2 * BAND;

/// Where a square stands: its left upper corner.
#[derive(Clone, Copy)]
struct Corner {
    x: u32,
    y: u32,
}

impl Corner {
    fn of(at: usize) -> Self {
        let [band, column] = [at / BAND, at % BAND].map(|place| u32::try_from(place).unwrap_or(0));
        Self {
            x: EDGE + column * SQUARE,
            y: EDGE + band * DEEP,
        }
    }

    fn square(self, line: &mut String) {
        let _ = write!(line, "M{} {}h{SQUARE}v{SQUARE}h-{SQUARE}z", self.x, self.y);
    }

    fn cross(self, line: &mut String) {
        let (x, y) = (self.x + 3, self.y + 3);
        let _ = write!(line, "M{x} {y}l7 7m0-7l-7 7");
    }

    /// A bracket at the left of the square.
    fn opens(self, line: &mut String) {
        let _ = write!(line, "M{} {}h-2v19h2", self.x + 3, self.y - 3);
    }

    fn closes(self, line: &mut String) {
        let _ = write!(line, "M{} {}h2v19h-2", self.x + SQUARE - 3, self.y - 3);
    }
}

/// The lines of the picture, each kind as one path.
#[derive(Default)]
struct Lines {
    squares: String,
    signs: String,
    brackets: String,
    left: String,
    halt: String,
}

/// The row.
pub fn row(drawn: &Drawn, words: &str) -> Html {
    let mut lines = Lines::default();
    for (at, cell) in drawn.cells.iter().enumerate() {
        let corner = Corner::of(at);
        corner.square(&mut lines.squares);
        inside(cell.worked, corner, &mut lines.signs);
        if cell.opens > 0 {
            corner.opens(&mut lines.brackets);
        }
        if cell.closes > 0 {
            corner.closes(&mut lines.brackets);
        }
    }
    let all = if drawn.is_cut {
        drawn.cells.len()
    } else {
        rest(drawn, &mut lines)
    };
    let bands = u32::try_from(all.div_ceil(BAND).max(1)).unwrap_or(1);
    let wide = 2 * EDGE + SQUARE * u32::try_from(BAND).unwrap_or(0);
    let content = [
        ("squares", &lines.squares),
        ("left", &lines.left),
        ("signs", &lines.signs),
        ("brackets", &lines.brackets),
        ("halt", &lines.halt),
    ];
    let content = content
        .into_iter()
        .map(|(class, line)| plain::path(class, line))
        .collect();
    picture("stitches", (wide, EDGE + bands * DEEP), words, content)
}

/// What stands behind the last square: the stitches that are left, and the place where it halts. Says how many squares there
/// are then.
fn rest(drawn: &Drawn, lines: &mut Lines) -> usize {
    let first = drawn.cells.len();
    let left = usize::try_from(drawn.left).unwrap_or(MOST_LEFT).min(MOST_LEFT);
    let last = first + left.max(usize::from(drawn.is_halted));
    for at in first..last {
        Corner::of(at).square(&mut lines.left);
    }
    if last > first {
        Corner::of(first).cross(&mut lines.halt);
    }
    last
}

/// The sign within a square.
fn inside(worked: CellKind, Corner { x, y }: Corner, line: &mut String) {
    let _ = match worked {
        CellKind::Knit => Ok(()),
        CellKind::Purl => write!(line, "M{} {}a1 1 0 1 0 2 0a1 1 0 1 0-2 0", x + 6, y + 7),
        CellKind::Slipped | CellKind::Crossed => write!(line, "M{} {}q2-5 4 0t4 0", x + 3, y + 7),
        CellKind::Decrease => write!(line, "M{} {}l7-7", x + 3, y + 10),
        CellKind::Increase | CellKind::CastOn => {
            write!(line, "M{} {}a3 3 0 1 0 6 0a3 3 0 1 0-6 0", x + 4, y + 7)
        }
        CellKind::BoundOff | CellKind::Held => write!(line, "M{} {}l7 7m0-7l-7 7", x + 3, y + 3),
        CellKind::Marker => write!(line, "M{} {y}v{SQUARE}", x + 6),
        CellKind::Turn => write!(line, "M{} {}h5l-3-3m3 3l-3 3", x + 4, y + 7),
    };
}

/// Three lines of writing, each with its mark.
pub fn sign() -> Html {
    sign::sign(
        "sign",
        "0 0 64 40",
        &[
            ("line", "M6 10h36M6 20h30M6 30h38"),
            ("accent", "M50 10l3 3 6-7M50 30l3 3 6-7"),
            ("other", "M51 17l7 7m0-7l-7 7"),
        ],
    )
}
