//! The words around every tool: headings, buttons, and what may be said about the storage.

use super::intl::fill_pattern_with;
use loopwright::tables::Certainty;

pub const NAME: &str = "Loopwright";
pub const HOME: &str = "All tools";
pub const ABOUT: &str = "About";
pub const SKIP: &str = "Skip to the page";
pub const MORE: &str = "More about this";
/// Before the choice of the question, where a tool answers two.
pub const WANTED: &str = "What do you want to know?";
pub const CLEAR_THESE: &str = "Clear";

/// A field and what stands in it.
pub fn value(label: &str, value: &str) -> String {
    fill_pattern_with("@ @", &[], &[label, value])
}

/// Letters of a stored text that are enough to know it by where it is quoted.
const QUOTED: usize = 32;

/// What somebody wrote that is nothing here, as it is quoted: of a long text its beginning.
pub fn quoted(text: &str) -> String {
    let text = text.trim();
    match text.char_indices().nth(QUOTED) {
        Some((end, _)) => format!("“{}…”", &text[..end]),
        None => format!("“{text}”"),
    }
}

/// What is set in a folded part of the question.
pub fn set(values: &[String]) -> String {
    fill_pattern_with("Set here: @.", &[], &[&values.join(", ")])
}

/// What has to change in a field that a fold hides.
pub fn of_field(label: &str, sentence: &str) -> String {
    format!("{label}: {sentence}")
}

/// Beside an answer that is older than what is typed now: the numbers it answers, each with the label of its field. A
/// number that is alone is named by it, a list is known without: one line has room for it.
pub fn still_for(values: &[(&str, String)]) -> String {
    match values {
        [] => "This is still the answer from before.".into(),
        [(label, only)] => {
            let is_long = only.chars().count() > NAMED;
            let only = if is_long {
                begun(only)
            } else {
                value(label, &begun(only))
            };
            fill_pattern_with("This is still the answer for @.", &[], &[&only])
        }
        values => {
            let values: Vec<String> = values.iter().map(|(_, value)| begun(value)).collect();
            fill_pattern_with("This is still the answer for @.", &[], &[&listed(&values)])
        }
    }
}

/// Letters of a text that are enough to know it by, and those of one that needs no label.
const ENOUGH: usize = 20;
const NAMED: usize = 10;

/// A text, or the beginning of a long one, such as a list of sizes.
fn begun(text: &str) -> String {
    match text.char_indices().nth(ENOUGH) {
        Some((end, _)) => [text[..end].trim_end(), "…"].concat(),
        None => text.to_owned(),
    }
}

/// `72`, `72 and 16`, `72, 16 and 4`.
pub fn listed(values: &[String]) -> String {
    match values {
        [] => String::new(),
        [only] => only.clone(),
        [first @ .., last] => [&first.join(", "), " and ", last].concat(),
    }
}

pub const MEND: &str = "First mend what is marked in the question.";
pub const WORKING: &str = "The working";
pub const NOTES: &str = "Good to know";
pub const MEANINGS: &str = "What the abbreviations mean";
pub const CLEAR: &str = "Start afresh";
pub const COPY_LINK: &str = "Copy link";
pub const COPIED: &str = "Link copied";
/// A pattern is somebody's work, and stays where it is.
pub const COPIED_BUT_PATTERN: &str = "Link copied, without the text of your pattern";
/// The clipboard refused, or did not answer.
pub const COPY_THIS: &str = "The clipboard did not take the link. Copy it by hand:";
pub const PRINT: &str = "Print";
pub const USE: &str = "Use";
pub const PUT_BACK: &str = "Put mine back";
/// Where what lay there came with a link and was only looked at.
pub const PUT_BACK_LOOKED_AT: &str = "Back to the link before";
pub const UPDATE: &str = "A new version is ready. Your figures stay as they are.";
pub const UPDATE_NOW: &str = "Use it now";
pub const LOST: &str = "There is no page at this address.";

/// A page around this one asks with a name that no field has.
pub const NO_SUCH_FIELD: &str = "Nothing of this name is asked here.";

pub const KEPT: &str = "Kept on this device";
/// All is kept, but for the text of a pattern that she has not said to keep.
pub const KEPT_BUT_PATTERN: &str = "Kept on this device, all but the text of your pattern";
pub const KEPT_BESIDE_FILE: &str = "Kept in this browser on this computer, not in the file";
pub const COPY_BEFORE_CLOSING: &str = "Save a copy before you close";
pub const BRING_BACK: &str = "Bring one back";
pub const KEEPING: &str = "Keeping…";
pub const NOTHING_KEPT_INSIDE: &str = "Nothing is kept inside another page";

pub const KEPT_IN_DOUBT: &str =
    "The storage failed once: save a copy. After such a failure a browser may lose what it says it keeps.";
pub const SUPERSEDED: &str =
    "A newer version of this page is open in another window. What you typed is kept. Reload to go on.";
pub const SUPERSEDED_NOT_KEPT: &str = "A newer version of this page is open in another window, so what you typed last is not kept. Save a copy, then reload to go on.";
pub const KEPT_BY_NEWER: &str = "Not kept: a newer version of this page was opened on this device, and this one cannot read what it keeps. Nothing of that is changed. Reload to get the newer one.";
pub const CLEARED: &str =
    "What was kept on this device was cleared. What is on this page is still here, and is not kept.";
