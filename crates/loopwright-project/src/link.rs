//! A project as text for an address: a digit, the version; then its file on one line, packed (zlib), in letters, digits, `-`
//! and `_` alone (base64url without padding).
//!
//! What was packed carries a sum of its bytes, so that a link in which one character is another is refused, and never
//! brings another number. What a link unpacks to has a limit, which is looked at while it is unpacked. A link of a later
//! version is opened to be looked at where it can be unpacked here.
//!
//! ```
//! use loopwright_project::{Project, link};
//!
//! let project = Project { name: "A yoke of my own".into(), ..Project::default() };
//! let text = link::print(&project);
//! assert_eq!(link::parse(&text), Ok(project));
//! ```

use crate::file::{self, FileError, MadeBy, Place, Reading};
use crate::project::Project;
use data_encoding::BASE64URL_NOPAD;
use miniz_oxide::deflate::compress_to_vec_zlib;
use miniz_oxide::inflate::{TINFLStatus, decompress_to_vec_zlib_with_limit};

/// The version of the packing.
const VERSION: char = '1';
/// The most that a link unpacks to, in bytes.
pub const MOST_BYTES: usize = 256 * 1024;
/// The most characters of a link.
pub const MOST_CHARACTERS: usize = 200_000;
/// As small as it gets: a picture of the link has fewer and larger squares.
const LEVEL: u8 = 10;

/// The text of a project.
pub fn print(project: &Project) -> String {
    let packed = compress_to_vec_zlib(file::print_short(project).as_bytes(), LEVEL);
    format!("{VERSION}{}", BASE64URL_NOPAD.encode(&packed))
}

/// The project of a text.
pub fn parse(text: &str) -> Result<Project, FileError> {
    read(text).map(|reading| reading.project)
}

/// The project of a text, and what of it means nothing to this version.
pub fn read(text: &str) -> Result<Reading, FileError> {
    if text.len() > MOST_CHARACTERS {
        return Err(FileError::TooLong);
    }
    let mut characters = text.chars();
    let version = characters.next();
    let packed = characters.as_str();
    match version {
        Some(VERSION) => file::read(&unpack(packed)?),
        Some('2'..='9') => read_later(packed),
        Some(_) | None => Err(FileError::NotOurs),
    }
}

/// The project of a link that a later version packed. Perhaps only the version is another: the sum of the bytes tells.
fn read_later(packed: &str) -> Result<Reading, FileError> {
    let unpacked = unpack(packed).map_err(|why| match why {
        FileError::TooLong => FileError::TooLong,
        _ => FileError::Newer,
    })?;
    let made_by = MadeBy::LaterVersion;
    let read = file::read(&unpacked).map_err(|_| FileError::Newer)?;
    Ok(Reading { made_by, ..read })
}

fn unpack(packed: &str) -> Result<String, FileError> {
    let damaged = FileError::Damaged(Place::Link);
    let packed = BASE64URL_NOPAD.decode(packed.as_bytes());
    let packed = packed.map_err(|_| damaged.clone())?;
    let unpacked = decompress_to_vec_zlib_with_limit(&packed, MOST_BYTES);
    let unpacked = unpacked.map_err(|error| {
        if error.status == TINFLStatus::HasMoreOutput {
            FileError::TooLong
        } else {
            damaged.clone()
        }
    })?;
    String::from_utf8(unpacked).map_err(|_| damaged)
}

/// Whether the link of a project can be opened again: one that is long is for a file.
pub fn fits(project: &Project) -> bool {
    let unpacked = file::print_short(project).len();
    unpacked <= MOST_BYTES && print(project).len() <= MOST_CHARACTERS
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::some::any_full_project;
    use crate::{Step, Typed};
    use proptest::prelude::*;

    fn packed(text: &[u8]) -> String {
        format!("1{}", BASE64URL_NOPAD.encode(&compress_to_vec_zlib(text, LEVEL)))
    }

    fn named(name: String) -> Project {
        let facts = [("note".to_owned(), Typed::plain("x"))].into();
        Project {
            name,
            facts,
            ..Project::default()
        }
    }

    #[test]
    fn a_few_bytes_that_unpack_to_millions_are_refused() {
        let bomb = packed(&vec![b' '; 50_000_000]);
        assert!(bomb.len() < MOST_CHARACTERS, "{}", bomb.len());
        assert_eq!(parse(&bomb), Err(FileError::TooLong));
        let project = named("x".repeat(MOST_BYTES));
        assert!(!fits(&project));
        assert_eq!(parse(&print(&project)), Err(FileError::TooLong));
        assert!(fits(&named("x".repeat(MOST_BYTES / 2))));
        assert_eq!(parse(&format!("1{}", "A".repeat(5_000_000))), Err(FileError::TooLong));
    }

    #[test]
    fn what_is_packed_and_no_text_is_damaged() {
        let damaged = Err(FileError::Damaged(Place::Link));
        assert_eq!(parse(&packed(&[0xff, 0xfe, 0x00])), damaged);
    }

    #[test]
    fn a_link_with_another_character_brings_no_other_number() {
        let mut project = named("Yoke".into());
        let mut step = Step::new("tail", "Tail");
        step.fields.insert("stitches".into(), Typed::plain("132"));
        project.add(step);
        let link = print(&project);
        for place in 1..link.len() {
            for other in ["A", "z", "_"] {
                let mut changed = link.clone();
                changed.replace_range(place..=place, other);
                assert!(changed == link || parse(&changed).is_err(), "{changed}");
            }
            assert!(parse(&link[..place]).is_err());
        }
    }

    proptest! {
        #[test]
        fn any_project_comes_back_from_its_link(project in any_full_project()) {
            let link = print(&project);
            prop_assert!(link.bytes().all(|byte| byte.is_ascii_alphanumeric() || b"-_".contains(&byte)));
            prop_assert_eq!(parse(&link), Ok(project));
        }

        #[test]
        fn any_text_is_a_project_or_an_error(text in ".{0,40}", letters in "1[A-Za-z0-9_-]{0,40}") {
            prop_assert!(parse(&text).is_err());
            prop_assert!(parse(&letters).is_err());
        }
    }
}
