//! Which cords serve which rounds, and the fewest that serve them all.
//!
//! All is compared in whole numbers: a cord serves from so many stitches to so many, worked out once, exactly. A girth
//! that is typed is a piece of one round, counted in nanometres.

use super::gap::Gap;
use super::{Around, Question, SQUEEZE, TIP_PART, TIPS_MATTER_TO, USUAL, growth};
use crate::units::Length;
use crate::units::rate::{Quotient, Rate};

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

impl Stretch {
    /// The rounds that nothing else is left to serve.
    pub const fn run(&self) -> Run {
        Run {
            from: self.latest,
            to: self.last,
        }
    }
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

/// What the rounds are counted in.
#[derive(Clone, Copy, Debug)]
pub(super) enum OnNeedle {
    /// Stitches at this rate.
    Stitches(Rate),
    /// Nanometres, where a girth was typed.
    Nanometres,
}

impl OnNeedle {
    /// How much room so many take, rounded once.
    fn girth(self, count: i64) -> Length {
        match self {
            Self::Stitches(rate) => rate.width_of(u32::try_from(count).unwrap_or(u32::MAX)),
            Self::Nanometres => Length::from_nm(count),
        }
    }

    /// The fewest that reach round a length, and the most that have room in it squeezed.
    fn served_by(self, cord: Length) -> (i64, i64) {
        match self {
            Self::Stitches(rate) => {
                // Within bounds all of this is far below what the whole numbers hold.
                let Quotient { over, under } = rate.count_over(cord);
                let least = over / under + i128::from(over % under > 0);
                (count(least), count(over * i128::from(SQUEEZE) / under))
            }
            Self::Nanometres => (cord.to_nm(), cord.saturating_mul(SQUEEZE).to_nm()),
        }
    }
}

fn count(whole: i128) -> i64 {
    i64::try_from(whole).unwrap_or(i64::MAX)
}

impl Cord {
    fn of(length: Length, unit: OnNeedle, question: &Question) -> Self {
        let (least, most) = unit.served_by(length);
        let bends = question.flat || length > TIPS_MATTER_TO;
        let tip = (!bends).then(|| Length::from_nm(length.to_nm() / TIP_PART));
        Self {
            length,
            stitches: (if question.flat { 0 } else { least }, most),
            tip,
            stiff: tip.is_some_and(|most| question.tip.is_some_and(|tip| tip > most)),
            runs: Vec::new(),
        }
    }

    /// The cord with the rounds that it serves.
    fn along(mut self, rounds: &[i64]) -> Self {
        for (round, count) in (1..).zip(rounds) {
            if !self.holds(*count) {
                continue;
            }
            match self.runs.last_mut() {
                Some(run) if run.to + 1 == round => run.to = round,
                _ => self.runs.push(Run { from: round, to: round }),
            }
        }
        self
    }

    /// What lies on the needle is smaller than this cord can serve below so many. One whose tips are too long says only
    /// what would be too much for it.
    pub(super) fn too_small_below(&self) -> i64 {
        if self.stiff { self.stitches.1 } else { self.stitches.0 }
    }

    fn holds(&self, count: i64) -> bool {
        !self.stiff && self.stitches.0 <= count && count <= self.stitches.1
    }
}

/// A checked piece: what lies on the needle in each round, and what each cord serves.
pub(super) struct Piece {
    pub rounds: Vec<i64>,
    pub cords: Vec<Cord>,
    unit: OnNeedle,
    pub flat: bool,
}

impl Piece {
    /// The parts of a question that is within its bounds.
    pub(super) fn of(question: &Question, unit: OnNeedle) -> Self {
        let rounds = rounds(&question.around);
        let at_hand: &[Length] = if question.cords.is_empty() {
            &USUAL
        } else {
            &question.cords
        };
        let cord = |length: &Length| Cord::of(*length, unit, question).along(&rounds);
        Self {
            cords: at_hand.iter().map(cord).collect(),
            rounds,
            unit,
            flat: question.flat,
        }
    }

    /// What lies on the needle, rounded once.
    pub(super) fn girth(&self, count: i64) -> Length {
        self.unit.girth(count)
    }

    /// The cord of a stretch, if it is knitted on one.
    pub(super) fn cord_of(&self, stretch: &Stretch) -> Option<&Cord> {
        match stretch.by {
            By::Cord(length) => self.cords.iter().find(|cord| cord.length == length),
            By::Gap(_) => None,
        }
    }

    fn is_served(&self, count: i64) -> bool {
        self.cords.iter().any(|cord| cord.holds(count))
    }