pub const KEEP_ANEW: &str = "Keep it again";
pub const SAVE_COPY: &str = "Save a copy";
pub const RELOAD: &str = "Reload";

/// What was kept was cleared, and could not be kept again.
pub fn cleared_and_not_kept(why: &str) -> String {
    fill_pattern_with(
        "What was kept on this device was cleared. What is on this page is still here, and could not be kept: @",
        &[],
        &[why],
    )
}

/// Something in the part of the question that is folded below this title is wrong.
pub fn under_fold(title: &str) -> String {
    fill_pattern_with(
        "Look under “@”: a figure there is missing or has to change.",
        &[],
        &[title],
    )
}

/// The last changes are on this page but could not be kept.
pub fn not_kept_yet(why: &str) -> String {
    fill_pattern_with("Not kept: @ The next change tries again.", &[], &[why])
}

/// There is no storage.
pub fn kept_in_memory_only(why: &str) -> String {
    fill_pattern_with("Not kept: @ All works until you close the page.", &[], &[why])
}

pub const STORAGE_DENIED: &str = "this browser does not let pages store anything.";
pub const STORAGE_FULL: &str = "this browser says that its storage is full.";
pub const STORAGE_SLOW: &str = "the storage of this browser does not answer.";
pub const STORAGE_NEWER: &str = "a newer version of this page has the storage.";
pub const STORAGE_CLEARED: &str = "the storage of this browser was cleared.";
pub const STORAGE_DROPPED: &str = "the browser closed its storage.";
pub const STORAGE_INSIDE: &str = "this page is shown inside another.";

/// Why, in the browser's own words.
pub fn storage_broken(what: &str) -> String {
    fill_pattern_with("the storage of this browser failed (@).", &[], &[what])
}

pub const WILL_NOT_FORGET: &str = "This browser has promised not to clear it on its own.";
pub const MAY_FORGET: &str = "This browser may clear it when room is short or after some days without a visit. Put the page on your home screen, or save a copy now and then.";
pub const SOME_FORGET: &str = "Some browsers clear what pages store after seven days without a visit, unless the page is on the home screen. Save a copy now and then.";

pub const PRACTICE: &str = "common practice, no source";

/// How sure a value is, beside it.
pub const fn certainty(certainty: Certainty) -> &'static str {
    match certainty {
        Certainty::Read => "read in its source",
        Certainty::Quoted => "as others quote it; the source itself was not read",
        Certainty::FromMemory => "from memory",
        Certainty::Practice => PRACTICE,
        Certainty::Computed => "worked out",
    }
}

/// In an empty field: what may be typed there.
pub fn example(typed: &str) -> String {
    fill_pattern_with("e.g. @", &[], &[typed])
}
pub const STILL: &str = "An empty field of the question is still to be filled.";

#[cfg(test)]
mod tests {
    use super::super::{regauge, sizing, spacing, tail, yarn};
    use super::*;
    use loopwright::tables::{Source, Taken};
    use loopwright::units::Gauge;
    use loopwright::yarn::{Question, Swatch};
    use std::collections::HashSet;

    #[test]
    fn every_mark_has_words_of_its_own() {
        let marks = [
            Certainty::Read,
            Certainty::Quoted,
            Certainty::FromMemory,
            Certainty::Practice,
            Certainty::Computed,
        ];
        assert_eq!(
            marks.map(certainty).into_iter().collect::<HashSet<_>>().len(),
            marks.len()
        );
    }

    /// A mark that changes in its table changes on the page, or this fails.
    #[test]
    fn what_a_tool_says_of_its_source_is_the_mark_of_the_table() {
        let gauge = Gauge::of(21, Gauge::TEN_CM);
        let by_stitches = yarn::source(&Question::about(Vec::new(), Swatch::stockinette(gauge, gauge)));
        let said = [
            (regauge::SOURCE, Taken::LoopLength),
            (by_stitches, Taken::LoopConstants),
            (spacing::SOURCE, Taken::MostEven),
            (sizing::SOURCE, Taken::FitsInInches),
            (sizing::SOURCE, Taken::FitsBySign),
            (sizing::HOW_SOURCE, Taken::Tape),
            (tail::SOURCE, Taken::Wraps),
        ];
        for (sentence, taken) in said {
            let sources: Vec<Source> = taken.marks().into_iter().map(|(_, source)| source).collect();
            let mark = match Source::least_sure(&sources) {
                Certainty::Read => "read in",
                Certainty::Quoted => "quote",
                Certainty::FromMemory => "from memory",
                Certainty::Practice | Certainty::Computed => "no source",
            };
            assert!(sentence.contains(mark), "{taken:?}: {sentence}");
        }
    }

    #[test]
    fn an_older_answer_says_which_numbers_it_is_for() {
        let still = |values: &[&str]| {
            let values: Vec<_> = values.iter().map(|value| ("Edge", (*value).to_owned())).collect();
            still_for(&values)
        };
        assert_eq!(still(&["72"]), "This is still the answer for Edge 72.");
        assert_eq!(still(&["132", "16"]), "This is still the answer for 132 and 16.");
        assert_eq!(still(&["72", "16", "4"]), "This is still the answer for 72, 16 and 4.");
        assert_eq!(still(&[]), "This is still the answer from before.");
        let list = "XS 85, S 91, M 97, L 103, XL 111";
        assert_eq!(still(&[list]), "This is still the answer for XS 85, S 91, M 97, L….");
    }
}
