//! Shaping at another gauge: both ends and the rows are converted, and [`shaping`] shares the rows out anew.

use super::fit::{self, Scale};
use super::{Name, Piece, Question, ROWS, STITCHES};
use crate::bounds::Bounds;
use crate::check::Check;
use crate::every::Every;
use crate::problem::{Kind, Problem};
use crate::shaping::{self, Ask, EACH, Schedule};

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
    /// Stitches that one shaping row changes, within [`EACH`]: 2 at two edges, 8 at eight lines.
    pub each: u32,
    /// Only in right-side rows, the first row being one. Nothing in the round.
    pub right_side_only: bool,
}

/// Shaping at one's own gauge.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Shaped {
    /// Stitches before.
    pub from: u32,
    /// Stitches after.
    pub to: u32,
    /// Rows there are for it.
    pub rows: u32,
    /// Shaping rows there have to be.
    pub times: u32,
    /// The fewest rows there is room for them in, where there are too few; 0 otherwise.
    pub needs: u32,
    /// The instruction, with at least one plain row at the end; none when it needs more rows than there are.
    pub schedule: Option<Schedule>,
    /// The piece as the pattern has it.
    pub was: Piece,
    /// The piece at one's own gauge.
    pub becomes: Piece,
}

impl Shaped {
    pub(super) fn of(question: &Question, shaping: &Shaping, scales: (Scale, Scale), check: &mut Check) -> Self {
        let (wide, tall) = scales;
        let Shaping { from, each, .. } = *shaping;
        let edges = question.edge_stitches();
        let keep = fit::end(question, from.saturating_sub(edges), each);
        let from = wide.convert(check, (Name::From, from), edges, keep).count;
        let to = end(question, shaping, wide, from);
        check.count(Name::To, to, STITCHES);
        let keep = fit::rows(question, shaping.rows);
        let rows = tall.convert(check, (Name::ShapingRows, shaping.rows), 0, keep).count;
        let shaped = Self {
            from,
            to,
            rows,
            times: from.abs_diff(to) / each,
            needs: 0,
            schedule: None,
            was: Piece::theirs(scales, edges, [shaping.from, shaping.to, shaping.rows]),
            becomes: Piece::ours(scales, edges, [from, to, rows]),
        };
        match shared_out(question, shaping, &shaped) {
            Ok(schedule) => Self {
                schedule: Some(schedule),
                ..shaped
            },
            Err(problems) => Self {
                needs: needed(&problems),
                ..shaped
            },
        }
    }
}

/// The rows between both ends, shared out anew.
fn shared_out(question: &Question, shaping: &Shaping, shaped: &Shaped) -> Result<Schedule, Vec<Problem>> {
    let Shaped { from, to, rows, .. } = *shaped;
    let knitting = if question.is_flat() {
        let next = shaping::Side::Right;
        shaping::Knitting::Flat { next }
    } else {
        shaping::Knitting::Round
    };
    let ask = match from.abs_diff(to) {
        0 => return Ok(Schedule::plain(knitting, Some(from), false, rows)),
        change if to < from => Ask::Lose(change),
        change => Ask::Gain(change),
    };
    let found = shaping::answer(&shaping::Question {
        stitches: Some(from),
        each: shaping.each,
        right_side: shaping.right_side_only,
        knitting,
        first: None,
        ..shaping::Question::about(ask, rows)
    })?;
    Ok(found.schedule)
}

/// The fewest rows there is room in, where shaping is too steep for the rows there are; more than can be worked with is
/// far too many.
fn needed(problems: &[Problem]) -> u32 {
    let least = problems.iter().find_map(|problem| match problem.kind {
        Kind::TooFew { least } if problem.field.key() == Name::Rows.key() => Some(least),
        _ => None,
    });
    least.unwrap_or(ROWS.most)
}

/// The end that is nearest to what keeps the measure, of those whole shaping rows away from the start: a multiple, and
/// odd or even, where the pattern's is, unless none such is whole shaping rows away.
fn end(question: &Question, shaping: &Shaping, wide: Scale, from: u32) -> u32 {
    let edges = question.edge_stitches();
    let inside = shaping.to.saturating_sub(edges);
    let keep = fit::end(question, inside, shaping.each);
    let step = shaping.each;
    // The least that is not nothing.
    let least = from.saturating_sub(edges + 1) % step + 1;
    let mut ends = Every { least, step };
    // Both steps come round again within their product.
    let mut kept = None;
    for end in (least..=keep.least + 2 * step * keep.step).step_by(step as usize) {
        match kept {
            _ if !keep.allows(end) => {}
            None => kept = Some(end),
            Some(least) => {
                let step = end - least;
                ends = Every { least, step };
                break;
            }
        }
    }
    ends.nearest(wide.ideal(inside)).0.saturating_add(edges)
}

/// What is wrong with the shaping of the pattern.
pub(super) fn check(question: &Question, shaping: &Shaping, check: &mut Check) {
    let Shaping {
        from, to, rows, each, ..
    } = *shaping;
    let least = STITCHES.least.saturating_add(question.outside());
    let before = check.problems.len();
    check.count(Name::From, from, Bounds::new(least, STITCHES.most));
    check.count(Name::To, to, Bounds::new(least, STITCHES.most));
    check.count(Name::ShapingRows, rows, ROWS);
    check.count(Name::Each, each, EACH);
    let rest = from.abs_diff(to).checked_rem(each).unwrap_or(0);
    if rest > 0 && check.problems.len() == before {
        let (down, up) = if to < from {
            (each - rest, rest)
        } else {
            (rest, each - rest)
        };
        let kind = Kind::NoExact {
            below: to.checked_sub(down).filter(|below| *below >= least),
            above: to.checked_add(up),
        };
        check.wrong(Name::To, kind);
    }
}
