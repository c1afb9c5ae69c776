//! A machine that loses its power, as far as a browser can tell: no process of it gets to write anything any more.

use crate::{browser::Engine, folder::Folder};
use anyhow::{Context, Result, bail, ensure};
use loopwright_tests::{drive::PATIENCE, firefox};
use std::{fs, process::Command, time::Duration};
use xtask::yardstick::Patience;

/// Ends the browser that runs on this profile, and comes back when it is gone.
pub async fn cut(engine: Engine, profile: &Folder) -> Result<()> {
    let id = process_on(engine, profile)?;
    let status = Command::new("kill").args(["-KILL", &id.to_string()]).status()?;
    ensure!(status.success(), "the browser {id} could not be ended");
    // Another one starts on the same profile, and would find it taken for as long as this one is on its way out.
    let mut patience = Patience::of(PATIENCE);
    while runs(id) {
        ensure!(!patience.is_over(), "the browser {id} does not end");
        tokio::time::sleep(Duration::from_millis(5)).await;
    }
    Ok(())
}

/// The id of the browser that runs on this profile: not of its helpers, which are told apart by a word.
fn process_on(engine: Engine, profile: &Folder) -> Result<u32> {
    let (wanted, helper) = match engine {
        Engine::Chromium => (format!("--user-data-dir={}", profile.path().display()), "--type="),
        Engine::Firefox => (firefox::profile(profile.path()).display().to_string(), "-contentproc"),
        Engine::WebKit => bail!("a session of WebKit's driver has no profile"),
    };
    let found = fs::read_dir("/proc")?.flatten().find_map(|entry| {
        let id = entry.file_name().to_str()?.parse().ok()?;
        let line = fs::read(entry.path().join("cmdline")).ok()?;
        let words: Vec<_> = line.split(|byte| *byte == 0).map(String::from_utf8_lossy).collect();
        let is_helper = words.iter().any(|word| word.starts_with(helper));
        (words.iter().any(|word| *word == wanted) && !is_helper).then_some(id)
    });
    found.context("no browser runs on this profile")
}

/// Whether a process still runs: it does not when it has ended and is only not yet collected, "Z".
fn runs(id: u32) -> bool {
    fs::read_to_string(format!("/proc/{id}/stat")).is_ok_and(|stat| !stat.contains(") Z"))
}
