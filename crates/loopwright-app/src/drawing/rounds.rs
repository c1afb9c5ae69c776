//! Stitches round by round: a box from one shaping round to the next, as wide as its stitches are many, with the count
//! in it where there is room, the last one outside where there is not. The neck, which has fewest, is above.

use super::path::{Path, tenths};
use super::picture::picture;
use crate::part::plain::{self, element_with, text};
use crate::words::intl::number;
use loopwright::shaping::{Block, Knitting, Schedule};
use yew::prelude::*;

const MIDDLE: f64 = 180.0;
const HALF: f64 = 164.0;
const TOP: f64 = 22.0;
const TALL: f64 = 156.0;
/// Room for one count.
const ROOM: f64 = 20.0;

/// The drawing, and what it shows for those who cannot see it; a sign has no words, and no counts.
pub fn rounds(schedule: &Schedule, words: &str) -> Html {
    // Every shaping round ends a stretch of one count, and the last stretch ends with the schedule.
    let (mut ends, mut count) = (Vec::new(), schedule.stitches.unwrap_or(0));
    let (mut most, mut round) = (count.max(1), 0);
    for shaped in schedule.rows() {
        ends.push((shaped.row, count));
        count = shaped.stitches.unwrap_or(0);
        most = most.max(count);
        round = shaped.row;
    }
    let all = round + schedule.left;
    ends.push((all, count));
    let high = |round: u32| {
        let round = if schedule.gain { round } else { all - round };
        TOP + TALL * f64::from(round) / f64::from(all.max(1))
    };
    let mut boxes = Path::default();
    let (mut counts, mut y, mut thin) = (Vec::new(), high(0), false);
    let mut label = |count, y| {
        let place = [("x", &*tenths(MIDDLE)), ("y", &tenths(y))];
        counts.push(element_with("text", &place, vec![text(number(count).into())]));
    };
    for (round, count) in ends {
        let (next, half) = (high(round), HALF * f64::from(count) / f64::from(most));
        let (left, right) = (MIDDLE - half, MIDDLE + half);
        boxes.line(&[(left, y), (right, y), (right, next), (left, next)]);
        boxes.close();
        thin = (next - y).abs() < ROOM;
        if !thin && !words.is_empty() {
            label(count, (y + next) / 2.0 + 6.0);
        }
        y = next;
    }
    if thin && !words.is_empty() {
        label(count, if schedule.gain { TOP + TALL + 17.0 } else { TOP - 6.0 });
    }
    let content = vec![
        plain::path("groups", &boxes.written()),
        element_with("g", &[("class", "caption")], counts),
    ];
    picture("comb", (360, 200), words, content)
}

/// A small picture: from a neck, so many rounds plain and then a wider one, so many times.
pub fn sign(plain: u32, change: u32, times: u32) -> Html {
    let schedule = Schedule {
        knitting: Knitting::Round,
        stitches: Some(40),
        gain: true,
        blocks: vec![Block { plain, change, times }],
        left: plain,
    };
    rounds(&schedule, "")
}
