//! Casting on: a width and a washed swatch typed, the count read from the screen, and counted by taps.

use crate::{browser::Browser, job::unfold, stage::Stage};
use anyhow::{Result, ensure};

const WIDTH: &str = "#cast_on-width";
const GAUGE: &str = "#cast_on-gauge";
const OUTCOME: &str = ".answer .outcome strong";

/// In centimetres: from the first page to the tool in one tap, and the nearest count that the pattern takes.
pub async fn she_casts_on_the_width_she_wants(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("").await?;
    browser.press("main a[href='#/cast_on']").await?;
    browser.until("document.querySelector('#cast_on-width')").await?;
    browser.type_into(WIDTH, "100").await?;
    ensure!(!browser.shows(".answer").await?, "an answer before a question");
    browser.type_into(GAUGE, "21").await?;
    reads(browser, "Cast on 210", "100 cm round").await?;
    unfold(browser).await?;
    browser.type_into("#cast_on-multiple", "8").await?;
    browser.type_into("#cast_on-plus", "3").await?;
    // The multiple: 26 repeats; the plus is for a flat piece.
    reads(browser, "Cast on 208", "99 cm round").await?;
    let answers = browser.text(".answers").await?;
    for said in [
        "200: 95.2 cm, 4.8 cm less than you want",
        "216: 102.9 cm, 2.9 cm more than you want",
        "96.7 cm to 101.5 cm",
    ] {
        ensure!(answers.contains(said), "no \"{said}\" in: {answers}");
    }
    browser.choose("#cast_on-knitting", "flat").await?;
    // 26 repeats and 3 are 211, and a stitch at each edge for the seam.
    reads(browser, "Cast on 213", "100.5 cm wide").await?;
    let outcome = browser.text(".answer .outcome").await?;
    ensure!(
        outcome.starts_with("211 for the pattern, 2 for the seams."),
        "the page says {outcome:?}"
    );
    // As the pattern writes it: both in one field. And of 27 and 28 repeats neither is nearer.
    browser.type_into(GAUGE, "22").await?;
    browser.type_into("#cast_on-plus", "0").await?;
    browser.type_into("#cast_on-multiple", "8 + 3").await?;
    reads(browser, "Cast on 221", "99.5 cm wide").await?;
    browser.choose("#cast_on-knitting", "round").await?;
    reads(browser, "Cast on 216", "98.2 cm round").await?;
    let answers = browser.text(".answers").await?;
    ensure!(answers.contains("just as near"), "not in: {answers}");
    Ok(())
}

/// In inches, with a gauge over 4 inches: 40 in at 18 are 180, and not what 10 cm would make of it.
pub async fn she_casts_on_in_inches(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/cast_on").await?;
    browser.choose("#cast_on-width-unit", "in").await?;
    browser.type_into(WIDTH, "40").await?;
    browser.type_into(GAUGE, "18").await?;
    browser.choose("#cast_on-gauge-unit", "4 in").await?;
    reads(browser, "Cast on 180", "40 in round").await?;
    browser.choose("#cast_on-gauge-unit", "10 cm").await?;
    reads(browser, "Cast on 183", "40 in round").await?;
    browser.choose("#cast_on-gauge-unit", "4 in").await?;
    browser.press_button(".question .chips", "1/2").await?;
    reads(browser, "Cast on 182", "40 1/2 in round").await
}

/// A tap at each marker; each is kept, and goes on from where it was.
pub async fn she_counts_by_taps_while_casting_on(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/cast_on").await?;
    browser.type_into(WIDTH, "54").await?;
    browser.type_into(GAUGE, "20").await?;
    reads(browser, "Cast on 108", "54 cm round").await?;
    for tap in ["20 are on", "40 are on", "60 are on"] {
        browser.press_button(".taps", tap).await?;
    }
    counted(browser, "60 of 108 are on the needle.").await?;
    browser.press_button(".taps", "Back to 40").await?;
    counted(browser, "40 of 108 are on the needle.").await?;
    stage.until_kept().await?;
    browser.reload().await?;
    counted(browser, "40 of 108 are on the needle.").await?;
    // With other markers it goes on to the next of them.
    browser.choose("#cast_on-every", "25").await?;
    for tap in ["50 are on", "75 are on", "100 are on", "108 are on"] {
        browser.press_button(".taps", tap).await?;
    }
    counted(browser, "All 108 are on the needle.").await?;
    browser.press_button(".taps", "Begin the count again").await?;
    browser
        .until("document.querySelector('.tally [role=status]').innerText.startsWith('Nothing')")
        .await
}

async fn reads(browser: &Browser, count: &str, outcome: &str) -> Result<()> {
    browser
        .until(&format!(
            "document.querySelector('.answer .row')?.innerText === {count:?}"
        ))
        .await?;
    let said = browser.text(OUTCOME).await?;
    ensure!(said == outcome, "the page says {said:?}, not {outcome:?}");
    Ok(())
}

async fn counted(browser: &Browser, said: &str) -> Result<()> {
    browser
        .until(&format!(
            "document.querySelector('.tally [role=status]')?.innerText === {said:?}"
        ))
        .await
}
