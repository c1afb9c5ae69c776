//! The job of yarn needed: stitches, rows and a swatch typed, or what a pattern asks for, and the balls to buy read
//! from the screen.

use crate::{
    browser::{Browser, words_of},
    stage::Stage,
};
use anyhow::{Result, ensure};

const BUY: &str = ".answer .row";

/// A scarf in garter from a stockinette swatch, in metres and in yards.
pub async fn she_types_her_scarf_and_reads_the_balls(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("").await?;
    browser.press("main a[href='#/yarn']").await?;
    browser.until("document.querySelector('#yarn-s1_stitches')").await?;
    ensure!(!browser.shows(".answer").await?, "an answer before a question");
    browser.type_into("#yarn-s1_stitches", "40").await?;
    browser.type_into("#yarn-s1_rows", "400").await?;
    browser.choose("#yarn-s1_fabric", "garter").await?;
    browser.type_into("#yarn-swatch_stitches", "21").await?;
    browser.type_into("#yarn-swatch_rows", "28").await?;
    buys(browser, "Buy 4 balls").await?;
    says(browser, ".answer .outcome", " m").await?;
    // The same in yards: the ball keeps what was typed, and the answer is the same ball count.
    browser.choose("#yarn-ball_length-unit", "yd").await?;
    says(browser, ".answer .outcome", " yd").await?;
    buys(browser, "Buy 4 balls").await?;
    // What stands there adds up: four of 136.7 yd are 546.8 yd.
    says(browser, ".answers", "4 balls of about 136.7").await?;
    browser.type_into("#yarn-ball_length", "230").await?;
    buys(browser, "Buy 2 balls").await?;
    // What is likely stands beside what makes it sure, and no advice against either.
    browser.type_into("#yarn-s1_rows", "2000").await?;
    says(browser, ".close", "likely enough;").await?;
    says(browser, ".close", "reserve only").await?;
    // How often is asked in the line itself.
    browser.type_into("#yarn-s1_times", "2").await?;
    says(browser, ".working", "2 × 40 × 2,000").await?;
    browser.type_into("#yarn-ball_mass", " ").await?;
    says(browser, ".answers", "weighs").await
}

/// A scarf whose swatch was counted over 4 inches and then over 10 centimetres, with its seams in either.
pub async fn she_measures_with_a_tape(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/yarn").await?;
    browser.type_into("#yarn-s1_stitches", "40").await?;
    browser.type_into("#yarn-s1_rows", "420").await?;
    for (field, count) in [("stitches", "21"), ("rows", "28")] {
        browser.type_into(&format!("#yarn-swatch_{field}"), count).await?;
        browser.choose(&format!("#yarn-swatch_{field}-unit"), "4 in").await?;
    }
    // 16,800 stitches of 1.948 cm are 327 m.
    buys(browser, "Buy 4 balls").await?;
    says(browser, ".working", "1.947 cm").await?;
    let inches = browser.text(".answer .outcome").await?;
    browser.press("details.more > summary").await?;
    browser.choose("#yarn-seams-unit", "in").await?;
    browser.type_into("#yarn-seams", "23 5/8").await?;
    says(browser, ".lines", "Seams: 1.1 m").await?;
    // The same in centimetres: what was typed is the same length, and so is the yarn.
    browser.choose("#yarn-seams-unit", "cm").await?;
    browser.settle().await?;
    let shown = browser.value("#yarn-seams").await?;
    ensure!(shown == "60", "{shown} cm stands there");
    says(browser, ".lines", "Seams: 1.1 m").await?;
    // As many stitches over 10 cm are smaller ones.
    for field in ["stitches", "rows"] {
        browser.choose(&format!("#yarn-swatch_{field}-unit"), "10 cm").await?;
    }
    says(browser, ".working", "1.917 cm").await?;
    let metric = browser.text(".answer .outcome").await?;
    ensure!(metric != inches, "\"{metric}\" over 10 cm and over 4 in");
    Ok(())
}

