//! The words about steps that are knitted at the same time.

use super::intl::number;
use loopwright::follow::Meeting;

pub const ALONGSIDE: &str = "Knitted at the same time as";
pub const NONE: &str = "no other step";
pub const FROM_ROW: &str = "From which of its rows or rounds?";
pub const FROM_ROW_EXAMPLE: &str = "1";
pub const WHY: &str = "Two shapings at once, such as armhole and neck: the stitches on the needle are added up.";
pub const GONE: &str = "a step that is not there any more";

pub const NO_ROW: &str = "Type the number of a row, such as 21.";
pub const CIRCLE: &str = "These steps are each knitted at the same time as the other, so none of them comes first. Choose another one, or none.";

/// What a step is knitted at the same time as.
pub fn along(name: &str, row: u32) -> String {
    match row {
        1 => format!("At the same time as {}, from its first row on.", quoted(name)),
        row => format!("At the same time as {}, from its row {} on.", quoted(name), number(row)),
    }
}

/// The step that it is knitted with was taken out; with the name it had, where that is known.
pub fn gone(name: Option<&str>) -> String {
    match name {
        Some(name) => format!(
            "It was knitted at the same time as {}, which was taken out. Choose another step, or none.",
            quoted(name)
        ),
        None => "The step that it was knitted at the same time as is not there. Choose another one, or none.".into(),
    }
}

/// The step that it is knitted with stands under another part now.
pub fn other_part(name: &str) -> String {
    format!(
        "{} stands under another part of the garment now. Choose a step of this part, or none.",
        quoted(name)
    )
}

/// It begins behind the last row of the other one.
pub fn behind(name: &str, rows: u32) -> String {
    match rows {
        1 => format!("{} has 1 row only. Type 1.", quoted(name)),
        rows => format!(
            "{} has {rows} rows. Type {rows} or less.",
            quoted(name),
            rows = number(rows)
        ),
    }
}

/// One is knitted more often than the other.
pub fn amounts(name: &str) -> String {
    format!(
        "{} is not knitted as often as this one, so the two cannot be knitted at the same time. Make the two the same.",
        quoted(name)
    )
}

/// What steps come to that are knitted at the same time.
pub fn at_the_end(names: &[String], rows: u32, after: Option<u32>) -> String {
    let rows = format!("{} at the same time: {} rows in all", all(names), number(rows));
    match after {
        Some(1) => format!("{rows}, and 1 stitch on the needle at the end."),
        Some(after) => format!("{rows}, and {} stitches on the needle at the end.", number(after)),
        None => format!("{rows}."),
    }
}

/// The first one does not say with how many stitches it begins.
pub fn no_stitches(name: &str) -> String {
    format!(
        "Type in {} how many stitches are on the needle: then they are counted for all of it.",
        quoted(name)
    )
}

/// Steps that are knitted at the same time, of which one is not told row by row.
pub fn untold(names: &[String], untold: &str) -> String {
    format!(
        "{} are knitted at the same time. {} cannot be told row by row, so their stitches are not added up here.",
        all(names),
        quoted(untold)
    )
}

/// The row that cannot be knitted.
pub fn meet(meeting: &Meeting) -> String {
    let [row, before, takes] = [meeting.row, meeting.before, meeting.takes].map(number);
    let met = if meeting.takes > meeting.before {
        format!("{takes} stitches would be worked away in it, and only {before} are left on the needle before it.")
    } else {
        format!("it works away all {before} stitches that are left, and there are rows to come.")
    };
    format!("They meet in row {row}: {met}")
}

/// A track begins on the other side.
pub fn turned(name: &str, first: &str, row: u32) -> String {
    format!(
        "The first row of {} and row {} of {} face different sides. Begin it a row earlier or later.",
        quoted(name),
        number(row),
        quoted(first)
    )
}

/// What steps that are knitted at the same time leave is not what the next one begins with.
pub fn do_not_meet(names: &[String], after: u32, next: &str, before: u32) -> String {
    format!(
        "{} end with {} stitches, and {} begins with {}.",
        all(names),
        number(after),
        quoted(next),
        number(before)
    )
}

/// Names one after the other.
pub fn all(names: &[String]) -> String {
    match names {
        [] => String::new(),
        [name] => quoted(name),
        [others @ .., last] => {
            let others: Vec<String> = others.iter().map(|name| quoted(name)).collect();
            format!("{} and {}", others.join(", "), quoted(last))
        }
    }
}

/// A name as it stands in a sentence.
pub fn quoted(name: &str) -> String {
    format!("\u{201c}{name}\u{201d}")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn where_tracks_meet_is_said_with_its_counts() {
        let meet_at = |takes| {
            meet(&Meeting {
                row: 48,
                before: 5,
                takes,
            })
        };
        assert_eq!(
            meet_at(6),
            "They meet in row 48: 6 stitches would be worked away in it, and only 5 are left on the needle before it."
        );
        assert_eq!(
            meet_at(5),
            "They meet in row 48: it works away all 5 stitches that are left, and there are rows to come."
        );
    }

    #[test]
    fn names_stand_one_after_the_other() {
        let names = ["Armhole", "Neck", "Dart"].map(str::to_owned);
        assert_eq!(all(&names), "“Armhole”, “Neck” and “Dart”");
        assert_eq!(
            at_the_end(&names[..2], 60, Some(28)),
            "“Armhole” and “Neck” at the same time: 60 rows in all, and 28 stitches on the needle at the end."
        );
    }
}
