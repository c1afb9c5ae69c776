//! Stitches as they are cast on: the first one on the right, the needle's tip on the left, with a marker between two
//! groups. Below the needle the full groups have a line, and the one that is not full a dashed one. What is on the needle
//! already is a thick line.

use super::path::Path;
use super::picture::{label, picture};
use crate::part::plain::{self, element};
use loopwright::cast_on::MarkerPlan;
use yew::prelude::*;

/// More stitches than this are drawn as a line instead of ticks.
const MOST_TICKS: u32 = 200;
/// More markers than this are not drawn.
const MOST_MARKERS: usize = 60;

const RIGHT: f64 = 340.0;
const WIDE: f64 = 320.0;
/// Room for the figures of one marker.
const ROOM: f64 = 44.0;

/// The needle, with `on` stitches on it already; `words` say what it shows for those who cannot see it, and `counts` are
/// written at the markers. On a sign all of these are empty.
pub fn needle(plan: &MarkerPlan, on: u32, words: &str, counts: &[String]) -> Html {
    let x = |stitches: f64| RIGHT - WIDE * stitches / f64::from(plan.stitches.max(1));
    let [mut done, mut ticks, mut full, mut open, mut markers]: [Path; 5] = Default::default();
    if on > 0 {
        done.line(&[(RIGHT, 66.0), (x(f64::from(on)), 66.0)]);
    }
    if plan.stitches <= MOST_TICKS {
        for stitch in 0..plan.stitches {
            let x = x(f64::from(stitch) + 0.5);
            ticks.line(&[(x, 54.0), (x, 72.0)]);
        }
    }
    let rest = x(f64::from(plan.stitches - plan.rest));
    full.line(&[(RIGHT, 94.0), (rest, 94.0)]);
    open.line(&[(rest, 94.0), (RIGHT - WIDE, 94.0)]);
    let marks = plan.marks();
    let (mut labels, mut last_label) = (Vec::new(), RIGHT + ROOM);
    if marks.len() <= MOST_MARKERS {
        for (mark, count) in marks.iter().zip(counts) {
            let x = x(f64::from(*mark));
            markers.line(&[(x, 98.0), (x, 38.0)]);
            if last_label - x >= ROOM {
                last_label = x;
                labels.push(label((x, 30.0), count.clone()));
            }
        }
    }
    let content = vec![
        plain::path("line-of-stitches", "M6 66H352"),
        plain::path("line-of-stitches done", &done.written()),
        plain::path("ticks", &ticks.written()),
        plain::path("groups", &full.written()),
        plain::path("groups open", &open.written()),
        plain::path("marker", &markers.written()),
        element("g", "caption", labels),
    ];
    picture("comb", (360, 104), words, content)
}
