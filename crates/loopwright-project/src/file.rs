//! A project as a file of its own: JSON that can be read, and written, by eye.
//!
//! | name                 | holds                                                                        |
//! |----------------------|------------------------------------------------------------------------------|
//! | `loopwright-project` | the version of this format, `1`; what makes it a file of ours                 |
//! | `name`               | what she calls the project                                                   |
//! | `facts`              | what is known, a *text* each; of a count of hers `count_1`, `count_1_name`    |
//! | `were`               | facts that changed since she last looked, as they were; `null` for none      |
//! | `steps`              | a list of steps, in their order                                              |
//! | `next`               | the number that the next step is given                                       |
//! | `pace`               | stitches she knits in a minute, as typed                                     |
//! | `drafts`             | what stands in a tool and is no step: `fields` and `from`, for each tool      |
//!
//! | a step's name        | holds                                                                        |
//! |----------------------|------------------------------------------------------------------------------|
//! | `number`             | its number, at most 1000000, which no other step has                         |
//! | `tool`               | the tool that answers it                                                     |
//! | `name`               | what she calls it                                                            |
//! | `section`            | the part of the garment it stands under                                      |
//! | `amount`             | how often it is knitted, as typed                                            |
//! | `alongside`          | the step it is knitted at the same time as: `"3"`, or `"gone Yoke"`           |
//! | `from_row`           | in which row of that one it begins, as typed; in its first where it is left out |
//! | `fields`             | what was typed, a *text* for each field                                       |
//! | `from`               | where other fields get theirs: `fact bust`, `step 3 after`, `gone Yoke`       |
//!
//! A *text* is a string, or `{"text": "92", "unit": "cm"}` where a unit stood beside it. Of a project only
//! `loopwright-project` has to be there, of a step `number` and `tool`.
//!
//! ```
//! use loopwright_project::{Typed, file};
//!
//! let project = file::parse(r#"{
//!     "loopwright-project": 1,
//!     "name": "A yoke of my own",
//!     "facts": { "cast_on": "96", "bust": { "text": "92", "unit": "cm" } },
//!     "steps": [
//!         { "number": 1, "tool": "yoke", "name": "Yoke", "from": { "stitches": "fact cast_on" } },
//!         { "number": 2, "tool": "tail", "name": "Tail", "fields": { "stitches": "96" } }
//!     ]
//! }"#)?;
//! assert_eq!(project.facts["bust"], Typed::with_unit("92", "cm"));
//! assert_eq!(file::parse(&file::print(&project))?, project);
//! # Ok::<(), loopwright_project::file::FileError>(())
//! ```
//!
//! A name that this version does not know belongs to a version that added it: it is passed over, and [`read`] says so. What
//! changes the meaning of a name gets another version of the format. A file of that one is opened to be looked at: what this
//! version understands is read, everything else is passed over, and [`Reading::made_by`] says that a name may mean something
//! else there. Steps that stand on one another in a circle, or are each knitted at the same time as the other, and references
//! to what is not there, are read as they are: the sheet says what to mend. No name is special, whatever it means elsewhere
//! (`__proto__`).
//!
//! The same as a JSON Schema, [`SCHEMA`]:
//!
//! ```json
#![doc = include_str!("file/schema.json")]
//! ```

mod error;
mod json;
mod reading;
#[cfg(test)]
mod schema;
mod writing;

pub use error::{FileError, Place};

use crate::project::Project;
use json::Json;

/// The format as a JSON Schema, for whoever writes such files.
pub const SCHEMA: &str = include_str!("file/schema.json");

/// The version of the format.
pub const VERSION: u64 = 1;
/// The most bytes of a file: more than anyone types for a garment.
pub const MOST_BYTES: usize = 1_000_000;
/// The most steps of a project.
pub const MOST_STEPS: usize = 2_000;

/// The highest number of a step in a file: numbers are never given twice, so there has to be room above it.
pub const HIGHEST_NUMBER: u32 = 1_000_000;

/// Which version of the format a project was written in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MadeBy {
    /// The one that is written here.
    ThisVersion,
    /// A later one, of which only the names that both have are understood, and they may mean something else there.
    LaterVersion,
}

/// A project that was read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Reading {
    /// The project.
    pub project: Project,
    /// Where in the file something stands that means nothing to this version and is not in the project.
    pub passed_over: Vec<Place>,
    /// Which version of the format it was written in.
    pub made_by: MadeBy,
}

/// The file of a project.
pub fn print(project: &Project) -> String {
    // Texts and whole numbers can always be written.
    serde_json::to_string_pretty(&writing::project(project)).unwrap_or_default()
}

/// The same on one line.
pub(crate) fn print_short(project: &Project) -> String {
    serde_json::to_string(&writing::project(project)).unwrap_or_default()
}

/// The project of a file.
pub fn parse(text: &str) -> Result<Project, FileError> {
    read(text).map(|reading| reading.project)
}

/// The project of a file, and what of it means nothing to this version.
pub fn read(text: &str) -> Result<Reading, FileError> {
    if text.len() > MOST_BYTES {
        return Err(FileError::TooLong);
    }
    // Some editors put a mark before the first character.
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let json: Json = serde_json::from_str(text).map_err(|error| no_json(text, &error))?;
    reading::project(&json)
}

/// What is wrong with a text that is no JSON, or nested deeper than any of ours: a file of ours says what it is all the same.
fn no_json(text: &str, error: &serde_json::Error) -> FileError {
    let is_ours = text.trim_start().starts_with('{') && text.contains(&format!("{:?}", json::MARKER));
    if is_ours {
        FileError::Damaged(Place::Line(error.line()))
    } else {
        FileError::NotOurs
    }
}

#[cfg(test)]
mod tests;
