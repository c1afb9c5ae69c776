//! What came of a line in a few words, as the table of lines says it.

use super::*;

/// What a line comes to for one size: the count after it, or why it does not come out and where.
pub(super) fn told(text: &str, worked: &Worked) -> String {
    let what = outcome(worked.outcome, worked.after);
    let place = worked.place.map(|place| format!(" at {}", place.text(text)));
    let otherwise = worked
        .otherwise
        .map(|other| format!("; or {}", outcome(other.outcome, other.after)));
    format!("{what}{}{}", place.unwrap_or_default(), otherwise.unwrap_or_default())
}

fn outcome(outcome: Outcome, after: u64) -> String {
    match outcome {
        Outcome::ComesOut => after.to_string(),
        Outcome::LeftOver {
            stitches,
            repeats: None,
        } => format!("{stitches} left"),
        Outcome::LeftOver {
            stitches,
            repeats: Some(repeats),
        } => format!("{stitches} left after {repeats} repeats"),
        Outcome::RunsOut { short, time } => format!("{short} short in time {time}"),
        Outcome::ToLast { wanted, leaves, .. } => format!("to last {wanted} leaves {leaves}"),
        Outcome::MakesNothing => "makes nothing".to_owned(),
        Outcome::NoMarker { ahead: None } => "no marker".to_owned(),
        Outcome::NoMarker { ahead: Some(ahead) } => format!("marker {ahead} on"),
        Outcome::PastMarker { short } => format!("{short} short of the marker"),
        Outcome::Nothing => "nothing there".to_owned(),
        Outcome::Differs { said, is } => format!("says {said} is {is}"),
        Outcome::NoSuchRow { row } => format!("no row {row}"),
        Outcome::OtherRows { named, made } => format!("names {named} rows makes {made}"),
        Outcome::ByLength => "by length".to_owned(),
        Outcome::NeverComesTo { wanted, before, after } => format!("never {wanted}, {before} then {after}"),
        Outcome::Endless => "endless".to_owned(),
        Outcome::Unread => "unread".to_owned(),
        Outcome::NotWorked => "not worked".to_owned(),
        Outcome::CannotTell => "cannot tell".to_owned(),
    }
}

/// What is wrong with a text, and where.
pub(super) fn fault(text: &str, fault: &Fault) -> String {
    let kind = match fault.kind {
        FaultKind::UnknownWord => "unknown".to_owned(),
        FaultKind::Twofold => "two meanings".to_owned(),
        FaultKind::OutOfPlace => "out of place".to_owned(),
        FaultKind::Number => "no such number".to_owned(),
        FaultKind::Sizes { found, wanted } => format!("{found} for {wanted} sizes"),
        FaultKind::HowOften => "how often".to_owned(),
        FaultKind::HowMany => "how many".to_owned(),
        FaultKind::Closing => "closing".to_owned(),
        FaultKind::Opening => "opening".to_owned(),
        FaultKind::Empty => "empty".to_owned(),
        FaultKind::Star => "no asterisk".to_owned(),
        FaultKind::Repeat => "never repeated".to_owned(),
        FaultKind::Rows => "rows".to_owned(),
        FaultKind::TooDeep => "too deep".to_owned(),
        FaultKind::Simple => "no simple bracket".to_owned(),
        FaultKind::Time => "which time".to_owned(),
    };
    match fault.place.text(text) {
        "" => {
            let before = text.get(..fault.place.start).unwrap_or_default();
            format!("{kind} behind {}", before.lines().last().unwrap_or_default())
        }
        word => format!("{kind} at {word}"),
    }
}
