//! The words about projects, their steps and the sheet.

use crate::words::{intl, schedule};
use loopwright_project::{Reference, Totals, Trouble};

pub const TITLE: &str = "Project";
pub const UNNAMED: &str = "Unnamed project";
pub const CHOOSE: &str = "Project that is open";
pub const NAME: &str = "What do you call it?";
pub const NAME_EXAMPLE: &str = "Sunday pullover";
pub const INTRO: &str = "What you know is typed once, here. Each step takes it from here and follows when it changes.";

pub const KEEP: &str = "Keep in the project";
pub const KEEP_WHY: &str = "as a step that follows when your gauge or your sizes change";

pub const STEPS: &str = "Steps";
pub const NO_STEPS: &str = "No steps yet. Open a tool, and keep its answer in the project.";
pub const TO_TOOLS: &str = "To the tools";
pub const NO_SECTION: &str = "Not in a part yet";

pub const ABOUT_STEP: &str = "Its name, its part, and how often";
pub const STEP_NAME: &str = "Name of this step";
pub const SECTION: &str = "Part of the garment";
pub const SECTION_EXAMPLE: &str = "yoke, body, sleeve";
pub const AMOUNT: &str = "Knitted how often?";
pub const AMOUNT_WRONG: &str = "Type a whole number from 1 to 99.";
pub const NO_STEP: &str = "There is no such step in this project.";
pub const TO_PROJECT: &str = "Back to the project";

pub const UP: &str = "Up";
pub const DOWN: &str = "Down";
pub const TAKE_OUT: &str = "Take out";

pub const CHANGED: &str = "What moved";
pub const WAS: &str = "Was";
pub const IS: &str = "Is";
pub const SEEN: &str = "I have seen it";
pub const BACK_TO_WAS: &str = "Put the numbers back as they were";
pub const NOTHING: &str = "No answer";

pub const SCHEMATIC: &str = "The piece";
pub const SCHEMATIC_SCALE: &str =
    "To scale by your washed gauge, from the first row at the top; what is knitted in the round is laid out flat.";

pub const TOTALS: &str = "All of it";
pub const TOTALS_NONE: &str = "What the steps come to is added up here.";

pub const BESIDE: &str = "Beside another project or size";
pub const BESIDE_WHICH: &str = "Which one?";
pub const BESIDE_NONE: &str = "none";
pub const THIS_ONE: &str = "This one";
pub const DIFFERS: &str = "\u{2260}";

pub const PROJECTS: &str = "Your projects";
pub const NEW: &str = "Start another project";
pub const COPY: &str = "Copy";
pub const OPEN: &str = "Open";
pub const OPEN_NOW: &str = "open now";
pub const PUT_AWAY: &str = "Put away";
pub const IS_AWAY: &str = "put away";
pub const DELETE: &str = "Delete";
pub const IS_DELETED: &str = "deleted";
pub const HAVE_BACK: &str = "Have it back";
pub const FORGET: &str = "Forget it for good";

pub const DEMO: &str = "Look at an example";
pub const DEMO_WHY: &str = "An invented round-yoke pullover in five sizes, from the swatch to the last stitch. It opens as a project of its own.";

/// A step, and the part it stands under.
pub fn standing_under(name: &str, section: &str) -> String {
    match section {
        "" => name.to_owned(),
        section => format!("{name} ({section})"),
    }
}

/// A step of the same name as another.
pub fn numbered(name: &str, number: u32) -> String {
    format!("{name} {number}")
}

/// What a copy is called.
pub fn copy_of(name: &str) -> String {
    format!("{name}, copy")
}

/// What undoing does.
pub fn undo(what: &str) -> String {
    format!("Undo: {what}")
}

/// A project was brought in.
pub fn brought_in(name: &str) -> String {
    match name {
        "" => "brought in this project".into(),
        _ => format!("brought in \u{201c}{name}\u{201d}"),
    }
}

/// A step is taken out.
pub fn taking_out(name: &str) -> String {
    format!("took out \u{201c}{name}\u{201d}")
}

/// A step is moved.
pub fn moving(name: &str) -> String {
    format!("moved \u{201c}{name}\u{201d}")
}

