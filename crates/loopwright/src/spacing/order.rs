//! The orders in which long and short runs can follow each other, and how far each strays from even.
//!
//! Going round a ring, `plain` stitches shared between `changes` changes make runs of `plain / changes` and, for the
//! remainder, of one more. *Most even* takes the integer error term of Bresenham ("Algorithm for computer control of a
//! digital plotter", IBM Systems Journal 4(1), 1965; from memory, the paper was not read): run `j` ends at `(j + 1) * plain / changes`, rounded down, so that
//! any stretch of runs is within one stitch of its even share. *Two blocks* puts the long runs together: easy to
//! remember, and it strays by `long * short / changes` stitches. *Blocks in turn* takes
//! a few runs of the one length to each of the other, or does the two blocks several times over.

use crate::tables::{Source, Taken};
use crate::units::rate::Quotient;
use std::cmp::Ordering;

/// How sure it is that the most even order is Bresenham's.
pub const MOST_EVEN: Source = Taken::MostEven.from_memory();

/// A change is not seen to stray by so many stitches, nor by more than one in so many. Common practice, no source.
const UNSEEN: u64 = 3;
const UNSEEN_PART: u64 = 32;

/// More turns of two blocks than this are too many to keep count of, where there are more runs than [`MOST_TOLD`].
const MOST_TURNS: u32 = 9;
const MOST_TOLD: u32 = 500;

/// How long and short runs follow each other.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Order {
    /// All the long runs, then all the short ones.
    TwoBlocks,
    /// Two blocks, several times over.
    BlocksInTurn,
    /// Each run as near to its even place as whole stitches allow.
    MostEven,
}

/// A quotient that is compared exactly.
#[derive(Clone, Copy, Debug, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Fraction {
    /// Above the line.
    pub over: u64,
    /// Below the line, never zero.
    pub under: u64,
}

impl Fraction {
    /// `over / under`; an `under` of zero is taken as one.
    pub const fn new(over: u64, under: u64) -> Self {
        Self {
            over,
            under: if under == 0 { 1 } else { under },
        }
    }

    /// The nearest whole number; a half goes up.
    pub fn rounded(self) -> u32 {
        let doubled = u128::from(self.over) * 2 + u128::from(self.under);
        u32::try_from(doubled / (2 * u128::from(self.under))).unwrap_or(u32::MAX)
    }

    /// For printing.
    pub fn to_f64(self) -> f64 {
        self.over as f64 / self.under as f64
    }
}

impl From<Quotient> for Fraction {
    /// What is below nothing is nothing. Of quantities within their bounds neither part is too large.
    fn from(Quotient { over, under }: Quotient) -> Self {
        let part = |part: i128| u64::try_from(part.max(0)).unwrap_or(u64::MAX);
        Self::new(part(over), part(under))
    }
}

impl PartialEq for Fraction {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other) == Ordering::Equal
    }
}

impl PartialOrd for Fraction {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Fraction {
    fn cmp(&self, other: &Self) -> Ordering {
        let product = |a: u64, b: u64| u128::from(a) * u128::from(b);
        product(self.over, other.under).cmp(&product(other.over, self.under))
    }
}

/// So many runs of the same length, one after the other.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Batch {
    pub run: u32,
    pub times: u32,
}

/// The long and the short runs that a sharing-out makes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Shares {
    pub short: Batch,
    /// One stitch longer than the short ones; none when it comes out even.
    pub long: Batch,
}

impl Shares {
    /// Shares `plain` stitches between `runs` runs, of which there is at least one.
    pub(super) fn of(plain: u32, runs: u32) -> Self {
        let runs = runs.max(1);
        let (length, over) = (plain / runs, plain % runs);
        Self {
            short: Batch {
                run: length,
                times: runs - over,
            },
            long: Batch {
                run: length + 1,
                times: over,
            },
        }
    }
}

