//! The tail: a count and the class on the ball band, and how much yarn to leave is read from the screen.

use crate::{
    browser::{Browser, words_of},
    job::unfold,
    stage::Stage,
};
use anyhow::{Result, ensure};

const STITCHES: &str = "#tail-stitches";

/// The count that was cast on, with the one more that joins the round, is kept there by one tap and taken here by
/// another; then only the yarn is asked for.
pub async fn she_takes_her_count_along_to_the_tail(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/cast_on").await?;
    browser.type_into("#cast_on-width", "100").await?;
    browser.type_into("#cast_on-gauge", "21").await?;
    unfold(browser).await?;
    browser.choose("#cast_on-extra", "extra").await?;
    // The obvious count is that of the round, one stitch short of what the tail is for.
    browser.press_button(".answers", "Keep 211 for all tools").await?;
    browser.go("#/tail").await?;
    browser.until("document.querySelector('#tail-stitches')").await?;
    ensure!(browser.value(STITCHES).await?.is_empty(), "the count came by itself");
    browser.press_button(".question", "Use 211").await?;
    let known = browser.text(".question .known").await?;
    ensure!(
        known == "the one you keep for all tools",
        "not marked as taken: {known}"
    );
    let asks = browser.text(".answers").await?;
    ensure!(asks.contains("choose the class"), "the page says {asks:?}");
    browser.choose("#tail-yarn", "medium").await?;
    // An inch a stitch, 10 %, and 20 cm to weave in.
    reads(browser, "Leave a tail of 6.1 m").await?;
    // The stitches of this one come from the ball.
    browser.choose("#tail-method", "cable").await?;
    reads(browser, "Leave 20 cm").await
}

/// In inches and yards; and what she measured over 20 stitches wins.
pub async fn she_leaves_a_tail_in_yards(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/tail").await?;
    browser.type_into(STITCHES, "120").await?;
    browser.choose("#tail-yarn", "medium").await?;
    reads(browser, "Leave a tail of 3.6 m").await?;
    browser.choose("#settings-yarn", "yd").await?;
    reads(browser, "Leave a tail of 3.9 yd").await?;
    unfold(browser).await?;
    browser.choose("#tail-measured_used-unit", "in").await?;
    browser.type_into("#tail-measured_stitches", "20").await?;
    let asked = browser.text(".question .problem").await?;
    ensure!(asked.starts_with("Type this too"), "the page says {asked:?}");
    browser.type_into("#tail-measured_used", "17 1/2").await?;
    // 17 1/2 in a 20 stitches are 105 in; 5 % on top, and 20 cm.
    reads(browser, "Leave a tail of 3.3 yd").await?;
    let wins = browser.text(".ways .wins").await?;
    ensure!(wins.contains("By the piece you measured"), "the tail rests on {wins:?}");
    ensure!(
        !browser.text(".answers").await?.contains("A piece of 20 stitches"),
        "she has measured a piece already"
    );
    browser.type_into("#tail-needle", "US 6").await?;
    let asked = browser.text(".question .problem").await?;
    ensure!(asked.starts_with("Type millimetres"), "the page says {asked:?}");
    browser.type_into("#tail-needle", "5").await?;
    browser
        .until("document.querySelectorAll('.ways > div').length === 3")
        .await?;
    reads(browser, "Leave a tail of 3.3 yd").await
}

/// In the middle of casting on: enough, tight, or begun again.
pub async fn she_asks_whether_the_tail_will_do(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/tail").await?;
    browser.type_into(STITCHES, "120").await?;
    browser.choose("#tail-yarn", "medium").await?;
    browser.press(".question > details:last-of-type summary").await?;
    browser.type_into("#tail-left_tail", "1.5").await?;
    browser.type_into("#tail-left_to_go", "40").await?;
    says(browser, "Enough: with 40 to go, 18 cm will be over.").await?;
    browser.type_into("#tail-left_tail", "1.25").await?;
    says(browser, "Tight: 40 to go just fit").await?;
    browser.type_into("#tail-left_tail", "0.9").await?;
    says(browser, "Not enough: for 40 to go, 32 cm is lacking.").await
}

async fn reads(browser: &Browser, line: &str) -> Result<()> {
    let row = words_of(".answer .row");
    browser.until(&format!("{row} === {line:?}")).await
}

async fn says(browser: &Browser, verdict: &str) -> Result<()> {
    let said = words_of(".verdict");
    browser.until(&format!("{said}?.startsWith({verdict:?})")).await
}
