//! The words about what the whole project comes to: stitches, hours, cords, and the yarn's sections.

use super::intl::number;
use super::tracks::all;
use loopwright::follow::pace::Hours;

pub const PACE: &str = "How many stitches do you knit in a minute?";
pub const PACE_EXAMPLE: &str = "25";
pub const PACE_WRONG: &str = "Type a whole number of stitches, from 1 to 200.";
pub const PACE_USUAL: &str = "15 to 40 are usual, fewer in cables and ribbing (common practice, no source).";
pub const ON_TOP: &str = "That is from the bare stitches to half as much again, for turning, counting and looking things up (common practice, no source). Seams and ends are not in it.";

pub const TIME_IT: &str = "Time it";
pub const TIMED_STITCHES: &str = "Stitches to knit while it runs";
pub const START: &str = "Start";
pub const STOP: &str = "Stop";
pub const TIME_HOW: &str = "Tap \u{201c}Start\u{201d}, knit so many stitches of one row, and tap \u{201c}Stop\u{201d}: that becomes your pace.";
pub const RUNNING: &str = "It runs. Knit, then tap \u{201c}Stop\u{201d}.";
pub const NO_PACE: &str =
    "That was too short or too long to be a pace of 1 to 200 stitches a minute. Nothing was changed.";
pub const STITCHES_WRONG: &str = "Type a whole number of stitches from 1 to 10,000 first.";

pub const CORDS: &str = "Cords over all of it:";

pub const YARN_FROM_STEPS: &str = "Make the yarn\u{2019}s sections from these steps";
pub const YARN_HOW: &str = "The first begins with a cast-on, the others go on from live stitches, and none is bound off: what is otherwise, set in the yarn step.";
pub const YARN_REPLACES: &str = "The sections that the yarn step has now are replaced; you can undo it.";
pub const FILLED_YARN: &str = "made the yarn\u{2019}s sections from the steps";
pub const YARN_STEP: &str = "Yarn from the steps";
pub const YARN_PART: &str = "Yarn";

pub const PART_UP: &str = "Part up";
pub const PART_DOWN: &str = "Part down";

/// The stitches of all steps that count them.
pub fn stitches(stitches: u64) -> String {
    match clamped(stitches) {
        1 => "1 stitch worked in them.".into(),
        stitches => format!("{} stitches worked in them.", number(stitches)),
    }
}

/// The steps whose stitches are not counted.
pub fn uncounted(names: &[String]) -> String {
    match names {
        [_] => format!(
            "1 step has rows whose stitches are not known here and not counted: {}.",
            all(names)
        ),
        names => format!(
            "{} steps have rows whose stitches are not known here and not counted: {}.",
            names.len(),
            all(names)
        ),
    }
}

/// Those of them that are knitted already.
pub fn knitted(stitches: u64) -> String {
    match clamped(stitches) {
        1 => "1 of these stitches is knitted.".into(),
        stitches => format!("{} of these stitches are knitted.", number(stitches)),
    }
}

/// How long it takes.
pub fn hours(hours: Hours, pace: u32) -> String {
    let pace = match pace {
        1 => "1 stitch a minute".into(),
        pace => format!("{} stitches a minute", number(pace)),
    };
    match range(hours) {
        (Some(least), most) => format!("{least} to {most}, at {pace}."),
        (None, most) => format!("Up to {most}, at {pace}."),
    }
}

/// How long the rest takes.
pub fn hours_left(left: Hours) -> String {
    match range(left) {
        (Some(least), most) => format!("{least} to {most} are left."),
        (None, most) => format!("Up to {most} left."),
    }
}

/// The least, where there is one, and the most with its noun: `20`, `35 hours`; `an hour`.
fn range(hours: Hours) -> (Option<String>, String) {
    let [least, most] = [hours.least, hours.most].map(clamped);
    match (least, most) {
        (0, 1) => (None, "an hour".into()),
        (0, most) => (None, format!("{} hours", number(most))),
        (least, most) => (Some(number(least)), format!("{} hours", number(most))),
    }
}

/// A cord, and how many steps ask for it.
pub fn cord(called: &str, steps: u32) -> String {
    match steps {
        1 => called.to_owned(),
        steps => format!("{called} (in {} steps)", number(steps)),
    }
}

/// The cords of all steps.
pub fn cords(cords: &[String]) -> String {
    format!("{CORDS} {}.", cords.join(", "))
}

/// The sections that would be made.
pub fn sections(count: usize) -> String {
    match count {
        1 => "1 section: its stitches and rows follow the step.".into(),
        count => format!("{count} sections: their stitches and rows follow the steps."),
    }
}

/// Steps with rows that are in no section.
pub fn left_out(names: &[String]) -> String {
    format!(
        "Not among them: {}, because it is not known on how many stitches, or because it is knitted at the same time as another step.",
        all(names)
    )
}

fn clamped(count: u64) -> u32 {
    u32::try_from(count).unwrap_or(u32::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn hours_are_a_range_and_never_minutes() {
        let said = |least, most| hours(Hours { least, most }, 25);
        assert_eq!(said(20, 35), "20 to 35 hours, at 25 stitches a minute.");
        assert_eq!(said(0, 1), "Up to an hour, at 25 stitches a minute.");
        assert_eq!(said(0, 2), "Up to 2 hours, at 25 stitches a minute.");
    }
}
