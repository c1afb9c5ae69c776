//! From what is wanted to how many changes, and what is nearest when it cannot be had.

use super::{Ask, Edge, Face, Knitting, Name, Question};
use crate::problem::{Kind, Problem};
use crate::row::Stitch;

/// The changes to make.
#[derive(Clone, Copy, Debug)]
pub(super) struct Plan {
    /// As worked on this side of the fabric.
    pub change: Stitch,
    pub changes: u32,
    pub multiples: Option<Multiples>,
}

impl Plan {
    /// Stitches on the needle after the changes.
    pub(super) fn after(&self, stitches: u32) -> u32 {
        stitches - self.changes * self.change.uses() + self.changes * self.change.gives()
    }
}

/// The multiples either side of a count.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Multiples {
    /// The nearest that can be had by decreasing.
    pub below: Option<Reached>,
    /// The nearest that can be had by increasing.
    pub above: Option<Reached>,
    /// Stitches that were asked for beside the multiple and dropped, since a round has no edges.
    pub dropped: u32,
}

/// A count and what it takes to get there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Reached {
    /// Stitches on the needle in the end.
    pub stitches: u32,
    /// The change that gets there.
    pub change: Stitch,
    /// How many of them.
    pub changes: u32,
}

/// One way of changing the count on this needle: with which stitch, by how much, at most how often.
#[derive(Clone, Copy, Debug)]
struct Means {
    change: Stitch,
    /// Stitches lost or gained by one change.
    each: u32,
    most: u32,
}

impl Means {
    fn decrease(question: &Question) -> Self {
        Self::new(question, question.decrease.stitch())
    }

    fn increase(question: &Question) -> Self {
        Self::new(question, question.increase.stitch())
    }

    fn new(question: &Question, stitch: Stitch) -> Self {
        let change = match question.face {
            Face::Knit => stitch,
            Face::Purl => stitch.on_purl_side(),
        };
        Self {
            change,
            each: change.uses().abs_diff(change.gives()),
            most: most_changes(question.stitches, change, question.knitting),
        }
    }

    /// So many changes, or the most there is room for.
    fn times(self, changes: u32) -> Result<Plan, Kind> {
        match changes {
            0 => Err(Kind::TooFew { least: 1 }),
            _ if changes > self.most => Err(Kind::TooMany { most: self.most }),
            _ => Ok(Plan {
                change: self.change,
                changes,
                multiples: None,
            }),
        }
    }

    /// So many stitches lost or gained, or the nearest numbers that can be.
    fn by(self, amount: u32) -> Result<Plan, Kind> {
        if amount == 0 {
            return Err(Kind::TooFew { least: self.each });
        }
        if amount > self.most.saturating_mul(self.each) {
            return Err(Kind::TooMany {
                most: self.most * self.each,
            });
        }
        if !amount.is_multiple_of(self.each) {
            let changes = amount / self.each;
            return Err(Kind::NoExact {
                below: (changes > 0).then_some(changes * self.each),
                above: (changes < self.most).then_some((changes + 1) * self.each),
            });
        }
        self.times(amount / self.each)
    }
}

/// How many changes there is room for.
///
/// A decrease or kfb uses stitches; an increase in a gap uses a gap, of which a round has as many as stitches and a
/// flat row one fewer, since none may stand outside the edge stitch.
fn most_changes(stitches: u32, change: Stitch, knitting: Knitting) -> u32 {
    let edges = match knitting {
        Knitting::Flat {
            edge: Edge::AtLeast(plain),
        } => plain.saturating_mul(2),
        Knitting::Flat { .. } | Knitting::Round { .. } => 0,
    };
    match (change.uses(), knitting) {
        (0, Knitting::Round { .. }) => stitches,
        (0, Knitting::Flat { .. }) => stitches.saturating_sub(edges.max(2) - 1),
        // The bar of a kfb is its second stitch: in a mirrored row it must not be the edge.
        (1, Knitting::Flat { edge: Edge::Mirrored }) => stitches.saturating_sub(1),
        (uses, _) => stitches.saturating_sub(edges) / uses,
    }
}

/// How many changes the question comes to.
pub(super) fn plan(question: &Question) -> Result<Plan, Problem> {
    let (down, up) = (Means::decrease(question), Means::increase(question));
    let amount = |result: Result<Plan, Kind>| result.map_err(|kind| Problem::new(Name::Amount, kind));
    match question.ask {
        Ask::Lose(_) | Ask::Decreases(_) if down.most == 0 => Err(no_room(question, down)),
        Ask::Gain(_) | Ask::Increases(_) if up.most == 0 => Err(no_room(question, up)),
        Ask::Reach(target) if target < question.stitches && is_too_wide(question, down) => Err(no_room(question, down)),
        Ask::Reach(target) if target > question.stitches && is_too_wide(question, up) => Err(no_room(question, up)),
        Ask::Multiple { .. } if is_too_wide(question, down) && is_too_wide(question, up) => {
            Err(no_room(question, down))
        }
        Ask::Lose(stitches) => amount(down.by(stitches)),
        Ask::Gain(stitches) => amount(up.by(stitches)),
        Ask::Decreases(changes) => amount(down.times(changes)),
        Ask::Increases(changes) => amount(up.times(changes)),
        Ask::Reach(target) => amount(reach(question.stitches, target, down, up)),
        Ask::Multiple { of, plus } => amount(nearest_multiple(question, of, plus)),
    }
}

