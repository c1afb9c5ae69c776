//! Shaping rounds that lie as even as whole rounds allow, whatever each of them changes: the increases of a flare, the
//! few rounds of a yoke, the lines of a raglan. The straight line they are held against is told here too.

use super::{Knitting, Schedule, USUAL_LAST};

/// Rounds, and the plain ones that are kept among them.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Rounds {
    /// All of them.
    pub all: u32,
    /// Plain ones before the first shaping round; none makes the beginning a gap like the others.
    pub first: Option<u32>,
    /// Plain ones at least at the end.
    pub last: u32,
}

/// Plain rounds that are too many: what they may be at most.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct TooPlain {
    /// Before the first shaping round.
    pub first: Option<u32>,
    /// At the end.
    pub last: Option<u32>,
}

/// How shaping rounds lie among the plain ones.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Rhythm {
    /// Even to the end; where no plain rounds are asked for at the beginning, that is a gap like the others.
    Straight,
    /// The same, but where no plain rounds are asked for at the beginning it shares a gap with the end, so that a single
    /// shaping round stands in the middle.
    Centred,
}

/// The straight line: where each shaping round would lie if rounds could be cut into parts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Line {
    /// Where its gaps begin.
    from: u32,
    /// Rounds of all gaps together.
    pub span: u32,
    /// How many gaps, never none.
    pub gaps: u32,
    /// How many half gaps earlier than a whole one the first change comes.
    before: u32,
}

impl Line {
    /// Half gaps from the beginning to the shaping round of this number, of which 1 is the first.
    fn half_gaps(self, count: u32) -> u64 {
        (2 * u64::from(count)).saturating_sub(u64::from(self.before))
    }

    /// The round of this number, at its place on the line or less than one round before it.
    pub(super) fn round(self, count: u32) -> u32 {
        self.from + (self.half_gaps(count) * u64::from(self.span) / (2 * u64::from(self.gaps))) as u32
    }

    /// How far behind its place a round lies, as the shaping round of this number; below zero when it comes before it.
    /// In parts of which a round has [`Self::parts_of_round`], and one gap of the line [`Self::parts_of_gap`].
    pub(super) fn behind(self, count: u32, round: u32) -> i64 {
        let passed = (i64::from(round) - i64::from(self.from)) * self.parts_of_round();
        passed - (self.half_gaps(count) * u64::from(self.span)) as i64
    }

    pub(super) fn parts_of_round(self) -> i64 {
        2 * i64::from(self.gaps)
    }

    pub(super) fn parts_of_gap(self) -> i64 {
        2 * i64::from(self.span)
    }
}

impl Rounds {
    /// Plain rounds that are kept.
    pub(crate) fn kept(self) -> u32 {
        self.first.unwrap_or(0).saturating_add(self.last)
    }

    /// How many may be shaping rounds.
    pub(crate) fn room(self) -> u32 {
        self.all.saturating_sub(self.kept())
    }

    /// What the plain rounds that are asked for may be at most, where fewer of them would leave room for so many shaping
    /// rounds.
    pub(crate) fn too_plain(self, times: u32) -> TooPlain {
        let first = self.first.unwrap_or(0);
        let (starts_late, ends_early) = (first > 0, self.last > USUAL_LAST);
        let Some(spare) = self.all.checked_sub(times).filter(|_| times > self.room()) else {
            return TooPlain::default();
        };
        let alone = TooPlain {
            first: spare.checked_sub(self.last).filter(|_| starts_late),
            last: spare.checked_sub(first).filter(|_| ends_early),
        };
        match (alone.first, alone.last) {
            // Either of them leaves too few by itself.
            (None, None) if starts_late && ends_early => TooPlain {
                first: Some(spare.saturating_sub(USUAL_LAST)),
                last: Some(spare),
            },
            _ => alone,
        }
    }

    /// The straight line of so many shaping rounds.
    pub(super) fn line(self, rhythm: Rhythm, times: u32) -> Line {
        let room = self.all.saturating_sub(self.last);
        let (from, span, gaps, before) = match (self.first, rhythm) {
            (Some(plain), _) => (plain + 1, room.saturating_sub(plain + 1), times.saturating_sub(1), 2),
            (None, Rhythm::Centred) => (1, room, times, 1),
            (None, Rhythm::Straight) => (0, room, times, 0),
        };
        Line {
            from,
            span,
            gaps: gaps.max(1),
            before,
        }
    }

