//! The top of the house stays short: what may stand there is listed here.

use super::Finding;
use anyhow::{Context, Result};
use std::{fs, path::Path};

const ALLOWED: [&str; 15] = [
    "Cargo.toml",
    "Cargo.lock",
    "README.md",
    "DEVELOPERS.md",
    "Trunk.toml",
    "LICENSE-MIT",
    "LICENSE-APACHE",
    ".cargo",
    ".ci",
    ".clippy.toml",
    ".rustfmt.toml",
    ".gitignore",
    "crates",
    "web",
    "tests",
];

/// Findings for what stands at the top and is neither on the list nor ignored by git.
pub fn check(root: &Path) -> Result<Vec<Finding>> {
    let ignored = fs::read_to_string(root.join(".gitignore")).context("there is no .gitignore")?;
    let mut names = Vec::new();
    for entry in fs::read_dir(root)? {
        names.push(entry?.file_name().to_string_lossy().into_owned());
    }
    names.sort();
    Ok(strangers(&names, &ignored))
}

fn strangers(names: &[String], ignored: &str) -> Vec<Finding> {
    let is_ignored = |name: &str| ignored.lines().any(|line| line.trim_matches('/') == name);
    let strange = names.iter().filter(|name| {
        !ALLOWED.contains(&name.as_str()) && *name != ".git" && *name != ".gitattributes" && !is_ignored(name)
    });
    strange
        .map(|name| Finding {
            place: name.clone(),
            broken: "this has no place at the top of the house".to_owned(),
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_stranger_at_the_top_is_found() {
        let names = ["Cargo.toml", ".git", "target", "notes.txt"].map(str::to_owned);
        let found = strangers(&names, "/target\n");
        assert_eq!(found.len(), 1);
        assert_eq!(found[0].place, "notes.txt");
    }
}
