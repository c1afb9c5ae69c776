//! One row stitch by stitch, as far as it goes: what a drawing of it shows.
//!
//! The row is walked once more on the needle that it finds, and what is worked is written down as it happens, so that the
//! drawing and the count are of the same walk.

use super::line::Pattern;
use super::place::Place;
use super::work::{Bench, Start};

/// So many stitches are drawn at most; a longer row is cut there, and says so.
pub const MOST_DRAWN: usize = 600;

/// A row as far as it goes.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Drawn {
    /// What is worked, in order.
    pub cells: Vec<Cell>,
    /// Stitches that are left on the needle where it ends.
    pub left: u64,
    /// Whether it halts where the last cell stands, for want of stitches or of whatever else is missing.
    pub is_halted: bool,
    /// Whether it goes on further than is drawn.
    pub is_cut: bool,
}

/// One thing that is worked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Cell {
    /// What it is.
    pub worked: CellKind,
    /// Where its word stands.
    pub place: Place,
    /// Brackets that begin with it.
    pub opens: u8,
    /// Brackets that end with it.
    pub closes: u8,
}

/// What is worked, as a drawing tells it apart.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum CellKind {
    /// A knit stitch, or one that is plain in any other way.
    Knit,
    /// A purl stitch.
    Purl,
    /// A stitch that is slipped.
    Slipped,
    /// Fewer are left than were taken.
    Decrease,
    /// More are left than were taken.
    Increase,
    /// Several that cross or are worked together, and stay as many.
    Crossed,
    /// A stitch that is bound off.
    BoundOff,
    /// A stitch that is cast on.
    CastOn,
    /// A stitch that is put on a holder.
    Held,
    /// A marker.
    Marker,
    /// The work is turned.
    Turn,
}

/// The first row of a line; none where nothing is worked in it.
pub fn drawn(pattern: &Pattern, start: &Start, size: usize, at: usize) -> Option<Drawn> {
    let line = pattern.lines.get(at)?;
    let bench = Bench::at(pattern, start, size, at)?;
    Some(bench.drawn(line))
}

/// Writes down what is worked.
#[derive(Clone, Debug, Default)]
pub(super) struct Recorder {
    drawn: Drawn,
    opens: u8,
}

impl Recorder {
    /// So many of the same.
    pub fn worked(&mut self, worked: CellKind, place: Place, times: u64) {
        for _ in 0..times {
            if self.drawn.cells.len() >= MOST_DRAWN {
                self.drawn.is_cut = true;
                return;
            }
            self.drawn.cells.push(Cell {
                worked,
                place,
                opens: std::mem::take(&mut self.opens),
                closes: 0,
            });
        }
    }

    /// A bracket begins.
    pub const fn opens(&mut self) {
        self.opens = self.opens.saturating_add(1);
    }

    /// A bracket ends behind what was worked last, if anything was within it.
    pub fn closes(&mut self) {
        if self.opens > 0 {
            self.opens -= 1;
        } else if let (false, Some(last)) = (self.drawn.is_cut, self.drawn.cells.last_mut()) {
            last.closes = last.closes.saturating_add(1);
        }
    }

    pub fn done(self, left: u64, is_halted: bool) -> Drawn {
        Drawn {
            left,
            is_halted,
            ..self.drawn
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::read;
    use super::*;

    fn told(text: &str, stitches: u32) -> (String, u64, bool) {
        let (pattern, faults) = read(text, 1, &[]);
        assert_eq!(faults, []);
        let drawn = drawn(&pattern, &Start::with(stitches), 0, 0).expect("a row");
        let sign = |cell: &Cell| {
            let sign = match cell.worked {
                CellKind::Knit => "k",
                CellKind::Purl => "p",
                CellKind::Slipped => "s",
                CellKind::Decrease => "/",
                CellKind::Increase => "o",
                CellKind::Crossed => "x",
                CellKind::BoundOff => "b",
                CellKind::CastOn => "c",
                CellKind::Held => "h",
                CellKind::Marker => "|",
                CellKind::Turn => "t",
            };
            let (opens, closes) = ("(".repeat(cell.opens.into()), ")".repeat(cell.closes.into()));
            format!("{opens}{sign}{closes}")
        };
        (drawn.cells.iter().map(sign).collect(), drawn.left, drawn.is_halted)
    }

    #[test]
    fn a_row_is_drawn_as_far_as_it_goes() {
        assert_eq!(told("K2, p1, sl 1", 4), ("kkps".into(), 0, false));
        assert_eq!(
            told("K1, (k2tog, yo) 3 times, k1", 8),
            ("k(/o)(/o)(/o)k".into(), 0, false)
        );
        assert_eq!(
            told("K1, (k2tog, yo) 3 times, k1", 7),
            ("k(/o)(/o)(/o)".into(), 0, true)
        );
        assert_eq!(told("K1, (k2tog, yo) 3 times, k1", 6), ("k(/o)(/o)".into(), 1, true));
        assert_eq!(told("*K2, p2; rep from * to end", 10), ("(kkpp)(kkpp)".into(), 2, true));
        assert_eq!(told("2/2 RC, pm, p2", 6), ("xxxx|pp".into(), 0, false));
        assert_eq!(told("BO 2, k to end", 5), ("bbkkk".into(), 0, false));
        assert_eq!(told("k2, (k1, yo, k1) in next st, k1", 4), ("kkok".into(), 0, false));
    }

    #[test]
    fn a_long_row_is_cut() {
        let (pattern, _) = read("K9000", 1, &[]);
        let drawn = drawn(&pattern, &Start::with(9_000), 0, 0).expect("a row");
        assert!(drawn.is_cut && drawn.cells.len() == MOST_DRAWN);
    }
}
