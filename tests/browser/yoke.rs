//! The yoke: its few rounds, each with how many it changes and the count after it.

use crate::{
    browser::{Browser, words_of},
    job::unfold,
    stage::Stage,
};
use anyhow::{Result, ensure};

/// From the body up, in whole repeats; then the same yoke from the neck down.
pub async fn she_shapes_a_yoke_in_four_rounds(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/yoke").await?;
    for (field, count) in [("from", "320"), ("to", "100"), ("rounds", "60")] {
        browser.type_into(&["#yoke-", field].concat(), count).await?;
    }
    reads(browser, "Decrease 55 evenly in rounds 14, 29, 44 and 59").await?;
    unfold(browser).await?;
    browser.type_into("#yoke-multiple", "8").await?;
    browser.press_button(".question .problem", "Use 96").await?;
    reads(browser, "Decrease 56 evenly in rounds 14, 29, 44 and 59").await?;
    let answers = browser.text(".answers").await?;
    for round in [
        "Round 14: decrease 56 evenly, 264 stitches after it.",
        "Round 59: decrease 56 evenly, 96 stitches after it.",
    ] {
        ensure!(answers.contains(round), "no {round:?} in: {answers}");
    }
    browser.type_into("#yoke-multiple", "1").await?;
    browser.type_into("#yoke-from", "97").await?;
    browser.type_into("#yoke-to", "300").await?;
    browser.type_into("#yoke-shaping_rounds", "3").await?;
    reads(
        browser,
        "Increase evenly: 68 in round 19, 67 in round 39, 68 in round 59",
    )
    .await?;
    // The count that is kept is taken beside the first field.
    browser.press_button(".question", "Keep 97 for all tools").await?;
    // No round takes more than one in each gap.
    browser.type_into("#yoke-shaping_rounds", "1").await?;
    browser.press_button(".question .problem", "Use 3").await?;
    reads(
        browser,
        "Increase evenly: 68 in round 19, 67 in round 39, 68 in round 59",
    )
    .await
}

async fn reads(browser: &Browser, line: &str) -> Result<()> {
    let row = words_of(".answer .row");
    browser.until(&format!("{row} === {line:?}")).await
}
