//! Which cords serve which rounds, and the fewest that serve them all.
//!
//! All is compared in whole numbers: a cord serves from so many stitches to so many, worked out once, exactly. A girth
//! that is typed is a piece of one round, with a stitch to the nanometre.

use super::{Around, MAGIC_LOOP, MAGIC_ROOM, Question, SQUEEZE, TIP_PART, TIPS_MATTER_TO, USUAL};
use crate::tables::needle::CIRCULARS;
use crate::units::{Gauge, Length};

/// A cord at hand, and when it serves.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Cord {
    /// How long it is, tips and all.
    pub length: Length,
    /// The fewest stitches it serves, and the most; nanometres where a girth was typed.
    pub stitches: (i64, i64),
    /// The longest tip with which it bends into a ring; none where that does not matter.
    pub tip: Option<Length>,
    /// Whether its tips are longer than that, so that it serves nothing.
    pub stiff: bool,
    /// The rounds it serves.
    pub runs: Vec<Run>,
}

/// Rounds one after the other, counted from 1.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Run {
    /// The first.
    pub from: u32,
    /// The last.
    pub to: u32,
}

/// A part of the piece on one cord, or on none.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Stretch {
    /// What it is knitted on.
    pub by: By,
    /// The first round that can be knitted on to it, counted from 1.
    pub earliest: u32,
    /// The last round by which it has to be. Any plain round between the two will do.
    pub latest: u32,
    /// The last round it serves.
    pub last: u32,
}

/// What a part of the piece is knitted on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum By {
    /// A cord.
    Cord(Length),
    /// No cord at hand serves.
    Gap(Gap),
}

/// What no cord at hand serves, and what would.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Gap {
    /// The smallest girth in it.
    pub least: Length,
    /// The largest.
    pub most: Length,
    /// Whether it is smaller than every cord: double-pointed needles, two circulars, or magic loop.
    pub small: bool,
    /// The shortest and the longest that one cord may be to serve all of it; none where no such cord is sold.
    pub cord: Option<(Length, Length)>,
    /// How long a cord magic loop needs, tips and all; none back and forth, and where none so long is sold.
    pub magic_loop: Option<Length>,
}

impl Cord {
    fn of(length: Length, gauge: Gauge, question: &Question) -> Self {
        // A gauge is held in thousandths; rounding undoes the division that made a number of it, exactly. Within bounds
        // all of this is below 10^17.
        let over = length.to_nm().saturating_mul((gauge.count() * 1_000.0).round() as i64);
        let under = gauge.span().to_nm().saturating_mul(1_000).max(1);
        let least = over / under + i64::from(over % under > 0);
        let bends = question.flat || length > TIPS_MATTER_TO;
        let tip = (!bends).then(|| Length::from_nm(length.to_nm() / TIP_PART));
        Self {
            length,
            stitches: (
                if question.flat { 0 } else { least },
                over.saturating_mul(SQUEEZE) / under,
            ),
            tip,
            stiff: tip.is_some_and(|most| question.tip.is_some_and(|tip| tip > most)),
            runs: Vec::new(),
        }
    }

    fn holds(&self, count: i64) -> bool {
        !self.stiff && self.stitches.0 <= count && count <= self.stitches.1
    }
}

/// A checked piece: what lies on the needle in each round, and what each cord serves.
pub(super) struct Piece {
    pub rounds: Vec<i64>,
    pub cords: Vec<Cord>,
    gauge: Gauge,
    flat: bool,
}

impl Piece {
    /// The parts of a question that is within its bounds, at the gauge that holds.
    pub(super) fn of(question: &Question, gauge: Option<Gauge>) -> Self {
        let mut gauge = gauge.unwrap_or(STITCH_A_NANOMETRE);
        let mut rounds = Vec::new();
        match &question.around {
            Around::Girth(girth) => {
                gauge = STITCH_A_NANOMETRE;
                rounds.push(girth.to_nm());
            }
            Around::Even { from, to, rounds: many } => {
                let (from, to) = (i64::from(*from), i64::from(*to));
                let last = i64::from(*many).max(2) - 1;
                for round in 0..i64::from(*many) {
                    rounds.push((from * (last - round) + to * round + last / 2) / last);
                }
            }
            Around::Rounds(counts) => {
                for count in counts {
                    rounds.push(i64::from(*count));
                }
            }
        }
        let at_hand: &[Length] = if question.cords.is_empty() {
            &USUAL
        } else {
            &question.cords
        };
        let mut cords = Vec::new();
        for length in at_hand {
            let mut cord = Cord::of(*length, gauge, question);
            for (round, count) in (1..).zip(&rounds) {
                if !cord.holds(*count) {
                    continue;
                }
                match cord.runs.last_mut() {
                    Some(run) if run.to + 1 == round => run.to = round,
                    _ => cord.runs.push(Run { from: round, to: round }),
                }
            }
            cords.push(cord);
        }
        Self {
            rounds,
            cords,
            gauge,
            flat: question.flat,
        }
    }

