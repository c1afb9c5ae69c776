//! Takes pictures of a served page: `shots <address> <folder> <readme picture>`.
//!
//! Every state that the page at `#/gallery` links to, on a phone and on a tablet, light and dusk, whole pages, to be
//! looked at; and one window of the page for the README.

use anyhow::{Context, Result, ensure};
use loopwright_tests::chromium::{Chromium, View};
use serde_json::json;
use std::{
    env, fs,
    path::{Path, PathBuf},
};
use thirtyfour::By;

/// A phone and a tablet, upright.
const SIZES: [(u32, u32); 2] = [(390, 844), (820, 1180)];

/// What the README shows, and in which window.
const README_PAGE: &str = "#/gallery/spacing/filled";
const README_VIEW: View = View {
    width: 820,
    height: 1180,
    dark: false,
};

/// Done when letters are there, nothing moves, and what was drawn last is on the screen.
const AT_REST: &str = "const done = arguments[arguments.length - 1];
    const ended = (moving) => moving.finished.catch(() => undefined);
    Promise.all([document.fonts.ready, ...document.getAnimations().map(ended)])
        .then(() => requestAnimationFrame(() => requestAnimationFrame(() => done(true))));";

#[tokio::main]
async fn main() -> Result<()> {
    let mut arguments = env::args().skip(1);
    let address = arguments.next().context("which address?")?;
    let folder = PathBuf::from(arguments.next().context("which folder?")?);
    let readme = arguments.next().context("which picture for the README?")?;
    fs::create_dir_all(&folder)?;

    let browser = Chromium::start().await?;
    let states = states(&browser, &address).await?;
    ensure!(!states.is_empty(), "the gallery lists no state");
    for (width, height) in SIZES {
        for dark in [false, true] {
            browser.look(View { width, height, dark }).await?;
            for (name, page) in &states {
                let shade = if dark { "dusk" } else { "light" };
                let picture = folder.join(format!("{name}-{width}-{shade}.png"));
                open(&browser, page, width).await?;
                take(&browser, &picture, true).await?;
                println!("{}", picture.display());
            }
        }
    }
    browser.look(README_VIEW).await?;
    open(&browser, &format!("{address}{README_PAGE}"), README_VIEW.width).await?;
    take(&browser, Path::new(&readme), false).await?;
    println!("{readme}");
    browser.quit().await
}

/// The name and address of every state in the gallery.
async fn states(browser: &Chromium, address: &str) -> Result<Vec<(String, String)>> {
    browser.driver.goto(format!("{address}#/gallery")).await?;
    browser.until_started().await?;
    let mut states = Vec::new();
    for link in browser.driver.find_all(By::Css("a[data-state]")).await? {
        let name = link.attr("data-state").await?.unwrap_or_default();
        let page = link.prop("href").await?.context("a state without an address")?;
        // A name becomes the name of a file.
        let plain = name
            .chars()
            .map(|letter| if letter.is_alphanumeric() { letter } else { '-' });
        states.push((plain.collect(), page));
    }
    Ok(states)
}

/// Opens a page afresh; nothing is carried over from the one before.
async fn open(browser: &Chromium, page: &str, width: u32) -> Result<()> {
    browser.driver.goto("about:blank").await?;
    browser.driver.goto(page).await?;
    browser.until_started().await?;
    let inner = browser.driver.execute("return innerWidth", []).await?;
    ensure!(
        inner.json() == &json!(width),
        "{page} is {} wide, not {width}",
        inner.json()
    );
    browser.driver.execute_async(AT_REST, []).await?;
    Ok(())
}

async fn take(browser: &Chromium, picture: &Path, whole: bool) -> Result<()> {
    if whole {
        let height = browser
            .driver
            .execute("return document.documentElement.scrollHeight", [])
            .await?;
        let size = browser.driver.execute("return innerWidth", []).await?;
        let metrics = json!({
            "width": size.json(), "height": height.json(), "deviceScaleFactor": 1, "mobile": true,
        });
        browser.tell("Emulation.setDeviceMetricsOverride", metrics).await?;
    }
    browser
        .driver
        .screenshot(picture)
        .await
        .with_context(|| format!("no picture {}", picture.display()))
}
