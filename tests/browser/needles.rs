//! Needle sizes: a number typed as it stands on the needle, and the millimetres read from the screen.

use crate::{
    browser::{Browser, words_of},
    job::unfold,
    stage::Stage,
};
use anyhow::{Result, ensure};

const SIZE: &str = "#needles-size";
const SYSTEM: &str = "#needles-system";

/// From a US and a Japanese number to the needle, which is kept and taken along to the tail.
pub async fn she_finds_her_needle_and_takes_it_along(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("").await?;
    browser.press("main a[href='#/needles']").await?;
    browser.until("document.querySelector('#needles-size')").await?;
    browser.type_into(SIZE, "10 1/2").await?;
    reads(browser, "6.5 mm", "6.5 mm").await?;
    // A quarter of a millimetre is never rounded away.
    browser.type_into(SIZE, "1").await?;
    reads(browser, "2.25 mm", "2.25 mm").await?;
    browser.type_into(SIZE, "5").await?;
    browser.choose(SYSTEM, "jp").await?;
    // The nearest hole is 3.5 mm, and stops it.
    reads(browser, "3.6 mm", "3.75 mm").await?;
    let names = browser.text(".answers .meanings").await?;
    for said in ["4 (3.5", "thinner)", "from memory"] {
        ensure!(names.contains(said), "no \"{said}\" in: {names}");
    }
    browser.press_button(".answers", "Keep 3.6 mm for all tools").await?;
    browser.go("#/tail").await?;
    browser.until("document.querySelector('#tail-stitches')").await?;
    unfold(browser).await?;
    browser.press_button(".question", "Use 3.6 mm").await?;
    browser.settle().await?;
    let taken = browser.value("#tail-needle").await?;
    ensure!(taken == "3.6", "the tail has {taken:?}");
    Ok(())
}

/// A number that stands for two needles, one that none has, and a needle that has lost its number.
pub async fn a_number_may_be_two_needles_or_none(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/needles").await?;
    browser.type_into(SIZE, "17").await?;
    reads(browser, "12 mm or 12.75 mm", "12.75 mm").await?;
    browser.type_into(SIZE, "12").await?;
    ensure!(!browser.shows(".answer").await?, "there is no such needle");
    browser.press_button(".question .problem", "Use 13").await?;
    reads(browser, "9 mm", "9 mm").await?;
    browser.type_into(SIZE, "uk 7").await?;
    reads(browser, "4.5 mm", "4.5 mm").await?;
    browser.choose(SYSTEM, "hole").await?;
    browser.type_into(SIZE, "3.75").await?;
    reads(browser, "3.6 mm or 3.75 mm", "3.75 mm").await
}

async fn reads(browser: &Browser, line: &str, hole: &str) -> Result<()> {
    let (row, outcome) = (words_of(".answer .row"), words_of(".answer .outcome strong"));
    browser
        .until(&format!("{row} === {line:?} && {outcome} === {hole:?}"))
        .await
}
