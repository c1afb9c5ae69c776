//! The swatch: what is hoped for typed, and what to cast on, how high, and in which order read.

use crate::{
    browser::{Browser, words_of},
    job::unfold,
    stage::Stage,
};
use anyhow::{Result, ensure};

const GAUGE: &str = "#swatch-gauge";

/// For a round, and flat with repeats.
pub async fn she_casts_on_a_swatch_with_room_round_its_middle(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("").await?;
    browser.press("main a[href='#/swatch']").await?;
    browser.until("document.querySelector('#swatch-gauge')").await?;
    browser.type_into(GAUGE, "21").await?;
    reads(browser, "Cast on 43", "21 stitches").await?;
    says(
        browser,
        &["until it is 15 cm high", "loosely across the back", "Cut the strands"],
        &[],
    )
    .await?;
    unfold(browser).await?;
    browser.type_into("#swatch-rows", "28").await?;
    says(browser, &["Work 42 rows, 15 cm high"], &[]).await?;
    // In the round a repeat has no plus.
    browser.type_into("#swatch-multiple", "8 + 3").await?;
    reads(browser, "Cast on 48", "21 stitches").await?;
    browser.choose("#swatch-knitting", "flat").await?;
    reads(browser, "Cast on 43", "21 stitches").await?;
    browser.type_into("#swatch-row_repeat", "8").await?;
    let expected = ["Work 48 rows, 17.1 cm high", "5 repeats of 8, plus 3", "back and forth"];
    says(browser, &expected, &["Cut the strands", "across the back"]).await
}

/// In inches: the middle is 4 in, and the height 6.
pub async fn she_plans_a_swatch_in_inches(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/swatch").await?;
    browser.until("document.querySelector('#swatch-gauge')").await?;
    browser.type_into(GAUGE, "18").await?;
    browser.choose("#swatch-gauge-unit", "4 in").await?;
    reads(browser, "Cast on 36", "18 stitches").await?;
    says(
        browser,
        &[
            "until it is 6 in high; it should be 8 in wide",
            "measured, 4 in each way",
            "Bind off",
        ],
        &[],
    )
    .await?;
    // An inch is what was counted, and 4 in are measured all the same.
    browser.type_into(GAUGE, "5").await?;
    browser.choose("#swatch-gauge-unit", "1 in").await?;
    reads(browser, "Cast on 40", "20 stitches").await?;
    browser.choose("#swatch-knitting", "flat").await?;
    says(browser, &["over 4 in in the middle"], &["off for a round"]).await
}

async fn reads(browser: &Browser, line: &str, outcome: &str) -> Result<()> {
    let [shown, strong] = [words_of(".answer .row"), words_of(".answer .outcome strong")];
    browser
        .until(&format!("{shown} === {line:?} && {strong} === {outcome:?}"))
        .await
}

async fn says(browser: &Browser, expected: &[&str], unsaid: &[&str]) -> Result<()> {
    let answers = browser.look_up(&words_of(".answers")).await?;
    let answers = answers.as_str().unwrap_or_default().to_owned();
    for said in expected {
        ensure!(answers.contains(said), "no \"{said}\" in: {answers}");
    }
    for said in unsaid {
        ensure!(!answers.contains(said), "\"{said}\" in: {answers}");
    }
    Ok(())
}
