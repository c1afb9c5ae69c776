//! What could not be read: where, and what is looked for there.

use super::super::intl::{fill_pattern, fill_pattern_with};
use super::super::page::quoted;
use super::count;
use loopwright::written::{Fault, FaultKind};

/// Whether it is a word that she may name as a stitch of hers.
pub const fn is_word(fault: &Fault) -> bool {
    matches!(fault.kind, FaultKind::UnknownWord | FaultKind::Twofold)
}

/// What may be meant by a word that means several things.
fn meant(word: &str) -> &'static str {
    match word.to_lowercase().as_str() {
        "inc" => "m1 or kfb",
        "dec" => "k2tog or ssk",
        "c/o" => "CO or BO",
        "k1b" | "kb" => "k1 tbl",
        _ => "yo or wyif",
    }
}

/// What is wrong with a place of the text.
pub fn fault(fault: &Fault, text: &str) -> String {
    let place = fault.place.text(text).trim();
    let what = match fault.kind {
        FaultKind::UnknownWord => "this word is not known.".into(),
        FaultKind::Twofold => fill_pattern_with(
            "this means one thing to some and another to others. Write what is meant, such as @.",
            &[],
            &[meant(place)],
        ),
        FaultKind::OutOfPlace => "this says nothing here.".into(),
        FaultKind::Number => "this is no whole number of stitches.".into(),
        FaultKind::Sizes { found, wanted } => fill_pattern(
            "this has # {number|numbers}, and there {is|are} # {size|sizes}.",
            &[count(found as u64), count(wanted as u64)],
        ),
        FaultKind::HowOften => "how often is not said: “3 times”, “to end”, “to last 4 sts”.".into(),
        FaultKind::HowMany => "how many is not said.".into(),
        FaultKind::Closing => "a bracket is not closed.".into(),
        FaultKind::Opening => "a bracket is closed that was not opened.".into(),
        FaultKind::Empty => "nothing stands here to be repeated.".into(),
        FaultKind::Star => "there is no asterisk before it to repeat from.".into(),
        FaultKind::Repeat => "nothing is repeated from this asterisk.".into(),
        FaultKind::Rows => "which rows is not said.".into(),
        FaultKind::TooDeep => "brackets stand in brackets too deep.".into(),
        FaultKind::Simple => {
            "before “but” stands a bracket of plain runs, one of them of the stitch that is other.".into()
        }
        FaultKind::Time => "that is none of the times the bracket is worked, in their order.".into(),
    };
    match place {
        "" => fill_pattern_with("At the end of the line @", &[], &[&what]),
        _ => fill_pattern_with("@: @", &[], &[&quoted(place), &what]),
    }
}
