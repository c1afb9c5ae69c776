//! The words of the page that is knitted from: which row, what to do in it, what comes next, and how far she is.

use super::intl::{fill_pattern, fill_pattern_with, stitches};
use super::schedule::{noun, so_many};
use loopwright::follow::learnt::Quarters;
use loopwright::shaping::Knitting;
use loopwright::terms::{Hand, Side};

pub const TITLE: &str = "Knit from it";
pub const KNIT_THIS: &str = "Knit this";
pub const KNIT_WHY: &str = "row by row, with your place kept";
pub const BACK_TO_ANSWER: &str = "Back to the answer";
pub const NOTHING_TO_KNIT: &str =
    "There are no rows to knit here yet. Fill in the tool until it has an answer, and come back.";
pub const CLASS_SCREEN: &str = "Large, for the room";
pub const CLASS_SCREEN_OFF: &str = "Small again";

pub const ROWS_HEADING: &str = "Coming next";
pub const PAST: &str = "Done so far";
pub const WRITTEN: &str = "Stitch by stitch";
pub const HISTORY: &str = "What you tapped";
pub const NOTHING_TAPPED: &str = "Nothing yet.";
pub const TAKE_BACK: &str = "Take back the last tap";
pub const MORE_TAPS: &str = "Show earlier ones";
pub const SEEN: &str = "I have seen it";
pub const DONE: &str = "Done";
pub const COUNTERS: &str = "Two sleeves at once: counters beside each other";
pub const COMFORT: &str = "Screen, buzz, rest, and your hand";
pub const JUMP_GO: &str = "Go there";
pub const AGAIN_FROM_THE_START: &str = "Begin again at the first row";
pub const COUNTER_MORE: &str = "Another counter beside it";
pub const COUNTER_LESS: &str = "Put the last counter away";
pub const KEYS: &str = "A keyboard or a page turner counts too: space, enter, the right or down arrow and page down go on; the left or up arrow, page up and backspace go back.";
pub const REPEAT_DONE: &str = "A repeat is done";
pub const REPEAT_BACK: &str = "One repeat back";
pub const START_TIMING: &str = "I begin a row now";
pub const STARTED: &str = "Timing: tap when the row is done.";
pub const NO_PACE: &str = "Your pace is learnt from your taps. A pause of more than five minutes is a rest and not counted (common practice, no source).";
pub const BOTH_COUNTED: &str = "Two taps in a moment: both counted.";
pub const TAKE_SECOND_BACK: &str = "Take the second back";
pub const YES_IT_DOES: &str = "Yes";
pub const NO_OTHER_SIDE: &str = "No, the other side";
pub const NO_MORE: &str = "Nothing more happens: plain to the end.";
pub const A_BOX_FOR_TEN: &str = " · a box for ten of them";
pub const ON_NEXT: &str = "Then, in the same part:";

pub const STAY_AWAKE: &str = "Keep the screen awake";
pub const BUZZ: &str = "A short buzz at each tap";
pub const HAND: &str = "I knit";
pub const HAND_WHY: &str = "Left-handed, M1L and M1R change places, and drawings run from left to right. The order of the stitches and all counts stay.";
pub const REST_REMINDER: &str = "Remind me to rest my hands";

pub const AWAKE_OFF: &str = "The screen goes dark as your device is set.";
pub const AWAKE_ASKING: &str = "The device is asked …";
pub const AWAKE_ON: &str = "The screen stays awake as long as this page is seen.";
pub const AWAKE_REFUSED: &str =
    "The device does not allow it now; perhaps its battery is low. The screen goes dark as usual.";
pub const AWAKE_LOST: &str = "The device has let the screen go. It is asked again when you come back to this page.";
pub const AWAKE_ABSENT: &str = "This browser cannot keep the screen awake. The settings of your device can.";

/// The hand that leads.
pub const fn hand(hand: Hand) -> &'static str {
    match hand {
        Hand::Right => "right-handed",
        Hand::Left => "left-handed",
    }
}