/// The orders worth offering, easiest first. They are rings: where each begins is chosen later.
pub(super) fn orders(plain: u32, runs: u32) -> Vec<(Order, Vec<Batch>)> {
    let shares = Shares::of(plain, runs);
    if shares.long.times == 0 {
        return vec![(Order::MostEven, vec![shares.short])];
    }
    if shares.long.times == 1 || shares.short.times == 1 {
        // One run of the other length: there is only one ring.
        return vec![(Order::MostEven, vec![shares.long, shares.short])];
    }
    let mut orders = vec![(Order::TwoBlocks, vec![shares.long, shares.short])];
    if let Some(in_turn) = blocks_in_turn(plain, &shares) {
        orders.push((Order::BlocksInTurn, in_turn));
    }
    orders.push((Order::MostEven, most_even(plain, runs)));
    orders
}

/// Blocks of a few runs where such blocks stray too little to be seen, else the two blocks several times over. None where
/// that strays no more than the most even order.
fn blocks_in_turn(plain: u32, shares: &Shares) -> Option<Vec<Batch>> {
    let runs = shares.long.times + shares.short.times;
    let few = blocks_of_few(shares).filter(|blocks| drift(blocks) <= unseen(plain, runs));
    let can_be_told = |turns: &u32| *turns <= MOST_TURNS || runs <= MOST_TOLD;
    let in_turn = || {
        let turns = turns_wanted(plain, shares).filter(can_be_told);
        turns.map(|turns| in_turn(shares, turns))
    };
    few.or_else(in_turn)
        .filter(|blocks| drift(blocks) >= Fraction::new(1, 1))
}

/// How far changes may stray from even before anybody sees it: half a run, or where the runs are short a small part of all
/// stitches.
pub(super) fn unseen(plain: u32, runs: u32) -> Fraction {
    let part = Fraction::new(u64::from(plain), UNSEEN_PART).min(Fraction::new(UNSEEN, 1));
    Fraction::new(u64::from(plain), 2 * u64::from(runs)).max(part)
}

/// Runs by Bresenham's error term.
pub(super) fn most_even(plain: u32, runs: u32) -> Vec<Batch> {
    let end = |run: u32| u64::from(run) * u64::from(plain) / u64::from(runs);
    batches((0..runs).map(|run| (end(run + 1) - end(run)) as u32))
}

/// Joins equal neighbours.
pub(super) fn batches(runs: impl Iterator<Item = u32>) -> Vec<Batch> {
    let mut batches: Vec<Batch> = Vec::new();
    for run in runs {
        match batches.last_mut() {
            Some(last) if last.run == run => last.times += 1,
            _ => batches.push(Batch { run, times: 1 }),
        }
    }
    batches
}

/// How often to take the two blocks in turn so that they stray at most half a run; none if once is enough, or if it
/// would take so many turns that it is the most even order already.
fn turns_wanted(plain: u32, shares: &Shares) -> Option<u32> {
    let product = u64::from(shares.long.times) * u64::from(shares.short.times);
    let least = u32::try_from((2 * product).div_ceil(u64::from(plain.max(1)))).ok()?;
    let fewer = shares.long.times.min(shares.short.times);
    if least < 2 || least >= fewer {
        return None;
    }
    // Turns that divide both blocks are all alike, and so one bracket: worth up to twice as many turns.
    let alike = (least..=2 * least)
        .find(|turns| shares.long.times.is_multiple_of(*turns) && shares.short.times.is_multiple_of(*turns));
    let turns = alike.unwrap_or(least);
    (turns < fewer).then_some(turns)
}

