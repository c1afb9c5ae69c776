//! Firefox under its driver, without a window, on a profile of its own. It is told to ask nobody for anything, and a page
//! in it can be as narrow as a phone's. It takes seconds to start, so one can be used again: every scenario has an address
//! of its own, and what a page keeps is kept by its address.

use crate::{
    chromium::View,
    company::{Afterwards, Company},
    drive::{self, COMMAND, free_port, wait_for_port},
};
use anyhow::{Context, Result};
use serde_json::{Map, Value, json};
use std::{
    fs,
    path::{Path, PathBuf},
};
use thirtyfour::{BrowserCapabilitiesHelper, FirefoxCapabilities, WebDriver};
use xtask::tools;

/// The program, as Debian calls it.
const PROGRAM: &str = "firefox-esr";

/// The size of a window without another one.
const SIZE: [u32; 2] = [1366, 768];

/// What its own window is drawn with: no bar around the page, and no least width.
const WINDOW: &str = ":root { min-width: 0 !important; min-height: 0 !important }
    #navigator-toolbox, #sidebar-main { display: none !important }";

/// A browser and the driver it is steered by; both end when this is dropped.
pub struct Firefox {
    /// The session.
    pub driver: WebDriver,
    _company: Company,
}

impl Firefox {
    /// Starts a browser that writes into `home` only, with these preferences beside its usual ones.
    pub async fn start(home: &Path, preferences: &Value, afterwards: Afterwards) -> Result<Self> {
        drive::start_again(async || Self::start_once(home, preferences, afterwards).await).await
    }

    async fn start_once(home: &Path, preferences: &Value, afterwards: Afterwards) -> Result<Self> {
        let program = tools::place(&tools::GECKODRIVER).with_context(|| {
            let tool = tools::GECKODRIVER;
            format!("{0} is missing: `cargo install {0}@{1}`", tool.package, tool.version)
        })?;
        let profile = profile(home);
        make_ready(&profile)?;
        let port = free_port()?;
        // Its second way to be steered is not used, and would want a port that all browsers share.
        let arguments = [&*format!("--port={port}"), "--websocket-port=0"];
        let company = Company::start(&program, &arguments, home, afterwards)?;
        wait_for_port(port).await?;
        let mut capabilities = FirefoxCapabilities::new();
        capabilities.set_firefox_binary(&found(PROGRAM)?)?;
        for argument in ["-headless", "-profile"] {
            capabilities.add_arg(argument)?;
        }
        capabilities.add_arg(&profile.to_string_lossy())?;
        let mut all = quiet();
        all.extend(preferences.as_object().cloned().unwrap_or_default());
        capabilities.set_browser_option("prefs", all)?;
        let driver = WebDriver::builder(format!("http://127.0.0.1:{port}"), capabilities)
            .request_timeout(COMMAND)
            .await?;
        driver.set_script_timeout(COMMAND).await?;
        Ok(Self {
            driver,
            _company: company,
        })
    }

    /// Leaves one empty window, of the size it had at first, for another scenario.
    pub async fn begin_anew(&self) -> Result<()> {
        let fresh = self.driver.new_window().await?;
        for window in self.driver.windows().await? {
            if window != fresh {
                self.driver.switch_to_window(window).await?;
                self.driver.close_window().await?;
            }
        }
        self.driver.switch_to_window(fresh).await?;
        let [width, height] = SIZE;
        self.driver.set_window_rect(0, 0, width, height).await?;
        Ok(())
    }

    /// Gives the page this size from now on. The light is the day's, until the browser is started with another preference.
    pub async fn look(&self, view: View) -> Result<()> {
        const FRAME: &str = "return [outerWidth - innerWidth, outerHeight - innerHeight]";
        let frame = self.driver.execute(FRAME, []).await?;
        let [across, down]: [u32; 2] = serde_json::from_value(frame.json().clone())?;
        self.driver
            .set_window_rect(0, 0, view.width + across, view.height + down)
            .await?;
        let is_so = format!("innerWidth === {} && innerHeight === {}", view.width, view.height);
        drive::until(&self.driver, &is_so).await
    }
}

/// The profile of a browser that lives in this folder.
pub fn profile(home: &Path) -> PathBuf {
    home.join("profile")
}

/// Puts what its own window is drawn with into a profile, and takes away what a browser that was ended by force left there:
/// the driver would take its port, which may be another browser's by now, for the new one's.
fn make_ready(profile: &Path) -> Result<()> {
    let folder = profile.join("chrome");
    fs::create_dir_all(&folder)?;
    let port = profile.join("MarionetteActivePort");
    if port.exists() {
        fs::remove_file(port)?;
    }
    Ok(fs::write(folder.join("userChrome.css"), WINDOW)?)
}

/// Where a program is; its driver takes whole paths only.
fn found(program: &str) -> Result<String> {
    let path = std::env::var_os("PATH").unwrap_or_default();
    let found = std::env::split_paths(&path)
        .map(|folder| folder.join(program))
        .find(|place| place.is_file());
    let found = found.with_context(|| format!("{program} is missing"))?;
    Ok(found.to_string_lossy().into_owned())
}

/// Preferences by which nothing is asked of anybody outside, and nothing stands before the page.
fn quiet() -> Map<String, Value> {
    let off = [
        "app.normandy.enabled",
        "app.update.auto",
        "app.update.enabled",
        "browser.aboutwelcome.enabled",
        "browser.newtabpage.enabled",
        "browser.region.update.enabled",
        "browser.safebrowsing.blockedURIs.enabled",
        "browser.safebrowsing.downloads.enabled",
        "browser.safebrowsing.malware.enabled",
        "browser.safebrowsing.phishing.enabled",
        "browser.search.update",
        "browser.shell.checkDefaultBrowser",
        "datareporting.healthreport.uploadEnabled",
        "datareporting.policy.dataSubmissionEnabled",
        "extensions.getAddons.cache.enabled",
        "extensions.systemAddon.update.enabled",
        "extensions.update.enabled",
        "identity.fxaccounts.enabled",
        "media.gmp-manager.updateEnabled",
        "network.captive-portal-service.enabled",
        "network.connectivity-service.enabled",
        "network.prefetch-next",
        "toolkit.telemetry.enabled",
        "toolkit.telemetry.unified",
    ];
    let on = [
        "app.update.disabledForTesting",
        "network.dns.disablePrefetch",
        "toolkit.legacyUserProfileCustomizations.stylesheets",
        "trailhead.firstrun.didSeeAboutWelcome",
    ];
    let nowhere = [
        "browser.region.network.url",
        "browser.search.geoip.url",
        "dom.push.serverURL",
        "media.gmp-manager.url",
        "toolkit.telemetry.server",
    ];
    let other = [
        ("browser.startup.homepage", json!("about:blank")),
        ("browser.startup.homepage_override.mstone", json!("ignore")),
        ("browser.startup.page", json!(0)),
        // The light of the day, whatever the machine prefers.
        ("layout.css.prefers-color-scheme.content-override", json!(1)),
        ("network.http.speculative-parallel-limit", json!(0)),
        ("network.trr.mode", json!(5)),
        ("services.settings.server", json!("data:,#remote-settings-dummy/v1")),
        // Bars that take no room, as on a phone.
        ("ui.useOverlayScrollbars", json!(1)),
    ];
    let off = off.map(|name| (name, json!(false)));
    let on = on.map(|name| (name, json!(true)));
    let nowhere = nowhere.map(|name| (name, json!("")));
    let all = off.into_iter().chain(on).chain(nowhere).chain(other);
    all.map(|(name, value)| (name.to_owned(), value)).collect()
}
