//! The edges of a piece that is shaped, row by row from below, a square for each stitch of each row. Beside each shaping
//! row stands a mark: a solid triangle that points down for fewer stitches, an open one that points up for more; and as
//! far as there is room its number. How wide the piece is between its edges is not told, and not drawn to scale.

use super::path::Path;
use super::picture::{label, picture};
use crate::part::plain::{self, element};
use crate::words::intl::number;
use crate::words::shaping::Labels;
use loopwright::shaping::{Answer, Question, Schedule, Shaped};
use yew::prelude::*;

/// More rows than this have no lines of their own.
const MOST_LINES: u32 = 100;
/// Of more shaping rows than this only every so many-th is drawn.
const MOST_MARKS: u32 = 1_000;

const MIDDLE: f64 = 210.0;
const TOP: f64 = 26.0;
/// Below the piece there is room for the count at the beginning.
const BELOW: f64 = 26.0;
/// Where the words of a rate stand, and the line that shows how far it goes.
const RATES: f64 = 44.0;
const RATE_LINE: f64 = 92.0;
/// How high the piece may be, and how high a row.
const HIGH: f64 = 330.0;
const HIGHEST: f64 = 14.0;
/// How wide the piece may be, and how wide it is where it is narrowest.
const WIDE: f64 = 180.0;
const NARROW: f64 = 48.0;
/// How far apart numbers stand.
const ROOM: f64 = 20.0;

/// An edge of the piece as it is drawn.
#[derive(Clone, Copy)]
enum Edge {
    Right,
    Left,
}

impl Edge {
    const BOTH: [Self; 2] = [Self::Right, Self::Left];

    /// The place so far from the middle.
    fn at(self, reach: f64) -> f64 {
        match self {
            Self::Right => MIDDLE + reach,
            Self::Left => MIDDLE - reach,
        }
    }
}

/// The piece as it lies in the picture.
struct Piece<'a> {
    schedule: &'a Schedule,
    /// Rows from below to above.
    rows: u32,
    /// Stitches changed in all.
    all: f64,
    /// Whether the changes fall on both edges.
    both: bool,
    /// How large the square for a stitch of a row is.
    square: f64,
    high: f64,
    widest: f64,
}

impl<'a> Piece<'a> {
    fn of(question: &Question, answer: &'a Answer) -> Self {
        let (rows, all) = (question.rows, f64::from(answer.change));
        let square = (HIGH / f64::from(rows.max(1))).min((WIDE - NARROW) / all).min(HIGHEST);
        Self {
            schedule: &answer.schedule,
            rows,
            all,
            both: question.each.is_multiple_of(2),
            square,
            high: square * f64::from(rows),
            widest: NARROW + square * all,
        }
    }

    /// Where the lower end of a row lies.
    fn below(&self, row: u32) -> f64 {
        TOP + self.high - self.square * f64::from(row - 1)
    }

    /// How far an edge lies from the middle when so many are changed. What an even change takes falls on two edges, the
    /// odd one at its end on the right edge; otherwise the left edge is straight.
    fn reach(&self, edge: Edge, changed: f64) -> f64 {
        let fewer = if self.schedule.gain {
            self.all - changed
        } else {
            changed
        };
        let fewer = match (self.both, edge) {
            (true, Edge::Right) => (fewer / 2.0).ceil(),
            (true, Edge::Left) => (fewer / 2.0).floor(),
            (false, Edge::Right) => fewer,
            (false, Edge::Left) => 0.0,
        };
        self.widest / 2.0 - self.square * fewer
    }

    /// Up the right edge, and back down the left one. A row changes its edge from its lower end on.
    fn outline(&self, shaped: &[Shaped]) -> Path {
        let mut steps = vec![(0.0, TOP + self.high)];
        for row in shaped {
            let y = self.below(row.row);
            steps.extend([(before(row), y), (f64::from(row.changed), y)]);
        }
        steps.push((self.all, TOP));
        let at = |edge: Edge| move |&(changed, y): &(f64, f64)| (edge.at(self.reach(edge, changed)), y);
        let right = steps.iter().map(at(Edge::Right));
        let left = steps.iter().rev().map(at(Edge::Left));
        let mut outline = Path::default();
        outline.line(&right.chain(left).collect::<Vec<_>>());
        outline.close();
        outline
    }

