//! The unit beside a length: switching converts, and switching back without an edit brings the very text back.

use crate::{browser::Browser, stage::Stage};
use anyhow::{Result, ensure};

const LENGTH: &str = "#part-length";
const UNIT: &str = "#part-length-unit";

/// There and back, typed in either unit, and a length that cannot be read stays as it is.
pub async fn switching_the_unit_back_brings_her_text_back(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/gallery/part/length-cm").await?;
    reads(browser, "19").await?;
    switched(browser, "in", "7 1/2").await?;
    switched(browser, "cm", "19").await?;
    browser.type_into(LENGTH, "10,20 cm").await?;
    switched(browser, "in", "4").await?;
    switched(browser, "cm", "10,20 cm").await?;
    browser.type_into(LENGTH, "7 apples").await?;
    browser.choose(UNIT, "in").await?;
    browser.choose(UNIT, "cm").await?;
    reads(browser, "7 apples").await?;

    stage.open("#/gallery/part/length-inch").await?;
    reads(browser, "7 1/2").await?;
    switched(browser, "cm", "19.1").await?;
    switched(browser, "in", "7 1/2").await?;
    // Edited in the other unit it is a new length.
    browser.choose(UNIT, "cm").await?;
    browser.type_into(LENGTH, "20").await?;
    switched(browser, "in", "7 7/8").await?;
    switched(browser, "cm", "20").await?;
    // A fraction is a tap on a keypad without a slash.
    browser.choose(UNIT, "in").await?;
    browser.type_into(LENGTH, "9").await?;
    browser.press_button(".chips", "3/8").await?;
    reads(browser, "9 3/8").await
}

async fn switched(browser: &Browser, unit: &str, text: &str) -> Result<()> {
    browser.choose(UNIT, unit).await?;
    reads(browser, text).await
}

async fn reads(browser: &Browser, text: &str) -> Result<()> {
    browser.settle().await?;
    let value = browser.value(LENGTH).await?;
    ensure!(value == text, "\"{value}\" stands there, not \"{text}\"");
    Ok(())
}
