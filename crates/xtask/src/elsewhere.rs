//! Proves that a build is a function of the sources: builds a copy in another folder and compares the bytes.
//!
//! What is compiled from the registry has no path of this folder in it and is taken along to the copy; every crate of the
//! house is compiled there. Cargo takes it only if the compiler's flags are the same, and they name folders: so both
//! builds name the folders of both.

use crate::{
    build::SINGLE_FOLDER,
    files::{self, Files},
    house,
    run::{minutes, run},
};
use anyhow::{Context, Result, ensure};
use std::{
    env,
    fs::{self, File},
    path::{Path, PathBuf},
    process::{Command, Stdio},
};

/// What a build reads.
const SOURCES: [&str; 6] = ["Cargo.toml", "Cargo.lock", ".cargo", "crates", "tests", "web"];

/// In the environment of a copy's build, the root and the target folder of the house it is a copy of.
const ORIGINAL: [&str; 2] = ["LOOPWRIGHT_ORIGINAL", "LOOPWRIGHT_ORIGINAL_TARGET"];

/// What the names of the house's own crates begin with, wherever cargo writes them.
const NAME: &str = "loopwright";

/// Where cargo keeps what it has compiled, below the folder of a profile.
const COMPILED: [&str; 3] = ["deps", "build", ".fingerprint"];

/// Builds a copy of the house elsewhere; an error if it does not give the very bytes that stand here.
pub fn same_bytes() -> Result<()> {
    let (root, target) = (house::root(), house::target_folder()?);
    let elsewhere = Elsewhere(folder(&target));
    elsewhere.remove()?;
    for name in SOURCES {
        copy(&root.join(name), &elsewhere.0.join(name))?;
    }
    for profile in ["release".to_owned(), format!("{}/release", house::WASM_TARGET)] {
        for kind in COMPILED {
            let part = Path::new(&profile).join(kind);
            take_along(&target.join(&part), &elsewhere.0.join("target").join(part))?;
        }
    }
    run(
        Command::new(env::current_exe()?)
            .arg("build")
            .current_dir(&elsewhere.0)
            // By these two the chore knows where its house stands.
            .env("CARGO_MANIFEST_DIR", elsewhere.0.join("crates/xtask"))
            .env("CARGO_TARGET_DIR", elsewhere.0.join("target"))
            .envs(ORIGINAL.into_iter().zip([&root, &target]))
            .stdout(Stdio::null()),
        minutes(10),
    )?;
    for folder in ["dist", SINGLE_FOLDER] {
        let here = files::read(&root.join(folder))?;
        let there = files::read(&elsewhere.0.join(folder))?;
        let differing = differing(&here, &there);
        ensure!(
            differing.is_empty(),
            "a build in another folder differs in {folder}: {differing:?}"
        );
    }
    Ok(())
}

/// The folders that could stand in the bytes of a build, and the names they are given there: of the house and of its
/// copy, in the same order in both.
pub(crate) fn named() -> Result<Vec<(PathBuf, &'static str)>> {
    let (root, target) = match ORIGINAL.map(env::var_os) {
        [Some(root), Some(target)] => (root.into(), target.into()),
        _ => (house::root(), house::target_folder()?),
    };
    let copy = folder(&target);
    let target_of_copy = copy.join("target");
    Ok(vec![
        (root, "app"),
        (target, "made"),
        (copy, "app"),
        (target_of_copy, "made"),
    ])
}

fn folder(target: &Path) -> PathBuf {
    target.join("elsewhere")
}

/// The folder of the copy, removed when the comparison is done.
struct Elsewhere(PathBuf);

impl Elsewhere {
    fn remove(&self) -> Result<()> {
        if self.0.exists() {
            fs::remove_dir_all(&self.0)?;
        }
        Ok(())
    }
}

impl Drop for Elsewhere {
    fn drop(&mut self) {
        let _ = self.remove();
    }
}

/// Copies what is compiled from the registry, with its times, by which cargo knows that it is up to date. Nothing of
/// the house's own crates: whether those are the same from another folder is what is asked.
fn take_along(from: &Path, to: &Path) -> Result<()> {
    fs::create_dir_all(to)?;
    for entry in fs::read_dir(from).into_iter().flatten() {
        let entry = entry?;
        let name = entry.file_name();
        if is_ours(&name.to_string_lossy()) {
            continue;
        }
        let (from, to) = (entry.path(), to.join(name));
        if from.is_dir() {
            take_along(&from, &to)?;
            continue;
        }
        fs::copy(&from, &to).with_context(|| format!("cannot copy {}", from.display()))?;
        let modified = entry.metadata()?.modified()?;
        File::options().append(true).open(&to)?.set_modified(modified)?;
    }
    Ok(())
}

fn is_ours(name: &str) -> bool {
    let name = name.strip_prefix("lib").unwrap_or(name);
    name.starts_with(NAME)
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

    #[test]
    fn crates_of_the_house_are_told_from_others() {
        for ours in ["libloopwright-1a.rlib", "loopwright_app-2b.wasm", "loopwright-js-3c"] {
            assert!(is_ours(ours), "{ours}");
        }
        for other in ["libyew-4d.rlib", "yew-macro-5e"] {
            assert!(!is_ours(other), "{other}");
        }
    }
}
