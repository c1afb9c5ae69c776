//! Shaping over rows in words, in the one convention: so many rows plain, then a shaping row, so many times. "Every 8th
//! row" is never said, since it can be meant in three ways.

use super::intl::{say, say_with, times};
use loopwright::shaping::{Knitting, Schedule, Side};

/// More blocks than this are too many to knit from: the rows are read from the list.
const MOST_BLOCKS: usize = 9;

/// Above the rows one by one.
pub const ROW_BY_ROW: &str = "Row by row";

/// Rows or rounds, losing or gaining: the place of such words in their tables.
fn place(schedule: &Schedule) -> usize {
    2 * usize::from(schedule.knitting == Knitting::Round) + usize::from(schedule.gain)
}

/// So many rows, or rounds.
pub fn rows(count: u32, round: bool) -> String {
    say(if round { "# {round|rounds}" } else { "# {row|rows}" }, &[count])
}

/// One shaping row.
pub fn shaping_row(schedule: &Schedule) -> &'static str {
    [
        "a decrease row",
        "an increase row",
        "a decrease round",
        "an increase round",
    ][place(schedule)]
}

/// So many shaping rows.
pub fn shaping_rows(count: u32, schedule: &Schedule) -> String {
    let patterns = [
        "# decrease {row|rows}",
        "# increase {row|rows}",
        "# decrease {round|rounds}",
        "# increase {round|rounds}",
    ];
    say(patterns[place(schedule)], &[count])
}

/// Whether the instruction is told block by block; otherwise its rows have to be listed.
pub fn is_short(schedule: &Schedule) -> bool {
    schedule.blocks.len() <= MOST_BLOCKS
}

/// The whole instruction: "Work 7 rows plain, then a decrease row; 8 times. Then 1 row plain." Where it has very many
/// blocks it sends to its rows, which then have to be listed below it.
pub fn written(schedule: &Schedule) -> String {
    let round = schedule.knitting == Knitting::Round;
    let shaping = shaping_row(schedule);
    let mut said = String::new();
    let mut blocks = &schedule.blocks[..];
    // What all rows change is told elsewhere; where they differ, or there is only one, each says it.
    let alike = schedule.blocks.windows(2).all(|two| two[0].change == two[1].change);
    let named = !alike || matches!(blocks, [only] if only.times == 1);
    if !is_short(schedule) {
        said = say_with(
            "Work @ at each number listed below, plain between them. ",
            &[],
            &[shaping],
        );
        blocks = &[];
    }
    for block in blocks {
        said += if said.is_empty() { "Work " } else { "Then " };
        if block.plain > 0 {
            said += &rows(block.plain, round);
            said += " plain, then ";
        }
        said += shaping;
        if named {
            said += &say(" of # {stitch|stitches}", &[block.change]);
        }
        if block.times > 1 {
            said += "; ";
            said += &times(block.times);
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

/// Its shaping rows one by one, at most so many: "Row 9 (RS): 116 stitches"; an ellipsis where there are more.
pub fn listed(schedule: &Schedule, most: usize) -> Vec<String> {
    let mut said = Vec::new();
    for shaped in schedule.rows() {
        if said.len() == most {
            said.push("…".into());
            break;
        }
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
            ["Row 1 (RS): 2 fewer in all", "Row 9 (RS): 4 fewer in all", "…"]
        );
    }

    /// One row alone may change fewer than each row should, and nothing else would tell.
    #[test]
    fn a_row_that_is_alone_says_what_it_changes() {
        let question = Question {
            each: 3,
            rest: true,
            ..Question::about(Ask::Gain(2), 12)
        };
        let exact = answer(&question).unwrap().schedule;
        assert_eq!(
            written(&exact),
            "Work an increase row of 2 stitches. Then 11 rows plain."
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