/// Above the number that is tapped: "Round", "Row (RS)".
pub fn row_and_side(knitting: Knitting, side: Side) -> &'static str {
    match (knitting, side) {
        (Knitting::Round, _) => "Round",
        (Knitting::Flat { .. }, Side::Right) => "Row, right side (RS)",
        (Knitting::Flat { .. }, Side::Wrong) => "Row, wrong side (WS)",
    }
}

/// A row by its number: "Round 24", "Row 24 (WS)".
pub fn row(number: u32, knitting: Knitting, side: Side) -> String {
    let pattern = match (knitting, side) {
        (Knitting::Round, _) => "Round #",
        (Knitting::Flat { .. }, Side::Right) => "Row # (RS)",
        (Knitting::Flat { .. }, Side::Wrong) => "Row # (WS)",
    };
    fill_pattern(pattern, &[number])
}

/// Several plain rows in a line: "Rounds 25 to 33: plain".
pub fn plain_rows(first: u32, last: u32, knitting: Knitting) -> String {
    let (one, several) = match knitting {
        Knitting::Round => ("Round #: plain", "Rounds # to #: plain"),
        Knitting::Flat { .. } => ("Row #: plain", "Rows # to #: plain"),
    };
    match first == last {
        true => fill_pattern(one, &[first]),
        false => fill_pattern(several, &[first, last]),
    }
}

/// What to do in a row in which nothing happens.
pub const fn plain(knitting: Knitting) -> &'static str {
    match knitting {
        Knitting::Round => "Work this round plain.",
        Knitting::Flat { .. } => "Work this row plain.",
    }
}

/// The way back to the place where she is: "Knit on: 24 of 60 rounds are done".
pub fn knit_on(done: u32, rows: u32, knitting: Knitting) -> String {
    fill_pattern_with("Knit on: # of @ done", &[done], &[&so_many(rows, knitting)])
}

/// Before the number of a row to go to.
pub fn jump(knitting: Knitting) -> String {
    fill_pattern_with("Go to @", &[], &[noun(knitting)])
}

/// What to type there.
pub fn jump_wrong(rows: u32) -> String {
    fill_pattern("Type a whole number from 1 to #.", &[rows])
}

/// A row and what happens in it: "Round 24: Increase round."
pub fn row_and_doing(row: &str, doing: &str) -> String {
    fill_pattern_with("@: @", &[], &[row, doing])
}

/// The count after a row, in a list.
pub fn then_count(after: u32) -> String {
    fill_pattern(" → # {stitch|stitches}", &[after])
}

/// The number of a row as it is tapped.
pub fn count(row: u32) -> String {
    fill_pattern("#", &[row])
}

/// How many there are: "of 60".
pub fn of(rows: u32) -> String {
    fill_pattern("of #", &[rows])
}

/// The stitches before a row and after it.
pub fn on_needle(before: u32, after: u32) -> String {
    match before == after {
        true => fill_pattern("# {stitch|stitches} on the needle", &[before]),
        false => fill_pattern("# {stitch|stitches} before, # after", &[before, after]),
    }
}

/// When something happens again, and what: "In round 34, after 9 plain rounds: Increase round."
pub fn next(row: u32, rows_between: u32, knitting: Knitting, doing: &str) -> String {
    let when = match rows_between {
        0 => fill_pattern_with("In the @ after this one, @ #", &[row], &[noun(knitting); 2]),
        _ => fill_pattern_with(
            "In @ #, after @",
            &[row],
            &[noun(knitting), &plain_between(rows_between, knitting)],
        ),
    };
    [&when, ": ", doing].concat()
}

fn plain_between(rows: u32, knitting: Knitting) -> String {
    let pattern = match knitting {
        Knitting::Round => "# plain {round|rounds}",
        Knitting::Flat { .. } => "# plain {row|rows}",
    };
    fill_pattern(pattern, &[rows])
}

/// All rows are done.
pub fn all_done(rows: u32, knitting: Knitting, after: Option<u32>) -> String {
    let done = match rows {
        1 => "Done".into(),
        _ => fill_pattern_with("All @ are done", &[], &[&so_many(rows, knitting)]),
    };
    match after {
        Some(after) => fill_pattern_with("@: @ on the needle.", &[], &[&done, &stitches(after)]),
        None => done + ".",
    }
}

