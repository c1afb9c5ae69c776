//! Makes scripts and styles smaller with `esbuild`, where node is there to run it.

use crate::{
    files::{self, Files},
    finish::{EMBED, WORKER},
    house, npm,
    run::{minutes, run, say},
};
use anyhow::Result;
use std::process::Command;

/// Puts smaller scripts and styles in place of the built ones, and answers whether it could; if not, the reason has been
/// said.
///
/// The worker and the element for other pages stay as they are: they have blanks to be filled.
pub fn minify(files: &mut Files) -> Result<bool> {
    let Some(folder) = npm::fetch("esbuild", house::ESBUILD)? else {
        say("Scripts and styles are not minified");
        return Ok(false);
    };
    say("Making scripts and styles smaller");
    let is_meant = |path: &str| ![WORKER, EMBED].contains(&path) && (path.ends_with(".js") || path.ends_with(".css"));
    let mut before = files.clone();
    before.retain(|path, _| is_meant(path));
    let work = house::target_folder()?.join("minify");
    files::replace(&work, &before)?;
    run(
        Command::new("node")
            .arg(folder.join("bin/esbuild"))
            .args(["--minify", "--format=esm", "--log-level=warning", "--outdir=after"])
            .args(before.keys())
            .current_dir(&work),
        minutes(1),
    )?;
    files.extend(files::read(&work.join("after"))?);
    Ok(true)
}
