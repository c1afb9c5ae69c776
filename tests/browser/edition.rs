//! Other versions of the built page: a mark that shows which one runs, a count of how often it was opened, and names,
//! policy and list made anew over the changed bytes, by the same last step as in every build.

use anyhow::{Context, Result};
use std::path::{Path, PathBuf};
use xtask::{
    files::{self, Files},
    finish, names, packed,
};

/// In the page: which edition runs.
pub const RUNNING: &str = "getComputedStyle(document.documentElement).getPropertyValue('--edition')";

/// In the page: how often any edition was opened in this tab.
pub const OPENED: &str = "Number(sessionStorage.getItem('opened'))";

/// Makes an edition of the page in `dist` in a folder of its name inside `place`.
pub fn make(dist: &Path, place: &Path, name: &str) -> Result<PathBuf> {
    write(&edition(dist, name)?, place, name)
}

/// The same as it was before files had names by their bytes.
pub fn make_with_plain_names(dist: &Path, place: &Path, name: &str) -> Result<PathBuf> {
    let mut files = edition(dist, name)?;
    names::plain(&mut files);
    finish::list(&mut files)?;
    write(&files, place, name)
}

fn edition(dist: &Path, name: &str) -> Result<Files> {
    let mut files = files::read(dist)?;
    packed::take_away(&mut files);
    names::plain(&mut files);
    append(&mut files, "styles.css", &format!(":root{{--edition:{name}}}"))?;
    append(
        &mut files,
        "boot.js",
        &format!("sessionStorage.setItem('opened', {OPENED} + 1);"),
    )?;
    finish::finish(&mut files)?;
    Ok(files)
}

fn write(files: &Files, place: &Path, name: &str) -> Result<PathBuf> {
    let folder = place.join(name);
    files::replace(&folder, files)?;
    Ok(folder)
}

fn append(files: &mut Files, path: &str, text: &str) -> Result<()> {
    let bytes = files.get_mut(path).with_context(|| format!("the page has no {path}"))?;
    bytes.extend_from_slice(format!("\n{text}\n").as_bytes());
    Ok(())
}
