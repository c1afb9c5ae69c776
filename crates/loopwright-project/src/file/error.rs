//! Why a file or a link is no project.

use std::fmt;

/// Why a file or a link is no project. Its sentence is for whoever shows it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum FileError {
    /// No project: another kind of file, or no text at all.
    NotOurs,
    /// A copy of everything, which is brought back as a whole.
    CopyOfAll,
    /// Packed by a later version in a way that this one cannot unpack.
    Newer,
    /// Longer than any project, packed or unpacked, or with more steps.
    TooLong,
    /// One of ours, in which something is not as it is written.
    Damaged(Place),
}

/// A place in a file or a link.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Place {
    /// A line of the file, from 1.
    Line(usize),
    /// A name with those above it: `steps[2].fields.stitches`. Lists are counted from 1.
    Name(String),
    /// Anywhere in a link: it was cut short, or a character of it is another.
    Link,
}

/// A name is never longer than this where it is shown.
const LONGEST: usize = 80;

impl Place {
    /// The place of this name; the beginning of it where it is long.
    pub fn name(path: &str) -> Self {
        Self::Name(match path.char_indices().nth(LONGEST) {
            Some((end, _)) => [&path[..end], "…"].concat(),
            None => path.to_owned(),
        })
    }
}

impl fmt::Display for Place {
    fn fmt(&self, text: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Line(line) => write!(text, "line {line}"),
            Self::Name(path) => text.write_str(path),
            Self::Link => text.write_str("link"),
        }
    }
}

impl fmt::Display for FileError {
    fn fmt(&self, text: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NotOurs => text.write_str("not ours"),
            Self::CopyOfAll => text.write_str("copy of all"),
            Self::Newer => text.write_str("newer"),
            Self::TooLong => text.write_str("too long"),
            Self::Damaged(place) => write!(text, "damaged {place}"),
        }
    }
}

impl std::error::Error for FileError {}
