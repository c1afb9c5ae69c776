//! The edges of a piece that is shaped, row by row from below, a square for each stitch of each row. Beside each shaping
//! row stands a mark: a solid triangle that points down for fewer stitches, an open one that points up for more; and as
//! far as there is room its number. How wide the piece is between its edges is not told, and not drawn to scale.

use super::path::Path;
use super::picture::{label, picture};
use crate::part::plain::{self, el};
use crate::words::intl::number;
use loopwright::shaping::{Answer, Question};
use yew::prelude::*;

/// More rows than this have no lines of their own.
const MOST_LINES: u32 = 100;
/// Of more shaping rows than this only every so many-th is drawn.
const MOST_MARKS: u32 = 1_000;

const MIDDLE: f64 = 180.0;
const TOP: f64 = 14.0;
/// How high the piece may be, and how high a row.
const HIGH: f64 = 330.0;
const HIGHEST: f64 = 14.0;
/// How wide the piece may be, and how wide it is where it is narrowest.
const WIDE: f64 = 220.0;
const NARROW: f64 = 48.0;
/// How far apart numbers stand.
const ROOM: f64 = 20.0;

/// The edges over so many rows. What an even change takes falls on two edges, the odd one at its end on the right edge;
/// otherwise one edge is straight.
pub fn edges(question: &Question, answer: &Answer, words: &str) -> Html {
    let (rows, both) = (question.rows, question.each.is_multiple_of(2));
    let (schedule, all) = (&answer.schedule, f64::from(answer.change));
    let square = (HIGH / f64::from(rows.max(1))).min((WIDE - NARROW) / all).min(HIGHEST);
    let high = square * f64::from(rows);
    let widest = NARROW + square * all;
    // How far the right edge (1.0) or the left (-1.0) lies from the middle when so many are changed.
    let reach = |side: f64, changed: f64| {
        let fewer = if schedule.gain { all - changed } else { changed };
        let fewer = match (both, side > 0.0) {
            (true, true) => (fewer / 2.0).ceil(),
            (true, false) => (fewer / 2.0).floor(),
            (false, true) => fewer,
            (false, false) => 0.0,
        };
        widest / 2.0 - square * fewer
    };
    let half = (high / f64::from(answer.shaping_rows) * 0.4).clamp(1.0, 5.0);
    let tip = if schedule.gain { -half } else { half };

    let [mut piece, mut lines, mut marks]: [Path; 3] = Default::default();
    let mut steps = vec![(0.0, TOP + high)];
    let (mut numbers, mut said) = (Vec::new(), TOP + high + ROOM);
    let (mut shaping, mut place) = (schedule.rows(), 0);
    let mut next = shaping.next();
    for row in 1..=rows {
        // A row changes the edge from its lower end on.
        let below = TOP + high - square * f64::from(row - 1);
        if let Some(shaped) = next.filter(|shaped| shaped.row == row) {
            next = shaping.next();
            place += 1;
            if place % (answer.shaping_rows / MOST_MARKS + 1) == 0 {
                let after = f64::from(shaped.changed);
                let before = after - f64::from(shaped.change);
                steps.push((before, below));
                steps.push((after, below));
                let y = below - square / 2.0;
                for side in [1.0, -1.0] {
                    let (from, to) = (reach(side, before), reach(side, after));
                    // An edge that stays as it is has no mark.
                    if (from - to).abs() < square / 2.0 {
                        continue;
                    }
                    let x = MIDDLE + side * (from.max(to) + 11.0);
                    marks.line(&[(x - half, y - tip), (x, y + tip), (x + half, y - tip)]);
                    if !schedule.gain {
                        marks.close();
                    }
                }
                if said - y >= ROOM {
                    said = y;
                    numbers.push(label((MIDDLE + widest / 2.0 + 42.0, y + 5.0), number(row)));
                }
            }
        }
        if rows <= MOST_LINES {
            let changed = steps.last().map_or(0.0, |step| step.0);
            let [right, left] = [reach(1.0, changed), reach(-1.0, changed)];
            lines.line(&[(MIDDLE - left, below), (MIDDLE + right, below)]);
        }
    }
    steps.push((all, TOP));
    // Up on the right, and back down on the left.
    let mut edge = Vec::new();
    for &(changed, y) in &steps {
        edge.push((MIDDLE + reach(1.0, changed), y));
    }
    while let Some((changed, y)) = steps.pop() {
        edge.push((MIDDLE - reach(-1.0, changed), y));
    }
    piece.line(&edge);
    piece.close();
    let class = if schedule.gain { "marks more" } else { "marks fewer" };
    let content = vec![
        plain::path("piece", &piece.written()),
        plain::path("arms", &lines.written()),
        plain::path(class, &marks.written()),
        el("g", "caption", numbers),
    ];
    picture("edges", (360, (TOP + high + 8.0) as u32), words, content)
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
