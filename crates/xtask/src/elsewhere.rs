//! Proves that a build is a function of the sources: builds a copy in another folder and compares the bytes.

use crate::{
    build::SINGLE_FOLDER,
    files::{self, Files},
    house,
    run::{minutes, run},
};
use anyhow::{Context, Result, ensure};
use std::{
    env, fs,
    path::{Path, PathBuf},
    process::{self, Command, Stdio},
};

/// What a build reads.
const SOURCES: [&str; 6] = ["Cargo.toml", "Cargo.lock", ".cargo", "crates", "tests", "web"];

/// Builds a copy of the house elsewhere; an error if it does not give the very bytes that stand here.
pub fn same_bytes() -> Result<()> {
    let elsewhere = Elsewhere(env::temp_dir().join(format!("loopwright-elsewhere-{}", process::id())));
    for name in SOURCES {
        copy(&house::root().join(name), &elsewhere.0.join(name))?;
    }
    run(
        Command::new(env::current_exe()?)
            .arg("build")
            .current_dir(&elsewhere.0)
            // By these two the chore knows where its house stands.
            .env("CARGO_MANIFEST_DIR", elsewhere.0.join("crates/xtask"))
            .env("CARGO_TARGET_DIR", elsewhere.0.join("target"))
            .stdout(Stdio::null()),
        minutes(10),
    )?;
    for folder in ["dist", SINGLE_FOLDER] {
        let here = files::read(&house::root().join(folder))?;
        let there = files::read(&elsewhere.0.join(folder))?;
        let differing = differing(&here, &there);
        ensure!(
            differing.is_empty(),
            "a build in another folder differs in {folder}: {differing:?}"
        );
    }
    Ok(())
}

/// The folder of the copy, removed when the comparison is done.
struct Elsewhere(PathBuf);

impl Drop for Elsewhere {
    fn drop(&mut self) {
        let _ = fs::remove_dir_all(&self.0);
    }
}

fn copy(from: &Path, to: &Path) -> Result<()> {
    if from.is_dir() {
        return files::write(to, &files::read(from)?);
    }
    fs::create_dir_all(to.parent().context("a copy needs a folder")?)?;
    fs::copy(from, to).with_context(|| format!("cannot copy {}", from.display()))?;
    Ok(())
}

/// The paths that are not in both, or not the same in both.
fn differing<'a>(here: &'a Files, there: &'a Files) -> Vec<&'a String> {
    let changed = here.iter().filter(|(path, bytes)| there.get(*path) != Some(*bytes));
    let added = there.keys().filter(|path| !here.contains_key(*path));
    changed.map(|(path, _)| path).chain(added).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_kind_of_difference_is_found() {
        let files = |list: &[(&str, &str)]| -> Files {
            list.iter()
                .map(|(path, text)| ((*path).to_owned(), text.as_bytes().to_vec()))
                .collect()
        };
        let here = files(&[("same", "1"), ("other", "1"), ("gone", "1")]);
        let there = files(&[("same", "1"), ("other", "2"), ("new", "1")]);
        assert_eq!(differing(&here, &there), ["gone", "other", "new"]);
        assert!(differing(&here, &here.clone()).is_empty());
    }
}
