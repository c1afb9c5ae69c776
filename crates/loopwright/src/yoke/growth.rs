//! How many stitches a yoke has after each shaping round.
//!
//! In equal steps the counts lie on a straight line, the same number of stitches apart. Along the circle each count is the
//! one that a flat circle has in the middle of the rounds that are knitted on it: a circle is as much wider as it is
//! further out, so a count that has to serve for many rounds is further ahead. Since the last stretch at the underarm is
//! the longest, the step before it is the largest then. Geometry; no source is needed.

use super::{Growth, Question};
use crate::shaping::Rhythm;

/// A part of the way from the first count to the last.
#[derive(Clone, Copy)]
struct Part {
    over: i64,
    under: i64,
}

/// What each of so many shaping rounds changes; none when some round cannot be worked.
pub(super) fn changes(question: &Question, times: u32) -> Option<Vec<u32>> {
    let [from, to, of] = [question.from, question.to, question.multiple].map(i64::from);
    let mut changes = Vec::new();
    let mut before = from;
    for Part { over, under } in parts(question, times) {
        // The nearest multiple to the line, in whole numbers: halves go up.
        let ideal = from * under + (to - from) * over;
        let after = (2 * ideal + of * under).div_euclid(2 * of * under) * of;
        let (change, most) = if to > from {
            (after - before, before)
        } else {
            (before - after, before / 2)
        };
        if change < 1 || change > most {
            return None;
        }
        changes.push(u32::try_from(change).ok()?);
        before = after;
    }
    Some(changes)
}

/// How far each shaping round brings the count.
fn parts(question: &Question, times: u32) -> Vec<Part> {
    match question.growth {
        Growth::Equal => equal(times),
        Growth::Circle => circle(question, times).unwrap_or_else(|| equal(times)),
    }
}

fn equal(times: u32) -> Vec<Part> {
    let under = i64::from(times);
    (1..=under).map(|over| Part { over, under }).collect()
}

/// The middles of the stretches between the shaping rounds, twice, from the middle of the first stretch; none where all
/// lie in one round.
fn circle(question: &Question, times: u32) -> Option<Vec<Part>> {
    let changes = vec![1; times as usize];
    // Where the rounds lie does not hang on what they change.
    let schedule = question.plan().share(Rhythm::Straight, question.from, true, &changes);
    let mut ends: Vec<i64> = vec![0];
    ends.extend(schedule.rows().map(|shaped| i64::from(shaped.row)));
    ends.push(i64::from(question.rounds).max(ends[times as usize]));
    let middles: Vec<i64> = ends.windows(2).map(|pair| pair[0] + pair[1]).collect();
    let (first, later) = middles.split_first()?;
    let under = later.last()? - first;
    let part = |middle: &i64| Part {
        over: middle - first,
        under,
    };
    (under > 0).then(|| later.iter().map(part).collect())
}
