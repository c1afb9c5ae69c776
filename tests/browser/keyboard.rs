//! The job without a mouse: every control is reached in the order it is read, and it is seen where one is.

use crate::{
    differences::Difference,
    job::{AMOUNT, fill, works_out},
    stage::Stage,
};
use anyhow::{Context, Result, bail, ensure};
use loopwright_tests::drive::PATIENCE;
use serde_json::{Value, json};
use thirtyfour::Key;
use xtask::yardstick::Patience;

/// More controls than any page has.
const MANY: usize = 80;

/// What has the focus, whether that can be seen, and where it is.
const HERE: &str = "
    const here = document.activeElement;
    if (!here || here === document.body || here === document.documentElement) return null;
    const { outlineStyle, outlineWidth } = getComputedStyle(here);
    const box = here.getBoundingClientRect();
    return {
        name: here.id || here.getAttribute('href') || here.innerText.trim(),
        marked: outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2,
        box: [box.left, box.top, box.right, box.bottom, innerWidth, innerHeight],
        partly: box.width > 0 && box.top < innerHeight && box.bottom > 0,
        inside: box.width > 0 && box.left >= -1 && box.right <= innerWidth + 1 && box.top >= -1 && box.bottom <= innerHeight + 1,
    };";

/// The names of all controls that are drawn, in the order of the page.
const CONTROLS: &str = "
    return [...document.querySelectorAll('a[href], button, input, select, textarea, summary')]
        .filter((control) => control.checkVisibility() && !control.disabled)
        .map((control) => control.id || control.getAttribute('href') || control.innerText.trim());";

/// From the first page to a row by Tab, Enter and typing alone; then another decrease, in the folded fields.
pub async fn the_job_is_done_by_keys_alone(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("").await?;
    tab_to(stage, "#/spacing").await?;
    browser.keys(Key::Enter).await?;
    browser.until("document.querySelector('#spacing-stitches')").await?;
    tab_to(stage, "spacing-stitches").await?;
    browser.keys("132").await?;
    tab_to(stage, "spacing-ask").await?;
    tab_to(stage, "spacing-amount").await?;
    browser.keys("16").await?;
    works_out(browser, 132, 116).await?;
    tab_to(stage, "spacing-knitting").await?;
    // The first letter of a choice chooses it.
    browser.keys("f").await?;
    browser
        .until("document.querySelector('#spacing-knitting').value === 'flat'")
        .await?;
    tab_to(stage, "More about this").await?;
    browser.keys(Key::Enter).await?;
    browser.until("document.querySelector('details.more').open").await?;
    tab_to(stage, "spacing-decrease").await?;
    browser.keys("ssk").await?;
    browser
        .until("document.querySelector('.answer .row').innerText.includes('ssk')")
        .await?;
    works_out(browser, 132, 116).await
}

/// Tab meets every control of a page once, in order, marked, and in sight.
pub async fn every_control_is_reached_and_seen(stage: &mut Stage) -> Result<()> {
    stage.open("#/spacing").await?;
    fill(&stage.browser, "132", "70").await?;
    stage.until_kept().await?;
    for page in ["", "#/about", "#/spacing", "#/gallery/part/length-inch"] {
        stage.open(page).await?;
        stage
            .browser
            .run("document.querySelectorAll('details').forEach((details) => { details.open = true; })")
            .await?;
        stage.browser.settle().await?;
        let controls = stage.browser.run(CONTROLS).await?;
        let order = walk(stage, controls.as_array().map_or(0, Vec::len)).await?;
        ensure!(
            json!(order) == controls,
            "on {page} Tab goes\n{order:?}\nbut the page reads\n{controls}"
        );
    }
    Ok(())
}

/// The first thing Tab meets leads past the menu.
pub async fn the_menu_can_be_skipped(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/spacing").await?;
    browser.keys(Key::Tab).await?;
    let here = browser.run(HERE).await?;
    ensure!(here["name"] == json!("#page"), "Tab first meets {here}");
    ensure!(
        here["inside"] == json!(true) && here["marked"] == json!(true),
        "the skip link is not seen: {here}"
    );
    browser.keys(Key::Enter).await?;
    browser.until("location.hash === '#page'").await?;
    browser.keys(Key::Tab).await?;
    let here = browser.run(HERE).await?;
    ensure!(
        here["name"] == json!("spacing-stitches"),
        "behind the menu Tab meets {here}"
    );
    ensure!(browser.shows(AMOUNT).await?, "the page went away");
    Ok(())
}

async fn tab_to(stage: &Stage, name: &str) -> Result<()> {
    let mut met = Vec::new();
    for _ in 0..MANY {
        stage.browser.keys(Key::Tab).await?;
        let here = stage.browser.run(HERE).await?;
        let found = here["name"].as_str().unwrap_or_default().to_owned();
        if found == name {
            return seen(stage, &here).await;
        }
        met.push(found);
    }
    bail!("Tab never meets \"{name}\", only {met:?}")
}

async fn walk(stage: &Stage, most: usize) -> Result<Vec<String>> {
    let mut order = Vec::new();
    while order.len() < most {
        stage.browser.keys(Key::Tab).await?;
        let here = stage.browser.run(HERE).await?;
        if here.is_null() {
            break;
        }
        seen(stage, &here).await?;
        order.push(here["name"].as_str().context("a control without a name")?.to_owned());
    }
    Ok(order)
}

/// It may take a moment until the page has moved there.
async fn seen(stage: &Stage, here: &Value) -> Result<()> {
    ensure!(
        here["marked"] == json!(true),
        "one cannot see that this has the focus: {here}"
    );
    let mut patience = Patience::of(PATIENCE);
    let enough = if stage.engine.has(Difference::SeenInPart) {
        "partly"
    } else {
        "inside"
    };
    while stage.browser.run(HERE).await?[enough] != json!(true) {
        ensure!(!patience.is_over(), "this has the focus and is out of sight: {here}");
    }
    Ok(())
}
