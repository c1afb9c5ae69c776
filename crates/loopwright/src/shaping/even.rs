//! Shaping rounds that lie as even as whole rounds allow, whatever each of them changes: the increases of a flare, the
//! few rounds of a yoke, the lines of a raglan.

use super::{Knitting, Schedule};

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

/// How shaping rounds lie among the plain ones.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Rhythm {
    /// Even to the end; where no plain rounds are asked for at the beginning, that is a gap like the others.
    Straight,
    /// The same, but where no plain rounds are asked for at the beginning it shares a gap with the end, so that a single
    /// shaping round stands in the middle.
    Centred,
    /// All gaps are the same where no more than [`FEW`] plain rounds are left over by it, which then lie at the end.
    Steady,
}

/// So many plain rounds more at the end are worth one rhythm: some 15 mm of most fabrics. Common practice, no source.
const FEW: u64 = 4;

impl Rounds {
    /// Plain rounds that are kept.
    pub(crate) fn kept(self) -> u32 {
        self.first.unwrap_or(0).saturating_add(self.last)
    }

    /// How many may be shaping rounds.
    pub(crate) fn room(self) -> u32 {
        self.all.saturating_sub(self.kept())
    }

    /// A shaping round for each of these changes, no more of them than there is room for, each as near to the straight
    /// line as whole rounds allow.
    pub(crate) fn share(self, rhythm: Rhythm, stitches: u32, gain: bool, changes: &[u32]) -> Schedule {
        let mut schedule = Schedule::plain(Knitting::Round, Some(stitches), gain, self.all);
        // Where the gaps begin, over how many rounds, how many they are, and how many half gaps earlier than a whole one the
        // first change comes.
        let (many, room) = (changes.len() as u64, self.all.saturating_sub(self.last));
        let (from, room, gaps, before) = match (self.first, rhythm) {
            (Some(plain), _) => (plain + 1, room.saturating_sub(plain + 1), many.saturating_sub(1), 2),
            (None, Rhythm::Centred) => (1, room, many, 1),
            (None, Rhythm::Straight | Rhythm::Steady) => (0, room, many, 0),
        };
        let (mut span, gaps) = (u64::from(room), gaps.max(1));
        if rhythm == Rhythm::Steady && span % gaps <= FEW {
            span -= span % gaps;
        }
        let (mut half_gaps, mut passed) = (0_u64, 0);
        for &change in changes {
            half_gaps += 2;
            let round = from + (half_gaps.saturating_sub(before) * span / (2 * gaps)) as u32;
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

        /// One gap for all, or at most one round more or less where that would leave too many at the end.
        #[test]
        fn a_steady_rhythm_leaves_few_rounds(all in 1_u32..200, times in 2_u32..60, first in 0_u32..9, last in 0_u32..9) {
            let rounds = Rounds { all, first: Some(first), last };
            prop_assume!(times <= rounds.room());
            let changes = vec![3; times as usize];
            let schedule = rounds.share(Rhythm::Steady, 50, true, &changes);
            let rows: Vec<u32> = schedule.rows().map(|shaped| shaped.row).collect();
            let over = schedule.left - last;
            prop_assert!(rows[0] == first + 1 && u64::from(over) <= FEW);
            let gap = rows[1] - rows[0];
            if rows.windows(2).any(|pair| pair[1] - pair[0] != gap) {
                prop_assert_eq!(schedule, rounds.share(Rhythm::Straight, 50, true, &changes));
                prop_assert!(u64::from((all - last - first - 1) % (times - 1)) > FEW);
            }
        }
    }
}
