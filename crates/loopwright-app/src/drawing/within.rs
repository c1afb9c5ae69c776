//! The place within a written row: the stitches as a line, worked from right to left (by the left hand from left to right),
//! a stroke for each change, a bracket below each repeat, and what is worked so far filled.

use super::path::Path;
use super::picture::picture;
use crate::part::plain::path;
use loopwright::follow::{Group, stretches};
use loopwright::terms::Hand;
use yew::prelude::*;

const WIDE: u32 = 360;
const HIGH: u32 = 56;
const LINE: f64 = 348.0;
const EDGE: f64 = 6.0;
/// Where the changes begin and end, the line of stitches, and the brackets below it.
const STROKE_TOP: f64 = 6.0;
const TOP: f64 = 18.0;
const FOOT: f64 = 34.0;
const BRACKET: f64 = 40.0;
const BRACKET_FOOT: f64 = 46.0;

/// More runs than this are not drawn: they would be one band.
const MOST_RUNS: usize = 4_000;

/// The row, of which so many repeats are worked.
pub fn within(groups: &[Group], repeats_done: u32, hand: Hand, words: &str) -> Html {
    let all: u64 = groups.iter().map(Group::uses).sum();
    let x = |stitches: u64| {
        let part = stitches as f64 / all.max(1) as f64;
        match hand {
            Hand::Right => EDGE + LINE * (1.0 - part),
            Hand::Left => EDGE + LINE * part,
        }
    };
    let worked = worked_before(groups, repeats_done);
    let mut changes = Path::default();
    let mut brackets = Path::default();
    let mut last = None;
    for stretch in stretches(groups).take(MOST_RUNS) {
        if stretch.uses() != stretch.gives() {
            let at = x(stretch.after + stretch.uses() / 2);
            changes.line(&[(at, STROKE_TOP), (at, FOOT)]);
        }
        let is_repeat = groups.get(stretch.group).is_some_and(|group| group.times > 1);
        if is_repeat && last != Some((stretch.group, stretch.time)) {
            let at = x(stretch.after);
            brackets.line(&[(at, BRACKET), (at, BRACKET_FOOT)]);
        }
        last = Some((stretch.group, stretch.time));
    }
    let bar = |to: u64| {
        let mut bar = Path::default();
        bar.line(&[(x(0), TOP), (x(to), TOP), (x(to), FOOT), (x(0), FOOT)]);
        bar.close();
        bar.written()
    };
    let mut now = Path::default();
    now.line(&[(x(worked), STROKE_TOP), (x(worked), BRACKET_FOOT)]);
    let content = vec![
        path("done", &bar(worked)),
        path("outline", &bar(all)),
        path("events", &changes.written()),
        path("outline", &brackets.written()),
        path("now", &now.written()),
    ];
    picture("place within", (WIDE, HIGH), words, content)
}

/// Stitches that are worked before the repeat that comes next.
fn worked_before(groups: &[Group], repeats_done: u32) -> u64 {
    let (mut worked, mut left) = (0_u64, repeats_done);
    if left == 0 {
        return 0;
    }
    for group in groups {
        if group.times <= 1 {
            worked = worked.saturating_add(group.uses());
            continue;
        }
        if left < group.times {
            let done = (1..=left).map(|time| group.time(time).uses());
            return worked.saturating_add(done.sum());
        }
        worked = worked.saturating_add(group.uses());
        left -= group.times;
        if left == 0 {
            return worked;
        }
    }
    worked
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright::{follow, row};

    #[test]
    fn what_is_worked_is_counted_repeat_by_repeat() {
        let groups = follow::repeats(&row::read("K4, k2tog, (K9, k2tog) 11 times, K5").unwrap());
        assert_eq!(worked_before(&groups, 0), 0);
        assert_eq!(worked_before(&groups, 1), 6 + 11);
        assert_eq!(worked_before(&groups, 11), 6 + 121);
        assert_eq!(worked_before(&groups, 99), 132);
    }
}
