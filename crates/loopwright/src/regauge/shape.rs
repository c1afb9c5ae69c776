//! Shaping at another gauge: both ends and the rows are converted, and the shaping rows are shared out anew.
//!
//! Every written rate is the distance from one shaping row to the next, and the first of them is said by its own number,
//! so that it can be worked in one way only. There is at least one plain row at the end.

use super::fit::{Keep, Scale};
use super::{Question, ROWS, STITCHES};
use crate::problem::{Kind, Problem};

/// Shaping as the pattern has it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Shaping {
    /// Stitches before, with edge and seam stitches and without the extra one of a join; within
    /// [`STITCHES`](super::STITCHES).
    pub from: u32,
    /// Stitches after, within the same: a multiple of `each` away.
    pub to: u32,
    /// Rows from the one to the other, plain ones included, within [`ROWS`](super::ROWS).
    pub rows: u32,
    /// Stitches that one shaping row changes, within [`REPEAT`](super::REPEAT): 2 at two edges, 8 at eight lines.
    pub each: u32,
    /// Only in right-side rows, the first row being one; in the round, at most every second round.
    pub right_side_only: bool,
}

/// Shaping at one's own gauge.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Shaped {
    /// Stitches before.
    pub from: u32,
    /// Stitches after.
    pub to: u32,
    /// Rows there are for it.
    pub rows: u32,
    /// Stitches that one shaping row changes.
    pub each: u32,
    /// Shaping rows there have to be.
    pub times: u32,
    /// The fewest rows in which there is room for them; more than `rows` when there is none, and then nothing is shared.
    pub needs: u32,
    /// The number of the first shaping row; nothing when there is none.
    pub first: u32,
    /// Then one every so many rows, so many times.
    pub then: Rate,
    /// And then one every so many rows, so many times; by one row, or one right-side row, fewer.
    pub last: Rate,
    /// Plain rows after the last.
    pub left: u32,
}

/// One shaping row every so many rows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Rate {
    /// From one shaping row to the next.
    pub every: u32,
    /// How often; it may be nothing.
    pub times: u32,
}

impl Shaped {
    pub(super) fn of(
        question: &Question,
        shaping: &Shaping,
        wide: Scale,
        tall: Option<Scale>,
    ) -> Result<Option<Self>, Problem> {
        let Some(tall) = tall else {
            return Ok(None);
        };
        let Shaping {
            each, right_side_only, ..
        } = *shaping;
        let beside = question.beside();
        let keep = Keep::end(question, shaping.from - beside, each);
        let too_many = |field| wide.too_many(field, beside);
        let from = wide.convert(shaping.from, beside, &keep).ok_or(too_many("from"))?.count;
        let to = converted_end(question, shaping, wide, from).ok_or(too_many("to"))?;
        let rows = tall.convert(shaping.rows, 0, &Keep::rows(question, shaping.rows));
        let rows = rows.ok_or(tall.too_many("shaping_rows", 0))?.count;
        let times = from.abs_diff(to) / each;
        let step = 1 + u32::from(right_side_only);
        let mut shaped = Self {
            from,
            to,
            rows,
            each,
            times,
            needs: (times * step).max(1) + u32::from(times > 0 && step == 1),
            first: 0,
            then: Rate { every: 0, times: 0 },
            last: Rate { every: 0, times: 0 },
            left: rows,
        };
        if times > 0 && shaped.needs <= rows {
            // Rows that may be shaping rows, the last row left plain; the longer distances come first.
            let room = if right_side_only { rows / 2 } else { rows - 1 };
            let (every, longer) = (room / times, room % times);
            let first = every + u32::from(longer > 0);
            shaped.first = step * first - (step - 1);
            shaped.then = Rate {
                every: step * (every + 1),
                times: longer.saturating_sub(1),
            };
            shaped.last = Rate {
                every: step * every,
                times: times - longer.max(1),
            };
            let used = shaped.first
                + [shaped.then, shaped.last]
                    .map(|rate| rate.every * rate.times)
                    .iter()
                    .sum::<u32>();
            shaped.left = rows - used;
        }
        Ok(Some(shaped))
    }
}

/// The end that is nearest to what keeps the measure, of those whole shaping rows away from the start; a multiple, and
/// odd or even, where the pattern's is.
fn converted_end(question: &Question, shaping: &Shaping, wide: Scale, from: u32) -> Option<u32> {
    let (beside, each) = (question.beside(), i128::from(shaping.each));
    let inside = shaping.to - beside;
    let (over, under) = wide.ideal(inside);
    let keep = Keep::end(question, inside, shaping.each);
    let from = i128::from(from - beside);
    // In whole shaping rows from the start, rounded down; negative on the way down.
    let near = (over - from * under).div_euclid(each * under);
    let away = |end: i128| (end * under - over).abs();
    let (mut best, mut any): (Option<i128>, Option<i128>) = (None, None);
    for steps in 0..=2 * i128::from(question.multiple.of) {
        for end in [from + (near - steps) * each, from + (near + 1 + steps) * each] {
            let Some(count) = u32::try_from(end).ok().filter(|count| *count > 0) else {
                continue;
            };
            for (held, will_do) in [(&mut any, true), (&mut best, keep.allows(count))] {
                if will_do && held.is_none_or(|held| away(end) < away(held)) {
                    *held = Some(end);
                }
            }
        }
    }
    // An end that is a multiple may be out of reach from a start that is none.
    let end = best.or(any)?;
    u32::try_from(end)
        .ok()?
        .checked_add(beside)
        .filter(|end| *end <= STITCHES.most)
}

/// What is wrong with the shaping of the pattern.
pub(super) fn check(question: &Question, shaping: &Shaping, problems: &mut Vec<Problem>) {
    let Shaping {
        from, to, rows, each, ..
    } = *shaping;
    let mut stitches = STITCHES;
    stitches.least += question.beside();
    let whole = |each: u32| {
        let rest = from.abs_diff(to).checked_rem(each).filter(|rest| *rest > 0)?;
        let (down, up) = if to < from {
            (each - rest, rest)
        } else {
            (rest, each - rest)
        };
        let below = to.checked_sub(down).filter(|below| *below >= stitches.least);
        let above = to.checked_add(up);
        Some(Problem {
            field: "to",
            kind: Kind::NoExact { below, above },
        })
    };
    let all = [
        Problem::of_count("from", from, stitches),
        Problem::of_count("to", to, stitches).or_else(|| whole(each)),
        Problem::of_count("shaping_rows", rows, ROWS),
        Problem::of_count("each", each, super::REPEAT),
    ];
    problems.extend(all.into_iter().flatten());
}