    /// What lies on the needle, rounded once.
    pub(super) fn girth(&self, count: i64) -> Length {
        self.gauge.width_of(count as f64).unwrap_or(Length::MAX)
    }

    fn is_served(&self, count: i64) -> bool {
        self.cords.iter().any(|cord| cord.holds(count))
    }

    /// The fewest cords that serve every count which one of them can serve, shortest first.
    pub(super) fn picks(&self) -> Vec<Length> {
        let mut picks = Vec::new();
        // All up to this count is served.
        let mut done = -1;
        loop {
            let (mut next, mut largest) = (i64::MAX, -1);
            for count in &self.rounds {
                if *count > done && self.is_served(*count) {
                    next = next.min(*count);
                    largest = largest.max(*count);
                }
            }
            let mut best: Option<&Cord> = None;
            for cord in &self.cords {
                let (most, best_most) = (cord.stitches.1, best.map_or(-1, |best| best.stitches.1));
                // Where several reach the end: back and forth, and after a change, the shortest, which leaves the
                // widest window to change in; a piece on one cord all the way the longest, which crowds it least.
                let shortest = most >= largest && best_most >= largest && (self.flat || !picks.is_empty());
                let better = if shortest { most < best_most } else { most > best_most };
                if next <= largest && cord.holds(next) && better {
                    best = Some(cord);
                }
            }
            let Some(best) = best else {
                return picks;
            };
            picks.push(best.length);
            done = best.stitches.1;
        }
    }

    /// The picks along the piece: each as far as it goes, and then the one that goes furthest from there.
    pub(super) fn plan(&self, picks: &[Length]) -> Vec<Stretch> {
        let mut plan: Vec<Stretch> = Vec::new();
        // Rounds that are done.
        let mut at = 0;
        let count = |round: u32| self.rounds.get(round as usize).copied();
        while count(at).is_some() {
            let (mut last, mut best) = (at, None);
            for cord in &self.cords {
                let mut to = at;
                while picks.contains(&cord.length) && count(to).is_some_and(|count| cord.holds(count)) {
                    to += 1;
                }
                if to > last {
                    (last, best) = (to, Some(cord));
                }
            }
            let mut earliest = at;
            let by = if let Some(cord) = best {
                let begun = plan.last().map_or(0, |before| before.latest);
                while earliest > begun && count(earliest - 1).is_some_and(|count| cord.holds(count)) {
                    earliest -= 1;
                }
                By::Cord(cord.length)
            } else {
                last += 1;
                while count(last).is_some_and(|count| !self.is_served(count)) {
                    last += 1;
                }
                By::Gap(self.gap(self.rounds.get(at as usize..last as usize).unwrap_or_default()))
            };
            plan.push(Stretch {
                by,
                earliest: earliest + 1,
                latest: at + 1,
                last,
            });
            at = last;
        }
        plan
    }

    fn gap(&self, counts: &[i64]) -> Gap {
        let (mut smallest, mut largest) = (i64::MAX, 0);
        for count in counts {
            smallest = smallest.min(*count);
            largest = largest.max(*count);
        }
        let (least, most) = (self.girth(smallest), self.girth(largest));
        let shortest = Length::from_nm(most.to_nm() / SQUEEZE + most.to_nm() % SQUEEZE);
        let longest = if self.flat { most } else { least };
        let magic = most.saturating_add(MAGIC_ROOM).max(MAGIC_LOOP);
        let (mut sold, mut so_long) = (false, false);
        for row in &CIRCULARS {
            sold |= shortest <= row.label && row.label <= longest;
            so_long |= magic <= row.label;
        }
        let mut small = true;
        for cord in &self.cords {
            // One whose tips are too long says only what would be too much for it.
            let limit = if cord.stiff { cord.stitches.1 } else { cord.stitches.0 };
            small &= largest < limit;
        }
        Gap {
            least,
            most,
            small,
            cord: sold.then_some((shortest, longest)),
            magic_loop: (so_long && !self.flat).then_some(magic),
        }
    }
}

/// A girth as a gauge: so many nanometres, so many stitches.
const STITCH_A_NANOMETRE: Gauge = Gauge::of(1, Length::from_nm(1));
