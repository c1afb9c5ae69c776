//! Shaping over rows in words: the trade's phrase, and the one convention of so many rows plain, then a shaping row, so
//! many times.
//!
//! "Every 8th row" can be meant in three ways. Here it is only said behind a first shaping row that is named by itself, and
//! always counts from the shaping row before.

use super::Worded;
use super::intl::{fill_pattern, fill_pattern_with, times};
use loopwright::shaping::{Block, Drift, Knitting, Pace, Rate, Rates, Schedule, Shaped, Side};

pub const COUNTS: &str = "Counts round by round";

/// More blocks than this are too many to knit from: the rows are read from the list.
const MOST_BLOCKS: usize = 9;

pub const ROW_BY_ROW: &str = "Row by row";

pub const FROM_NEXT_ROW: &str = "From the next row on";

pub const FROM_NEXT_ROUND: &str = "From the next round on";

/// In place of the rows that are not listed.
pub const AND_ON: &str = "…";

pub const ROUND_BY_ROUND: &str = "Round by round";

impl Worded for Pace {
    fn words(self) -> &'static str {
        match self {
            Self::Easiest => "easy to hold in mind",
            Self::MostEven => "as even as can be, from a list",
        }
    }
}

/// Above the rows one by one.
pub const fn one_by_one(knitting: Knitting) -> &'static str {
    match knitting {
        Knitting::Flat { .. } => ROW_BY_ROW,
        Knitting::Round => ROUND_BY_ROUND,
    }
}

/// So many rows, or rounds.
pub fn rows(count: u32, round: bool) -> String {
    fill_pattern(if round { "# {round|rounds}" } else { "# {row|rows}" }, &[count])
}

/// So many of what is knitted: rows or rounds.
pub fn so_many(count: u32, knitting: Knitting) -> String {
    rows(count, knitting == Knitting::Round)
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

/// A number in an order: 2nd, 3rd, 11th.
fn ordinal(number: u32) -> String {
    let pattern = match (number % 100, number % 10) {
        (11..=13, _) => "#th",
        (_, 1) => "#st",
        (_, 2) => "#nd",
        (_, 3) => "#rd",
        _ => "#th",
    };
    fill_pattern(pattern, &[number])
}

/// How often: "every round", "every 8th row".
pub fn every(rows: u32, knitting: Knitting) -> String {
    let noun = noun(knitting);
    match rows {
        1 => fill_pattern_with("every @", &[], &[noun]),
        _ => fill_pattern_with("every @ @", &[], &[&ordinal(rows), noun]),
    }
}

/// One row, or round.
pub const fn noun(knitting: Knitting) -> &'static str {
    match knitting {
        Knitting::Flat { .. } => "row",
        Knitting::Round => "round",
    }
}

/// The same where the noun is understood: "every 8th".
pub fn every_short(rows: u32, knitting: Knitting) -> String {
    match rows {
        1 => every(rows, knitting),
        _ => fill_pattern_with("every @", &[], &[&ordinal(rows)]),
    }
}

/// One rate, counted from the shaping row before: "every 8th row 7 times"; "once 4 rows later".
fn rate(rate: Rate, knitting: Knitting) -> String {
    match (rate.times, rate.every) {
        (1, 1) => fill_pattern_with("in the next @", &[], &[noun(knitting)]),
        (1, later) => fill_pattern_with("once @ later", &[], &[&rows(later, knitting == Knitting::Round)]),
        (many, rows) => [&every(rows, knitting), " ", &times(many)].concat(),
    }
}

/// One rate within a turn: "2 rounds later"; "every 2nd round twice".
fn rate_of_turn(of: Rate, knitting: Knitting) -> String {
    match (of.times, of.every) {
        (1, 2..) => fill_pattern_with("@ later", &[], &[&rows(of.every, knitting == Knitting::Round)]),
        _ => rate(of, knitting),
    }
}

/// Two rates that go by turns, behind the first shaping row: the turn is named with how often it is begun, and where
/// the last is cut short. "now. Then 11 times over: 2 rounds later, then 4 rounds later; 22 in all".
fn by_turns(start: &str, turn: [Rate; 2], times_behind: u32, knitting: Knitting) -> String {
    let whole = turn[0].times + turn[1].times;
    let (turns, over) = (times_behind / whole, times_behind % whole);
    let in_a_row = |rates: [Rate; 2]| {
        let done = rates.into_iter().filter(|rate| rate.times > 0);
        let words: Vec<String> = done.map(|rate| rate_of_turn(rate, knitting)).collect();
        words.join(", then ")
    };
    let [one, other] = turn;
    let of_one = over.min(one.times);
    let cut_short = [
        Rate { times: of_one, ..one },
        Rate {
            times: over - of_one,
            ..other
        },
    ];
    let (turn, end) = (in_a_row(turn), in_a_row(cut_short));
    match (turns, over) {
        (1, _) => fill_pattern_with("@, then @, then @", &[], &[start, &turn, &end]),
        (_, 0) => fill_pattern_with("@. Then @ over: @", &[], &[start, &times(turns), &turn]),
        _ => {
            let words = [start, &times(turns + 1), &turn];
            fill_pattern_with("@. Then @ over: @; # in all", &[times_behind + 1], &words)
        }
    }
}

/// The trade's phrase, behind what is done: "now, then every 8th row 8 times more". None where that takes more than two
/// rates, and where nothing is done.
pub fn phrase(schedule: &Schedule) -> Option<String> {
    let knitting = schedule.knitting;
    let rate = |each: Rate| rate(each, knitting);
    let more = |each: Rate| rate(each) + if each.times > 1 { " more" } else { "" };
    let start = match schedule.rows().next()?.row {
        1 => "now".into(),
        row => fill_pattern_with("in @ #", &[row], &[noun(knitting)]),
    };
    Some(match Rates::of(schedule) {
        Rates::Nothing | Rates::Listed => return None,
        Rates::Once => ["once, ", &start].concat(),
        Rates::One(only) if only.times == 1 => fill_pattern_with("@, then @", &[], &[&start, &rate(only)]),
        Rates::One(only) => fill_pattern_with("@, then @", &[], &[&start, &more(only)]),
        Rates::Two([one, other]) => {
            let words = [&*start, &more(one), &rate(other)];
            fill_pattern_with("@, then @, then @", &[], &words)
        }
        Rates::ByTurns { turn, times } => by_turns(&start, turn, times, knitting),
    })
}

/// How near the whole piece keeps to the straight line, or what is named of it: "At most 1 round (5 stitches) behind an
/// even slope."; "Each sleeve grows evenly, to the round."
pub fn drift(named: Option<&str>, drift: &Drift, each: u32) -> String {
    if drift.is_within_a_round() {
        return fill_pattern_with("@ grows evenly, to the round.", &[], &[named.unwrap_or("It")]);
    }
    let most = named.map_or_else(|| "At most".into(), |named| [named, ": at most"].concat());
    let (rounds, stitches) = drift.in_whole(each);
    let side = if drift.is_early() { "ahead of" } else { "behind" };
    let pattern = match stitches {
        0 => "@ # {round|rounds} @ an even slope.",
        _ => "@ # {round|rounds} (# {stitch|stitches}) @ an even slope.",
    };
    fill_pattern_with(pattern, &[rounds, stitches], &[&most, side])
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
mod tests;
