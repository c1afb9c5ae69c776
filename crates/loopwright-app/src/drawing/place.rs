//! The place in a piece that is knitted row by row: the piece as wide as it has stitches, the first row at the top; what is
//! done is filled, a stroke at each edge for every row in which something happens, and a line across where she is.

use super::path::{Path, Point};
use super::picture::picture;
use crate::part::plain::path;
use loopwright::follow::Plan;
use yew::prelude::*;

const WIDE: u32 = 360;
const HIGH: u32 = 120;
/// The widest row, and the room above and below the piece.
const WIDEST: f64 = 300.0;
const MIDDLE: f64 = 180.0;
const TOP: f64 = 6.0;
const PIECE: f64 = 108.0;
/// How long the stroke of an event is.
const STROKE: f64 = 12.0;
/// More strokes than this would be one black edge.
const MOST_STROKES: usize = 60;
/// More steps than this cannot be told apart along the edge: of more only so many are drawn.
const MOST_STEPS: usize = 240;

/// The piece with so many rows done.
pub fn place<Doing>(plan: &Plan<Doing>, done: u32, words: &str) -> Html {
    let scale = Scale::of(plan);
    let outline = |from: u32, to: u32| {
        let mut drawn = Path::default();
        drawn.line(&scale.between(plan, from, to));
        drawn.close();
        drawn.written()
    };
    let mut content = vec![path("outline", &outline(0, plan.rows))];
    if done > 0 {
        content.push(path("done", &outline(0, done.min(plan.rows))));
    }
    content.push(path("events", &strokes(plan, &scale)));
    content.push(path("now", &across(&scale.edges(plan, done))));
    picture("place", (WIDE, HIGH), words, content)
}

/// From rows and stitches to places in the drawing.
struct Scale {
    rows: f64,
    stitches: f64,
}

impl Scale {
    fn of<Doing>(plan: &Plan<Doing>) -> Self {
        let counts = plan.events.iter().map(|event| event.row);
        let widest = counts.chain([0]).filter_map(|row| plan.stitches_after(row)).max();
        Self {
            rows: f64::from(plan.rows.max(1)),
            stitches: f64::from(widest.unwrap_or(1).max(1)),
        }
    }

    /// The two ends of the needle when so many rows are done.
    fn edges<Doing>(&self, plan: &Plan<Doing>, rows: u32) -> [Point; 2] {
        let stitches = plan.stitches_after(rows).map_or(self.stitches, f64::from);
        let half = WIDEST / 2.0 * stitches / self.stitches;
        let down = TOP + PIECE * f64::from(rows) / self.rows;
        [(MIDDLE - half, down), (MIDDLE + half, down)]
    }

    /// Round the piece from one row to another: down its left edge and up its right one.
    fn between<Doing>(&self, plan: &Plan<Doing>, from: u32, to: u32) -> Vec<Point> {
        let apart = plan.events.len().div_ceil(MOST_STEPS).max(1);
        let shaped = plan.events.iter().step_by(apart).map(|event| event.row);
        let mut rows: Vec<u32> = vec![from];
        // A row that changes the count is a step: as wide as before above it, as wide as after below it.
        rows.extend(
            shaped
                .filter(|row| *row > from && *row <= to)
                .flat_map(|row| [row.saturating_sub(1), row]),
        );
        rows.push(to);
        let edges: Vec<[Point; 2]> = rows.into_iter().map(|row| self.edges(plan, row)).collect();
        let left = edges.iter().map(|edge| edge[0]);
        let right = edges.iter().rev().map(|edge| edge[1]);
        left.chain(right).collect()
    }
}

/// A stroke outside each edge for every row in which something happens, as long as there are not too many.
fn strokes<Doing>(plan: &Plan<Doing>, scale: &Scale) -> String {
    let mut drawn = Path::default();
    if plan.events.len() <= MOST_STROKES {
        for event in &plan.events {
            let [(left, down), (right, _)] = scale.edges(plan, event.row);
            drawn.line(&[(left - STROKE, down), (left - 2.0, down)]);
            drawn.line(&[(right + 2.0, down), (right + STROKE, down)]);
        }
    }
    drawn.written()
}

/// The line across where she is, a little longer than the needle.
fn across(edges: &[Point; 2]) -> String {
    let [(left, down), (right, _)] = *edges;
    let mut drawn = Path::default();
    drawn.line(&[(left - STROKE, down), (right + STROKE, down)]);
    drawn.written()
}
