//! From what is wanted to how many shaping rows, and what is nearest when it cannot be had.

use super::schedule::Room;
use super::{Ask, EACH, Limits, Question, ROWS, STITCHES};
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
}

/// What the question comes to.
pub(super) fn wanted(question: &Question) -> Result<Wanted, Problem> {
    let each = question.each;
    let (gain, amount) = match (question.ask, question.stitches) {
        (Ask::Lose(amount), _) => (false, amount),
        (Ask::Gain(amount), _) => (true, amount),
        (Ask::Reach(target), Some(stitches)) => (target > stitches, target.abs_diff(stitches)),
        (Ask::Reach(_), None) => {
            let kind = Kind::Missing;
            return Err(Problem {
                field: "stitches",
                kind,
            });
        }
    };
    let field = "amount";
    if matches!(question.ask, Ask::Reach(_)) && amount == 0 {
        let kind = Kind::Already;
        return Err(Problem { field, kind });
    }
    // At least one stitch has to stay on the needle, and no more than the most may come to it.
    let all = match (gain, question.stitches) {
        (_, None) => STITCHES.most,
        (true, Some(stitches)) => STITCHES.most - stitches,
        (false, Some(stitches)) => stitches - 1,
    };
    let unit = if question.rest { 1 } else { each };
    let most = all / unit * unit;
    if most == 0 {
        let kind = if gain {
            Kind::TooMany {
                most: STITCHES.most - unit,
            }
        } else {
            Kind::TooFew { least: unit + 1 }
        };
        return Err(Problem {
            field: "stitches",
            kind,
        });
    }
    let (below, above) = (amount / unit * unit, amount.div_ceil(unit).saturating_mul(unit));
    if (1..=most).contains(&amount) && below == above {
        let shaping_rows = amount.div_ceil(each);
        return Ok(Wanted {
            gain,
            amount,
            shaping_rows,
            in_last: amount - (shaping_rows - 1) * each,
        });
    }
    let nearest = |below: u32, above: u32| Kind::NoExact {
        below: (below > 0).then_some(below),
        above: (0 < above && above <= most).then_some(above),
    };
    let kind = match amount {
        0 => Kind::TooFew { least: unit },
        _ if amount > most && below > most => nearest(most, 0),
        _ => nearest(below, above),
    };
    Err(said(question, gain, kind))
}

/// A problem with an amount, said in stitches in the end where that was asked for.
fn said(question: &Question, gain: bool, kind: Kind) -> Problem {
    let field = "amount";
    let stitches = match (question.ask, question.stitches) {
        (Ask::Reach(_), Some(stitches)) => stitches,
        _ => {
            let kind = match kind {
                Kind::NoExact {
                    below: Some(most),
                    above: None,
                } => Kind::TooMany { most },
                Kind::NoExact {
                    below: None,
                    above: Some(least),
                } => Kind::TooFew { least },
                other => other,
            };
            return Problem { field, kind };
        }
    };
    let Kind::NoExact { below, above } = kind else {
        return Problem { field, kind };
    };
    let kind = if gain {
        Kind::NoExact {
            below: below.map(|amount| stitches.saturating_add(amount)),
            above: above.map(|amount| stitches.saturating_add(amount)),
        }
    } else {
        Kind::NoExact {
            below: above.map(|amount| stitches.saturating_sub(amount)),
            above: below.map(|amount| stitches.saturating_sub(amount)),
        }
    };
    Problem { field, kind }
}

/// More shaping rows than there are rows for them: fewer stitches, more rows, or more stitches in each.
pub(super) fn too_steep(question: &Question, wanted: &Wanted, room: &Room, limits: Limits) -> Vec<Problem> {
    let mut problems = Vec::new();
    if limits.fewest_rows <= ROWS.most {
        let least = limits.fewest_rows;
        let kind = Kind::TooFew { least };
        problems.push(Problem { field: "rows", kind });
    }
    let fits = |each: &u32| {
        (question.rest || wanted.amount.is_multiple_of(*each)) && wanted.amount.div_ceil(*each) <= room.shapeable()
    };
    if let Some(least) = (question.each + 1..=EACH.most).find(fits) {
        let kind = Kind::TooFew { least };
        problems.push(Problem { field: "each", kind });
    }
    if limits.most > 0 {
        let (below, above) = (Some(limits.most), None);
        problems.push(said(question, wanted.gain, Kind::NoExact { below, above }));
    }
    problems
}
