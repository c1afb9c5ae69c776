//! The words for a project that a link or a file brings: what it holds, and why one holds none.

use super::intl::{fill_pattern, fill_pattern_with};
use loopwright_project::file::{FileError, Place};

pub const TITLE: &str = "A project to look at";
pub const NOT_OPENED: &str = "This cannot be opened";
pub const UNNAMED: &str = "A project without a name";
pub const NOT_YET: &str = "This is only to look at: nothing of it is kept yet. Kept, it becomes one more project and is opened, your own stay as they are, and you can undo it there.";
pub const FACTS: &str = "What is known";
pub const STEPS: &str = "Steps";
pub const DRAFTS: &str = "Begun, and no step yet";
pub const EMPTY: &str = "There is nothing in it but its name.";
pub const EMPTY_LATER: &str = "This version understands nothing of what is in it.";
pub const LATER: &str = "It was made with a later version of the page. Here you see what this version understands of it, and some of that may mean something else there. What you opened stays as it is: with the new version all of it is there.";
pub const KEEP: &str = "Keep it as a project of its own";
pub const KEEP_SHOWN: &str = "Keep what is shown as a project of its own";
pub const LEAVE: &str = "Leave it";
pub const NOTHING_CHANGED: &str = "Nothing of it was kept, and nothing of yours has changed.";
pub const NO_FILE: &str = "The file is no longer open here. Choose it once more.";
pub const UNREADABLE: &str = "That file could not be read. Choose it once more.";

/// How much it holds.
pub fn holds(facts: usize, steps: usize) -> String {
    let [facts, steps] = [facts, steps].map(|count| u32::try_from(count).unwrap_or(u32::MAX));
    fill_pattern("# {thing|things} known, # {step|steps}.", &[facts, steps])
}

/// What is known, and its value.
pub fn fact(name: &str, value: &str) -> String {
    fill_pattern_with("@: @", &[], &[name, value.trim_end()])
}

/// A step with the part of the garment it belongs to.
pub fn step(name: &str, section: &str) -> String {
    match section {
        "" => name.to_owned(),
        _ => fill_pattern_with("@ (@)", &[], &[name, section]),
    }
}

/// There are more of them than are listed.
pub fn more(count: usize) -> String {
    let count = u32::try_from(count).unwrap_or(u32::MAX);
    fill_pattern("and # more", &[count])
}

/// What of it means nothing to this version, and where it stands.
pub fn left_out(count: usize, places: &str) -> String {
    let count = u32::try_from(count).unwrap_or(u32::MAX);
    fill_pattern_with(
        "# {thing in it means|things in it mean} nothing to this version of the page and would be left out: @.",
        &[count],
        &[places],
    )
}

/// Why a link brings no project.
pub fn no_link(why: &FileError) -> String {
    match why {
        FileError::NotOurs => "This link brings no project. Ask for it again, or ask for the project as a file.".into(),
        FileError::CopyOfAll => COPY_OF_ALL.into(),
        FileError::Newer => NEWER.into(),
        FileError::TooLong => "This link is longer than any project from here, so it was not opened.".into(),
        FileError::Damaged(Place::Link) => {
            "This link was cut short or changed on its way. Ask for it again, or ask for the project as a file.".into()
        }
        FileError::Damaged(place) => {
            fill_pattern_with("The project in this link is damaged, at @.", &[], &[&at(place)])
        }
    }
}

/// Why a file is no project.
pub fn no_file(why: &FileError) -> String {
    match why {
        FileError::NotOurs => "That is no project from here. Choose a file that was made with “Save as a file”.".into(),
        FileError::CopyOfAll => COPY_OF_ALL.into(),
        // Only a link is packed.
        FileError::Newer => NEWER.into(),
        FileError::TooLong => "That file is longer than any project from here, so it was not opened.".into(),
        FileError::Damaged(place) => fill_pattern_with("That file is damaged, at @.", &[], &[&at(place)]),
    }
}

/// What is a copy of all, and no project.
const COPY_OF_ALL: &str = "That is a copy of everything, and not one project. Bring it back on the page “About”.";
/// What only a later version can unpack.
const NEWER: &str = "This link was made with a later version of the page, in a way that this one cannot open. Take the new version first; the link stays as it is.";

fn at(place: &Place) -> String {
    match place {
        Place::Line(line) => fill_pattern("line #", &[u32::try_from(*line).unwrap_or(u32::MAX)]),
        Place::Name(path) => fill_pattern_with("“@”", &[], &[path]),
        Place::Link => "the link".into(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_damaged_file_is_told_where() {
        let why = FileError::Damaged(Place::Name("steps[1].number".into()));
        assert_eq!(no_file(&why), "That file is damaged, at “steps[1].number”.");
        assert_eq!(
            no_file(&FileError::Damaged(Place::Line(12))),
            "That file is damaged, at line 12."
        );
        assert_eq!(holds(1, 2), "1 thing known, 2 steps.");
    }

    #[test]
    fn what_is_left_out_is_counted() {
        let one = "1 thing in it means nothing to this version of the page and would be left out: tracks.";
        assert_eq!(left_out(1, "tracks"), one);
        assert!(left_out(2, "tracks, yarns").starts_with("2 things in it mean nothing"));
    }
}
