//! Shaping over rows in words, in the one convention: so many rows plain, then a shaping row, so many times. "Every 8th
//! row" is never said, since it can be meant in three ways.

use super::intl::{fill_pattern, fill_pattern_with, times};
use loopwright::shaping::{Block, Knitting, Schedule, Shaped, Side};

/// More blocks than this are too many to knit from: the rows are read from the list.
const MOST_BLOCKS: usize = 9;

pub const ROW_BY_ROW: &str = "Row by row";

pub const FROM_NEXT_ROW: &str = "From the next row on";

pub const FROM_NEXT_ROUND: &str = "From the next round on";

/// In place of the rows that are not listed.
const AND_ON: &str = "…";

/// So many rows, or rounds.
pub fn rows(count: u32, round: bool) -> String {
    fill_pattern(if round { "# {round|rounds}" } else { "# {row|rows}" }, &[count])
}

/// One shaping row.
pub fn shaping_row(schedule: &Schedule) -> &'static str {
    match (schedule.knitting, schedule.gain) {
        (Knitting::Flat { .. }, false) => "a decrease row",
        (Knitting::Flat { .. }, true) => "an increase row",
        (Knitting::Round, false) => "a decrease round",
        (Knitting::Round, true) => "an increase round",
    }
}

/// So many shaping rows.
pub fn shaping_rows(count: u32, schedule: &Schedule) -> String {
    let pattern = match (schedule.knitting, schedule.gain) {
        (Knitting::Flat { .. }, false) => "# decrease {row|rows}",
        (Knitting::Flat { .. }, true) => "# increase {row|rows}",
        (Knitting::Round, false) => "# decrease {round|rounds}",
        (Knitting::Round, true) => "# increase {round|rounds}",
    };
    fill_pattern(pattern, &[count])
}

/// Whether the instruction is told block by block; otherwise its rows have to be listed.
pub fn is_short(schedule: &Schedule) -> bool {
    schedule.blocks.len() <= MOST_BLOCKS
}

/// The whole instruction: "Work 7 rows plain, then a decrease row; 8 times. Then 1 row plain." Where it has very many
/// blocks it sends to its rows, which then have to be listed below it.
pub fn written(schedule: &Schedule) -> String {
    let mut parts = Vec::new();
    if is_short(schedule) {
        parts.extend(schedule.blocks.iter().map(|each| block(schedule, each)));
    } else {
        let pattern = "@ at each number listed below, plain between them.";
        parts.push(fill_pattern_with(pattern, &[], &[shaping_row(schedule)]));
    }
    if schedule.left > 0 {
        let left = rows(schedule.left, schedule.knitting == Knitting::Round);
        parts.push(format!("{left} plain."));
    }
    match parts.is_empty() {
        true => String::new(),
        false => format!("Work {}", parts.join(" Then ")),
    }
}

/// One block: "7 rows plain, then a decrease row; 8 times."
fn block(schedule: &Schedule, block: &Block) -> String {
    let mut sentence = String::new();
    if block.plain > 0 {
        sentence += &rows(block.plain, schedule.knitting == Knitting::Round);
        sentence += " plain, then ";
    }
    sentence += shaping_row(schedule);
    if says_change(schedule) {
        sentence += &fill_pattern(" of # {stitch|stitches}", &[block.change]);
    }
    if block.times > 1 {
        sentence += "; ";
        sentence += &times(block.times);
    }
    sentence + "."
}

/// Whether each shaping row says what it changes. What all rows change is told elsewhere; where they differ, or there is
/// only one, each says it.
fn says_change(schedule: &Schedule) -> bool {
    let differ = schedule.blocks.windows(2).any(|two| two[0].change != two[1].change);
    differ || matches!(schedule.blocks[..], [only] if only.times == 1)
}

/// Its shaping rows one by one, at most so many: "Row 9 (RS): 116 stitches"; an ellipsis where there are more.
pub fn listed(schedule: &Schedule, most: usize) -> Vec<String> {
    let mut rows = schedule.rows();
    let mut listed: Vec<String> = rows.by_ref().take(most).map(|row| one_row(schedule, row)).collect();
    if rows.next().is_some() {
        listed.push(AND_ON.into());
    }
    listed
}

/// One shaping row, and the count after it.
fn one_row(schedule: &Schedule, shaped: Shaped) -> String {
    let row = match (schedule.knitting, shaped.side) {
        (Knitting::Round, _) => "Round #",
        (Knitting::Flat { .. }, Side::Right) => "Row # (RS)",
        (Knitting::Flat { .. }, Side::Wrong) => "Row # (WS)",
    };
    let count = match (shaped.stitches, schedule.gain) {
        (Some(after), _) => fill_pattern(": # {stitch|stitches}", &[after]),
        (None, true) => fill_pattern(": # more in all", &[shaped.changed]),
        (None, false) => fill_pattern(": # fewer in all", &[shaped.changed]),
    };
    fill_pattern(row, &[shaped.row]) + &count
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
