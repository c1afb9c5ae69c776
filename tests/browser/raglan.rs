//! The raglan: body and sleeves, each to its own count.

use crate::{
    browser::{Browser, words_of},
    job::unfold,
    stage::Stage,
};
use anyhow::Result;

/// Two targets, a cast-on at the underarm, and what would be right where a target cannot be had.
pub async fn she_shapes_a_raglan_to_two_targets(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/raglan").await?;
    let counts = [
        ("body", "40"),
        ("sleeve", "10"),
        ("body_to", "120"),
        ("sleeve_to", "50"),
        ("rounds", "12"),
    ];
    for (field, count) in counts {
        browser.type_into(&["#raglan-", field].concat(), count).await?;
    }
    says(browser, ".question .problem", "Type 84 or fewer.").await?;
    browser.type_into("#raglan-rounds", "24").await?;
    // Every round but the last four, since 20 raglan rounds are to fit into 24.
    says(
        browser,
        ".answer .row",
        "Increase 8 in rounds 1, 2, 3, 4, 5, 6, 7, 8, 9",
    )
    .await?;
    says(browser, ".answers", "From neck to underarm").await?;
    let counts = [
        ("body", "56"),
        ("sleeve", "16"),
        ("body_to", "202"),
        ("sleeve_to", "68"),
        ("rounds", "64"),
    ];
    unfold(browser).await?;
    for (field, count) in counts.into_iter().chain([("underarm", "8")]) {
        browser.type_into(&["#raglan-", field].concat(), count).await?;
    }
    browser.press_button(".question .problem", "Use 200").await?;
    says(
        browser,
        ".answer .row",
        "Increase 8 in rounds 3, 5, 9, 11, 15, 17, 21, 23, 27, 29, 31, 35, 37, 41, 43, 47, 49, 53, 55, 59, 61 and 63. \
         Increase 4, on the body only, in rounds 1, 7, 13, 19, 25, 33, 39, 45, 51 and 57.",
    )
    .await?;
    says(browser, ".answer .outcome strong", "304 stitches").await?;
    let underarm =
        "Put 60 aside for each sleeve and cast on 8 at each underarm: 200 round the body, 68 round each sleeve.";
    says(browser, ".verdict", underarm).await
}

async fn says(browser: &Browser, css: &str, said: &str) -> Result<()> {
    browser.until(&format!("{}?.startsWith({said:?})", words_of(css))).await
}
