//! The README of the maths crate is its tour: the words at the head of its `lib.rs`, as they are read outside of the
//! documentation, where a name in brackets leads nowhere.

use crate::house;
use anyhow::{Context, Result};
use std::{fs, path::PathBuf};

/// Writes the README anew.
pub fn write() -> Result<()> {
    let place = place();
    fs::write(&place, made()?).with_context(|| format!("cannot write {}", place.display()))
}

/// Whether the README that stands in git says what the tour says.
pub fn is_told() -> Result<bool> {
    let kept = fs::read_to_string(place()).unwrap_or_default();
    Ok(kept == made()?)
}

fn place() -> PathBuf {
    house::root().join("crates/loopwright/README.md")
}

fn made() -> Result<String> {
    let library = house::root().join("crates/loopwright/src/lib.rs");
    let text = fs::read_to_string(&library).with_context(|| format!("cannot read {}", library.display()))?;
    Ok(readme(&text))
}

/// The tour of a library as a README.
fn readme(library: &str) -> String {
    let mut text = "# loopwright\n\n".to_owned();
    let tour = library.lines().map_while(|line| line.strip_prefix("//!"));
    for line in tour {
        let line = line.strip_prefix(' ').unwrap_or(line);
        let line = match line.strip_prefix('#') {
            // Below the title.
            Some(rest) => format!("##{rest}"),
            None if line == "```" && !is_open(&text) => "```rust".to_owned(),
            None => without_links(line),
        };
        text.push_str(&line);
        text.push('\n');
    }
    text
}

/// Whether an example has begun and not ended.
fn is_open(text: &str) -> bool {
    text.lines().filter(|line| line.starts_with("```")).count() % 2 == 1
}

/// ``[`row`]`` is a link in the documentation only, and so is ``[`mod@choice`]``.
fn without_links(line: &str) -> String {
    line.replace("[`mod@", "[`").replace("[`", "`").replace("`]", "`")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_lead_nowhere_and_chapters_stand_below_the_title() {
        let library = "//! One.\n//!\n//! # Two\n//! [`row`], ([`mod@choice`]).\n//! ```\n//! f(&x[0]);\n//! ```\n\nmod a;\n//! no\n";
        let expected = "# loopwright\n\nOne.\n\n## Two\n`row`, (`choice`).\n```rust\nf(&x[0]);\n```\n";
        assert_eq!(readme(library), expected);
    }
}
