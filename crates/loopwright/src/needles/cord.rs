//! Which cords serve which rounds, and the fewest that serve them all.
//!
//! All is compared in whole numbers: a cord serves from so many stitches to so many, worked out once, exactly. A girth
//! that is typed is a piece of one round, in nanometres.

use super::{Around, MAGIC_LOOP, MAGIC_ROOM, Question, SQUEEZE, TIP_PART, TIPS_MATTER_TO, USUAL};
use crate::tables::needle::CIRCULARS;
use crate::units::{Gauge, Length};

/// A cord at hand, and when it serves.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Cord {
    /// How long it is, tips and all.
    pub length: Length,
    /// The fewest stitches it serves and the most, where stitches are counted.
    pub stitches: Option<(u32, u32)>,
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
    /// The shortest at hand that is long enough for it.
    pub at_hand: Option<Length>,
}

/// A checked piece: what lies on the needle in each round, and what each cord serves, in the same unit.
pub(super) struct Piece {
    /// Stitches, or nanometres.
    pub rounds: Vec<i64>,
    cords: Vec<Serves>,
    /// None where a girth was typed.
    gauge: Option<Gauge>,
    flat: bool,
}

#[derive(Clone, Copy)]
struct Serves {
    length: Length,
    least: i64,
    most: i64,
    tip: Option<Length>,
    stiff: bool,
}

impl Serves {
    const fn holds(&self, count: i64) -> bool {
        self.least <= count && count <= self.most
    }
}

impl Piece {
    /// The parts of a question that [`super::check`] has passed.
    pub(super) fn of(question: &Question, around: &Around) -> Self {
        let mut gauge = question.unwashed.or(question.washed);
        let mut rounds = Vec::new();
        match around {
            Around::Girth(girth) => {
                gauge = None;
                rounds.push(girth.to_nm());
            }
            Around::Even { from, to, rounds: many } => {
                let (from, to) = (i64::from(*from), i64::from(*to));
                let last = i64::from(many.saturating_sub(1)).max(1);
                for round in 0..i64::from(*many) {
                    rounds.push((from * (last - round) + to * round + last / 2) / last);
                }
            }
            Around::Rounds(counts) => rounds.extend(counts.iter().map(|count| i64::from(*count))),
        }
        let flat = question.flat;
        let named = !question.cords.is_empty();
        let at_hand: &[Length] = if named { &question.cords } else { &USUAL };
        let mut cords = Vec::new();
        for length in at_hand {
            let (least, most) = match gauge {
                Some(gauge) => reach(*length, gauge),
                None => (length.to_nm(), SQUEEZE * length.to_nm()),
            };
            let tip = (!flat && *length <= TIPS_MATTER_TO).then(|| Length::from_nm(length.to_nm() / TIP_PART));
            cords.push(Serves {
                length: *length,
                least: if flat { 0 } else { least },
                most,
                tip,
                stiff: tip.zip(question.tip).is_some_and(|(most, tip)| tip > most),
            });
        }
        Self {
            rounds,
            cords,
            gauge,
            flat,
        }
    }

    /// What lies on the needle, rounded once.
    pub(super) fn girth(&self, count: i64) -> Length {
        let wide = self.gauge.and_then(|gauge| gauge.width_of(count as f64));
        wide.unwrap_or(Length::from_nm(count))
    }

    /// Whether a girth was typed, and no stitches.
    pub(super) const fn is_girth(&self) -> bool {
        self.gauge.is_none()
    }

    fn usable(&self) -> impl Iterator<Item = &Serves> {
        self.cords.iter().filter(|cord| !cord.stiff)
    }

    pub(super) fn cords(&self) -> Vec<Cord> {
        let mut cords = Vec::new();
        for cord in &self.cords {
            let mut runs: Vec<Run> = Vec::new();
            let mut before = false;
            for (round, count) in (1..).zip(&self.rounds) {
                let holds = !cord.stiff && cord.holds(*count);
                match runs.last_mut() {
                    Some(run) if holds && before => run.to = round,
                    _ if holds => runs.push(Run { from: round, to: round }),
                    _ => {}
                }
                before = holds;
            }
            let whole = |count: i64| u32::try_from(count).unwrap_or(u32::MAX);
            cords.push(Cord {
                length: cord.length,
                stitches: self.gauge.map(|_| (whole(cord.least), whole(cord.most))),
                tip: cord.tip,
                stiff: cord.stiff,
                runs,
            });
        }
        cords
    }

