//! The browsers and their drivers, from Debian where that is possible.

use crate::{
    house,
    run::{minutes, run, say},
};
use anyhow::{Result, bail};
use std::{fs, process::Command};

/// A program the browser tests need, and the Debian package that brings it.
const PROGRAMS: [(&str, &str); 4] = [
    ("chromium", "chromium"),
    ("chromedriver", "chromium-driver"),
    ("WebKitWebDriver", "webkit2gtk-driver"),
    ("Xvfb", "xvfb"),
];

/// Letters to measure and picture pages with; a bare machine has none.
const FONTS: &str = "fonts-dejavu-core";

/// Installs what is missing, or says in one sentence what to install.
pub fn install() -> Result<()> {
    let missing = missing();
    if missing.is_empty() {
        return Ok(());
    }
    let list = missing.join(" ");
    if !(house::on_path("apt-get") && is_root()) {
        bail!("install these Debian packages, or what your system calls them, and try again: {list}");
    }
    say(&format!("Installing from Debian: {list}"));
    run(apt().args(["update", "--quiet"]), minutes(5))?;
    run(
        apt()
            .args(["install", "--quiet", "--yes", "--no-install-recommends"])
            .args(&missing),
        minutes(10),
    )
}

fn missing() -> Vec<&'static str> {
    let programs = PROGRAMS.iter().filter(|(program, _)| !house::on_path(program));
    let mut missing: Vec<&str> = programs.map(|(_, package)| *package).collect();
    if fs::read_dir("/usr/share/fonts/truetype").map_or(true, |mut fonts| fonts.next().is_none()) {
        missing.push(FONTS);
    }
    missing
}

fn apt() -> Command {
    let mut command = Command::new("apt-get");
    command.env("DEBIAN_FRONTEND", "noninteractive");
    command
}

fn is_root() -> bool {
    let output = Command::new("id").arg("-u").output();
    output.is_ok_and(|output| output.stdout.trim_ascii() == b"0")
}
