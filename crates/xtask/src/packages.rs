//! The browsers and their drivers, and the servers that examples are written for, from Debian where that is possible.

use crate::{
    house,
    run::{minutes, run, say},
};
use anyhow::{Result, bail};
use std::{path::Path, process::Command};

/// A program the browser tests need, and the Debian package that brings it.
const PROGRAMS: [(&str, &str); 5] = [
    ("chromium", "chromium"),
    ("chromedriver", "chromium-driver"),
    ("firefox-esr", "firefox-esr"),
    ("WebKitWebDriver", "webkit2gtk-driver"),
    ("Xvfb", "xvfb"),
];

/// Chromium without what draws windows, which is started in a third of the time. Without it the whole one is used.
const SHELL: [(&str, &str); 1] = [("chromium-headless-shell", "chromium-headless-shell")];

/// The servers that the examples in `web/hosting` are for, and a module of one of them.
const SERVERS: [(&str, &str); 2] = [("nginx", "nginx"), ("apache2", "apache2-bin")];
const BROTLI: (&str, &str) = (
    "/usr/lib/nginx/modules/ngx_http_brotli_static_module.so",
    "libnginx-mod-http-brotli-static",
);

/// Letters to measure and picture pages with. Other letters that a machine has are not used, since lines would break
/// elsewhere (`tests/src/fonts.conf`).
const FONTS: &str = "fonts-dejavu-core";
/// One of their files.
pub const LETTER: &str = "/usr/share/fonts/truetype/dejavu/DejaVuSerif.ttf";

/// Installs what is missing of browsers, drivers and letters, or says in one sentence what to install.
pub fn install() -> Result<()> {
    let mut missing = missing(&PROGRAMS);
    if !Path::new(LETTER).exists() {
        missing.push(FONTS);
    }
    fetch(&missing)?;
    if let Err(why) = fetch(&self::missing(&SHELL)) {
        say(&format!("Chromium is started whole, which takes longer: {why:#}"));
    }
    Ok(())
}

/// Installs what is missing of the servers, or says in one sentence what to install.
pub fn install_servers() -> Result<()> {
    let mut missing = missing(&SERVERS);
    if !Path::new(BROTLI.0).exists() {
        missing.push(BROTLI.1);
    }
    fetch(&missing)
}

fn fetch(missing: &[&str]) -> Result<()> {
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
            .args(missing),
        minutes(10),
    )
}

fn missing(programs: &[(&'static str, &'static str)]) -> Vec<&'static str> {
    let missing = programs.iter().filter(|(program, _)| !house::on_path(program));
    missing.map(|(_, package)| *package).collect()
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