    /// A line for each row, as long as they are not too many.
    fn row_lines(&self) -> Path {
        let mut lines = Path::default();
        if self.rows <= MOST_LINES {
            for row in 1..=self.rows {
                let (changed, y) = (f64::from(self.schedule.changed_by(row)), self.below(row));
                let end = |edge: Edge| (edge.at(self.reach(edge, changed)), y);
                lines.line(&[end(Edge::Left), end(Edge::Right)]);
            }
        }
        lines
    }

    /// A mark beside each shaping row, at every edge that moves.
    fn marks(&self, shaped: &[Shaped], half: f64) -> Path {
        let tip = if self.schedule.gain { -half } else { half };
        let mut marks = Path::default();
        for row in shaped {
            let y = self.middle_of(row.row);
            for edge in Edge::BOTH {
                let from = self.reach(edge, before(row));
                let to = self.reach(edge, f64::from(row.changed));
                // An edge that stays as it is has no mark.
                if (from - to).abs() < self.square / 2.0 {
                    continue;
                }
                let x = edge.at(from.max(to) + 11.0);
                marks.line(&[(x - half, y - tip), (x, y + tip), (x + half, y - tip)]);
                if !self.schedule.gain {
                    marks.close();
                }
            }
        }
        marks
    }

    /// The numbers of the shaping rows, from below, as far as there is room for them.
    fn numbers(&self, shaped: &[Shaped]) -> Vec<Html> {
        let (mut numbers, mut last) = (Vec::new(), TOP + self.high + ROOM);
        for row in shaped {
            let y = self.middle_of(row.row);
            if last - y >= ROOM {
                last = y;
                let place = (MIDDLE + self.widest / 2.0 + 42.0, y + 5.0);
                numbers.push(label(place, number(row.row)));
            }
        }
        numbers
    }

    /// From where to where each rate goes, with its words where they have room.
    fn rates(&self, words: &Labels) -> (Path, Vec<Html>) {
        let (mut lines, mut labels) = (Path::default(), Vec::new());
        for (rate, [from, to]) in &words.rates {
            let [low, high] = [from, to].map(|row| self.middle_of(*row));
            lines.line(&[
                (RATE_LINE + 5.0, low),
                (RATE_LINE, low),
                (RATE_LINE, high),
                (RATE_LINE + 5.0, high),
            ]);
            if low - high >= ROOM {
                labels.push(label((RATES, (low + high) / 2.0 + 5.0), rate.clone()));
            }
        }
        (lines, labels)
    }

    /// The stitches at the beginning and at the end.
    fn counts(&self, words: &Labels) -> Vec<Html> {
        let Some([now, after]) = &words.counts else {
            return Vec::new();
        };
        vec![
            label((MIDDLE, TOP + self.high + 19.0), now.clone()),
            label((MIDDLE, TOP - 8.0), after.clone()),
        ]
    }

    fn middle_of(&self, row: u32) -> f64 {
        self.below(row) - self.square / 2.0
    }
}

/// Stitches changed before a shaping row.
fn before(shaped: &Shaped) -> f64 {
    f64::from(shaped.changed) - f64::from(shaped.change)
}

/// The edges over all rows of a question.
pub fn edges(question: &Question, answer: &Answer, words: &Labels) -> Html {
    let piece = Piece::of(question, answer);
    let every = (answer.shaping_rows / MOST_MARKS + 1) as usize;
    let shaped: Vec<Shaped> = answer.schedule.rows().skip(every - 1).step_by(every).collect();
    let half = (piece.high / f64::from(answer.shaping_rows) * 0.4).clamp(1.0, 5.0);
    let class = if answer.schedule.gain {
        "marks more"
    } else {
        "marks fewer"
    };
    let (rate_lines, rates) = piece.rates(words);
    let mut labels = piece.numbers(&shaped);
    labels.extend(rates);
    labels.extend(piece.counts(words));
    let content = vec![
        plain::path("piece", &piece.outline(&shaped).written()),
        plain::path("arms", &piece.row_lines().written()),
        plain::path("groups", &rate_lines.written()),
        plain::path(class, &piece.marks(&shaped, half).written()),
        element("g", "caption", labels),
    ];
    picture("edges", (376, (TOP + piece.high + BELOW) as u32), &words.words, content)
}

/// The small picture: a piece that becomes narrower.
pub fn sign() -> Html {
    let content = vec![
        plain::path(
            "piece",
            "M60 216V160H84V112H108V64H132V16H228V64H252V112H276V160H300V216Z",
        ),
        plain::path(
            "marks fewer",
            "M66 136L76 152 86 136ZM274 136L284 152 294 136ZM114 40L124 56 134 40ZM226 40L236 56 246 40Z",
        ),
    ];
    picture("edges", (360, 232), "", content)
}
