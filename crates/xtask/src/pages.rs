//! Measures what a visitor waits for: on a first visit its answer, beside a bare page that is built in the same way; and
//! while typing the frame that shows a key.

use crate::{
    build, house, packages,
    run::{minutes, run, say},
};
use anyhow::{Context, Result};
use std::{path::Path, process::Command};

/// Builds both pages and has a browser visit them in turns, and a folder built before, if there is one.
///
/// The browser is driven by a program in the tests' crate, so that the chores compile quickly.
pub fn pages(beside: Option<&Path>) -> Result<()> {
    packages::install()?;
    build::build_folder()?;
    let bare = build::build_bare()?;
    say("Visiting the pages in turns");
    drive("pages", &[&house::root().join("dist"), &bare], beside)
}

/// Builds the page and has a browser type into every tool, and into a folder built before, if there is one.
pub fn keys(beside: Option<&Path>) -> Result<()> {
    packages::install()?;
    build::build_folder()?;
    say("Typing into every tool");
    drive("keys", &[&house::root().join("dist")], beside)
}

fn drive(program: &str, folders: &[&Path], beside: Option<&Path>) -> Result<()> {
    let beside = beside.map(|folder| {
        folder
            .canonicalize()
            .with_context(|| format!("no folder {}", folder.display()))
    });
    run(
        Command::new("cargo")
            .args(["run", "--locked", "--package", "loopwright-tests"])
            .args(["--features", "driven", "--bin", program, "--"])
            .args(folders)
            .args(beside.transpose()?)
            .current_dir(house::root()),
        minutes(40),
    )
}
