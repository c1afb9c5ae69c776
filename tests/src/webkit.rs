//! WebKit under its driver, on a display of its own that nobody sees. Its sessions keep nothing when they end.

use crate::drive::{self, COMMAND, free_port, wait_for_port};
use anyhow::{Context, Result};
use std::{
    io::{BufRead, BufReader},
    path::Path,
    process::{Command, Stdio},
};
use thirtyfour::{Capabilities, WebDriver};
use xtask::run::Ending;

/// A browser, the driver it is steered by and the display it stands on; all end when this is dropped.
pub struct WebKit {
    /// The session.
    pub driver: WebDriver,
    _process: Ending,
    _display: Ending,
}

impl WebKit {
    /// Starts a browser that writes into `home` only.
    pub async fn start(home: &Path) -> Result<Self> {
        drive::start_again(async || Self::start_once(home).await).await
    }

    async fn start_once(home: &Path) -> Result<Self> {
        let (display, number) = display()?;
        let port = free_port()?;
        let mut command = Command::new("WebKitWebDriver");
        let process = drive::lettered(drive::live_in(&mut command, home))
            .arg(format!("--port={port}"))
            .env("DISPLAY", format!(":{number}"))
            // Its sandbox does not start for root, which a continuous integration machine is.
            .env("WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS", "1")
            // Without a graphics card layers cost more than they save; and nothing is played that a search for codecs would
            // find. With both it takes two thirds of the processor.
            .env("WEBKIT_DISABLE_COMPOSITING_MODE", "1")
            .env("GST_PLUGIN_SYSTEM_PATH_1_0", "")
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .spawn()
            .context("WebKitWebDriver could not be started")?;
        let process = Ending(process);
        wait_for_port(port).await?;
        let mut capabilities = Capabilities::new();
        capabilities.set("browserName", "MiniBrowser")?;
        let driver = WebDriver::builder(format!("http://127.0.0.1:{port}"), capabilities)
            .request_timeout(COMMAND)
            .await?;
        driver.set_script_timeout(COMMAND).await?;
        Ok(Self {
            driver,
            _process: process,
            _display: display,
        })
    }
}

/// A display without a screen. It picks a free number by itself and says which.
fn display() -> Result<(Ending, u32)> {
    let child = Command::new("Xvfb")
        .args(["-displayfd", "1", "-nolisten", "tcp"])
        .args(["-screen", "0", "1280x1400x24"])
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .context("Xvfb could not be started")?;
    let mut display = Ending(child);
    let output = display.0.stdout.take().context("Xvfb has no output")?;
    let mut line = String::new();
    BufReader::new(output).read_line(&mut line)?;
    let number = line.trim().parse();
    Ok((
        display,
        number.with_context(|| format!("Xvfb named no display: {line:?}"))?,
    ))
}