    /// The fewest cords that serve every count which one of them can serve, shortest first.
    pub(super) fn picks(&self) -> Vec<Length> {
        let mut picks = Vec::new();
        let mut done = -1;
        let served = |count: i64| self.usable().any(|cord| cord.holds(count));
        loop {
            let (mut next, mut largest) = (i64::MAX, -1);
            for count in &self.rounds {
                if *count > done && served(*count) {
                    next = next.min(*count);
                    largest = largest.max(*count);
                }
            }
            if next > largest {
                return picks;
            }
            let mut best: Option<&Serves> = None;
            for cord in self.usable().filter(|cord| cord.holds(next)) {
                let better = |best: &Serves| match (cord.most >= largest, best.most >= largest) {
                    // Where several reach the end: back and forth, and after a change, the shortest, which leaves the
                    // widest window to change in; a piece on one cord all the way the longest, which crowds it least.
                    (true, true) if self.flat || !picks.is_empty() => cord.most < best.most,
                    _ => cord.most > best.most,
                };
                if best.is_none_or(better) {
                    best = Some(cord);
                }
            }
            let Some(best) = best else {
                return picks;
            };
            picks.push(best.length);
            done = best.most;
        }
    }

    /// The picks along the piece: each as far as it goes, and then the one that goes furthest from there.
    pub(super) fn plan(&self, picks: &[Length]) -> Vec<Stretch> {
        let mut plan: Vec<Stretch> = Vec::new();
        let mut at = 0;
        while at < self.rounds.len() {
            let mut best: Option<(&Serves, usize)> = None;
            for cord in self.usable().filter(|cord| picks.contains(&cord.length)) {
                let ahead = self.rounds.iter().skip(at);
                let end = at + ahead.take_while(|count| cord.holds(**count)).count();
                if end > best.map_or(at, |(_, end)| end) {
                    best = Some((cord, end));
                }
            }
            let from = u32::try_from(at).unwrap_or(u32::MAX).saturating_add(1);
            let mut earliest = from;
            let (by, end) = match best {
                Some((cord, end)) => {
                    let begun = plan.last().map_or(from, |before| before.latest + 1);
                    let before = self.rounds.iter().take(at).rev();
                    let early = before.take_while(|count| cord.holds(**count)).count() as u32;
                    earliest = from.saturating_sub(early).max(begun);
                    (By::Cord(cord.length), end)
                }
                None => {
                    let served = |count: &i64| self.usable().any(|cord| cord.holds(*count));
                    let gap = self.rounds.iter().skip(at).take_while(|count| !served(count));
                    let end = at + gap.count().max(1);
                    (By::Gap(self.gap(at, end)), end)
                }
            };
            let last = u32::try_from(end).unwrap_or(u32::MAX);
            plan.push(Stretch {
                by,
                earliest,
                latest: from,
                last,
            });
            at = end;
        }
        plan
    }

    fn gap(&self, from: usize, end: usize) -> Gap {
        let part = || self.rounds.iter().take(end).skip(from).copied();
        let least = self.girth(part().min().unwrap_or(0));
        let largest = part().max().unwrap_or(0);
        let most = self.girth(largest);
        let shortest = Length::from_nm(most.to_nm() / SQUEEZE + most.to_nm() % SQUEEZE);
        let longest = if self.flat { most } else { least };
        let mut labels = CIRCULARS.iter().map(|row| row.label);
        let sold = labels.any(|label| shortest <= label && label <= longest);
        let magic = most.saturating_add(MAGIC_ROOM).max(MAGIC_LOOP);
        let longest_sold = CIRCULARS.iter().map(|row| row.label).max().unwrap_or(MAGIC_LOOP);
        let magic_loop = (!self.flat && magic <= longest_sold).then_some(magic);
        let lengths = self.cords.iter().map(|cord| cord.length);
        let long_enough = lengths.filter(|length| *length >= magic);
        Gap {
            least,
            most,
            small: self.usable().all(|cord| largest < cord.least),
            cord: sold.then_some((shortest, longest)),
            magic_loop,
            at_hand: magic_loop.and(long_enough.min()),
        }
    }
}

/// The fewest stitches that reach round a cord, and the most that it holds.
fn reach(cord: Length, gauge: Gauge) -> (i64, i64) {
    // A gauge is held in thousandths; rounding undoes the division that made a number of it, exactly. Within bounds
    // all of this is below 10^16.
    let over = cord.to_nm().saturating_mul((gauge.count() * 1_000.0).round() as i64);
    let under = gauge.span().to_nm().saturating_mul(1_000).max(1);
    let least = over / under + i64::from(over % under > 0);
    (least, over.saturating_mul(SQUEEZE) / under)
}
