//! Cords: stitches at both ends of a piece and a gauge typed, and the circular needles and the changes read.

use crate::{
    browser::{Browser, words_of},
    job::unfold,
    stage::Stage,
};
use anyhow::{Result, ensure};

const GAUGE: &str = "#cords-gauge";

/// A yoke in centimetres, which grows: the cords, the window of the change, and the cords that she has.
pub async fn she_changes_cords_as_her_yoke_grows(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("").await?;
    browser.press("main a[href='#/cords']").await?;
    browser.until("document.querySelector('#cords-from')").await?;
    browser.type_into("#cords-from", "90").await?;
    browser.type_into(GAUGE, "20").await?;
    // Two figures are enough for a tube.
    reads(browser, ".answer .row", "40 cm").await?;
    browser.type_into("#cords-to", "230").await?;
    ensure!(!browser.shows(".answer").await?, "over how many rounds?");
    browser.type_into("#cords-rounds", "60").await?;
    reads(browser, ".answer .row", "40 cm, then 60 cm").await?;
    reads(browser, ".answer .outcome strong", "45 cm, in the end 115 cm").await?;
    let change = "Change to 60 cm between round 14 and round 31, on a plain round.";
    reads(browser, ".verdict", change).await?;
    let drawn = "document.querySelector('.scale svg').getAttribute('aria-label')";
    let drawn = browser.look_up(drawn).await?.to_string().replace('\u{a0}', " ");
    ensure!(drawn.contains("60 cm, round 14 to 60."), "drawn is {drawn}");
    unfold(browser).await?;
    browser.type_into("#cords-cords", "40 and 80").await?;
    reads(browser, ".answer .row", "40 cm, then 80 cm").await?;
    reads(
        browser,
        ".verdict",
        "Change to 80 cm at round 31: no other round will do.",
    )
    .await?;
    // With stiff tips nothing closes the ring at the start.
    browser.type_into("#cords-tip", "13").await?;
    let without = "double-pointed needles or magic loop, then 80 cm";
    reads(browser, ".answer .row", without).await?;
    // Back and forth nothing has to close.
    browser.choose("#cords-knitting", "flat").await?;
    reads(browser, ".answer .row", "80 cm").await
}

/// The crown of a hat in inches, which shrinks below the shortest cord.
pub async fn she_shrinks_a_crown_in_inches(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/cords").await?;
    unfold(browser).await?;
    browser.choose("#cords-tip-unit", "in").await?;
    for (field, typed) in [("from", "100"), ("to", "8"), ("rounds", "31"), ("gauge", "5")] {
        browser.type_into(&format!("#cords-{field}"), typed).await?;
    }
    browser.choose("#cords-gauge-unit", "1 in").await?;
    reads(browser, ".answer .outcome strong", "20 in, in the end 1 5/8 in").await?;
    let line = "16 in, then double-pointed needles or magic loop";
    reads(browser, ".answer .row", line).await?;
    browser.type_into("#cords-cords", "16, 24, 32").await?;
    reads(browser, ".answer .row", line).await?;
    // 16 in takes 80 stitches to reach round.
    let answers = browser.text(".answers").await?;
    for said in [
        "From round 8 to round 31 no cord at hand serves.",
        "Double-pointed needles.",
        "Magic loop, on a cord of 31 1/2",
        "Two circular needles",
    ] {
        ensure!(
            answers.replace('\u{a0}', " ").contains(said),
            "no \"{said}\" in: {answers}"
        );
    }
    browser.type_into("#cords-around", "10").await?;
    reads(browser, ".answer .row", "double-pointed needles or magic loop").await
}

/// The washed gauge she keeps is offered for a washed swatch only, and then with a caution.
pub async fn a_washed_gauge_is_taken_with_a_caution(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/cast_on").await?;
    browser.type_into("#cast_on-gauge", "20").await?;
    browser
        .press_button(".question", "Keep 20 over 10 cm for all tools")
        .await?;
    browser.go("#/cords").await?;
    browser.until("document.querySelector('#cords-from')").await?;
    browser.type_into("#cords-from", "90").await?;
    ensure!(
        !browser.shows(".question .known button").await?,
        "washed is not unwashed"
    );
    browser.choose("#cords-swatch", "washed").await?;
    browser.press_button(".question", "Use 20 over 10 cm").await?;
    reads(browser, ".answer .row", "40 cm").await?;
    let notes = browser.text(".notes").await?;
    ensure!(notes.contains("is not washed"), "no caution in: {notes}");
    Ok(())
}

async fn reads(browser: &Browser, css: &str, line: &str) -> Result<()> {
    browser.until(&format!("{} === {line:?}", words_of(css))).await
}