/// More rows were tapped than the answer has.
pub fn past_the_end(more: u32, knitting: Knitting) -> String {
    fill_pattern_with("That is @ more than the answer has.", &[], &[&so_many(more, knitting)])
}

/// How far she is, by stitches: in hundredths.
pub fn progress(hundredths: u32) -> String {
    fill_pattern("# % of the stitches are worked", &[hundredths])
}

/// The same where stitches are not known.
pub fn progress_in_rows(done: u32, rows: u32, knitting: Knitting) -> String {
    fill_pattern_with("# of @ done", &[done], &[&so_many(rows, knitting)])
}

/// What is left at her pace.
pub fn time_left(left: Quarters) -> String {
    match (left.least_quarters, left.most_quarters) {
        (_, 0 | 1) => "Left at your pace: less than 1/4 of an hour.".into(),
        (0, most) => fill_pattern_with("Left at your pace: up to @.", &[], &[&hours(most)]),
        (least, most) if least == most => fill_pattern_with("Left at your pace: about @.", &[], &[&hours(most)]),
        (least, most) => fill_pattern_with("Left at your pace: @ to @.", &[], &[&hours(least), &hours(most)]),
    }
}

/// Takes her pace as the one by which the project's hours are counted.
pub fn pace_for_project(stitches: u32) -> String {
    fill_pattern(
        "Count the project\u{2019}s hours by it: # {stitch|stitches} a minute",
        &[stitches],
    )
}

/// Hours, in quarters: "1 1/4 hours", "3/4 of an hour".
fn hours(quarters: u64) -> String {
    let whole = u32::try_from(quarters / 4).unwrap_or(u32::MAX);
    let pattern = match (whole, quarters % 4) {
        (0, 1) => "1/4 of an hour",
        (0, 2) => "half an hour",
        (0, _) => "3/4 of an hour",
        (_, 0) => "# {hour|hours}",
        (_, 1) => "# 1/4 hours",
        (_, 2) => "# 1/2 hours",
        (_, _) => "# 3/4 hours",
    };
    fill_pattern(pattern, &[whole])
}

/// What the place to tap says to those who do not see it.
pub fn tap(row: &str, count: u32, counters: u32) -> String {
    match counters {
        1 => fill_pattern_with("@ is done", &[], &[row]),
        _ => fill_pattern_with("Counter #: @ is done", &[count], &[row]),
    }
}

/// Below the number that is tapped. What is one row only, such as a cast-on, is not called a row.
pub fn tap_when_done(rows: u32, knitting: Knitting) -> String {
    match rows {
        1 => "Tap when it is done".into(),
        _ => fill_pattern_with("Tap when this @ is done", &[], &[noun(knitting)]),
    }
}

/// The way back.
pub fn back(rows: u32, knitting: Knitting) -> String {
    match rows {
        1 => "Not done yet".into(),
        _ => fill_pattern_with("One @ back", &[], &[noun(knitting)]),
    }
}

/// One of several counters.
pub fn counter(count: u32) -> String {
    fill_pattern("Counter #", &[count])
}

/// Asked when flat work is taken up again.
pub fn does_it_face_you(row: u32, side: Side) -> String {
    let pattern = match side {
        Side::Right => "Row # is knitted with the right side towards you. Does it face you now?",
        Side::Wrong => "Row # is knitted with the wrong side towards you. Does it face you now?",
    };
    fill_pattern(pattern, &[row])
}

/// What it means where the other side faces her.
pub fn other_side(row: u32) -> String {
    match row {
        0 | 1 => "Then turn the work before you begin, or a row is done that you have not tapped.".into(),
        _ => fill_pattern("Then you are a row further on or a row behind: not in row #.", &[row]),
    }
}

/// I am in this row.
pub fn i_am_in(row: u32, knitting: Knitting) -> String {
    fill_pattern_with("I am in @ #", &[row], &[noun(knitting)])
}

