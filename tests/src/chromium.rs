//! Chromium under its driver: started on a port of its own, given a size and a colour scheme, ended by its id.
//!
//! What is started is its headless shell where there is one of the same version: the same engine without what draws
//! windows and menus, which takes a third of the processor's time to start. Who needs more says so ([`Extent`]).

pub use crate::drive::{free_port, wait_for_port};

use crate::drive::{self, COMMAND};
use anyhow::{Context, Result};
use serde_json::{Value, json};
use std::{
    path::Path,
    process::{Command, Stdio},
    sync::LazyLock,
};
use thirtyfour::{
    BrowserCapabilitiesHelper, CapabilitiesHelper, ChromiumLikeCapabilities, DesiredCapabilities, WebDriver,
};
use xtask::run::Ending;

/// The engine alone, as Debian has it, and the driver whose version it must have.
const SHELL: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/src/headless-shell.sh");
const DRIVER: &str = "chromedriver";

/// Whether there is a shell that the driver can steer.
static HAS_SHELL: LazyLock<bool> = LazyLock::new(|| match (version(SHELL), version(DRIVER)) {
    (Some(shell), Some(driver)) => shell == driver,
    (..) => false,
});

/// The version that a program says it has: the first of its words that begins with a digit.
fn version(program: &str) -> Option<String> {
    let output = Command::new(program).arg("--version").output().ok()?;
    let said = String::from_utf8(output.stdout).ok()?;
    let mut words = said.split_whitespace();
    words
        .find(|word| word.starts_with(|sign: char| sign.is_ascii_digit()))
        .map(str::to_owned)
}

/// A browser and the driver it is steered by; both end when this is dropped.
pub struct Chromium {
    /// The session.
    pub driver: WebDriver,
    _process: Ending,
}

/// How much of the browser is needed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Extent {
    /// Its engine: pages, scripts, pictures, paper.
    Engine,
    /// All of it: preferences, a process for each address, and windows that draw behind another.
    Whole,
}

/// How the page is looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct View {
    /// Width in CSS pixels.
    pub width: u32,
    /// Height in CSS pixels.
    pub height: u32,
    /// Whether the reader prefers a dark page.
    pub dark: bool,
}

impl Chromium {
    /// Starts a browser without a window, with a profile that is forgotten.
    pub async fn start() -> Result<Self> {
        drive::start_again(async || Self::start_once(Extent::Engine, None, &json!({})).await).await
    }

    /// Starts a browser without a window on the profile in this folder, with these preferences.
    pub async fn start_with(extent: Extent, profile: &Path, preferences: Value) -> Result<Self> {
        drive::start_again(async || Self::start_once(extent, Some(profile), &preferences).await).await
    }

    async fn start_once(extent: Extent, profile: Option<&Path>, preferences: &Value) -> Result<Self> {
        let port = free_port()?;
        let process = drive::lettered(&mut Command::new(DRIVER))
            .arg(format!("--port={port}"))
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .spawn()
            .context("chromedriver could not be started")?;
        let process = Ending(process);
        wait_for_port(port).await?;
        let mut capabilities = DesiredCapabilities::chrome();
        // No sandbox, because a continuous integration machine runs as root; no calls home; and no limit to how many
        // addresses of a page are gone to in ten seconds, since a test is quicker than any hand.
        for argument in [
            "--headless=new",
            "--no-sandbox",
            "--disable-dev-shm-usage",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-ipc-flooding-protection",
            "--no-first-run",
            "--hide-scrollbars",
        ] {
            capabilities.add_arg(argument)?;
        }
        if *HAS_SHELL && extent == Extent::Engine {
            capabilities.set_binary(SHELL)?;
        }
        if let Some(profile) = profile {
            capabilities.add_arg(&format!("--user-data-dir={}", profile.display()))?;
        }
        capabilities.set_browser_option("prefs", preferences.clone())?;
        capabilities.set("goog:loggingPrefs", json!({ "browser": "ALL" }))?;
        let driver = WebDriver::builder(format!("http://127.0.0.1:{port}"), capabilities)
            .request_timeout(COMMAND)
            .await?;
        driver.set_script_timeout(COMMAND).await?;
        Ok(Self {
            driver,
            _process: process,
        })
    }

    /// Ends the session; the processes end with the value.
    pub async fn quit(self) -> Result<()> {
        Ok(self.driver.quit().await?)
    }

    /// Looks at the page in this way from now on. A window cannot be as narrow as a phone, so the size is emulated.
    pub async fn look(&self, view: View) -> Result<()> {
        let metrics = json!({
            "width": view.width, "height": view.height, "deviceScaleFactor": 1, "mobile": true,
        });
        self.tell("Emulation.setDeviceMetricsOverride", metrics).await?;
        let scheme = if view.dark { "dark" } else { "light" };
        let features = json!({ "features": [{ "name": "prefers-color-scheme", "value": scheme }] });
        self.tell("Emulation.setEmulatedMedia", features).await?;
        Ok(())
    }

    /// One command of the browser's own protocol.
    pub async fn tell(&self, method: &str, parameters: serde_json::Value) -> Result<serde_json::Value> {
        Ok(self.driver.cdp().send_raw(method, parameters).await?)
    }

    /// Waits until an expression is true in the page.
    pub async fn until(&self, expression: &str) -> Result<()> {
        drive::until(&self.driver, expression).await
    }

    /// Waits until the app has taken the place of the words that stand there while it loads.
    pub async fn until_started(&self) -> Result<()> {
        self.until(drive::STARTED).await
    }
}
