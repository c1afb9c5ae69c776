//! The first page: tools are found by the words knitters use, what was used last is a tap away, inches are chosen once for
//! all tools, and most of the tools stand in the first window.

use crate::{
    browser::Browser,
    stage::Stage,
    states::{PHONE, TABLET},
    steps::{Step::*, play},
};
use anyhow::{Result, ensure};
use serde_json::{Value, json};
use thirtyfour::Key;

const SEARCH: &str = "#home-search";
const SWITCH: &str = "#settings-measures";
const SAID: &str = ".home [role='status']";

/// The tools that stand wholly in the window.
const IN_SIGHT: &str = "[...document.querySelectorAll('.menu a')]
    .filter((link) => link.getBoundingClientRect().bottom <= innerHeight).length";

/// The addresses of the tools in the list, in their order.
const LISTED: &str = "[...document.querySelectorAll('.menu a')].map((link) => link.getAttribute('href'))";

/// She types what she would say, goes on by keys alone, and finds her words again after a reload.
pub async fn she_finds_a_tool_by_her_own_words(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("").await?;
    finds(browser, "increase evenly", "#/spacing").await?;
    finds(browser, "long tail", "#/tail").await?;
    finds(browser, "ease", "#/sizing").await?;
    stage.until_kept().await?;
    browser.reload().await?;
    let typed = browser.value(SEARCH).await?;
    ensure!(typed == "ease", "after a reload \"{typed}\" is looked for");
    first(browser, "#/sizing").await?;
    browser.press(SEARCH).await?;
    browser.keys(Key::Enter).await?;
    browser
        .until("location.hash === '#/sizing' && document.querySelector('form.question')")
        .await?;
    ensure!(
        stage.server.asked().iter().all(|asked| !asked.contains("ease")),
        "what she looks for is sent"
    );
    Ok(())
}

/// An i-cord is no cord of a needle; what no tool does is said, and all of them stand below.
pub async fn what_is_not_found_is_said(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("").await?;
    browser.type_into(SEARCH, "i-cord").await?;
    first(browser, "#/yarn").await?;
    let listed = browser.look_up(LISTED).await?;
    ensure!(!holds(&listed, "#/cords"), "an i-cord is taken for a cord: {listed}");
    browser.type_into(SEARCH, "buttonhole").await?;
    play(stage, &[Says(SAID, "No tool here goes by “buttonhole”")]).await?;
    ensure!(all(browser).await?, "not all tools stand below");
    browser.press_button(".looking", "Show all").await?;
    browser
        .until("document.querySelector('#home-search').value === ''")
        .await?;
    ensure!(
        all(browser).await? && !browser.shows(SAID).await?,
        "not all tools are back"
    );
    Ok(())
}

/// The tool that was typed into last comes first, and still does after a reload.
pub async fn what_she_used_last_comes_first(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("").await?;
    ensure!(
        !browser.shows(".recent").await?,
        "something was used before anything was typed"
    );
    for (page, field) in [("#/tail", "#tail-stitches"), ("#/spacing", "#spacing-stitches")] {
        browser.go(page).await?;
        browser.until(&format!("document.querySelector('{field}')")).await?;
        browser.type_into(field, "132").await?;
    }
    stage.until_kept().await?;
    browser.go("#/").await?;
    used_last(browser, &["#/spacing", "#/tail"]).await?;
    browser.reload().await?;
    used_last(browser, &["#/spacing", "#/tail"]).await?;
    browser.go("#/tail").await?;
    browser.until("document.querySelector('#tail-stitches')").await?;
    browser.type_into("#tail-stitches", "120").await?;
    browser.go("#/").await?;
    used_last(browser, &["#/tail", "#/spacing"]).await
}

/// Inches are chosen once: fresh fields show them, what is typed stays as it is typed, and a field may differ.
pub async fn she_chooses_inches_once(stage: &mut Stage) -> Result<()> {
    stage.open("#/cast_on").await?;
    play(
        stage,
        &[
            Type("#cast_on-width", "100"),
            Go("#/"),
            Shown(SWITCH),
            Choose(SWITCH, "inches"),
            // Typed before: it keeps its number and its unit.
            Go("#/cast_on"),
            Shown("#cast_on-width"),
            Holds("#cast_on-width", "100"),
            Holds("#cast_on-width-unit", "cm"),
            Holds("#cast_on-gauge-unit", "4 in"),
            Go("#/sizing"),
            Shown("#sizing-bust"),
            Holds("#sizing-bust-unit", "in"),
            Kept,
            Reload,
            Shown("#sizing-bust"),
            Holds("#sizing-bust-unit", "in"),
            // One kind of field may differ, until all are chosen again.
            Choose("#sizing-bust-unit", "cm"),
            Go("#/cast_on"),
            Shown("#cast_on-gauge-unit"),
            Holds("#cast_on-gauge-unit", "4 in"),
            Go("#/about"),
            Shown(SWITCH),
            Holds(SWITCH, "inches"),
            Choose(SWITCH, "metric"),
            Choose(SWITCH, "inches"),
            Go("#/sizing"),
            Shown("#sizing-bust"),
            Holds("#sizing-bust-unit", "in"),
        ],
    )
    .await
}

/// Six tools and more in the first window of a phone, all of them with hardly any scrolling on a tablet, also when some
/// were used.
pub async fn most_tools_stand_in_the_first_window(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    for fresh in [true, false] {
        if !fresh {
            stage.open("#/spacing").await?;
            browser.type_into("#spacing-stitches", "132").await?;
            stage.until_kept().await?;
        }
        for (view, least) in [(PHONE, 6), (TABLET, 14)] {
            browser.look(view).await?;
            stage.open("").await?;
            let in_sight = browser.look_up(IN_SIGHT).await?;
            let is_enough = in_sight.as_u64().is_some_and(|tools| tools >= least);
            ensure!(is_enough, "only {in_sight} tools at {} wide", view.width);
        }
        let below = "document.querySelector('.menu:last-of-type').getBoundingClientRect().bottom / innerHeight";
        let below = browser.look_up(below).await?;
        ensure!(
            below.as_f64().is_some_and(|windows| windows < 1.25),
            "the tools end after {below} windows"
        );
    }
    Ok(())
}

async fn finds(browser: &Browser, text: &str, address: &str) -> Result<()> {
    browser.type_into(SEARCH, text).await?;
    first(browser, address).await
}

async fn first(browser: &Browser, address: &str) -> Result<()> {
    let first = "document.querySelector('.menu.found a')?.getAttribute('href')";
    browser.until(&format!("{first} === {address:?}")).await
}

async fn used_last(browser: &Browser, addresses: &[&str]) -> Result<()> {
    let used = "[...document.querySelectorAll('.recent a')].map((link) => link.getAttribute('href'))";
    browser
        .until(&format!("{used}.join() === {:?}", addresses.join(",")))
        .await
}

/// Whether all tools are listed, the swatch before the gauge that is measured on it.
async fn all(browser: &Browser) -> Result<bool> {
    let listed = browser.look_up(LISTED).await?;
    let begins = listed.get(0) == Some(&json!("#/swatch")) && listed.get(1) == Some(&json!("#/gauge"));
    Ok(begins && listed.as_array().is_some_and(|all| all.len() >= 16))
}

fn holds(listed: &Value, address: &str) -> bool {
    listed.as_array().is_some_and(|all| all.contains(&json!(address)))
}
