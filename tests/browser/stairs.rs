//! Steps at a shoulder and a neck: stitches and steps typed, and what to bind off in which row is read from the screen.

use crate::{browser::Browser, job::unfold, stage::Stage};
use anyhow::{Result, ensure};

/// One shoulder, then both; and the rows that are there instead of the steps.
pub async fn she_binds_off_a_shoulder(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("").await?;
    browser.press("main a[href='#/stairs']").await?;
    browser.until("document.querySelector('#stairs-stitches')").await?;
    browser.type_into("#stairs-stitches", "27").await?;
    ensure!(!browser.shows(".answer").await?, "an answer before a question");
    browser.type_into("#stairs-steps", "4").await?;
    reads(browser, "Bind off 7, 7, 7, 6, each at the start of a right-side row.").await?;
    says(browser, "Row 7 (RS): bind off 6; 27 of 27 gone").await?;
    says(browser, "one row later, in row 2").await?;
    unfold(browser).await?;
    browser.choose("#stairs-edge", "both").await?;
    reads(browser, "Bind off 7, 7, 7, 7, 7, 7, 6, 6, each at the start of a row.").await?;
    browser.choose("#stairs-edge", "left").await?;
    browser.choose("#stairs-by", "rows").await?;
    // What was typed stays: 4 rows are two steps of the left edge.
    reads(browser, "Bind off 14, 13, each at the start of a wrong-side row.").await?;
    browser.type_into("#stairs-rows", "7").await?;
    // Of 7 rows three begin at the left edge.
    reads(
        browser,
        "Bind off 9, 9, 9, each at the start of a wrong-side row. Then 1 row plain.",
    )
    .await
}

/// A neck has its larger steps first; and the same in short rows, with as many turns.
pub async fn she_rounds_a_neck_and_turns(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/stairs").await?;
    browser.type_into("#stairs-stitches", "10").await?;
    browser.type_into("#stairs-steps", "4").await?;
    reads(browser, "Bind off 3, 2, 3, 2, each at the start of a right-side row.").await?;
    browser.choose("#stairs-place", "neck").await?;
    reads(browser, "Bind off 3, 3, 2, 2, each at the start of a right-side row.").await?;
    browser.choose("#stairs-way", "short").await?;
    reads(
        browser,
        "Turn with 3, 6, 8 stitches left, each at the end of a wrong-side row. Then work 1 such row to the end.",
    )
    .await?;
    says(browser, "3 turns at an edge").await?;
    says(browser, "close the gaps in the last row").await?;
    says(browser, "Each half of a neck is worked alone;").await?;
    browser.type_into("#stairs-steps", "11").await?;
    browser.press_button("#stairs-steps-problem", "Use 10").await?;
    says(browser, "9 turns at an edge").await
}

async fn reads(browser: &Browser, line: &str) -> Result<()> {
    browser
        .until(&format!(
            "document.querySelector('.answer .row')?.innerText === {line:?}"
        ))
        .await
}

async fn says(browser: &Browser, words: &str) -> Result<()> {
    browser
        .until(&format!(
            "document.querySelector('.answers').innerText.includes({words:?})"
        ))
        .await
}
