//! The flare: from the neck to a hem that lies flat, hangs or ruffles; when to increase is read from the screen.

use crate::{
    browser::{Browser, words_of},
    job::unfold,
    stage::Stage,
};
use anyhow::{Result, ensure};

/// The gauge is kept once in another tool and taken here; the hem lies flat first, then is so far round.
pub async fn she_flares_a_cape_with_the_gauge_she_keeps(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/cast_on").await?;
    browser.type_into("#cast_on-gauge", "21").await?;
    browser
        .press_button(".question", "Keep 21 over 10 cm for all tools")
        .await?;
    browser.go("#/flare").await?;
    browser.until("document.querySelector('#flare-neck')").await?;
    browser.press_button(".question", "Use 21 over 10 cm").await?;
    browser.type_into("#flare-neck", "96").await?;
    browser.type_into("#flare-depth", "30").await?;
    browser.type_into("#flare-row_gauge", "28").await?;
    outcome(browser, "488 stitches, 232.4 cm round").await?;
    says(
        browser,
        ".answer .row",
        "Increase 8 in every round but rounds 2, 4, 7, 9, 11",
    )
    .await?;
    says(browser, ".verdict", "It lies flat: 30 cm from neck to hem").await?;
    browser.choose("#flare-hem", "girth").await?;
    browser.type_into("#flare-girth", "120").await?;
    outcome(browser, "248 stitches, 118.1 cm round").await?;
    says(
        browser,
        ".answer .row",
        "Increase 8 in rounds 3, 7, 11, 16, 20, 25, 29, 33, 38, 42, 46, 51, 55, 59, 64, 68, 73, 77 and 81",
    )
    .await?;
    says(browser, ".verdict", "It hangs as a cone: 30 cm along its side").await?;
    browser.type_into("#flare-girth", "3 m").await?;
    says(
        browser,
        ".verdict",
        "It ruffles: 30 cm along the fabric and no farther out",
    )
    .await?;
    // Of the 632 stitches of the last round, not of the 96 at the neck.
    let answers = browser.text(".answers").await?;
    ensure!(answers.contains("To bind off 632 stitches"), "not in: {answers}");
    // Garter has more rows, and the same depth more rounds.
    browser.type_into("#flare-row_gauge", "42").await?;
    let answers = browser.text(".answers").await?;
    ensure!(answers.contains("126 rounds, 67 of them"), "not in: {answers}");
    says(browser, ".answer .row", "Increase 8 in each of 67 rounds, listed below").await?;
    ensure!(answers.contains("Round 125: 632 stitches"), "not in: {answers}");
    // Too fast for four at a time: what would do is a tap away.
    browser.type_into("#flare-row_gauge", "28").await?;
    unfold(browser).await?;
    browser.type_into("#flare-each", "4").await?;
    browser.press_button(".question .more", "Use 7").await?;
    outcome(browser, "628 stitches, 299 cm round").await
}

/// In inches, with both gauges over 4 inches; and a hem of so many stitches that her lines do not reach.
pub async fn she_flares_in_inches(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/flare").await?;
    browser.choose("#flare-depth-unit", "in").await?;
    browser.type_into("#flare-neck", "96").await?;
    browser.type_into("#flare-depth", "12").await?;
    for (gauge, count) in [("#flare-gauge", "20"), ("#flare-row_gauge", "28")] {
        browser.type_into(gauge, count).await?;
        browser.choose(&[gauge, "-unit"].concat(), "4 in").await?;
    }
    // 84 rounds of 2 pi 20 / 28 stitches.
    outcome(browser, "472 stitches, 94 3/8 in round").await?;
    browser.choose("#flare-hem", "stitches").await?;
    browser.type_into("#flare-stitches", "397").await?;
    says(browser, ".question .problem", "Type 392 or 400.").await?;
    browser.press_button(".question .problem", "Use 400").await?;
    outcome(browser, "400 stitches, 80 in round").await?;
    unfold(browser).await?;
    browser.type_into("#flare-stitches", "397").await?;
    browser.choose("#flare-lines", "scattered").await?;
    outcome(browser, "397 stitches, 79 3/8 in round").await?;
    let row = browser.text(".answer .row").await?;
    ensure!(row.ends_with("only 5 in the last of them"), "the page says {row:?}");
    Ok(())
}

async fn outcome(browser: &Browser, said: &str) -> Result<()> {
    let outcome = words_of(".answer .outcome strong");
    browser.until(&format!("{outcome} === {said:?}")).await
}

async fn says(browser: &Browser, css: &str, said: &str) -> Result<()> {
    browser.until(&format!("{}?.startsWith({said:?})", words_of(css))).await
}
