//! Shaping over rows in words, in the one convention: so many rows plain, then a shaping row, so many times. "Every 8th
//! row" is never said, since it can be meant in three ways.

use super::intl::{say, times};
use loopwright::shaping::{Block, Knitting, Schedule, Side};

/// A row and rows, as they are called flat and in the round; a shaping row.
fn called(schedule: &Schedule) -> (bool, &'static str) {
    match (schedule.knitting, schedule.gain) {
        (Knitting::Round, true) => (true, "an increase round"),
        (Knitting::Round, false) => (true, "a decrease round"),
        (_, true) => (false, "an increase row"),
        (_, false) => (false, "a decrease row"),
    }
}

/// So many rows, or rounds.
pub fn rows(count: u32, round: bool) -> String {
    say(if round { "# {round|rounds}" } else { "# {row|rows}" }, &[count])
}

/// The whole instruction: "Work 7 rows plain, then a decrease row; 8 times. Then 1 row plain."
pub fn written(schedule: &Schedule) -> String {
    let (round, shaping) = called(schedule);
    let first = schedule.blocks.first().map_or(0, |block| block.change);
    let alike = schedule.blocks.iter().all(|block| block.change == first);
    let mut said = String::new();
    for (
        place,
        Block {
            plain,
            change,
            times: often,
        },
    ) in schedule.blocks.iter().enumerate()
    {
        said += if place == 0 { "Work " } else { "Then " };
        if *plain > 0 {
            said += &rows(*plain, round);
            said += " plain, then ";
        }
        said += shaping;
        if !alike {
            said += &say(" of # {stitch|stitches}", &[*change]);
        }
        if *often > 1 {
            said += "; ";
            said += &times(*often);
        }
        said += ". ";
    }
    if schedule.left > 0 {
        said += if said.is_empty() { "Work " } else { "Then " };
        said += &rows(schedule.left, round);
        said += " plain.";
    }
    said.trim_end().into()
}

/// Its shaping rows one by one, at most so many: "Row 9 (RS): 116 stitches."
pub fn listed(schedule: &Schedule, most: usize) -> Vec<String> {
    let mut said = Vec::new();
    for shaped in schedule.rows().take(most) {
        let mut row = say(
            match (schedule.knitting, shaped.side) {
                (Knitting::Round, _) => "Round #",
                (_, Side::Right) => "Row # (RS)",
                (_, Side::Wrong) => "Row # (WS)",
            },
            &[shaped.row],
        );
        row += &match shaped.stitches {
            Some(after) => say(": # {stitch|stitches}", &[after]),
            None => say(
                if schedule.gain {
                    ": # more in all"
                } else {
                    ": # fewer in all"
                },
                &[shaped.changed],
            ),
        };
        said.push(row);
    }
    said
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright::shaping::{Ask, Question, answer};

    #[test]
    fn plain_rows_come_first_and_the_whole_is_told() {
        let exact = answer(&Question::about(Ask::Lose(18), 66)).unwrap().schedule;
        assert_eq!(
            written(&exact),
            "Work a decrease row. Then 7 rows plain, then a decrease row; 8 times. Then 1 row plain."
        );
        assert_eq!(
            listed(&exact, 2),
            ["Row 1 (RS): 2 fewer in all", "Row 9 (RS): 4 fewer in all"]
        );
    }

    #[test]
    fn a_round_is_a_round_and_a_last_one_may_differ() {
        let question = Question {
            stitches: Some(40),
            rest: true,
            knitting: Knitting::Round,
            first: None,
            ..Question::about(Ask::Gain(3), 9)
        };
        let exact = answer(&question).unwrap().schedule;
        assert_eq!(
            written(&exact),
            "Work 3 rounds plain, then an increase round of 2 stitches. Then 3 rounds plain, then an increase round of 1 stitch. Then 1 round plain."
        );
        assert_eq!(listed(&exact, 9)[1], "Round 8: 43 stitches");
    }
}