/// A tap on a step, for those who do not see beside which it stands.
pub fn of_step(tap: &str, name: &str) -> String {
    format!("{tap}: {name}")
}

/// What a step counts, in a line: "96 to 320 stitches, 60 rounds or rows".
pub fn counts(totals: &Totals, times: u32) -> String {
    let mut counts = Vec::new();
    match (totals.before, totals.after) {
        (Some(before), Some(after)) if before != after => {
            counts.push(format!("{} to {} stitches", intl::number(before), intl::number(after)));
        }
        (_, Some(after)) => counts.push(format!("{} stitches", intl::number(after))),
        (Some(before), None) => counts.push(format!("{} stitches", intl::number(before))),
        (None, None) => {}
    }
    if let Some(rows) = totals.rows {
        counts.push(format!("{} rows or rounds", intl::number(rows)));
    }
    if times > 1 {
        counts.push(format!("{times} times"));
    }
    counts.join(", ")
}

/// The last count of a step is not the first one of the next.
pub fn does_not_meet(name: &str, after: u32, next: &str, before: u32) -> String {
    let [after, before] = [after, before].map(intl::number);
    format!("\u{201c}{name}\u{201d} ends with {after} stitches, and \u{201c}{next}\u{201d} begins with {before}.")
}

/// The tap that spaces the difference.
pub const SPACE_BETWEEN: &str = "Space them evenly";

/// How many stitches, and how wide they are.
pub fn stitches_wide(stitches: u32, wide: &str) -> String {
    format!("{} stitches, {wide}", intl::number(stitches))
}

/// How many rows, and how long they are.
pub fn rows_long(rows: u32, long: &str) -> String {
    [&schedule::rows(rows, false), ", ", long].concat()
}

/// A shape for those who do not see it.
pub fn told(name: &str, first: &str, last: &str, rows: &str) -> String {
    if first == last {
        format!("{name}: {first}, {rows}.")
    } else {
        format!("{name}: from {first}, to {last}, in {rows}.")
    }
}

/// Rows or rounds of all steps.
pub fn all_rows(rows: u64) -> String {
    format!(
        "{} rows or rounds over all steps that count them.",
        intl::number(u32::try_from(rows).unwrap_or(u32::MAX))
    )
}

/// Balls of all steps that count yarn, and what they use.
pub fn all_yarn(balls: u64, length: &str) -> String {
    match balls {
        1 => format!("1 ball of yarn, for {length} with the reserve."),
        balls => format!("{balls} balls of yarn, for {length} with the reserve."),
    }
}

/// The most stitches that are on the needle at once.
pub fn widest(stitches: u32) -> String {
    format!("{} stitches on the needle at the widest.", intl::number(stitches))
}

/// Why a step has no answer; `label` is what its field is called.
pub fn trouble(trouble: &Trouble, label: &str) -> String {
    match trouble {
        Trouble::NoSuchTool => "This version has no tool for this step. Its figures are kept.".into(),
        Trouble::Missing { reference, .. } => match reference {
            Reference::Fact(_) => format!("{label}: the project does not know it any more."),
            Reference::Step { .. } => format!("{label}: the step it comes from has no answer."),
            Reference::Gone(name) => format!("{label} came from \u{201c}{name}\u{201d}, which was taken out."),
        },
        Trouble::Circle { .. } => format!("{label} comes, by way of other steps, from this very step."),
        Trouble::Field { sentence, .. } => format!("{label}: {sentence}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_a_step_counts_is_said_in_a_line() {
        let totals = |before, after, rows| Totals {
            before,
            after,
            rows,
            ..Totals::default()
        };
        assert_eq!(
            counts(&totals(Some(96), Some(320), Some(60)), 1),
            "96 to 320 stitches, 60 rows or rounds"
        );
        assert_eq!(counts(&totals(None, Some(120), None), 2), "120 stitches, 2 times");
        assert_eq!(counts(&totals(Some(80), Some(80), None), 1), "80 stitches");
        assert_eq!(counts(&Totals::default(), 1), "");
    }
}
