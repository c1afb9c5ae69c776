//! A pattern at another gauge: its numbers typed as they stand there, and one's own read from the screen.

use crate::{
    browser::{Browser, words_of},
    stage::Stage,
};
use anyhow::{Result, ensure};

/// A list as the pattern has it becomes a list; with the width she wants a size is followed instead.
pub async fn she_brings_a_pattern_to_her_gauge(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("").await?;
    browser.press("main a[href='#/regauge']").await?;
    browser.until("document.querySelector('#regauge-pattern')").await?;
    gauges(browser, "20", "22").await?;
    ensure!(!browser.shows(".answer").await?, "an answer before a question");
    browser.type_into("#regauge-counts", "180 (196, 212)").await?;
    reads(browser, "198 (216, 233)", "180 (196, 212)").await?;
    browser.press(".question > details:first-of-type summary").await?;
    browser.type_into("#regauge-multiple", "8").await?;
    reads(browser, "200 (216, 232)", "180 (196, 212)").await?;
    browser.type_into("#regauge-wanted", "91").await?;
    // The size that is 90 cm in the pattern comes out at 81.8.
    let measures = "89.1 cm, 1.9 cm less than you want";
    reads(browser, "Follow the size of 196 stitches", measures).await?;
    let followed = browser.text("table .pick").await?;
    ensure!(
        followed.contains("196") && followed.contains("follow this"),
        "{followed}"
    );
    says(browser, "81.8 cm").await?;
    browser.type_into("#regauge-counts", "180 (19x, 212)").await?;
    let asked = browser.text(".question .problem").await?;
    ensure!(asked.contains("figures"), "the page says {asked:?}");
    ensure!(
        browser.value("#regauge-counts").await? == "180 (19x, 212)",
        "her list was changed"
    );
    Ok(())
}

/// In inches: 20 in 4 in are not 20 in 10 cm.
pub async fn she_converts_between_inches_and_centimetres(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/regauge").await?;
    gauges(browser, "20", "20").await?;
    browser.type_into("#regauge-counts", "200").await?;
    reads(browser, "200", "200").await?;
    browser.choose("#regauge-pattern-unit", "4 in").await?;
    reads(browser, "203", "200").await?;
    says(browser, "4 in are longer than 10 cm").await?;
    browser.press(".question > details:first-of-type summary").await?;
    browser.choose("#regauge-wanted-unit", "in").await?;
    browser.type_into("#regauge-wanted", "40").await?;
    let measures = "39 3/8 in, 5/8 in less than you want";
    reads(browser, "Follow the size of 200 stitches", measures).await
}

/// Rows and shaping: the ends and the rows are converted, and the shaping is shared out anew.
pub async fn she_shapes_at_her_gauge(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/regauge").await?;
    gauges(browser, "20", "22").await?;
    browser.press(".question > details:nth-of-type(2) summary").await?;
    browser.type_into("#regauge-rows", "40").await?;
    let asks = browser.text(".answers").await?;
    ensure!(asks.contains("folded part"), "the page says {asks:?}");
    browser.type_into("#regauge-pattern_rows", "28").await?;
    browser.type_into("#regauge-own_rows", "30").await?;
    reads(browser, "43", "40").await?;
    browser.press(".question > details:first-of-type summary").await?;
    browser.choose("#regauge-knitting", "flat").await?;
    // Back and forth they end on the same side.
    reads(browser, "42", "40").await?;
    browser.type_into("#regauge-rows", " ").await?;
    browser.press(".question > details:last-of-type summary").await?;
    browser.type_into("#regauge-from", "60").await?;
    browser.type_into("#regauge-to", "42").await?;
    browser.type_into("#regauge-shaping_rows", "56").await?;
    reads(browser, "From 66 to 46 stitches", "60 rows").await?;
    // Ten times, not nine: every 6th row of the pattern is no rate here.
    let schedule = words_of(".verdict");
    browser
        .until(&format!(
            "{schedule} === 'Work 4 rows plain, then a decrease row. Then 5 rows plain, then a decrease row; 9 times. Then 1 row plain.'"
        ))
        .await?;
    browser.type_into("#regauge-to", "41").await?;
    browser.press_button(".problem", "Use 40").await?;
    reads(browser, "From 66 to 44 stitches", "60 rows").await
}

async fn gauges(browser: &Browser, pattern: &str, own: &str) -> Result<()> {
    browser.type_into("#regauge-pattern", pattern).await?;
    browser.type_into("#regauge-own", own).await
}

async fn reads(browser: &Browser, line: &str, outcome: &str) -> Result<()> {
    let (row, strong) = (words_of(".answer .row"), words_of(".answer .outcome strong"));
    browser
        .until(&format!("{row} === {line:?} && {strong} === {outcome:?}"))
        .await
}

async fn says(browser: &Browser, words: &str) -> Result<()> {
    let said = words_of(".answers");
    browser.until(&format!("{said}?.includes({words:?})")).await
}