/// A few of the more frequent runs to each of the others: first the blocks that hold one more, then those that do not.
/// None where all blocks would be alike, which is the most even order already, or would be long.
fn blocks_of_few(shares: &Shares) -> Option<Vec<Batch>> {
    const MANY: u32 = 3;
    let (more, fewer) = if shares.long.times > shares.short.times {
        (shares.long, shares.short)
    } else {
        (shares.short, shares.long)
    };
    let (each, over) = (more.times / fewer.times, more.times % fewer.times);
    if over == 0 || each >= MANY {
        return None;
    }
    let block = |times| [Batch { times, ..more }, Batch { times: 1, ..fewer }];
    let larger = block(each + 1).repeat(over as usize);
    Some([larger, block(each).repeat((fewer.times - over) as usize)].concat())
}

fn in_turn(shares: &Shares, turns: u32) -> Vec<Batch> {
    let share = |times: u32, turn: u32| {
        let end = |t: u32| u64::from(t) * u64::from(times) / u64::from(turns);
        (end(turn + 1) - end(turn)) as u32
    };
    (0..turns)
        .flat_map(|turn| {
            [shares.long, shares.short].map(|batch| Batch {
                run: batch.run,
                times: share(batch.times, turn),
            })
        })
        .collect()
}

/// How far the changes stray from even: the widest difference between any stretch of runs and its even share.
pub(super) fn drift(batches: &[Batch]) -> Fraction {
    let runs: i64 = batches.iter().map(|b| i64::from(b.times)).sum();
    let plain: i64 = batches.iter().map(|b| i64::from(b.run) * i64::from(b.times)).sum();
    let (mut at, mut lowest, mut highest) = (0_i64, 0_i64, 0_i64);
    // Counted in stitches times runs, so that it stays whole: of a hundred thousand each it is far from too large.
    for batch in batches {
        at += (i64::from(batch.run) * runs - plain) * i64::from(batch.times);
        lowest = lowest.min(at);
        highest = highest.max(at);
    }
    let under = u64::try_from(runs).unwrap_or(1);
    Fraction::new(u64::try_from(highest - lowest).unwrap_or(u64::MAX), under)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn unrolled(batches: &[Batch]) -> Vec<u32> {
        batches
            .iter()
            .flat_map(|b| std::iter::repeat_n(b.run, b.times as usize))
            .collect()
    }

    #[test]
    fn two_blocks_stray_by_what_their_counts_say() {
        for (long, short, strays) in [(4, 12, 3), (30, 30, 15)] {
            let shares = Shares::of(long * 7 + short * 6, long + short);
            assert_eq!(drift(&[shares.long, shares.short]), Fraction::new(strays, 1));
        }
    }

    #[test]
    fn blocks_in_turn_stray_at_most_half_a_run_when_the_turns_are_alike() {
        let offered = orders(30 * 7 + 30 * 6, 60);
        let (_, turns) = offered
            .iter()
            .find(|(o, _)| *o == Order::BlocksInTurn)
            .expect("30 and 30 stray by 15");
        assert!(drift(turns) <= Fraction::new(390, 120));
    }

    proptest! {
        #[test]
        fn every_order_holds_the_same_runs(runs in 1_u32..300, plain in 0_u32..3_000) {
            let mut wanted = unrolled(&most_even(plain, runs));
            wanted.sort_unstable();
            for (order, batches) in orders(plain, runs) {
                let mut have = unrolled(&batches);
                have.sort_unstable();
                prop_assert_eq!(&have, &wanted, "{:?}", order);
            }
        }

        // Not only the count of long and short runs, but their order is the promise.
        #[test]
        fn any_stretch_of_the_most_even_order_is_within_one_stitch_of_even(runs in 1_u32..60, plain in 0_u32..600) {
            let ring = unrolled(&most_even(plain, runs)).repeat(2);
            for start in 0..runs as usize {
                for length in 1..=runs as usize {
                    let sum: u32 = ring[start..start + length].iter().sum();
                    let even = length as f64 * f64::from(plain) / f64::from(runs);
                    prop_assert!((f64::from(sum) - even).abs() < 1.0 + 1e-9);
                }
            }
            prop_assert!(drift(&most_even(plain, runs)) < Fraction::new(1, 1));
        }
    }
}