    /// A shaping round for each of these changes, no more of them than there is room for, each as near to the straight
    /// line as whole rounds allow.
    pub(crate) fn share(self, rhythm: Rhythm, stitches: u32, gain: bool, changes: &[u32]) -> Schedule {
        let line = self.line(rhythm, changes.len() as u32);
        let rounds = (1..=changes.len() as u32).map(|count| line.round(count));
        self.schedule(stitches, gain, changes, rounds)
    }

    /// The schedule with its shaping rounds in these rounds.
    pub(crate) fn schedule(
        self,
        stitches: u32,
        gain: bool,
        changes: &[u32],
        rounds: impl IntoIterator<Item = u32>,
    ) -> Schedule {
        let mut schedule = Schedule::plain(Knitting::Round, Some(stitches), gain, self.all);
        let mut passed = 0;
        for (&change, round) in changes.iter().zip(rounds) {
            schedule.push(round.saturating_sub(passed + 1), change);
            passed = round;
        }
        schedule
    }
}

#[cfg(test)]
mod tests {
    use super::super::{Ask, Order, Question, answer};
    use super::*;
    use proptest::prelude::*;

    proptest! {
        /// What the general question gives for mixed gaps in the round.
        #[test]
        fn it_is_the_mixed_order_of_shaping(
            all in 1_u32..200,
            times in 1_u32..60,
            first in proptest::option::of(0_u32..9),
            last in 0_u32..9,
        ) {
            let rounds = Rounds { all, first, last };
            prop_assume!(times <= rounds.room());
            let question = Question {
                stitches: Some(50),
                each: 3,
                knitting: Knitting::Round,
                first,
                last,
                order: Order::Mixed,
                ..Question::about(Ask::Gain(3 * times), all)
            };
            let changes = vec![3; times as usize];
            prop_assert_eq!(rounds.share(Rhythm::Straight, 50, true, &changes), answer(&question).unwrap().schedule);
        }

        /// The general question has no such order: what it keeps is told here. Beginning and end share a gap.
        #[test]
        fn centred_rounds_are_even_and_as_far_from_either_end(all in 1_u32..200, times in 1_u32..60, last in 0_u32..9) {
            let rounds = Rounds { all, first: None, last };
            prop_assume!(times <= rounds.room());
            let schedule = rounds.share(Rhythm::Centred, 50, true, &vec![3; times as usize]);
            let rows: Vec<u32> = schedule.rows().map(|shaped| shaped.row).collect();
            let [before, after] = [rows[0] - 1, all - last - rows[rows.len() - 1]];
            prop_assert!(before == after || before == after + 1, "{} {}", before, after);
            let gaps: Vec<u32> = rows.windows(2).map(|pair| pair[1] - pair[0]).collect();
            if let (Some(least), Some(most)) = (gaps.iter().min(), gaps.iter().max()) {
                prop_assert!(*least > 0 && most - least <= 1, "{:?}", gaps);
                prop_assert!(before + after <= *most, "{} {} {}", before, after, most);
            }
        }

        /// What is shared out strays from the line by less than a round.
        #[test]
        fn even_rounds_lie_within_a_round_of_the_line(
            all in 1_u32..200,
            times in 1_u32..60,
            first in proptest::option::of(0_u32..9),
            last in 0_u32..9,
            centred: bool,
        ) {
            let rounds = Rounds { all, first, last };
            prop_assume!(times <= rounds.room());
            let rhythm = if centred { Rhythm::Centred } else { Rhythm::Straight };
            let line = rounds.line(rhythm, times);
            let schedule = rounds.share(rhythm, 50, true, &vec![3; times as usize]);
            for (count, shaped) in (1..).zip(schedule.rows()) {
                let behind = line.behind(count, shaped.row);
                prop_assert!(behind <= 0 && -behind < line.parts_of_round(), "{}", behind);
            }
        }
    }
}
