//! Other versions of the built page: a mark that shows which one runs, a count of how often it was opened, and the
//! offline worker's list made anew over the changed bytes, by the same last step as in every build.

use anyhow::{Context, Result};
use std::path::{Path, PathBuf};
use xtask::{files, finish, page};

/// In the page: which edition runs.
pub const RUNNING: &str = "getComputedStyle(document.documentElement).getPropertyValue('--edition')";

/// In the page: how often any edition was opened in this tab.
pub const OPENED: &str = "Number(sessionStorage.getItem('opened'))";

/// Makes an edition of the page in `dist` in a folder of its name inside `place`.
pub fn make(dist: &Path, place: &Path, name: &str) -> Result<PathBuf> {
    let mut files = files::read(dist)?;
    let html = finish::text(&files, "index.html")?;
    let policy = page::elements(&html, "meta").into_iter();
    let policy = policy.filter(|meta| meta.attribute("http-equiv") == Some("Content-Security-Policy"));
    let html = page::without(&html, policy.map(|meta| meta.range).collect());
    files.insert("index.html".to_owned(), html.into_bytes());
    let worker = unfilled(&finish::text(&files, finish::WORKER)?)?;
    files.insert(finish::WORKER.to_owned(), worker.into_bytes());
    append(&mut files, "styles.css", &format!(":root{{--edition:{name}}}"))?;
    append(
        &mut files,
        "boot.js",
        &format!("sessionStorage.setItem('opened', {OPENED} + 1);"),
    )?;
    finish::finish(&mut files)?;
    let folder = place.join(name);
    files::replace(&folder, &files)?;
    Ok(folder)
}

fn append(files: &mut files::Files, path: &str, text: &str) -> Result<()> {
    let bytes = files.get_mut(path).with_context(|| format!("the page has no {path}"))?;
    bytes.extend_from_slice(format!("\n{text}\n").as_bytes());
    Ok(())
}

/// The worker's text before the build wrote into it.
fn unfilled(worker: &str) -> Result<String> {
    let between = |text: &str, start: &str, end: &str, filling: &str| -> Result<String> {
        let from = text
            .find(start)
            .with_context(|| format!("no `{start}` in the worker"))?
            + start.len();
        let to = text[from..]
            .find(end)
            .with_context(|| format!("`{start}` does not end"))?
            + from;
        Ok(format!("{}{filling}{}", &text[..from], &text[to..]))
    };
    let worker = between(worker, "const VERSION = ", ";", "\"\"")?;
    between(&worker, "const FILES = ", ";\n", "[]")
}
