//! Rounds by their numbers, as they are crossed off while knitting.

use super::intl::{number, say_with};
use loopwright::shaping::Schedule;

/// Above the counts round by round.
pub const COUNTS: &str = "Counts round by round";

/// In place of the rounds that are not listed.
pub const AND_ON: &str = "…";

/// More rounds than this are not named in one sentence.
const MOST: usize = 40;

/// In a sentence whose rounds are read from the counts.
const BELOW: &str = "below";

/// Whether a sentence names no rounds, so that the counts have to lie open.
pub fn is_below(said: &str) -> bool {
    said.as_bytes()
        .windows(BELOW.len())
        .any(|part| part == BELOW.as_bytes())
}

/// `round 9`; `rounds 2, 4 and 5`; where they are too many, how many they are and where to read them.
pub fn named(rounds: &[u32]) -> String {
    if rounds.len() > MOST {
        return say_with("each of # rounds, listed @", &[rounds.len() as u32], &[BELOW]);
    }
    let mut said = String::from(if rounds.len() == 1 { "round " } else { "rounds " });
    for (place, round) in rounds.iter().enumerate() {
        if place > 0 {
            said += if place + 1 == rounds.len() { " and " } else { ", " };
        }
        said += &number(*round);
    }
    said
}

/// In which rounds of a schedule something is done, or in which it is not, whichever are fewer: ` in rounds 2 and 5`;
/// ` in every round but rounds 3 and 6`.
pub fn which(schedule: &Schedule) -> String {
    let (mut shaped, mut plain, mut next) = (Vec::new(), Vec::new(), 1);
    for round in schedule.rows() {
        for before in next..round.row {
            plain.push(before);
        }
        shaped.push(round.row);
        next = round.row + 1;
    }
    for after in next..next + schedule.left {
        plain.push(after);
    }
    if plain.len() < shaped.len().min(MOST) {
        " in every round but ".to_owned() + &named(&plain)
    } else {
        " in ".to_owned() + &named(&shaped)
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
        assert_eq!(which(&schedule(&[(1, 60)], 60)), " in each of 60 rounds, listed below");
        let long = which(&schedule(&[(0, 60), (1, 50)], 0));
        assert_eq!(long, " in each of 110 rounds, listed below");
        assert!(is_below(&long) && !is_below(&which(&five)));
    }
}
