//! Shaping over rows: two numbers typed, and the rows to shape in are read from the screen.

use crate::{browser::Browser, job::unfold, stage::Stage};
use anyhow::{Result, ensure};

const AMOUNT: &str = "#shaping-amount";
const ROWS: &str = "#shaping-rows";

/// Flat and from the first page: the instruction in its one convention, the rows used, both ends of the pair.
pub async fn she_loses_stitches_over_many_rows(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("").await?;
    browser.press("main a[href='#/shaping']").await?;
    browser.until("document.querySelector('#shaping-amount')").await?;
    browser.type_into(AMOUNT, "18").await?;
    ensure!(!browser.shows(".answer").await?, "an answer before a question");
    browser.type_into(ROWS, "66").await?;
    reads(
        browser,
        "Work a decrease row. Then 7 rows plain, then a decrease row; 8 times. Then 1 row plain.",
        "65 rows used of 66. You lose 18 stitches.",
    )
    .await?;
    says(browser, "K1, ssk, knit to the last 3 stitches, k2tog, K1").await?;
    says(browser, "at most 66 can go").await?;
    browser.press(".places summary").await?;
    says(browser, "Row 9 (RS): 4 fewer in all").await?;
    // The same from a wrong-side row: a plain row first, so that shaping stays on the right side.
    browser.choose("#shaping-knitting", "wrong").await?;
    browser.type_into("#shaping-stitches", "58").await?;
    reads(
        browser,
        "Work 1 row plain, then a decrease row. Then 5 rows plain, then a decrease row. Then 7 rows plain, then a decrease row; 7 times. Then 2 rows plain.",
        "64 rows used of 66. 58 stitches become 40.",
    )
    .await
}

/// A sleeve from the cuff in the round: the count in the end is asked for, and that of now.
pub async fn she_widens_a_sleeve(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/shaping").await?;
    browser.choose("#shaping-ask", "reach").await?;
    browser.choose("#shaping-knitting", "round").await?;
    browser.type_into(AMOUNT, "84").await?;
    browser.type_into(ROWS, "96").await?;
    ensure!(
        !browser.shows(".answer").await?,
        "an answer before the count now is known"
    );
    browser.type_into("#shaping-stitches", "56").await?;
    unfold(browser).await?;
    // The beginning as a gap like the others.
    browser.type_into("#shaping-first", " ").await?;
    reads(
        browser,
        "Work 5 rounds plain, then an increase round; 3 times. Then 6 rounds plain, then an increase round; 11 times. Then 1 round plain.",
        "95 rounds used of 96. 56 stitches become 84.",
    )
    .await?;
    browser.choose("#shaping-increase", "kfb").await?;
    says(browser, "K1, kfb, knit to the last 3 stitches, kfb, K2").await
}

/// Too steep: the nearest numbers are a tap away, and what is steeper has a tool of its own.
pub async fn she_is_told_what_the_rows_can_take(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/shaping").await?;
    browser.type_into(AMOUNT, "80").await?;
    browser.type_into(ROWS, "66").await?;
    browser
        .until("document.querySelector('#shaping-amount-problem')")
        .await?;
    let said = browser.text("#shaping-amount-problem").await?;
    ensure!(said.contains("the tool Steps"), "the page says {said:?}");
    browser.press_button("#shaping-rows-problem", "Use 80").await?;
    reads(
        browser,
        "Work a decrease row. Then 1 row plain, then a decrease row; 39 times. Then 1 row plain.",
        "79 rows used of 80. You lose 80 stitches.",
    )
    .await
}

async fn reads(browser: &Browser, line: &str, outcome: &str) -> Result<()> {
    browser
        .until(&format!(
            "document.querySelector('.answer .row')?.innerText === {line:?}"
        ))
        .await?;
    let said = browser.text(".answer .outcome").await?;
    ensure!(said == outcome, "the page says {said:?}, not {outcome:?}");
    Ok(())
}

async fn says(browser: &Browser, words: &str) -> Result<()> {
    browser
        .until(&format!(
            "document.querySelector('.answers').innerText.includes({words:?})"
        ))
        .await
}
