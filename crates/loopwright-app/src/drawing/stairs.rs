//! The steps of an edge, with the right side towards the reader: each as wide as its stitches and two rows high, with
//! its stitches written on it where there is room.

use super::path::{Path, Point};
use super::picture::{label, picture};
use crate::part::plain::{self, el};
use crate::words::intl::number;
use loopwright::stairs::{Answer, Edge};
use yew::prelude::*;

const LEFT: f64 = 20.0;
const RIGHT: f64 = 340.0;
/// The piece behind the last step.
const BEHIND: f64 = 48.0;
/// How high the stairs may be, what stands above them and what they stand on.
const HIGH: f64 = 220.0;
const TOP: f64 = 30.0;
const BELOW: f64 = 28.0;
/// How large a square for a stitch of a row may be.
const LARGEST: f64 = 14.0;
/// Room for the figures of one step.
const ROOM: f64 = 22.0;

/// The stairs at one edge or at both.
pub fn stairs(answer: &Answer, edge: Edge, words: &str) -> Html {
    let all = answer.stairs.last().map_or(1, |stair| stair.gone);
    let steps = answer.steps;
    let edges = if edge == Edge::Both { 2.0 } else { 1.0 };
    let square = ((RIGHT - LEFT - BEHIND) / edges / f64::from(all))
        .min(HIGH / f64::from(2 * steps))
        .min(LARGEST);
    // As wide as what is drawn, in the middle.
    let wide = BEHIND + edges * square * f64::from(all);
    let (right, left) = ((LEFT + RIGHT + wide) / 2.0, (LEFT + RIGHT - wide) / 2.0);
    // The rows that are drawn; where both edges move, the one that begins later ends a row higher.
    let high = square * f64::from(2 * steps + u32::from(edge == Edge::Both)).max(1.0);
    let floor = TOP + high;
    let first = answer.stairs.first().map_or(0, |stair| stair.row);
    let mut labels = Vec::new();
    let mut outline: Vec<Point> = Vec::new();
    for side in [Edge::Right, Edge::Left] {
        // From the outer end inwards; the right edge first.
        let (outer, inwards) = if side == Edge::Right {
            (right, -square)
        } else {
            (left, square)
        };
        let mut points = vec![(outer, floor + BELOW)];
        for stair in &answer.stairs {
            if stair.edge != side {
                continue;
            }
            let y = floor - square * f64::from(stair.row - first);
            let (from, to) = (
                outer + inwards * f64::from(stair.gone - stair.stitches),
                outer + inwards * f64::from(stair.gone),
            );
            points.push((from, y));
            points.push((to, y));
            if (from - to).abs() >= ROOM {
                labels.push(label(((from + to) / 2.0, y - 6.0), number(stair.stitches)));
            }
        }
        // Behind the last step, or at an edge that stays straight.
        let inner = points.last().map_or(outer, |point| point.0);
        points.push((inner, TOP));
        // Up on the right, and down on the left.
        if side == Edge::Right {
            outline = points;
            continue;
        }
        while let Some(point) = points.pop() {
            outline.push(point);
        }
    }
    let mut piece = Path::default();
    piece.line(&outline);
    piece.close();
    let content = vec![plain::path("piece", &piece.written()), el("g", "caption", labels)];
    picture("edges", (360, (floor + BELOW + 8.0) as u32), words, content)
}

/// The small picture: three steps at either edge.
pub fn sign() -> Html {
    let stairs = "M20 180V140H68V108H116V76H164V44H212V76H252V108H300V140H340V180Z";
    picture("edges", (360, 200), "", vec![plain::path("piece", stairs)])
}