    /// The fewest cords that serve every count which one of them can serve, shortest first.
    pub(super) fn picks(&self) -> Vec<Length> {
        let mut picks = Vec::new();
        // All up to this count is served.
        let mut done = -1;
        while let Some(best) = self.best_beyond(done, picks.is_empty()) {
            picks.push(best.length);
            done = best.stitches.1;
        }
        picks
    }

    /// Of the cords that serve the smallest count above `done`, the one that reaches furthest; none when no cord serves
    /// any count above it.
    ///
    /// Where several reach the end: back and forth, and after a change, the shortest, which leaves the widest window to
    /// change in; a piece on one cord all the way the longest, which crowds it least.
    fn best_beyond(&self, done: i64, is_first: bool) -> Option<&Cord> {
        let left = || {
            let above = self.rounds.iter().copied().filter(|count| *count > done);
            above.filter(|count| self.is_served(*count))
        };
        let (next, largest) = (left().min()?, left().max()?);
        let mut best: Option<&Cord> = None;
        for cord in self.cords.iter().filter(|cord| cord.holds(next)) {
            let (most, best_most) = (cord.stitches.1, best.map_or(-1, |best| best.stitches.1));
            let both_reach = most >= largest && best_most >= largest;
            let is_better = if both_reach && (self.flat || !is_first) {
                most < best_most
            } else {
                most > best_most
            };
            if is_better {
                best = Some(cord);
            }
        }
        best
    }

    /// The picks along the piece: each as far as it goes, and then the one that goes furthest from there.
    pub(super) fn plan(&self, picks: &[Length]) -> Vec<Stretch> {
        let is_picked = |cord: &&Cord| picks.contains(&cord.length);
        let picked: Vec<&Cord> = self.cords.iter().filter(is_picked).collect();
        let mut plan: Vec<Stretch> = Vec::new();
        let mut done = 0;
        while done < self.rounds.len() {
            // A change comes after the first round of the stretch before.
            let begun = plan.last().map_or(0, |before| before.latest as usize);
            let stretch = match self.furthest(&picked, done) {
                Some((cord, last)) => Stretch {
                    by: By::Cord(cord.length),
                    earliest: round(self.earliest(cord, begun, done)),
                    latest: round(done),
                    last,
                },
                None => self.without_cord(done),
            };
            done = stretch.last as usize;
            plan.push(stretch);
        }
        plan
    }

    /// Of these cords the one that goes furthest from where so many rounds are done, and the last round it serves.
    fn furthest<'a>(&self, picked: &[&'a Cord], done: usize) -> Option<(&'a Cord, u32)> {
        let mut best: Option<(&Cord, usize)> = None;
        for cord in picked {
            let served = self.rounds.iter().skip(done).take_while(|count| cord.holds(**count));
            let last = done + served.count();
            if last > best.map_or(done, |(_, last)| last) {
                best = Some((cord, last));
            }
        }
        best.map(|(cord, last)| (cord, last as u32))
    }

    /// How many rounds are done where a cord serves first, counted back from where it has to.
    fn earliest(&self, cord: &Cord, begun: usize, done: usize) -> usize {
        let window = self.rounds.get(begun..done).unwrap_or_default();
        done - window.iter().rev().take_while(|count| cord.holds(**count)).count()
    }

    /// The stretch that begins where so many rounds are done and no cord serves.
    fn without_cord(&self, done: usize) -> Stretch {
        let rest = self.rounds.iter().skip(done + 1);
        let last = done + 1 + rest.take_while(|count| !self.is_served(**count)).count();
        let counts = self.rounds.get(done..last).unwrap_or_default();
        Stretch {
            by: By::Gap(self.gap(counts)),
            earliest: round(done),
            latest: round(done),
            last: last as u32,
        }
    }
}

/// The number of the round that follows so many.
fn round(done: usize) -> u32 {
    u32::try_from(done).unwrap_or(u32::MAX).saturating_add(1)
}

/// What lies on the needle in each round.
fn rounds(around: &Around) -> Vec<i64> {
    match around {
        Around::Girth(girth) => vec![girth.to_nm()],
        Around::Even { from, to, rounds } => {
            let (from, to, rounds) = (i64::from(*from), i64::from(*to), i64::from(*rounds));
            let last = rounds.max(2) - 1;
            let count = |round: i64| (from * (last - round) + to * round + last / 2) / last;
            (0..rounds).map(count).collect()
        }
        Around::Steps { from, steps, rounds } => growth::rounds(*from, steps, *rounds),
        Around::Rounds(counts) => counts.iter().copied().map(i64::from).collect(),
    }
}