/// A piece measured by its tape takes the gauge of its own fabric, and no other.
pub async fn she_measures_the_piece_itself(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/yarn").await?;
    browser.choose("#yarn-s1_shape", "measured").await?;
    browser.choose("#yarn-s1_width-unit", "cm").await?;
    browser.type_into("#yarn-s1_width", "50").await?;
    browser.type_into("#yarn-s1_length", "180").await?;
    browser.type_into("#yarn-swatch_stitches", "21").await?;
    browser.type_into("#yarn-swatch_rows", "28").await?;
    says(browser, ".working", "105 stitches × 504 rows").await?;
    browser.choose("#yarn-s1_fabric", "garter").await?;
    says(browser, ".problem", "in its own fabric").await?;
    ensure!(!browser.shows(".answer").await?, "garter by a stockinette gauge");
    Ok(())
}

/// A rib gauge is refused, and a weighed swatch is a tap away; a second section comes and goes, and loses nothing.
pub async fn a_rib_gauge_is_refused_and_a_weighed_swatch_taken(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/yarn").await?;
    browser.type_into("#yarn-s1_stitches", "120").await?;
    browser.type_into("#yarn-s1_rows", "60").await?;
    browser.choose("#yarn-s1_fabric", "rib").await?;
    browser.choose("#yarn-swatch_fabric", "rib").await?;
    browser.type_into("#yarn-own_stitches", "34").await?;
    browser.type_into("#yarn-own_rows", "28").await?;
    says(browser, ".problem", "weigh a swatch").await?;
    ensure!(!browser.shows(".answer").await?, "yarn from a rib gauge");
    says(browser, ".answers", "From a gauge in rib").await?;
    browser.press_button(".problem", "Weigh a swatch").await?;
    browser.until("document.querySelector('#yarn-swatch_mass')").await?;
    browser.type_into("#yarn-w_stitches", "40").await?;
    browser.type_into("#yarn-w_rows", "60").await?;
    browser.type_into("#yarn-swatch_mass", "24").await?;
    buys(browser, "Buy 3 balls").await?;
    browser.press_button(".question", "Add a section").await?;
    browser.until("document.querySelector('#yarn-s2_stitches')").await?;
    ensure!(!browser.shows(".answer").await?, "an answer without the second section");
    browser.type_into("#yarn-s2_stitches", "120").await?;
    browser.type_into("#yarn-s2_rows", "200").await?;
    buys(browser, "Buy 8 balls").await?;
    // It goes on from the first, until it is said to have a cast-on of its own.
    let cast_on = browser.value("#yarn-s2_cast_on").await?;
    ensure!(cast_on == "no", "a section that goes on begins with {cast_on}");
    browser.press_button(".section + .section", "Take it out").await?;
    buys(browser, "Buy 3 balls").await?;
    browser.press_button(".question", "Bring back what I took out").await?;
    buys(browser, "Buy 8 balls").await
}

/// A pattern's seven balls of 125 m, in balls of 210 m.
pub async fn a_patterns_balls_become_her_own(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/yarn").await?;
    browser.choose("#yarn-from", "balls").await?;
    browser.type_into("#yarn-balls", "7").await?;
    buys(browser, "Buy 7 balls").await?;
    ensure!(
        !browser.shows(".close").await?,
        "a warning where the same ball goes in and out"
    );
    browser.type_into("#yarn-ball_length", "210").await?;
    buys(browser, "Buy 5 balls").await?;
    says(browser, ".answer .outcome", "751 m to 875 m").await?;
    // Six of 125 m are 750 m to the last bit, and are six.
    browser.choose("#yarn-from", "length").await?;
    browser.type_into("#yarn-length", "750").await?;
    browser.type_into("#yarn-ball_length", "125").await?;
    buys(browser, "Buy 6 balls").await?;
    says(browser, ".close", "Buy one more").await
}

async fn buys(browser: &Browser, words: &str) -> Result<()> {
    browser.until(&format!("{} === {words:?}", words_of(BUY))).await
}

async fn says(browser: &Browser, css: &str, words: &str) -> Result<()> {
    browser.until(&format!("{}?.includes({words:?})", words_of(css))).await
}
