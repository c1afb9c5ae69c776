//! The whole workbox as one file: saved from the page while there is no network, opened from a disk. It answers in every
//! tool, asks for nothing, says where it keeps, gives a copy of what was typed and takes one in.

use crate::{
    browser::{Browser, one_line},
    frozen,
    job::{fill, works_out},
    keep::stands,
    stage::Stage,
};
use anyhow::{Context, Result, ensure};
use serde_json::json;
use std::{fs, path::PathBuf};
use xtask::csp;

/// Takes the place of a download, which a browser without a window asks about: what is handed over is noted instead.
pub const CATCH: &str = "
    window.caught = null;
    const blobs = new Map();
    const make = URL.createObjectURL;
    URL.createObjectURL = (blob) => {
        const address = make.call(URL, blob);
        blobs.set(address, blob);
        return address;
    };
    HTMLAnchorElement.prototype.click = function () {
        blobs.get(this.href).text().then((text) => { window.caught = { name: this.download, text }; });
    };";

/// The name and the text of a file that was handed over.
pub struct Caught {
    /// What it is called.
    pub name: String,
    /// What is in it.
    pub text: String,
}

/// Saved without a network, opened from a disk: every tool answers as it did, and nothing is asked for.
pub async fn she_takes_the_workbox_along_as_one_file(stage: &mut Stage) -> Result<()> {
    let (place, html) = saved(stage).await?;
    let policy = csp::policy_in(&html).context("the file has no policy")?;
    ensure!(policy.starts_with("default-src 'none'"), "a weaker policy: {policy}");
    for source in [
        "'self'",
        "unsafe-inline",
        "'unsafe-eval'",
        "blob:",
        "http",
        "connect-src",
    ] {
        ensure!(!policy.contains(source), "the file may load from {source}: {policy}");
    }
    stage.browser.open(&format!("file://{}#/", place.display())).await?;
    frozen::one_link_of_each_tool_opens(stage).await?;
    let browser = &stage.browser;
    let loaded = "performance.getEntriesByType('resource').filter((entry) => !/^(data|blob):/.test(entry.name))";
    let loaded = browser.look_up(&format!("{loaded}.map((entry) => entry.name)")).await?;
    ensure!(loaded == json!([]), "the file loads {loaded}");
    ensure!(
        browser.run("return window.faults").await? == json!([]),
        "something was forbidden"
    );
    // It can be saved from itself, as it is.
    let again = save_again(browser).await?;
    ensure!(again.text == html, "the file is not what it was saved from");
    Ok(())
}

/// What is typed into the file is not in it: it says so, gives a copy before it is closed, and takes one in.
pub async fn a_workbox_in_one_file_gives_a_copy_and_takes_it(stage: &mut Stage) -> Result<()> {
    let (place, _) = saved(stage).await?;
    let address = format!("file://{}", place.display());
    let browser = &stage.browser;
    browser.open(&format!("{address}#/spacing")).await?;
    fill(browser, "132", "16").await?;
    works_out(browser, 132, 116).await?;
    browser
        .until("!document.querySelector('footer.keeping').innerText.includes('…')")
        .await?;
    let footer = browser.text("footer.keeping p").await?;
    let says_where =
        footer == "Kept in this browser on this computer, not in the file" || footer.starts_with("Not kept");
    ensure!(says_where, "it says: {footer}");
    browser.run(CATCH).await?;
    browser.press("footer.keeping button").await?;
    let copy = caught(browser).await?;
    ensure!(
        copy.name == "loopwright-backup.json" && copy.text.contains("132"),
        "the copy: {}",
        copy.text
    );
    let file = stage.folder.path().join(&copy.name);
    fs::write(&file, &copy.text)?;
    fill(browser, "90", "9").await?;
    browser.go("#/about").await?;
    let field = browser.find("#bring-back").await?;
    field.send_keys(file.to_string_lossy().as_ref()).await?;
    browser
        .until("/brought back/.test(document.querySelector('main').innerText)")
        .await?;
    browser.go("#/spacing").await?;
    stands(browser, "132", "16").await
}

/// Saves the workbox from the page, with the server gone; where it lies then, and its text.
async fn saved(stage: &mut Stage) -> Result<(PathBuf, String)> {
    stage.open_and_keep("#/about").await?;
    stage.server.stop()?;
    let file = save_again(&stage.browser).await?;
    let (start, end) = ("loopwright-0.1.0-", ".html");
    let day = file.name.strip_prefix(start).and_then(|rest| rest.strip_suffix(end));
    let day = day.with_context(|| format!("it is called {}", file.name))?;
    let is_day = day.len() == 10 && day.bytes().all(|byte| byte.is_ascii_digit() || byte == b'-');
    ensure!(is_day, "it is called {}", file.name);
    let place = stage.folder.path().join(&file.name);
    fs::write(&place, &file.text)?;
    Ok((place, file.text))
}

async fn save_again(browser: &Browser) -> Result<Caught> {
    browser.go("#/about").await?;
    browser.run(CATCH).await?;
    browser
        .press_button("main", "Save the whole workbox as one file")
        .await?;
    let file = caught(browser).await?;
    let said = one_line(&browser.text("main").await?);
    ensure!(
        said.contains(&format!("{} is among", file.name)),
        "it does not say where it is"
    );
    Ok(file)
}

/// The file that was handed over last.
pub async fn caught(browser: &Browser) -> Result<Caught> {
    browser.until("window.caught").await?;
    let caught = browser.look_up("window.caught").await?;
    let text = |name: &str| caught[name].as_str().map(str::to_owned);
    let (name, text) = text("name")
        .zip(text("text"))
        .context("what was handed over has no name or no text")?;
    Ok(Caught { name, text })
}
