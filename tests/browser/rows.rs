//! Rows and length: a length and a washed swatch typed, the rows read from the screen, and the tape held to them.

use crate::{
    browser::{Browser, words_of},
    stage::Stage,
};
use anyhow::{Result, ensure};

/// In centimetres: the rows of a length, and whole repeats of a chart with its set-up rows and its end.
pub async fn she_works_as_many_rows_as_her_length_takes(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("").await?;
    browser.press("main a[href='#/rows']").await?;
    browser.until("document.querySelector('#rows-length')").await?;
    browser.type_into("#rows-length", "40").await?;
    ensure!(!browser.shows(".answer").await?, "an answer before a question");
    browser.type_into("#rows-gauge", "28").await?;
    reads(browser, "Work 112 rows", "40 cm long").await?;
    says(browser, "39.3 cm to 40.7 cm").await?;
    browser.press(".question > details:first-of-type summary").await?;
    browser.type_into("#rows-end_after", "5").await?;
    browser.until("document.querySelector('#rows-repeat-problem')").await?;
    browser.type_into("#rows-end_after", "0").await?;
    browser.type_into("#rows-repeat", "12").await?;
    browser.type_into("#rows-set_up", "2").await?;
    // 2 + 9 x 12, and not 112, which would end in the middle of the chart.
    reads(browser, "Work 110 rows", "39.3 cm long").await?;
    says(browser, "9 repeats of 12, after 2 for the set-up.").await?;
    says(browser, "122 rows: 43.6 cm").await?;
    browser.type_into("#rows-end_after", "7").await?;
    reads(browser, "Work 117 rows", "41.8 cm long").await?;
    browser.type_into("#rows-end_after", "13").await?;
    browser.press_button(".problem", "Use 12").await?;
    reads(browser, "Work 110 rows", "39.3 cm long").await
}

/// In inches, and back: garter ridges are two rows each, in the round a knit and a purl round.
pub async fn she_counts_ridges_in_inches(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/rows").await?;
    browser.choose("#rows-length-unit", "in").await?;
    browser.type_into("#rows-length", "4 1/4").await?;
    browser.type_into("#rows-gauge", "42").await?;
    browser.choose("#rows-gauge-unit", "4 in").await?;
    // 44.6 rows.
    reads(browser, "Work 45 rows", "4 1/4 in long").await?;
    browser.press(".question > details:first-of-type summary").await?;
    browser.choose("#rows-fabric", "garter").await?;
    reads(browser, "Work 44 rows", "4 1/4 in long").await?;
    says(browser, "22 ridges.").await?;
    browser.choose("#rows-knitting", "round").await?;
    says(browser, "a knit round, then a purl round").await?;
    browser.choose("#rows-ask", "ridges").await?;
    browser.type_into("#rows-ridges", "21").await?;
    reads(browser, "4 in long", "42 rounds").await
}

/// In mid-knit: the tape meets unwashed knitting, so it is held to the gauge before washing, kept once.
pub async fn she_holds_a_tape_to_her_knitting(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/rows").await?;
    browser.type_into("#rows-length", "50").await?;
    browser.type_into("#rows-gauge", "28").await?;
    browser
        .press_button(".question", "Keep 28 over 10 cm for all tools")
        .await?;
    browser.press(".question > details:last-of-type summary").await?;
    browser.type_into("#rows-tape_rows", "60").await?;
    let asked = browser.text(".question .problem").await?;
    ensure!(asked.starts_with("Type this too"), "the page says {asked:?}");
    browser.type_into("#rows-tape_length", "20").await?;
    // Held to the washed gauge 60 rows of 20 cm look too short; the page says what that rests on.
    verdict(browser, "Behind by 1.4 cm.").await?;
    says(browser, "count the swatch before washing too.").await?;
    browser.type_into("#rows-unwashed", "30").await?;
    verdict(browser, "On course, as near as a tape tells: 80 to go.").await?;
    says(browser, "Stop when the tape says 46.7 cm").await?;
    browser.type_into("#rows-tape_length", "21").await?;
    verdict(
        browser,
        "Ahead by 1 cm. Knitted on like this, 133 rows make the length: 73 to go.",
    )
    .await?;
    // What was kept is offered where rows are asked for again.
    browser.go("#/regauge").await?;
    browser.until("document.querySelector('#regauge-own_rows')").await?;
    browser.press(".question > details:nth-of-type(2) summary").await?;
    browser.press_button(".question", "Use 28 over 10 cm").await
}

async fn reads(browser: &Browser, line: &str, outcome: &str) -> Result<()> {
    let (row, strong) = (words_of(".answer .row"), words_of(".answer .outcome strong"));
    browser
        .until(&format!("{row} === {line:?} && {strong} === {outcome:?}"))
        .await
}

async fn says(browser: &Browser, words: &str) -> Result<()> {
    let said = words_of(".answers");
    browser.until(&format!("{said}?.includes({words:?})")).await
}

async fn verdict(browser: &Browser, words: &str) -> Result<()> {
    let said = words_of(".verdict");
    browser.until(&format!("{said}?.startsWith({words:?})")).await
}
