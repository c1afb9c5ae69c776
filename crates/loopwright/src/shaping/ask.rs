//! From what is wanted to how many shaping rows, and what is nearest when it cannot be had.

use super::schedule::Room;
use super::{Ask, EACH, Name, Question, ROWS, STITCHES};
use crate::problem::{Kind, Problem};

/// The change, and the shaping rows it takes.
#[derive(Clone, Copy, Debug)]
pub(super) struct Wanted {
    pub gain: bool,
    /// Stitches lost or gained in all, never none.
    pub amount: u32,
    /// Never none.
    pub shaping_rows: u32,
    /// What the last shaping row changes: `each`, or what is left over.
    pub in_last: u32,
    /// The most that may be lost or gained at all: one stitch has to stay on the needle.
    pub most: u32,
    /// Where the end was asked for, the count now.
    from: Option<u32>,
}

impl Wanted {
    /// What a question comes to whose figures are within their bounds.
    pub(super) fn of(question: &Question) -> Result<Self, Problem> {
        let Question { stitches, each, .. } = *question;
        let (gain, amount, from) = match question.ask {
            Ask::Lose(amount) => (false, amount, None),
            Ask::Gain(amount) => (true, amount, None),
            Ask::Reach(target) => {
                let now = stitches.ok_or(Problem::new(Name::Stitches, Kind::Missing))?;
                (target > now, target.abs_diff(now), Some(now))
            }
        };
        let all = match stitches {
            None => STITCHES.most,
            Some(now) if gain => STITCHES.most - now,
            Some(now) => now - 1,
        };
        let unit = if question.rest { 1 } else { each };
        let most = all - all % unit;
        let shaping_rows = amount.div_ceil(each);
        let wanted = Self {
            gain,
            amount,
            shaping_rows,
            in_last: amount.saturating_sub(shaping_rows.saturating_sub(1).saturating_mul(each)),
            most,
            from,
        };
        if from.is_some() && amount == 0 {
            return Err(Problem::new(Name::Amount, Kind::Already));
        }
        if most == 0 {
            let kind = match gain {
                true => Kind::TooMany {
                    most: STITCHES.most - unit,
                },
                false => Kind::TooFew { least: unit + 1 },
            };
            return Err(Problem::new(Name::Stitches, kind));
        }
        let below = (amount - amount % unit).min(most);
        if amount > 0 && below == amount {
            return Ok(wanted);
        }
        let above = if below < most { below + unit } else { 0 };
        Err(wanted.nearest(below, above))
    }

    /// What the count becomes.
    pub(super) const fn after(&self, now: u32) -> u32 {
        if self.gain {
            now + self.amount
        } else {
            now - self.amount
        }
    }

    /// The nearest changes below and above, 0 for none; as the count in the end where that was asked for.
    fn nearest(&self, below: u32, above: u32) -> Problem {
        let some = |change: u32| (change > 0).then_some(change);
        let (below, above) = (some(below), some(above));
        let kind = match (self.from, below, above) {
            (Some(now), _, _) if self.gain => Kind::NoExact {
                below: below.map(|change| now + change),
                above: above.map(|change| now + change),
            },
            (Some(now), _, _) => Kind::NoExact {
                below: above.map(|change| now - change),
                above: below.map(|change| now - change),
            },
            (None, Some(most), None) => Kind::TooMany { most },
            (None, None, Some(least)) => Kind::TooFew { least },
            (None, _, _) => Kind::NoExact { below, above },
        };
        Problem::new(Name::Amount, kind)
    }

    /// More shaping rows than there are rows for them: more rows, more stitches in each, or fewer stitches.
    pub(super) fn too_steep(&self, question: &Question, room: &Room) -> Vec<Problem> {
        let mut problems = Vec::new();
        let least = room.fewest_rows(self.shaping_rows);
        if least <= ROWS.most {
            problems.push(Problem::new(Name::Rows, Kind::TooFew { least }));
        }
        let shapeable = room.shapeable();
        for least in question.each + 1..=EACH.most {
            let whole = question.rest || self.amount.is_multiple_of(least);
            if whole && self.amount.div_ceil(least) <= shapeable {
                problems.push(Problem::new(Name::Each, Kind::TooFew { least }));
                break;
            }
        }
        if shapeable > 0 {
            problems.push(self.nearest(shapeable * question.each, 0));
        }
        problems
    }
}
