//! Measures how long a first visit waits for its answer, beside a bare page that is built in the same way.

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
    let beside = beside.map(|folder| {
        folder
            .canonicalize()
            .with_context(|| format!("no folder {}", folder.display()))
    });
    let beside = beside.transpose()?;
    packages::install()?;
    build::build_folder()?;
    let bare = build::build_bare()?;
    say("Visiting the pages in turns");
    run(
        Command::new("cargo")
            .args(["run", "--locked", "--package", "loopwright-tests"])
            .args(["--features", "driven", "--bin", "pages", "--"])
            .arg(house::root().join("dist"))
            .arg(bare)
            .args(beside)
            .current_dir(house::root()),
        minutes(20),
    )
}
