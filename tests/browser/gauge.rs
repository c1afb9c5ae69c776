//! Gauge: counts from a swatch and the pattern's typed; the needle, the would-be piece and the gauge to keep are read.

use crate::{
    browser::{Browser, words_of},
    job::unfold,
    stage::Stage,
};
use anyhow::{Result, ensure};

const STITCHES: &str = "#gauge-stitches";
const PATTERN: &str = "#gauge-pattern";

/// Three spots of the swatch; alone they are her gauge, and with the pattern's beside them she goes up a needle. The mean
/// is kept by one tap, and taken by another where it is asked for.
pub async fn she_counts_several_spots_and_goes_up_a_needle(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("").await?;
    browser.press("main a[href='#/gauge']").await?;
    browser.until("document.querySelector('#gauge-stitches')").await?;
    browser.type_into(STITCHES, "21").await?;
    reads(browser, "21 stitches over 10 cm", "21.3 over 4 in").await?;
    // The obvious range is even on both sides: 97.6 to 102.4.
    says(
        browser,
        &[
            "counted over 10 cm, 97.7 cm to 102.4 cm",
            "over 15 cm, 98.4 cm to 101.6 cm",
        ],
    )
    .await?;
    browser.type_into(STITCHES, "21, 20 1/2, 21").await?;
    reads(browser, "20.833 stitches over 10 cm", "21.2 over 4 in").await?;
    browser.type_into(PATTERN, "19").await?;
    reads(browser, "Go up 1 needle size and swatch again", "91.2 cm").await?;
    says(
        browser,
        &[
            "The mean of 3 spots, 20.5 over 10 cm to 21 over 10 cm",
            "9.6 % more stitches than the pattern",
        ],
    )
    .await?;
    browser
        .press_button(".answers", "Keep 20.833 over 10 cm for all tools")
        .await?;
    browser.go("#/cast_on").await?;
    browser.until("document.querySelector('#cast_on-width')").await?;
    browser.press_button(".question", "Use 20.833 over 10 cm").await?;
    browser.type_into("#cast_on-width", "100").await?;
    browser
        .until("document.querySelector('.answer .row')?.innerText === 'Cast on 208'")
        .await
}

/// In inches, over 4 in; and 10 cm are not taken for 4 in.
pub async fn she_swatches_in_inches_and_four_inches_stay_four(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/gauge").await?;
    browser.type_into(STITCHES, "20").await?;
    browser.choose("#gauge-stitches-unit", "4 in").await?;
    reads(browser, "20 stitches over 4 in", "19.7 over 10 cm").await?;
    browser.type_into(PATTERN, "22").await?;
    browser.choose("#gauge-pattern-unit", "4 in").await?;
    unfold(browser).await?;
    browser.choose("#gauge-width-unit", "in").await?;
    browser.type_into("#gauge-width", "40").await?;
    reads(browser, "Go down 1 needle size and swatch again", "44 in").await?;
    // A label that says both is read as 10 cm, and then she is nearer to it.
    let form = browser.text(".question").await?;
    ensure!(form.contains("read as 10 cm"), "the page says {form:?}");
    browser.choose("#gauge-pattern-unit", "10 cm").await?;
    reads(browser, "Go down 2 needle sizes and swatch again", "44 3/4 in").await?;
    // An inch is too short to tell a match from a miss: no needle, and what is kept is 5 over 1 in.
    browser.choose("#gauge-pattern-unit", "4 in").await?;
    browser.type_into(STITCHES, "5").await?;
    browser.choose("#gauge-stitches-unit", "1 in").await?;
    reads(browser, "Count over 4 in or more", "44 in").await?;
    browser
        .press_button(".answers", "Keep 5 over 1 in for all tools")
        .await?;
    // An emptied width goes by its start, and counts parted by a slash ask for commas.
    browser.type_into("#gauge-width", " ").await?;
    reads(browser, "Count over 4 in or more", "43 1/4 in").await?;
    browser.type_into(STITCHES, "21/20").await?;
    browser
        .until("document.querySelector('#gauge-stitches-problem')?.innerText.includes('commas')")
        .await
}

/// Washed and unwashed, stitches and rows: what matches, what does not, and what to knit by the tape.
pub async fn she_knits_what_is_right_after_washing(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/gauge").await?;
    browser.type_into(STITCHES, "21").await?;
    browser.type_into(PATTERN, "21").await?;
    unfold(browser).await?;
    browser.type_into("#gauge-rows", "28").await?;
    browser.type_into("#gauge-rows_unwashed", "30").await?;
    browser.type_into("#gauge-pattern_rows", "26").await?;
    reads(browser, "Keep this needle", "100 cm").await?;
    let expected = [
        "Stitches match and rows do not",
        "50 cm would be 46.4 cm",
        "for 50 cm washed, knit 46.7 cm by the tape",
        "Keep 28 over 10 cm",
        "Keep 30 over 10 cm",
    ];
    says(browser, &expected).await?;
    // What cannot be read says what to type, and what was typed stays.
    browser.type_into("#gauge-rows", "28 or so").await?;
    browser.until("document.querySelector('#gauge-rows-problem')").await?;
    ensure!(
        browser.value("#gauge-rows").await? == "28 or so",
        "the text was changed"
    );
    Ok(())
}

async fn reads(browser: &Browser, line: &str, outcome: &str) -> Result<()> {
    let [shown, strong] = [words_of(".answer .row"), words_of(".answer .outcome strong")];
    browser
        .until(&format!("{shown} === {line:?} && {strong} === {outcome:?}"))
        .await
}

async fn says(browser: &Browser, expected: &[&str]) -> Result<()> {
    let answers = browser.look_up(&words_of(".answers")).await?;
    let answers = answers.as_str().unwrap_or_default().to_owned();
    for said in expected {
        ensure!(answers.contains(said), "no \"{said}\" in: {answers}");
    }
    Ok(())
}
