//! A back neck that short rows raise, from outside: a stair of two rows at each turn, alike at both sides of the middle,
//! with how far from the middle each turn is where there is room.

use super::path::{Path, Point};
use super::picture::{label, picture};
use crate::part::plain::{self, element};
use crate::words::intl::number;
use yew::prelude::*;

const MIDDLE: f64 = 180.0;
const EDGE: f64 = 340.0;
/// The back beside the last turn, at least.
const BESIDE: f64 = 24.0;
/// How high the stairs may be, what stands above them and what they stand on.
const HIGH: f64 = 160.0;
const TOP: f64 = 30.0;
const BELOW: f64 = 34.0;
/// How large a square for a stitch of a row may be.
const LARGEST: f64 = 14.0;
/// Room for a number.
const ROOM: f64 = 22.0;

/// The raised back: `turns` are the stitches from the middle to each turn, the nearest first.
pub fn raise(turns: &[u32], words: &str) -> Html {
    let far = f64::from(turns.last().copied().unwrap_or(1));
    let square = ((EDGE - MIDDLE - BESIDE) / far)
        .min(HIGH / (2 * turns.len().max(1)) as f64)
        .min(LARGEST);
    let floor = TOP + 2.0 * square * turns.len() as f64;
    // The steps of the right side, from the outer end up to the middle.
    let mut steps: Vec<Point> = vec![(EDGE, floor + BELOW), (EDGE, floor)];
    let mut labels = Vec::new();
    let (mut y, mut free) = (floor, f64::INFINITY);
    for place in turns.iter().rev() {
        let x = MIDDLE + square * f64::from(*place);
        let above = y - 2.0 * square;
        steps.extend([(x, y), (x, above)]);
        if free - x >= ROOM {
            labels.push(label((x, floor + BELOW - 10.0), number(*place)));
            free = x;
        }
        y = above;
    }
    let mirrored = steps.iter().rev().map(|(x, y)| (2.0 * MIDDLE - x, *y));
    let outline: Vec<Point> = steps.iter().copied().chain(mirrored).collect();
    let mut piece = Path::default();
    piece.line(&outline);
    piece.close();
    let mut middle = Path::default();
    middle.line(&[(MIDDLE, TOP - 12.0), (MIDDLE, floor + BELOW)]);
    let content = vec![
        plain::path("piece", &piece.written()),
        plain::path("piece", &middle.written()),
        element("g", "caption", labels),
    ];
    picture("edges", (360, (floor + BELOW + 8.0) as u32), words, content)
}