/// Not even one change fits: the edges asked for are too wide, or the needle is too short for any.
fn no_room(question: &Question, means: Means) -> Problem {
    let uses = means.change.uses();
    // The widest edge that leaves one change between the two; an increase in a gap needs a stitch on either side.
    let widest = question.stitches.saturating_sub(uses) / 2;
    let fits = question.stitches >= uses.max(2);
    match question.knitting {
        Knitting::Flat {
            edge: Edge::AtLeast(plain),
        } if fits && plain > widest => Problem::new(Name::EdgePlain, Kind::TooMany { most: widest }),
        Knitting::Flat { .. } | Knitting::Round { .. } => {
            Problem::new(Name::Stitches, Kind::TooFew { least: uses.max(2) })
        }
    }
}

/// Whether it is the edges alone that leave no room for a change.
fn is_too_wide(question: &Question, means: Means) -> bool {
    means.most == 0 && no_room(question, means).field == Name::EdgePlain.into()
}

fn reach(stitches: u32, target: u32, down: Means, up: Means) -> Result<Plan, Kind> {
    let (means, sign) = if target < stitches { (down, -1) } else { (up, 1) };
    let at = |amount: u32| u32::try_from(i64::from(stitches) + sign * i64::from(amount)).ok();
    let (nearer, farther) = match means.by(target.abs_diff(stitches)) {
        Ok(plan) => return Ok(plan),
        Err(_) if target == stitches => return Err(Kind::Already),
        Err(Kind::TooMany { most }) => (Some(most), None),
        Err(Kind::NoExact { below, above }) => (below, above),
        Err(other) => return Err(other),
    };
    let nearer = nearer.filter(|amount| *amount > 0).and_then(at);
    let farther = farther.and_then(at);
    Err(if sign < 0 {
        Kind::NoExact {
            below: farther,
            above: nearer,
        }
    } else {
        Kind::NoExact {
            below: nearer,
            above: farther,
        }
    })
}

/// The multiples of `of` either side of the count on the needle, and the change each needs.
///
/// In the round `plus` is dropped, and the answer says how much was.
pub fn multiples(question: &Question, of: u32, plus: u32) -> Multiples {
    let round = matches!(question.knitting, Knitting::Round { .. });
    let wanted = Wanted {
        of: of.max(1),
        plus: if round { 0 } else { plus },
    };
    Multiples {
        below: wanted.below(question.stitches, Means::decrease(question)),
        above: wanted.above(question.stitches, Means::increase(question)),
        dropped: match question.ask {
            Ask::Multiple { plus, .. } if round => plus,
            Ask::Multiple { .. }
            | Ask::Lose(_)
            | Ask::Gain(_)
            | Ask::Decreases(_)
            | Ask::Increases(_)
            | Ask::Reach(_) => 0,
        },
    }
}

/// A multiple, and the stitches beside it.
#[derive(Clone, Copy)]
struct Wanted {
    of: u32,
    plus: u32,
}

impl Wanted {
    /// The nearest below that so many decreases reach, each of which takes one stitch or two.
    fn below(self, stitches: u32, down: Means) -> Option<Reached> {
        let over = stitches.checked_sub(self.plus)? % self.of;
        let changes = match (over, down.each) {
            (0, 2) if self.of.is_multiple_of(2) => self.of / 2,
            (0, _) => self.of,
            (over, 2) if over.is_multiple_of(2) => over / 2,
            // Past the nearest multiple, which is at an odd distance, to the one below it.
            (over, 2) if self.of % 2 == 1 => over / 2 + self.of / 2 + 1,
            (_, 2) => return None,
            (over, _) => over,
        };
        let count = (changes <= down.most).then(|| stitches - changes * down.each)?;
        (count >= self.plus.max(1)).then(|| Self::reached(down, count, changes))
    }

    /// The nearest above, stitch by stitch.
    fn above(self, stitches: u32, up: Means) -> Option<Reached> {
        let changes = match stitches.checked_sub(self.plus) {
            Some(over) => self.of - over % self.of,
            None => self.plus - stitches,
        };
        let count = stitches.checked_add(changes).filter(|_| changes <= up.most)?;
        Some(Self::reached(up, count, changes))
    }

    fn reached(means: Means, stitches: u32, changes: u32) -> Reached {
        Reached {
            stitches,
            change: means.change,
            changes,
        }
    }
}

fn nearest_multiple(question: &Question, of: u32, plus: u32) -> Result<Plan, Kind> {
    let found = multiples(question, of, plus);
    let distance = |r: &Reached| r.stitches.abs_diff(question.stitches);
    let plus = if found.dropped > 0 { 0 } else { plus };
    if question.stitches >= plus && (question.stitches - plus).is_multiple_of(of) {
        return Err(Kind::AlreadyMultiple {
            below: found.below.map(|r| r.stitches),
            above: found.above.map(|r| r.stitches),
        });
    }
    let nearest = [found.below, found.above].into_iter().flatten().min_by_key(distance);
    match nearest {
        Some(r) => Ok(Plan {
            change: r.change,
            changes: r.changes,
            multiples: Some(found),
        }),
        None => Err(Kind::NoExact {
            below: None,
            above: None,
        }),
    }
}
