//! Rounds by their numbers, as they are crossed off while knitting.

use super::intl::{fill_pattern, number};
use loopwright::shaping::Schedule;

pub const COUNTS: &str = "Counts round by round";

/// More rounds than this are not named in one sentence.
const MOST: usize = 40;

/// Whether a sentence names so many rounds one by one; otherwise it sends to the counts, which then lie open.
const fn are_named(rounds: usize) -> bool {
    rounds <= MOST
}

/// `round 9`; `rounds 2, 4 and 5`; where they are too many, how many they are and where to read them.
fn named(rounds: &[u32]) -> String {
    if !are_named(rounds.len()) {
        return fill_pattern("each of # rounds, listed below", &[rounds.len() as u32]);
    }
    let names: Vec<String> = rounds.iter().copied().map(number).collect();
    match names.split_last() {
        None => String::new(),
        Some((last, [])) => format!("round {last}"),
        Some((last, before)) => format!("rounds {} and {last}", before.join(", ")),
    }
}

/// The rounds by which a schedule is told: those that are shaped or those that are not, whichever are fewer.
enum Which {
    Every,
    Shaped(Vec<u32>),
    AllBut(Vec<u32>),
}

impl Which {
    fn of(schedule: &Schedule) -> Self {
        let shaped: Vec<u32> = schedule.rows().map(|round| round.row).collect();
        let plain = schedule.plain_rows();
        if plain.is_empty() {
            Self::Every
        } else if plain.len() < shaped.len().min(MOST) {
            Self::AllBut(plain)
        } else {
            Self::Shaped(shaped)
        }
    }
}

/// In which rounds of a schedule something is done: ` in rounds 2 and 5`; ` in every round but rounds 3 and 6`.
pub fn which(schedule: &Schedule) -> String {
    match Which::of(schedule) {
        Which::Every => " in every round".into(),
        Which::Shaped(rounds) => format!(" in {}", named(&rounds)),
        Which::AllBut(rounds) => format!(" in every round but {}", named(&rounds)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright::shaping::{Block, Knitting};

    fn schedule(blocks: &[(u32, u32)], left: u32) -> Schedule {
        let block = |&(plain, times)| Block {
            plain,
            change: 8,
            times,
        };
        Schedule {
            knitting: Knitting::Round,
            stitches: Some(96),
            gain: true,
            blocks: blocks.iter().map(block).collect(),
            left,
        }
    }

    #[test]
    fn the_fewer_rounds_are_named() {
        assert_eq!(which(&schedule(&[(8, 1)], 3)), " in round 9");
        assert_eq!(which(&schedule(&[(1, 2), (0, 1)], 4)), " in rounds 2, 4 and 5");
        let five = schedule(&[(0, 4), (1, 1), (0, 3)], 1);
        assert_eq!(which(&five), " in every round but rounds 5 and 10");
        assert_eq!(which(&schedule(&[(0, 5)], 0)), " in every round");
        assert_eq!(which(&schedule(&[(1, 60)], 60)), " in each of 60 rounds, listed below");
        let long = which(&schedule(&[(0, 60), (1, 50)], 0));
        assert_eq!(long, " in each of 110 rounds, listed below");
    }
}