/// The figures have changed since the first tap.
pub fn changed(was: &str, is: &str, row: &str) -> String {
    fill_pattern_with(
        "When you began, this was @. Now it is @. Your place is still @.",
        &[],
        &[was, is, row],
    )
}

/// What is knitted in a few words: "60 rounds, from 96 stitches to 320".
pub fn extent(rows: u32, knitting: Knitting, stitches: Option<(u32, u32)>) -> String {
    let rows = so_many(rows, knitting);
    match stitches {
        Some((before, after)) => fill_pattern_with("@, from # {stitch|stitches} to #", &[before, after], &[&rows]),
        None => rows,
    }
}

/// How many repeats of a row are done: "3 of 12 repeats are done".
pub fn repeats(done: u32, times: u32) -> String {
    fill_pattern("# of # {repeat is|repeats are} done", &[done, times])
}

/// What is worked in this repeat: "Repeat 3 of 12: K9, k2tog"; with what stands before it "First K4. Then repeat 1 of 12: ..."
pub fn this_repeat(repeat: u32, times: u32, first: &str, each: &str) -> String {
    match first {
        "" => fill_pattern_with("Repeat # of #: @", &[repeat, times], &[each]),
        _ => fill_pattern_with("First @. Then repeat # of #: @", &[repeat, times], &[first, each]),
    }
}

/// What is left of a row behind its last repeat.
pub fn to_the_end(left: &str) -> String {
    match left {
        "" => "All repeats of this row are done.".into(),
        _ => fill_pattern_with("To the end: @", &[], &[left]),
    }
}

/// The same in short, on the place that is tapped.
pub fn repeats_short(done: u32, times: u32) -> String {
    fill_pattern("# / #", &[done, times])
}

/// One tap in the list of them: when, and what.
pub fn tapped(time: &str, what: &str) -> String {
    fill_pattern_with("@ · @", &[], &[time, what])
}

/// A row was done.
pub fn tapped_on(row: u32, knitting: Knitting) -> String {
    fill_pattern_with("@ # done", &[row], &[noun(knitting)])
}

/// She went back or on to a row.
pub fn tapped_to(row: u32, knitting: Knitting) -> String {
    fill_pattern_with("to @ #", &[row], &[noun(knitting)])
}

pub const TAPPED_QUICK: &str = ", a moment after the one before";
pub const TAPPED_REPEAT: &str = "a repeat";
pub const TAPPED_REPEAT_BACK: &str = "a repeat back";
pub const TAPPED_START: &str = "a row begun";

/// She has knitted without a rest for so long.
pub fn rest(minutes: u32) -> String {
    fill_pattern(
        "You have been at it for # {minute|minutes}. Put it down for a moment; stretch hands and shoulders, and look far away. If anything hurts, stop for today. (Common practice, no source.)",
        &[minutes],
    )
}

/// What the drawing shows.
pub fn drawing(extent: &str, done: &str) -> String {
    fill_pattern_with(
        "The piece row by row, the first one at the top: @. @.",
        &[],
        &[extent, done],
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn hours_are_said_in_quarters() {
        let left = |least_quarters, most_quarters| {
            time_left(Quarters {
                least_quarters,
                most_quarters,
            })
        };
        assert_eq!(left(0, 1), "Left at your pace: less than 1/4 of an hour.");
        assert_eq!(left(0, 3), "Left at your pace: up to 3/4 of an hour.");
        assert_eq!(left(2, 5), "Left at your pace: half an hour to 1 1/4 hours.");
        assert_eq!(left(4, 4), "Left at your pace: about 1 hour.");
    }

    #[test]
    fn what_is_next_is_said_with_the_plain_rounds_before_it() {
        assert_eq!(
            next(34, 9, Knitting::Round, "Increase."),
            "In round 34, after 9 plain rounds: Increase."
        );
        assert_eq!(
            next(2, 0, Knitting::Round, "Increase."),
            "In the round after this one, round 2: Increase."
        );
        assert_eq!(plain_rows(3, 3, Knitting::Round), "Round 3: plain");
    }
}
